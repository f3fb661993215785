package gripwright.expression;

import static gripwright.expression.Expression.amount;
import static gripwright.expression.Expression.number;
import static gripwright.expression.Expression.outer;
import static gripwright.expression.Expression.percent;
import static gripwright.expression.Expression.percentOfMax;
import static gripwright.expression.Expression.subject;
import static gripwright.rule.Winter.FRONT_TWO;
import static gripwright.rule.Winter.HALF_CRIMP;
import static gripwright.rule.Winter.line;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.quantity.Dimension;
import gripwright.quantity.Unit;
import gripwright.rule.Rule;
import gripwright.rule.Winter;
import gripwright.rule.view.PlanView;
import gripwright.rule.view.Views;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class ExpressionTest {

  private static final Expression PLAN = subject(Kind.PLAN);
  private static final Expression WEEK = subject(Kind.WEEK);
  private static final Expression EXERCISE = subject(Kind.EXERCISE);
  private static final Expression MISSING = PLAN.get("towards");

  private final PlanView view =
      Views.of(
          new Winter()
              .session(0, line(HALF_CRIMP, 50), line(FRONT_TWO, 40).sets(1))
              .session(7, line(HALF_CRIMP, 60)));

  private int truth(Expression expression) {
    return ExpressionValues.truth(expression, Kind.PLAN, view);
  }

  private double value(Expression expression) {
    return ExpressionValues.number(expression, Kind.PLAN, view);
  }

  private static void refused(Executable building) {
    assertThrows(IllegalArgumentException.class, building);
  }

  @Test
  void typesAreCheckedAsAnExpressionIsBuilt() {
    refused(() -> PLAN.get("load").atMost(amount(3, Unit.KILOGRAM)));
    refused(() -> EXERCISE.get("level").lessThan(percent(60)));
    refused(() -> amount(1, Unit.KILOGRAM).plus(amount(1, Unit.NEWTON)));
    refused(() -> PLAN.get("length").and(new Condition.Truth(true)));
    refused(() -> PLAN.get("no-such-thing"));
    refused(() -> PLAN.get("load").get("name"));
    refused(() -> EXERCISE.get("grip").get("family").is("splits"));
    refused(() -> EXERCISE.get("grip").is("half-crimp"));
    refused(() -> PLAN.count());
    refused(() -> PLAN.get("sessions").summarize(Expression.Summary.SUM, subject(Kind.SESSION)));
    refused(() -> EXERCISE.get("hard").negated());
    refused(() -> number(Double.NaN));
  }

  @Test
  void incompatibleTypesAreRefusedWithAMessage() {
    Expression exercises = PLAN.get("exercises");
    assertEquals(
        "sum of level",
        assertThrows(
                IllegalArgumentException.class,
                () -> exercises.summarize(Expression.Summary.SUM, EXERCISE.get("level")))
            .getMessage());
    refused(() -> exercises.summarize(Expression.Summary.MEAN, EXERCISE.get("date")));
    refused(
        () -> exercises.summarize(Expression.Summary.LARGEST, EXERCISE.get("grip").get("name")));
  }

  @Test
  void typesOfProductsAndQuotients() {
    Expression level = EXERCISE.get("level");
    Expression load = PLAN.get("load");
    assertEquals(Type.Plain.LEVEL, level.times(number(2)).type());
    assertEquals(Type.Plain.LEVEL, number(2).times(level).type());
    assertEquals(Type.Plain.LEVEL, level.dividedBy(number(2)).type());
    assertEquals(Type.Plain.LEVEL, level.plus(level).type());
    assertEquals(Type.Plain.LEVEL, level.minus(level).type());
    assertEquals(Type.Quantity.NUMBER, level.dividedBy(level).type());
    assertEquals(Type.Quantity.NUMBER, load.dividedBy(load).type());
    assertEquals(new Type.Quantity(Dimension.MASS), load.dividedBy(amount(1, Unit.SECOND)).type());
    assertEquals(load.type(), amount(1, Unit.KILOGRAM).times(amount(1, Unit.SECOND)).type());
    refused(() -> level.times(level));
    refused(() -> level.times(amount(1, Unit.SECOND)));
    refused(() -> level.dividedBy(amount(1, Unit.SECOND)));
    refused(() -> number(2).dividedBy(level));
    refused(() -> amount(1, Unit.SECOND).times(level));
    refused(() -> PLAN.get("from").plus(number(1)));
    refused(() -> PLAN.get("from").plus(PLAN.get("from")));
  }

  @Test
  void subjectsMustMatchTheirContextAndRulesCheckThat() {
    refused(
        () ->
            Rule.error("wrong", Scope.WEEK).require(EXERCISE.get("hard")).message("none").build());
    refused(
        () ->
            Rule.error("wrong", Scope.WEEK)
                .require(WEEK.get("exercises").any(WEEK.get("eased")))
                .message("none")
                .build());
    assertEquals(
        ExpressionCompiler.NO,
        ExpressionValues.truth(
            WEEK.get("exercises").any(outer(Kind.WEEK, 1).get("eased")),
            Kind.WEEK,
            Views.week(view, 1)));
  }

  @Test
  void unitsAreConvertedAndPercentagesAreNumbers() {
    assertEquals(ExpressionCompiler.YES, truth(amount(2, Unit.DAY).equalTo(amount(48, Unit.HOUR))));
    assertEquals(ExpressionCompiler.YES, truth(percent(115).equalTo(number(1.15))));
    assertEquals(
        ExpressionCompiler.YES, truth(amount(1, Unit.INCH).equalTo(amount(25.4, Unit.MILLIMETRE))));
    assertEquals(56.5, value(PLAN.get("weekly-rise").times(number(565))), 1e-9);
  }

  @Test
  void datesDifferByTimes() {
    Expression from = PLAN.get("from");
    assertEquals(
        ExpressionCompiler.YES,
        truth(from.plus(amount(1, Unit.WEEK)).equalTo(Expression.date(LocalDate.of(2027, 1, 11)))));
    assertEquals(
        Unit.DAY.toBase(3.0), value(Expression.date(LocalDate.of(2027, 1, 7)).minus(from)), 1e-6);
    assertEquals(
        ExpressionCompiler.YES,
        truth(from.minus(amount(2, Unit.DAY)).equalTo(Expression.date(LocalDate.of(2027, 1, 2)))));
    assertEquals(4, value(number(12).dividedBy(number(3))));
    assertEquals(7, value(number(12).minus(number(5))));
  }

  @Test
  void sumsMeansAndExtremes() {
    Expression all = PLAN.get("exercises");
    assertEquals(3, value(all.count()));
    assertEquals(1, value(all.countWhere(EXERCISE.get("grip").get("family").is("split"))));
    assertEquals(70, value(all.summarize(Expression.Summary.SUM, EXERCISE.get("time-under-load"))));
    assertEquals(0.5, value(all.summarize(Expression.Summary.MEAN, EXERCISE.get("level"))), 1e-12);
    assertEquals(
        0.6, value(all.summarize(Expression.Summary.LARGEST, EXERCISE.get("level"))), 1e-12);
    assertEquals(
        0.4, value(all.summarize(Expression.Summary.SMALLEST, EXERCISE.get("level"))), 1e-12);
    Expression none = EXERCISE.get("order").moreThan(number(9));
    assertTrue(
        Double.isNaN(
            value(all.summarizeWhere(Expression.Summary.MEAN, EXERCISE.get("level"), none))));
    assertEquals(0, value(all.summarizeWhere(Expression.Summary.SUM, EXERCISE.get("load"), none)));
  }

  @Test
  void everyAndAny() {
    Expression all = PLAN.get("exercises");
    assertEquals(
        ExpressionCompiler.YES, truth(all.every(EXERCISE.get("level").atMost(percentOfMax(60)))));
    assertEquals(
        ExpressionCompiler.NO, truth(all.every(EXERCISE.get("level").lessThan(percentOfMax(60)))));
    assertEquals(ExpressionCompiler.YES, truth(all.any(EXERCISE.get("sets").equalTo(number(1)))));
    Expression none = EXERCISE.get("order").moreThan(number(9));
    assertEquals(ExpressionCompiler.YES, truth(all.everyWhere(none, new Condition.Truth(false))));
    assertEquals(ExpressionCompiler.NO, truth(all.anyWhere(none, new Condition.Truth(true))));
    Expression unknown = EXERCISE.get("since-clearance").lessThan(amount(1, Unit.WEEK));
    assertEquals(ExpressionCompiler.UNDECIDED, truth(all.any(unknown)));
    assertEquals(ExpressionCompiler.UNDECIDED, truth(all.every(unknown)));
  }

  @Test
  void missingValuesAreNeitherTrueNorFalse() {
    Expression compared = MISSING.moreThan(PLAN.get("from"));
    assertEquals(ExpressionCompiler.UNDECIDED, truth(compared));
    assertEquals(ExpressionCompiler.UNDECIDED, truth(compared.not()));
    assertEquals(ExpressionCompiler.NO, truth(compared.and(new Condition.Truth(false))));
    assertEquals(ExpressionCompiler.YES, truth(compared.or(new Condition.Truth(true))));
    assertEquals(ExpressionCompiler.UNDECIDED, truth(compared.and(new Condition.Truth(true))));
    assertEquals(ExpressionCompiler.NO, truth(MISSING.exists()));
    assertEquals(ExpressionCompiler.YES, truth(PLAN.get("from").exists()));
    assertEquals(
        ExpressionCompiler.UNDECIDED,
        truth(number(1).dividedBy(number(0)).equalTo(number(1))),
        "a division by zero is missing");
  }

  @Test
  void betweenIncludesBothEnds() {
    Expression length = PLAN.get("length");
    assertEquals(
        ExpressionCompiler.YES, truth(length.between(amount(8, Unit.WEEK), amount(9, Unit.WEEK))));
    assertEquals(
        ExpressionCompiler.YES, truth(length.between(amount(1, Unit.WEEK), amount(56, Unit.DAY))));
    assertEquals(
        ExpressionCompiler.NO, truth(length.between(amount(9, Unit.WEEK), amount(10, Unit.WEEK))));
  }

  @Test
  void equalWhenWrittenTheSame() {
    assertEquals(PLAN.get("load"), subject(Kind.PLAN).get("load"));
    assertEquals(percent(10).times(PLAN.get("load")), percent(10).times(PLAN.get("load")));
  }

  @Test
  void everyPropertyCanBeRead() {
    for (Kind kind : Kind.values()) {
      for (Property property : Property.of(kind)) {
        assertTrue(property.doc().endsWith("."), property.toString());
        Expression read = new Expression.Subject(kind, 0).get(property.name());
        assertEquals(property.type(), read.type());
        int seen = ExpressionValues.truth(read.exists(), kind, Views.first(view, kind));
        assertTrue(
            seen == ExpressionCompiler.YES || seen == ExpressionCompiler.NO, property.toString());
      }
    }
  }
}
