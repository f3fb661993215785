package gripwright.expression;

import gripwright.ability.Ability;
import gripwright.quantity.Dimension;
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
public sealed interface Expression {

  /** Returns the kind of value, known without evaluating anything. */
  Type type();

  /**
   * A number, with a unit or without.
   *
   * @param value in that unit
   * @param unit empty for a pure number
   */
  record Amount(double value, Optional<Unit> unit) implements Expression {
    /**
     * Checks the value.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public Amount {
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException("not a number: " + value);
      }
    }

    @Override
    public Type type() {
      return new Type.Quantity(unit.map(Unit::dimension).orElse(Dimension.NUMBER));
    }

    /** Returns the value in the base unit of its dimension. */
    public double base() {
      return unit.map(u -> u.toBase(value)).orElse(value);
    }
  }

  /**
   * A share of the reference maximum.
   *
   * @param percent 60 for {@code 60 % max}
   */
  record PercentOfMax(double percent) implements Expression {
    @Override
    public Type type() {
      return Type.Plain.LEVEL;
    }
  }

  /**
   * A climbing grade.
   *
   * @param ability the grade
   */
  record Grade(Ability ability) implements Expression {
    @Override
    public Type type() {
      return Type.Plain.GRADE;
    }
  }

  /**
   * A day of the calendar.
   *
   * @param day the day
   */
  record Date(LocalDate day) implements Expression {
    @Override
    public Type type() {
      return Type.Plain.DATE;
    }
  }

