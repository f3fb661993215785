package gripwright.quantity;

/**
 * A length, such as the depth of an edge or the length of a bone.
 *
 * <p>Immutable and comparable; two values are equal when their millimetres are.
 *
 * @param millimetres the value in millimetres; 0 or more
 */
public record Length(double millimetres) implements Comparable<Length> {

  /** Zero millimetres. */
  public static final Length ZERO = new Length(0);

  /**
   * Checks the value.
   *
   * @throws IllegalArgumentException if the value is negative or not finite
   */
  public Length {
    if (!(millimetres >= 0 && Double.isFinite(millimetres))) {
      throw new IllegalArgumentException(
          "length " + millimetres + " mm is outside 0 mm and more, as far as numbers go");
    }
    millimetres = millimetres + 0.0; // minus zero becomes zero, so that equal values print the same
  }

  @Override
  public int compareTo(Length other) {
    return Double.compare(millimetres, other.millimetres);
  }

  /** Returns a length of this many millimetres. */
  public static Length ofMillimetres(double value) {
    return new Length(value);
  }

  /** Returns the value with its unit, at most 2 decimals, such as {@code 20 mm}. */
  @Override
  public String toString() {
    return Numbers.plain(millimetres, 2) + " mm";
  }
}
