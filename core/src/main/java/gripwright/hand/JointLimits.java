package gripwright.hand;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * How far one athlete's joints move, where that was measured. What holds instead where it was not
 * is for the reader to say, usually a norm of {@link JointNorms}. Immutable.
 *
 * @param ranges flexion from least to greatest, by finger and joint
 */
public record JointLimits(Map<Finger, Map<Joint, FlexionRange>> ranges) {

  /** Nothing was measured. */
  public static final JointLimits UNKNOWN = new JointLimits(Map.of());

  /** Copies the ranges. */
  public JointLimits {
    Objects.requireNonNull(ranges, "ranges");
    Map<Finger, Map<Joint, FlexionRange>> copy = new EnumMap<>(Finger.class);
    ranges.forEach(
        (finger, joints) -> {
          if (!joints.isEmpty()) {
            copy.put(finger, Map.copyOf(joints));
          }
        });
    ranges = Map.copyOf(copy);
  }

  /** Returns these limits with one more joint; what was known of it before is replaced. */
  public JointLimits with(Finger finger, Joint joint, FlexionRange range) {
    return over(new JointLimits(Map.of(finger, Map.of(joint, range))), this);
  }

  /** Returns these limits over others: what these don't say is taken from the others. */
  public JointLimits over(JointLimits others) {
    return over(this, others);
  }

  private static JointLimits over(JointLimits first, JointLimits second) {
    Map<Finger, Map<Joint, FlexionRange>> both = new EnumMap<>(Finger.class);
    for (JointLimits limits : new JointLimits[] {second, first}) {
      limits.ranges.forEach(
          (finger, joints) ->
              both.computeIfAbsent(finger, any -> new EnumMap<>(Joint.class)).putAll(joints));
    }
    return new JointLimits(both);
  }

  /** Returns the range of a joint; empty if it is not known. */
  public Optional<FlexionRange> of(Finger finger, Joint joint) {
    return Optional.ofNullable(ranges.getOrDefault(finger, Map.of()).get(joint));
  }

  /** Returns a range narrowed to what a joint allows, as {@link FlexionRange#within} says. */
  public FlexionRange narrow(Finger finger, Joint joint, FlexionRange range) {
    return of(finger, joint).map(range::within).orElse(range);
  }
}
