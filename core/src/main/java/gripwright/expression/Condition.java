package gripwright.expression;

import java.util.List;
import java.util.Optional;

/** An expression that is true or false. A property can be one too, by its {@link #type()}. */
public sealed interface Condition extends Expression {

  @Override
  default Type type() {
    return Type.Plain.TRUTH;
  }

  /**
   * A truth value.
   *
   * @param value the value
   */
  record Truth(boolean value) implements Condition {
    @Override
    public <R> R accept(ExpressionVisitor<R> visitor) {
      return visitor.truth(this);
    }
  }

  /**
   * A test whether something exists.
   *
   * @param value a thing or a value
   */
  record Has(Expression value) implements Condition {
    @Override
    public <R> R accept(ExpressionVisitor<R> visitor) {
      return visitor.has(this);
    }
  }

  /**
   * A comparison.
   *
   * @param relation the required relation
   * @param left one value
   * @param right the other, of the same type
   */
  record Compare(Relation relation, Expression left, Expression right) implements Condition {
    /**
     * Checks the types.
     *
     * @throws IllegalArgumentException if the two do not compare
     */
    public Compare {
      Checks.comparable(left, right);
    }

    @Override
    public <R> R accept(ExpressionVisitor<R> visitor) {
      return visitor.compare(this);
    }
  }

  /**
   * A test whether a value is between two others, both ends included.
   *
   * @param value the value
   * @param low lower end, of the same type
   * @param high upper end, of the same type
   */
  record Between(Expression value, Expression low, Expression high) implements Condition {
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
    public <R> R accept(ExpressionVisitor<R> visitor) {
      return visitor.between(this);
    }
  }

  /**
   * A test whether a word is one of several.
   *
   * @param value the word
   * @param words one or more, each in the vocabulary of the value
   */
  record Is(Expression value, List<String> words) implements Condition {
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
    public <R> R accept(ExpressionVisitor<R> visitor) {
      return visitor.is(this);
    }
  }

  /**
   * A conjunction: both are true.
   *
   * @param left one
   * @param right the other
   */
  record And(Expression left, Expression right) implements Condition {
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
    public <R> R accept(ExpressionVisitor<R> visitor) {
      return visitor.and(this);
    }
  }

  /**
   * A disjunction: at least one is true.
   *
   * @param left one
   * @param right the other
   */
  record Or(Expression left, Expression right) implements Condition {
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
    public <R> R accept(ExpressionVisitor<R> visitor) {
      return visitor.or(this);
    }
  }

  /**
   * A negation.
   *
   * @param operand the negated condition
   */
  record Not(Expression operand) implements Condition {
    /**
     * Checks the type.
     *
     * @throws IllegalArgumentException if the operand is not a truth
     */
    public Not {
      Checks.truth(operand);
    }

    @Override
    public <R> R accept(ExpressionVisitor<R> visitor) {
      return visitor.not(this);
    }
  }

  /**
   * A test whether a condition is true for every or any element. Inside {@code body} and {@code
   * where} the innermost {@link Subject} is the element.
   *
   * @param quantifier every or any
   * @param collection the things
   * @param where the condition on elements that are considered; empty means all
   * @param body the condition on each
   */
  record Quantify(
      Quantifier quantifier, Expression collection, Optional<Expression> where, Expression body)
      implements Condition {
    /**
     * Checks the types.
     *
     * @throws IllegalArgumentException if it is not a collection or a condition is not a truth
     */
    public Quantify {
      Checks.many(collection);
      where.ifPresent(Checks::truth);
      Checks.truth(body);
    }

    @Override
    public <R> R accept(ExpressionVisitor<R> visitor) {
      return visitor.quantify(this);
    }
  }

  /** The relation of two values. */
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

  /** For how many elements a condition must be true. */
  enum Quantifier {
    /** Every one; true if there are none. */
    EVERY,
    /** At least one. */
    ANY
  }
}
