package gripwright.expression;

import gripwright.finding.Clause;
import gripwright.finding.Message;
import gripwright.finding.WrittenText;
import gripwright.quantity.Dimension;
import gripwright.quantity.Numbers;
import gripwright.quantity.Unit;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/** Writes the two sides of a comparison for people, in the units of the rule. */
final class Measured {

  /** The base units of a product with no unit of its own. */
  private static final String LOAD_TIME_UNIT = "kg s";

  private static final String IMPULSE_UNIT = "N s";

  private static final int MOST_DECIMALS = 6;

  private Measured() {}

  static Shortfall compared(Condition.Compare compare, EvaluationContext at) {
    Shortfall.Bound bound = Shortfall.Bound.of(compare.relation());
    return share(compare, at, bound).orElseGet(() -> absolute(compare, at, bound));
  }

  private static Shortfall absolute(
      Condition.Compare compare, EvaluationContext at, Shortfall.Bound bound) {
    Expression left = compare.left();
    Expression right = compare.right();
    Writer writer = new Writer(left.type(), unit(left).or(() -> unit(right)));
    double was = at.number(left);
    double limit = at.number(right);
    int decimals = writer.decimals(was, limit);
    return new Shortfall(
        at.called(),
        property(left),
        writer.write(was, decimals),
        bound,
        writer.write(limit, decimals));
  }

  static Shortfall between(Condition.Between between, EvaluationContext at) {
    Writer writer =
        new Writer(
            between.value().type(),
            unit(between.value()).or(() -> unit(between.low())).or(() -> unit(between.high())));
    double was = at.number(between.value());
    double low = at.number(between.low());
    double high = at.number(between.high());
    int decimals = writer.decimals(was, was < low ? low : high);
    return new Shortfall(
        at.called(),
        property(between.value()),
        writer.write(was, decimals),
        Shortfall.Bound.WITHIN,
        new Clause(
            "common.range",
            Map.of("from", writer.write(low, decimals), "to", writer.write(high, decimals))));
  }

  /**
   * Writes a quantity whose limit is a share of another, such as {@code 110 % of recent-load}, as a
   * share of that other, since kilogram seconds don't show how steep a rise is.
   */
  private static Optional<Shortfall> share(
      Condition.Compare compare, EvaluationContext at, Shortfall.Bound bound) {
    if (!(compare.right() instanceof Expression.Arithmetic product
        && product.operation() == Expression.Operation.TIMES
        && compare.left().type() instanceof Type.Quantity quantity
        && !quantity.equals(Type.Quantity.NUMBER))) {
      return Optional.empty();
    }
    boolean factorFirst = product.left().type().equals(Type.Quantity.NUMBER);
    Expression factor = factorFirst ? product.left() : product.right();
    Expression other = factorFirst ? product.right() : product.left();
    double whole = at.number(other);
    if (!factor.type().equals(Type.Quantity.NUMBER)
        || !(other instanceof Expression.Get get)
        || !(whole > 0)) {
      return Optional.empty();
    }
    double was = at.number(compare.left()) / whole;
    double limit = at.number(factor);
    boolean rise =
        limit > 1 && (bound == Shortfall.Bound.AT_MOST || bound == Shortfall.Bound.UNDER);
    double by = rise ? 1 : 0;
    Writer writer = new Writer(Type.Quantity.NUMBER, Optional.of(Unit.PERCENT));
    int decimals = writer.decimals(was, limit);
    return Optional.of(
        new Shortfall(
            at.called(),
            property(compare.left()),
            new Clause(
                rise ? "breach.share-above" : "breach.share-of",
                Map.of("share", writer.write(was - by, decimals), "of", path(get))),
            bound,
            writer.write(limit - by, decimals)));
  }

  private static String property(Expression value) {
    return value instanceof Expression.Get get ? get.property() : "";
  }

  private static String path(Expression.Get get) {
    return get.of() instanceof Expression.Get outer
        ? path(outer) + "." + get.property()
        : get.property();
  }

