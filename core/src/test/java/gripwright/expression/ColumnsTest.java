package gripwright.expression;

import static gripwright.expression.Expression.amount;
import static gripwright.expression.Expression.number;
import static gripwright.expression.Expression.outer;
import static gripwright.expression.Expression.percent;
import static gripwright.expression.Expression.percentOfMax;
import static gripwright.expression.Expression.subject;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.quantity.Unit;
import gripwright.rule.RuleProperties;
import gripwright.rule.view.PlanView;
import gripwright.rule.view.Readers;
import gripwright.rule.view.Views;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;

/** Evaluating many subjects at once gives the same results as one after the other. */
class ColumnsTest {

  private static final Expression EXERCISE = subject(Kind.EXERCISE);

  /** Numbers and truths of an exercise, some missing, some of a collection. */
  private static final List<Expression> NUMBERS =
      List.of(
          EXERCISE.get("level").dividedBy(percentOfMax(50)),
          EXERCISE.get("sets"),
          EXERCISE.get("order").times(number(3)).minus(number(1)),
          EXERCISE.get("end-reserve"),
          EXERCISE.get("since-clearance").dividedBy(amount(7, Unit.DAY)),
          EXERCISE.get("week").get("number"),
          EXERCISE.get("week").get("recent-load").dividedBy(EXERCISE.get("load")),
          EXERCISE.get("week").get("previous").get("number"),
          EXERCISE.get("session").get("exercises").count(),
          EXERCISE.get("plan").get("sessions").count(),
          EXERCISE.get("grip").get("fingers").negated(),
          percent(150),
          number(2));

  private static Expression anyNumber(Random random) {
    return NUMBERS.get(random.nextInt(NUMBERS.size()));
  }

  private static Expression condition(Random random, int depth) {
    switch (random.nextInt(depth > 3 ? 5 : 8)) {
      case 0:
        return EXERCISE.get("grip").get("family").is("split", "single");
      case 1:
        return EXERCISE.get("hands").is("left");
      case 2:
        return EXERCISE.get(random.nextBoolean() ? "hard" : "meets-needs");
      case 3:
        return anyNumber(random).exists();
      case 4:
        Condition.Relation[] relations = Condition.Relation.values();
        return new Condition.Compare(
            relations[random.nextInt(relations.length)], anyNumber(random), anyNumber(random));
      case 5:
        return condition(random, depth + 1).and(condition(random, depth + 1));
      case 6:
        return condition(random, depth + 1).or(condition(random, depth + 1));
      default:
        return condition(random, depth + 1).not();
    }
  }

  @net.jqwik.api.Property
  void columnsEqualClosures(@ForAll long seed) {
    Random random = new Random(seed);
    PlanView plan = Views.of(RuleProperties.winter(seed));
    Subjects subjects = plan.subjects(Scope.EXERCISE);
    List<Expression> conditions = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      conditions.add(condition(random, 0));
    }
    compare(subjects, Kind.EXERCISE, conditions, 1 + random.nextInt(7));
  }

  /** Conditions on the exercises of sessions, with or without references to the session. */
  private static List<Expression> throughExercises(Random random) {
    Expression session = subject(Kind.SESSION);
    Expression exercises = session.get("exercises");
    Expression some = condition(random, 0);
    Expression heavy =
        EXERCISE.get("load").atLeast(outer(Kind.SESSION, 1).get("load").dividedBy(number(2)));
    return List.of(
        exercises.every(condition(random, 0)),
        exercises.any(condition(random, 0)),
        new Condition.Quantify(
            Condition.Quantifier.EVERY, exercises, Optional.of(some), condition(random, 0)),
        exercises.any(heavy.and(some)),
        exercises.countWhere(some).atLeast(number(1)),
        summary(exercises, Expression.Summary.MEAN, anyNumber(random), some),
        summary(exercises, Expression.Summary.SUM, anyNumber(random), some),
        summary(exercises, Expression.Summary.LARGEST, anyNumber(random), heavy),
        summary(
            session.get("plan").get("exercises"),
            Expression.Summary.SMALLEST,
            anyNumber(random),
            some));
  }

  private static Expression summary(
      Expression things, Expression.Summary summary, Expression value, Expression where) {
    return new Expression.Summarize(summary, things, Optional.of(value), Optional.of(where))
        .atMost(number(3));
  }

  @net.jqwik.api.Property
  void columnsOfElementsEqualClosures(@ForAll long seed) {
    Random random = new Random(seed);
    PlanView plan = Views.of(RuleProperties.winter(seed));
    compare(
        plan.subjects(Scope.SESSION),
        Kind.SESSION,
        throughExercises(random),
        1 + random.nextInt(7));
  }

  private static void compare(Subjects subjects, Kind kind, List<Expression> conditions, int step) {
    Columns columns = new Columns(kind, subjects, new Evaluation(Readers.ALL));
    for (int from = 0; from < subjects.size(); from += step) {
      int count = Math.min(step, subjects.size() - from);
      columns.batch(from, count);
      for (Expression condition : conditions) {
        byte[] values = columns.truth(condition).values();
        for (int i = 0; i < count; i++) {
          int alone = ExpressionValues.truth(condition, kind, subjects.at(from + i));
          assertEquals(alone, values[i], condition::toString);
        }
      }
    }
  }
}
