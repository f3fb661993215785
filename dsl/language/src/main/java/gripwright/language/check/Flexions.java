package gripwright.language.check;

import gripwright.finding.Message;
import gripwright.hand.FlexionRange;
import gripwright.hand.Joint;
import gripwright.language.syntax.Amount;
import gripwright.language.syntax.AngleRange;
import gripwright.quantity.Numbers;
import gripwright.quantity.Range;
import java.util.Optional;

/** Reads how far a joint is bent, in a grip and in a hand alike; or a finding and nothing. */
final class Flexions {

  private final Ledger ledger;
  private final Amounts amounts;

  Flexions(Ledger ledger, Amounts amounts) {
    this.ledger = ledger;
    this.amounts = amounts;
  }

  /** Returns a range of flexion; a single angle is a range of one point. */
  Optional<FlexionRange> range(AngleRange range) {
    Optional<Double> first = amounts.base(range.first(), Slot.ANGLE);
    Amount to = range.to();
    Amount within = range.within();
    if (to != null) {
      Optional<Double> second = amounts.base(to, Slot.ANGLE);
      if (first.isEmpty() || second.isEmpty()) {
        return Optional.empty();
      }
      if (second.get() < first.get()) {
        ledger.error(
            range,
            "value.band",
            "low",
            Amounts.written(range.first()),
            "high",
            Amounts.written(to));
        return Optional.empty();
      }
      return flexion(range, first.get(), second.get());
    }
    Optional<Double> half =
        within == null ? Optional.of(0.0) : amounts.base(within, Slot.ANGLE_WITHIN);
    return first.isEmpty() || half.isEmpty()
        ? Optional.empty()
        : flexion(range, first.get() - half.get(), first.get() + half.get());
  }

  private Optional<FlexionRange> flexion(AngleRange range, double first, double second) {
    double low = range.included() ? 180 - second : first;
    double high = range.included() ? 180 - first : second;
    if (!Slot.ANGLE.allows(low) || !Slot.ANGLE.allows(high)) {
      impossible(
          range,
          Slot.ANGLE,
          low < Range.ANGLE.low() ? low : high,
          Range.ANGLE.low(),
          Range.ANGLE.high());
      return Optional.empty();
    }
    return Optional.of(FlexionRange.degrees(low, high));
  }

  /** Tells whether a joint can be bent like that; the middle of the range decides. */
  boolean possible(Joint joint, FlexionRange range, AngleRange at) {
    if (joint.middleOfRange().contains(range.centre())) {
      return true;
    }
    JointRange bounds = JointRange.of(joint);
    impossible(
        at,
        range.low().equals(range.high())
            ? Terms.of("slot-flexion", "joint", letters(joint))
            : Terms.of("slot-middle-of-range", "joint", letters(joint)),
        range.centre(),
        bounds.least(),
        bounds.greatest());
    return false;
  }

  private void impossible(AngleRange at, Message slot, double found, double low, double high) {
    ledger.error(
        at,
        "value.angle",
        "slot",
        slot,
        "found",
        degrees(found),
        "low",
        degrees(low),
        "high",
        degrees(high));
  }

  /** Says, as advice, that few hands bend a joint so far. */
  void unusual(Joint joint, double found, AngleRange at) {
    ledger.advice(
        at,
        "value.angle-norm",
        "joint",
        letters(joint),
        "found",
        degrees(found),
        "norm",
        degrees(JointRange.of(joint).norm()));
  }

  private static Message letters(Joint joint) {
    return Terms.of("joint-" + joint.word());
  }

  private static String degrees(double flexion) {
    return Numbers.plain(flexion, 1) + " deg";
  }
}
