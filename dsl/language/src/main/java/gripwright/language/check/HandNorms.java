package gripwright.language.check;

import gripwright.finding.Clause;
import gripwright.finding.Message;
import gripwright.hand.Hand;
import gripwright.hand.Hand.Bone;
import gripwright.hand.HandShape;
import gripwright.hand.Side;
import gripwright.language.syntax.Syntax;
import gripwright.quantity.Length;
import gripwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Finds unusual measures of a hand: a bone or the breadth more than {@link #FROM_LENGTH} from what
 * the hand's length suggests (for one person a bone is good to about 8 %: Buchholz B et al. 1992,
 * Ergonomics 35(3):261-273), or more than {@link #BETWEEN_SIDES} from the measure of the other
 * hand. The limits are the library's own choice. Each measure is reported once, where it is
 * written.
 */
final class HandNorms {

  private static final double FROM_LENGTH = 0.25;
  private static final double BETWEEN_SIDES = 0.10;

  /**
   * A measure as it is written.
   *
   * @param at its place
   * @param what its description, such as {@code the index finger's proximal bone}
   * @param value the written value, if it can be read
   * @param of returns the measure of a hand, if measured
   * @param usual returns the value that the hand's length suggests
   * @param side the hand it is for; empty if for both
   */
  private record Written(
      Syntax at,
      Message what,
      Optional<Length> value,
      Function<Hand, Optional<Length>> of,
      Function<HandShape, Length> usual,
      Optional<Side> side) {}

  private final Diagnostics diagnostics;
  private final List<Written> written = new ArrayList<>();

  HandNorms(Diagnostics diagnostics) {
    this.diagnostics = diagnostics;
  }

  void length(Syntax at, Optional<Length> value, Optional<Side> side) {
    written.add(
        new Written(
            at,
            Terms.of("hands-length"),
            value,
            hand -> Optional.of(hand.length()),
            HandShape::length,
            side));
  }

  void breadth(Syntax at, Optional<Length> value, Optional<Side> side) {
    written.add(
        new Written(at, Terms.of("hands-breadth"), value, Hand::breadth, HandShape::breadth, side));
  }

  void bone(Syntax at, Bone bone, Optional<Length> value, Optional<Side> side) {
    written.add(
        new Written(
            at,
            Terms.of(
                "fingers-bone",
                "finger",
                bone.finger(),
                "bone",
                Clause.of("common.bone-" + bone.segment().word())),
            value,
            hand -> Optional.ofNullable(hand.bones().get(bone)),
            shape -> shape.bone(bone.finger(), bone.segment()),
            side));
  }

  /** Adds advice on unusual measures of two hands. */
  void tell(Map<Side, Hand> hands) {
    for (Written measure : written) {
      for (Side side : measure.side().map(List::of).orElse(List.of(Side.values()))) {
        Hand hand = hands.get(side);
        Hand other = hands.get(side == Side.LEFT ? Side.RIGHT : Side.LEFT);
        if (hand != null && other != null && tells(measure, hand, other)) {
          break;
        }
      }
    }
  }

  /** Adds advice if a measure that applies to a hand is unusual there; returns whether it did. */
  private boolean tells(Written measure, Hand hand, Hand other) {
    Optional<Length> there = measure.of().apply(other);
    Optional<Length> found =
        measure.of().apply(hand).filter(f -> measure.value().equals(Optional.of(f)));
    if (found.isEmpty()) {
      return false; // unreadable, or this hand has its own value
    }
    Length usual = measure.usual().apply(HandShape.of(Hand.ofLength(hand.length())));
    if (apart(found.get(), usual) > FROM_LENGTH) {
      tell(measure, found.get(), "usual", usual);
      return true;
    }
    if (measure.side().isPresent()
        && there.isPresent()
        && apart(found.get(), there.get()) > BETWEEN_SIDES) {
      tell(measure, found.get(), "other", there.get());
      return true;
    }
    return false;
  }

  private void tell(Written measure, Length found, String name, Length against) {
    diagnostics.advice(
        measure.at(),
        "value.hand-norm",
        "what",
        measure.what(),
        "found",
        found,
        name,
        Numbers.plain(against.millimetres(), 0) + " mm");
  }

  private static double apart(Length one, Length other) {
    return Math.abs(one.millimetres() / other.millimetres() - 1);
  }
}
