package gripwright.hand;

/**
 * The triangle of knuckle, middle joint and end joint of a finger whose pad lies on an edge, in mm
 * and radians. Immutable.
 */
public final class EdgeGeometry {

  /** Least sine that a derivative is divided by: a nearly straight joint turns fast. */
  private static final double LEAST_SINE = 0.02;

  /**
   * Share of the pad on the edge that a straight finger may hold without; the library's own choice.
   */
  private static final double PAD_TO_SPARE = 0.5;

  private final double proximal;
  private final double middle;
  private final double distal;
  private final double edge;
  private final double across;
  private final double behind;

  /**
   * Prepares a finger.
   *
   * @param shape the hand
   * @param finger which
   * @param edge depth of the edge in mm, above 0
   */
  public EdgeGeometry(HandShape shape, Finger finger, double edge) {
    proximal = shape.boneMillimetres(finger, Segment.PROXIMAL);
    middle = shape.boneMillimetres(finger, Segment.MIDDLE);
    distal = shape.boneMillimetres(finger, Segment.DISTAL);
    this.edge = edge;
    across = shape.knuckleAcross(finger);
    behind = shape.knuckleAlong(Finger.MIDDLE) - shape.knuckleAlong(finger);
  }

  /**
   * Returns how far the end joint lies from the back of the edge, in mm: a bone's length on a deep
   * edge; on a shallower one half a bone beyond the middle of the edge, where the pad's middle
   * lies.
   */
  public double endJoint() {
    return distal <= edge ? distal : (edge + distal) / 2;
  }

  /** Returns the length of the end bone, in mm. */
  public double endBone() {
    return distal;
  }

  /**
   * Returns how much of its pad a straight finger may hold without that is too short for the rest,
   * in mm: half of what lies on the edge.
   */
  public double padToSpare() {
    return PAD_TO_SPARE * Math.min(distal, edge);
  }

  /** Returns how far across the palm's middle plane the knuckle lies, in mm, above 0 thumbwards. */
  double acrossAt(double tilt) {
    return across * Math.cos(tilt) - behind * Math.sin(tilt);
  }

  /**
   * Where the knuckle lies from the end joint, with the derivatives by the palm's position.
   *
   * @param out away from the wall, in mm; its derivative by the palm's distance is 1
   * @param down below the end joint, in mm; its derivative by the palm's depth is 1
   * @param outByRoll derivative, mm a radian
   * @param outByTilt derivative, mm a radian
   * @param downByTilt derivative, mm a radian
   */
  public record Reach(
      double out, double down, double outByRoll, double outByTilt, double downByTilt) {

    /** Returns how far knuckle and end joint lie apart, in mm. */
    public double distance() {
      return Math.hypot(out, down);
    }
  }

  /**
   * Returns where the knuckle lies for a position of the palm.
   *
   * @param distance of the palm, in mm
   * @param depth of the palm, in mm
   * @param roll in radians
   * @param tilt in radians
   */
  public Reach reach(double distance, double depth, double roll, double tilt) {
    double cosine = Math.cos(tilt);
    double sine = Math.sin(tilt);
    double sideways = across * cosine - behind * sine;
    double downwards = behind * cosine + across * sine;
    return new Reach(
        distance + sideways * Math.sin(roll) - endJoint(),
        depth + downwards,
        sideways * Math.cos(roll),
        -downwards * Math.sin(roll),
        sideways);
  }

  /** Returns the distance from end joint to knuckle at a flexion of the middle joint in degrees. */
  public double distanceAt(double flexion) {
    double cosine = Math.cos(Math.toRadians(Math.max(0, flexion)));
    return Math.sqrt(proximal * proximal + middle * middle + 2 * proximal * middle * cosine);
  }

  /** Returns the distance from end joint to knuckle of a straight finger, in mm. */
  public double straight() {
    return proximal + middle;
  }

  /** Returns the middle joint's flexion in radians, 0 if the finger is too short. */
  public double flexion(double distance) {
    double cosine =
        (distance * distance - proximal * proximal - middle * middle) / (2 * proximal * middle);
    return Math.acos(Math.max(-1, Math.min(1, cosine)));
  }

  /**
   * Returns the derivative of {@link #flexion}, bounded near a straight joint.
   *
   * @param distance from end joint to knuckle, in mm
   * @param flexion at this distance, in radians
   */
  public double flexionByDistance(double distance, double flexion) {
    double sine = Math.max(LEAST_SINE, Math.sin(flexion));
    return -distance / (proximal * middle * sine);
  }

  /** Returns the angle at the end joint between knuckle and middle joint, in radians. */
  public double lift(double distance) {
    return Math.acos(Math.max(-1, Math.min(1, liftCosine(distance))));
  }

  private double liftCosine(double distance) {
    return (middle * middle + distance * distance - proximal * proximal) / (2 * middle * distance);
  }

  /**
   * Returns the derivative of {@link #lift}, bounded near a straight joint.
   *
   * @param distance from end joint to knuckle, in mm
   * @param lift at this distance, in radians
   */
  public double liftByDistance(double distance, double lift) {
    double sine = Math.max(LEAST_SINE, Math.sin(lift));
    double byDistance =
        (distance * distance - middle * middle + proximal * proximal)
            / (2 * middle * distance * distance);
    return -byDistance / sine;
  }
}
