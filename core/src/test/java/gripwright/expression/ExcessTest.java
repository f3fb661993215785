package gripwright.expression;

import static gripwright.expression.Expression.amount;
import static gripwright.expression.Expression.number;
import static gripwright.expression.Expression.percentOfMax;
import static gripwright.expression.Expression.subject;
import static gripwright.rule.Winter.FRONT_TWO;
import static gripwright.rule.Winter.HALF_CRIMP;
import static gripwright.rule.Winter.line;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.quantity.Unit;
import gripwright.rule.Winter;
import gripwright.rule.view.PlanView;
import gripwright.rule.view.Views;
import gripwright.rule.view.WeekView;
import org.junit.jupiter.api.Test;

/** The share of its limit by which a requirement is violated. */
class ExcessTest {

  private static final Expression WEEK = subject(Kind.WEEK);
  private static final Expression EXERCISE = subject(Kind.EXERCISE);

  /** 60 s in two exercises, at 50 and at 80 % of the maximum on 20 and on 15 mm. */
  private static double excess(Expression require) {
    PlanView plan =
        Views.of(new Winter().session(0, line(HALF_CRIMP, 50), line(FRONT_TWO, 80).edge(15)));
    WeekView week = Views.week(plan, 1);
    double alone = Excess.at(require, ExpressionValues.at(Kind.WEEK, week));
    assertEquals(alone, Excess.of(require, Kind.WEEK, plan.evaluation).of(week), 1e-12);
    return alone;
  }

  private static final Expression TIME = WEEK.get("time-under-load");

  private static Expression seconds(double limit) {
    return TIME.atMost(amount(limit, Unit.SECOND));
  }

  @Test
  void itIsAShareOfTheLimitOnEitherSide() {
    assertEquals(0.2, excess(seconds(50)), 1e-12);
    assertEquals(0.25, excess(TIME.atLeast(amount(80, Unit.SECOND))), 1e-12);
    assertEquals(0, excess(TIME.lessThan(amount(60, Unit.SECOND))), 1e-12, "by nothing");
    assertEquals(Double.POSITIVE_INFINITY, excess(seconds(0)));
  }

  @Test
  void betweenMissesTheNearerLimit() {
    assertEquals(
        0.5, excess(TIME.between(amount(20, Unit.SECOND), amount(40, Unit.SECOND))), 1e-12);
    assertEquals(
        0.25, excess(TIME.between(amount(80, Unit.SECOND), amount(90, Unit.SECOND))), 1e-12);
  }

  @Test
  void ofTwoRequirementsTheLargestViolationCounts() {
    assertEquals(0.2, excess(seconds(50).and(seconds(100))), 1e-12, "the other holds");
    assertEquals(0.2, excess(seconds(100).and(seconds(50))), 1e-12);
    assertEquals(0.5, excess(seconds(50).and(seconds(40))), 1e-12);
    assertEquals(0.5, excess(seconds(50).or(seconds(40))), 1e-12);
    assertEquals(0.5, excess(seconds(40).or(seconds(50))), 1e-12);
  }

  @Test
  void ofAllIncludedElementsTheWorstCounts() {
    Expression level = EXERCISE.get("level").atMost(percentOfMax(40));
    assertEquals(1, excess(WEEK.get("exercises").every(level)), 1e-12);
    assertEquals(
        0.25,
        excess(
            WEEK.get("exercises")
                .everyWhere(EXERCISE.get("edge").moreThan(amount(15, Unit.MILLIMETRE)), level)),
        1e-12);
    Expression some = EXERCISE.get("level").atMost(percentOfMax(60));
    assertEquals(1.0 / 3, excess(WEEK.get("exercises").every(some)), 1e-12);
    assertEquals(
        0, excess(WEEK.get("exercises").every(EXERCISE.get("sets").atMost(number(3)))), 1e-12);
  }

  @Test
  void missingValuesAndNonNumbersHaveNoExcess() {
    assertEquals(0, excess(TIME.atMost(WEEK.get("previous").get("time-under-load"))));
    assertEquals(
        0,
        excess(
            WEEK.get("previous").get("exercises").every(EXERCISE.get("sets").atMost(number(1)))));
    assertEquals(0, excess(WEEK.get("eased")));
    assertEquals(0, excess(WEEK.get("exercises").any(EXERCISE.get("hard").not())));
  }
}
