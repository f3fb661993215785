package gripwright.log;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;

/**
 * Whether pain in one place rises from week to week, which the pain-monitoring model does not allow
 * (Thomee R 1997, Phys Ther 77(12):1690-1703).
 */
public final class RisingPain {

  /** Up to this score training goes on. */
  public static final double MILD = 2;

  private static final int WEEK = 7;

  private RisingPain() {}

  /**
   * Tells whether pain rises week on week: the worst of the last seven days is above the worst of
   * the seven before, and it is above 2 or has risen the week before as well. A first 1 after a 0
   * is no rise yet; that is the library's own choice.
   *
   * @param worst the worst score of each day that has one, 0 to 10
   * @param day the last of the last seven days; later scores are not looked at
   */
  public static boolean on(LocalDate day, SortedMap<LocalDate, Double> worst) {
    Objects.requireNonNull(day, "day");
    Objects.requireNonNull(worst, "worst");
    Optional<Double> now = week(worst, day);
    Optional<Double> before = week(worst, day.minusDays(WEEK));
    Optional<Double> earlier = week(worst, day.minusDays(2 * WEEK));
    return now.isPresent()
        && before.isPresent()
        && now.get() > before.get()
        && (now.get() > MILD || (earlier.isPresent() && before.get() > earlier.get()));
  }

  /** Returns the worst of the seven days that end on a day. */
  private static Optional<Double> week(SortedMap<LocalDate, Double> worst, LocalDate end) {
    return worst.subMap(end.minusDays(WEEK - 1), end.plusDays(1)).values().stream()
        .max(Comparator.naturalOrder());
  }
}
