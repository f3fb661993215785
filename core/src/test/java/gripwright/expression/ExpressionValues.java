package gripwright.expression;

import gripwright.rule.view.Readers;

/** Evaluates expressions about subjects of rules. */
public final class ExpressionValues {

  private ExpressionValues() {}

  /** Returns {@link ExpressionCompiler#NO} and so on. */
  public static int truth(Expression condition, Kind kind, Object thing) {
    return ExpressionCompiler.truth(condition, kind, new Evaluation(Readers.ALL)).of(thing);
  }

  /** Returns whether a missing value leaves a condition undecided. */
  public static boolean undecided(Expression condition, Kind kind, Object thing) {
    return truth(condition, kind, thing) == ExpressionCompiler.UNDECIDED;
  }

  /** Returns a number, level, grade or date; NaN where it is missing. */
  public static double number(Expression value, Kind kind, Object thing) {
    return ExpressionCompiler.number(value, kind, new Evaluation(Readers.ALL)).of(thing);
  }

  /** Returns the context of a rule's subject. */
  static EvaluationContext at(Kind kind, Object thing) {
    return EvaluationContext.at(kind, thing, Readers.ALL);
  }
}
