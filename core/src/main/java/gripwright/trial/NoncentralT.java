package gripwright.trial;

import gripwright.hand.StandardNormal;
import org.hipparchus.special.Gamma;

/**
 * The noncentral t distribution: that of (Z + shift) / S, where Z is standard normal and S, on its
 * own, is the square root of a chi-squared quantity divided by its degrees of freedom. The
 * probability is the integral of the normal one over S (Johnson NL, Kotz S, Balakrishnan N 1995,
 * Continuous Univariate Distributions, vol. 2, chapter 31), by Simpson's rule.
 */
final class NoncentralT {

  /** Steps of the rule; twice as many change no digit that counts here. */
  private static final int STEPS = 2_000;

  /** How many standard deviations of S around its mean are integrated. */
  private static final double WIDTH = 12;

  private NoncentralT() {}

  /** Returns the probability of at most {@code t}. */
  static double probability(double t, int freedom, double shift) {
    double deviation = 1 / Math.sqrt(2.0 * freedom);
    double low = Math.max(1e-12, 1 - WIDTH * deviation);
    double high = 1 + WIDTH * Math.max(deviation, 0.25);
    double step = (high - low) / STEPS;
    double sum = 0;
    for (int i = 0; i <= STEPS; i++) {
      double s = low + i * step;
      int weight = i == 0 || i == STEPS ? 1 : i % 2 == 1 ? 4 : 2;
      sum += weight * density(s, freedom) * StandardNormal.probability(t * s - shift);
    }
    return Math.min(1, sum * step / 3);
  }

  /** Returns the density of S. */
  private static double density(double s, int freedom) {
    double half = freedom / 2.0;
    return Math.exp(
        Math.log(2)
            + half * Math.log(half)
            - Gamma.logGamma(half)
            + (freedom - 1) * Math.log(s)
            - half * s * s);
  }
}
