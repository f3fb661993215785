package gripwright.hand;

import java.util.Objects;
import java.util.Optional;

/**
 * What is asked of one finger on an edge.
 *
 * @param finger a finger that holds
 * @param pip flexion of the middle joint; if empty the finger only has to reach, bent as its joint
 *     moves
 * @param mcp flexion of the knuckle, a wish: it depends on the wrist, which the model does not know
 * @param dip flexion of the end joint, a wish: it depends on how the pad lies on the edge
 */
public record PoseTarget(
    Finger finger,
    Optional<FlexionRange> pip,
    Optional<FlexionRange> mcp,
    Optional<FlexionRange> dip) {
  /** Refuses null. */
  public PoseTarget {
    Objects.requireNonNull(finger, "finger");
    Objects.requireNonNull(pip, "pip");
    Objects.requireNonNull(mcp, "mcp");
    Objects.requireNonNull(dip, "dip");
  }

  /** Returns a finger that only has to reach the edge. */
  public static PoseTarget free(Finger finger) {
    return new PoseTarget(finger, Optional.empty(), Optional.empty(), Optional.empty());
  }

  /** Returns a finger whose middle joint has a range. */
  public static PoseTarget pip(Finger finger, FlexionRange range) {
    Objects.requireNonNull(finger, "finger");
    Objects.requireNonNull(range, "range");
    return new PoseTarget(finger, Optional.of(range), Optional.empty(), Optional.empty());
  }

  /**
   * Returns the range that the middle joint must keep to: what is asked, narrowed to what the joint
   * allows. A finger of which nothing is asked has the range of its joint, or the norm.
   *
   * @param limits how far this athlete's joints move
   */
  public FlexionRange reach(JointLimits limits) {
    Optional<FlexionRange> own = limits.of(finger, Joint.PIP);
    return pip.map(asked -> own.map(asked::within).orElse(asked))
        .or(() -> own)
        .orElseGet(() -> JointNorms.AAOS.of(Joint.PIP));
  }
}
