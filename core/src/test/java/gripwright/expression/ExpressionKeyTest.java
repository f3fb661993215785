package gripwright.expression;

import static gripwright.expression.Expression.amount;
import static gripwright.expression.Expression.date;
import static gripwright.expression.Expression.grade;
import static gripwright.expression.Expression.number;
import static gripwright.expression.Expression.outer;
import static gripwright.expression.Expression.percentOfMax;
import static gripwright.expression.Expression.subject;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.quantity.Unit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ExpressionKeyTest {

  /** Every kind of expression, and each with one part changed; new objects every time. */
  private static List<Expression> every() {
    Expression plan = subject(Kind.PLAN);
    Expression week = subject(Kind.WEEK);
    Expression exercise = subject(Kind.EXERCISE);
    Expression load = week.get("load");
    Expression minutes = week.get("minutes");
    Expression exercises = subject(Kind.SESSION).get("exercises");
    Expression hard = subject(Kind.SESSION).get("hard");
    Expression heavy = exercise.get("level").atLeast(percentOfMax(80));
    Expression light = exercise.get("level").atMost(percentOfMax(60));
    List<Expression> every =
        new ArrayList<>(
            List.of(
                plan,
                week,
                outer(Kind.WEEK, 1),
                number(2),
                number(3),
                amount(2, Unit.KILOGRAM),
                amount(2, Unit.POUND),
                percentOfMax(60),
                percentOfMax(61),
                grade(Ability.of(GradeScale.IRCRA, "18")),
                grade(Ability.of(GradeScale.IRCRA, "19")),
                date(LocalDate.of(2027, 3, 1)),
                date(LocalDate.of(2027, 3, 2)),
                new Condition.Truth(true),
                new Condition.Truth(false),
                load,
                minutes,
                week.get("previous"),
                week.get("previous").get("load"),
                load.exists(),
                minutes.exists(),
                hard,
                hard.not(),
                heavy,
                light,
                exercise.get("level").moreThan(percentOfMax(80)),
                heavy.and(light),
                light.and(heavy)));
    every.addAll(
        List.of(
            heavy.or(light),
            minutes.between(amount(1, Unit.MINUTE), amount(2, Unit.MINUTE)),
            minutes.between(amount(1, Unit.MINUTE), amount(3, Unit.MINUTE)),
            load.plus(load),
            load.minus(load),
            load.plus(week.get("previous").get("load")),
            load.negated(),
            exercise.get("grip").get("family").is("four"),
            exercise.get("grip").get("family").is("four", "split"),
            exercises.count(),
            exercises.countWhere(heavy),
            exercises.countWhere(light),
            exercises.summarize(Expression.Summary.SUM, exercise.get("sets")),
            exercises.summarize(Expression.Summary.MEAN, exercise.get("sets")),
            exercises.summarizeWhere(Expression.Summary.SUM, exercise.get("sets"), heavy),
            exercises.any(heavy),
            exercises.every(heavy),
            exercises.any(light),
            exercises.anyWhere(light, heavy),
            exercises.anyWhere(heavy, light)));
    return every;
  }

  @Test
  void isEqualWhereExpressionsAre() {
    for (Expression one : every()) {
      for (Expression other : every()) {
        ExpressionKey key = new ExpressionKey(one);
        ExpressionKey another = new ExpressionKey(other);
        assertEquals(one.equals(other), key.equals(another), one + " and " + other);
        assertTrue(!key.equals(another) || key.hashCode() == another.hashCode());
      }
    }
  }

  @Test
  void knowsEveryKindOfExpression() {
    assertEquals(
        records(Expression.class).map(Class::getSimpleName).collect(Collectors.toSet()),
        every().stream().map(e -> e.getClass().getSimpleName()).collect(Collectors.toSet()));
  }

  private static Stream<Class<?>> records(Class<?> type) {
    return type.isSealed()
        ? Arrays.stream(type.getPermittedSubclasses()).flatMap(ExpressionKeyTest::records)
        : Stream.of(type);
  }
}