  /**
   * A truth value.
   *
   * @param value the value
   */
  record Truth(boolean value) implements Expression {
    @Override
    public Type type() {
      return Type.Plain.TRUTH;
    }
  }

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
  }

  /**
   * Whether something is there.
   *
   * @param value a thing or a value
   */
  record Has(Expression value) implements Expression {
    @Override
    public Type type() {
      return Type.Plain.TRUTH;
    }
  }

  /**
   * A comparison.
   *
   * @param relation how the two should stand
   * @param left one value
   * @param right the other, of the same type
   */
  record Compare(Relation relation, Expression left, Expression right) implements Expression {
    /**
     * Checks the types.
     *
     * @throws IllegalArgumentException if the two do not compare
     */
    public Compare {
      Checks.comparable(left, right);
    }

    @Override
    public Type type() {
      return Type.Plain.TRUTH;
    }
  }

  /**
   * Whether a value lies between two others, both ends counted in.
   *
   * @param value the value
   * @param low lower end, of the same type
   * @param high upper end, of the same type
   */
  record Between(Expression value, Expression low, Expression high) implements Expression {
    /**
     * Checks the types.
     *
     * @throws IllegalArgumentException if the three do not compare
     */
    public Between {
      Checks.comparable(value, low);
      Checks.comparable(value, high);
    }

    @Override
    public Type type() {
      return Type.Plain.TRUTH;
    }
  }

  /**
   * Whether a word is one of some.
   *
   * @param value the word
   * @param words one or more, each in the vocabulary of the value
   */
  record Is(Expression value, List<String> words) implements Expression {
    /**
     * Checks the words.
     *
     * @throws IllegalArgumentException if the value is not a word or can't be one of these
     */
    public Is {
      words = List.copyOf(words);
      Checks.words(value, words);
    }

    @Override
    public Type type() {
      return Type.Plain.TRUTH;
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
  }

  /**
   * Both.
   *
   * @param left one
   * @param right the other
   */
  record And(Expression left, Expression right) implements Expression {
    /**
     * Checks the types.
     *
     * @throws IllegalArgumentException if one is not a truth
     */
    public And {
      Checks.truth(left);
      Checks.truth(right);
    }

    @Override
    public Type type() {
      return Type.Plain.TRUTH;
    }
  }

  /**
   * Either, or both.
   *
   * @param left one
   * @param right the other
   */
  record Or(Expression left, Expression right) implements Expression {
    /**
     * Checks the types.
     *
     * @throws IllegalArgumentException if one is not a truth
     */
    public Or {
      Checks.truth(left);
      Checks.truth(right);
    }

    @Override
    public Type type() {
      return Type.Plain.TRUTH;
    }
  }

  /**
   * The opposite.
   *
   * @param operand what is denied
   */
  record Not(Expression operand) implements Expression {
    /**
     * Checks the type.
     *
     * @throws IllegalArgumentException if the operand is not a truth
     */
    public Not {
      Checks.truth(operand);
    }

    @Override
    public Type type() {
      return Type.Plain.TRUTH;
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
  }

  /**
   * Whether every one or any of several things is so. Inside {@code body} and {@code where} the
   * innermost {@link Subject} is the element.
   *
   * @param quantifier every or any
   * @param collection the things
   * @param where which things are looked at; empty means all
   * @param body what should be so
   */
  record Quantify(
      Quantifier quantifier, Expression collection, Optional<Expression> where, Expression body)
      implements Expression {
    /**
     * Checks the types.
     *
     * @throws IllegalArgumentException if the collection is none or a condition is not a truth
     */
    public Quantify {
      Checks.many(collection);
      where.ifPresent(Checks::truth);
      Checks.truth(body);
    }

    @Override
    public Type type() {
      return Type.Plain.TRUTH;
    }
  }

  /** How two values should stand to each other. */
  enum Relation {
    /** Less than. */
    LESS("<"),
    /** At most. */
    AT_MOST("<="),
    /** More than. */
    GREATER(">"),
    /** At least. */
    AT_LEAST(">="),
    /** Equal. */
    EQUAL("="),
    /** Not equal. */
    NOT_EQUAL("!=");

    private final String symbol;

    Relation(String symbol) {
      this.symbol = symbol;
    }

    /** Returns the sign written in a rule. */
    public String symbol() {
      return symbol;
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

  /** How many of several things should be so. */
  enum Quantifier {
    /** Every one; so for nothing. */
    EVERY,
    /** At least one. */
    ANY
  }

  /** Returns a pure number. */
  static Expression number(double value) {
    return new Amount(value, Optional.empty());
  }

  /** Returns a number with a unit; {@code amount(48, Unit.HOUR)} is {@code 48 h}. */
  static Expression amount(double value, Unit unit) {
    return new Amount(value, Optional.of(unit));
  }

  /** Returns a percentage, which is a pure number; {@code percent(115)} is 1.15. */
  static Expression percent(double value) {
    return amount(value, Unit.PERCENT);
  }

  /** Returns a share of the reference maximum; {@code percentOfMax(60)} is {@code 60 % max}. */
  static Expression percentOfMax(double percent) {
    return new PercentOfMax(percent);
  }

  /** Returns a grade. */
  static Expression grade(Ability ability) {
    return new Grade(ability);
  }

  /** Returns a date. */
  static Expression date(LocalDate day) {
    return new Date(day);
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
    return new Has(this);
  }

  /** Returns whether this is less than another value. */
  default Expression lessThan(Expression other) {
    return new Compare(Relation.LESS, this, other);
  }

  /** Returns whether this is at most another value. */
  default Expression atMost(Expression other) {
    return new Compare(Relation.AT_MOST, this, other);
  }

  /** Returns whether this is more than another value. */
  default Expression moreThan(Expression other) {
    return new Compare(Relation.GREATER, this, other);
  }

  /** Returns whether this is at least another value. */
  default Expression atLeast(Expression other) {
    return new Compare(Relation.AT_LEAST, this, other);
  }

  /** Returns whether this equals another value. */
  default Expression equalTo(Expression other) {
    return new Compare(Relation.EQUAL, this, other);
  }

  /** Returns whether this differs from another value. */
  default Expression notEqualTo(Expression other) {
    return new Compare(Relation.NOT_EQUAL, this, other);
  }

  /** Returns whether this lies between two values, both ends counted in. */
  default Expression between(Expression low, Expression high) {
    return new Between(this, low, high);
  }

  /** Returns whether this word is one of some. */
  default Expression is(String... words) {
    return new Is(this, List.of(words));
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
    return new And(this, other);
  }

  /** Returns whether either is so. */
  default Expression or(Expression other) {
    return new Or(this, other);
  }

  /** Returns the opposite. */
  default Expression not() {
    return new Not(this);
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
    return new Quantify(Quantifier.EVERY, this, Optional.empty(), body);
  }

  /** Returns whether each of these things for which {@code where} holds is so. */
  default Expression everyWhere(Expression where, Expression body) {
    return new Quantify(Quantifier.EVERY, this, Optional.of(where), body);
  }

  /** Returns whether at least one of these things is so. */
  default Expression any(Expression body) {
    return new Quantify(Quantifier.ANY, this, Optional.empty(), body);
  }

  /** Returns whether at least one of these things for which {@code where} holds is so. */
  default Expression anyWhere(Expression where, Expression body) {
    return new Quantify(Quantifier.ANY, this, Optional.of(where), body);
  }
}
