package gripwright.language.syntax;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A value that is written out or worked out. */
public sealed interface Expr extends Syntax
    permits Amount,
        DateText,
        Text,
        Expr.PercentOfMax,
        Expr.PercentOf,
        Expr.ReserveLevel,
        Expr.EffortLevel,
        Expr.GradeLiteral,
        Expr.PathExpr,
        Expr.Has,
        Expr.Binary,
        Expr.Not,
        Expr.Negate,
        Expr.Is,
        Expr.In,
        Expr.BetweenExpr,
        Expr.Aggregate,
        Expr.Quantifier {

  /** Answers with what a visitor has for this kind. */
  <R> R accept(Visitor<R> visitor);

  /**
   * One answer for each kind of value.
   *
   * @param <R> what is answered
   */
  interface Visitor<R> {
    /** Answers for a number. */
    R amount(Amount value);

    /** Answers for a day. */
    R dateText(DateText value);

    /** Answers for a text. */
    R text(Text value);

    /** Answers for a share of the maximum. */
    R percentOfMax(PercentOfMax value);

    /** Answers for a share of a value. */
    R percentOf(PercentOf value);

    /** Answers for a reserve of time. */
    R reserveLevel(ReserveLevel value);

    /** Answers for an effort. */
    R effortLevel(EffortLevel value);

    /** Answers for a grade. */
    R gradeLiteral(GradeLiteral value);

    /** Answers for a property or a name. */
    R pathExpr(PathExpr value);

    /** Answers for whether there is a thing. */
    R has(Has value);

    /** Answers for two values and what is done with them. */
    R binary(Binary value);

    /** Answers for the opposite. */
    R not(Not value);

    /** Answers for a sign. */
    R negate(Negate value);

    /** Answers for whether a word is one. */
    R is(Is value);

    /** Answers for whether a word is one of some. */
    R in(In value);

    /** Answers for whether a value lies between two. */
    R betweenExpr(BetweenExpr value);

    /** Answers for one value made of several. */
    R aggregate(Aggregate value);

    /** Answers for whether every one or any is so. */
    R quantifier(Quantifier value);
  }

  /** What stands between two values. */
  enum Operator {
    /** Either is so. */
    OR("or"),
    /** Both are so. */
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
    /** Less by. */
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
  record PercentOf(int id, double percent, Expr of) implements Expr {
    @Override
    public <R> R accept(Visitor<R> visitor) {
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

  /** {@code has previous}: whether there is such a thing. */
  record Has(int id, Word name) implements Expr {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.has(this);
    }
  }

  /** Two values and what is done with them; chains lean to the left. */
  record Binary(int id, Operator operator, Expr left, Expr right) implements Expr {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.binary(this);
    }
  }

  /** {@code not ...}. */
  record Not(int id, Expr operand) implements Expr {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.not(this);
    }
  }

  /** {@code - ...} before anything but a number. */
  record Negate(int id, Expr operand) implements Expr {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.negate(this);
    }
  }

  /** {@code intensity is high}, {@code is not}. */
  record Is(int id, Expr subject, boolean negated, Word word) implements Expr {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.is(this);
    }
  }

  /** {@code grip in half-crimp, open-four}, {@code not in}. */
  record In(int id, Expr subject, boolean negated, List<Expr> options) implements Expr {
    /** Copies the lists. */
    public In {
      options = List.copyOf(options);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.in(this);
    }
  }

  /** {@code gap between 24 h and 48 h}, both ends counted in. */
  record BetweenExpr(int id, Expr subject, Expr low, Expr high) implements Expr {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.betweenExpr(this);
    }
  }

  /**
   * {@code sum(E of C where B)}, {@code mean}, {@code largest}, {@code smallest}; {@code count} has
   * no value.
   */
  record Aggregate(
      int id, Word function, @Nullable Expr value, PathExpr collection, @Nullable Expr where)
      implements Expr {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.aggregate(this);
    }
  }

  /** {@code every(C where B: E)} or {@code any}. */
  record Quantifier(
      int id, Word function, PathExpr collection, @Nullable Expr where, @Nullable Expr body)
      implements Expr {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.quantifier(this);
    }
  }
}
