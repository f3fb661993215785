package gripwright.athlete;

import gripwright.finding.Message;
import gripwright.quantity.Range;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * Pain on a day. Immutable.
 *
 * @param date the day
 * @param score 0 to 10
 * @param stops true if it stops training
 * @param rising true if it rises in its place for the second week in a row
 * @param until the first day on which training may continue, if the pain stops it and the day is
 *     known
 * @param where place and kind of the pain
 */
public record PainReport(
    LocalDate date,
    double score,
    boolean stops,
    boolean rising,
    Optional<LocalDate> until,
    Message where) {

  /**
   * Checks the score.
   *
   * @throws IllegalArgumentException if it is outside 0 to 10
   */
  public PainReport {
    Objects.requireNonNull(date, "date");
    Objects.requireNonNull(until, "until");
    Objects.requireNonNull(where, "where");
    Range.PAIN.check(score);
  }

  /** Returns whether it stops training on a day. */
  public boolean stopsOn(LocalDate day) {
    return stops && !day.isBefore(date) && until.filter(end -> !day.isBefore(end)).isEmpty();
  }
}
