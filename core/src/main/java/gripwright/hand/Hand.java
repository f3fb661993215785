package gripwright.hand;

import gripwright.quantity.Length;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What was measured of one hand.
 *
 * <p>Bones run from joint centre to joint centre; a finger length from crease to tip is something
 * else and must not be entered as one. Immutable.
 *
 * @param length wrist crease to tip of the middle finger
 * @param breadth across the knuckles, if measured
 * @param bones bones that were measured, over what length and breadth would suggest
 * @param knuckles how far a finger's knuckle lies towards the wrist from the middle finger's
 * @param limits how far the joints move, where that was measured
 */
public record Hand(
    Length length,
    Optional<Length> breadth,
    Map<Bone, Length> bones,
    Map<Finger, Length> knuckles,
    JointLimits limits) {

  /**
   * A bone of a finger.
   *
   * @param finger whose
   * @param segment which
   */
  public record Bone(Finger finger, Segment segment) {}

  /**
   * Copies the measures.
   *
   * @throws IllegalArgumentException if the length is not 100 to 280 mm, the breadth not 40 to 140
   *     mm, a bone not 5 to 80 mm or a knuckle's distance not 0 to 60 mm, as in a plan, or if the
   *     middle finger's knuckle is not 0 mm from itself
   */
  public Hand {
    bones = Map.copyOf(bones);
    knuckles = knuckles.isEmpty() ? Map.of() : Map.copyOf(new EnumMap<>(knuckles));
    check("hand length", length, SHORTEST, LONGEST);
    breadth.ifPresent(across -> check("hand breadth", across, NARROWEST, BROADEST));
    bones.forEach((bone, measured) -> check("bone", measured, SHORTEST_BONE, LONGEST_BONE));
    knuckles.forEach(
        (finger, behind) ->
            check(
                "distance of the " + finger + " finger's knuckle",
                behind,
                0,
                finger == Finger.MIDDLE ? 0 : FARTHEST_KNUCKLE));
  }

  private static void check(String what, Length found, double least, double most) {
    if (!(found.millimetres() >= least && found.millimetres() <= most)) {
      throw new IllegalArgumentException("not a " + what + ": " + found);
    }
  }

  private static final double NARROWEST = 40;
  private static final double BROADEST = 140;
  private static final double SHORTEST_BONE = 5;
  private static final double LONGEST_BONE = 80;
  private static final double FARTHEST_KNUCKLE = 60;

  /** The shortest hand length accepted, in millimetres: well below that of a child of ten. */
  public static final double SHORTEST = 100;

  /** The longest hand length accepted, in millimetres: well above the tallest adults'. */
  public static final double LONGEST = 280;

  /** Returns a hand of which only the length is known. */
  public static Hand ofLength(Length length) {
    return new Hand(length, Optional.empty(), Map.of(), Map.of(), JointLimits.UNKNOWN);
  }

  /**
   * Returns this hand with a measured breadth.
   *
   * @throws IllegalArgumentException if no hand has it
   */
  public Hand withBreadth(Length measured) {
    return new Hand(length, Optional.of(measured), bones, knuckles, limits);
  }

  /**
   * Returns this hand with a measured bone.
   *
   * @throws IllegalArgumentException if no hand has it
   */
  public Hand withBone(Finger finger, Segment segment, Length measured) {
    Map<Bone, Length> more = new HashMap<>(bones);
    more.put(new Bone(finger, segment), measured);
    return new Hand(length, breadth, more, knuckles, limits);
  }

  /**
   * Returns this hand with a measured knuckle offset.
   *
   * @throws IllegalArgumentException if no hand has it
   */
  public Hand withKnuckle(Finger finger, Length measured) {
    Map<Finger, Length> more = new HashMap<>(knuckles);
    more.put(finger, measured);
    return new Hand(length, breadth, bones, more, limits);
  }

  /**
   * Returns this hand with a measured joint.
   *
   * @param range flexion that the joint reaches, from least to greatest; it stands over every norm,
   *     also where it is wider
   */
  public Hand withLimit(Finger finger, Joint joint, FlexionRange range) {
    return new Hand(length, breadth, bones, knuckles, limits.with(finger, joint, range));
  }
}
