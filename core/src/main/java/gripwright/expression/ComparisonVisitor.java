package gripwright.expression;

/**
 * Looks for the comparisons that a requirement is made of. What is not made of comparisons has one
 * answer for all its kinds.
 *
 * @param <R> what is answered
 */
abstract class ComparisonVisitor<R> implements ExpressionVisitor<R> {

  /** Answers for every one of some things. */
  abstract R every(Condition.Quantify every);

  /** Answers for what compares no numbers by itself. */
  abstract R nothing();

  @Override
  public final R quantify(Condition.Quantify quantify) {
    return switch (quantify.quantifier()) {
      case EVERY -> every(quantify);
      case ANY -> nothing();
    };
  }

  @Override
  public final R literal(Literal literal) {
    return nothing();
  }

  @Override
  public final R truth(Condition.Truth truth) {
    return nothing();
  }

  @Override
  public final R subject(Expression.Subject subject) {
    return nothing();
  }

  @Override
  public final R get(Expression.Get get) {
    return nothing();
  }

  @Override
  public final R has(Condition.Has has) {
    return nothing();
  }

  @Override
  public final R is(Condition.Is is) {
    return nothing();
  }

  @Override
  public final R arithmetic(Expression.Arithmetic arithmetic) {
    return nothing();
  }

  @Override
  public final R negate(Expression.Negate negate) {
    return nothing();
  }

  @Override
  public final R not(Condition.Not not) {
    return nothing();
  }

  @Override
  public final R summarize(Expression.Summarize summarize) {
    return nothing();
  }
}
