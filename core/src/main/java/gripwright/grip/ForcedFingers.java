package gripwright.grip;

import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.FlexionRange;
import gripwright.hand.HandPose;
import gripwright.hand.Joint;
import gripwright.hand.JointLimits;
import gripwright.pose.PalmLimits;
import gripwright.pose.PoseSolver;
import gripwright.statics.TendonModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which fingers of a hand that takes a grip should not be forced, and why.
 *
 * <p>A flexion beyond the published norm is no reason: a pose that is taken keeps to the grip's own
 * band, and a band beyond the norm is told of the grip itself.
 */
final class ForcedFingers {

  /** A joint within so many degrees of the end of its band lies there. */
  private static final double END_OF_BAND = 1;

  private final Grip grip;
  private final HandPose pose;
  private final TendonModel tendons;
  private final List<FitAdvice> found = new ArrayList<>();

  ForcedFingers(Grip grip, HandPose pose, TendonModel tendons) {
    this.grip = grip;
    this.pose = pose;
    this.tendons = tendons;
  }

  List<FitAdvice> advice() {
    roll();
    for (FingerPose finger : pose.fingers()) {
      ownLimits(finger);
    }
    Set<Finger> atLimit =
        found.stream()
            .filter(advice -> advice.reason() == FitAdvice.Reason.AT_OWN_LIMIT)
            .map(FitAdvice::finger)
            .collect(Collectors.toSet());
    HandPose free = atLimit.isEmpty() ? pose : withoutLimits();
    for (FingerPose finger : pose.fingers()) {
      double away = away(finger);
      if (away > 0 && !atLimit.contains(finger.finger()) && awayToo(free, finger.finger())) {
        found.add(
            new FitAdvice(finger.finger(), Joint.PIP, FitAdvice.Reason.AWAY_FROM_NATURAL, away));
      }
      wishes(finger);
    }
    return List.copyOf(found);
  }

  private HandPose withoutLimits() {
    return PoseSolver.solve(
        pose.shape().withLimits(JointLimits.UNKNOWN),
        pose.edge(),
        GripFit.targets(grip),
        PalmLimits.USUAL,
        tendons);
  }

  /** A finger that lies well once no limit holds another back is not the one to blame. */
  private boolean awayToo(HandPose free, Finger finger) {
    return free.finger(finger).filter(lying -> away(lying) > 0).isPresent();
  }

  private void roll() {
    double roll = pose.palm().roll().degrees();
    if (PalmLimits.NEUTRAL.contains(roll)) {
      return;
    }
    double beyond =
        Math.max(roll - PalmLimits.NEUTRAL.greatest(), PalmLimits.NEUTRAL.least() - roll);
    HandPose square =
        PoseSolver.solve(
            pose.shape(), pose.edge(), GripFit.targets(grip), PalmLimits.NEUTRAL, tendons);
    for (FitMiss miss : FitReasons.misses(grip, square)) {
      found.add(new FitAdvice(miss.finger(), Joint.PIP, FitAdvice.Reason.WRIST_ROLL, beyond));
    }
  }

  /**
   * Degrees from the middle of its band where the pose leaves a finger at the end of it, or beyond;
   * else 0. A straight finger in a band that begins there lies as it falls: nothing forces it.
   */
  private double away(FingerPose finger) {
    Optional<Band> band = grip.band(finger.finger(), Joint.PIP);
    if (band.isEmpty() || pose.fingers().size() == 1) {
      return 0;
    }
    if (Math.max(finger.pip().degrees(), band.get().low().degrees()) <= END_OF_BAND) {
      return 0;
    }
    double half = (band.get().high().degrees() - band.get().low().degrees()) / 2;
    double away = Math.abs(finger.pip().degrees() - band.get().centre().degrees());
    return away > Math.max(GripFit.BAND_TOLERANCE, half - END_OF_BAND) ? away : 0;
  }

  private void ownLimits(FingerPose finger) {
    for (Joint joint : Joint.values()) {
      Optional<FlexionRange> own = pose.shape().limits().of(finger.finger(), joint);
      if (own.isEmpty()) {
        continue;
      }
      double flexion = finger.flexion(joint).degrees();
      double beyond = Math.abs(own.get().miss(flexion));
      if (beyond > GripFit.BAND_TOLERANCE) {
        found.add(new FitAdvice(finger.finger(), joint, FitAdvice.Reason.BEYOND_OWN_LIMIT, beyond));
      } else if (joint == Joint.PIP && atEnd(own.get(), flexion)) {
        double room =
            Math.min(
                Math.abs(own.get().high().degrees() - flexion),
                Math.abs(flexion - own.get().low().degrees()));
        found.add(new FitAdvice(finger.finger(), joint, FitAdvice.Reason.AT_OWN_LIMIT, room));
      }
    }
  }

  /** A joint that straightens lies straight as it falls: only one that doesn't is at that end. */
  private static boolean atEnd(FlexionRange own, double flexion) {
    double low = own.low().degrees();
    return flexion >= own.high().degrees() - GripFit.BAND_TOLERANCE
        || (low > END_OF_BAND && flexion <= low + GripFit.BAND_TOLERANCE);
  }

  private void wishes(FingerPose finger) {
    for (Joint joint : List.of(Joint.MCP, Joint.DIP)) {
      grip.band(finger.finger(), joint)
          .map(band -> Math.abs(GripFit.range(band).miss(finger.flexion(joint).degrees())))
          .filter(off -> off > GripFit.BAND_TOLERANCE)
          .ifPresent(
              off ->
                  found.add(
                      new FitAdvice(finger.finger(), joint, FitAdvice.Reason.WISH_NOT_MET, off)));
    }
  }
}