  /**
   * Returns the unit written in the rule, so that a breach is reported in the coach's own units.
   */
  private static Optional<Unit> unit(Expression value) {
    return value instanceof Literal.Amount amount ? amount.unit() : Optional.empty();
  }

  /** Writes numbers of one type in one unit. */
  private record Writer(Type type, Optional<Unit> written) {

    /** Returns as many decimals as a reader needs to see that two numbers differ. */
    int decimals(double one, double other) {
      int decimals = usual();
      while (decimals < MOST_DECIMALS && write(one, decimals).equals(write(other, decimals))) {
        decimals++;
      }
      return decimals;
    }

    private int usual() {
      return type.accept(USUAL_DECIMALS);
    }

    /** Writes a number with its unit. */
    Message write(double number, int decimals) {
      return Double.isFinite(number)
          ? new WrittenText(text(number, decimals))
          : Clause.of("breach.unknown");
    }

    private String text(double number, int decimals) {
      return type.accept(new Text(this, number, decimals));
    }

    private String text(double base, Dimension dimension, int decimals) {
      if (dimension.equals(Dimension.LOAD_TIME)) {
        return Numbers.plain(base, decimals) + " " + LOAD_TIME_UNIT;
      }
      if (dimension.equals(Dimension.IMPULSE)) {
        return Numbers.plain(base, decimals) + " " + IMPULSE_UNIT;
      }
      Optional<Unit> unit = written.or(() -> usual(dimension));
      return unit.map(u -> inUnit(Numbers.plain(u.fromBase(base), decimals), u))
          .orElseGet(() -> Numbers.plain(base, decimals));
    }

    private static String inUnit(String number, Unit unit) {
      String symbol = unit.symbol();
      boolean one = number.equals("1") && symbol.endsWith("s") && symbol.length() > 1;
      return number + " " + (one ? symbol.substring(0, symbol.length() - 1) : symbol);
    }

    private static Optional<Unit> usual(Dimension dimension) {
      return Unit.of(dimension).stream().filter(u -> u != Unit.PERCENT).findFirst();
    }
  }

  private static final Type.Visitor<Integer> USUAL_DECIMALS =
      new Type.Visitor<>() {
        @Override
        public Integer quantity(Type.Quantity quantity) {
          Dimension dimension = quantity.dimension();
          return dimension.equals(Dimension.LOAD_TIME) || dimension.equals(Dimension.IMPULSE)
              ? 0
              : dimension.equals(Dimension.MASS) ? 2 : 1;
        }

        @Override
        public Integer plain(Type.Plain plain) {
          return switch (plain) {
            case LEVEL -> 1;
            case GRADE, DATE, TRUTH -> 0;
          };
        }

        @Override
        public Integer word(Type.Word word) {
          return 0;
        }

        @Override
        public Integer one(Type.One one) {
          return 0;
        }

        @Override
        public Integer many(Type.Many many) {
          return 0;
        }
      };

  /** Writes one number of each kind of type. */
  private record Text(Writer writer, double number, int decimals) implements Type.Visitor<String> {
    @Override
    public String quantity(Type.Quantity quantity) {
      return writer.text(number, quantity.dimension(), decimals);
    }

    @Override
    public String plain(Type.Plain plain) {
      return switch (plain) {
        case LEVEL -> Numbers.plain(number * 100, decimals) + " % max";
        case GRADE -> "IRCRA " + Numbers.plain(number, decimals);
        case DATE -> LocalDate.ofEpochDay((long) number).toString();
        case TRUTH -> Numbers.plain(number, decimals);
      };
    }

    @Override
    public String word(Type.Word word) {
      return Numbers.plain(number, decimals);
    }

    @Override
    public String one(Type.One one) {
      return Numbers.plain(number, decimals);
    }

    @Override
    public String many(Type.Many many) {
      return Numbers.plain(number, decimals);
    }
  }
}
