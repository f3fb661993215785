package gripwright.expression;

/**
 * One method for each kind of {@link Expression}. Code doesn't compile until every visitor handles
 * a new kind.
 *
 * @param <R> the type of result
 */
public interface ExpressionVisitor<R> {

  /** Visits a literal. */
  R literal(Literal literal);

  /** Visits a truth value. */
  R truth(Condition.Truth truth);

  /** Visits a subject. */
  R subject(Expression.Subject subject);

  /** Visits a property of a thing. */
  R get(Expression.Get get);

  /** Visits a test whether something exists. */
  R has(Condition.Has has);

  /** Visits a comparison. */
  R compare(Condition.Compare compare);

  /** Visits a test whether a value is between two others. */
  R between(Condition.Between between);

  /** Visits a test whether a word is one of several. */
  R is(Condition.Is is);

  /** Visits two values combined. */
  R arithmetic(Expression.Arithmetic arithmetic);

  /** Visits a negated number. */
  R negate(Expression.Negate negate);

  /** Visits a conjunction. */
  R and(Condition.And and);

  /** Visits a disjunction. */
  R or(Condition.Or or);

  /** Visits a negation. */
  R not(Condition.Not not);

  /** Visits a summary of a collection. */
  R summarize(Expression.Summarize summarize);

  /** Visits a quantified condition. */
  R quantify(Condition.Quantify quantify);
}
