package gripwright.language.check;

import gripwright.finding.Message;
import gripwright.language.syntax.Amount;
import gripwright.language.syntax.DateText;
import gripwright.quantity.Dimension;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.quantity.Range;
import gripwright.quantity.Unit;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Reads amounts and checks unit, dimension and bounds; a wrong amount is reported and gives an
 * empty result.
 */
final class Amounts {

  private final Diagnostics diagnostics;

  Amounts(Diagnostics diagnostics) {
    this.diagnostics = diagnostics;
  }

  /** Returns an amount as written. */
  static String written(Amount amount) {
    Unit unit = amount.unit();
    return Numbers.plain(amount.value(), 6) + (unit == null ? "" : " " + unit.symbol());
  }

  /** Returns the dimension of an amount. */
  static Message measured(Amount amount) {
    return Terms.measured(amount.unit());
  }

  /** Returns the value in the base unit of the slot's dimension; percentages as fractions. */
  Optional<Double> base(Amount amount, Slot slot) {
    if (!fits(amount, slot)) {
      return Optional.empty();
    }
    Unit unit = amount.unit();
    double base = unit == null ? amount.value() : unit.toBase(amount.value());
    if (slot.allows(base)) {
      return Optional.of(base);
    }
    outside(amount, slot);
    return Optional.empty();
  }

  private void outside(Amount amount, Slot slot) {
    diagnostics.error(
        amount,
        slot.code(),
        "slot",
        slot,
        "found",
        written(amount),
        slot.lowName(),
        slot.low(),
        "high",
        slot.high());
  }

  private boolean fits(Amount amount, Slot slot) {
    Unit unit = amount.unit();
    Unit wanted = slot.unit();
    if (unit == null && wanted != null) {
      diagnostics.error(
          amount,
          "unit.missing",
          "slot",
          slot,
          "number",
          written(amount),
          "example",
          written(amount) + " " + wanted.symbol());
      return false;
    }
    boolean percents = (unit == Unit.PERCENT) == (wanted == Unit.PERCENT);
    Dimension dimension = unit == null ? Dimension.NUMBER : unit.dimension();
    if (percents && dimension.equals(slot.dimension())) {
      return true;
    }
    mismatch(amount, slot, slot.expected(), slot.dimension(), slot.example());
    return false;
  }

  /**
   * Reports an amount of the wrong dimension.
   *
   * @param example what could be written instead
   */
  void mismatch(Amount amount, Message slot, Message expected, Dimension wanted, String example) {
    Unit unit = amount.unit();
    Dimension found = unit == null ? Dimension.NUMBER : unit.dimension();
    boolean forceForMass =
        (found.equals(Dimension.FORCE) && wanted.equals(Dimension.MASS))
            || (found.equals(Dimension.MASS) && wanted.equals(Dimension.FORCE));
    if (forceForMass) {
      diagnostics.error(
          amount,
          "unit.mismatch",
          "slot",
          slot,
          "expected",
          expected,
          "amount",
          written(amount),
          "found",
          measured(amount),
          "gravity",
          Numbers.plain(Unit.NEWTONS_PER_KILOGRAM, 5),
          "example",
          example);
    } else {
      diagnostics.error(
          amount,
          "unit.mismatch",
          "slot",
          slot,
          "expected",
          expected,
          "amount",
          written(amount),
          "found",
          measured(amount),
          "example",
          example);
    }
  }

  /** Returns a time. */
  Optional<Duration> time(Amount amount, Slot slot) {
    Optional<Duration> time =
        base(amount, slot).map(seconds -> Duration.ofNanos(Math.round(seconds * 1e9)));
    if (time.isPresent() && !slot.allows(time.get().toNanos() / 1e9)) {
      outside(amount, slot); // less than half a nanosecond
      return Optional.empty();
    }
    return time;
  }

  /** Returns a length. */
  Optional<Length> length(Amount amount, Slot slot) {
    return base(amount, slot).map(Length::ofMillimetres);
  }

  /** Returns a load or mass. */
  Optional<Load> load(Amount amount, Slot slot) {
    return base(amount, slot).map(Load::ofKilograms);
  }

  /** Returns months. */
  Optional<Double> months(Amount amount, Slot slot) {
    return base(amount, slot).map(Unit.MONTH::fromBase);
  }

  /** Returns a whole number. */
  Optional<Integer> count(Amount amount, Slot slot) {
    return wholeNumber(amount, slot).map(Math::toIntExact);
  }

  /** Returns a whole number that may be large. */
  Optional<Long> wholeNumber(Amount amount, Slot slot) {
    return base(amount, slot)
        .flatMap(
            value -> {
              if (value == Math.rint(value)) {
                return Optional.of(value.longValue());
              }
              diagnostics.error(amount, "value.whole", "slot", slot, "found", written(amount));
              return Optional.empty();
            });
  }

  /** Returns whole weeks. */
  Optional<Integer> weeks(Amount amount, Slot slot) {
    return base(amount, slot)
        .flatMap(
            seconds -> {
              double weeks = Unit.WEEK.fromBase(seconds);
              if (Math.abs(weeks - Math.rint(weeks)) < 1e-9) {
                int whole = (int) Math.rint(weeks);
                if (slot.allows(Unit.WEEK.toBase(whole))) {
                  return Optional.of(whole);
                }
                outside(amount, slot);
                return Optional.empty();
              }
              diagnostics.error(
                  amount, "value.whole-weeks", "slot", slot, "found", written(amount));
              return Optional.empty();
            });
  }

  /** Returns a date within the range of plans and logs. */
  Optional<LocalDate> date(DateText date) {
    return date(date, Range.YEAR);
  }

  /** Returns a date of birth. */
  Optional<LocalDate> birth(DateText date) {
    return date(date, Range.BIRTH);
  }

  private Optional<LocalDate> date(DateText date, Range years) {
    if (years.contains(date.value().getYear())) {
      return Optional.of(date.value());
    }
    diagnostics.error(
        date,
        "value.date-range",
        "date",
        date.value(),
        "low",
        years.bound(years.low()),
        "high",
        years.bound(years.high()));
    return Optional.empty();
  }

  /** Reports the second of two dates if it is before the first. */
  void inOrder(DateText first, Message firstWords, DateText second, Message secondWords) {
    if (second.value().isBefore(first.value())) {
      diagnostics.errorBeside(
          second,
          first,
          "other-date-here",
          "value.date-order",
          "date",
          second.value(),
          "what",
          secondWords,
          "other",
          first.value(),
          "otherWhat",
          firstWords);
    }
  }
}
