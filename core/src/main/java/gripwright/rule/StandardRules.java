// Generated from rules.grip by StandardRulesTest of the language module, which proves the two
// equal. Run that test with -Dgripwright.bless=true to write this file anew; do not edit it.
package gripwright.rule;

import static gripwright.expression.Expression.amount;
import static gripwright.expression.Expression.grade;
import static gripwright.expression.Expression.percent;
import static gripwright.expression.Expression.percentOfMax;
import static gripwright.expression.Expression.subject;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.expression.Kind;
import gripwright.expression.Scope;
import gripwright.finding.Topic;
import gripwright.quantity.Unit;
import java.util.List;
import java.util.Optional;

/** The built-in rules, which every plan is held to. */
public final class StandardRules {
  /** Rules: what a grip asks of an athlete. */
  public static final RuleSet GATES =
      new RuleSet(
          "standard-gates",
          Optional.of("what a grip asks of an athlete"),
          List.of(
              splitGripGate(),
              singleFingerGate(),
              gripNeedsGate(),
              fullCrimpCeiling(),
              singleFingerCeiling(),
              firstYearCeiling()));

  /** Rules: youth, injury, weekly load and rest. */
  public static final RuleSet STANDARD =
      new RuleSet(
          "standard",
          Optional.of("youth, injury, weekly load and rest"),
          List.of(
              youthAddedLoad(),
              youthLevel(),
              youthGrip(),
              youthEdge(),
              youthSupervision(),
              injuredFinger(),
              painfulFinger(),
              rehabilitationExercise(),
              afterInjuryStart(),
              afterInjuryRise(),
              weekLoadRise(),
              hardDaysApart()));

  private StandardRules() {}

  /** Returns all of them, in the order of the text. */
  public static List<RuleSet> sets() {
    return List.of(GATES, STANDARD);
  }

  private static Rule splitGripGate() {
    return Rule.error("split-grip-gate", Scope.EXERCISE)
        .about(Topic.EXPERIENCE)
        .when(
            subject(Kind.EXERCISE)
                .get("grip")
                .get("family")
                .is("split")
                .and(
                    subject(Kind.EXERCISE)
                        .get("athlete")
                        .get("age")
                        .atLeast(amount(192, Unit.MONTH))))
        .require(
            subject(Kind.EXERCISE)
                .get("athlete")
                .get("trained")
                .atLeast(amount(24, Unit.MONTH))
                .and(
                    subject(Kind.EXERCISE)
                        .get("athlete")
                        .get("ability")
                        .atLeast(grade(Ability.of(GradeScale.IRCRA, "18")))))
        .message("a split grip before 24 months of finger training and IRCRA 18 (french 7a+)")
        .source("common practice")
        .build();
  }

  private static Rule singleFingerGate() {
    return Rule.error("single-finger-gate", Scope.EXERCISE)
        .about(Topic.EXPERIENCE)
        .when(
            subject(Kind.EXERCISE)
                .get("grip")
                .get("family")
                .is("single")
                .and(
                    subject(Kind.EXERCISE)
                        .get("athlete")
                        .get("age")
                        .atLeast(amount(192, Unit.MONTH))))
        .require(
            subject(Kind.EXERCISE)
                .get("athlete")
                .get("trained")
                .atLeast(amount(60, Unit.MONTH))
                .and(
                    subject(Kind.EXERCISE)
                        .get("athlete")
                        .get("ability")
                        .atLeast(grade(Ability.of(GradeScale.IRCRA, "24")))))
        .message("a single finger before 60 months of finger training and IRCRA 24 (french 8a+)")
        .source("common practice")
        .build();
  }

  private static Rule gripNeedsGate() {
    return Rule.error("grip-needs-gate", Scope.EXERCISE)
        .about(Topic.PREREQUISITES)
        .when(
            subject(Kind.EXERCISE)
                .get("grip")
                .get("family")
                .is("split", "single")
                .not()
                .or(
                    subject(Kind.EXERCISE)
                        .get("athlete")
                        .get("age")
                        .atLeast(amount(192, Unit.MONTH))))
        .require(subject(Kind.EXERCISE).get("meets-needs"))
        .message("the athlete does not yet bring what this grip's own declaration asks for")
        .source("the grip's declaration")
        .build();
  }

