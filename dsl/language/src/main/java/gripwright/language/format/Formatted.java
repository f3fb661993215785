package gripwright.language.format;

import gripwright.language.finding.LocatedFinding;
import gripwright.language.source.SourceFile;
import java.util.List;
import java.util.Optional;

/**
 * What came of laying out a file.
 *
 * @param source the file as it was
 * @param text the file in canonical layout; empty if its text could not be read
 * @param findings why there is no text; empty if there is one
 */
public record Formatted(SourceFile source, Optional<String> text, List<LocatedFinding> findings) {

  /** Copies the list. */
  public Formatted {
    findings = List.copyOf(findings);
  }

  /** Tells whether the file was laid out otherwise; false where it could not be read. */
  public boolean changed() {
    return text.isPresent() && !text.get().equals(source.text());
  }
}
