package gripwright.pose;

/**
 * How far the palm may roll about the forearm's axis, in degrees; above 0 the little finger's side
 * comes nearer to the edge.
 *
 * <p>A palm that faces the wall has the forearm close to its greatest pronation, so little is left
 * that way, and much the other way. The norm is 80 deg of pronation and 80 of supination (American
 * Academy of Orthopaedic Surgeons, Joint Motion, 1965; from memory). The limits here, from 20 deg
 * inwards to half the norm of supination outwards, and what counts as neutral, are the library's
 * own choice.
 *
 * @param least lowest roll, 0 or below
 * @param greatest highest roll, 0 or above
 */
public record PalmLimits(double least, double greatest) {

  /** Norm of pronation and of supination, in degrees. */
  public static final double FOREARM_NORM = 80;

  /**
   * How far the palm tilts in its own plane either way, in degrees; the library's own choice, the
   * norm of bending the wrist towards the thumb (American Academy of Orthopaedic Surgeons, 1965;
   * from memory). The forearm of a body that hangs leans with it, so no finger is forced by it.
   */
  public static final double TILT = 20;

  /** Roll within 10 deg of square, which needs no thought; the library's own choice. */
  public static final PalmLimits NEUTRAL = new PalmLimits(-10, 10);

  /** Roll as far as a hand that hangs goes without strain; the library's own choice. */
  public static final PalmLimits USUAL = new PalmLimits(-20, FOREARM_NORM / 2);

  /**
   * Checks the order.
   *
   * @throws IllegalArgumentException unless least is below 0 and greatest above 0, both within the
   *     norm
   */
  public PalmLimits {
    if (!(least < 0 && greatest > 0 && least >= -FOREARM_NORM && greatest <= FOREARM_NORM)) {
      throw new IllegalArgumentException("not limits of roll: " + least + " to " + greatest);
    }
  }

  /** Tells whether a roll in degrees lies within the limits. */
  public boolean contains(double roll) {
    return roll >= least && roll <= greatest;
  }
}