  private static Rule fullCrimpCeiling() {
    return Rule.error("full-crimp-ceiling", Scope.EXERCISE)
        .when(subject(Kind.EXERCISE).get("grip").get("name").is("full-crimp"))
        .require(subject(Kind.EXERCISE).get("level").atMost(percentOfMax(80)))
        .message("full crimp above 80 % of the maximum")
        .source("common practice")
        .build();
  }

  private static Rule singleFingerCeiling() {
    return Rule.error("single-finger-ceiling", Scope.EXERCISE)
        .when(subject(Kind.EXERCISE).get("grip").get("family").is("single"))
        .require(subject(Kind.EXERCISE).get("level").atMost(percentOfMax(80)))
        .message("a single finger above 80 % of the maximum")
        .source("common practice")
        .build();
  }

  private static Rule firstYearCeiling() {
    return Rule.warning("first-year-ceiling", Scope.EXERCISE)
        .when(
            subject(Kind.EXERCISE)
                .get("athlete")
                .get("trained")
                .lessThan(amount(12, Unit.MONTH))
                .and(
                    subject(Kind.EXERCISE)
                        .get("athlete")
                        .get("age")
                        .atLeast(amount(192, Unit.MONTH))))
        .require(subject(Kind.EXERCISE).get("level").lessThan(percentOfMax(80)))
        .message("80 % of the maximum or more in the first year of finger training")
        .source("common practice")
        .build();
  }

  private static Rule youthAddedLoad() {
    return Rule.error("youth-added-load", Scope.EXERCISE)
        .when(subject(Kind.EXERCISE).get("athlete").get("age").lessThan(amount(192, Unit.MONTH)))
        .require(subject(Kind.EXERCISE).get("added-load").atMost(amount(0, Unit.KILOGRAM)))
        .message("added load for an athlete under 16")
        .source(
            "Morrison and Schoeffl 2007, Br J Sports Med 41:852-861; the limit itself is common practice")
        .neverWaived()
        .build();
  }

  private static Rule youthLevel() {
    return Rule.error("youth-level", Scope.EXERCISE)
        .when(subject(Kind.EXERCISE).get("athlete").get("age").lessThan(amount(192, Unit.MONTH)))
        .require(subject(Kind.EXERCISE).get("level").lessThan(percentOfMax(60)))
        .message("60 % of the maximum or more for an athlete under 16")
        .source(
            "Morrison and Schoeffl 2007, Br J Sports Med 41:852-861; the limit itself is common practice")
        .neverWaived()
        .build();
  }

  private static Rule youthGrip() {
    return Rule.error("youth-grip", Scope.EXERCISE)
        .when(subject(Kind.EXERCISE).get("athlete").get("age").lessThan(amount(192, Unit.MONTH)))
        .require(subject(Kind.EXERCISE).get("grip").get("family").is("split", "single").not())
        .message("a split grip or a single finger for an athlete under 16")
        .source(
            "Morrison and Schoeffl 2007, Br J Sports Med 41:852-861; the limit itself is common practice")
        .neverWaived()
        .build();
  }

  private static Rule youthEdge() {
    return Rule.error("youth-edge", Scope.EXERCISE)
        .when(subject(Kind.EXERCISE).get("athlete").get("age").lessThan(amount(192, Unit.MONTH)))
        .require(subject(Kind.EXERCISE).get("edge").atLeast(amount(18, Unit.MILLIMETRE)))
        .message("an edge below 18 mm for an athlete under 16")
        .source(
            "Morrison and Schoeffl 2007, Br J Sports Med 41:852-861; the limit itself is common practice")
        .neverWaived()
        .build();
  }

  private static Rule youthSupervision() {
    return Rule.warning("youth-supervision", Scope.PLAN)
        .require(
            subject(Kind.PLAN)
                .get("sessions")
                .any(
                    subject(Kind.SESSION)
                        .get("athlete")
                        .get("age")
                        .atLeast(amount(192, Unit.MONTH))
                        .and(
                            subject(Kind.SESSION)
                                .get("athlete")
                                .get("age")
                                .lessThan(amount(216, Unit.MONTH))))
                .not())
        .message(
            "an athlete of 16 or 17 trains fingers under supervision, below the limit at every hold; pain at a growth plate goes to a physician")
        .source("common practice; no number is published for this age")
        .build();
  }

