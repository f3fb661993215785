package gripwright.expression;

import gripwright.expression.Condition.Relation;
import java.util.function.DoubleBinaryOperator;

/** Compares and combines two numbers. */
final class Arithmetic {

  /** Numbers that differ by less than this share of themselves, or of 1, count as equal. */
  static final double TOLERANCE = 1e-9;

  private static final double SECONDS_PER_DAY = 86_400;

  private Arithmetic() {}

  /** Returns -1, 0 or 1, as the first is less than, equal to or more than the second. */
  static int order(double one, double other) {
    double scale = Math.max(1, Math.max(Math.abs(one), Math.abs(other)));
    return Math.abs(one - other) <= TOLERANCE * scale ? 0 : Double.compare(one, other);
  }

  /** Returns whether a relation holds, by the order of its sides. */
  static boolean holds(Relation relation, int order) {
    return switch (relation) {
      case LESS -> order < 0;
      case AT_MOST -> order <= 0;
      case GREATER -> order > 0;
      case AT_LEAST -> order >= 0;
      case EQUAL -> order == 0;
      case NOT_EQUAL -> order != 0;
    };
  }

  /** Returns the operation on the two numbers; dates are counted in days and times in seconds. */
  static DoubleBinaryOperator operation(Expression.Arithmetic arithmetic) {
    boolean date = arithmetic.left().type() == Type.Plain.DATE;
    boolean dates = date && arithmetic.right().type() == Type.Plain.DATE;
    double scale = dates ? SECONDS_PER_DAY : 1;
    double rightScale = date && !dates ? 1 / SECONDS_PER_DAY : 1;
    return switch (arithmetic.operation()) {
      case PLUS -> (one, other) -> one + other * rightScale;
      case MINUS -> (one, other) -> (one - other * rightScale) * scale;
      case TIMES -> (one, other) -> one * other;
      case DIVIDED_BY -> (one, other) -> other == 0 ? Double.NaN : one / other;
    };
  }
}
