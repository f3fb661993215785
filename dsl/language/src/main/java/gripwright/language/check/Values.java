package gripwright.language.check;

import gripwright.finding.Message;
import gripwright.language.syntax.Amount;
import gripwright.language.syntax.DateText;
import gripwright.language.syntax.Expr;
import gripwright.language.syntax.Text;
import gripwright.protocol.Argument;
import gripwright.protocol.Level;
import gripwright.quantity.Dimension;
import gripwright.quantity.Numbers;
import gripwright.quantity.Range;
import gripwright.quantity.Unit;
import java.util.Locale;
import java.util.Optional;

/** Reads the values of a protocol's steps and parameters: counts, times and levels. */
final class Values {

  private static final String BODY_MASS = "body-mass";
  private static final String TEST = "test";

  private final Diagnostics diagnostics;
  private final Amounts amounts;
  private final Levels levels = new Levels();

  Values(Diagnostics diagnostics) {
    this.diagnostics = diagnostics;
    this.amounts = new Amounts(diagnostics);
  }

  /** Kinds of parameter values. */
  enum Kind implements Message {
    COUNT,
    TIME,
    LEVEL;

    /** Returns a value of this kind as a coach might write it. */
    String example() {
      return switch (this) {
        case COUNT -> "3";
        case TIME -> "10 s";
        case LEVEL -> "60 % max";
      };
    }

    static Kind of(Argument argument) {
      return argument.accept(OF_ARGUMENT);
    }

    private static final Argument.Visitor<Kind> OF_ARGUMENT =
        new Argument.Visitor<>() {
          @Override
          public Kind count(Argument.Count argument) {
            return COUNT;
          }

          @Override
          public Kind time(Argument.Time argument) {
            return TIME;
          }

          @Override
          public Kind atLevel(Argument.AtLevel argument) {
            return LEVEL;
          }
        };

    @Override
    public String key() {
      return "term.parameter-" + name().toLowerCase(Locale.ROOT);
    }
  }

  /** Returns the kind of a value. */
  static Message kind(Expr value) {
    return value.accept(WORDS);
  }

  private static final Expr.Visitor<Message> WORDS =
      new Expr.Visitor<>() {
        @Override
        public Message amount(Amount value) {
          return Amounts.measured(value);
        }

        @Override
        public Message dateText(DateText value) {
          return Terms.of("value-date");
        }

        @Override
        public Message text(Text value) {
          return Terms.of("text-in-quotes");
        }

        @Override
        public Message percentOfMax(Expr.PercentOfMax value) {
          return Kind.LEVEL;
        }

        @Override
        public Message reserveLevel(Expr.ReserveLevel value) {
          return Kind.LEVEL;
        }

        @Override
        public Message effortLevel(Expr.EffortLevel value) {
          return Kind.LEVEL;
        }

        @Override
        public Message gradeLiteral(Expr.GradeLiteral value) {
          return Terms.of("value-grade");
        }

        @Override
        public Message pathExpr(Expr.PathExpr value) {
          return isBodyMass(value) ? Kind.LEVEL : Terms.of("name");
        }

        @Override
        public Message calculation(Expr.Calculation value) {
          return isOfTest(value) || (value instanceof Expr.Binary sum && isBodyMass(sum.left()))
              ? Kind.LEVEL
              : Terms.of("calculation");
        }
      };

  private static boolean isLevel(Expr value) {
    return kind(value).equals(Kind.LEVEL);
  }

  /** Returns whether a value is the athlete's body mass. */
  static boolean isBodyMass(Expr value) {
    return value instanceof Expr.PathExpr path
        && path.words().size() == 1
        && path.words().get(0).text().equals(BODY_MASS);
  }

  /** Returns whether a value is a share of a test. */
  private static boolean isOfTest(Expr value) {
    return value instanceof Expr.PercentOf share
        && share.of() instanceof Expr.PathExpr path
        && path.words().size() == 1
        && path.words().get(0).text().equals(TEST);
  }

  /** Returns whether a value is a name, such as that of a parameter. */
  static boolean isName(Expr value) {
    return value instanceof Expr.PathExpr && !isBodyMass(value);
  }

  /** Returns the value of a parameter, whatever its kind. */
  Optional<Argument> argument(Expr value) {
    if (value instanceof Amount amount) {
      return number(amount);
    }
    return isLevel(value) ? level(value).map(Argument.AtLevel::new) : notAnArgument(value);
  }

