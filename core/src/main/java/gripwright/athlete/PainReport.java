package gripwright.athlete;

import gripwright.finding.Message;
import gripwright.quantity.Range;
import java.time.LocalDate;
import java.util.Objects;

/**
 * Pain on a day. Immutable.
 *
 * @param date the day
 * @param score 0 to 10
 * @param stops true if it calls for stopping
 * @param rising true if it rises in its place week on week
 * @param where what hurt, and how
 */
public record PainReport(
    LocalDate date, double score, boolean stops, boolean rising, Message where) {

  /**
   * Checks the score.
   *
   * @throws IllegalArgumentException if it is outside 0 to 10
   */
  public PainReport {
    Objects.requireNonNull(date, "date");
    Objects.requireNonNull(where, "where");
    Range.PAIN.check(score);
  }
}
