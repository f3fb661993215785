package gripwright.strength;

import gripwright.grip.FingerLoss;
import gripwright.grip.FingerSet;
import gripwright.grip.Setup;
import java.util.Optional;
import java.util.function.Function;

/**
 * The position of a setup on the strength map: its expected difference from the athlete's level,
 * and its covariance with others, all in logarithms of load.
 *
 * <p>Fewer fingers: the mean of the two views of {@link FingerLoss}, with half their difference as
 * the spread, which is one number for the athlete. For a single finger it is a number of its own,
 * so that no other fingers raise what is known of it; it stays near the lower view until that
 * finger is tested. Depth: {@link EdgeDepth}, whose power also has one spread, and another below 10
 * mm, where nothing is published. The rest belongs to the setup: one part is shared by setups with
 * similar fingers, angles and depth, another is specific to the grip. Each of these covariances is
 * positive semi-definite (some are squares, also within groups of setups, one a product of two that
 * are, one the identity of grips), and so is their sum.
 *
 * @param grip name of the grip
 * @param posture posture of the fingers
 * @param logDepth logarithm of the depth relative to 20 mm
 * @param expected logarithm of the load relative to four fingers on 20 mm
 * @param lossDoubt half the difference between the views of lost fingers
 * @param shallowDoubt the spread of an edge below 10 mm, 0 for deeper ones
 */
record Place(
    String grip,
    Posture posture,
    double logDepth,
    double expected,
    double lossDoubt,
    double shallowDoubt) {

  private static final double SETUP_VARIANCE = StrengthMap.SETUP_SPREAD * StrengthMap.SETUP_SPREAD;
  private static final double GRIP_VARIANCE = StrengthMap.GRIP_SPREAD * StrengthMap.GRIP_SPREAD;
  private static final double DEPTH_VARIANCE =
      StrengthMap.DEPTH_POWER_SPREAD * StrengthMap.DEPTH_POWER_SPREAD;

  static Place of(Setup setup, Function<Setup, Posture> postures) {
    return of(setup, postures, Optional.empty());
  }

  /**
   * Returns the place of a setup by one view of lost fingers.
   *
   * @param law the view; empty for the mean of both
   */
  static Place of(Setup setup, Function<Setup, Posture> postures, Optional<FingerLoss> law) {
    FingerSet fingers = setup.grip().fingers();
    double exclusion = Math.log(FingerLoss.EXCLUSION.capacity(fingers));
    double deficit = Math.log(FingerLoss.FORCE_DEFICIT.capacity(fingers));
    // The power of depth is taken at one edge for all, so that load never falls with depth.
    double power = EdgeDepth.power(postures.apply(setup.withEdge(EdgeDepth.PIVOT)));
    return new Place(
        setup.grip().name(),
        postures.apply(setup),
        Math.log(setup.edge().millimetres() / EdgeDepth.PIVOT.millimetres()),
        law.map(view -> Math.log(view.capacity(fingers))).orElse((exclusion + deficit) / 2)
            + EdgeDepth.logFactor(setup.edge(), power),
        (exclusion - deficit) / 2,
        EdgeDepth.doubt(setup.edge()));
  }

  /** Returns the covariance with another place; with itself the variance. */
  double covariance(Place other) {
    return covariance(other, similarity(other));
  }

  /**
   * Returns the similarity of fingers, angles and depth with another place, 0 to 1; 1 with itself.
   */
  double similarity(Place other) {
    double apart = (logDepth - other.logDepth) / StrengthMap.DEPTH_REACH;
    return posture.likeness(other.posture, Place::angleFalloff) * Math.exp(-apart * apart / 2);
  }

  /** Returns the covariance with another place whose similarity is known. */
  double covariance(Place other, double similarity) {
    double own = SETUP_VARIANCE * similarity;
    return own
        + (grip.equals(other.grip) ? GRIP_VARIANCE : 0)
        + (sharesLossDoubt(other) ? lossDoubt * other.lossDoubt : 0)
        + shallowDoubt * other.shallowDoubt
        + DEPTH_VARIANCE * logDepth * other.logDepth;
  }

  /** Returns whether both are the same finger, or neither is a single one. */
  private boolean sharesLossDoubt(Place other) {
    FingerSet here = posture.fingers();
    FingerSet there = other.posture.fingers();
    return here.equals(there) || (here.count() > 1 && there.count() > 1);
  }

  private static double angleFalloff(double degrees) {
    double deviate = degrees / StrengthMap.ANGLE_REACH;
    return Math.exp(-deviate * deviate / 2);
  }
}
