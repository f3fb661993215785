package gripwright.rule.view;

import static gripwright.expression.Expression.amount;
import static gripwright.expression.Expression.percent;
import static gripwright.expression.Expression.subject;
import static gripwright.rule.Winter.BACK_TWO;
import static gripwright.rule.Winter.FRONT_TWO;
import static gripwright.rule.Winter.HALF_CRIMP;
import static gripwright.rule.Winter.line;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.expression.Condition;
import gripwright.expression.Expression;
import gripwright.expression.ExpressionValues;
import gripwright.expression.Kind;
import gripwright.expression.Scope;
import gripwright.hand.Finger;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.quantity.Unit;
import gripwright.rule.Rule;
import gripwright.rule.RuleSet;
import gripwright.rule.Winter;
import gripwright.schedule.PlannedExercise;
import gripwright.tissue.FingerLoad;
import gripwright.tissue.TissueLoad;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What rules see of single fingers. */
class FingerRulesTest {

  private static final Expression WEEK = subject(Kind.WEEK);
  private static final Expression FINGER = subject(Kind.FINGER);

  private static Rule rule(Expression require) {
    return Rule.warning("cap", Scope.WEEK).require(require).message("too much").build();
  }

  private static Rule time(double seconds) {
    return rule(
        WEEK.get("fingers")
            .every(FINGER.get("time-under-load").atMost(amount(seconds, Unit.SECOND))));
  }

  private static List<FingerView> fingers(Winter winter, int week) {
    return Views.of(winter).weeks.get(week - 1).fingers();
  }

