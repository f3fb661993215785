package gripwright.trial;

/**
 * The smallest change of one participant that is unlikely to be noise of the test: the minimal
 * detectable change at 95 %, 1.96 times the square root of 2 times the standard error of
 * measurement (Weir JP 2005, J Strength Cond Res 19(1):231-240). A group can show an effect that is
 * smaller; then single participants can't be classified.
 *
 * @param standardError of one measurement, in its unit or as a share; 0 or more
 */
public record DetectableChange(double standardError) {

  /** Standard normal deviate of 95 %, two-sided, as usually printed. */
  private static final double DEVIATE = 1.96;

  /**
   * Checks the number.
   *
   * @throws IllegalArgumentException if it is below 0 or not finite
   */
  public DetectableChange {
    if (!(standardError >= 0 && Double.isFinite(standardError))) {
      throw new IllegalArgumentException("not a standard error: " + standardError);
    }
  }

  /**
   * Returns the change for a test that varies from day to day by a coefficient of variation.
   *
   * @param coefficient typical error as a share of the value, such as 0.056
   */
  public static DetectableChange ofVariation(double coefficient) {
    return new DetectableChange(coefficient);
  }

  /**
   * Returns the change for a test of known reliability.
   *
   * @param deviation standard deviation between participants, in the unit of the test
   * @param reliability intraclass correlation, 0 to 1
   * @throws IllegalArgumentException if the reliability is outside 0 to 1
   */
  public static DetectableChange ofReliability(double deviation, double reliability) {
    if (!(reliability >= 0 && reliability <= 1)) {
      throw new IllegalArgumentException("a reliability is 0 to 1: " + reliability);
    }
    return new DetectableChange(deviation * Math.sqrt(1 - reliability));
  }

  /** Returns the minimal detectable change at 95 %, in the unit of the standard error. */
  public double at95() {
    return DEVIATE * Math.sqrt(2) * standardError;
  }

  /**
   * Returns whether single participants can't be classified by whether they changed.
   *
   * @param effect the smallest change of interest, in the same unit
   */
  public boolean exceeds(double effect) {
    return at95() > Math.abs(effect);
  }
}
