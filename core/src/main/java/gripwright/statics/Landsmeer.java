package gripwright.statics;

/**
 * Tendon excursion as a function of joint flexion, for three models of the tendon's path. The
 * moment arm is the derivative of the excursion by the angle.
 *
 * <p>Source: Landsmeer JMF 1961, Acta Morphol Neerl Scand 3:287-303 (from memory). Lengths in mm,
 * angles in radians, 0 to pi; excursions in mm.
 */
public final class Landsmeer {

  private static final double SMALL = 1e-4;

  private Landsmeer() {}

  /**
   * Model I: the tendon follows the round end of the bone.
   *
   * @param radius of that end
   * @param angle flexion
   */
  public static double onBone(double radius, double angle) {
    return radius * angle;
  }

  /**
   * Model II: a sling at the joint's axis holds the tendon, which runs straight to either side.
   *
   * @param radius distance of the sling from the axis
   * @param angle flexion
   */
  public static double inSling(double radius, double angle) {
    return 2 * radius * Math.sin(angle / 2);
  }

  /**
   * Model III: sheaths hold the tendon on both sides of the joint. If {@code toSheath} is 0, this
   * is model I.
   *
   * @param depth distance from the tendon to the bone's axis
   * @param toSheath distance from the joint to the end of the sheath
   * @param angle flexion, below pi
   */
  public static double inSheath(double depth, double toSheath, double angle) {
    double half = angle / 2;
    double corner = half < SMALL ? half * half / 3 : 1 - half / Math.tan(half);
    return angle * depth + 2 * toSheath * corner;
  }

  /** Returns the moment arm of model III, in mm, which grows with flexion. */
  public static double armInSheath(double depth, double toSheath, double angle) {
    double half = angle / 2;
    double growth =
        half < SMALL ? half / 3 * 2 : half / (Math.sin(half) * Math.sin(half)) - 1 / Math.tan(half);
    return depth + toSheath * growth;
  }
}
