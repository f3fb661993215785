package gripwright.grip;

import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.FlexionRange;
import gripwright.hand.HandPose;
import gripwright.hand.Joint;
import gripwright.hand.JointLimits;
import gripwright.pose.PoseTarget;
import gripwright.quantity.Length;
import gripwright.statics.TendonModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Why a hand does not take a grip in a pose, finger by finger. */
final class FitReasons {

  private FitReasons() {}

  /**
   * What is missing; if the hand would take the grip but for its joints' limits, the joints in
   * whose way a limit stands.
   */
  static List<FitMiss> of(Grip grip, HandPose pose, TendonModel tendons) {
    List<FitMiss> misses = misses(grip, pose);
    if (misses.isEmpty() || pose.shape().limits().equals(JointLimits.UNKNOWN)) {
      return misses;
    }
    GripFit lifted =
        GripFit.of(grip, pose.shape().withLimits(JointLimits.UNKNOWN), pose.edge(), tendons);
    if (!lifted.reachable()) {
      return misses;
    }
    List<FitMiss> stiff = new ArrayList<>();
    for (FingerPose finger : lifted.pose().fingers()) {
      misses.stream()
          .filter(FitMiss.BeyondLimit.class::isInstance)
          .filter(miss -> miss.finger() == finger.finger())
          .findFirst()
          .or(() -> tooStiff(lifted.pose(), finger, pose.shape().limits()))
          .ifPresent(stiff::add);
    }
    return stiff.isEmpty() ? misses : List.copyOf(stiff);
  }

  private static Optional<FitMiss> tooStiff(
      HandPose lifted, FingerPose finger, JointLimits limits) {
    double flexion = Math.rint(finger.pip().degrees());
    return limits
        .of(finger.finger(), Joint.PIP)
        .flatMap(
            own -> {
              double off = Math.abs(missed(lifted, finger.finger(), flexion, own));
              Band needed = Band.degrees(flexion, flexion);
              return off == 0
                  ? Optional.empty()
                  : Optional.of(
                      new FitMiss.BeyondLimit(finger.finger(), Joint.PIP, needed, own, off));
            });
  }

  static List<FitMiss> misses(Grip grip, HandPose pose) {
    double tolerance = GripFit.REACH_TOLERANCE * pose.shape().length().millimetres();
    List<FitMiss> misses = new ArrayList<>();
    for (FingerPose finger : pose.fingers()) {
      PoseTarget target = GripFit.target(grip, finger.finger());
      FlexionRange range = target.reach(pose.shape().limits());
      double toSpare =
          target.mayBeStraight(pose.shape().limits()) ? pose.padToSpare(finger.finger()) : 0;
      double lacking = finger.beyondReach().millimetres() - toSpare;
      if (lacking > tolerance) {
        misses.add(new FitMiss.TooShort(finger.finger(), Length.ofMillimetres(lacking)));
        continue;
      }
      beyondLimit(grip, pose, finger.finger(), range)
          .or(() -> outOfBand(pose, finger, range))
          .ifPresent(misses::add);
    }
    return List.copyOf(misses);
  }

  /** What the narrowed range lacks of the grip's band, if the joint doesn't reach the band. */
  private static Optional<FitMiss> beyondLimit(
      Grip grip, HandPose pose, Finger finger, FlexionRange range) {
    Optional<Band> band = grip.band(finger, Joint.PIP);
    Optional<FlexionRange> own = pose.shape().limits().of(finger, Joint.PIP);
    if (band.isEmpty() || own.isEmpty()) {
      return Optional.empty();
    }
    double off = missed(pose, finger, GripFit.range(band.get()).nearest(range.centre()), own.get());
    return off == 0
        ? Optional.empty()
        : Optional.of(
            new FitMiss.BeyondLimit(finger, Joint.PIP, band.get(), own.get(), Math.abs(off)));
  }

  private static Optional<FitMiss> outOfBand(HandPose pose, FingerPose finger, FlexionRange range) {
    double off = missed(pose, finger.finger(), finger.pip().degrees(), range);
    return off == 0
        ? Optional.empty()
        : Optional.of(
            new FitMiss.OutOfBand(
                finger.finger(),
                Joint.PIP,
                new Band(range.low(), range.high()),
                finger.pip(),
                off));
  }

  /** Degrees that a flexion lies outside a range; 0 if they, or the way they cover, are too few. */
  private static double missed(HandPose pose, Finger finger, double flexion, FlexionRange range) {
    // The triangle knows no hyperextension: a band that ends below 0 is met by a straight finger.
    double off = range.miss(flexion);
    if (off > 0) {
      off = Math.max(0, flexion - Math.max(0, range.high().degrees()));
    }
    if (Math.abs(off) <= GripFit.BAND_TOLERANCE) {
      return 0;
    }
    double way =
        Math.abs(
            pose.distanceAt(finger, range.nearest(flexion)) - pose.distanceAt(finger, flexion));
    return way <= GripFit.REACH_TOLERANCE * pose.shape().length().millimetres() ? 0 : off;
  }
}
