package gripwright.rule;

import static gripwright.expression.Expression.number;
import static gripwright.expression.Expression.subject;
import static gripwright.rule.Winter.BACK_TWO;
import static gripwright.rule.Winter.FRONT_TWO;
import static gripwright.rule.Winter.line;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gripwright.expression.Condition;
import gripwright.expression.Expression;
import gripwright.expression.ExpressionValues;
import gripwright.expression.Kind;
import gripwright.expression.Scope;
import gripwright.expression.Vocabulary;
import gripwright.rule.view.PlanView;
import gripwright.rule.view.Views;
import gripwright.wording.Wording;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The words of rules, and combinations that are refused. */
class RuleWordsTest {

  @Test
  void everyKindIsFoundByItsWord() {
    for (Kind kind : Kind.values()) {
      assertEquals(Optional.of(kind), Kind.parse(kind.word()));
    }
    assertEquals(Optional.empty(), Kind.parse("weeks"));
    assertEquals("a pair of sessions", Wording.english().say(Kind.PAIR.one()));
    assertEquals("pairs of sessions", Wording.english().say(Kind.PAIR.many()));
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
  void onlyCollectionsCanBeQuantifiedAndOnlyWithConditions() {
    Expression plan = subject(Kind.PLAN);
    Expression exercises = plan.get("exercises");
    Expression hard = subject(Kind.EXERCISE).get("hard");
    Expression sets = subject(Kind.EXERCISE).get("sets");
    assertEquals("date is not several things", refusal(() -> plan.get("from").every(hard)));
    assertEquals("number is not a yes or no", refusal(() -> exercises.every(sets)));
    assertEquals("number is not a yes or no", refusal(() -> exercises.everyWhere(sets, hard)));
    assertEquals("number is not a yes or no", refusal(() -> exercises.countWhere(sets)));
    assertEquals("truth has no sign", refusal(() -> hard.negated()));
    assertEquals("truth does not compare with number", refusal(() -> hard.atMost(number(1))));
  }

  @Test
  void onlyConditionsCanBeJoinedAndOnlyEqualTypesCompared() {
    Expression hard = subject(Kind.EXERCISE).get("hard");
    Expression sets = subject(Kind.EXERCISE).get("sets");
    Expression edge = subject(Kind.EXERCISE).get("edge");
    String noTruth = "number is not a yes or no";
    assertEquals(noTruth, refusal(() -> hard.and(sets)));
    assertEquals(noTruth, refusal(() -> sets.and(hard)));
    assertEquals(noTruth, refusal(() -> hard.or(sets)));
    assertEquals(noTruth, refusal(() -> sets.or(hard)));
    assertEquals(noTruth, refusal(() -> sets.not()));
    assertEquals("number does not compare with length", refusal(() -> sets.between(edge, sets)));
    assertEquals("number does not compare with length", refusal(() -> sets.between(sets, edge)));
    assertEquals("number + length", refusal(() -> sets.plus(edge)));
    assertEquals("number - length", refusal(() -> sets.minus(edge)));
  }

  @Test
  void theConditionOfARuleIsAboutItsScope() {
    assertEquals(
        "no exercise at depth 0",
        refusal(
            () ->
                Rule.error("wrong", Scope.WEEK)
                    .when(subject(Kind.EXERCISE).get("hard"))
                    .require(new Condition.Truth(true))
                    .message("none")
                    .build()));
  }

  @Test
  void theLargestNeedNotBeTheLast() {
    PlanView plan =
        Views.of(
            new Winter().session(0, line(FRONT_TWO, 50), line(BACK_TWO, 80), line(BACK_TWO, 60)));
    Expression exercises = subject(Kind.PLAN).get("exercises");
    Expression load = subject(Kind.EXERCISE).get("total-load");
    assertEquals(
        80,
        ExpressionValues.number(
            exercises.summarize(Expression.Summary.LARGEST, load), Kind.PLAN, plan));
    assertEquals(
        50,
        ExpressionValues.number(
            exercises.summarize(Expression.Summary.SMALLEST, load), Kind.PLAN, plan));
  }
}
