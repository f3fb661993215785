package gripwright.language.format;

import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.source.SourceFile;
import gripwright.language.source.Span;
import gripwright.language.syntax.Limits;
import gripwright.language.syntax.ParsedFile;
import gripwright.language.syntax.Reader;
import java.util.List;

/**
 * Lays files out in the one canonical way, without options.
 *
 * <p>Only white space changes: words, numbers, signs and remarks stay as they are written and in
 * their order, and so does what the file means. The result is its own canonical layout. A file with
 * anything wrong in its text is not laid out at all; unknown names and broken rules are no
 * hindrance. Thread-safe.
 */
public final class Formatter {

  /** How many characters a line has at most, if there is a place to break it. */
  public static final int WIDTH = 100;

  private Formatter() {}

  /** Lays out a file within the standard limits. */
  public static Formatted format(SourceFile source) {
    return format(source, Limits.standard());
  }

  /**
   * Lays out a file.
   *
   * @param source the text as it stands
   * @param limits how much of it is read; a result beyond them is refused like a text beyond them
   */
  public static Formatted format(SourceFile source, Limits limits) {
    ParsedFile parsed = Reader.parse(source, limits);
    if (!parsed.findings().isEmpty()) {
      return Formatted.refused(source, parsed.findings(), true);
    }
    Sheet sheet = new Sheet();
    new Layout(sheet).file(parsed.tree().root());
    if (sheet.characters() > limits.maxCharacters()) {
      Finding tooLarge = Finding.error("syntax.too-large", ModelPath.ROOT);
      return Formatted.refused(
          source, List.of(LocatedFinding.at(source, new Span(0, 0), tooLarge)), true);
    }
    return Formatted.as(source, sheet.text());
  }
}
