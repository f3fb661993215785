package gripwright.strength;

/**
 * How well a measure of finger strength repeats from one day to another.
 *
 * <p>Source: McClean ZJ et al. 2023, Int J Exerc Sci 16(4):912-923, an all-out test of 24 holds of
 * 7 s with 3 s of rest on 20 mm with one hand. Tests of maximal force alone, seated and on a
 * sensor, repeat better: 2.0 to 3.4 % between sessions (J Sports Sci 2025, 26 climbers, body
 * position and elbow flexion).
 */
public enum TestReliability {
  /** The greatest force. */
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

  private final double variation;
  private final double correlation;

  TestReliability(double variation, double correlation) {
    this.variation = variation;
    this.correlation = correlation;
  }

  /** Returns the within-subject coefficient of variation, as a share. */
  public double variation() {
    return variation;
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
