package gripwright.tissue;

/**
 * An estimate with its interval.
 *
 * @param value from the published means of the parameters
 * @param low 5th percentile over the spread of the parameters, never above the value
 * @param high 95th percentile, never below the value
 */
public record Estimate(double value, double low, double high) {

  /** Returns this estimate multiplied by a number, 0 or more. */
  public Estimate times(double factor) {
    return new Estimate(value * factor, low * factor, high * factor);
  }
}
