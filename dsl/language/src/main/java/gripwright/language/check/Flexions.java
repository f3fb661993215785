package gripwright.language.check;

import gripwright.finding.Message;
import gripwright.hand.FlexionRange;
import gripwright.hand.Joint;
import gripwright.language.syntax.Amount;
import gripwright.language.syntax.AngleRange;
import gripwright.quantity.Numbers;
import gripwright.quantity.Range;
import java.util.Optional;

/**
 * Reads joint flexions, both of grips and of hands; a wrong one is reported and gives an empty
 * result.
 */
final class Flexions {

  private final Diagnostics diagnostics;
  private final Amounts amounts;

  Flexions(Diagnostics diagnostics, Amounts amounts) {
    this.diagnostics = diagnostics;
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
        diagnostics.error(
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

  /** Returns whether a joint can bend this far, by the middle of the range. */
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

  /** Returns whether a joint can hold this flexion, by the greater end of the band. */
  boolean holds(Joint joint, FlexionRange range, AngleRange at) {
    Range end = joint.greaterEndOfBand();
    if (end.contains(range.high().degrees())) {
      return true;
    }
    impossible(
        at,
        range.low().equals(range.high())
            ? Terms.of("slot-flexion", "joint", letters(joint))
            : Terms.of("slot-greater-end", "joint", letters(joint)),
        range.high().degrees(),
        end.low(),
        end.high());
    return false;
  }

  private void impossible(AngleRange at, Message slot, double found, double low, double high) {
    diagnostics.error(
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

  /** Adds advice that few hands bend a joint this far. */
  void unusual(Joint joint, double found, AngleRange at) {
    diagnostics.advice(
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
