package gripwright.grip;

import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.FlexionRange;
import gripwright.hand.Hand;
import gripwright.hand.HandPose;
import gripwright.hand.HandShape;
import gripwright.hand.Joint;
import gripwright.hand.JointLimits;
import gripwright.hand.JointNorms;
import gripwright.hand.PalmLimits;
import gripwright.hand.PoseSolver;
import gripwright.hand.PoseTarget;
import gripwright.quantity.Angle;
import gripwright.quantity.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A grip fitted to one hand on one edge: whether the hand takes it, how every finger lies, the
 * athlete's own bands, and which finger not to force. Immutable.
 *
 * <p>A hand takes a grip if every band of a middle joint is met within {@link #BAND_TOLERANCE} and
 * no finger is too short by more than {@link #REACH_TOLERANCE} of the hand's length. Near a
 * straight finger a few degrees are less than that length, so there either will do: joint centres
 * are known to 1.4 mm (Buchholz B et al. 1992, Ergonomics 35(3):261-273). Where the athlete's own
 * middle joint was measured, the same holds of its limits; a finger without a band and without a
 * limit bends no further than the norm. Bands and limits of knuckle and end joint are wishes: they
 * depend on wrist and pad, which the model knows only roughly.
 */
public final class GripFit {

  /** How far a middle joint may lie outside its band, in degrees; the library's own choice. */
  public static final double BAND_TOLERANCE = 3;

  /**
   * What a finger may lack, as a share of hand length: about 1.4 mm, the error of the joint
   * centres.
   */
  public static final double REACH_TOLERANCE = 0.0075;

  /** Half the width of an athlete's own band, in degrees; the library's own choice. */
  public static final double OWN_BAND = 10;

  private final Grip grip;
  private final HandPose pose;
  private final List<FitMiss> misses;
  private final Map<Grip.At, Band> personalBands;
  private final List<FitAdvice> advice;

  /** Worked out when first asked for; every thread would come to the same. */
  private volatile @Nullable FitSpread spread;

  private GripFit(Grip grip, HandPose pose) {
    this.grip = grip;
    this.pose = pose;
    this.misses = reasons(grip, pose);
    this.personalBands = misses.isEmpty() ? own() : Map.of();
    this.advice = misses.isEmpty() ? new ForcedFingers(grip, pose).advice() : List.of();
  }

  /** Fits a grip to a hand as it was measured; breadth that was not is that between the sexes. */
  public static GripFit of(Grip grip, Hand hand, Length edge) {
    return of(grip, HandShape.of(hand), edge);
  }

  /**
   * Fits a grip to a hand.
   *
   * @param grip the grip
   * @param shape the hand, with its joints' limits where known
   * @param edge depth of the edge, above 0
   * @throws IllegalArgumentException if the edge has no depth
   */
  public static GripFit of(Grip grip, HandShape shape, Length edge) {
    return new GripFit(grip, solve(grip, shape, edge));
  }

  /** Returns the pose alone. */
  static HandPose solve(Grip grip, HandShape shape, Length edge) {
    return PoseSolver.solve(shape, edge, targets(grip), PalmLimits.USUAL);
  }

  /** Tells whether a hand takes a grip in a pose. */
  static boolean takes(Grip grip, HandPose pose) {
    return misses(grip, pose).isEmpty();
  }

  static List<PoseTarget> targets(Grip grip) {
    return grip.fingers().fingers().stream().map(finger -> target(grip, finger)).toList();
  }

  private static PoseTarget target(Grip grip, Finger finger) {
    return new PoseTarget(
        finger,
        grip.band(finger, Joint.PIP).map(GripFit::range),
        grip.band(finger, Joint.MCP).map(GripFit::range),
        grip.band(finger, Joint.DIP).map(GripFit::range));
  }

  static FlexionRange range(Band band) {
    return new FlexionRange(band.low(), band.high());
  }

  /**
   * What is missing; if the hand would take the grip but for its joints' limits, the joints in
   * whose way a limit stands.
   */
  private static List<FitMiss> reasons(Grip grip, HandPose pose) {
    List<FitMiss> misses = misses(grip, pose);
    if (misses.isEmpty() || pose.shape().limits().equals(JointLimits.UNKNOWN)) {
      return misses;
    }
    GripFit lifted = of(grip, pose.shape().withLimits(JointLimits.UNKNOWN), pose.edge());
    if (!lifted.reachable()) {
      return misses;
    }
    List<FitMiss> stiff = new ArrayList<>();
    for (FingerPose finger : lifted.pose.fingers()) {
      misses.stream()
          .filter(FitMiss.BeyondLimit.class::isInstance)
          .filter(miss -> miss.finger() == finger.finger())
          .findFirst()
          .or(() -> tooStiff(lifted.pose, finger, pose.shape().limits()))
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
    double tolerance = REACH_TOLERANCE * pose.shape().length().millimetres();
    List<FitMiss> misses = new ArrayList<>();
    for (FingerPose finger : pose.fingers()) {
      if (finger.beyondReach().millimetres() > tolerance) {
        misses.add(new FitMiss.TooShort(finger.finger(), finger.beyondReach()));
        continue;
      }
      FlexionRange range = target(grip, finger.finger()).reach(pose.shape().limits());
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
    double off = missed(pose, finger, range(band.get()).nearest(range.centre()), own.get());
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

  private static Band norm() {
    FlexionRange norm = JointNorms.AAOS.of(Joint.PIP);
    return new Band(norm.low(), norm.high());
  }

  /** Degrees that a flexion lies outside a range; 0 if they, or the way they cover, are too few. */
  private static double missed(HandPose pose, Finger finger, double flexion, FlexionRange range) {
    // The triangle knows no hyperextension: a band that ends below 0 is met by a straight finger.
    double off = range.miss(flexion);
    if (off > 0) {
      off = Math.max(0, flexion - Math.max(0, range.high().degrees()));
    }
    if (Math.abs(off) <= BAND_TOLERANCE) {
      return 0;
    }
    double way =
        Math.abs(
            pose.distanceAt(finger, range.nearest(flexion)) - pose.distanceAt(finger, flexion));
    return way <= REACH_TOLERANCE * pose.shape().length().millimetres() ? 0 : off;
  }

  private Map<Grip.At, Band> own() {
    Map<Grip.At, Band> bands = new LinkedHashMap<>();
    for (FingerPose finger : pose.fingers()) {
      for (Joint joint : Joint.values()) {
        double flexion = finger.flexion(joint).degrees();
        double low = flexion - OWN_BAND;
        double high = flexion + OWN_BAND;
        if (joint == Joint.PIP) {
          Band asked = grip.band(finger.finger(), joint).orElseGet(GripFit::norm);
          low = Math.min(flexion, Math.max(low, asked.low().degrees()));
          high = Math.max(flexion, Math.min(high, asked.high().degrees()));
        }
        Optional<FlexionRange> limit = pose.shape().limits().of(finger.finger(), joint);
        if (limit.isPresent()) {
          low = Math.min(flexion, Math.max(low, limit.get().low().degrees()));
          high = Math.max(flexion, Math.min(high, limit.get().high().degrees()));
        }
        bands.put(
            new Grip.At(finger.finger(), joint),
            Band.degrees(Math.max(-180, low), Math.min(180, high)));
      }
    }
    return Collections.unmodifiableMap(bands);
  }

  /** Returns the grip. */
  public Grip grip() {
    return grip;
  }

  /** Returns the pose, the nearest one if the hand does not take the grip. */
  public HandPose pose() {
    return pose;
  }

  /** Returns the depth of the edge. */
  public Length edge() {
    return pose.edge();
  }

  /** Tells whether this hand takes this grip on this edge. */
  public boolean reachable() {
    return misses.isEmpty();
  }

  /** Returns what is missing, by finger; empty if the hand takes the grip. */
  public List<FitMiss> misses() {
    return misses;
  }

  /** Returns the flexion of a joint in the pose; empty if the finger does not hold. */
  public Optional<Angle> flexion(Finger finger, Joint joint) {
    return pose.finger(finger).map(found -> found.flexion(joint));
  }

  /**
   * Returns the athlete's own bands, by finger and joint in the order of the hand: around the pose,
   * inside the grip's band and the joints' limits. Those of knuckle and end joint are rough. Empty
   * if the hand does not take the grip.
   */
  public Map<Grip.At, Band> personalBands() {
    return personalBands;
  }

  /** Returns which fingers not to force at high intensity, and why. */
  public List<FitAdvice> advice() {
    return advice;
  }

  /** Returns how far the palm rolls about the forearm's axis. */
  public Angle wristRoll() {
    return pose.palm().roll();
  }

  /** Returns how far this fit may be otherwise because the hand is not known better. */
  public FitSpread spread() {
    FitSpread known = spread;
    if (known == null) {
      known = FitSpread.of(this);
      spread = known;
    }
    return known;
  }

  /** Tells whether another fit is of the same grip, hand and edge. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof GripFit that
        && grip.equals(that.grip)
        && pose.shape().equals(that.pose.shape())
        && pose.edge().equals(that.pose.edge());
  }

  @Override
  public int hashCode() {
    return Objects.hash(grip, pose.shape(), pose.edge());
  }

  /** Returns grip, edge, hand and whether it is taken. */
  @Override
  public String toString() {
    return grip.name()
        + " on "
        + edge()
        + " by "
        + pose.shape()
        + (reachable() ? "" : ", out of reach: " + misses);
  }
}
