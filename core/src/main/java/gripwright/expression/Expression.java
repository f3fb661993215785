package gripwright.expression;

import gripwright.ability.Ability;
import gripwright.quantity.Unit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A typed expression over the subjects of a rule. Immutable; expressions are equal if they are
 * written identically.
 *
 * <p>Start from {@link #subject(Kind)}, the subject, and from literals such as {@link
 * #amount(double, Unit)}, and combine them with the methods below:
 *
 * <pre>{@code
 * Expression week = Expression.subject(Kind.WEEK);
 * week.get("load").atMost(Expression.percent(115).times(week.get("previous").get("load")))
 * }</pre>
 *
 * <p>Types are checked when an expression is built, and an {@link IllegalArgumentException}
 * describes a mismatch, so that evaluation can't fail. Values may still be missing: the first week
 * has no previous week, and no level without a test. A comparison with something missing is neither
 * true nor false; {@code and}, {@code or} and {@code not} have a result if the other side alone
 * determines it; a rule whose condition or requirement stays undecided does not apply there. A
 * division by zero is missing. Sums, means and counts leave out what is missing or undecided; the
 * mean, largest and smallest of nothing are missing. Two numbers that differ by less than a
 * billionth of themselves count as equal.
 */
public sealed interface Expression
    permits Literal,
        Condition,
        Expression.Subject,
        Expression.Get,
        Expression.Arithmetic,
        Expression.Negate,
        Expression.Summarize {

  /** Returns the type of the value, known without evaluation. */
  Type type();

  /** Returns what the visitor returns for the kind of this expression. */
  <R> R accept(ExpressionVisitor<R> visitor);

  /**
   * The subject of a rule, or an element of a collection.
   *
   * @param kind its kind
   * @param depth 0 for the innermost: the element of a collection, or else the subject of the rule;
   *     1 for the one that encloses it, and so on
   */
  record Subject(Kind kind, int depth) implements Expression {
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
   * Two values combined.
   *
   * @param operation the operation
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
   * A negated number.
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
   * One value calculated from a collection. Inside {@code value} and {@code where} the innermost
   * {@link Subject} is the element.
   *
   * @param summary the kind of summary
   * @param collection the elements
   * @param value the value of each element; empty for a count and only then
   * @param where which elements are included; empty means all
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
     * @throws IllegalArgumentException if it is not a collection, or the value is missing, not
     *     allowed, or of a type without this summary
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

  /** Operations on two values. */
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

  /** Kinds of summary of a collection. */
  enum Summary {
    /** The sum; 0 for no elements. */
    SUM,
    /** The arithmetic mean. */
    MEAN,
    /** The largest, or the last date. */
    LARGEST,
    /** The smallest, or the first date. */
    SMALLEST,
    /** The number of elements. */
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

  /** Returns the subject of the rule or, inside a sum, count or the like, the element. */
  static Expression subject(Kind kind) {
    return new Subject(kind, 0);
  }

  /** Returns a subject that encloses the innermost one: 1 for the next, and so on. */
  static Expression outer(Kind kind, int depth) {
    return new Subject(kind, depth);
  }

  /**
   * Returns a property of this thing.
   *
   * @throws IllegalArgumentException if this is not a thing or it has no such property
   */
  default Expression get(String property) {
    return new Get(this, property);
  }

  /**
   * Returns whether a property is read anywhere in this expression.
   *
   * @param kind the kind that has it
   * @param property its name
   */
  default boolean reads(Kind kind, String property) {
    return ExpressionKey.reads(this, kind, property);
  }

  /** Returns the condition that this exists. */
  default Expression exists() {
    return new Condition.Has(this);
  }

  /** Returns the condition that this is less than another value. */
  default Expression lessThan(Expression other) {
    return new Condition.Compare(Condition.Relation.LESS, this, other);
  }

  /** Returns the condition that this is at most another value. */
  default Expression atMost(Expression other) {
    return new Condition.Compare(Condition.Relation.AT_MOST, this, other);
  }

  /** Returns the condition that this is more than another value. */
  default Expression moreThan(Expression other) {
    return new Condition.Compare(Condition.Relation.GREATER, this, other);
  }

  /** Returns the condition that this is at least another value. */
  default Expression atLeast(Expression other) {
    return new Condition.Compare(Condition.Relation.AT_LEAST, this, other);
  }

  /** Returns the condition that this equals another value. */
  default Expression equalTo(Expression other) {
    return new Condition.Compare(Condition.Relation.EQUAL, this, other);
  }

  /** Returns the condition that this differs from another value. */
  default Expression notEqualTo(Expression other) {
    return new Condition.Compare(Condition.Relation.NOT_EQUAL, this, other);
  }

  /** Returns the condition that this is between two values, both ends included. */
  default Expression between(Expression low, Expression high) {
    return new Condition.Between(this, low, high);
  }

  /** Returns the condition that this word is one of several. */
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

  /** Returns this number negated. */
  default Expression negated() {
    return new Negate(this);
  }

  /** Returns the conjunction: both are true. */
  default Expression and(Expression other) {
    return new Condition.And(this, other);
  }

  /** Returns the disjunction: at least one is true. */
  default Expression or(Expression other) {
    return new Condition.Or(this, other);
  }

  /** Returns the negation. */
  default Expression not() {
    return new Condition.Not(this);
  }

  /** Returns the number of elements. */
  default Expression count() {
    return new Summarize(Summary.COUNT, this, Optional.empty(), Optional.empty());
  }

  /** Returns the number of elements that satisfy a condition. */
  default Expression countWhere(Expression where) {
    return new Summarize(Summary.COUNT, this, Optional.empty(), Optional.of(where));
  }

  /** Returns the sum, mean, largest or smallest of a value of the elements. */
  default Expression summarize(Summary summary, Expression value) {
    return new Summarize(summary, this, Optional.of(value), Optional.empty());
  }

  /**
   * Returns the sum, mean, largest or smallest of a value of the elements that satisfy a condition.
   */
  default Expression summarizeWhere(Summary summary, Expression value, Expression where) {
    return new Summarize(summary, this, Optional.of(value), Optional.of(where));
  }

  /** Returns the condition that every element satisfies a condition. */
  default Expression every(Expression body) {
    return new Condition.Quantify(Condition.Quantifier.EVERY, this, Optional.empty(), body);
  }

  /** Returns the condition that every element with {@code where} satisfies a condition. */
  default Expression everyWhere(Expression where, Expression body) {
    return new Condition.Quantify(Condition.Quantifier.EVERY, this, Optional.of(where), body);
  }

  /** Returns the condition that at least one element satisfies a condition. */
  default Expression any(Expression body) {
    return new Condition.Quantify(Condition.Quantifier.ANY, this, Optional.empty(), body);
  }

  /** Returns the condition that at least one element with {@code where} satisfies a condition. */
  default Expression anyWhere(Expression where, Expression body) {
    return new Condition.Quantify(Condition.Quantifier.ANY, this, Optional.of(where), body);
  }
}
