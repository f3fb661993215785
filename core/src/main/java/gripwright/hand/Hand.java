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
   * @throws IllegalArgumentException if a length is zero or out of all proportion to a hand
   */
  public Hand {
    bones = Map.copyOf(bones);
    knuckles = knuckles.isEmpty() ? Map.of() : Map.copyOf(new EnumMap<>(knuckles));
    if (length.millimetres() < SHORTEST || length.millimetres() > LONGEST) {
      throw new IllegalArgumentException("not a hand length: " + length);
    }
  }

  /** The shortest hand length accepted, in millimetres: well below that of a child of ten. */
  public static final double SHORTEST = 100;

  /** The longest hand length accepted, in millimetres: well above the tallest adults'. */
  public static final double LONGEST = 280;

  /** Returns a hand of which only the length is known. */
  public static Hand ofLength(Length length) {
    return new Hand(length, Optional.empty(), Map.of(), Map.of(), JointLimits.UNKNOWN);
  }

  /** Returns this hand with a measured breadth. */
  public Hand withBreadth(Length measured) {
    return new Hand(length, Optional.of(measured), bones, knuckles, limits);
  }

  /** Returns this hand with a measured bone. */
  public Hand withBone(Finger finger, Segment segment, Length measured) {
    Map<Bone, Length> more = new HashMap<>(bones);
    more.put(new Bone(finger, segment), measured);
    return new Hand(length, breadth, more, knuckles, limits);
  }

  /** Returns this hand with a measured knuckle offset. */
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