  private static Rule injuredFinger() {
    return Rule.error("injured-finger", Scope.EXERCISE)
        .about(Topic.INJURY)
        .when(subject(Kind.EXERCISE).get("rehabilitation").not())
        .require(subject(Kind.EXERCISE).get("uses-injured-finger").not())
        .message("a grip that uses an injured finger before the injury is cleared")
        .source("common practice")
        .neverWaived()
        .build();
  }

  private static Rule painfulFinger() {
    return Rule.error("painful-finger", Scope.EXERCISE)
        .when(subject(Kind.EXERCISE).get("rehabilitation").not())
        .require(subject(Kind.EXERCISE).get("uses-painful-finger").not())
        .message(
            "a grip that uses a finger with pain that was sharp, sudden, above 5 of 10 or rising week on week in the last 14 days")
        .source(
            "pain-monitoring model, Thomee 1997 and Silbernagel 2007 (no rise from week to week, limit of 5); the 14 days are common practice")
        .neverWaived()
        .build();
  }

  private static Rule rehabilitationExercise() {
    return Rule.warning("rehabilitation-exercise", Scope.EXERCISE)
        .require(subject(Kind.EXERCISE).get("rehabilitation").not())
        .message(
            "rehabilitation: the named practitioner's plan decides here, and nothing in this one replaces it")
        .source("common practice")
        .build();
  }

  private static Rule afterInjuryStart() {
    return Rule.error("after-injury-start", Scope.EXERCISE)
        .when(
            subject(Kind.EXERCISE)
                .get("since-clearance")
                .lessThan(amount(12, Unit.WEEK))
                .and(subject(Kind.EXERCISE).get("level-before").exists().not())
                .and(subject(Kind.EXERCISE).get("rehabilitation").not()))
        .require(subject(Kind.EXERCISE).get("level").atMost(percentOfMax(60)))
        .message(
            "the first week on a finger after its injury was cleared starts above 60 % of the maximum")
        .source("common practice")
        .build();
  }

  private static Rule afterInjuryRise() {
    return Rule.error("after-injury-rise", Scope.EXERCISE)
        .when(
            subject(Kind.EXERCISE)
                .get("since-clearance")
                .lessThan(amount(12, Unit.WEEK))
                .and(subject(Kind.EXERCISE).get("level-before").exists())
                .and(subject(Kind.EXERCISE).get("rehabilitation").not()))
        .require(
            subject(Kind.EXERCISE)
                .get("level")
                .atMost(percent(105).times(subject(Kind.EXERCISE).get("level-before"))))
        .message(
            "the level on a finger rises by more than 5 % a week within 12 weeks of its clearance")
        .source("common practice")
        .build();
  }

  private static Rule weekLoadRise() {
    return Rule.warning("week-load-rise", Scope.WEEK)
        .when(subject(Kind.WEEK).get("recent-load").exists())
        .require(
            subject(Kind.WEEK)
                .get("load")
                .atMost(
                    percent(100)
                        .plus(subject(Kind.WEEK).get("plan").get("weekly-rise"))
                        .times(subject(Kind.WEEK).get("recent-load"))))
        .message(
            "the week's load rises by more than the plan's weekly rise (10 % unless it says otherwise) over the last three uneased weeks")
        .source("common practice")
        .build();
  }

  private static Rule hardDaysApart() {
    return Rule.warning("hard-days-apart", Scope.PAIR_OF_SESSIONS)
        .when(
            subject(Kind.PAIR)
                .get("earlier")
                .get("hard")
                .and(subject(Kind.PAIR).get("later").get("hard"))
                .and(subject(Kind.PAIR).get("shared-hard-fingers")))
        .require(subject(Kind.PAIR).get("gap").atLeast(amount(48, Unit.HOUR)))
        .message(
            "hard work on the same fingers less than 48 h apart, hard climbing and retests counted")
        .source("common practice")
        .build();
  }
}
