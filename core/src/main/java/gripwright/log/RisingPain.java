package gripwright.log;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;

/**
 * Detects pain in one place that rises from week to week, which the pain-monitoring model does not
 * allow (Thomee R 1997, Phys Ther 77(12):1690-1703).
 */
public final class RisingPain {

  /** Up to this score training continues. */
  public static final double MILD = 2;

  private static final int WEEK = 7;

  private RisingPain() {}

  /**
   * Returns whether a score is the second rise in a row from week to week: it is above 2 and above
   * the worst of the previous seven days, which was above the worst of the seven days before that.
   * A week without a score is no rise. That one rise holds progress and the second stops training
   * is the library's own choice.
   *
   * @param score 0 to 10, on the day
   * @param day the last of its seven days; later scores are ignored
   * @param worst the worst score of each day that has one, 0 to 10
   */
  public static boolean to(double score, LocalDate day, SortedMap<LocalDate, Double> worst) {
    Objects.requireNonNull(day, "day");
    Objects.requireNonNull(worst, "worst");
    if (score <= MILD) {
      return false;
    }
    Optional<Double> before = week(worst, day.minusDays(WEEK));
    Optional<Double> earlier = week(worst, day.minusDays(2 * WEEK));
    return before.isPresent()
        && earlier.isPresent()
        && score > before.get()
        && before.get() > earlier.get();
  }

  /**
   * Returns whether pain is too much for rehabilitation: of the seven days up to the last score the
   * worst is above a limit, or above 2 and above the worst of the seven days before.
   *
   * @param worst the worst score of each day that has one, 0 to 10
   * @param limit what is too much by itself
   */
  public static boolean isTooMuch(SortedMap<LocalDate, Double> worst, double limit) {
    Objects.requireNonNull(worst, "worst");
    if (worst.isEmpty()) {
      return false;
    }
    LocalDate last = worst.lastKey();
    double now = week(worst, last).orElse(0.0);
    Optional<Double> before = week(worst, last.minusDays(WEEK));
    return now > limit || (now > MILD && before.isPresent() && now > before.get());
  }

  /** Returns the worst of the seven days that end on a day. */
  private static Optional<Double> week(SortedMap<LocalDate, Double> worst, LocalDate end) {
    return worst.subMap(end.minusDays(WEEK - 1), end.plusDays(1)).values().stream()
        .max(Comparator.naturalOrder());
  }
}
