package gripwright.grip;

import gripwright.hand.Finger;
import gripwright.hand.Joint;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * How far one athlete's joints move, where that is known. Immutable.
 *
 * @param ranges flexion by finger and joint, from least to greatest
 */
public record JointLimits(Map<Grip.At, Band> ranges) {

  /** Nothing is known of this athlete; the norms hold. */
  public static final JointLimits UNKNOWN = new JointLimits(Map.of());

  /** Copies the ranges. */
  public JointLimits {
    ranges = Map.copyOf(ranges);
  }

  /** Returns these limits with one more joint. */
  public JointLimits with(Finger finger, Joint joint, Band range) {
    Map<Grip.At, Band> more = new HashMap<>(ranges);
    more.put(new Grip.At(finger, joint), range);
    return new JointLimits(more);
  }

  /** Returns the range of a joint; empty if it is not known. */
  public Optional<Band> of(Finger finger, Joint joint) {
    return Optional.ofNullable(ranges.get(new Grip.At(finger, joint)));
  }
}
