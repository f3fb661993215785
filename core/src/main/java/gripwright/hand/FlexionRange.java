package gripwright.hand;

import gripwright.quantity.Angle;
import java.util.Objects;

/**
 * A range of flexion of one joint.
 *
 * @param low least flexion
 * @param high greatest flexion, not below {@code low}
 */
public record FlexionRange(Angle low, Angle high) {

  /**
   * Checks the order.
   *
   * @throws IllegalArgumentException if low is above high
   */
  public FlexionRange {
    Objects.requireNonNull(low, "low");
    Objects.requireNonNull(high, "high");
    if (low.compareTo(high) > 0) {
      throw new IllegalArgumentException("not a range of flexion: " + low + " to " + high);
    }
  }

  /** Returns the range between two flexions in degrees, each within -180 to 180. */
  public static FlexionRange degrees(double low, double high) {
    return new FlexionRange(Angle.ofDegrees(low), Angle.ofDegrees(high));
  }

  /** Returns the middle of the range, in degrees. */
  public double centre() {
    return (low.degrees() + high.degrees()) / 2;
  }

  /**
   * Returns by how many degrees a flexion lies outside: above 0 if it is too great, below 0 if too
   * small, 0 inside.
   */
  public double miss(double flexion) {
    return Math.max(0, flexion - high.degrees()) + Math.min(0, flexion - low.degrees());
  }

  /**
   * Returns this range narrowed to a limit. Where they don't meet it is the end of the limit that
   * comes nearest.
   */
  public FlexionRange within(FlexionRange limit) {
    return degrees(limit.nearest(low.degrees()), limit.nearest(high.degrees()));
  }

  /** Returns the flexion of the range nearest to a given one, in degrees. */
  public double nearest(double flexion) {
    return Math.min(high.degrees(), Math.max(low.degrees(), flexion));
  }
}
