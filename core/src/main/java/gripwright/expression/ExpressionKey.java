package gripwright.expression;

import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.Optional;

/**
 * An expression as a key, equal to the same expressions as the expression itself but compared part
 * by part in plain code. The generated methods of records are linked at their first use, which
 * would slow down a cold start.
 */
final class ExpressionKey {

  private static final Parts PARTS = new Parts();

  private final Expression expression;
  private final int hash;

  ExpressionKey(Expression expression) {
    this(expression, hash(expression));
  }

  private ExpressionKey(Expression expression, int hash) {
    this.expression = expression;
    this.hash = hash;
  }

  /**
   * Returns the key of an expression, and adds the keys of its parts and its own to those that are
   * known.
   */
  static ExpressionKey of(Expression expression, IdentityHashMap<Expression, ExpressionKey> known) {
    ExpressionKey key = known.get(expression);
    if (key == null) {
      int hash = expression.getClass().getName().hashCode();
      for (Object inner : expression.accept(PARTS)) {
        hash = 31 * hash + (inner instanceof Expression e ? of(e, known).hash : inner.hashCode());
      }
      key = new ExpressionKey(expression, hash);
      known.put(expression, key);
    }
    return key;
  }

  @Override
  public int hashCode() {
    return hash;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ExpressionKey written
        && hash == written.hash
        && areEqual(expression, written.expression);
  }

  private static int hash(Object part) {
    if (!(part instanceof Expression e)) {
      return part.hashCode();
    }
    int hash = e.getClass().getName().hashCode();
    for (Object inner : e.accept(PARTS)) {
      hash = 31 * hash + hash(inner);
    }
    return hash;
  }

  private static boolean areEqual(Object one, Object other) {
    if (one == other) {
      return true;
    }
    if (!(one instanceof Expression e && other instanceof Expression f)) {
      return one.equals(other);
    }
    Object[] parts = e.accept(PARTS);
    Object[] others = f.accept(PARTS);
    boolean equal = e.getClass() == f.getClass() && parts.length == others.length;
    for (int i = 0; equal && i < parts.length; i++) {
      equal = areEqual(parts[i], others[i]);
    }
    return equal;
  }

  /** Returns whether a property of a kind is read in an expression. */
  static boolean reads(Expression e, Kind kind, String property) {
    boolean here =
        e instanceof Expression.Get get
            && get.property().equals(property)
            && get.of().type().equals(new Type.One(kind));
    return here
        || Arrays.stream(e.accept(PARTS))
            .anyMatch(part -> part instanceof Expression inner && reads(inner, kind, property));
  }

  /** Returns a part, or a placeholder if it is left out. */
  private static Object part(Optional<Expression> part) {
    return part.isPresent() ? part.get() : "";
  }

  /** The parts of an expression, in the order of its record. */
  private static final class Parts
      implements ExpressionVisitor<Object[]>, Literal.Visitor<Object[]> {
    @Override
    public Object[] literal(Literal literal) {
      return literal.accept((Literal.Visitor<Object[]>) this);
    }

    @Override
    public Object[] amount(Literal.Amount amount) {
      return new Object[] {amount.value(), amount.unit()};
    }

    @Override
    public Object[] percentOfMax(Literal.PercentOfMax percentOfMax) {
      return new Object[] {percentOfMax.percent()};
    }

    @Override
    public Object[] grade(Literal.Grade grade) {
      return new Object[] {grade.ability()};
    }

    @Override
    public Object[] date(Literal.Date date) {
      return new Object[] {date.day()};
    }

    @Override
    public Object[] truth(Condition.Truth truth) {
      return new Object[] {truth.value()};
    }

    @Override
    public Object[] subject(Expression.Subject subject) {
      return new Object[] {subject.kind(), subject.depth()};
    }

    @Override
    public Object[] get(Expression.Get get) {
      return new Object[] {get.of(), get.property()};
    }

    @Override
    public Object[] has(Condition.Has has) {
      return new Object[] {has.value()};
    }

    @Override
    public Object[] compare(Condition.Compare compare) {
      return new Object[] {compare.relation(), compare.left(), compare.right()};
    }

    @Override
    public Object[] between(Condition.Between between) {
      return new Object[] {between.value(), between.low(), between.high()};
    }

    @Override
    public Object[] is(Condition.Is is) {
      return new Object[] {is.value(), is.words()};
    }

    @Override
    public Object[] arithmetic(Expression.Arithmetic arithmetic) {
      return new Object[] {arithmetic.operation(), arithmetic.left(), arithmetic.right()};
    }

    @Override
    public Object[] negate(Expression.Negate negate) {
      return new Object[] {negate.operand()};
    }

    @Override
    public Object[] and(Condition.And and) {
      return new Object[] {and.left(), and.right()};
    }

    @Override
    public Object[] or(Condition.Or or) {
      return new Object[] {or.left(), or.right()};
    }

    @Override
    public Object[] not(Condition.Not not) {
      return new Object[] {not.operand()};
    }

    @Override
    public Object[] summarize(Expression.Summarize summarize) {
      return new Object[] {
        summarize.summary(),
        summarize.collection(),
        part(summarize.value()),
        part(summarize.where())
      };
    }

    @Override
    public Object[] quantify(Condition.Quantify quantify) {
      return new Object[] {
        quantify.quantifier(), quantify.collection(), part(quantify.where()), quantify.body()
      };
    }
  }
}
