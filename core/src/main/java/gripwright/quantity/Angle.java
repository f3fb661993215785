package gripwright.quantity;

/**
 * A joint angle. 0 is a straight joint, flexion is positive, hyperextension negative.
 *
 * <p>Immutable and comparable; two values are equal when their degrees are.
 *
 * @param degrees the value in degrees; from -180 to 180
 */
public record Angle(double degrees) implements Comparable<Angle> {

  /** Zero degrees. */
  public static final Angle ZERO = new Angle(0);

  /**
   * Checks the value.
   *
   * @throws IllegalArgumentException if the value is not within -180 to 180
   */
  public Angle {
    Range.ANGLE.check(degrees);
    degrees = degrees + 0.0; // minus zero becomes zero, so that equal values print the same
  }

  @Override
  public int compareTo(Angle other) {
    return Double.compare(degrees, other.degrees);
  }

  /** Returns a flexion angle of this many degrees. */
  public static Angle ofDegrees(double flexion) {
    return new Angle(flexion);
  }

  /**
   * Returns the flexion for an included angle between the two bones: 180 minus it.
   *
   * @param betweenTheBones in degrees, 0 to 360; 180 is a straight joint
   * @throws IllegalArgumentException if it is outside that range
   */
  public static Angle ofIncludedDegrees(double betweenTheBones) {
    return new Angle(180 - betweenTheBones);
  }

  /** Returns the angle between the two bones, 180 minus flexion, in degrees. */
  public double includedDegrees() {
    return 180 - degrees;
  }

  /** Returns the value with its unit, at most 1 decimal, such as {@code 90 deg}. */
  @Override
  public String toString() {
    return Numbers.plain(degrees, 1) + " deg";
  }
}
