package gripwright.hand;

import gripwright.quantity.Length;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A hand on an edge: where the palm is and how each finger lies that holds.
 *
 * @param shape the hand
 * @param edge depth of the edge
 * @param palm where the palm is
 * @param fingers how each finger lies that holds, in the order of the hand
 * @param residual what the solver left, half the sum of squares; 0 is a pose that meets every wish
 */
public record HandPose(
    HandShape shape, Length edge, PalmPosition palm, List<FingerPose> fingers, double residual) {

  /** Copies the fingers. */
  public HandPose {
    Objects.requireNonNull(shape, "shape");
    Objects.requireNonNull(edge, "edge");
    Objects.requireNonNull(palm, "palm");
    Objects.requireNonNull(fingers, "fingers");
    fingers = List.copyOf(fingers);
  }

  /** Returns how a finger lies; empty if it does not hold. */
  public Optional<FingerPose> finger(Finger finger) {
    return fingers.stream().filter(pose -> pose.finger() == finger).findFirst();
  }

  /**
   * A point, in mm from the edge's back below the middle finger's plane.
   *
   * @param right to the right of someone who faces the edge
   * @param out away from the wall
   * @param up upwards
   */
  public record Point(double right, double out, double up) {}

  /**
   * Returns the joint centres of a finger, for a picture: knuckle, middle joint, end joint and tip.
   * End joints lie on one level, 0 upwards. Tips do only where the end bones are tipped equally:
   * the solver tips each end bone after it has found the palm, so in a crimp the tips come to lie
   * up to 0.7 end bones below the edge's level, and a finger whose end bone stays level above the
   * others.
   *
   * @param finger a finger that holds
   * @param side which hand it is; the other one is its mirror image
   * @return four points, or none if the finger does not hold
   */
  public List<Point> points(Finger finger, Side side) {
    return finger(finger).map(pose -> chain(pose, side)).orElse(List.of());
  }

  private List<Point> chain(FingerPose pose, Side side) {
    Finger finger = pose.finger();
    double roll = Math.toRadians(palm.roll().degrees());
    // A right hand that holds an edge has its thumb on the left.
    double towardsThumb = side == Side.RIGHT ? -1 : 1;
    EdgeGeometry geometry = new EdgeGeometry(shape, finger, edge.millimetres());
    double tilt = Math.toRadians(palm.tilt().degrees());
    double across = towardsThumb * geometry.acrossAt(tilt) * Math.cos(roll);
    double distal = shape.boneMillimetres(finger, Segment.DISTAL);
    double middle = shape.boneMillimetres(finger, Segment.MIDDLE);
    double proximal = shape.boneMillimetres(finger, Segment.PROXIMAL);
    double out = geometry.endJoint();
    double rise = Math.toRadians(pose.rise().degrees());
    double pitch = Math.toRadians(pose.pitch().degrees());
    double fall = Math.toRadians(pose.pip().degrees() - pose.rise().degrees());
    Point end = new Point(across, out, 0);
    Point tip = new Point(across, out - distal * Math.cos(pitch), -distal * Math.sin(pitch));
    Point middleJoint = new Point(across, out + middle * Math.cos(rise), middle * Math.sin(rise));
    Point knuckle =
        new Point(
            across,
            middleJoint.out() + proximal * Math.cos(fall),
            middleJoint.up() - proximal * Math.sin(fall));
    return List.of(knuckle, middleJoint, end, tip);
  }

  /**
   * Returns how far end joint and knuckle of a finger lie apart at a flexion of its middle joint,
   * in mm. Hyperextension counts as straight.
   */
  public double distanceAt(Finger finger, double flexion) {
    return new EdgeGeometry(shape, finger, edge.millimetres()).distanceAt(flexion);
  }

  /**
   * Returns how much of its pad a finger that is too short may hold without, in mm, where it may be
   * straight.
   */
  public double padToSpare(Finger finger) {
    return new EdgeGeometry(shape, finger, edge.millimetres()).padToSpare();
  }
}
