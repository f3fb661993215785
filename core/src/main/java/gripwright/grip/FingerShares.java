package gripwright.grip;

import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.HandPose;
import gripwright.hand.Joint;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * How the fingers share the force of a grip.
 *
 * <p>Open and half crimped, the middle finger leads, index and ring are equal and the little finger
 * is last: index, middle, ring and little 25, 35, 25 and 14 % (MacDermid JC et al. 2004, J Hand
 * Ther 17(3):364-367, gripping; good to 5 points). In a closed crimp the index finger leads and the
 * order is that of the hand (Finger load distribution in different types of climbing grips 2012,
 * Sports Technol 5(3-4):151-155, the order only): 35, 26, 25 and 14 % (Li ZM, Latash ML, Zatsiorsky
 * VM 1998, Exp Brain Res 119(3):276-286, fingertip pressing; from memory, not sure). From 95 to 105
 * deg of mean flexion of the middle joints one passes into the other, which is the library's own
 * choice. Fingers that do not hold leave their share to the others in proportion.
 */
public final class FingerShares {

  private static final double[] OPEN = {0.25, 0.35, 0.25, 0.14};
  private static final double[] CLOSED = {0.35, 0.26, 0.25, 0.14};
  private static final double OPEN_FLEXION = 95;
  private static final double CLOSED_FLEXION = 105;

  private FingerShares() {}

  /** Returns the shares in a grip bent as its bands ask; they sum to 1. */
  static Map<Finger, Double> required(Grip grip) {
    double flexion =
        grip.fingers().fingers().stream()
            .filter(finger -> finger != Finger.LITTLE || grip.fingers().count() == 1)
            .flatMap(finger -> grip.band(finger, Joint.PIP).stream())
            .mapToDouble(band -> Math.max(0, band.centre().degrees()))
            .average()
            .orElse(0);
    return of(grip.fingers(), flexion);
  }

  /** Returns the shares in a fitted grip; they sum to 1. */
  public static Map<Finger, Double> of(GripFit fit) {
    return of(fit.grip().fingers(), meanFlexion(fit.pose()));
  }

  /**
   * Returns what each of the four fingers would have of a whole hand bent as this pose is; they sum
   * to 1. A finger's part is what it can do beside the others.
   */
  public static Map<Finger, Double> ofWholeHand(HandPose pose) {
    return of(FingerSet.FOUR, meanFlexion(pose));
  }

  /** Mean flexion of the middle joints in degrees, but for a little finger that has company. */
  private static double meanFlexion(HandPose pose) {
    return pose.fingers().stream()
        .filter(finger -> finger.finger() != Finger.LITTLE || pose.fingers().size() == 1)
        .map(FingerPose::pip)
        .mapToDouble(pip -> pip.degrees())
        .average()
        .orElse(0);
  }

  /**
   * Returns the shares of equally bent fingers; they sum to 1.
   *
   * @param fingers the fingers that hold
   * @param flexion mean flexion of their middle joints in degrees
   */
  public static Map<Finger, Double> of(FingerSet fingers, double flexion) {
    double closed =
        Math.max(0, Math.min(1, (flexion - OPEN_FLEXION) / (CLOSED_FLEXION - OPEN_FLEXION)));
    Map<Finger, Double> shares = new EnumMap<>(Finger.class);
    double sum = 0;
    for (Finger finger : fingers.fingers()) {
      double share = (1 - closed) * OPEN[finger.ordinal()] + closed * CLOSED[finger.ordinal()];
      shares.put(finger, share);
      sum += share;
    }
    double whole = sum;
    shares.replaceAll((finger, share) -> share / whole);
    return Collections.unmodifiableMap(shares);
  }
}
