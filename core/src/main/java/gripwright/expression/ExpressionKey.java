package gripwright.expression;

import java.util.Optional;

/**
 * An expression as a key: equal to what is written alike, as expressions are among themselves, but
 * compared part by part in plain code. What the records bring is linked when each kind is first
 * used, which a cold start feels.
 */
final class ExpressionKey {

  private final Expression expression;
  private final int hash;

  ExpressionKey(Expression expression) {
    this.expression = expression;
    this.hash = hash(expression);
  }

  @Override
  public int hashCode() {
    return hash;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ExpressionKey written
        && hash == written.hash
        && alike(expression, written.expression);
  }

  private static int hash(Object part) {
    if (!(part instanceof Expression e)) {
      return part.hashCode();
    }
    int hash = e.getClass().getName().hashCode();
    for (Object inner : parts(e)) {
      hash = 31 * hash + hash(inner);
    }
    return hash;
  }

  private static boolean alike(Object one, Object other) {
    if (one == other) {
      return true;
    }
    if (!(one instanceof Expression e && other instanceof Expression f)) {
      return one.equals(other);
    }
    Object[] parts = parts(e);
    Object[] others = parts(f);
    boolean alike = e.getClass() == f.getClass() && parts.length == others.length;
    for (int i = 0; alike && i < parts.length; i++) {
      alike = alike(parts[i], others[i]);
    }
    return alike;
  }

  /** Stands for a part that is left out. */
  private static Object part(Optional<Expression> part) {
    return part.isPresent() ? part.get() : "";
  }

  /** Returns what an expression is made of, in the order of its record. */
  private static Object[] parts(Expression e) {
    if (e instanceof Expression.Get get) {
      return new Object[] {get.of(), get.property()};
    }
    if (e instanceof Expression.Subject subject) {
      return new Object[] {subject.kind(), subject.outward()};
    }
    if (e instanceof Expression.Compare compare) {
      return new Object[] {compare.relation(), compare.left(), compare.right()};
    }
    if (e instanceof Expression.Amount amount) {
      return new Object[] {amount.value(), amount.unit()};
    }
    if (e instanceof Expression.And and) {
      return new Object[] {and.left(), and.right()};
    }
    if (e instanceof Expression.Or or) {
      return new Object[] {or.left(), or.right()};
    }
    if (e instanceof Expression.Not not) {
      return new Object[] {not.operand()};
    }
    if (e instanceof Expression.Is is) {
      return new Object[] {is.value(), is.words()};
    }
    if (e instanceof Expression.Has has) {
      return new Object[] {has.value()};
    }
    if (e instanceof Expression.Between between) {
      return new Object[] {between.value(), between.low(), between.high()};
    }
    if (e instanceof Expression.Arithmetic arithmetic) {
      return new Object[] {arithmetic.operation(), arithmetic.left(), arithmetic.right()};
    }
    if (e instanceof Expression.Negate negate) {
      return new Object[] {negate.operand()};
    }
    if (e instanceof Expression.Summarize summarize) {
      return new Object[] {
        summarize.summary(),
        summarize.collection(),
        part(summarize.value()),
        part(summarize.where())
      };
    }
    if (e instanceof Expression.Quantify quantify) {
      return new Object[] {
        quantify.quantifier(), quantify.collection(), part(quantify.where()), quantify.body()
      };
    }
    return leaf(e);
  }

  private static Object[] leaf(Expression e) {
    if (e instanceof Expression.PercentOfMax share) {
      return new Object[] {share.percent()};
    }
    if (e instanceof Expression.Grade grade) {
      return new Object[] {grade.ability()};
    }
    if (e instanceof Expression.Date date) {
      return new Object[] {date.day()};
    }
    return new Object[] {((Expression.Truth) e).value()};
  }
}
