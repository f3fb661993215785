package gripwright.language.check;

import gripwright.hand.Finger;
import gripwright.hand.FlexionRange;
import gripwright.hand.Hand;
import gripwright.hand.Hand.Bone;
import gripwright.hand.HandShape;
import gripwright.hand.Joint;
import gripwright.hand.JointLimits;
import gripwright.hand.Segment;
import gripwright.hand.Side;
import gripwright.language.syntax.AngleRange;
import gripwright.language.syntax.AthleteItem;
import gripwright.language.syntax.HandPart;
import gripwright.quantity.Length;
import gripwright.quantity.Numbers;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Checks the measures of a hand; what one side does not say is that of both. */
final class HandCheck {

  private static final List<String> PARTS =
      Stream.of(Segment.values(), Joint.values())
          .flatMap(Arrays::stream)
          .map(Object::toString)
          .toList();

  private final Ledger ledger;
  private final Amounts amounts;
  private final Flexions flexions;
  private final HandNorms norms;
  private boolean lengthWritten;
  private boolean atWrist;

  HandCheck(Ledger ledger) {
    this.ledger = ledger;
    this.amounts = new Amounts(ledger);
    this.flexions = new Flexions(ledger, amounts);
    this.norms = new HandNorms(ledger);
  }

  /** Measures as far as they are written. */
  private static final class Measures {
    Optional<Length> length = Optional.empty();
    Optional<Length> breadth = Optional.empty();
    final Map<Bone, Length> bones = new HashMap<>();
    final Map<Finger, Length> knuckles = new EnumMap<>(Finger.class);
    final Map<Finger, HandPart.KnuckleOffset> offsets = new EnumMap<>(Finger.class);
    final Optional<Side> side;
    JointLimits limits = JointLimits.UNKNOWN;
    boolean damaged;

    /** Starts the measures of one hand, or of both. */
    Measures(Optional<Side> side) {
      this.side = side;
    }

    static Measures over(Measures base, Measures own) {
      Measures both = new Measures(own.side);
      both.length = own.length.or(() -> base.length);
      both.breadth = own.breadth.or(() -> base.breadth);
      both.bones.putAll(base.bones);
      both.bones.putAll(own.bones);
      both.knuckles.putAll(base.knuckles);
      both.knuckles.putAll(own.knuckles);
      both.offsets.putAll(base.offsets);
      both.offsets.putAll(own.offsets);
      both.limits = own.limits.over(base.limits);
      return both;
    }
  }

  /** Returns the two hands by side; empty if something is wrong or the length is missing. */
  Optional<Map<Side, Hand>> check(AthleteItem.HandItem item) {
    Map<Side, Measures> sides = new EnumMap<>(Side.class);
    Measures base = read(item.parts(), sides, Optional.empty());
    boolean damaged = item.damaged() || sides.values().stream().anyMatch(m -> m.damaged);
    ledger.spoilIf(damaged);
    Map<Side, Hand> hands = new EnumMap<>(Side.class);
    for (Side side : Side.values()) {
      Measures measures =
          Measures.over(base, sides.getOrDefault(side, new Measures(Optional.of(side))));
      if (measures.length.isPresent() && aboveWrist(measures, measures.length.get())) {
        hands.put(
            side,
            new Hand(
                measures.length.get(),
                measures.breadth,
                measures.bones,
                measures.knuckles,
                measures.limits));
      }
    }
    if (atWrist) {
      return Optional.empty();
    }
    if (hands.size() == Side.values().length) {
      norms.tell(hands);
      return Optional.of(hands);
    }
    ledger.spoil();
    if (!lengthWritten && !damaged) {
      ledger.error(
          item,
          "value.missing",
          "kind",
          Terms.kind("statement"),
          "name",
          "hand",
          "missing",
          "`length`");
    }
    return Optional.empty();
  }

  /** The wrist crease lies some way behind the middle finger's knuckle, and no knuckle there. */
  private boolean aboveWrist(Measures measures, Length length) {
    Length wrist = HandShape.middleKnuckle(length);
    boolean above = true;
    for (Map.Entry<Finger, Length> knuckle : measures.knuckles.entrySet()) {
      HandPart.KnuckleOffset written = measures.offsets.get(knuckle.getKey());
      if (written != null && knuckle.getValue().compareTo(wrist) >= 0) {
        ledger.error(
            written,
            "value.knuckle-at-wrist",
            "finger",
            knuckle.getKey(),
            "found",
            Amounts.written(written.distance()),
            "wrist",
            Numbers.plain(Math.floor(wrist.millimetres()), 0) + " mm",
            "length",
            length);
        above = false;
        atWrist = true;
      }
    }
    return above;
  }

