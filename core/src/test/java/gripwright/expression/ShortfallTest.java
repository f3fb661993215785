package gripwright.expression;

import static gripwright.expression.Expression.amount;
import static gripwright.expression.Expression.number;
import static gripwright.expression.Expression.percent;
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
import gripwright.wording.Words;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The actual value and the limit, in words. */
class ShortfallTest {

  private static final Expression WEEK = subject(Kind.WEEK);
  private static final Expression EXERCISE = subject(Kind.EXERCISE);
  private static final Expression FINGER = subject(Kind.FINGER);
  private static final Expression PLAN = subject(Kind.PLAN);

  private static PlanView plan() {
    Winter winter = new Winter();
    winter.session(0, line(HALF_CRIMP, 50), line(FRONT_TWO, 70.04).bodyMass(65));
    winter.session(7, line(HALF_CRIMP, 60).sets(5), line(FRONT_TWO, 79));
    return Views.of(winter);
  }

  private static List<String> week(int number, Expression require) {
    return words(ExpressionValues.at(Kind.WEEK, Views.week(plan(), number)).shortfalls(require));
  }

  private static List<String> exercise(int number, Expression require) {
    return words(
        ExpressionValues.at(Kind.EXERCISE, Views.exercise(plan(), number)).shortfalls(require));
  }

  private static List<String> words(List<Shortfall> missing) {
    return missing.stream()
        .map(
            s ->
                s.of().map(Words::say).orElse("")
                    + "|"
                    + s.what()
                    + "|"
                    + Words.say(s.was())
                    + "|"
                    + s.bound().word()
                    + "|"
                    + Words.say(s.limit()))
        .toList();
  }

  @Test
  void numbersAreReportedInTheUnitOfTheRule() {
    assertEquals(
        List.of("|time-under-load|1 min|at-most|0.5 min"),
        week(1, WEEK.get("time-under-load").atMost(amount(0.5, Unit.MINUTE))));
    assertEquals(
        List.of("|time-under-load|60 s|at-least|61 s"),
        week(1, WEEK.get("time-under-load").atLeast(amount(61, Unit.SECOND))));
    assertEquals(
        List.of("|added-load|5.04 kg|at-most|5 kg"),
        exercise(2, EXERCISE.get("added-load").atMost(amount(5, Unit.KILOGRAM))));
    assertEquals(
        List.of("|date|2027-01-04|other-than|2027-01-04"),
        exercise(
            1,
            new Condition.Compare(
                Condition.Relation.NOT_EQUAL, EXERCISE.get("date"), EXERCISE.get("date"))));
  }

  @Test
  void twoNumbersThatDifferAreWrittenDifferently() {
    assertEquals(
        List.of("|level|70.04 % max|at-most|70 % max"),
        exercise(2, EXERCISE.get("level").atMost(percentOfMax(70))));
    assertEquals(
        List.of("|level|50 % max|within|60 % max to 70 % max"),
        exercise(
            1, new Condition.Between(EXERCISE.get("level"), percentOfMax(60), percentOfMax(70))));
  }

  @Test
  void aLimitThatIsAShareIsReportedAsAShare() {
    // 1500 + 2101.2 kg s, then 3000 + 2370 kg s
    Expression rise = WEEK.get("load").atMost(percent(110).times(WEEK.get("recent-load")));
    assertEquals(List.of("|load|49.1 % above recent-load|at-most|10 %"), week(2, rise));
    Expression before = WEEK.get("previous").get("load");
    assertEquals(
        List.of("|load|149.1 % of previous.load|at-least|200 %"),
        week(2, WEEK.get("load").atLeast(before.times(number(2)))));
    assertEquals(
        List.of("|load|149.1 % of previous.load|at-most|90 %"),
        week(2, WEEK.get("load").atMost(percent(90).times(before))));
  }

