package gripwright.quantity;

/**
 * A load on the hands or a mass, in kilograms. A load that reduces body weight is negative.
 *
 * <p>Immutable and comparable; two values are equal when their kilograms are.
 *
 * @param kilograms the value in kilograms; finite
 */
public record Load(double kilograms) implements Comparable<Load> {

  /** Zero kilograms. */
  public static final Load ZERO = new Load(0);

  /**
   * Checks the value.
   *
   * @throws IllegalArgumentException if the value is not finite
   */
  public Load {
    if (!Double.isFinite(kilograms)) {
      throw new IllegalArgumentException("load " + kilograms + " kg is outside the finite numbers");
    }
    kilograms = kilograms + 0.0; // minus zero becomes zero, so that equal values print the same
  }

  @Override
  public int compareTo(Load other) {
    return Double.compare(kilograms, other.kilograms);
  }

  /** Returns a load of this many kilograms. */
  public static Load ofKilograms(double value) {
    return new Load(value);
  }

  /** Returns the sum of two loads. */
  public Load plus(Load other) {
    return new Load(kilograms + other.kilograms);
  }

  /** Returns this load less another. */
  public Load minus(Load other) {
    return new Load(kilograms - other.kilograms);
  }

  /** Returns this load multiplied by a number. */
  public Load times(double factor) {
    return new Load(kilograms * factor);
  }

  /** Returns the force this load exerts under standard gravity, in newtons. */
  public double newtons() {
    return kilograms * Unit.NEWTONS_PER_KILOGRAM;
  }

  /** Returns the value with its unit, at most 2 decimals, such as {@code 81.25 kg}. */
  @Override
  public String toString() {
    return Numbers.plain(kilograms, 2) + " kg";
  }
}
