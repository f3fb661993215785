package gripwright.language.format;

import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.source.Limits;
import gripwright.language.source.SourceFile;
import gripwright.language.source.Span;
import gripwright.language.syntax.ParsedFile;
import gripwright.language.syntax.Reader;
import java.util.List;

/**
 * Formats files in one canonical layout, without options.
 *
 * <p>Only white space changes: words, numbers, signs and comments stay as written and in order, and
 * the meaning of the file doesn't change. Formatting the result again changes nothing. A file with
 * a syntax error is not formatted; unknown names and broken rules don't prevent formatting.
 * Thread-safe.
 */
public final class Formatter {

  /** Most characters of a line, if there is a place to break it. */
  public static final int WIDTH = 100;

  private Formatter() {}

  /** Formats a file within the standard limits. */
  public static Formatted format(SourceFile source) {
    return format(source, Limits.standard());
  }

  /**
   * Formats a file.
   *
   * @param source the text
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
