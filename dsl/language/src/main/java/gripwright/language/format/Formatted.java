package gripwright.language.format;

import gripwright.language.finding.LocatedFinding;
import gripwright.language.source.SourceFile;
import java.util.List;
import java.util.Optional;

/**
 * The result of formatting a file.
 *
 * @param source the file as it was
 * @param text the file in canonical layout; empty if its text could not be read
 * @param findings why there is no text; empty if there is one
 * @param fileRead whether the file itself could be read
 */
public record Formatted(
    SourceFile source, Optional<String> text, List<LocatedFinding> findings, boolean fileRead) {

  /** Copies the list. */
  public Formatted {
    findings = List.copyOf(findings);
  }

  static Formatted as(SourceFile source, String text) {
    return new Formatted(source, Optional.of(text), List.of(), true);
  }

  /** Returns the result for a file that is not formatted. */
  public static Formatted refused(
      SourceFile source, List<LocatedFinding> findings, boolean fileRead) {
    return new Formatted(source, Optional.empty(), findings, fileRead);
  }

  /** Returns whether formatting changed the file; false if it could not be read. */
  public boolean changed() {
    return text.isPresent() && !text.get().equals(source.text());
  }
}
