package gripwright.hand;

import org.hipparchus.special.Erf;

/** The standard normal distribution. */
final class StandardNormal {

  private StandardNormal() {}

  static double probability(double deviate) {
    return 0.5 * Erf.erfc(-deviate / Math.sqrt(2));
  }

  static double quantile(double probability) {
    return Math.sqrt(2) * Erf.erfInv(2 * probability - 1);
  }
}
