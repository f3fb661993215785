package gripwright.expression;

/**
 * One answer for each kind of {@link Expression}. A new kind does not compile until every visitor
 * has an answer for it.
 *
 * @param <R> what is answered
 */
public interface ExpressionVisitor<R> {

  /** Answers for a value that is written out. */
  R literal(Literal literal);

  /** Answers for a truth value. */
  R truth(Condition.Truth truth);

  /** Answers for what is looked at. */
  R subject(Expression.Subject subject);

  /** Answers for a property of a thing. */
  R get(Expression.Get get);

  /** Answers for whether something is there. */
  R has(Condition.Has has);

  /** Answers for a comparison. */
  R compare(Condition.Compare compare);

  /** Answers for whether a value lies between two others. */
  R between(Condition.Between between);

  /** Answers for whether a word is one of some. */
  R is(Condition.Is is);

  /** Answers for two values put together. */
  R arithmetic(Expression.Arithmetic arithmetic);

  /** Answers for a number with its sign turned. */
  R negate(Expression.Negate negate);

  /** Answers for whether both are so. */
  R and(Condition.And and);

  /** Answers for whether either is so. */
  R or(Condition.Or or);

  /** Answers for the opposite. */
  R not(Condition.Not not);

  /** Answers for one value made of several things. */
  R summarize(Expression.Summarize summarize);

  /** Answers for whether every one or any of several things is so. */
  R quantify(Condition.Quantify quantify);
}
