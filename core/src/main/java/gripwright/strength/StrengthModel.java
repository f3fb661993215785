package gripwright.strength;

import gripwright.grip.FingerLoss;
import gripwright.grip.Setup;
import gripwright.quantity.Load;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The reference maximum that an athlete's tests support for a setup, with its uncertainty.
 *
 * <p>A setup that was tested stands on its own tests, each brought to 7 s by {@link ForceTime} and
 * weighted by its certainty. Another grip or edge for the same hands is modelled from the test that
 * tells most about it, with a wider interval; fewer fingers hold less by {@link
 * FingerLoss#EXCLUSION}. One hand is never reckoned from two, nor a lift from a hang. All spreads
 * are standard deviations of the logarithm of load. Immutable.
 */
public final class StrengthModel {

  /**
   * Within-subject spread of a maximal test: coefficient of variation 5.6 % of peak finger force.
   * Source: McClean ZJ et al. 2023, Int J Exerc Sci 16(4):912-923.
   */
  public static final double TEST_SPREAD = 0.056;

  /** Spread of a maximum reckoned from a hold beyond 20 s; the library's own choice. */
  public static final double LONG_TEST_SPREAD = 0.12;

  /** Spread that a test gains with each month of age; the library's own choice. */
  public static final double SPREAD_PER_MONTH = 0.01;

  /** Spread between two grips of one athlete; the library's own choice, wide on purpose. */
  public static final double GRIP_SPREAD = 0.20;

  /** Spread for each e-fold of edge depth; the library's own choice. */
  public static final double DEPTH_SPREAD = 0.10;

  /**
   * Exponent of edge depth. The published means over 10 to 40 mm and three grips differ by no more
   * than 575.7 / 350.8, which is an exponent of 0.36; this choice lies inside that envelope. Source
   * of the envelope: Amca AM et al. 2012, J Sports Sci 30(7):669-677.
   */
  public static final double DEPTH_EXPONENT = 0.25;

  /**
   * Edges at or below this depth, in millimetres, are not reckoned from deeper ones: force on them
   * does not correlate. Source: Bourne R et al. 2011, J Appl Biomech 27(1):40-50.
   */
  public static final double SHALLOWEST_MODELLED = 4.3;

  /** Standard normal deviate of the 20th percentile, below the mean. */
  public static final double LOWER_DEVIATE = 0.8416212335729143;

  private static final double DAYS_PER_MONTH = 30.4375;
  private static final double LONG_SECONDS = 20;

  private final List<StrengthTest> tests;

  private StrengthModel(List<StrengthTest> tests) {
    this.tests = tests;
  }

  /** Returns a model of these tests. */
  public static StrengthModel of(List<StrengthTest> tests) {
    return new StrengthModel(List.copyOf(tests));
  }

  /**
   * What the tests support for one setup.
   *
   * @param mean best estimate of the greatest load held for 7 s
   * @param low 20th percentile, which loads are prescribed from
   * @param high 80th percentile
   * @param tested true if this very setup was tested
   * @param basis the tests it rests on, the weightiest first
   */
  public record Estimate(Load mean, Load low, Load high, boolean tested, List<StrengthTest> basis) {
    /** Copies the tests. */
    public Estimate {
      basis = List.copyOf(basis);
    }
  }

  private record Evidence(double logLoad, double spread, StrengthTest test) {}

  /**
   * Estimates the reference maximum of a setup as it is known on a day.
   *
   * @param setup grip, edge and hands
   * @param day tests after it are not known yet; older tests count less
   * @return the estimate, or empty if no test tells anything about this setup
   */
  public Optional<Estimate> maximum(Setup setup, LocalDate day) {
    List<Evidence> own = new ArrayList<>();
    List<Evidence> others = new ArrayList<>();
    for (StrengthTest test : tests) {
      if (test.date().isAfter(day)
          || test.setup().hands() != setup.hands()
          || test.setup().lifting() != setup.lifting()) {
        continue;
      }
      reference(test, day)
          .ifPresent(
              evidence -> {
                if (same(test.setup(), setup)) {
                  own.add(evidence);
                } else {
                  transferred(evidence, setup).ifPresent(others::add);
                }
              });
    }
    if (!own.isEmpty()) {
      return Optional.of(pooled(own));
    }
    return others.stream()
        .min(
            Comparator.comparingDouble(Evidence::spread)
                .thenComparing(e -> e.test().date(), Comparator.reverseOrder())
                .thenComparing(e -> e.test().setup().toString())
                .thenComparingDouble(Evidence::logLoad))
        .map(best -> estimate(best.logLoad(), best.spread(), false, List.of(best.test())));
  }

  private static boolean same(Setup tested, Setup setup) {
    return tested.grip().name().equals(setup.grip().name())
        && Math.abs(tested.edge().millimetres() - setup.edge().millimetres()) < 0.005;
  }

  /** Brings a test to 7 s; empty if it lies outside the range of the force-time curve. */
  private static Optional<Evidence> reference(StrengthTest test, LocalDate day) {
    double load;
    double seconds;
    if (test.result() instanceof StrengthTest.Held held) {
      load = held.load().kilograms();
      seconds = held.hold().toNanos() / 1e9;
    } else if (test.result() instanceof StrengthTest.ToFailure failure) {
      load = failure.load().kilograms();
      seconds = failure.lasting().toNanos() / 1e9;
    } else if (test.result() instanceof StrengthTest.Series series) {
      load = series.means().stream().mapToDouble(Load::kilograms).max().orElse(0);
      seconds = series.work().toNanos() / 1e9;
    } else {
      return Optional.empty();
    }
    if (!(load > 0) || !ForceTime.serves(seconds)) {
      return Optional.empty();
    }
    double months = ChronoUnit.DAYS.between(test.date(), day) / DAYS_PER_MONTH;
    double spread =
        Math.hypot(
            seconds > LONG_SECONDS ? LONG_TEST_SPREAD : TEST_SPREAD, SPREAD_PER_MONTH * months);
    return Optional.of(new Evidence(Math.log(load / ForceTime.ofReference(seconds)), spread, test));
  }

  private static Optional<Evidence> transferred(Evidence evidence, Setup setup) {
    Setup tested = evidence.test().setup();
    boolean sameEdge = Math.abs(tested.edge().millimetres() - setup.edge().millimetres()) < 0.005;
    if (!sameEdge
        && Math.min(tested.edge().millimetres(), setup.edge().millimetres())
            <= SHALLOWEST_MODELLED) {
      return Optional.empty();
    }
    double depth = Math.log(setup.edge().millimetres() / tested.edge().millimetres());
    double fingers =
        Math.log(
            FingerLoss.EXCLUSION.capacity(setup.grip().fingers())
                / FingerLoss.EXCLUSION.capacity(tested.grip().fingers()));
    boolean sameGrip = tested.grip().name().equals(setup.grip().name());
    double spread =
        Math.hypot(Math.hypot(evidence.spread(), sameGrip ? 0 : GRIP_SPREAD), DEPTH_SPREAD * depth);
    return Optional.of(
        new Evidence(
            evidence.logLoad() + DEPTH_EXPONENT * depth + fingers, spread, evidence.test()));
  }

  private static Estimate pooled(List<Evidence> evidence) {
    List<Evidence> ordered = new ArrayList<>(evidence);
    ordered.sort(
        Comparator.comparingDouble(Evidence::spread)
            .thenComparing(e -> e.test().date(), Comparator.reverseOrder())
            .thenComparingDouble(Evidence::logLoad));
    double weight = 0;
    double sum = 0;
    for (Evidence e : ordered) {
      double precision = 1 / (e.spread() * e.spread());
      weight += precision;
      sum += precision * e.logLoad();
    }
    return estimate(
        sum / weight, Math.sqrt(1 / weight), true, ordered.stream().map(Evidence::test).toList());
  }

  private static Estimate estimate(
      double logLoad, double spread, boolean tested, List<StrengthTest> basis) {
    return new Estimate(
        Load.ofKilograms(Math.exp(logLoad)),
        Load.ofKilograms(Math.exp(logLoad - LOWER_DEVIATE * spread)),
        Load.ofKilograms(Math.exp(logLoad + LOWER_DEVIATE * spread)),
        tested,
        basis);
  }
}
