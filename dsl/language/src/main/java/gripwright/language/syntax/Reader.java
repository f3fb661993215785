package gripwright.language.syntax;

import gripwright.budget.Meter;
import gripwright.language.source.Limits;
import gripwright.language.source.SourceFile;
import gripwright.language.syntax.internal.Reading;

/**
 * Reads files of the plan language. Never fails: every mistake in a text is a finding. Thread-safe.
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
    return parse(source, limits, Meter.unbounded());
  }

  /**
   * Reads a whole file within a budget.
   *
   * @param source the text
   * @param limits how much of it to read
   * @param meter stops reading that is cancelled or out of time
   * @throws gripwright.budget.OverBudget if it does
   */
  public static ParsedFile parse(SourceFile source, Limits limits, Meter meter) {
    Reading reading = Reading.of(source, limits, meter);
    return new ParsedFile(
        source, reading.tree(), reading.declarations(), reading.spans(), reading.findings());
  }

  /** Reads a whole file within the standard limits. */
  public static ParsedFile parse(SourceFile source) {
    return parse(source, Limits.standard());
  }
}
