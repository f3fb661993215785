package gripwright.export.text;

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

/** What was measured of a hand, in words. */
final class HandWords {

  private HandWords() {}

  /** Returns length, breadth and what was measured beside them, and what is an estimate. */
  static String of(Hand hand, HandShape shape) {
    List<String> parts = new ArrayList<>();
    parts.add(
        shape.length() + " long, " + Numbers.plain(shape.breadth().millimetres(), 0) + " mm broad");
    measured(hand).ifPresent(parts::add);
    estimated(hand, shape).ifPresent(parts::add);
    ranges(shape).ifPresent(parts::add);
    return String.join("; ", parts);
  }

  private static Optional<String> measured(Hand hand) {
    List<String> fingers = new ArrayList<>();
    for (Finger finger : Finger.values()) {
      List<String> bones = new ArrayList<>();
      for (Segment segment : Segment.values()) {
        Length bone = hand.bones().get(new Hand.Bone(finger, segment));
        bones.add(bone == null ? "-" : Numbers.plain(bone.millimetres(), 1));
      }
      if (!bones.stream().allMatch("-"::equals)) {
        fingers.add(finger + " " + String.join("/", bones));
      }
    }
    List<String> knuckles = new ArrayList<>();
    for (Finger finger : Finger.values()) {
      Length behind = hand.knuckles().get(finger);
      if (behind != null) {
        knuckles.add(finger + " " + Numbers.plain(behind.millimetres(), 1));
      }
    }
    List<String> parts = new ArrayList<>();
    if (!fingers.isEmpty()) {
      parts.add("bones " + String.join(", ", fingers) + " mm");
    }
    if (!knuckles.isEmpty()) {
      parts.add("knuckles " + String.join(", ", knuckles) + " mm behind the middle one");
    }
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of("measured " + String.join(" and ", parts));
  }

  private static Optional<String> estimated(Hand hand, HandShape shape) {
    List<String> estimated = new ArrayList<>();
    if (shape.breadthEstimated()) {
      estimated.add("breadth");
    }
    if (shape.bonesEstimated()) {
      estimated.add(hand.bones().isEmpty() ? "bones" : "the other bones");
    }
    return estimated.isEmpty()
        ? Optional.empty()
        : Optional.of(String.join(" and ", estimated) + " estimated from length");
  }

  private static Optional<String> ranges(HandShape shape) {
    List<String> joints = new ArrayList<>();
    for (Finger finger : Finger.values()) {
      for (Joint joint : Joint.values()) {
        shape
            .limits()
            .of(finger, joint)
            .map(range -> finger + " " + joint + " " + words(range))
            .ifPresent(joints::add);
      }
    }
    return joints.isEmpty()
        ? Optional.empty()
        : Optional.of("joints that were measured: " + String.join(", ", joints) + " deg");
  }

  private static String words(FlexionRange range) {
    return GripWords.degrees(range.low().degrees())
        + " to "
        + GripWords.degrees(range.high().degrees());
  }
}
