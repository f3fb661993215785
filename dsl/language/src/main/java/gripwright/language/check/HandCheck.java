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

/** Checks the measures of a hand; measures missing on one side are taken from those for both. */
final class HandCheck {

  private static final List<String> PARTS =
      Stream.of(Segment.values(), Joint.values())
          .flatMap(Arrays::stream)
          .map(Object::toString)
          .toList();

  private final Diagnostics diagnostics;
  private final Amounts amounts;
  private final Flexions flexions;
  private final HandNorms norms;
  private boolean lengthWritten;
  private boolean atWrist;

  HandCheck(Diagnostics diagnostics) {
    this.diagnostics = diagnostics;
    this.amounts = new Amounts(diagnostics);
    this.flexions = new Flexions(diagnostics, amounts);
    this.norms = new HandNorms(diagnostics);
  }

  /** The measures that are written. */
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

  /** Returns the two hands by side; empty if there is a mistake or the length is missing. */
  Optional<Map<Side, Hand>> check(AthleteItem.HandItem item) {
    Map<Side, Measures> sides = new EnumMap<>(Side.class);
    Measures base = read(item.parts(), sides, Optional.empty());
    boolean damaged = item.damaged() || sides.values().stream().anyMatch(m -> m.damaged);
    diagnostics.markInvalidIf(damaged);
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
    diagnostics.markInvalid();
    if (!lengthWritten && !damaged) {
      diagnostics.error(
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

  /** Returns whether a knuckle is in front of the wrist crease. */
  private boolean aboveWrist(Measures measures, Length length) {
    Length wrist = HandShape.middleKnuckle(length);
    boolean above = true;
    for (Map.Entry<Finger, Length> knuckle : measures.knuckles.entrySet()) {
      HandPart.KnuckleOffset written = measures.offsets.get(knuckle.getKey());
      if (written != null && knuckle.getValue().compareTo(wrist) >= 0) {
        diagnostics.error(
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
    Parts read = new Parts(new Measures(of), sides);
    parts.forEach(part -> part.accept(read));
    return read.measures;
  }

  /** Checks each statement about one hand, or about both. */
  private final class Parts implements HandPart.Visitor {
    private final Measures measures;
    private final @Nullable Map<Side, Measures> sides;
    private final Once once = new Once(diagnostics);

    /** Reads into measures; {@code sides} is null inside one hand. */
    Parts(Measures measures, @Nullable Map<Side, Measures> sides) {
      this.measures = measures;
      this.sides = sides;
    }

    @Override
    public void handLength(HandPart.HandLength length) {
      once.first(length, "length");
      lengthWritten = true;
      measures.length = amounts.length(length.length(), Slot.HAND_LENGTH);
      norms.length(length, measures.length, measures.side);
    }

    @Override
    public void handBreadth(HandPart.HandBreadth breadth) {
      once.first(breadth, "breadth");
      measures.breadth = amounts.length(breadth.breadth(), Slot.HAND_BREADTH);
      norms.breadth(breadth, measures.breadth, measures.side);
    }

    @Override
    public void fingerMeasures(HandPart.FingerMeasures written) {
      Optional<Finger> finger = finger(written.finger());
      for (HandPart.FingerMeasure measure : written.measures()) {
        String word = measure.part().text();
        Optional<Segment> segment = Segment.parse(word);
        Optional<Joint> joint = Joint.parse(word);
        if (segment.isPresent()) {
          bone(finger, segment.get(), measure);
        } else if (joint.isPresent()) {
          limit(finger, joint.get(), measure);
        } else {
          diagnostics.unknown(measure.part(), "bone-or-joint", PARTS);
        }
      }
    }

    @Override
    public void knuckles(HandPart.Knuckles knuckles) {
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

    @Override
    public void handSide(HandPart.HandSide side) {
      if (sides == null) {
        diagnostics.error(
            side, "value.misplaced", "what", side.side().text(), "inside", Terms.of("one-hand"));
        return;
      }
      Optional<Side> which =
          diagnostics.word(side.side(), "side", Side::parse, Diagnostics.words(Side.values()));
      if (which.isPresent() && once.first(side.side(), "side", which.get().word())) {
        Measures own = read(side.parts(), null, which);
        own.damaged = side.damaged();
        sides.put(which.get(), own);
      }
    }

    private void bone(Optional<Finger> finger, Segment segment, HandPart.FingerMeasure written) {
      Optional<Length> length = boneLength(written.range());
      if (finger.isPresent()) {
        once.first(written.part(), Terms.of("bone-of", "finger", finger.get()), segment.word());
        length.ifPresent(l -> measures.bones.put(new Bone(finger.get(), segment), l));
        norms.bone(written, new Bone(finger.get(), segment), length, measures.side);
      }
    }

    private void limit(Optional<Finger> finger, Joint joint, HandPart.FingerMeasure written) {
      Optional<FlexionRange> range = flexions.range(written.range());
      if (finger.isEmpty()) {
        return;
      }
      boolean first =
          once.first(written.part(), Terms.of("joint-of", "finger", finger.get()), joint.word());
      if (range.isPresent() && first && flexions.possible(joint, range.get(), written.range())) {
        // A measured value may be beyond the norm; one far beyond it is probably not a flexion.
        double most = range.get().high().degrees();
        if (most > JointRange.of(joint).greatest()) {
          flexions.unusual(joint, most, written.range());
        }
        measures.limits = measures.limits.with(finger.get(), joint, range.get());
      }
    }
  }

  private Optional<Length> boneLength(AngleRange written) {
    if (written.single()) {
      return amounts.length(written.first(), Slot.BONE);
    }
    diagnostics.error(
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

  /**
   * Returns whether a knuckle's distance is valid: it is measured from the middle finger's knuckle,
   * whose own distance is 0 mm.
   */
  private boolean counts(Finger finger, Length distance, HandPart.KnuckleOffset written) {
    if (finger != Finger.MIDDLE || distance.millimetres() == 0) {
      return true;
    }
    diagnostics.error(written, "value.middle-knuckle", "found", distance);
    return false;
  }

  private Optional<Finger> finger(gripwright.language.syntax.Word word) {
    return diagnostics.word(word, "finger", Finger::parse, Diagnostics.words(Finger.values()));
  }
}
