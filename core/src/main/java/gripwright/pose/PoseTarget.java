package gripwright.pose;

import gripwright.hand.Finger;
import gripwright.hand.FlexionRange;
import gripwright.hand.Joint;
import gripwright.hand.JointLimits;
import gripwright.hand.JointNorms;
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
 * @param share of the load beside the other fingers, above 0; only proportions count
 */
public record PoseTarget(
    Finger finger,
    Optional<FlexionRange> pip,
    Optional<FlexionRange> mcp,
    Optional<FlexionRange> dip,
    double share) {

  /** The farthest that the end bone tips, its tip down, in degrees; the library's own choice. */
  public static final double GREATEST_PITCH = 45;

  /**
   * The farthest that the end bone tips where the end joint is to be bent backwards, in degrees:
   * that is done by pressing the pad flat. The library's own choice.
   */
  public static final double FLAT_PITCH = 10;

  /**
   * Refuses null.
   *
   * @throws IllegalArgumentException if the share is not above 0
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

  /** Returns a finger that only has to reach the edge. */
  public static PoseTarget free(Finger finger) {
    return new PoseTarget(finger, Optional.empty(), Optional.empty(), Optional.empty(), 1);
  }

  /** Returns a finger whose middle joint has a range. */
  public static PoseTarget pip(Finger finger, FlexionRange range) {
    Objects.requireNonNull(finger, "finger");
    Objects.requireNonNull(range, "range");
    return new PoseTarget(finger, Optional.of(range), Optional.empty(), Optional.empty(), 1);
  }

  /** Returns this target with another share of the load, above 0. */
  public PoseTarget withShare(double other) {
    return new PoseTarget(finger, pip, mcp, dip, other);
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

  /**
   * Tells whether a finger may be straight, and so may hold with less of its pad where it is too
   * short for all of it.
   *
   * @param limits how far this athlete's joints move
   */
  public boolean mayBeStraight(JointLimits limits) {
    return reach(limits).low().degrees() <= 0;
  }

  /** Returns how far the end bone tips at most, in degrees. */
  public double greatestPitch() {
    return dip.isPresent() && dip.get().high().degrees() < 0 ? FLAT_PITCH : GREATEST_PITCH;
  }
}
