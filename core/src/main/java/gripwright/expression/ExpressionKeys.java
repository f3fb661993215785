package gripwright.expression;

import java.util.IdentityHashMap;
import java.util.Objects;
import java.util.Optional;

/**
 * The keys by which {@link Columns} finds equal expressions, worked out once for all parts of an
 * expression that is evaluated for many plans. Immutable.
 */
public final class ExpressionKeys {

  private final IdentityHashMap<Expression, ExpressionKey> keys = new IdentityHashMap<>();

  private ExpressionKeys() {}

  /** Returns the keys of one or two expressions with all their parts. */
  public static ExpressionKeys of(Expression one, Optional<? extends Expression> other) {
    Objects.requireNonNull(one, "one");
    Objects.requireNonNull(other, "other");
    ExpressionKeys keys = new ExpressionKeys();
    ExpressionKey.of(one, keys.keys);
    other.ifPresent(expression -> ExpressionKey.of(expression, keys.keys));
    return keys;
  }

  /** Returns no keys: each is worked out when it is needed. */
  static ExpressionKeys none() {
    return new ExpressionKeys();
  }

  /** Returns the key of an expression. */
  ExpressionKey of(Expression expression) {
    ExpressionKey known = keys.get(expression);
    return known == null ? new ExpressionKey(expression) : known;
  }
}
