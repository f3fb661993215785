package gripwright.tissue;

import gripwright.grip.FingerShares;
import gripwright.grip.GripFit;
import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import java.util.List;
import java.util.Map;

/**
 * Best estimate of what one finger bears of each newton that its hand holds: the values of {@link
 * TissueLoad} at 1 N without their intervals, which are what costs time there. Forces go in
 * proportion to the load, so that a load times these is the load's own estimate.
 *
 * @param finger which
 * @param fingertip force on the pad by force on the hand, 0 to 1
 * @param a2 force on the second annular pulley by force on the hand
 * @param a4 force on the fourth annular pulley by force on the hand
 */
public record FingerForces(Finger finger, double fingertip, double a2, double a4) {

  /**
   * Estimates the forces on the fingers that hold, in the order of the hand.
   *
   * @param fit a fitted grip; one that the hand does not take is estimated in its nearest pose
   * @param model named parameters
   */
  public static List<FingerForces> of(GripFit fit, TissueModel model) {
    Map<Finger, Double> shares = FingerShares.of(fit);
    return fit.pose().fingers().stream()
        .map(pose -> of(fit, pose, shares.getOrDefault(pose.finger(), 0.0), model))
        .toList();
  }

  private static FingerForces of(GripFit fit, FingerPose pose, double share, TissueModel model) {
    FingerStatics.Forces forces =
        new FingerStatics(fit.pose().shape(), pose, model).forces(Variation.NONE);
    return new FingerForces(pose.finger(), share, forces.a2() * share, forces.a4() * share);
  }
}
