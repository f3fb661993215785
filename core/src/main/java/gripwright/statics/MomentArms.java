package gripwright.statics;

import gripwright.hand.Finger;
import gripwright.hand.Joint;

/**
 * Published mean moment arms of the flexor tendons, in mm. They are not scaled to the hand, because
 * the size of the measured hands is not known. They vary by about 15 % between hands.
 */
public enum MomentArms {
  /**
   * Ketchum LD et al. 1978, J Hand Surg Am 3:571-578, as tabulated in handbooks of occupational
   * ergonomics.
   */
  KETCHUM_1978(
      new double[] {6.5, 7.0, 6.8, 6.0},
      new double[] {9.8, 10.7, 10.4, 8.5},
      new double[] {8.3, 8.7, 8.5, 7.4},
      new double[] {10.1, 11.6, 10.4, 8.9},
      new double[] {12.1, 14.0, 13.0, 9.8}),
  /**
   * An KN, Ueba Y, Chao EY, Cooney WP, Linscheid RL 1983, J Biomech 16(6):419-425; index finger,
   * from memory. The values of the other fingers follow from Ketchum's ratios to the index finger,
   * which is the library's own choice.
   */
  AN_1983(
      like(4.1, KETCHUM_1978.dipFdp),
      like(7.9, KETCHUM_1978.pipFdp),
      like(6.2, KETCHUM_1978.pipFds),
      like(11.1, KETCHUM_1978.mcpFdp),
      like(11.9, KETCHUM_1978.mcpFds)),
  /** {@link #AN_1983} at the end joint and {@link #KETCHUM_1978} elsewhere. */
  KETCHUM_1978_AN_END_JOINT(
      AN_1983.dipFdp,
      KETCHUM_1978.pipFdp,
      KETCHUM_1978.pipFds,
      KETCHUM_1978.mcpFdp,
      KETCHUM_1978.mcpFds);

  private final double[] dipFdp;
  private final double[] pipFdp;
  private final double[] pipFds;
  private final double[] mcpFdp;
  private final double[] mcpFds;

  MomentArms(double[] dipFdp, double[] pipFdp, double[] pipFds, double[] mcpFdp, double[] mcpFds) {
    this.dipFdp = dipFdp;
    this.pipFdp = pipFdp;
    this.pipFds = pipFds;
    this.mcpFdp = mcpFdp;
    this.mcpFds = mcpFds;
  }

  private static double[] like(double index, double[] pattern) {
    double[] arms = new double[pattern.length];
    for (int i = 0; i < arms.length; i++) {
      arms[i] = index * pattern[i] / pattern[0];
    }
    return arms;
  }

  /** Returns the moment arm of a tendon at a joint, in mm; 0 if it does not cross the joint. */
  public double arm(Finger finger, Joint joint, Tendon tendon) {
    int f = finger.ordinal();
    return switch (joint) {
      case DIP -> tendon == Tendon.FDP ? dipFdp[f] : 0;
      case PIP -> tendon == Tendon.FDP ? pipFdp[f] : pipFds[f];
      case MCP -> tendon == Tendon.FDP ? mcpFdp[f] : mcpFds[f];
    };
  }
}
