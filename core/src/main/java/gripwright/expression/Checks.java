package gripwright.expression;

import java.util.List;
import java.util.Optional;

/**
 * Checks the types in an expression. Each check returns normally or throws an exception that quotes
 * the mismatch.
 */
public final class Checks {

  private Checks() {}

  static Property property(Expression of, String name) {
    if (of.type() instanceof Type.One one) {
      return Property.find(one.kind(), name)
          .orElseThrow(() -> wrong(one.kind().word() + " has no property " + name));
    }
    throw wrong(of.type() + " has no property " + name);
  }

  static void comparable(Expression left, Expression right) {
    if (!left.type().comparesWith(right.type())) {
      throw wrong(left.type() + " does not compare with " + right.type());
    }
  }

  static Type arithmetic(Expression.Operation operation, Expression left, Expression right) {
    Type one = left.type();
    Type other = right.type();
    Optional<Type> type =
        switch (operation) {
          case PLUS -> one.plus(other);
          case MINUS -> one.minus(other);
          case TIMES -> one.times(other);
          case DIVIDED_BY -> one.dividedBy(other);
        };
    return type.orElseThrow(() -> wrong(one + " " + operation.symbol() + " " + other));
  }

  static void quantity(Expression operand) {
    if (!(operand.type() instanceof Type.Quantity)) {
      throw wrong(operand.type() + " has no sign");
    }
  }

  static void truth(Expression operand) {
    if (operand.type() != Type.Plain.TRUTH) {
      throw wrong(operand.type() + " is not a yes or no");
    }
  }

  static void many(Expression collection) {
    if (!(collection.type() instanceof Type.Many)) {
      throw wrong(collection.type() + " is not several things");
    }
  }

  static void words(Expression value, List<String> words) {
    if (!(value.type() instanceof Type.Word word)) {
      throw wrong(value.type() + " is not a word");
    }
    for (String each : words) {
      if (!word.vocabulary().allows(each)) {
        throw wrong(each + " is not one of " + word.vocabulary().words());
      }
    }
    if (words.isEmpty()) {
      throw wrong("no word to compare with");
    }
  }

  static void summary(Expression.Summary summary, Optional<Expression> value) {
    boolean fits =
        switch (summary) {
          case COUNT -> value.isEmpty();
          case SUM -> value.filter(v -> v.type() instanceof Type.Quantity).isPresent();
          case MEAN ->
              value
                  .filter(v -> v.type() instanceof Type.Quantity || v.type() == Type.Plain.LEVEL)
                  .isPresent();
          case LARGEST, SMALLEST -> value.filter(v -> v.type().ordered()).isPresent();
        };
    if (!fits) {
      throw wrong(
          summary.name().toLowerCase(java.util.Locale.ROOT)
              + " of "
              + value.map(v -> v.type().toString()).orElse("nothing"));
    }
  }

  private static IllegalArgumentException wrong(String what) {
    return new IllegalArgumentException(what);
  }
}
