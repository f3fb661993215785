package gripwright.pose;

/**
 * How far the palm may roll about the forearm's axis, in degrees; positive if the little finger's
 * side moves towards the edge.
 *
 * <p>A palm that faces the wall puts the forearm near its maximum pronation, so it can roll little
 * further that way but far the other way. The norm is 80 deg of pronation and 80 of supination
 * (American Academy of Orthopaedic Surgeons, Joint Motion, 1965; from memory). The limits here,
 * from 20 deg inwards to half the norm of supination outwards, and the range that counts as neutral
 * are the library's own choice.
 *
 * @param least lowest roll, 0 or below
 * @param greatest highest roll, 0 or above
 */
public record PalmLimits(double least, double greatest) {

  /** Norm of pronation and of supination, in degrees. */
  public static final double FOREARM_NORM = 80;

  /**
   * How far the palm tilts in its own plane to either side, in degrees; the library's own choice,
   * equal to the norm of radial deviation of the wrist (American Academy of Orthopaedic Surgeons,
   * 1965; from memory). In a hang the forearm leans with the palm, so a tilt forces no finger.
   */
  public static final double TILT = 20;

  /** Roll within 10 deg of square, which needs no attention; the library's own choice. */
  public static final PalmLimits NEUTRAL = new PalmLimits(-10, 10);

  /** Roll that a hanging hand reaches without strain; the library's own choice. */
  public static final PalmLimits USUAL = new PalmLimits(-20, FOREARM_NORM / 2);

  /**
   * Checks the order.
   *
   * @throws IllegalArgumentException unless least is negative and greatest positive, both within
   *     the norm
   */
  public PalmLimits {
    if (!(least < 0 && greatest > 0 && least >= -FOREARM_NORM && greatest <= FOREARM_NORM)) {
      throw new IllegalArgumentException("not limits of roll: " + least + " to " + greatest);
    }
  }

  /** Returns whether a roll in degrees is within the limits. */
  public boolean contains(double roll) {
    return roll >= least && roll <= greatest;
  }
}
