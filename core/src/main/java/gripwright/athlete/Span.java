package gripwright.athlete;

import gripwright.quantity.Range;
import gripwright.quantity.Unit;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import java.util.Optional;

/**
 * The days on which a line of a calendar is in force.
 *
 * @param from first day
 * @param to last day, not before {@code from}; empty if there is none
 * @param everyWeeks it is in force for seven days from {@code from}, and again after each such
 *     number of weeks; 1 for all days
 */
public record Span(LocalDate from, Optional<LocalDate> to, int everyWeeks) {

  private static final int WEEK = 7;

  /**
   * Checks the days.
   *
   * @throws IllegalArgumentException if it ends before it begins, or a year or the weeks are
   *     outside their {@link Range}
   */
  public Span {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    Range.YEAR.check(from);
    to.ifPresent(Range.YEAR::check);
    Range.RECURRENCE.checkIn(Unit.WEEK, everyWeeks);
    if (to.isPresent() && to.get().isBefore(from)) {
      throw new IllegalArgumentException("from " + from + " to " + to.get());
    }
  }

  /** Returns whether it is in force on a day. */
  public boolean covers(LocalDate day) {
    return !day.isBefore(from)
        && to.map(last -> !day.isAfter(last)).orElse(true)
        && ChronoUnit.DAYS.between(from, day) / WEEK % everyWeeks == 0;
  }
}
