package gripwright.strength;

import java.util.Objects;

/**
 * How well a measure of finger strength repeats from one day to another, by kind of test.
 *
 * <p>Sources: for a single maximal hold, Assessing climbing-specific strength: body position and
 * elbow flexion, J Sports Sci 2025 (26 climbers, seated and standing, on a sensor, 48 to 96 h
 * apart): 2.04 to 3.37 % between sessions. For the rest, McClean ZJ et al. 2023, Int J Exerc Sci
 * 16(4):912-923, an all-out test of 24 holds of 7 s with 3 s of rest on 20 mm with one hand.
 */
public enum TestReliability {
  /**
   * The load of one maximal hold of up to {@value #LONGEST_MAXIMAL_SECONDS} s. The variation is the
   * root mean square of both ends of the published range, the correlation its lower end. Tests with
   * weights on a board may repeat worse than on a sensor; their steps add less than a tenth to it.
   */
  MAXIMAL_HOLD(0.028, 0.978),
  /**
   * The greatest force of an all-out series. Also used for longer holds and holds to failure, for
   * which no published value was available; the library's own choice.
   */
  PEAK_FORCE(0.056, 0.938),
  /** The force at the end of the series. */
  END_FORCE(0.21, 0.848),
  /** The impulse above the force at the end. */
  IMPULSE_ABOVE_END_FORCE(0.132, 0.820);

  /**
   * Factor from a spread to the smallest change that exceeds chance in 95 of 100 retests: 1.96
   * times the root of 2. Source: Weir JP 2005, J Strength Cond Res 19(1):231-240 (from memory).
   */
  public static final double DETECTABLE = 1.96 * Math.sqrt(2);

  /** Longer holds are tests of endurance, in s; the library's own choice. */
  public static final double LONGEST_MAXIMAL_SECONDS = 20;

  private static final double NANOS = 1e9;

  private final double variation;
  private final double correlation;

  TestReliability(double variation, double correlation) {
    this.variation = variation;
    this.correlation = correlation;
  }

  /**
   * Returns how well the greatest load of a single hold repeats.
   *
   * @param seconds how long it is held
   */
  public static TestReliability ofHold(double seconds) {
    return seconds <= LONGEST_MAXIMAL_SECONDS ? MAXIMAL_HOLD : PEAK_FORCE;
  }

  /** Returns how well the load of a kind of test repeats. */
  public static TestReliability of(StrengthTest.Result result) {
    Objects.requireNonNull(result, "result");
    return result.accept(
        new StrengthTest.Result.Visitor<>() {
          @Override
          public TestReliability held(StrengthTest.Held held) {
            return ofHold(held.hold().toNanos() / NANOS);
          }

          @Override
          public TestReliability toFailure(StrengthTest.ToFailure failure) {
            return PEAK_FORCE;
          }

          @Override
          public TestReliability series(StrengthTest.Series series) {
            return PEAK_FORCE;
          }
        });
  }

  /** Returns the within-subject coefficient of variation, as a share. */
  public double variation() {
    return variation;
  }

  /** Returns the square of the variation. */
  double variance() {
    return variation * variation;
  }

  /** Returns the intraclass correlation. */
  public double correlation() {
    return correlation;
  }

  /** Returns the minimal detectable change between two tests, as a share. */
  public double detectableChange() {
    return DETECTABLE * variation;
  }

  /**
   * Returns the standard error of measurement of a group.
   *
   * @param deviation standard deviation between persons, in any unit
   * @param correlation intraclass correlation, 0 to 1
   * @return in the same unit
   */
  public static double standardError(double deviation, double correlation) {
    return deviation * Math.sqrt(1 - correlation);
  }
}
