package gripwright.pose;

import gripwright.hand.Finger;
import gripwright.hand.FlexionRange;
import gripwright.hand.Joint;
import gripwright.hand.JointLimits;
import gripwright.hand.JointNorms;
import java.util.Objects;
import java.util.Optional;

/**
 * The target of one finger on an edge.
 *
 * @param finger the finger
 * @param pip flexion of the middle joint; if empty, the finger only has to reach the edge
 * @param mcp preferred flexion of the knuckle; not a requirement, since it depends on the wrist,
 *     which is not modelled
 * @param dip preferred flexion of the end joint; not a requirement, since it depends on how the pad
 *     rests on the edge
 * @param share this finger's part of the load, positive; only its proportion to the other fingers
 *     matters
 */
public record PoseTarget(
    Finger finger,
    Optional<FlexionRange> pip,
    Optional<FlexionRange> mcp,
    Optional<FlexionRange> dip,
    double share) {

  /** Maximum downward tip of the end bone, in degrees; the library's own choice. */
  public static final double GREATEST_PITCH = 45;

  /**
   * Maximum downward tip of the end bone if the end joint is to hyperextend, in degrees, because
   * that presses the pad flat; the library's own choice.
   */
  public static final double FLAT_PITCH = 10;

  /**
   * Checks the share.
   *
   * @throws IllegalArgumentException if the share is not positive
   */
  public PoseTarget {
    Objects.requireNonNull(finger, "finger");
    Objects.requireNonNull(pip, "pip");
    Objects.requireNonNull(mcp, "mcp");
    Objects.requireNonNull(dip, "dip");
    if (!(share > 0 && Double.isFinite(share))) {
      throw new IllegalArgumentException("not a share of a load: " + share);
    }
  }

  /** Returns the target of a finger that only has to reach the edge. */
  public static PoseTarget free(Finger finger) {
    return new PoseTarget(finger, Optional.empty(), Optional.empty(), Optional.empty(), 1);
  }

  /** Returns a target range for the middle joint. */
  public static PoseTarget pip(Finger finger, FlexionRange range) {
    Objects.requireNonNull(finger, "finger");
    Objects.requireNonNull(range, "range");
    return new PoseTarget(finger, Optional.of(range), Optional.empty(), Optional.empty(), 1);
  }

  /** Returns this target with another share of the load. */
  public PoseTarget withShare(double other) {
    return new PoseTarget(finger, pip, mcp, dip, other);
  }

  /**
   * Returns the range of the middle joint: its target narrowed to the joint's limits. Without a
   * target it is the joint's own range, or else the norm.
   *
   * @param limits the limits of this athlete's joints
   */
  public FlexionRange reach(JointLimits limits) {
    Optional<FlexionRange> own = limits.of(finger, Joint.PIP);
    return pip.map(asked -> own.map(asked::within).orElse(asked))
        .or(() -> own)
        .orElseGet(() -> JointNorms.AAOS.of(Joint.PIP));
  }

  /**
   * Returns whether the finger may be straight. Such a finger may use less of its pad if it is too
   * short.
   *
   * @param limits the limits of this athlete's joints
   */
  public boolean mayBeStraight(JointLimits limits) {
    return reach(limits).low().degrees() <= 0;
  }

  /** Returns the maximum downward tip of the end bone, in degrees. */
  public double greatestPitch() {
    return dip.isPresent() && dip.get().high().degrees() < 0 ? FLAT_PITCH : GREATEST_PITCH;
  }
}
