package gripwright.language.check;

import gripwright.hand.Finger;
import gripwright.hand.Hand;
import gripwright.hand.Hand.Bone;
import gripwright.hand.JointLimits;
import gripwright.hand.Segment;
import gripwright.hand.Side;
import gripwright.language.syntax.AthleteItem;
import gripwright.language.syntax.HandPart;
import gripwright.quantity.Length;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Checks the measures of a hand; what one side does not say is that of both. */
final class HandCheck {

  private final Ledger ledger;
  private final Amounts amounts;
  private boolean lengthWritten;

  HandCheck(Ledger ledger) {
    this.ledger = ledger;
    this.amounts = new Amounts(ledger);
  }

  /** Measures as far as they are written. */
  private static final class Measures {
    Optional<Length> length = Optional.empty();
    Optional<Length> breadth = Optional.empty();
    final Map<Bone, Length> bones = new HashMap<>();
    final Map<Finger, Length> knuckles = new EnumMap<>(Finger.class);
    boolean damaged;

    static Measures over(Measures base, Measures own) {
      Measures both = new Measures();
      both.length = own.length.or(() -> base.length);
      both.breadth = own.breadth.or(() -> base.breadth);
      both.bones.putAll(base.bones);
      both.bones.putAll(own.bones);
      both.knuckles.putAll(base.knuckles);
      both.knuckles.putAll(own.knuckles);
      return both;
    }
  }

  /** Returns the two hands by side; empty if something is wrong or the length is missing. */
  Optional<Map<Side, Hand>> check(AthleteItem.HandItem item) {
    Map<Side, Measures> sides = new EnumMap<>(Side.class);
    Measures base = read(item.parts(), sides);
    boolean damaged = item.damaged() || sides.values().stream().anyMatch(m -> m.damaged);
    ledger.spoilIf(damaged);
    Map<Side, Hand> hands = new EnumMap<>(Side.class);
    for (Side side : Side.values()) {
      Measures measures = Measures.over(base, sides.getOrDefault(side, new Measures()));
      measures.length.ifPresent(
          length ->
              hands.put(
                  side,
                  new Hand(
                      length,
                      measures.breadth,
                      measures.bones,
                      measures.knuckles,
                      JointLimits.UNKNOWN)));
    }
    if (hands.size() == Side.values().length) {
      return Optional.of(hands);
    }
    ledger.spoil();
    if (!lengthWritten && !damaged) {
      ledger.error(
          item, "value.missing", "kind", "statement", "name", "hand", "missing", "`length`");
    }
    return Optional.empty();
  }

  private Measures read(List<HandPart> parts, @Nullable Map<Side, Measures> sides) {
    Measures measures = new Measures();
    Once once = new Once(ledger);
    for (HandPart part : parts) {
      if (part instanceof HandPart.HandLength length) {
        once.first(length, "length");
        lengthWritten = true;
        measures.length = amounts.length(length.length(), Slot.HAND_LENGTH);
      } else if (part instanceof HandPart.HandBreadth breadth) {
        once.first(breadth, "breadth");
        measures.breadth = amounts.length(breadth.breadth(), Slot.HAND_BREADTH);
      } else if (part instanceof HandPart.FingerLengths lengths) {
        bones(lengths, measures, once);
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
      ledger.error(side, "value.misplaced", "what", side.side().text(), "inside", "left or right");
      return;
    }
    Optional<Side> which =
        ledger.word(side.side(), "side", Side::parse, Ledger.words(Side.values()));
    if (which.isPresent() && once.first(side.side(), "side", which.get().word())) {
      Measures measures = read(side.parts(), null);
      measures.damaged = side.damaged();
      sides.put(which.get(), measures);
    }
  }

  private void bones(HandPart.FingerLengths lengths, Measures measures, Once once) {
    Optional<Finger> finger = finger(lengths.finger());
    for (HandPart.SegmentLength bone : lengths.segments()) {
      Optional<Segment> segment =
          ledger.word(bone.segment(), "bone", Segment::parse, Ledger.words(Segment.values()));
      Optional<Length> length = amounts.length(bone.length(), Slot.BONE);
      if (finger.isPresent() && segment.isPresent()) {
        once.first(bone.segment(), finger.get() + " bone", segment.get().word());
        length.ifPresent(l -> measures.bones.put(new Bone(finger.get(), segment.get()), l));
      }
    }
  }

  private void knuckles(HandPart.Knuckles knuckles, Measures measures, Once once) {
    for (HandPart.KnuckleOffset offset : knuckles.offsets()) {
      Optional<Finger> finger = finger(offset.finger());
      Optional<Length> distance = amounts.length(offset.distance(), Slot.KNUCKLE);
      if (finger.isPresent()) {
        once.first(offset.finger(), "knuckle", finger.get().word());
        distance.ifPresent(d -> measures.knuckles.put(finger.get(), d));
      }
    }
  }

  private Optional<Finger> finger(gripwright.language.syntax.Word word) {
    return ledger.word(word, "finger", Finger::parse, Ledger.words(Finger.values()));
  }
}
