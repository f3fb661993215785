package gripwright.language.syntax;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A literal, a name or a calculation. */
public sealed interface Expr extends Syntax
    permits Amount,
        DateText,
        Text,
        Expr.PercentOfMax,
        Expr.ReserveLevel,
        Expr.EffortLevel,
        Expr.GradeLiteral,
        Expr.PathExpr,
        Expr.Calculation {

  /** Returns what the visitor returns for this kind. */
  <R> R accept(Visitor<R> visitor);

  /**
   * One method for each kind of value.
   *
   * @param <R> the type of result
   */
  interface Visitor<R> {
    /** Visits a number. */
    R amount(Amount value);

    /** Visits a day. */
    R dateText(DateText value);

    /** Visits a text. */
    R text(Text value);

    /** Visits a share of the maximum. */
    R percentOfMax(PercentOfMax value);

    /** Visits a reserve of time. */
    R reserveLevel(ReserveLevel value);

    /** Visits an effort. */
    R effortLevel(EffortLevel value);

    /** Visits a grade. */
    R gradeLiteral(GradeLiteral value);

    /** Visits a property or a name. */
    R pathExpr(PathExpr value);

    /** Visits a calculation. */
    R calculation(Calculation value);
  }

  /** A calculated value, or a condition. */
  sealed interface Calculation extends Expr {

    /** Returns what the visitor returns for this kind. */
    <R> R accept(Calculation.Visitor<R> visitor);

    @Override
    default <R> R accept(Expr.Visitor<R> visitor) {
      return visitor.calculation(this);
    }

    /**
     * One method for each kind of calculation.
     *
     * @param <R> the type of result
     */
    interface Visitor<R> {
      /** Visits a share of a value. */
      R percentOf(PercentOf value);

      /** Visits a {@code has} test. */
      R has(Has value);

      /** Visits two values and their operator. */
      R binary(Binary value);

      /** Visits a {@code not}. */
      R not(Not value);

      /** Visits a minus sign. */
      R negate(Negate value);

      /** Visits an {@code is} test. */
      R is(Is value);

      /** Visits an {@code in} test. */
      R in(In value);

      /** Visits a {@code between} test. */
      R betweenExpr(BetweenExpr value);

      /** Visits a summary of a collection. */
      R aggregate(Aggregate value);

      /** Visits a quantifier. */
      R quantifier(Quantifier value);
    }
  }

  /** An operator between two values. */
  enum Operator {
    /** At least one side is true. */
    OR("or"),
    /** Both sides are true. */
    AND("and"),
    /** Less than. */
    LESS("<"),
    /** At most. */
    AT_MOST("<="),
    /** More than. */
    GREATER(">"),
    /** At least. */
    AT_LEAST(">="),
    /** Equal to. */
    EQUAL("="),
    /** Not equal to. */
    NOT_EQUAL("!="),
    /** Added to. */
    PLUS("+"),
    /** Reduced by. */
    MINUS("-"),
    /** Multiplied by. */
    TIMES("*"),
    /** Divided by. */
    DIVIDE("/");

    private final String symbol;

    Operator(String symbol) {
      this.symbol = symbol;
    }

    /** Returns the word or sign written in a file. */
    public String symbol() {
      return symbol;
    }
  }

  /** {@code 88 % max}, of the athlete's reference maximum. */
  record PercentOfMax(int id, double percent) implements Expr {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.percentOfMax(this);
    }
  }

  /** {@code 115 % of previous.load}. */
  record PercentOf(int id, double percent, Expr of) implements Calculation {
    @Override
    public <R> R accept(Calculation.Visitor<R> visitor) {
      return visitor.percentOf(this);
    }
  }

  /** {@code reserve 3 s}: the load that could be held that much longer. */
  record ReserveLevel(int id, Amount time) implements Expr {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.reserveLevel(this);
    }
  }

  /** {@code effort 8}, of 10. */
  record EffortLevel(int id, Amount effort) implements Expr {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.effortLevel(this);
    }
  }

  /** {@code french 7c+}: a grade on a scale. */
  record GradeLiteral(int id, Word scale, Word grade) implements Expr {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.gradeLiteral(this);
    }
  }

  /** {@code athlete.trained}: a property, or a parameter's name. */
  record PathExpr(int id, List<Word> words) implements Expr {
    /** Copies the lists. */
    public PathExpr {
      words = List.copyOf(words);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.pathExpr(this);
    }
  }

  /** {@code has previous}: whether it exists. */
  record Has(int id, Word name) implements Calculation {
    @Override
    public <R> R accept(Calculation.Visitor<R> visitor) {
      return visitor.has(this);
    }
  }

  /** Two values and their operator; chains are left-associative. */
  record Binary(int id, Operator operator, Expr left, Expr right) implements Calculation {
    @Override
    public <R> R accept(Calculation.Visitor<R> visitor) {
      return visitor.binary(this);
    }
  }

  /** {@code not ...}. */
  record Not(int id, Expr operand) implements Calculation {
    @Override
    public <R> R accept(Calculation.Visitor<R> visitor) {
      return visitor.not(this);
    }
  }

  /** {@code - ...} before anything but a number. */
  record Negate(int id, Expr operand) implements Calculation {
    @Override
    public <R> R accept(Calculation.Visitor<R> visitor) {
      return visitor.negate(this);
    }
  }

  /** {@code intensity is high}, {@code is not}. */
  record Is(int id, Expr subject, boolean negated, Word word) implements Calculation {
    @Override
    public <R> R accept(Calculation.Visitor<R> visitor) {
      return visitor.is(this);
    }
  }

  /** {@code grip in half-crimp, open-four}, {@code not in}. */
  record In(int id, Expr subject, boolean negated, List<Expr> options) implements Calculation {
    /** Copies the lists. */
    public In {
      options = List.copyOf(options);
    }

    @Override
    public <R> R accept(Calculation.Visitor<R> visitor) {
      return visitor.in(this);
    }
  }

  /** {@code gap between 24 h and 48 h}, both ends counted in. */
  record BetweenExpr(int id, Expr subject, Expr low, Expr high) implements Calculation {
    @Override
    public <R> R accept(Calculation.Visitor<R> visitor) {
      return visitor.betweenExpr(this);
    }
  }

  /**
   * {@code sum(E of C where B)}, {@code mean}, {@code largest}, {@code smallest}; {@code count} has
   * no value.
   */
  record Aggregate(
      int id, Word function, @Nullable Expr value, PathExpr collection, @Nullable Expr where)
      implements Calculation {
    @Override
    public <R> R accept(Calculation.Visitor<R> visitor) {
      return visitor.aggregate(this);
    }
  }

  /** {@code every(C where B: E)} or {@code any}. */
  record Quantifier(
      int id, Word function, PathExpr collection, @Nullable Expr where, @Nullable Expr body)
      implements Calculation {
    @Override
    public <R> R accept(Calculation.Visitor<R> visitor) {
      return visitor.quantifier(this);
    }
  }
}
