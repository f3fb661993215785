package gripwright.rule;

import static gripwright.rule.Expression.number;
import static gripwright.rule.Expression.subject;
import static gripwright.rule.Winter.HALF_CRIMP;
import static gripwright.rule.Winter.line;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** What is asked of something that is not there is neither yes nor no. */
class MissingValuesTest {

  private static final Expression WEEK = subject(Kind.WEEK);
  private static final Expression BEFORE = WEEK.get("previous");
  private static final Expression EXERCISE = subject(Kind.EXERCISE);

  private final PlanView plan =
      new PlanView(
          new Winter()
              .session(0, line(HALF_CRIMP, 85))
              .session(7, line(HALF_CRIMP, 50))
              .compiled());

  private int first(Expression condition) {
    return Compiler.truth(condition, Kind.WEEK).of(plan.weeks.get(0));
  }

  private int second(Expression condition) {
    return Compiler.truth(condition, Kind.WEEK).of(plan.weeks.get(1));
  }

  @Test
  void hasTellsNumbersTruthsAndThingsThatAreThere() {
    assertEquals(Compiler.NO, first(BEFORE.exists()));
    assertEquals(Compiler.YES, second(BEFORE.exists()));
    assertEquals(Compiler.NO, first(BEFORE.get("eased").exists()));
    assertEquals(Compiler.YES, second(BEFORE.get("eased").exists()));
    assertEquals(Compiler.NO, first(WEEK.get("recent-load").exists()));
    assertEquals(Compiler.YES, second(WEEK.get("recent-load").exists()));
  }

  @Test
  void aCollectionThatIsMissingLeavesItUndecided() {
    Expression exercises = BEFORE.get("exercises");
    assertEquals(Compiler.UNDECIDED, first(exercises.any(EXERCISE.get("hard"))));
    assertEquals(Compiler.YES, second(exercises.any(EXERCISE.get("hard"))));
    assertEquals(Compiler.UNDECIDED, first(exercises.every(EXERCISE.get("hard"))));
    assertEquals(Compiler.UNDECIDED, first(exercises.count().atLeast(number(0))));
    assertEquals(Compiler.YES, second(exercises.count().atLeast(number(1))));
    assertEquals(Compiler.NO, second(exercises.count().atLeast(number(2))));
  }

  @Test
  void aMinusSignTurnsANumberRound() {
    Compiler.Value value = Compiler.number(WEEK.get("number").negated(), Kind.WEEK);
    assertEquals(-2, value.of(plan.weeks.get(1)));
  }
}