  private static FingerView finger(Winter winter, int week, Side side, Finger finger) {
    return fingers(winter, week).stream()
        .filter(f -> f.work().side() == side && f.work().finger() == finger)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void limitOnTimeAppliesToEachFinger() {
    // 30 s on all fingers and 30 s on two: 60 s on the front two, 30 s on the others
    Winter winter = new Winter().rules("club");
    winter.session(0, line(HALF_CRIMP, 50), line(FRONT_TWO, 50));
    assertEquals(List.of(), winter.codes(RuleSet.of("club", time(60))));
    assertEquals(List.of("warning rule.cap"), winter.codes(RuleSet.of("club", time(59))));
    Expression ring =
        new Condition.Quantify(
            Condition.Quantifier.EVERY,
            WEEK.get("fingers"),
            Optional.of(FINGER.get("name").is("ring")),
            FINGER.get("time-under-load").atMost(amount(30, Unit.SECOND)));
    assertEquals(List.of(), winter.codes(RuleSet.of("club", rule(ring))));
  }

  @Test
  void eachHandIsCalculatedSeparately() {
    Winter winter = new Winter();
    winter.session(
        0, line(HALF_CRIMP, 40).hands(Hands.LEFT), line(BACK_TWO, 40).hands(Hands.RIGHT));
    assertEquals(
        List.of(
            "left index", "left middle", "left ring", "left little", "right ring", "right little"),
        fingers(winter, 1).stream().map(f -> f.work().side() + " " + f.work().finger()).toList());
  }

  @Test
  void loadOnBothHandsIsHalvedForEachHand() {
    Winter both = new Winter().session(0, line(HALF_CRIMP, 80));
    Winter one = new Winter().session(0, line(HALF_CRIMP, 40).hands(Hands.LEFT));
    FingerView ofBoth = finger(both, 1, Side.LEFT, Finger.RING);
    assertEquals(ofBoth, finger(one, 1, Side.LEFT, Finger.RING));
    assertEquals(
        ofBoth.work().a2Exposure(), finger(both, 1, Side.RIGHT, Finger.RING).work().a2Exposure());
  }

  @Test
  void exposureIsForceOfTheTissueModelTimesTime() {
    Winter winter = new Winter().session(0, line(HALF_CRIMP, 80));
    PlannedExercise exercise = winter.compiled().sessions().get(0).exercises().get(0);
    double newtons = Unit.NEWTONS_PER_KILOGRAM * 80 / 2;
    for (FingerLoad load : TissueLoad.of(exercise.fits().get(Side.LEFT), newtons).fingers()) {
      FingerView finger = finger(winter, 1, Side.LEFT, load.finger());
      assertEquals(30, finger.work().timeUnderLoadSeconds());
      assertEquals(30 * load.fingertip().value(), finger.work().impulse(), 1e-6);
      assertEquals(30 * load.a2().value(), finger.work().a2Exposure(), 1e-6);
      assertEquals(30 * load.a4().value(), finger.work().a4Exposure(), 1e-6);
    }
    assertTrue(finger(winter, 1, Side.LEFT, Finger.RING).work().a2Exposure() > 0);
  }

  @Test
  void recentIsTheHighestOfTheLastThreeUneasedWeeksWithTheFinger() {
    Winter winter = new Winter().eased(3);
    winter.session(0, line(HALF_CRIMP, 50).sets(4));
    winter.session(7, line(FRONT_TWO, 50).sets(2));
    winter.session(14, line(HALF_CRIMP, 50).sets(9));
    winter.session(21, line(HALF_CRIMP, 50).sets(3));
    Expression recent = FINGER.get("recent-time-under-load");
    assertEquals(
        Double.NaN,
        ExpressionValues.number(recent, Kind.FINGER, finger(winter, 1, Side.LEFT, Finger.RING)));
    assertEquals(
        40,
        ExpressionValues.number(recent, Kind.FINGER, finger(winter, 2, Side.LEFT, Finger.INDEX)));
    assertEquals(
        40,
        ExpressionValues.number(recent, Kind.FINGER, finger(winter, 4, Side.LEFT, Finger.RING)),
        "the eased one is out");
    assertEquals(
        40,
        ExpressionValues.number(recent, Kind.FINGER, finger(winter, 4, Side.LEFT, Finger.INDEX)));
    winter.session(28, line(HALF_CRIMP, 50));
    assertEquals(
        Double.NaN,
        ExpressionValues.number(recent, Kind.FINGER, finger(winter, 5, Side.LEFT, Finger.RING)),
        "another block");
  }

  @Test
  void aRiseOfExposureIsFoundFromTheWeekAfterTheFirstUse() {
    Rule rise =
        rule(
            new Condition.Quantify(
                Condition.Quantifier.EVERY,
                WEEK.get("fingers"),
                Optional.of(FINGER.get("name").is("ring")),
                FINGER
                    .get("a2-exposure")
                    .atMost(percent(110).times(FINGER.get("recent-a2-exposure")))));
    RuleSet club = RuleSet.of("club", rise);
    Winter winter = new Winter().rules("club").weeklyRise(0.15);
    winter.session(0, line(FRONT_TWO, 50)).session(7, line(HALF_CRIMP, 50));
    assertEquals(List.of(), winter.codes(club), "nothing to compare a first use with");
    winter.session(14, line(HALF_CRIMP, 55));
    assertEquals(List.of(), winter.codes(club), "10 % more");
    winter.session(21, line(HALF_CRIMP, 61));
    assertEquals(List.of("warning rule.cap"), winter.codes(club), "11 % more");
  }

  @Test
  void sumsOfPartsEqualTheWhole() {
    Winter winter = new Winter();
    winter.session(0, line(HALF_CRIMP, 50), line(FRONT_TWO, 60)).session(3, line(BACK_TWO, 30));
    winter.session(30, line(HALF_CRIMP, 50));
    PlanView plan = Views.of(winter);
    List<List<FingerView>> levels = new ArrayList<>();
    levels.add(plan.fingers());
    levels.add(
        FingerView.of(FingerView.together(plan.blocks.stream().map(b -> b.fingers()).toList())));
    levels.add(
        FingerView.of(FingerView.together(plan.days.stream().map(d -> d.fingers()).toList())));
    levels.add(
        FingerView.of(
            FingerView.together(plan.exercises.stream().map(e -> e.fingersAtWork()).toList())));
    for (List<FingerView> level : levels) {
      assertEquals(8, level.size());
      for (int i = 0; i < 8; i++) {
        assertEquals(
            levels.get(0).get(i).work().a4Exposure(), level.get(i).work().a4Exposure(), 1e-6);
      }
    }
  }
}
