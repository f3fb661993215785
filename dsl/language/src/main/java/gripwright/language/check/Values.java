package gripwright.language.check;

import gripwright.finding.Message;
import gripwright.language.syntax.Amount;
import gripwright.language.syntax.DateText;
import gripwright.language.syntax.Expr;
import gripwright.language.syntax.Text;
import gripwright.protocol.Argument;
import gripwright.protocol.Level;
import gripwright.quantity.Dimension;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.quantity.Range;
import gripwright.quantity.Unit;
import java.util.Locale;
import java.util.Optional;

/** Reads what a protocol's places and parameters can hold: counts, times and levels. */
final class Values {

  private static final String BODY_MASS = "body-mass";

  private final Ledger ledger;
  private final Amounts amounts;

  Values(Ledger ledger) {
    this.ledger = ledger;
    this.amounts = new Amounts(ledger);
  }

  /** What a parameter can be given. */
  enum Kind implements Message {
    COUNT,
    TIME,
    LEVEL;

    static Kind of(Argument argument) {
      if (argument instanceof Argument.Count) {
        return COUNT;
      }
      return argument instanceof Argument.Time ? TIME : LEVEL;
    }

    @Override
    public String key() {
      return "term.parameter-" + name().toLowerCase(Locale.ROOT);
    }
  }

  /** Returns what a value is. */
  static Message kind(Expr value) {
    if (value instanceof Amount amount) {
      return Amounts.measured(amount);
    }
    if (isLevel(value)) {
      return Kind.LEVEL;
    }
    if (value instanceof Expr.GradeLiteral) {
      return Terms.of("value-grade");
    }
    if (value instanceof DateText) {
      return Terms.of("value-date");
    }
    if (value instanceof Text) {
      return Terms.of("text-in-quotes");
    }
    return value instanceof Expr.PathExpr ? Terms.of("name") : Terms.of("calculation");
  }

  private static boolean isLevel(Expr value) {
    return value instanceof Expr.PercentOfMax
        || value instanceof Expr.ReserveLevel
        || value instanceof Expr.EffortLevel
        || isBodyMass(value)
        || (value instanceof Expr.Binary sum && isBodyMass(sum.left()));
  }

  /** Tells whether a value is the athlete's body mass. */
  static boolean isBodyMass(Expr value) {
    return value instanceof Expr.PathExpr path
        && path.words().size() == 1
        && path.words().get(0).text().equals(BODY_MASS);
  }

  /** Returns the value of a parameter, whatever its kind. */
  Optional<Argument> argument(Expr value) {
    if (value instanceof Amount amount && amount.unit() == null) {
      return amounts.count(amount, Slot.REPEATS).map(Argument.Count::new);
    }
    if (value instanceof Amount amount && dimension(amount).equals(Dimension.TIME)) {
      return amounts.time(amount, Slot.REST).map(Argument.Time::new);
    }
    if (isLevel(value) || (value instanceof Amount amount && mayBeLevel(amount))) {
      return level(value).map(Argument.AtLevel::new);
    }
    ledger.error(
        value,
        "type.mismatch",
        "slot",
        Terms.of("parameter"),
        "expected",
        Terms.of("number-time-or-level"),
        "found",
        kind(value));
    return Optional.empty();
  }

  /** Returns the value of a parameter of which the kind is known. */
  Optional<Argument> argument(Expr value, String parameter, Kind kind, boolean hold) {
    String slot = "`" + parameter + "`";
    if (value instanceof Amount amount) {
      return switch (kind) {
        case COUNT -> amounts.count(amount, Slot.REPEATS).map(Argument.Count::new);
        case TIME -> amounts.time(amount, hold ? Slot.HOLD : Slot.REST).map(Argument.Time::new);
        case LEVEL -> level(value).map(Argument.AtLevel::new);
      };
    }
    if (kind == Kind.LEVEL && isLevel(value)) {
      return level(value).map(Argument.AtLevel::new);
    }
    ledger.error(value, "type.mismatch", "slot", slot, "expected", kind, "found", kind(value));
    return Optional.empty();
  }

  private static boolean mayBeLevel(Amount amount) {
    return amount.unit() == Unit.PERCENT
        || dimension(amount).equals(Dimension.MASS)
        || dimension(amount).equals(Dimension.FORCE);
  }

  private static Dimension dimension(Amount amount) {
    Unit unit = amount.unit();
    return unit == null ? Dimension.NUMBER : unit.dimension();
  }

  /** Returns a level. */
  Optional<Level> level(Expr value) {
    if (value instanceof Expr.PercentOfMax percent) {
      return ofMax(percent).map(Level.OfMax::new);
    }
    if (value instanceof Expr.ReserveLevel reserve) {
      return amounts.time(reserve.time(), Slot.RESERVE).map(Level.Reserve::new);
    }
    if (value instanceof Expr.EffortLevel effort) {
      return amounts.base(effort.effort(), Slot.LEVEL_EFFORT).map(Level.Effort::new);
    }
    if (isBodyMass(value)) {
      return Optional.of(new Level.BodyMass(Load.ZERO));
    }
    if (value instanceof Expr.Binary sum) {
      return bodyMassAnd(sum);
    }
    if (value instanceof Amount amount) {
      return total(amount);
    }
    ledger.error(
        value,
        "type.mismatch",
        "slot",
        Terms.of("level-of-hold"),
        "expected",
        Kind.LEVEL,
        "found",
        kind(value));
    return Optional.empty();
  }

  /** Returns a share of the maximum, above 0 and at most 1. */
  Optional<Double> ofMax(Expr.PercentOfMax percent) {
    double fraction = percent.percent() / 100;
    if (Range.OF_MAX.contains(fraction)) {
      return Optional.of(fraction);
    }
    ledger.error(percent, "value.level", "percent", Numbers.plain(percent.percent(), 6));
    return Optional.empty();
  }

  private Optional<Level> total(Amount amount) {
    Unit unit = amount.unit();
    if (unit == Unit.PERCENT) {
      ledger.error(amount, "unit.percent-of-what", "percent", Numbers.plain(amount.value(), 6));
      return Optional.empty();
    }
    if (unit != null && !unit.dimension().equals(Dimension.MASS)) {
      amounts.mismatch(amount, Terms.of("level-of-hold"), Kind.LEVEL, Dimension.MASS);
      return Optional.empty();
    }
    return amounts.load(amount, Slot.LOAD).map(Level.Total::new);
  }

  private Optional<Level> bodyMassAnd(Expr.Binary sum) {
    boolean plus = sum.operator() == Expr.Operator.PLUS;
    if (isBodyMass(sum.left())
        && sum.right() instanceof Amount amount
        && (plus || sum.operator() == Expr.Operator.MINUS)) {
      return amounts
          .load(amount, Slot.LOAD)
          .map(load -> new Level.BodyMass(plus ? load : load.times(-1)));
    }
    ledger.error(
        sum,
        "type.mismatch",
        "slot",
        Terms.of("level-of-hold"),
        "expected",
        Kind.LEVEL,
        "found",
        Terms.of("calculation"));
    return Optional.empty();
  }
}