  @Test
  void ofSeveralTheLargestViolationIsReported() {
    Expression second = amount(1, Unit.SECOND);
    assertEquals(
        List.of("left index finger|time-under-load|80 s|at-most|1 s"),
        week(2, WEEK.get("fingers").every(FINGER.get("time-under-load").atMost(second))));
    assertEquals(
        List.of("left ring finger|time-under-load|50 s|at-most|1 s"),
        week(
            2,
            new Condition.Quantify(
                Condition.Quantifier.EVERY,
                WEEK.get("fingers"),
                Optional.of(FINGER.get("name").is("ring")),
                FINGER.get("time-under-load").atMost(second))));
    assertEquals(
        List.of("first-two|level|79 % max|under|55 % max"),
        week(
            2,
            WEEK.get("exercises")
                .every(
                    new Condition.Compare(
                        Condition.Relation.LESS, EXERCISE.get("level"), percentOfMax(55)))));
  }

  @Test
  void aComparisonWithoutNumbersIsReportedWithoutThem() {
    assertEquals(List.of(), exercise(1, EXERCISE.get("hard")));
    assertEquals(
        List.of(), week(1, WEEK.get("exercises").any(EXERCISE.get("grip").get("name").is("none"))));
  }

  private static List<String> plan(Expression require) {
    return words(ExpressionValues.at(Kind.PLAN, plan()).shortfalls(require));
  }

  @Test
  void withoutAUnitInTheRuleTheUsualOneIsWritten() {
    assertEquals(List.of("|edge|20 mm|over|20 mm"), exercise(1, more("edge")));
    assertEquals(List.of("|total-load|70.04 kg|over|70.04 kg"), exercise(2, more("total-load")));
    assertEquals(List.of("|hold|10 s|over|10 s"), exercise(1, more("hold")));
    assertEquals(List.of("|sets|3|over|3"), exercise(1, more("sets")));
    assertEquals(List.of("|load|1500 kg s|over|1500 kg s"), exercise(1, more("load")));
    // 50 kg x 9.80665 m/s2 x 30 s
    assertEquals(
        List.of("|impulse|14709.975 N s|over|14709.975 N s"), exercise(1, more("impulse")));
    assertEquals(
        List.of("|ability|IRCRA 26|under|IRCRA 26"),
        plan(
            PLAN.get("athlete")
                .get("ability")
                .lessThan(subject(Kind.PLAN).get("athlete").get("ability"))));
  }

  private static Expression more(String property) {
    return EXERCISE.get(property).moreThan(EXERCISE.get(property));
  }

  @Test
  void oneOfAUnitIsSingular() {
    Expression hold = EXERCISE.get("hold");
    assertEquals(
        List.of("|hold|0 days|at-least|1 day"), exercise(1, hold.atLeast(amount(1, Unit.DAY))));
    assertEquals(
        List.of("|hold|0 days|at-least|2 days"), exercise(1, hold.atLeast(amount(2, Unit.DAY))));
    assertEquals(
        List.of("|hold|10 s|at-most|1 s"), exercise(1, hold.atMost(amount(1, Unit.SECOND))));
    assertEquals(
        List.of("|total-load|50 kg|at-most|1 kg"),
        exercise(1, EXERCISE.get("total-load").atMost(amount(1, Unit.KILOGRAM))));
  }

  @Test
  void outsideOfTwoLimitsTheNearerOneIsWrittenDifferently() {
    Expression level = EXERCISE.get("level");
    assertEquals(
        List.of("|level|70.04 % max|within|60 % max to 70 % max"),
        exercise(2, level.between(percentOfMax(60), percentOfMax(70))));
    assertEquals(
        List.of("|level|70 % max|within|70.1 % max to 80 % max"),
        exercise(2, level.between(percentOfMax(70.05), percentOfMax(80))));
    assertEquals(
        List.of("|level|50 % max|within|60 % max to unknown"),
        exercise(1, level.between(percentOfMax(60), EXERCISE.get("level-before"))));
  }

