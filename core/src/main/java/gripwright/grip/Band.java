package gripwright.grip;

import gripwright.quantity.Angle;
import gripwright.quantity.Range;
import java.util.Objects;

/**
 * The flexion a joint may have in a grip.
 *
 * @param low least flexion
 * @param high greatest flexion, not below {@code low}
 */
public record Band(Angle low, Angle high) {

  /** The greatest flexion, in degrees, that the centre of a PIP band may have. */
  public static final double GREATEST_PIP_CENTRE = Range.PIP_CENTRE.high();

  /** The least flexion, in degrees, that the centre of a PIP band may have. */
  public static final double LEAST_PIP_CENTRE = Range.PIP_CENTRE.low();

  /**
   * Checks the order.
   *
   * @throws IllegalArgumentException if low is above high
   */
  public Band {
    Objects.requireNonNull(low, "low");
    Objects.requireNonNull(high, "high");
    if (low.compareTo(high) > 0) {
      throw new IllegalArgumentException("not a band: " + low + " to " + high);
    }
  }

  /** Returns the band between two flexion angles in degrees. */
  public static Band degrees(double low, double high) {
    return new Band(Angle.ofDegrees(low), Angle.ofDegrees(high));
  }

  /** Returns the middle of the band. */
  public Angle centre() {
    return Angle.ofDegrees((low.degrees() + high.degrees()) / 2);
  }

  /** Returns whether a flexion lies in the band, its ends included. */
  public boolean contains(Angle flexion) {
    return low.compareTo(flexion) <= 0 && flexion.compareTo(high) <= 0;
  }

  /** Returns the band as it is written, such as {@code 75 deg to 105 deg} or {@code 90 deg}. */
  @Override
  public String toString() {
    return low.equals(high) ? low.toString() : low + " to " + high;
  }
}
