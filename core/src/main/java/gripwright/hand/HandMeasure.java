package gripwright.hand;

import gripwright.quantity.Length;
import java.util.List;

/**
 * A measure of the whole hand and how it is distributed among adults.
 *
 * <p>The 5th, 50th and 95th percentile are exact. Between and beyond them the distribution is taken
 * as two half normal ones that meet in the median, from the 1st to the 99th percentile. Source of
 * the percentiles: Gordon CC et al. 2014, 2012 Anthropometric Survey of U.S. Army Personnel,
 * NATICK/TR-15/007; 4082 men and 1986 women, computed from the public data file. They are soldiers,
 * so neither children nor the old are among them.
 */
public enum HandMeasure {
  /** From the wrist crease to the tip of the middle finger. */
  LENGTH(new double[] {165, 180, 199}, new double[] {177, 193, 210}),
  /** Across the knuckles, without the thumb. */
  BREADTH(new double[] {72, 78, 85}, new double[] {81, 88, 96});

  /** The lowest percentile that is given. */
  public static final double LOWEST = 1;

  /** The highest percentile that is given. */
  public static final double HIGHEST = 99;

  /** Standard normal deviate of the 95th percentile. */
  private static final double DEVIATE_95 = StandardNormal.quantile(0.95);

  private final List<Double> female;
  private final List<Double> male;

  HandMeasure(double[] female, double[] male) {
    this.female = List.of(female[0], female[1], female[2]);
    this.male = List.of(male[0], male[1], male[2]);
  }

  private List<Double> knots(Sex sex) {
    return sex == Sex.FEMALE ? female : male;
  }

  /**
   * Returns the measure that so many per cent of adults stay below.
   *
   * @param sex whose distribution
   * @param percentile per cent, from 1 to 99
   * @throws IllegalArgumentException if the percentile is out of range: the tails are not known
   */
  public Length percentile(Sex sex, double percentile) {
    if (!(percentile >= LOWEST && percentile <= HIGHEST)) {
      throw new IllegalArgumentException("not a percentile from 1 to 99: " + percentile);
    }
    List<Double> knots = knots(sex);
    if (percentile == 5) {
      return Length.ofMillimetres(knots.get(0));
    }
    if (percentile == 95) {
      return Length.ofMillimetres(knots.get(2));
    }
    double deviate = StandardNormal.quantile(percentile / 100) / DEVIATE_95;
    double median = knots.get(1);
    double spread = deviate < 0 ? median - knots.get(0) : knots.get(2) - median;
    return Length.ofMillimetres(median + deviate * spread);
  }

  /**
   * Returns the percentage of adults whose measure is smaller, 0 to 100. Below the 1st and above
   * the 99th percentile it is only a rough figure.
   */
  public double percentileOf(Sex sex, Length measure) {
    List<Double> knots = knots(sex);
    double median = knots.get(1);
    double above = measure.millimetres() - median;
    double spread = above < 0 ? median - knots.get(0) : knots.get(2) - median;
    return 100 * StandardNormal.probability(above / spread * DEVIATE_95);
  }
}