  private Optional<Argument> number(Amount amount) {
    if (amount.unit() == null) {
      return amounts.count(amount, Slot.REPEATS).map(Argument.Count::new);
    }
    if (dimension(amount).equals(Dimension.TIME)) {
      return amounts.time(amount, Slot.REST).map(Argument.Time::new);
    }
    return mayBeLevel(amount) ? level(amount).map(Argument.AtLevel::new) : notAnArgument(amount);
  }

  private Optional<Argument> notAnArgument(Expr value) {
    diagnostics.error(
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

  /** Returns the value of a parameter of known kind. */
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
    diagnostics.error(
        value,
        "type.mismatch",
        "slot",
        slot,
        "expected",
        kind,
        "found",
        kind(value),
        "example",
        kind.example());
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
    return value.accept(levels);
  }

  /** Builds a level of each kind of value that can be one. */
  private final class Levels implements Expr.Visitor<Optional<Level>> {
    @Override
    public Optional<Level> amount(Amount value) {
      return total(value);
    }

    @Override
    public Optional<Level> dateText(DateText value) {
      return notALevel(value);
    }

    @Override
    public Optional<Level> text(Text value) {
      return notALevel(value);
    }

    @Override
    public Optional<Level> percentOfMax(Expr.PercentOfMax value) {
      return ofMax(value).map(Level.OfMax::new);
    }

    @Override
    public Optional<Level> reserveLevel(Expr.ReserveLevel value) {
      return amounts.time(value.time(), Slot.RESERVE).map(Level.Reserve::new);
    }

    @Override
    public Optional<Level> effortLevel(Expr.EffortLevel value) {
      return amounts.base(value.effort(), Slot.LEVEL_EFFORT).map(Level.Effort::new);
    }

    @Override
    public Optional<Level> gradeLiteral(Expr.GradeLiteral value) {
      return notALevel(value);
    }

    @Override
    public Optional<Level> pathExpr(Expr.PathExpr value) {
      return isBodyMass(value) ? Optional.of(Level.bodyMass()) : notALevel(value);
    }

    @Override
    public Optional<Level> calculation(Expr.Calculation value) {
      if (isOfTest(value)) {
        return ofTest((Expr.PercentOf) value);
      }
      return value instanceof Expr.Binary sum ? bodyMassAnd(sum) : notALevel(value);
    }
  }

  private Optional<Level> notALevel(Expr value) {
    diagnostics.error(
        value,
        "type.mismatch",
        "slot",
        Terms.of("level-of-hold"),
        "expected",
        Kind.LEVEL,
        "found",
        kind(value),
        "example",
        Kind.LEVEL.example());
    return Optional.empty();
  }

  /** Returns a share of the maximum, above 0 and at most 1. */
  Optional<Double> ofMax(Expr.PercentOfMax percent) {
    double fraction = percent.percent() / 100;
    if (Range.OF_MAX.contains(fraction)) {
      return Optional.of(fraction);
    }
    diagnostics.error(percent, "value.level", "percent", Numbers.plain(percent.percent(), 6));
    return Optional.empty();
  }

  private Optional<Level> ofTest(Expr.PercentOf share) {
    double fraction = share.percent() / 100;
    if (Range.OF_TEST.contains(fraction)) {
      return Optional.of(new Level.OfTest(fraction));
    }
    diagnostics.error(
        share, "value.level", "percent", Numbers.plain(share.percent(), 6), "of-test", true);
    return Optional.empty();
  }

  private Optional<Level> total(Amount amount) {
    Unit unit = amount.unit();
    if (unit == Unit.PERCENT) {
      diagnostics.error(
          amount, "unit.percent-of-what", "percent", Numbers.plain(amount.value(), 6));
      return Optional.empty();
    }
    if (unit != null && !unit.dimension().equals(Dimension.MASS)) {
      amounts.mismatch(
          amount, Terms.of("level-of-hold"), Kind.LEVEL, Dimension.MASS, Kind.LEVEL.example());
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
          .map(load -> Level.bodyMassPlus(plus ? load : load.times(-1)));
    }
    diagnostics.error(
        sum,
        "type.mismatch",
        "slot",
        Terms.of("level-of-hold"),
        "expected",
        Kind.LEVEL,
        "found",
        Terms.of("calculation"),
        "example",
        Kind.LEVEL.example());
    return Optional.empty();
  }
}
