package gripwright.grip;

import gripwright.hand.Finger;
import java.util.Map;

/**
 * What fewer fingers can hold, by three published views that disagree.
 *
 * <p>Taking fingers off a whole-hand grip costs more than their shares. Pressing with fewer
 * fingers, on the other hand, each finger reaches more of its own maximum, so that less is lost.
 * The first is the cautious view and the default; all are given so that the difference shows. Loads
 * rest on the first and the last, between which the second lies. Renormalising the shares at an
 * unchanged total is right in none.
 */
public enum FingerLoss {
  /**
   * Exclusion from grip: capacity goes with the sum of the fingers' shares to the power 1.8. The
   * exponent is the least-squares fit to losses of 33 % without the little and 54 % without ring
   * and little finger (Methot J, Chinchalkar SJ, Richards RS 2010, Can J Plast Surg 18(1):e10-e14;
   * from memory), so these two are no independent check. For one finger it is likely too
   * pessimistic.
   */
  EXCLUSION(1.8),
  /**
   * Weights of the fingers in a whole-hand grip: index 22, middle 31, ring and little together 29,
   * thumb 17 % (Comparison of grip strength among 6 grip methods, J Hand Surg Am 2014, doi
   * 10.1016/j.jhsa.2014.06.121). Read as losses, they are fitted by the sum of shares to the power
   * 0.8. They sum to 99 % with the thumb, so they may be normalised shares and no losses; no load
   * rests on them.
   */
  GRIP_WEIGHTS(0.8),
  /**
   * Force deficit: each of N fingers reaches N^-0.712 of its own maximum, so that N equal fingers
   * hold N^0.288 of one (Danion F et al. 2003, Biol Cybern 88:91-98; from memory). Unequal fingers
   * count by their shares. It loses less than the finger's share.
   */
  FORCE_DEFICIT(1 - FingerLoss.DEFICIT_EXPONENT);

  /** Exponent of the force deficit. Source: Danion F et al. 2003 (from memory). */
  public static final double DEFICIT_EXPONENT = 0.712;

  private final double exponent;

  FingerLoss(double exponent) {
    this.exponent = exponent;
  }

  /**
   * Returns what these fingers hold at most, as a share of what all four hold; 1 for four fingers,
   * never more for fewer.
   */
  public double capacity(FingerSet fingers) {
    Map<Finger, Double> all = FingerShares.of(FingerSet.FOUR, 0);
    double sum = 0;
    for (Finger finger : fingers.fingers()) {
      sum += all.getOrDefault(finger, 0.0);
    }
    return fingers.equals(FingerSet.FOUR) ? 1 : Math.pow(sum, exponent);
  }

  /**
   * Returns which share of its own maximum each of so many fingers reaches: {@code N^-0.712}.
   *
   * @param fingers 1 to 4
   * @throws IllegalArgumentException if there are not 1 to 4
   */
  public static double gain(int fingers) {
    if (fingers < 1 || fingers > Finger.values().length) {
      throw new IllegalArgumentException("not a number of fingers: " + fingers);
    }
    return Math.pow(fingers, -DEFICIT_EXPONENT);
  }
}
