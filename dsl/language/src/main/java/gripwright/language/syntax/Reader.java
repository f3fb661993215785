package gripwright.language.syntax;

import gripwright.language.source.SourceFile;
import gripwright.language.syntax.internal.Reading;

/**
 * Reads files of the plan language. Never fails: whatever is wrong with a text is a finding.
 * Thread-safe.
 */
public final class Reader {

  private Reader() {}

  /**
   * Reads a whole file.
   *
   * @param source the text
   * @param limits how much of it to read
   */
  public static ParsedFile parse(SourceFile source, Limits limits) {
    Reading reading = Reading.of(source, limits);
    return new ParsedFile(
        source, reading.tree(), reading.declarations(), reading.spans(), reading.findings());
  }

  /** Reads a whole file within the standard limits. */
  public static ParsedFile parse(SourceFile source) {
    return parse(source, Limits.standard());
  }
}
