package gripwright.expression;

import static gripwright.expression.Expression.number;
import static gripwright.expression.Expression.subject;
import static gripwright.rule.Winter.HALF_CRIMP;
import static gripwright.rule.Winter.line;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.rule.Winter;
import gripwright.rule.view.PlanView;
import gripwright.rule.view.Views;
import org.junit.jupiter.api.Test;

/** A condition on a missing value is neither true nor false. */
class MissingValuesTest {

  private static final Expression WEEK = subject(Kind.WEEK);
  private static final Expression BEFORE = WEEK.get("previous");
  private static final Expression EXERCISE = subject(Kind.EXERCISE);

  private final PlanView plan =
      Views.of(new Winter().session(0, line(HALF_CRIMP, 85)).session(7, line(HALF_CRIMP, 50)));

  private int first(Expression condition) {
    return ExpressionValues.truth(condition, Kind.WEEK, Views.week(plan, 1));
  }

  private int second(Expression condition) {
    return ExpressionValues.truth(condition, Kind.WEEK, Views.week(plan, 2));
  }

  @Test
  void hasIsTrueForExistingValues() {
    assertEquals(ExpressionCompiler.NO, first(BEFORE.exists()));
    assertEquals(ExpressionCompiler.YES, second(BEFORE.exists()));
    assertEquals(ExpressionCompiler.NO, first(BEFORE.get("eased").exists()));
    assertEquals(ExpressionCompiler.YES, second(BEFORE.get("eased").exists()));
    assertEquals(ExpressionCompiler.NO, first(WEEK.get("recent-load").exists()));
    assertEquals(ExpressionCompiler.YES, second(WEEK.get("recent-load").exists()));
  }

  @Test
  void aMissingCollectionLeavesAConditionUndecided() {
    Expression exercises = BEFORE.get("exercises");
    assertEquals(ExpressionCompiler.UNDECIDED, first(exercises.any(EXERCISE.get("hard"))));
    assertEquals(ExpressionCompiler.YES, second(exercises.any(EXERCISE.get("hard"))));
    assertEquals(ExpressionCompiler.UNDECIDED, first(exercises.every(EXERCISE.get("hard"))));
    assertEquals(ExpressionCompiler.UNDECIDED, first(exercises.count().atLeast(number(0))));
    assertEquals(ExpressionCompiler.YES, second(exercises.count().atLeast(number(1))));
    assertEquals(ExpressionCompiler.NO, second(exercises.count().atLeast(number(2))));
  }

  @Test
  void aMinusSignNegatesANumber() {
    Expression negated = WEEK.get("number").negated();
    assertEquals(-2, ExpressionValues.number(negated, Kind.WEEK, Views.week(plan, 2)));
  }
}
