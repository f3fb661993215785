package gripwright.rule;

import gripwright.quantity.Dimension;
import gripwright.quantity.Numbers;
import gripwright.quantity.Unit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A comparison that a broken requirement owes to, in words with their units. A breach of a rule
 * carries those it owes to as its argument {@code missing}.
 *
 * @param what the property that was compared, as a rule names it, such as {@code trained}; empty
 *     where something was worked out from several
 * @param was what there is, such as {@code 14 months}
 * @param limit what it was compared with, such as {@code 24 months}
 */
public record Shortfall(String what, String was, String limit) {

  /** The base units of a product with no unit of its own. */
  private static final String LOAD_TIME_UNIT = "kg s";

  private static final String IMPULSE_UNIT = "N s";

  /** Finds the comparisons that a broken requirement owes to, in the order written. */
  static List<Shortfall> of(Expression require, Kind kind, Object subject) {
    if (require instanceof Expression.And and) {
      List<Shortfall> both = new ArrayList<>();
      for (Expression side : List.of(and.left(), and.right())) {
        if (Compiler.truth(side, kind).of(subject) == Compiler.NO) {
          both.addAll(of(side, kind, subject));
        }
      }
      return both;
    }
    if (require instanceof Expression.Or or) {
      List<Shortfall> left = of(or.left(), kind, subject);
      return left.isEmpty() ? of(or.right(), kind, subject) : left;
    }
    if (require instanceof Expression.Compare compare) {
      return List.of(
          new Shortfall(
              property(compare.left()),
              print(compare.left(), compare.right(), kind, subject),
              print(compare.right(), compare.left(), kind, subject)));
    }
    if (require instanceof Expression.Between between) {
      return List.of(
          new Shortfall(
              property(between.value()),
              print(between.value(), between.low(), kind, subject),
              print(between.low(), between.low(), kind, subject)
                  + " to "
                  + print(between.high(), between.high(), kind, subject)));
    }
    return List.of();
  }

  private static String property(Expression value) {
    return value instanceof Expression.Get get ? get.property() : "";
  }

  private static String print(Expression value, Expression other, Kind kind, Object subject) {
    double number = Compiler.number(value, kind).of(subject);
    if (Double.isNaN(number)) {
      return "unknown";
    }
    if (value.type() == Type.Plain.LEVEL) {
      return Numbers.plain(number * 100, 1) + " % max";
    }
    if (value.type() == Type.Plain.GRADE) {
      return "IRCRA " + Numbers.plain(number, 0);
    }
    if (value.type() == Type.Plain.DATE) {
      return LocalDate.ofEpochDay((long) number).toString();
    }
    return value.type() instanceof Type.Quantity quantity
        ? print(number, quantity.dimension(), unit(value).or(() -> unit(other)))
        : Numbers.plain(number, 2);
  }

  /** Returns the unit that is written, so that a breach is told in the coach's own units. */
  private static Optional<Unit> unit(Expression value) {
    return value instanceof Expression.Amount amount ? amount.unit() : Optional.empty();
  }

  private static String print(double base, Dimension dimension, Optional<Unit> written) {
    if (dimension.equals(Dimension.LOAD_TIME)) {
      return Numbers.plain(base, 0) + " " + LOAD_TIME_UNIT;
    }
    if (dimension.equals(Dimension.IMPULSE)) {
      return Numbers.plain(base, 0) + " " + IMPULSE_UNIT;
    }
    Optional<Unit> unit = written.or(() -> usual(dimension));
    return unit.map(u -> Numbers.plain(u.fromBase(base), 2) + " " + u.symbol())
        .orElseGet(() -> Numbers.plain(base, 2));
  }

  private static Optional<Unit> usual(Dimension dimension) {
    return Unit.of(dimension).stream().filter(u -> u != Unit.PERCENT).findFirst();
  }
}
