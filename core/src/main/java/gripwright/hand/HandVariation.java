package gripwright.hand;

/**
 * Hands as one that was measured may really be: each bone and knuckle departs from its measure or
 * its estimate by a random draw, each on its own.
 *
 * <p>Standard deviations: an estimated bone {@value #ESTIMATED_BONE} of its length (Buchholz B,
 * Armstrong TJ, Goldstein SA 1992, Ergonomics 35(3):261-273: good to about 8 % for one person). Two
 * ways to find a joint's centre agree within 1.4 mm there, taken as two standard deviations: a
 * measured bone is good to 1 mm, one that ends at the tip to 0.7 mm, a measured knuckle to 1 mm. An
 * estimated knuckle takes 2 mm along the hand and 8 % across it, an estimated breadth 5 % (about
 * that of adults' breadth in Gordon CC et al. 2014, NATICK/TR-15/007); these are the library's own
 * choice. Hand length and a measured breadth count as known. That the middle finger's bones add up
 * to the hand's length is not used, so its spread is rather wide. Joint limits stay as measured.
 */
public final class HandVariation {

  static final double ESTIMATED_BONE = 0.08;

  private static final double JOINT_CENTRE = 0.7; // mm
  private static final double MEASURED_BONE = 1.0; // mm: two joint centres
  private static final double ESTIMATED_KNUCKLE = 2.0; // mm
  private static final double ACROSS = 0.08;
  private static final double ESTIMATED_BREADTH = 0.05;

  /** The least that is left of a bone or of the way to a knuckle. */
  private static final double LEAST = 0.3;

  private static final int FINGERS = Finger.values().length;
  private static final int SEGMENTS = Segment.values().length;
  private static final int BREADTH = FINGERS * SEGMENTS + 2 * FINGERS;
  private static final int NUMBERS = BREADTH + 1;

  private HandVariation() {}

  /**
   * Returns one hand of a sequence.
   *
   * @param shape the hand as it was measured
   * @param stream of random numbers that the sequence comes from; any value
   * @param number which of the sequence, 0 or more
   */
  public static HandShape draw(HandShape shape, long stream, int number) {
    double[] deviates = new double[NUMBERS];
    for (int i = 0; i < NUMBERS; i++) {
      deviates[i] = StandardNormal.draw(stream, (long) number * NUMBERS + i);
    }
    double[][] bones = new double[FINGERS][SEGMENTS];
    double[] along = new double[FINGERS];
    double[] across = new double[FINGERS];
    double breadth = shape.breadthEstimated() ? Math.exp(ESTIMATED_BREADTH * deviates[BREADTH]) : 1;
    for (Finger finger : Finger.values()) {
      int f = finger.ordinal();
      for (Segment segment : Segment.values()) {
        int s = segment.ordinal();
        bones[f][s] = bone(shape, finger, segment, deviates[f * SEGMENTS + s]);
      }
      int knuckle = FINGERS * SEGMENTS + 2 * f;
      along[f] = along(shape, finger, deviates[knuckle]);
      across[f] = shape.knuckleAcross(finger) * breadth * Math.exp(ACROSS * deviates[knuckle + 1]);
    }
    return shape.with(bones, along, across, shape.breadth().millimetres() * breadth);
  }

  private static double bone(HandShape shape, Finger finger, Segment segment, double deviate) {
    double usual = shape.boneMillimetres(finger, segment);
    if (!shape.measured(finger, segment)) {
      return usual * Math.exp(ESTIMATED_BONE * deviate);
    }
    double spread = segment == Segment.DISTAL ? JOINT_CENTRE : MEASURED_BONE;
    return Math.max(LEAST * usual, usual + spread * deviate);
  }

  /** The middle finger's knuckle is what the others are measured from. */
  private static double along(HandShape shape, Finger finger, double deviate) {
    double usual = shape.knuckleAlong(finger);
    if (finger == Finger.MIDDLE) {
      return usual;
    }
    double spread = shape.knuckleMeasured(finger) ? MEASURED_BONE : ESTIMATED_KNUCKLE;
    return Math.max(LEAST * usual, usual + spread * deviate);
  }
}
