package gripwright.hand;

import gripwright.hand.Hand.Bone;
import gripwright.quantity.Length;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a hand's posture depends on: the lengths of twelve finger bones, the places of the four
 * knuckles, and how far the joints move.
 *
 * <p>What was not measured is estimated from the hand's length and breadth. A bone is a fixed share
 * of hand length; a knuckle's place along the middle metacarpal is a share of hand length, and its
 * place across it a share of hand breadth. Source of the shares: Buchholz B, Armstrong TJ,
 * Goldstein SA 1992, Ergonomics 35(3):261-273. For one person, a bone is good to about 8 %; joint
 * centres are good to 1.4 mm. Breadth that was not measured is estimated from length by the means
 * of Gordon CC et al. 2014, NATICK/TR-15/007. How far a joint moves is never estimated. Immutable.
 */
public final class HandShape {

  /** Bones by finger (index first) and segment (proximal first), as shares of hand length. */
  private static final double[][] BONES = {
    {0.245, 0.143, 0.097}, {0.266, 0.170, 0.108}, {0.244, 0.165, 0.107}, {0.204, 0.117, 0.093}
  };

  /** Knuckles: distance from the wrist crease along the middle metacarpal by hand length. */
  private static final double[] AXIAL = {0.447, 0.446, 0.409, 0.368};

  /** Knuckles: distance towards the thumb from the middle metacarpal by hand breadth. */
  private static final double[] RADIAL = {0.251, 0, -0.206, -0.402};

  private static final double FEMALE_BREADTH = 78.2 / 181.1;
  private static final double MALE_BREADTH = 88.3 / 193.3;

  private final double length;
  private final double breadth;
  private final double[][] bones;

  /** How far the knuckles lie along the hand, and across it. */
  private final double[][] knuckles;

  private final Measured measured;
  private final JointLimits limits;

  /** What was measured and not estimated. */
  private record Measured(boolean breadth, Set<Bone> bones, Set<Finger> knuckles) {
    static Measured of(Hand hand) {
      return new Measured(
          hand.breadth().isPresent(),
          Set.copyOf(hand.bones().keySet()),
          Set.copyOf(hand.knuckles().keySet()));
    }
  }

  private HandShape(
      double length,
      double breadth,
      double[][] bones,
      double[][] knuckles,
      Measured measured,
      JointLimits limits) {
    this.length = length;
    this.breadth = breadth;
    this.bones = bones;
    this.knuckles = knuckles;
    this.measured = measured;
    this.limits = limits;
  }

  /** Returns the shape of a hand; breadth that was not measured is that between the sexes. */
  public static HandShape of(Hand hand) {
    return of(hand, Optional.empty());
  }

  /**
   * Returns the shape of a hand.
   *
   * @param hand what was measured; every measure stands over its estimate
   * @param sex for breadth, if it was not measured; the mean of both sexes if empty
   */
  public static HandShape of(Hand hand, Optional<Sex> sex) {
    double length = hand.length().millimetres();
    double breadth =
        hand.breadth().map(Length::millimetres).orElseGet(() -> length * breadthShare(sex));
    double[][] bones = new double[BONES.length][Segment.values().length];
    double[] axial = new double[BONES.length];
    for (Finger finger : Finger.values()) {
      int f = finger.ordinal();
      for (Segment segment : Segment.values()) {
        Length measured = hand.bones().get(new Bone(finger, segment));
        double bone =
            measured == null ? BONES[f][segment.ordinal()] * length : measured.millimetres();
        bones[f][segment.ordinal()] = bone;
      }
      Length offset = hand.knuckles().get(finger);
      axial[f] =
          offset == null
              ? AXIAL[f] * length
              : AXIAL[Finger.MIDDLE.ordinal()] * length - offset.millimetres();
    }
    return new HandShape(
        length,
        breadth,
        bones,
        new double[][] {axial, scaled(RADIAL, breadth)},
        Measured.of(hand),
        hand.limits());
  }

  /**
   * Returns the estimated breadth of a hand by its length: the mean ratio of the sex, or of both.
   */
  public static double breadthShare(Optional<Sex> sex) {
    if (sex.isEmpty()) {
      return (FEMALE_BREADTH + MALE_BREADTH) / 2;
    }
    return sex.get() == Sex.FEMALE ? FEMALE_BREADTH : MALE_BREADTH;
  }

