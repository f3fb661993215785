package gripwright.strength;

import gripwright.grip.Setup;
import gripwright.quantity.Load;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * Finds tests that the athlete's other tests contradict. Each test is predicted from those before
 * and after it, weighted by their distance in time, and is an outlier if it differs by more than
 * {@value #MOST_DEVIATIONS} standard deviations. The largest outlier is removed first and the
 * others are checked again without it, so that one typing error does not make its neighbours
 * outliers. Two tests of one setup on different days within 10 % confirm each other.
 */
public final class OutlierTests {

  /** Standard deviations in the logarithm of load; the library's own choice. */
  public static final double MOST_DEVIATIONS = 3;

  /** Maximum number of tests checked (the newest) and used for one prediction (the nearest). */
  private static final int MOST_TESTS = 40;

  private static final int MOST_ROUNDS = 5;

  /** Tests within this ratio are never outliers; the library's own choice. */
  private static final double APART = 1.2;

  /**
   * A test that does not fit the others.
   *
   * @param test the test
   * @param expected the others' estimate for its setup and hold time
   * @param deviations its difference in standard deviations; negative if it is too low
   */
  public record Odd(StrengthTest test, LoadEstimate expected, double deviations) {
    /** Refuses null. */
    public Odd {
      Objects.requireNonNull(test, "test");
      Objects.requireNonNull(expected, "expected");
    }
  }

  private final Function<Setup, Posture> postures;

  /**
   * Creates a search for one athlete.
   *
   * @param postures the posture of the athlete's own fingers in a setup, see {@link Posture#of}
   */
  public OutlierTests(Function<Setup, Posture> postures) {
    Objects.requireNonNull(postures, "postures");
    this.postures = postures;
  }

  /** Returns whether two tests of one setup and hold time differ by more than a fifth. */
  public static boolean likely(List<StrengthTest> tests) {
    Map<String, Load> least = new HashMap<>();
    Map<String, Load> greatest = new HashMap<>();
    for (StrengthTest test : tests) {
      test.effort()
          .ifPresent(
              effort -> {
                String key = test.setup() + "/" + effort.seconds();
                least.merge(key, effort.load(), (a, b) -> a.compareTo(b) < 0 ? a : b);
                greatest.merge(key, effort.load(), (a, b) -> a.compareTo(b) > 0 ? a : b);
              });
    }
    return least.entrySet().stream()
        .anyMatch(
            entry ->
                greatest
                        .getOrDefault(entry.getKey(), Load.ZERO)
                        .compareTo(entry.getValue().times(APART))
                    > 0);
  }

  /** Returns the outliers, oldest first. */
  public List<Odd> among(List<StrengthTest> tests) {
    List<StrengthTest> left =
        new ArrayList<>(
            tests.stream()
                .filter(
                    test -> test.effort().filter(e -> ForceTime.inRange(e.seconds())).isPresent())
                .sorted(
                    Comparator.comparing(StrengthTest::date, Comparator.reverseOrder())
                        .thenComparing(StrengthTest::toString))
                .limit(MOST_TESTS)
                .toList());
    List<Odd> odd = new ArrayList<>();
    for (int round = 0; round < MOST_ROUNDS; round++) {
      // Newest first, so that of two tests that contradict each other the later one is reported.
      Optional<Odd> worst =
          left.stream()
              .filter(
                  test -> tests.stream().noneMatch(other -> PlausibleTests.confirm(other, test)))
              .flatMap(test -> odd(test, left).stream())
              .filter(each -> Math.abs(each.deviations()) > MOST_DEVIATIONS)
              .reduce(
                  (one, other) ->
                      Math.abs(other.deviations()) > Math.abs(one.deviations()) + 1e-6
                          ? other
                          : one);
      if (worst.isEmpty()) {
        break;
      }
      odd.add(worst.get());
      left.remove(worst.get().test());
    }
    odd.sort(Comparator.comparing(each -> each.test().date()));
    return odd;
  }

  /**
   * Returns tests without unconfirmed outliers that are too high. A second test of the same setup
   * and hold time, lower by no more than noise, confirms one. Until then loads follow the other
   * tests; a test that is too low counts.
   */
  public List<StrengthTest> supported(List<StrengthTest> tests) {
    if (!likely(tests)) {
      return List.copyOf(tests);
    }
    List<StrengthTest> supported = new ArrayList<>(tests);
    for (Odd each : among(tests)) {
      if (each.deviations() > 0
          && tests.stream().noneMatch(other -> confirms(other, each.test()))) {
        supported.remove(each.test());
      }
    }
    return List.copyOf(supported);
  }

  private static boolean confirms(StrengthTest other, StrengthTest odd) {
    Optional<Effort> one = other.effort();
    Optional<Effort> two = odd.effort();
    double least = 1 - TestReliability.of(odd.result()).detectableChange();
    return !other.equals(odd)
        && other.setup().toString().equals(odd.setup().toString())
        && one.isPresent()
        && two.isPresent()
        && one.get().seconds() == two.get().seconds()
        && one.get().load().compareTo(two.get().load().times(least)) >= 0;
  }

  private Optional<Odd> odd(StrengthTest test, List<StrengthTest> all) {
    List<StrengthTest> others = new ArrayList<>(all);
    others.remove(test);
    LocalDate day = test.date();
    List<StrengthTest> mirrored =
        others.stream()
            .filter(other -> other.setup().hands() == test.setup().hands())
            .filter(other -> other.setup().lifting() == test.setup().lifting())
            .map(other -> other.on(before(day, other.date())))
            .toList();
    Effort effort = test.effort().orElseThrow();
    return StrengthMap.of(mirrored, postures, day)
        .curve(test.setup())
        .filter(curve -> curve.isValidFor(effort.seconds()))
        .map(curve -> curve.load(effort.seconds()))
        .map(
            expected -> {
              // A slip of the pen lies outside the noise of the least repeatable kind of test.
              double noise = TestReliability.PEAK_FORCE.variation();
              double off =
                  Math.log(effort.load().kilograms() / expected.best().kilograms())
                      / Math.hypot(expected.spread(), noise);
              return new Odd(test, expected, off);
            });
  }

  /**
   * Returns the mirrored day of a later test, which counts as much as an earlier one at the same
   * distance.
   */
  private static LocalDate before(LocalDate day, LocalDate other) {
    return day.minusDays(Math.abs(ChronoUnit.DAYS.between(day, other)));
  }
}
