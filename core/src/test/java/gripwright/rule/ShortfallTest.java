package gripwright.rule;

import static gripwright.rule.Expression.amount;
import static gripwright.rule.Expression.number;
import static gripwright.rule.Expression.percent;
import static gripwright.rule.Expression.percentOfMax;
import static gripwright.rule.Expression.subject;
import static gripwright.rule.Winter.FRONT_TWO;
import static gripwright.rule.Winter.HALF_CRIMP;
import static gripwright.rule.Winter.line;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.quantity.Unit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What was there and what the limit is, in words. */
class ShortfallTest {

  private static final Expression WEEK = subject(Kind.WEEK);
  private static final Expression EXERCISE = subject(Kind.EXERCISE);
  private static final Expression FINGER = subject(Kind.FINGER);

  private static PlanView plan() {
    Winter winter = new Winter();
    winter.session(0, line(HALF_CRIMP, 50), line(FRONT_TWO, 70.04).bodyMass(65));
    winter.session(7, line(HALF_CRIMP, 60).sets(5), line(FRONT_TWO, 79));
    return new PlanView(winter.compiled());
  }

  private static List<String> week(int number, Expression require) {
    return words(Standing.at(Kind.WEEK, plan().weeks.get(number - 1)).shortfalls(require));
  }

  private static List<String> exercise(int number, Expression require) {
    return words(Standing.at(Kind.EXERCISE, plan().exercises.get(number - 1)).shortfalls(require));
  }

  private static List<String> words(List<Shortfall> missing) {
    return missing.stream()
        .map(
            s -> s.of() + "|" + s.what() + "|" + s.was() + "|" + s.bound().word() + "|" + s.limit())
        .toList();
  }

  @Test
  void numbersAreToldInTheUnitOfTheRule() {
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
            new Expression.Compare(
                Expression.Relation.NOT_EQUAL, EXERCISE.get("date"), EXERCISE.get("date"))));
  }

  @Test
  void twoNumbersThatDifferAreToldApart() {
    assertEquals(
        List.of("|level|70.04 % max|at-most|70 % max"),
        exercise(2, EXERCISE.get("level").atMost(percentOfMax(70))));
    assertEquals(
        List.of("|level|50 % max|within|60 % max to 70 % max"),
        exercise(
            1, new Expression.Between(EXERCISE.get("level"), percentOfMax(60), percentOfMax(70))));
  }

  @Test
  void aLimitThatIsAShareIsToldAsAShare() {
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
  void ofSeveralTheOneThatMissesByMostIsTold() {
    Expression second = amount(1, Unit.SECOND);
    assertEquals(
        List.of("left index finger|time-under-load|80 s|at-most|1 s"),
        week(2, WEEK.get("fingers").every(FINGER.get("time-under-load").atMost(second))));
    assertEquals(
        List.of("left ring finger|time-under-load|50 s|at-most|1 s"),
        week(
            2,
            new Expression.Quantify(
                Expression.Quantifier.EVERY,
                WEEK.get("fingers"),
                Optional.of(FINGER.get("name").is("ring")),
                FINGER.get("time-under-load").atMost(second))));
    assertEquals(
        List.of("front-two|level|79 % max|under|55 % max"),
        week(
            2,
            WEEK.get("exercises")
                .every(
                    new Expression.Compare(
                        Expression.Relation.LESS, EXERCISE.get("level"), percentOfMax(55)))));
  }

  @Test
  void whatHasNoNumberIsToldWithoutOne() {
    assertEquals(List.of(), exercise(1, EXERCISE.get("hard")));
    assertEquals(
        List.of(), week(1, WEEK.get("exercises").any(EXERCISE.get("grip").get("name").is("none"))));
  }
}
