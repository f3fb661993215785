package gripwright.strength;

import gripwright.quantity.Load;
import java.util.Objects;
import org.hipparchus.special.Erf;

/**
 * A load with its interval, with a normal distribution of its logarithm.
 *
 * @param best best estimate, the median
 * @param spread standard deviation of the logarithm, 0 or more
 */
public record LoadEstimate(Load best, double spread) {

  /** Distance of the 20th percentile below the mean of a standard normal distribution. */
  public static final double LOW_DEVIATE = 0.8416212335729143;

  /**
   * Checks the parts.
   *
   * @throws IllegalArgumentException if the load is not above 0 kg or the spread is below 0 or not
   *     finite
   */
  public LoadEstimate {
    Objects.requireNonNull(best, "best");
    if (!(best.kilograms() > 0 && spread >= 0 && Double.isFinite(spread))) {
      throw new IllegalArgumentException("not an estimate: " + best + ", spread " + spread);
    }
  }

  static LoadEstimate ofLogarithm(double logarithm, double variance) {
    return new LoadEstimate(
        Load.ofKilograms(Math.exp(logarithm)), Math.sqrt(Math.max(0, variance)));
  }

  /** Returns the 20th percentile, from which loads are prescribed. */
  public Load low() {
    return best.times(Math.exp(-LOW_DEVIATE * spread));
  }

  /** Returns the 80th percentile. */
  public Load high() {
    return best.times(Math.exp(LOW_DEVIATE * spread));
  }

  /**
   * Returns another percentile.
   *
   * @param probability above 0 and below 1
   * @throws IllegalArgumentException if it is not
   */
  public Load percentile(double probability) {
    if (!(probability > 0 && probability < 1)) {
      throw new IllegalArgumentException("not a probability: " + probability);
    }
    return best.times(Math.exp(Math.sqrt(2) * Erf.erfInv(2 * probability - 1) * spread));
  }
}
