package gripwright.trial;

import org.hipparchus.distribution.continuous.TDistribution;

/**
 * How many participants a trial of two arms needs to find a difference of means, by a two-sided
 * t-test with equal arms. The power is that of the noncentral t distribution, integrated
 * numerically, as in common programs for it (Faul F, Erdfelder E, Lang AG, Buchner A 2007, Behav
 * Res Methods 39(2):175-191). Immutable.
 *
 * <p>A covariate measured before the trial, such as the first test, that correlates with the
 * outcome lowers the number by its coefficient of determination (Borm GF, Fransen J, Lemmens WAJG
 * 2007, J Clin Epidemiol 60(12):1234-1238). Participants who leave raise it.
 */
public final class SampleSize {

  /** The greatest number for an arm that is looked for. */
  public static final int MOST = 1_000_000;

  private final double effect;
  private final double power;
  private final double alpha;
  private final double covariate;
  private final double dropout;

  private SampleSize(double effect, double power, double alpha, double covariate, double dropout) {
    this.effect = effect;
    this.power = power;
    this.alpha = alpha;
    this.covariate = covariate;
    this.dropout = dropout;
  }

  /**
   * Returns the question for an effect, with a power of 80 % at a level of 5 %, without covariate
   * and without participants who leave.
   *
   * @param effect the smallest difference of interest, in standard deviations; above 0
   * @throws IllegalArgumentException if it is not
   */
  public static SampleSize of(double effect) {
    if (!(effect > 0 && Double.isFinite(effect))) {
      throw new IllegalArgumentException("an effect is above 0: " + effect);
    }
    return new SampleSize(effect, 0.8, 0.05, 0, 0);
  }

  /**
   * Returns the question for a difference of means.
   *
   * @param difference of the two means, not 0
   * @param one standard deviation of an arm, above 0
   * @param other standard deviation of the other arm, above 0
   */
  public static SampleSize of(double difference, double one, double other) {
    if (!(one > 0 && other > 0)) {
      throw new IllegalArgumentException(
          "standard deviations are above 0: " + one + " and " + other);
    }
    return of(Math.abs(difference) / Math.sqrt((one * one + other * other) / 2));
  }

  /**
   * Returns the question with another power.
   *
   * @param share the probability to find the effect if it is there, above 0 and below 1
   */
  public SampleSize power(double share) {
    return new SampleSize(effect, open(share, "power"), alpha, covariate, dropout);
  }

  /**
   * Returns the question with another level.
   *
   * @param share the probability to find an effect that is not there, above 0 and below 1
   */
  public SampleSize alpha(double share) {
    return new SampleSize(effect, power, open(share, "alpha"), covariate, dropout);
  }

  /**
   * Returns the question with a covariate.
   *
   * @param correlation of the covariate with the outcome within an arm, above -1 and below 1
   */
  public SampleSize covariate(double correlation) {
    if (!(Math.abs(correlation) < 1)) {
      throw new IllegalArgumentException("a correlation is between -1 and 1: " + correlation);
    }
    return new SampleSize(effect, power, alpha, correlation, dropout);
  }

  /**
   * Returns the question with participants who leave.
   *
   * @param share of the participants, 0 or more and below 1
   */
  public SampleSize dropout(double share) {
    if (!(share >= 0 && share < 1)) {
      throw new IllegalArgumentException("a share of participants is 0 to 1: " + share);
    }
    return new SampleSize(effect, power, alpha, covariate, share);
  }

  private static double open(double share, String what) {
    if (!(share > 0 && share < 1)) {
      throw new IllegalArgumentException(what + " is above 0 and below 1: " + share);
    }
    return share;
  }

  /** Returns the smallest difference of interest, in standard deviations. */
  public double effect() {
    return effect;
  }

  /**
   * Returns the number of participants of an arm who are to complete the trial: without those who
   * leave, with the covariate.
   *
   * @throws IllegalArgumentException if it is above {@link #MOST}
   */
  public int completing() {
    return (int) Math.ceil(withoutCovariate() * (1 - covariate * covariate) - 1e-9);
  }

  /**
   * Returns the number of participants of an arm to begin with.
   *
   * @throws IllegalArgumentException if it is above {@link #MOST}
   */
  public int beginning() {
    return (int) Math.ceil(completing() / (1 - dropout) - 1e-9);
  }

  /** Returns the least number of an arm whose test has the power. */
  private int withoutCovariate() {
    int enough = 2;
    while (power(enough, effect, alpha) < power) {
      enough *= 2;
      if (enough > MOST) {
        throw new IllegalArgumentException("more than " + MOST + " for an effect of " + effect);
      }
    }
    int few = enough / 2;
    while (enough - few > 1) {
      int middle = (few + enough) / 2;
      if (middle >= 2 && power(middle, effect, alpha) >= power) {
        enough = middle;
      } else {
        few = middle;
      }
    }
    return enough;
  }

  /**
   * Returns the power of a two-sided t-test of two equal arms.
   *
   * @param perArm participants of an arm, 2 or more
   * @param effect the true difference of the means, in standard deviations
   * @param alpha the level, above 0 and below 1
   */
  public static double power(int perArm, double effect, double alpha) {
    int freedom = 2 * perArm - 2;
    double critical =
        new TDistribution(freedom).inverseCumulativeProbability(1 - open(alpha, "alpha") / 2);
    double shift = effect * Math.sqrt(perArm / 2.0);
    return 1
        - NoncentralT.probability(critical, freedom, shift)
        + NoncentralT.probability(-critical, freedom, shift);
  }
}
