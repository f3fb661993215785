package gripwright.hand;

import gripwright.quantity.Angle;
import gripwright.quantity.Length;
import java.util.Objects;

/**
 * How one finger lies on an edge.
 *
 * @param finger which
 * @param mcp flexion of the knuckle, as if the metacarpals went on from the forearm; a wrist that
 *     bends back adds to it
 * @param pip flexion of the middle joint, from the triangle of knuckle, middle and end joint; 0 if
 *     the finger is straight
 * @param dip flexion of the end joint, with the pad tipped as far as helps to keep it straight
 * @param rise of the middle bone above level, from end joint to middle joint; 90 deg if it stands
 *     upright, below 0 if the finger hangs
 * @param pitch of the end bone, its tip below level
 * @param reach from end joint to knuckle, in mm
 * @param beyondReach by how much a straight finger is too short, so that so much less of its pad
 *     holds; 0 if it reaches
 */
public record FingerPose(
    Finger finger,
    Angle mcp,
    Angle pip,
    Angle dip,
    Angle rise,
    Angle pitch,
    double reach,
    Length beyondReach) {
  /** Refuses null. */
  public FingerPose {
    Objects.requireNonNull(finger, "finger");
    Objects.requireNonNull(mcp, "mcp");
    Objects.requireNonNull(pip, "pip");
    Objects.requireNonNull(dip, "dip");
    Objects.requireNonNull(rise, "rise");
    Objects.requireNonNull(pitch, "pitch");
    Objects.requireNonNull(beyondReach, "beyondReach");
  }

  /**
   * Returns a finger bent as given, with its end bone level on a deep edge: the postures of the
   * cadaver tests.
   *
   * @param shape the hand
   * @param finger which
   * @param pip flexion of the middle joint in degrees, 0 to 150
   * @param dip flexion of the end joint in degrees, below 0 if it is bent backwards
   * @throws IllegalArgumentException if the middle joint is out of range
   */
  public static FingerPose level(HandShape shape, Finger finger, double pip, double dip) {
    if (!(pip >= 0 && pip <= 150)) {
      throw new IllegalArgumentException("not a flexion from 0 to 150 deg: " + pip);
    }
    double distal = shape.boneMillimetres(finger, Segment.DISTAL);
    EdgeGeometry geometry = new EdgeGeometry(shape, finger, distal);
    return new FingerPose(
        finger,
        Angle.ofDegrees(90 - pip - dip),
        Angle.ofDegrees(pip),
        Angle.ofDegrees(dip),
        Angle.ofDegrees(-dip),
        Angle.ZERO,
        geometry.distanceAt(pip),
        Length.ZERO);
  }

  /** Returns the flexion of a joint. */
  public Angle flexion(Joint joint) {
    return switch (joint) {
      case MCP -> mcp;
      case PIP -> pip;
      case DIP -> dip;
    };
  }
}