  private Measures read(
      List<HandPart> parts, @Nullable Map<Side, Measures> sides, Optional<Side> of) {
    Measures measures = new Measures(of);
    Once once = new Once(ledger);
    for (HandPart part : parts) {
      if (part instanceof HandPart.HandLength length) {
        once.first(length, "length");
        lengthWritten = true;
        measures.length = amounts.length(length.length(), Slot.HAND_LENGTH);
        norms.length(length, measures.length, of);
      } else if (part instanceof HandPart.HandBreadth breadth) {
        once.first(breadth, "breadth");
        measures.breadth = amounts.length(breadth.breadth(), Slot.HAND_BREADTH);
        norms.breadth(breadth, measures.breadth, of);
      } else if (part instanceof HandPart.FingerMeasures finger) {
        finger(finger, measures, once);
      } else if (part instanceof HandPart.Knuckles knuckles) {
        knuckles(knuckles, measures, once);
      } else if (part instanceof HandPart.HandSide side) {
        side(side, sides, once);
      }
    }
    return measures;
  }

  private void side(HandPart.HandSide side, @Nullable Map<Side, Measures> sides, Once once) {
    if (sides == null) {
      ledger.error(
          side, "value.misplaced", "what", side.side().text(), "inside", Terms.of("one-hand"));
      return;
    }
    Optional<Side> which =
        ledger.word(side.side(), "side", Side::parse, Ledger.words(Side.values()));
    if (which.isPresent() && once.first(side.side(), "side", which.get().word())) {
      Measures measures = read(side.parts(), null, which);
      measures.damaged = side.damaged();
      sides.put(which.get(), measures);
    }
  }

  private void finger(HandPart.FingerMeasures written, Measures measures, Once once) {
    Optional<Finger> finger = finger(written.finger());
    for (HandPart.FingerMeasure measure : written.measures()) {
      String word = measure.part().text();
      Optional<Segment> segment = Segment.parse(word);
      Optional<Joint> joint = Joint.parse(word);
      if (segment.isPresent()) {
        bone(finger, segment.get(), measure, measures, once);
      } else if (joint.isPresent()) {
        limit(finger, joint.get(), measure, measures, once);
      } else {
        ledger.unknown(measure.part(), "bone-or-joint", PARTS);
      }
    }
  }

  private void bone(
      Optional<Finger> finger,
      Segment segment,
      HandPart.FingerMeasure written,
      Measures measures,
      Once once) {
    Optional<Length> length = boneLength(written.range());
    if (finger.isPresent()) {
      once.first(written.part(), Terms.of("bone-of", "finger", finger.get()), segment.word());
      length.ifPresent(l -> measures.bones.put(new Bone(finger.get(), segment), l));
      norms.bone(written, new Bone(finger.get(), segment), length, measures.side);
    }
  }

  private Optional<Length> boneLength(AngleRange written) {
    if (written.single()) {
      return amounts.length(written.first(), Slot.BONE);
    }
    ledger.error(
        written,
        "type.mismatch",
        "slot",
        Slot.BONE,
        "expected",
        Terms.of("one-length"),
        "found",
        Terms.of("angle-range"));
    return Optional.empty();
  }

  private void limit(
      Optional<Finger> finger,
      Joint joint,
      HandPart.FingerMeasure written,
      Measures measures,
      Once once) {
    Optional<FlexionRange> range = flexions.range(written.range());
    if (finger.isEmpty()) {
      return;
    }
    boolean first =
        once.first(written.part(), Terms.of("joint-of", "finger", finger.get()), joint.word());
    if (range.isPresent() && first && flexions.possible(joint, range.get(), written.range())) {
      // What was measured may well be beyond the norm; far beyond it, it may not be flexion.
      double most = range.get().high().degrees();
      if (most > JointRange.of(joint).greatest()) {
        flexions.unusual(joint, most, written.range());
      }
      measures.limits = measures.limits.with(finger.get(), joint, range.get());
    }
  }

  private void knuckles(HandPart.Knuckles knuckles, Measures measures, Once once) {
    for (HandPart.KnuckleOffset offset : knuckles.offsets()) {
      Optional<Finger> finger = finger(offset.finger());
      Optional<Length> distance = amounts.length(offset.distance(), Slot.KNUCKLE);
      if (finger.isPresent()) {
        once.first(offset.finger(), "knuckle", finger.get().word());
        distance
            .filter(d -> counts(finger.get(), d, offset))
            .ifPresent(
                d -> {
                  measures.knuckles.put(finger.get(), d);
                  measures.offsets.put(finger.get(), offset);
                });
      }
    }
  }

  /** The others' knuckles are measured from the middle finger's, which is 0 mm from itself. */
  private boolean counts(Finger finger, Length distance, HandPart.KnuckleOffset written) {
    if (finger != Finger.MIDDLE || distance.millimetres() == 0) {
      return true;
    }
    ledger.error(written, "value.middle-knuckle", "found", distance);
    return false;
  }

  private Optional<Finger> finger(gripwright.language.syntax.Word word) {
    return ledger.word(word, "finger", Finger::parse, Ledger.words(Finger.values()));
  }
}
