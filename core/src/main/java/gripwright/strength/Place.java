package gripwright.strength;

import gripwright.grip.FingerLoss;
import gripwright.grip.FingerSet;
import gripwright.grip.Setup;
import java.util.function.Function;

/**
 * Where a setup lies on the strength map: what is expected of it beside the athlete's level, and
 * how far it goes together with others. All of it in logarithms of load.
 *
 * <p>Fewer fingers: the mean of the two views of {@link FingerLoss}, with half their difference as
 * the spread of what is right between them, which is one number for the athlete. Depth: {@link
 * EdgeDepth}, with the power's spread one number as well. What is left is the setup's own: one part
 * goes with likeness in fingers and angles and with nearness in depth, another with the grip and
 * nothing else. Each of the four covariances is positive semi-definite (two are squares, one a
 * product of two that are, one the identity of grips), and so is their sum.
 *
 * @param grip name of the grip
 * @param posture how the fingers lie
 * @param logDepth logarithm of the depth by that of 20 mm
 * @param expected logarithm of the load by that of four fingers on 20 mm
 * @param lossDoubt half of what the views of lost fingers differ by
 */
record Place(String grip, Posture posture, double logDepth, double expected, double lossDoubt) {

  private static final double SETUP_VARIANCE = StrengthMap.SETUP_SPREAD * StrengthMap.SETUP_SPREAD;
  private static final double GRIP_VARIANCE = StrengthMap.GRIP_SPREAD * StrengthMap.GRIP_SPREAD;
  private static final double DEPTH_VARIANCE =
      StrengthMap.DEPTH_POWER_SPREAD * StrengthMap.DEPTH_POWER_SPREAD;

  static Place of(Setup setup, Function<Setup, Posture> postures) {
    FingerSet fingers = setup.grip().fingers();
    double exclusion = Math.log(FingerLoss.EXCLUSION.capacity(fingers));
    double deficit = Math.log(FingerLoss.FORCE_DEFICIT.capacity(fingers));
    // The power of depth is asked of one edge for all, so that load never falls with depth.
    double power = EdgeDepth.power(postures.apply(setup.withEdge(EdgeDepth.PIVOT)));
    return new Place(
        setup.grip().name(),
        postures.apply(setup),
        Math.log(setup.edge().millimetres() / EdgeDepth.PIVOT.millimetres()),
        (exclusion + deficit) / 2 + EdgeDepth.logFactor(setup.edge(), power),
        (exclusion - deficit) / 2);
  }

  /** Returns the covariance with another place; with itself the variance. */
  double covariance(Place other) {
    double apart = (logDepth - other.logDepth) / StrengthMap.DEPTH_REACH;
    double own =
        SETUP_VARIANCE
            * posture.likeness(other.posture, Place::angleFalloff)
            * Math.exp(-apart * apart / 2);
    return own
        + (grip.equals(other.grip) ? GRIP_VARIANCE : 0)
        + lossDoubt * other.lossDoubt
        + DEPTH_VARIANCE * logDepth * other.logDepth;
  }

  private static double angleFalloff(double degrees) {
    double deviate = degrees / StrengthMap.ANGLE_REACH;
    return Math.exp(-deviate * deviate / 2);
  }
}