  @Test
  void betweenIsReportedInTheUnitOfEitherLimit() {
    Expression time = WEEK.get("time-under-load");
    assertEquals(
        List.of("|time-under-load|1 min|within|2 min to 1 min"),
        week(1, time.between(amount(2, Unit.MINUTE), time)));
    assertEquals(
        List.of("|time-under-load|1 min|within|1 min to 0.5 min"),
        week(1, time.between(time, amount(0.5, Unit.MINUTE))));
  }

  @Test
  void aShareOfTheWholeItselfIsNoRise() {
    assertEquals(
        List.of("|load|149.1 % of previous.load|at-most|100 %"),
        week(2, WEEK.get("load").atMost(percent(100).times(WEEK.get("previous").get("load")))));
    assertEquals(
        List.of("|load|49.1 % above previous.load|under|1 %"),
        week(2, WEEK.get("load").lessThan(percent(101).times(WEEK.get("previous").get("load")))));
  }

  @Test
  void aShareOfNothingIsReportedInItsOwnUnit() {
    // body mass alone, so nothing is added
    assertEquals(
        List.of("|total-load|60 kg|at-most|0 kg"),
        exercise(
            3, EXERCISE.get("total-load").atMost(percent(110).times(EXERCISE.get("added-load")))));
  }

  @Test
  void ofTwoWaysToMeetARequirementTheFirstIsReported() {
    Expression level = EXERCISE.get("level").atMost(percentOfMax(40));
    Expression edge = EXERCISE.get("edge").atLeast(amount(25, Unit.MILLIMETRE));
    assertEquals(List.of("|level|50 % max|at-most|40 % max"), exercise(1, level.or(edge)));
    assertEquals(List.of("|edge|20 mm|at-least|25 mm"), exercise(1, EXERCISE.get("hard").or(edge)));
    assertEquals(
        List.of("|level|50 % max|at-most|40 % max", "|edge|20 mm|at-least|25 mm"),
        exercise(1, level.and(edge)));
  }

  @Test
  void theWorstElementIsNamed() {
    Expression time = amount(1, Unit.SECOND);
    assertEquals(
        List.of("strength on 2027-01-11|time-under-load|80 s|at-most|1 s"),
        plan(
            PLAN.get("sessions").every(subject(Kind.SESSION).get("time-under-load").atMost(time))));
    assertEquals(
        List.of("2027-01-11|time-under-load|80 s|at-most|1 s"),
        plan(PLAN.get("days").every(subject(Kind.DAY).get("time-under-load").atMost(time))));
    assertEquals(
        List.of("week 2|time-under-load|80 s|at-most|1 s"),
        plan(PLAN.get("weeks").every(WEEK.get("time-under-load").atMost(time))));
    assertEquals(
        List.of("block base|time-under-load|140 s|at-most|1 s"),
        plan(PLAN.get("blocks").every(subject(Kind.BLOCK).get("time-under-load").atMost(time))));
  }

  @Test
  void theWorstElementIsMeasuredByItsOwnLimit() {
    // 50 kg is 10 less than body mass, 79 kg 19 more
    PlanView plan = Views.of(new Winter().session(0, line(FRONT_TWO, 79), line(HALF_CRIMP, 50)));
    Expression require =
        WEEK.get("exercises").every(EXERCISE.get("total-load").atMost(EXERCISE.get("added-load")));
    assertEquals(
        List.of("half-crimp|total-load|50 kg|at-most|-10 kg"),
        words(ExpressionValues.at(Kind.WEEK, Views.week(plan, 1)).shortfalls(require)));
  }

  @Test
  void theWorstElementOfEitherAlternativeIsReported() {
    Expression both =
        WEEK.get("exercises")
            .every(
                EXERCISE
                    .get("level")
                    .atMost(percentOfMax(49))
                    .and(EXERCISE.get("edge").atLeast(amount(10, Unit.MILLIMETRE))));
    assertEquals(List.of("first-two|level|70 % max|at-most|49 % max"), week(1, both));
  }
}
