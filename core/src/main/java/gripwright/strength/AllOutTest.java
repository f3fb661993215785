package gripwright.strength;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;

/**
 * An all-out series with the critical force and the impulse above it that follow from it. Both
 * contain the rests of the series, so they apply to holds with these rests, not to one long hold.
 *
 * @param date when
 * @param series holds and rests
 * @param critical by the mean of the last three holds
 */
public record AllOutTest(LocalDate date, StrengthTest.Series series, CriticalForce critical) {

  /** How old a test may be to serve for a plan, in days; the choice of this library. */
  public static final long OLDEST_DAYS = 84;

  /** Refuses null. */
  public AllOutTest {
    Objects.requireNonNull(date, "date");
    Objects.requireNonNull(series, "series");
    Objects.requireNonNull(critical, "critical");
  }

  /**
   * Returns the newest all-out series that serves on a day: up to {@link #OLDEST_DAYS} old, long
   * enough for critical force, and with a load that levelled off.
   *
   * @param tests of one setup
   * @param day the day; later tests are ignored
   */
  static Optional<AllOutTest> newest(Collection<StrengthTest> tests, LocalDate day) {
    if (tests.stream().noneMatch(test -> test.result() instanceof StrengthTest.Series)) {
      return Optional.empty();
    }
    return tests.stream()
        .filter(test -> !test.date().isAfter(day))
        .filter(test -> ChronoUnit.DAYS.between(test.date(), day) <= OLDEST_DAYS)
        .flatMap(test -> of(test).stream())
        .max(
            Comparator.comparing(AllOutTest::date)
                .thenComparing(test -> -test.critical().impulseKgS())
                .thenComparing(test -> -test.critical().force().best().kilograms()));
  }

  private static Optional<AllOutTest> of(StrengthTest test) {
    return test.result() instanceof StrengthTest.Series series
        ? CriticalForce.ofSeries(series, CriticalForce.Definition.MEAN_OF_LAST_THREE)
            .filter(CriticalForce::levelled)
            .map(critical -> new AllOutTest(test.date(), series, critical))
        : Optional.empty();
  }

  /** Returns the time of each hold of the series, in seconds. */
  public double workSeconds() {
    return series.work().toNanos() / 1e9;
  }

  /** Returns the rest between its holds, in seconds. */
  public double restSeconds() {
    return series.rest().toNanos() / 1e9;
  }
}
