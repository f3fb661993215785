package gripwright.language;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.expression.Condition;
import gripwright.expression.Expression;
import gripwright.expression.Kind;
import gripwright.expression.Scope;
import gripwright.quantity.Unit;
import gripwright.rule.Rule;
import gripwright.rule.RuleSet;
import java.util.Optional;
import java.util.Random;

/** Random rules with every part that a condition can have. */
final class InventedRules {

  private final Random random;

  InventedRules(Random random) {
    this.random = random;
  }

  RuleSet ruleSet() {
    Rule.Builder one =
        Rule.warning("one", Scope.WEEK).require(week(3)).message("it's \"so\"").source("us");
    Rule.Builder two = Rule.advice("two", Scope.SESSION).require(session(3)).message("m");
    if (random.nextBoolean()) {
      one.when(week(2)).neverWaived();
    }
    return new RuleSet("ours", Optional.of("t"), java.util.List.of(one.build(), two.build()));
  }

  private Expression week(int deep) {
    Expression week = Expression.subject(Kind.WEEK);
    if (deep > 0 && random.nextBoolean()) {
      return joined(week(deep - 1), week(deep - 1));
    }
    return switch (random.nextInt(7)) {
      case 0 -> week.get("eased");
      case 1 -> week.get("previous").exists();
      case 2 -> week.get("previous").get("eased");
      case 3 -> number(2).atMost(number(2));
      case 4 -> number(1).between(number(1), number(2));
      case 5 ->
          new Condition.Quantify(
              Condition.Quantifier.EVERY,
              week.get("exercises"),
              random.nextBoolean() ? Optional.empty() : Optional.of(exercise(1)),
              exercise(1));
      default ->
          new Condition.Quantify(
              Condition.Quantifier.ANY,
              week.get("exercises"),
              Optional.of(exercise(2)),
              random.nextBoolean() ? new Condition.Truth(true) : exercise(1));
    };
  }

  private Expression joined(Expression one, Expression other) {
    return switch (random.nextInt(3)) {
      case 0 -> one.and(other);
      case 1 -> one.or(other);
      default -> one.not();
    };
  }

  /** Kilogram seconds, put together. */
  private Expression number(int deep) {
    Expression week = Expression.subject(Kind.WEEK);
    if (deep > 0) {
      Expression inner = number(deep - 1);
      return switch (random.nextInt(6)) {
        case 0 -> inner.plus(number(deep - 1));
        case 1 -> inner.minus(number(deep - 1));
        case 2 -> Expression.percent(random.nextInt(200)).times(inner);
        case 3 -> inner.negated();
        case 4 -> inner.times(Expression.number(random.nextInt(30) / 10.0));
        default -> inner.dividedBy(Expression.percent(1 + random.nextInt(99)));
      };
    }
    return random.nextBoolean()
        ? week.get("load")
        : new Expression.Summarize(
            random.nextBoolean() ? Expression.Summary.SUM : Expression.Summary.LARGEST,
            week.get("exercises"),
            Optional.of(
                random.nextBoolean()
                    ? element("load")
                    : element("load").times(Expression.percent(50))),
            random.nextBoolean() ? Optional.empty() : Optional.of(exercise(1)));
  }

  private static Expression element(String property) {
    return Expression.subject(Kind.EXERCISE).get(property);
  }

  /** Something of an exercise of the week. */
  private Expression exercise(int deep) {
    if (deep > 0 && random.nextBoolean()) {
      return joined(exercise(deep - 1), exercise(deep - 1));
    }
    Expression grip = element("grip");
    return switch (random.nextInt(6)) {
      case 0 -> element("hard");
      case 1 -> grip.get("family").is("split");
      case 2 -> grip.get("name").is("half-crimp", "open-four").not();
      case 3 -> element("level").atLeast(Expression.percentOfMax(60 + random.nextInt(30)));
      case 4 -> element("edge").lessThan(Expression.amount(18, Unit.MILLIMETRE));
      default ->
          element("athlete")
              .get("ability")
              .atLeast(Expression.grade(Ability.of(GradeScale.FRENCH, "7b")));
    };
  }

  private Expression session(int deep) {
    Expression session = Expression.subject(Kind.SESSION);
    if (deep > 0 && random.nextBoolean()) {
      return joined(session(deep - 1), session(deep - 1));
    }
    return switch (random.nextInt(3)) {
      case 0 -> session.get("minutes").atMost(Expression.amount(90, Unit.MINUTE));
      case 1 -> session.get("weekday").is("sat");
      default -> session.get("exercises").count().equalTo(Expression.number(1 + random.nextInt(5)));
    };
  }
}
