package gripwright.expression;

/**
 * Visits the comparisons of a requirement. All kinds without comparisons share one method.
 *
 * @param <R> the type of result
 */
abstract class ComparisonVisitor<R> implements ExpressionVisitor<R> {

  /** Visits a condition on every element. */
  abstract R every(Condition.Quantify every);

  /** Visits an expression that compares no numbers itself. */
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
