package gripwright.rule;

import static gripwright.rule.Expression.number;
import static gripwright.rule.Expression.subject;
import static gripwright.rule.Winter.BACK_TWO;
import static gripwright.rule.Winter.FRONT_TWO;
import static gripwright.rule.Winter.line;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The words that rules are written with, and what they refuse to be put together to. */
class RuleWordsTest {

  @Test
  void everyKindIsFoundByItsWord() {
    for (Kind kind : Kind.values()) {
      assertEquals(Optional.of(kind), Kind.parse(kind.word()));
    }
    assertEquals(Optional.empty(), Kind.parse("weeks"));
    assertEquals("a pair of sessions", Kind.PAIR.one());
    assertEquals("pairs of sessions", Kind.PAIR.many());
  }

  @Test
  void everyScopeIsFoundByItsWords() {
    for (Scope scope : Scope.values()) {
      assertEquals(Optional.of(scope), Scope.parse(scope.words()));
    }
    assertEquals("pair of sessions", Scope.PAIR_OF_SESSIONS.words());
    assertEquals("week", Scope.WEEK.words());
    assertEquals(Optional.empty(), Scope.parse("month"));
  }

  @Test
  void aVocabularyIsClosedWhereItHasAllItsWords() {
    assertEquals(true, Vocabulary.of("side", "left", "right").closed());
    assertEquals(false, Vocabulary.GRIPS.closed());
    assertEquals(true, Vocabulary.GRIPS.allows("anything"));
    assertEquals(false, Vocabulary.of("side", "left", "right").allows("both"));
  }

  private static String refusal(org.junit.jupiter.api.function.Executable building) {
    return assertThrows(IllegalArgumentException.class, building).getMessage();
  }

  @Test
  void collectionsAreGoneIntoOnlyWhereThereAreSeveralAndTheConditionIsAYesOrNo() {
    Expression plan = subject(Kind.PLAN);
    Expression exercises = plan.get("exercises");
    Expression hard = subject(Kind.EXERCISE).get("hard");
    Expression sets = subject(Kind.EXERCISE).get("sets");
    assertEquals("a date is not several things", refusal(() -> plan.get("from").every(hard)));
    assertEquals("a number is not a yes or no", refusal(() -> exercises.every(sets)));
    assertEquals("a number is not a yes or no", refusal(() -> exercises.everyWhere(sets, hard)));
    assertEquals("a number is not a yes or no", refusal(() -> exercises.countWhere(sets)));
    assertEquals("a yes or no has no sign", refusal(() -> hard.negated()));
    assertEquals(
        "a yes or no does not compare with a number", refusal(() -> hard.atMost(number(1))));
  }

  @Test
  void aSessionUsesTheFingersOfAllItsExercises() {
    PlanView plan =
        new PlanView(
            new Winter()
                .session(0, line(FRONT_TWO, 85), line(BACK_TWO, 85))
                .session(3, line(BACK_TWO, 85))
                .session(5, line(FRONT_TWO, 85))
                .compiled());
    for (int other : List.of(1, 2)) {
      PairView pair = new PairView(plan.sessions.get(0), plan.sessions.get(other));
      assertEquals(true, pair.sharedFingers());
      assertEquals(true, pair.sharedHardFingers());
    }
    assertEquals(false, new PairView(plan.sessions.get(1), plan.sessions.get(2)).sharedFingers());
  }
}
