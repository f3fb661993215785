package gripwright.grip;

import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.FlexionRange;
import gripwright.hand.Hand;
import gripwright.hand.HandPose;
import gripwright.hand.HandShape;
import gripwright.hand.Joint;
import gripwright.hand.JointNorms;
import gripwright.pose.PalmLimits;
import gripwright.pose.PoseSolver;
import gripwright.pose.PoseTarget;
import gripwright.quantity.Angle;
import gripwright.quantity.Length;
import gripwright.statics.TendonModel;
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
 * no finger is too short by more than {@link #REACH_TOLERANCE} of the hand's length, one that may
 * be straight by more than that and the part of its pad that it holds without. Near a straight
 * finger a few degrees are less than that length, so there either will do: joint centres are known
 * to 1.4 mm (Buchholz B et al. 1992, Ergonomics 35(3):261-273). Where the athlete's own middle
 * joint was measured, the same holds of its limits; a finger without a band and without a limit
 * bends no further than the norm. Bands and limits of knuckle and end joint are wishes: they depend
 * on wrist and pad, which the model knows only roughly.
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
  private final TendonModel tendons;
  private final List<FitMiss> misses;

  // Computed on first use; every thread gets the same value.
  private volatile @Nullable Map<Grip.At, Band> personalBands;
  private volatile @Nullable List<FitAdvice> advice;
  private volatile @Nullable FitSpread spread;

  private GripFit(Grip grip, HandPose pose, TendonModel tendons) {
    this.grip = grip;
    this.pose = pose;
    this.tendons = tendons;
    this.misses = FitReasons.of(grip, pose, tendons);
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
    return of(grip, shape, edge, TendonModel.STANDARD);
  }

  /**
   * Fits a grip to a hand whose knuckles are held by other tendons than the standard ones.
   *
   * @param grip the grip
   * @param shape the hand, with its joints' limits where known
   * @param edge depth of the edge, above 0
   * @param tendons moment arms and the like
   * @throws IllegalArgumentException if the edge has no depth
   */
  public static GripFit of(Grip grip, HandShape shape, Length edge, TendonModel tendons) {
    return new GripFit(grip, solve(grip, shape, edge, tendons), tendons);
  }

  /** Returns the pose alone. */
  static HandPose solve(Grip grip, HandShape shape, Length edge, TendonModel tendons) {
    return PoseSolver.solve(shape, edge, targets(grip), PalmLimits.USUAL, tendons);
  }

  /** Returns this fit as other tendons hold the hand; this one if they are the same. */
  public GripFit under(TendonModel others) {
    return others.equals(tendons) ? this : of(grip, pose.shape(), pose.edge(), others);
  }

  /** Returns what tendons hold the hand in its pose. */
  public TendonModel tendons() {
    return tendons;
  }

  /** Returns whether a hand takes a grip in a pose. */
  static boolean takes(Grip grip, HandPose pose) {
    return FitReasons.misses(grip, pose).isEmpty();
  }

  static List<PoseTarget> targets(Grip grip) {
    Map<Finger, Double> shares = FingerShares.required(grip);
    return grip.fingers().fingers().stream()
        .map(finger -> target(grip, finger).withShare(shares.getOrDefault(finger, 1.0)))
        .toList();
  }

  static PoseTarget target(Grip grip, Finger finger) {
    return new PoseTarget(
        finger,
        grip.band(finger, Joint.PIP).map(GripFit::range),
        grip.band(finger, Joint.MCP).map(GripFit::range),
        grip.band(finger, Joint.DIP).map(GripFit::range),
        1);
  }

  static FlexionRange range(Band band) {
    return new FlexionRange(band.low(), band.high());
  }

  private static Band norm() {
    FlexionRange norm = JointNorms.AAOS.of(Joint.PIP);
    return new Band(norm.low(), norm.high());
  }

  private Map<Grip.At, Band> own() {
    Map<Grip.At, Band> bands = new LinkedHashMap<>();
    for (FingerPose finger : pose.fingers()) {
      for (Joint joint : Joint.values()) {
        double flexion = finger.flexion(joint).degrees();
        double low = flexion - OWN_BAND;
        double high = flexion + OWN_BAND;
        if (joint == Joint.PIP) {
          Band required = grip.band(finger.finger(), joint).orElseGet(GripFit::norm);
          low = Math.min(flexion, Math.max(low, required.low().degrees()));
          high = Math.max(flexion, Math.min(high, required.high().degrees()));
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

  /** Returns whether this hand takes this grip on this edge. */
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
    Map<Grip.At, Band> known = personalBands;
    if (known == null) {
      known = misses.isEmpty() ? own() : Map.of();
      personalBands = known;
    }
    return known;
  }

  /** Returns which fingers not to force at high intensity, and why. */
  public List<FitAdvice> advice() {
    List<FitAdvice> known = advice;
    if (known == null) {
      known = misses.isEmpty() ? new ForcedFingers(grip, pose, tendons).advice() : List.of();
      advice = known;
    }
    return known;
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

  /** Returns whether another fit is of the same grip, hand, edge and tendons. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof GripFit that
        && grip.equals(that.grip)
        && pose.shape().equals(that.pose.shape())
        && pose.edge().equals(that.pose.edge())
        && tendons.equals(that.tendons);
  }

  @Override
  public int hashCode() {
    return Objects.hash(grip, pose.shape(), pose.edge(), tendons);
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