  /**
   * Returns how far the middle finger's knuckle lies from the wrist crease in a hand of a length.
   * Other knuckles lie behind it by less.
   */
  public static Length middleKnuckle(Length hand) {
    return Length.ofMillimetres(AXIAL[Finger.MIDDLE.ordinal()] * hand.millimetres());
  }

  /** Returns the hand's length, wrist crease to tip of the middle finger. */
  public Length length() {
    return Length.ofMillimetres(length);
  }

  /** Returns the breadth across the knuckles. */
  public Length breadth() {
    return Length.ofMillimetres(breadth);
  }

  /** Returns whether breadth is an estimate from length. */
  public boolean breadthEstimated() {
    return !measured.breadth();
  }

  /** Returns a bone's length from joint centre to joint centre, or to the tip. */
  public Length bone(Finger finger, Segment segment) {
    return Length.ofMillimetres(boneMillimetres(finger, segment));
  }

  double boneMillimetres(Finger finger, Segment segment) {
    return bones[finger.ordinal()][segment.ordinal()];
  }

  /** Returns how far a knuckle lies from the wrist crease along the middle metacarpal, in mm. */
  public double knuckleAlong(Finger finger) {
    return knuckles[0][finger.ordinal()];
  }

  /**
   * Returns how far a knuckle lies from the middle metacarpal's axis, in mm: above 0 towards the
   * thumb, below 0 towards the little finger's side.
   */
  public double knuckleAcross(Finger finger) {
    return knuckles[1][finger.ordinal()];
  }

  /** Returns whether a bone was measured; otherwise it is an estimate from the hand's length. */
  public boolean measured(Finger finger, Segment segment) {
    return measured.bones().contains(new Bone(finger, segment));
  }

  /** Returns whether any bone is an estimate from the hand's length. */
  public boolean bonesEstimated() {
    return measured.bones().size() < BONES.length * Segment.values().length;
  }

  /** Returns whether a knuckle's place along the hand was measured, from the middle finger's. */
  public boolean knuckleMeasured(Finger finger) {
    return measured.knuckles().contains(finger);
  }

  /** Returns a hand of other lengths, in mm, whose length, joints and measures are the same. */
  HandShape with(double[][] otherBones, double[] along, double[] across, double otherBreadth) {
    return new HandShape(
        length, otherBreadth, otherBones, new double[][] {along, across}, measured, limits);
  }

  /** Returns a hand of the same lengths whose joints move otherwise. */
  public HandShape withLimits(JointLimits others) {
    return new HandShape(length, breadth, bones, knuckles, measured, others);
  }

  /** Returns how far the joints move, where that was measured. */
  public JointLimits limits() {
    return limits;
  }

  /**
   * Returns this shape with every length multiplied by a number; its joints move as before.
   *
   * @throws IllegalArgumentException if the factor is not above 0
   */
  public HandShape times(double factor) {
    if (!(factor > 0 && Double.isFinite(factor))) {
      throw new IllegalArgumentException("not a factor: " + factor);
    }
    double[][] scaled = new double[bones.length][];
    for (int f = 0; f < bones.length; f++) {
      scaled[f] = scaled(bones[f], factor);
    }
    return new HandShape(
        length * factor,
        breadth * factor,
        scaled,
        new double[][] {scaled(knuckles[0], factor), scaled(knuckles[1], factor)},
        measured,
        limits);
  }

  private static double[] scaled(double[] lengths, double factor) {
    return Arrays.stream(lengths).map(each -> each * factor).toArray();
  }

  /**
   * Returns whether another shape has the same lengths and limits, and the same of it was measured.
   */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof HandShape that
        && Double.compare(length, that.length) == 0
        && Double.compare(breadth, that.breadth) == 0
        && Arrays.deepEquals(bones, that.bones)
        && Arrays.deepEquals(knuckles, that.knuckles)
        && measured.equals(that.measured)
        && limits.equals(that.limits);
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        length,
        breadth,
        Arrays.deepHashCode(bones),
        Arrays.deepHashCode(knuckles),
        measured,
        limits);
  }

  /** Returns length and breadth, such as {@code hand 180 mm by 78 mm}. */
  @Override
  public String toString() {
    return "hand " + length() + " by " + breadth();
  }
}
