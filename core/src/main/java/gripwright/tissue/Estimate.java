package gripwright.tissue;

import java.util.Arrays;

/**
 * An estimate with its interval.
 *
 * @param value from the published means of the parameters
 * @param low 5th percentile over the spread of the parameters, never above the value
 * @param high 95th percentile, never below the value
 */
public record Estimate(double value, double low, double high) {

  private static final double LOW = 0.05;
  private static final double HIGH = 0.95;

  /**
   * Checks the order.
   *
   * @throws IllegalArgumentException if low is above the value, high below it, or one is no number
   */
  public Estimate {
    if (!(low <= value && value <= high)) {
      throw new IllegalArgumentException(
          "not an estimate: " + value + " within " + low + " to " + high);
    }
  }

  /** Returns a value with the interval of its draws, of which there is at least one. */
  static Estimate of(double value, double[] draws) {
    double[] sorted = draws.clone();
    Arrays.sort(sorted);
    double low = sorted[(int) Math.floor(LOW * (sorted.length - 1))];
    double high = sorted[(int) Math.ceil(HIGH * (sorted.length - 1))];
    return new Estimate(value, Math.min(value, low), Math.max(value, high));
  }

  /** Returns this estimate multiplied by a number, 0 or more. */
  public Estimate times(double factor) {
    return new Estimate(value * factor, low * factor, high * factor);
  }
}
