package gripwright.hand;

import gripwright.quantity.Length;
import gripwright.quantity.Range;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
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
  public record Bone(Finger finger, Segment segment) {
    /** Refuses null. */
    public Bone {
      Objects.requireNonNull(finger, "finger");
      Objects.requireNonNull(segment, "segment");
    }
  }

  /**
   * Copies the measures.
   *
   * @throws IllegalArgumentException if the length is not 100 to 280 mm, the breadth not 40 to 140
   *     mm, a bone not 5 to 80 mm or a knuckle's distance not 0 to 60 mm, as in a plan, if a
   *     knuckle would lie at the wrist or below it, if the middle finger's knuckle is not 0 mm from
   *     itself, or if the middle of a joint's range is outside {@link Joint#middleOfRange}
   */
  public Hand {
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(breadth, "breadth");
    Objects.requireNonNull(bones, "bones");
    Objects.requireNonNull(knuckles, "knuckles");
    Objects.requireNonNull(limits, "limits");
    bones = Map.copyOf(bones);
    knuckles = knuckles.isEmpty() ? Map.of() : Map.copyOf(new EnumMap<>(knuckles));
    Range.HAND_LENGTH.check(length);
    breadth.ifPresent(Range.HAND_BREADTH::check);
    bones.values().forEach(Range.BONE::check);
    knuckles.values().forEach(Range.KNUCKLE::check);
    Length wrist = HandShape.middleKnuckle(length);
    for (Map.Entry<Finger, Length> each : knuckles.entrySet()) {
      if (each.getValue().compareTo(wrist) >= 0) {
        throw new IllegalArgumentException(
            "knuckle's distance "
                + each.getValue()
                + " of the "
                + each.getKey()
                + " finger: the wrist lies "
                + wrist
                + " behind the middle finger's");
      }
    }
    Length own = knuckles.getOrDefault(Finger.MIDDLE, Length.ZERO);
    if (own.millimetres() != 0) {
      throw new IllegalArgumentException(
          "knuckle's distance " + own + ": the middle finger's is 0 mm from itself");
    }
    limits
        .ranges()
        .values()
        .forEach(
            joints ->
                joints.forEach((joint, range) -> joint.middleOfRange().check(range.centre())));
  }

  /** The shortest hand length accepted, in millimetres: well below that of a child of ten. */
  public static final double SHORTEST = Range.HAND_LENGTH.low();

  /** The longest hand length accepted, in millimetres: well above the tallest adults'. */
  public static final double LONGEST = Range.HAND_LENGTH.high();

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
