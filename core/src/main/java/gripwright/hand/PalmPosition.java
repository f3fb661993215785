package gripwright.hand;

import gripwright.quantity.Angle;
import java.util.Objects;

/**
 * Where the palm is, below the edge that the fingers hold.
 *
 * @param distance from the back of the edge outwards to the middle finger's knuckle, in mm
 * @param depth of the middle finger's knuckle below the end joints of the fingers, in mm; below 0
 *     if it is higher
 * @param roll about the forearm's axis: 0 with the palm square to the edge, above 0 with the little
 *     finger's side nearer, as the forearm supinates
 * @param tilt in the palm's own plane, about the middle finger's knuckle: above 0 with the little
 *     finger's side higher, as the wrist bends towards the thumb or the forearm leans
 */
public record PalmPosition(double distance, double depth, Angle roll, Angle tilt) {
  /** Refuses null. */
  public PalmPosition {
    Objects.requireNonNull(roll, "roll");
    Objects.requireNonNull(tilt, "tilt");
  }
}
