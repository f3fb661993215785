package gripwright.export.text;

import gripwright.export.words.Words;
import gripwright.hand.Finger;
import gripwright.hand.FlexionRange;
import gripwright.hand.Hand;
import gripwright.hand.HandShape;
import gripwright.hand.Joint;
import gripwright.hand.Segment;
import gripwright.quantity.Length;
import gripwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Describes the measurements of a hand. */
final class HandWords {

  private final Words words;

  HandWords(Words words) {
    this.words = words;
  }

  /** Returns length, breadth, other measurements, and which values are estimates. */
  String of(Hand hand, HandShape shape) {
    List<String> parts = new ArrayList<>();
    parts.add(
        words.say(
            "grips.hand-size",
            "length",
            shape.length(),
            "breadth",
            Numbers.plain(shape.breadth().millimetres(), 0)));
    measured(hand).ifPresent(parts::add);
    estimated(hand, shape).ifPresent(parts::add);
    ranges(shape).ifPresent(parts::add);
    return words.semicolons(parts);
  }

  private Optional<String> measured(Hand hand) {
    List<String> fingers = new ArrayList<>();
    for (Finger finger : Finger.values()) {
      List<String> bones = new ArrayList<>();
      for (Segment segment : Segment.values()) {
        Length bone = hand.bones().get(new Hand.Bone(finger, segment));
        bones.add(bone == null ? "-" : Numbers.plain(bone.millimetres(), 1));
      }
      if (!bones.stream().allMatch("-"::equals)) {
        fingers.add(words.of(finger) + " " + String.join("/", bones));
      }
    }
    List<String> knuckles = new ArrayList<>();
    for (Finger finger : Finger.values()) {
      Length behind = hand.knuckles().get(finger);
      if (behind != null) {
        knuckles.add(words.of(finger) + " " + Numbers.plain(behind.millimetres(), 1));
      }
    }
    List<String> parts = new ArrayList<>();
    if (!fingers.isEmpty()) {
      parts.add(words.say("grips.measured-bones", "bones", words.commas(fingers)));
    }
    if (!knuckles.isEmpty()) {
      parts.add(words.say("grips.measured-knuckles", "knuckles", words.commas(knuckles)));
    }
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(words.say("grips.measured", "parts", words.and(parts)));
  }

  private Optional<String> estimated(Hand hand, HandShape shape) {
    List<String> estimated = new ArrayList<>();
    if (shape.breadthEstimated()) {
      estimated.add(words.say("grips.estimated-breadth"));
    }
    if (shape.bonesEstimated()) {
      estimated.add(
          words.say(
              hand.bones().isEmpty() ? "grips.estimated-bones" : "grips.estimated-other-bones"));
    }
    return estimated.isEmpty()
        ? Optional.empty()
        : Optional.of(words.say("grips.estimated", "parts", words.and(estimated)));
  }

  private Optional<String> ranges(HandShape shape) {
    List<String> joints = new ArrayList<>();
    for (Finger finger : Finger.values()) {
      for (Joint joint : Joint.values()) {
        shape
            .limits()
            .of(finger, joint)
            .map(
                range ->
                    words.say(
                        "grips.joint-range",
                        "finger",
                        finger,
                        "joint",
                        words.of("grips.joint", joint),
                        "range",
                        range(range)))
            .ifPresent(joints::add);
      }
    }
    return joints.isEmpty()
        ? Optional.empty()
        : Optional.of(words.say("grips.joints", "joints", words.commas(joints)));
  }

  private String range(FlexionRange range) {
    return words.range(
        GripWords.degrees(range.low().degrees()), GripWords.degrees(range.high().degrees()));
  }
}
