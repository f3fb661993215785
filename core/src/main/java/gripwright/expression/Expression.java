package gripwright.expression;

import gripwright.ability.Ability;
import gripwright.quantity.Unit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A typed expression over the things a rule looks at. Immutable; equal when written alike.
 *
 * <p>Start from {@link #subject(Kind)}, what is looked at, and from written values such as {@link
 * #amount(double, Unit)}, and go on with the methods below:
 *
 * <pre>{@code
 * Expression week = Expression.subject(Kind.WEEK);
 * week.get("load").atMost(Expression.percent(115).times(week.get("previous").get("load")))
 * }</pre>
 *
 * <p>Types are checked as an expression is put together, and {@link IllegalArgumentException} tells
 * what does not fit, so that evaluation can't fail. Something may be missing all the same: there is
 * no previous week in the first, and no level without a test. A comparison with something missing
 * is neither true nor false; {@code and}, {@code or} and {@code not} decide where the other side
 * alone decides; a rule whose condition or requirement stays undecided does not apply at that
 * place. A division by zero is missing. Sums, means and counts leave out what is missing or
 * undecided; the mean, largest and smallest of nothing are missing. Two numbers that differ by less
 * than a billionth of themselves count as equal.
 */
public sealed interface Expression
    permits Literal,
        Condition,
        Expression.Subject,
        Expression.Get,
        Expression.Arithmetic,
        Expression.Negate,
        Expression.Summarize {

  /** Returns the kind of value, known without evaluating anything. */
  Type type();

  /** Answers with what a visitor has for the kind of this expression. */
  <R> R accept(ExpressionVisitor<R> visitor);

  /**
   * What is looked at.
   *
   * @param kind what it is
   * @param outward 0 for the innermost: the element of a collection, or else what the rule looks
   *     at; 1 for what stands around that, and so on
   */
  record Subject(Kind kind, int outward) implements Expression {
    @Override
    public Type type() {
      return new Type.One(kind);
    }

    @Override
    public <R> R accept(ExpressionVisitor<R> visitor) {
      return visitor.subject(this);
    }
  }

  /**
   * A property of a thing.
   *
   * @param of the thing
   * @param property name of the property
   */
  record Get(Expression of, String property) implements Expression {
    /**
     * Checks that there is such a property.
     *
     * @throws IllegalArgumentException if there is none
     */
    public Get {
      Checks.property(of, property);
    }

    @Override
    public Type type() {
      return Checks.property(of, property).type();
    }

    @Override
    public <R> R accept(ExpressionVisitor<R> visitor) {
      return visitor.get(this);
    }
  }

  /**
   * Two values put together.
   *
   * @param operation how
   * @param left one value
   * @param right the other
   */
  record Arithmetic(Operation operation, Expression left, Expression right) implements Expression {
    /**
     * Checks the types.
     *
     * @throws IllegalArgumentException if the operation has no meaning for the two
     */
    public Arithmetic {
      Checks.arithmetic(operation, left, right);
    }

    @Override
    public Type type() {
      return Checks.arithmetic(operation, left, right);
    }

    @Override
    public <R> R accept(ExpressionVisitor<R> visitor) {
      return visitor.arithmetic(this);
    }
  }

  /**
   * A number with its sign turned.
   *
   * @param operand the number
   */
  record Negate(Expression operand) implements Expression {
    /**
     * Checks the type.
     *
     * @throws IllegalArgumentException if the operand is not a number, with a unit or without
     */
    public Negate {
      Checks.quantity(operand);
    }

    @Override
    public Type type() {
      return operand.type();
    }

    @Override
    public <R> R accept(ExpressionVisitor<R> visitor) {
      return visitor.negate(this);
    }
  }

  /**
   * One value made of several things. Inside {@code value} and {@code where} the innermost {@link
   * Subject} is the element.
   *
   * @param summary how
   * @param collection the things
   * @param value what is taken of each; empty for a count and only then
   * @param where which things count; empty means all
   */
  record Summarize(
      Summary summary,
      Expression collection,
      Optional<Expression> value,
      Optional<Expression> where)
      implements Expression {
    /**
     * Checks the types.
     *
     * @throws IllegalArgumentException if the collection is none, or a value is missing, one too
     *     many or of a type that the summary has no meaning for
     */
    public Summarize {
      Checks.many(collection);
      where.ifPresent(Checks::truth);
      Checks.summary(summary, value);
    }

    @Override
    public Type type() {
      return value.map(Expression::type).orElse(Type.Quantity.NUMBER);
    }

    @Override
    public <R> R accept(ExpressionVisitor<R> visitor) {
      return visitor.summarize(this);
    }
  }

  /** How two values are put together. */
  enum Operation {
    /** Sum. */
    PLUS("+"),
    /** Difference. */
    MINUS("-"),
    /** Product. */
    TIMES("*"),
    /** Quotient. */
    DIVIDED_BY("/");

    private final String symbol;

    Operation(String symbol) {
      this.symbol = symbol;
    }

    /** Returns the sign written in a rule. */
    public String symbol() {
      return symbol;
    }
  }

  /** How one value is made of several things. */
  enum Summary {
    /** All together; 0 of nothing. */
    SUM,
    /** The arithmetic mean. */
    MEAN,
    /** The largest, or the last date. */
    LARGEST,
    /** The smallest, or the first date. */
    SMALLEST,
    /** How many. */
    COUNT
  }

  /** Returns a pure number. */
  static Expression number(double value) {
    return new Literal.Amount(value, Optional.empty());
  }

  /** Returns a number with a unit; {@code amount(48, Unit.HOUR)} is {@code 48 h}. */
  static Expression amount(double value, Unit unit) {
    return new Literal.Amount(value, Optional.of(unit));
  }

  /** Returns a percentage, which is a pure number; {@code percent(115)} is 1.15. */
  static Expression percent(double value) {
    return amount(value, Unit.PERCENT);
  }

  /** Returns a share of the reference maximum; {@code percentOfMax(60)} is {@code 60 % max}. */
  static Expression percentOfMax(double percent) {
    return new Literal.PercentOfMax(percent);
  }

  /** Returns a grade. */
  static Expression grade(Ability ability) {
    return new Literal.Grade(ability);
  }

  /** Returns a date. */
  static Expression date(LocalDate day) {
    return new Literal.Date(day);
  }

  /** Returns what the rule looks at or, inside a sum, count and the like, the element. */
  static Expression subject(Kind kind) {
    return new Subject(kind, 0);
  }

  /** Returns what stands around the innermost subject: 1 for the next, and so on. */
  static Expression outer(Kind kind, int outward) {
    return new Subject(kind, outward);
  }

  /**
   * Returns a property of this thing.
   *
   * @throws IllegalArgumentException if this is not a thing or it has no such property
   */
  default Expression get(String property) {
    return new Get(this, property);
  }

  /** Returns whether this is there. */
  default Expression exists() {
    return new Condition.Has(this);
  }

  /** Returns whether this is less than another value. */
  default Expression lessThan(Expression other) {
    return new Condition.Compare(Condition.Relation.LESS, this, other);
  }

  /** Returns whether this is at most another value. */
  default Expression atMost(Expression other) {
    return new Condition.Compare(Condition.Relation.AT_MOST, this, other);
  }

  /** Returns whether this is more than another value. */
  default Expression moreThan(Expression other) {
    return new Condition.Compare(Condition.Relation.GREATER, this, other);
  }

  /** Returns whether this is at least another value. */
  default Expression atLeast(Expression other) {
    return new Condition.Compare(Condition.Relation.AT_LEAST, this, other);
  }

  /** Returns whether this equals another value. */
  default Expression equalTo(Expression other) {
    return new Condition.Compare(Condition.Relation.EQUAL, this, other);
  }

  /** Returns whether this differs from another value. */
  default Expression notEqualTo(Expression other) {
    return new Condition.Compare(Condition.Relation.NOT_EQUAL, this, other);
  }

  /** Returns whether this lies between two values, both ends counted in. */
  default Expression between(Expression low, Expression high) {
    return new Condition.Between(this, low, high);
  }

  /** Returns whether this word is one of some. */
  default Expression is(String... words) {
    return new Condition.Is(this, List.of(words));
  }

  /** Returns the sum. */
  default Expression plus(Expression other) {
    return new Arithmetic(Operation.PLUS, this, other);
  }

  /** Returns the difference. */
  default Expression minus(Expression other) {
    return new Arithmetic(Operation.MINUS, this, other);
  }

  /** Returns the product. */
  default Expression times(Expression other) {
    return new Arithmetic(Operation.TIMES, this, other);
  }

  /** Returns the quotient. */
  default Expression dividedBy(Expression other) {
    return new Arithmetic(Operation.DIVIDED_BY, this, other);
  }

  /** Returns this number with its sign turned. */
  default Expression negated() {
    return new Negate(this);
  }

  /** Returns whether both are so. */
  default Expression and(Expression other) {
    return new Condition.And(this, other);
  }

  /** Returns whether either is so. */
  default Expression or(Expression other) {
    return new Condition.Or(this, other);
  }

  /** Returns the opposite. */
  default Expression not() {
    return new Condition.Not(this);
  }

  /** Returns how many of these things there are. */
  default Expression count() {
    return new Summarize(Summary.COUNT, this, Optional.empty(), Optional.empty());
  }

  /** Returns how many of these things are so. */
  default Expression countWhere(Expression where) {
    return new Summarize(Summary.COUNT, this, Optional.empty(), Optional.of(where));
  }

  /** Returns the sum, mean, largest or smallest of a value of these things. */
  default Expression summarize(Summary summary, Expression value) {
    return new Summarize(summary, this, Optional.of(value), Optional.empty());
  }

  /** Returns the sum, mean, largest or smallest of a value of those of these things that are so. */
  default Expression summarizeWhere(Summary summary, Expression value, Expression where) {
    return new Summarize(summary, this, Optional.of(value), Optional.of(where));
  }

  /** Returns whether each of these things is so. */
  default Expression every(Expression body) {
    return new Condition.Quantify(Condition.Quantifier.EVERY, this, Optional.empty(), body);
  }

  /** Returns whether each of these things for which {@code where} holds is so. */
  default Expression everyWhere(Expression where, Expression body) {
    return new Condition.Quantify(Condition.Quantifier.EVERY, this, Optional.of(where), body);
  }

  /** Returns whether at least one of these things is so. */
  default Expression any(Expression body) {
    return new Condition.Quantify(Condition.Quantifier.ANY, this, Optional.empty(), body);
  }

  /** Returns whether at least one of these things for which {@code where} holds is so. */
  default Expression anyWhere(Expression where, Expression body) {
    return new Condition.Quantify(Condition.Quantifier.ANY, this, Optional.of(where), body);
  }
}
