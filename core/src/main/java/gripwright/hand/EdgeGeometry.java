package gripwright.hand;

/** The triangle of knuckle, middle joint and end joint of a finger whose pad lies on an edge. */
final class EdgeGeometry {

  /** Least sine that a derivative is divided by: a nearly straight joint turns fast. */
  private static final double LEAST_SINE = 0.02;

  private final double proximal;
  private final double middle;
  private final double distal;
  private final double endJoint;
  private final double across;
  private final double behind;

  EdgeGeometry(HandShape shape, Finger finger, double edge) {
    proximal = shape.boneMillimetres(finger, Segment.PROXIMAL);
    middle = shape.boneMillimetres(finger, Segment.MIDDLE);
    distal = shape.boneMillimetres(finger, Segment.DISTAL);
    endJoint = endJoint(distal, edge);
    across = shape.knuckleAcross(finger);
    behind = shape.knuckleAlong(Finger.MIDDLE) - shape.knuckleAlong(finger);
  }

  /**
   * Returns how far the end joint lies from the back of the edge, in mm: a bone's length on a deep
   * edge; on a shallower one half a bone beyond the middle of the edge, where the pad's middle
   * lies.
   */
  static double endJoint(double distal, double edge) {
    return distal <= edge ? distal : (edge + distal) / 2;
  }

  /** A palm's position and what follows from it for this finger, in mm. */
  record Reach(double out, double down, double distance) {}

  Reach reach(double palmDistance, double palmDepth, double roll) {
    double out = palmDistance + across * Math.sin(roll) - endJoint;
    double down = palmDepth + behind;
    return new Reach(out, down, Math.hypot(out, down));
  }

  /** Derivative of {@link Reach#out} by roll. */
  double outByRoll(double roll) {
    return across * Math.cos(roll);
  }

  /** Returns the distance from end joint to knuckle at a flexion of the middle joint in degrees. */
  double distanceAt(double flexion) {
    double cosine = Math.cos(Math.toRadians(Math.max(0, flexion)));
    return Math.sqrt(proximal * proximal + middle * middle + 2 * proximal * middle * cosine);
  }

  double straight() {
    return proximal + middle;
  }

  /** Returns the middle joint's flexion in radians, 0 if the finger is too short. */
  double flexion(double distance) {
    double cosine =
        (distance * distance - proximal * proximal - middle * middle) / (2 * proximal * middle);
    return Math.acos(Math.max(-1, Math.min(1, cosine)));
  }

  double flexionByDistance(double distance) {
    double sine = Math.max(LEAST_SINE, Math.sin(flexion(distance)));
    return -distance / (proximal * middle * sine);
  }

  /** Returns the angle at the end joint between knuckle and middle joint, in radians. */
  double lift(double distance) {
    return Math.acos(Math.max(-1, Math.min(1, liftCosine(distance))));
  }

  private double liftCosine(double distance) {
    return (middle * middle + distance * distance - proximal * proximal) / (2 * middle * distance);
  }

  double liftByDistance(double distance) {
    double sine = Math.max(LEAST_SINE, Math.sin(lift(distance)));
    double byDistance =
        (distance * distance - middle * middle + proximal * proximal)
            / (2 * middle * distance * distance);
    return -byDistance / sine;
  }

  double endJoint() {
    return endJoint;
  }

  /** Returns the level distance from end joint to contact, in mm, however the bone is tipped. */
  double contact() {
    return distal / 2;
  }
}
