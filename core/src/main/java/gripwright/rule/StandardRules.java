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
import gripwright.expression.Expression;
import gripwright.expression.Kind;
import gripwright.expression.Scope;
import gripwright.finding.Topic;
import gripwright.quantity.Unit;
import java.util.List;
import java.util.Optional;

/** The built-in rules, which every plan is held to. */
public final class StandardRules {
  /** Rules: prerequisites of grips. */
  public static final RuleSet GATES =
      new RuleSet(
          "standard-gates",
          Optional.of("prerequisites of grips"),
          List.of(
              splitGripGate(),
              singleFingerGate(),
              gripNeedsGate(),
              fullCrimpCeiling(),
              fullCrimpFailure(),
              singleFingerCeiling(),
              singleFingerFailure(),
              firstYearCeiling(),
              firstYearFailure(),
              firstYearTest(),
              firstYearTesting()));

  /** Rules: youth, injury, weekly load and rest. */
  public static final RuleSet STANDARD =
      new RuleSet(
          "standard",
          Optional.of("youth, injury, weekly load and rest"),
          List.of(
              youthAddedLoad(),
              youthLevel(),
              youthHard(),
              youthFailure(),
              youthTest(),
              youthFullCrimp(),
              youthHold(),
              youthSessionHolds(),
              youthSessionTime(),
              youthDaySessions(),
              youthWeekSessions(),
              youthLoggedSessions(),
              youthUnder12(),
              youthLightWork(),
              youthLoggedTests(),
              youthLoggedHard(),
              youthClimbing(),
              growingJointPain(),
              youthGrip(),
              youthEdge(),
              youthSupervision(),
              injuredFinger(),
              injuredClimbing(),
              injuredWorkLogged(),
              painfulFinger(),
              rehabilitationExercise(),
              rehabilitationLevel(),
              rehabilitationPain(),
              rehabilitationFailure(),
              afterInjuryFailure(),
              afterInjuryStart(),
              afterInjuryRise(),
              afterInjurySets(),
              afterInjuryFullCrimp(),
              afterInjuryTest(),
              afterPainStart(),
              levelUnknown(),
              weekLoadRise(),
              hardDaysApart(),
              hardHoursApart(),
              hoursBetweenDays(),
              edgeTiny(),
              edgeSmallCeiling(),
              edgeSmall(),
              edgeWide()));

  /** Rules: how much in a day, in a week and in a row. */
  public static final RuleSet DOSE =
      new RuleSet(
          "standard-dose",
          Optional.of("how much in a day, in a week and in a row"),
          List.of(
              joinLoadRise(),
              joinSessions(),
              steepWeeklyRise(),
              hardFingerDays(),
              restDay(),
              hardWorkOfADay(),
              heavyWorkOfADay(),
              workOfADay(),
              warmUpBeforeHard(),
              weeksWithoutEase(),
              manyWeeksWithoutEase(),
              effortsNearGreatest(),
              freshAfterHardWork(),
              freshAfterClimbing(),
              usualClimbing(),
              loggedClimbing(),
              loggedClimbingMinor(),
              climbingHours()));

  private StandardRules() {}

  /** Returns all of them, in the order of the text. */
  public static List<RuleSet> sets() {
    return List.of(GATES, STANDARD, DOSE);
  }

  private static Rule splitGripGate() {
    return Rule.error("split-grip-gate", Scope.EXERCISE)
        .about(Topic.EXPERIENCE)
        .when(
            subject(Kind.EXERCISE)
                .get("grip")
                .get("structure")
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
                .get("structure")
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
                .get("structure")
                .is("split", "single")
                .not()
                .or(
                    subject(Kind.EXERCISE)
                        .get("athlete")
                        .get("age")
                        .atLeast(amount(192, Unit.MONTH))))
        .require(subject(Kind.EXERCISE).get("meets-needs"))
        .message("the athlete does not yet meet this grip's prerequisites")
        .source("the grip's declaration")
        .build();
  }

  private static Rule fullCrimpCeiling() {
    return Rule.error("full-crimp-ceiling", Scope.EXERCISE)
        .when(
            subject(Kind.EXERCISE)
                .get("grip")
                .get("fully-crimped")
                .and(subject(Kind.EXERCISE).get("tested").not()))
        .require(
            subject(Kind.EXERCISE)
                .get("level")
                .exists()
                .and(subject(Kind.EXERCISE).get("level").atMost(percentOfMax(80)))
                .or(
                    subject(Kind.EXERCISE)
                        .get("level")
                        .exists()
                        .not()
                        .and(subject(Kind.EXERCISE).get("known-light"))))
        .message("full crimp above 80 % of the maximum, or at a load whose level is not known")
        .source("common practice")
        .build();
  }

  private static Rule fullCrimpFailure() {
    return Rule.warning("full-crimp-failure", Scope.EXERCISE)
        .when(
            subject(Kind.EXERCISE)
                .get("grip")
                .get("fully-crimped")
                .and(
                    subject(Kind.EXERCISE)
                        .get("athlete")
                        .get("age")
                        .atLeast(amount(192, Unit.MONTH)))
                .and(subject(Kind.EXERCISE).get("rehabilitation").not())
                .and(subject(Kind.EXERCISE).get("test").not())
                .and(subject(Kind.EXERCISE).get("tested").not()))
        .require(subject(Kind.EXERCISE).get("to-failure").not())
        .message("a hold to failure, as written or by the estimate, in full crimp")
        .source("common practice")
        .build();
  }

  private static Rule singleFingerCeiling() {
    return Rule.error("single-finger-ceiling", Scope.EXERCISE)
        .when(
            subject(Kind.EXERCISE)
                .get("grip")
                .get("structure")
                .is("single")
                .and(subject(Kind.EXERCISE).get("tested").not()))
        .require(
            subject(Kind.EXERCISE)
                .get("level")
                .exists()
                .and(subject(Kind.EXERCISE).get("level").atMost(percentOfMax(80)))
                .or(
                    subject(Kind.EXERCISE)
                        .get("level")
                        .exists()
                        .not()
                        .and(subject(Kind.EXERCISE).get("known-light"))))
        .message("a single finger above 80 % of the maximum, or at a load whose level is not known")
        .source("common practice")
        .build();
  }

  private static Rule singleFingerFailure() {
    return Rule.warning("single-finger-failure", Scope.EXERCISE)
        .when(
            subject(Kind.EXERCISE)
                .get("grip")
                .get("structure")
                .is("single")
                .and(
                    subject(Kind.EXERCISE)
                        .get("athlete")
                        .get("age")
                        .atLeast(amount(192, Unit.MONTH)))
                .and(subject(Kind.EXERCISE).get("rehabilitation").not())
                .and(subject(Kind.EXERCISE).get("test").not())
                .and(subject(Kind.EXERCISE).get("tested").not()))
        .require(subject(Kind.EXERCISE).get("to-failure").not())
        .message("a hold to failure, as written or by the estimate, on a single finger")
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
                        .atLeast(amount(192, Unit.MONTH)))
                .and(subject(Kind.EXERCISE).get("test").not()))
        .require(
            subject(Kind.EXERCISE)
                .get("level")
                .exists()
                .and(subject(Kind.EXERCISE).get("level").lessThan(percentOfMax(80)))
                .or(
                    subject(Kind.EXERCISE)
                        .get("level")
                        .exists()
                        .not()
                        .and(subject(Kind.EXERCISE).get("known-light"))))
        .message(
            "80 % of the maximum or more, or a load whose level is not known, in the first year of finger training")
        .source("common practice")
        .build();
  }

  private static Rule firstYearFailure() {
    return Rule.warning("first-year-failure", Scope.EXERCISE)
        .when(
            subject(Kind.EXERCISE)
                .get("athlete")
                .get("trained")
                .lessThan(amount(12, Unit.MONTH))
                .and(
                    subject(Kind.EXERCISE)
                        .get("athlete")
                        .get("age")
                        .atLeast(amount(192, Unit.MONTH)))
                .and(subject(Kind.EXERCISE).get("rehabilitation").not())
                .and(subject(Kind.EXERCISE).get("test").not())
                .and(subject(Kind.EXERCISE).get("tested").not()))
        .require(subject(Kind.EXERCISE).get("to-failure").not())
        .message(
            "a hold to failure, as written or by the estimate, in the first year of finger training")
        .source("common practice")
        .build();
  }

  private static Rule firstYearTest() {
    return Rule.warning("first-year-test", Scope.EXERCISE)
        .when(
            subject(Kind.EXERCISE)
                .get("test")
                .and(subject(Kind.EXERCISE).get("tested").not())
                .and(
                    subject(Kind.EXERCISE)
                        .get("athlete")
                        .get("trained")
                        .lessThan(amount(12, Unit.MONTH)))
                .and(
                    subject(Kind.EXERCISE)
                        .get("athlete")
                        .get("age")
                        .atLeast(amount(192, Unit.MONTH))))
        .require(
            subject(Kind.EXERCISE)
                .get("grip")
                .get("fingers")
                .equalTo(Expression.number(4))
                .and(
                    subject(Kind.EXERCISE)
                        .get("since-test")
                        .exists()
                        .not()
                        .or(
                            subject(Kind.EXERCISE)
                                .get("since-test")
                                .atLeast(amount(4, Unit.WEEK)))))
        .message(
            "in the first year of finger training, tests are for four fingers only, and at least 4 weeks apart")
        .source("no published number; the choice of this library")
        .build();
  }

  private static Rule firstYearTesting() {
    return Rule.advice("first-year-testing", Scope.EXERCISE)
        .when(
            subject(Kind.EXERCISE)
                .get("test")
                .and(subject(Kind.EXERCISE).get("tested").not())
                .and(
                    subject(Kind.EXERCISE)
                        .get("athlete")
                        .get("trained")
                        .lessThan(amount(12, Unit.MONTH)))
                .and(
                    subject(Kind.EXERCISE)
                        .get("athlete")
                        .get("age")
                        .atLeast(amount(192, Unit.MONTH))))
        .require(subject(Kind.EXERCISE).get("test").not())
        .message(
            "a maximal test in the first year of finger training: warm up well, build up to it in steps, and stop at any pain")
        .source("common practice")
        .build();
  }

  private static Rule youthAddedLoad() {
    return Rule.error("youth-added-load", Scope.EXERCISE)
        .when(subject(Kind.EXERCISE).get("athlete").get("age").lessThan(amount(192, Unit.MONTH)))
        .require(
            subject(Kind.EXERCISE)
                .get("added-load")
                .atMost(amount(0, Unit.KILOGRAM))
                .or(subject(Kind.EXERCISE).get("known-light"))
                .or(
                    subject(Kind.EXERCISE)
                        .get("lifting")
                        .and(subject(Kind.EXERCISE).get("level").exists())))
        .message("added load for an athlete under 16")
        .source(
            "Morrison and Schoeffl 2007, Br J Sports Med 41:852-861; the limit itself is common practice")
        .neverWaived()
        .build();
  }

  private static Rule youthLevel() {
    return Rule.error("youth-level", Scope.EXERCISE)
        .about(Topic.YOUTH)
        .when(
            subject(Kind.EXERCISE)
                .get("athlete")
                .get("age")
                .lessThan(amount(192, Unit.MONTH))
                .and(subject(Kind.EXERCISE).get("test").not()))
        .require(
            subject(Kind.EXERCISE)
                .get("level")
                .exists()
                .and(subject(Kind.EXERCISE).get("level").lessThan(percentOfMax(60)))
                .or(
                    subject(Kind.EXERCISE)
                        .get("level")
                        .exists()
                        .not()
                        .and(subject(Kind.EXERCISE).get("known-light"))))
        .message(
            "60 % of the maximum or more, or a load that is not known to be light, for an athlete under 16")
        .source(
            "Morrison and Schoeffl 2007, Br J Sports Med 41:852-861; the limit itself is common practice")
        .neverWaived()
        .build();
  }

  private static Rule youthHard() {
    return Rule.error("youth-hard", Scope.EXERCISE)
        .about(Topic.YOUTH)
        .when(
            subject(Kind.EXERCISE)
                .get("athlete")
                .get("age")
                .lessThan(amount(192, Unit.MONTH))
                .and(subject(Kind.EXERCISE).get("test").not())
                .and(subject(Kind.EXERCISE).get("to-failure").not())
                .and(subject(Kind.EXERCISE).get("level").exists())
                .and(subject(Kind.EXERCISE).get("level").lessThan(percentOfMax(60))))
        .require(subject(Kind.EXERCISE).get("hard").not())
        .message("hard work for an athlete under 16: effort 8 or more, or a reserve of 3 s or less")
        .source(
            "Morrison and Schoeffl 2007, Br J Sports Med 41:852-861; the limits themselves are common practice")
        .neverWaived()
        .build();
  }

  private static Rule youthFailure() {
    return Rule.error("youth-failure", Scope.EXERCISE)
        .about(Topic.YOUTH)
        .when(
            subject(Kind.EXERCISE)
                .get("athlete")
                .get("age")
                .lessThan(amount(192, Unit.MONTH))
                .and(subject(Kind.EXERCISE).get("test").not()))
        .require(subject(Kind.EXERCISE).get("to-failure").not())
        .message("a hold to failure, as written or by the estimate, for an athlete under 16")
        .source(
            "Morrison and Schoeffl 2007, Br J Sports Med 41:852-861; the age itself is common practice")
        .neverWaived()
        .build();
  }

  private static Rule youthTest() {
    return Rule.error("youth-test", Scope.EXERCISE)
        .when(
            subject(Kind.EXERCISE)
                .get("athlete")
                .get("age")
                .lessThan(amount(192, Unit.MONTH))
                .and(subject(Kind.EXERCISE).get("tested").not()))
        .require(subject(Kind.EXERCISE).get("test").not())
        .message("a planned maximal test for an athlete under 16")
        .source(
            "Morrison and Schoeffl 2007, Br J Sports Med 41:852-861; the age itself is common practice")
        .neverWaived()
        .build();
  }

  private static Rule youthFullCrimp() {
    return Rule.error("youth-full-crimp", Scope.EXERCISE)
        .when(
            subject(Kind.EXERCISE)
                .get("athlete")
                .get("age")
                .lessThan(amount(192, Unit.MONTH))
                .and(subject(Kind.EXERCISE).get("tested").not()))
        .require(subject(Kind.EXERCISE).get("grip").get("fully-crimped").not())
        .message("full crimp for an athlete under 16")
        .source(
            "Morrison and Schoeffl 2007, Br J Sports Med 41:852-861; the age itself is common practice")
        .neverWaived()
        .build();
  }

  private static Rule youthHold() {
    return Rule.error("youth-hold", Scope.EXERCISE)
        .when(
            subject(Kind.EXERCISE)
                .get("athlete")
                .get("age")
                .lessThan(amount(192, Unit.MONTH))
                .and(subject(Kind.EXERCISE).get("test").not()))
        .require(subject(Kind.EXERCISE).get("hold").atMost(amount(20, Unit.SECOND)))
        .message("a hold longer than 20 s for an athlete under 16")
        .source("no published number; the choice of this library")
        .neverWaived()
        .build();
  }

  private static Rule youthSessionHolds() {
    return Rule.error("youth-session-holds", Scope.SESSION)
        .when(subject(Kind.SESSION).get("athlete").get("age").lessThan(amount(192, Unit.MONTH)))
        .require(subject(Kind.SESSION).get("most-holds").atMost(Expression.number(10)))
        .message("more than 10 holds of a hand in a session for an athlete under 16")
        .source("no published number; the choice of this library")
        .neverWaived()
        .build();
  }

  private static Rule youthSessionTime() {
    return Rule.error("youth-session-time", Scope.SESSION)
        .when(subject(Kind.SESSION).get("athlete").get("age").lessThan(amount(192, Unit.MONTH)))
        .require(subject(Kind.SESSION).get("most-time-under-load").atMost(amount(120, Unit.SECOND)))
        .message("more than 120 s under tension of a hand in a session for an athlete under 16")
        .source("no published number; the choice of this library")
        .neverWaived()
        .build();
  }

  private static Rule youthDaySessions() {
    return Rule.error("youth-day-sessions", Scope.DAY)
        .when(
            subject(Kind.DAY)
                .get("athlete")
                .get("age")
                .lessThan(amount(192, Unit.MONTH))
                .and(subject(Kind.DAY).get("sessions").count().atLeast(Expression.number(1))))
        .require(
            subject(Kind.DAY)
                .get("sessions")
                .count()
                .plus(subject(Kind.DAY).get("other-sessions"))
                .atMost(Expression.number(1))
                .or(subject(Kind.DAY).get("planned-sessions").atMost(Expression.number(1))))
        .message("more than one finger session on a day for an athlete under 16, all plans counted")
        .source("no published number; the choice of this library")
        .neverWaived()
        .build();
  }

  private static Rule youthWeekSessions() {
    return Rule.error("youth-week-sessions", Scope.DAY)
        .when(
            subject(Kind.DAY)
                .get("athlete")
                .get("age")
                .lessThan(amount(192, Unit.MONTH))
                .and(subject(Kind.DAY).get("sessions").count().atLeast(Expression.number(1))))
        .require(
            subject(Kind.DAY)
                .get("sessions-in-7")
                .atMost(Expression.number(2))
                .or(subject(Kind.DAY).get("planned-in-7").atMost(Expression.number(2))))
        .message(
            "more than two finger sessions within seven days for an athlete under 16, all plans counted")
        .source("no published number; the choice of this library")
        .neverWaived()
        .build();
  }

  private static Rule youthLoggedSessions() {
    return Rule.warning("youth-logged-sessions", Scope.DAY)
        .when(
            subject(Kind.DAY)
                .get("athlete")
                .get("age")
                .lessThan(amount(192, Unit.MONTH))
                .and(subject(Kind.DAY).get("sessions").count().atLeast(Expression.number(1))))
        .require(
            subject(Kind.DAY)
                .get("sessions")
                .count()
                .plus(subject(Kind.DAY).get("other-sessions"))
                .atMost(Expression.number(1))
                .or(subject(Kind.DAY).get("planned-sessions").moreThan(Expression.number(1)))
                .and(
                    subject(Kind.DAY)
                        .get("sessions-in-7")
                        .atMost(Expression.number(2))
                        .or(subject(Kind.DAY).get("planned-in-7").moreThan(Expression.number(2)))))
        .message(
            "with what was logged, more than one finger session on a day or two within seven days for an athlete under 16; leave out the next")
        .source("no published number; the choice of this library")
        .build();
  }

  private static Rule youthUnder12() {
    return Rule.error("youth-under-12", Scope.EXERCISE)
        .when(subject(Kind.EXERCISE).get("tested").not())
        .require(subject(Kind.EXERCISE).get("athlete").get("age").atLeast(amount(144, Unit.MONTH)))
        .message("planned finger training or a planned test under 12")
        .source("common practice")
        .build();
  }

  private static Rule youthLightWork() {
    return Rule.warning("youth-light-work", Scope.PLAN)
        .about(Topic.SUPERVISION)
        .require(
            subject(Kind.PLAN)
                .get("sessions")
                .any(
                    subject(Kind.SESSION)
                        .get("athlete")
                        .get("age")
                        .lessThan(amount(192, Unit.MONTH)))
                .not())
        .message(
            "a reminder, since the athlete is under 16: train fingers lightly and under supervision only; for pain at a growth plate stop, and see a physician")
        .source(
            "Morrison and Schoeffl 2007, Br J Sports Med 41:852-861; the advice itself is common practice")
        .build();
  }

  private static Rule youthLoggedTests() {
    return Rule.warning("youth-logged-tests", Scope.PLAN)
        .when(subject(Kind.PLAN).get("athlete").get("age").lessThan(amount(192, Unit.MONTH)))
        .require(subject(Kind.PLAN).get("tests-under-16").atMost(Expression.number(0)))
        .message(
            "maximal tests were logged for an athlete under 16: growth plates are at risk, and the plan needs no more of them")
        .source(
            "Morrison and Schoeffl 2007, Br J Sports Med 41:852-861; the age itself is common practice")
        .build();
  }

  private static Rule youthLoggedHard() {
    return Rule.warning("youth-logged-hard", Scope.PLAN)
        .when(subject(Kind.PLAN).get("athlete").get("age").lessThan(amount(192, Unit.MONTH)))
        .require(subject(Kind.PLAN).get("hard-work-under-16").atMost(Expression.number(0)))
        .message(
            "hard work was logged for an athlete under 16: an effort of 8 or more, full crimp, a split grip or a single finger; growth plates are at risk")
        .source(
            "Morrison and Schoeffl 2007, Br J Sports Med 41:852-861; the limits themselves are common practice")
        .build();
  }

  private static Rule youthClimbing() {
    return Rule.warning("youth-climbing", Scope.WEEK)
        .when(subject(Kind.WEEK).get("athlete").get("age").lessThan(amount(192, Unit.MONTH)))
        .require(
            subject(Kind.WEEK)
                .get("days")
                .countWhere(subject(Kind.DAY).get("climbing"))
                .atMost(Expression.number(4)))
        .message("hard climbing on more than 4 days of a week for an athlete under 16")
        .source("no published number; the choice of this library")
        .build();
  }

  private static Rule growingJointPain() {
    return Rule.error("growing-joint-pain", Scope.EXERCISE)
        .when(subject(Kind.EXERCISE).get("tested").not())
        .require(subject(Kind.EXERCISE).get("uses-growing-joint-in-pain").not())
        .message(
            "a finger with pain at a growth plate or the PIP joint, logged under 18: rest it and see a physician until an injury is written and cleared (a single score of 1 or 2 at the PIP joint: until 0 on two days at least 48 h apart)")
        .source(
            "growth plates: Morrison and Schoeffl 2007, Br J Sports Med 41:852-861; the scores are the choice of this library")
        .neverWaived()
        .build();
  }

  private static Rule youthGrip() {
    return Rule.error("youth-grip", Scope.EXERCISE)
        .when(subject(Kind.EXERCISE).get("athlete").get("age").lessThan(amount(192, Unit.MONTH)))
        .require(subject(Kind.EXERCISE).get("grip").get("structure").is("split", "single").not())
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
        .message("an edge below 18 mm (0.71 inch) for an athlete under 16")
        .source(
            "Morrison and Schoeffl 2007, Br J Sports Med 41:852-861; the limit itself is common practice")
        .neverWaived()
        .build();
  }

  private static Rule youthSupervision() {
    return Rule.warning("youth-supervision", Scope.PLAN)
        .about(Topic.SUPERVISION)
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
            "a reminder, since the athlete is 16 or 17: train fingers under supervision, and stop every hold before the limit; for pain at a growth plate stop, and see a physician")
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

  private static Rule injuredClimbing() {
    return Rule.error("injured-climbing", Scope.DAY)
        .about(Topic.INJURY)
        .when(subject(Kind.DAY).get("climbing"))
        .require(subject(Kind.DAY).get("athlete").get("injured").not())
        .message(
            "hard climbing, usual or planned, while a finger has an injury that no licensed practitioner has cleared")
        .source("common practice")
        .neverWaived()
        .build();
  }

  private static Rule injuredWorkLogged() {
    return Rule.warning("injured-work-logged", Scope.PLAN)
        .require(subject(Kind.PLAN).get("hard-on-injury").atMost(Expression.number(0)))
        .message(
            "a test, hard climbing or hard work was logged on a finger whose injury was not cleared")
        .source("common practice")
        .build();
  }

  private static Rule painfulFinger() {
    return Rule.error("painful-finger", Scope.EXERCISE)
        .when(subject(Kind.EXERCISE).get("rehabilitation").not())
        .require(subject(Kind.EXERCISE).get("uses-painful-finger").not())
        .message(
            "a grip that uses a finger whose pain stops training: it was sharp, sudden, above 5 of 10, or above 2 and rising for a second week in a row, and has not been 2 or less on two days at least 48 h apart since")
        .source(
            "pain-monitoring model, Thomee 1997† and Silbernagel 2007† (no rise from week to week, limit of 5); two rises in a row and the end of the stop are the choice of this library. † Not verified against the original publication.")
        .neverWaived()
        .build();
  }

  private static Rule rehabilitationExercise() {
    return Rule.warning("rehabilitation-exercise", Scope.EXERCISE)
        .about(Topic.REHABILITATION)
        .require(subject(Kind.EXERCISE).get("rehabilitation").not())
        .message(
            "a reminder: this exercise is rehabilitation. Follow the named practitioner, whose plan this one does not replace")
        .source("common practice")
        .build();
  }

  private static Rule rehabilitationLevel() {
    return Rule.error("rehabilitation-level", Scope.EXERCISE)
        .when(subject(Kind.EXERCISE).get("rehabilitation"))
        .require(
            subject(Kind.EXERCISE)
                .get("level")
                .exists()
                .and(subject(Kind.EXERCISE).get("level").atMost(percentOfMax(60)))
                .or(
                    subject(Kind.EXERCISE)
                        .get("level")
                        .exists()
                        .not()
                        .and(subject(Kind.EXERCISE).get("known-light")))
                .and(
                    subject(Kind.EXERCISE)
                        .get("athlete")
                        .get("age")
                        .atLeast(amount(192, Unit.MONTH))
                        .or(subject(Kind.EXERCISE).get("known-light"))))
        .message(
            "rehabilitation above 60 % of the maximum, or at a load that is not known to be light; under 16 only what is known to be light")
        .source("no published number; the choice of this library")
        .neverWaived()
        .build();
  }

  private static Rule rehabilitationPain() {
    return Rule.error("rehabilitation-pain", Scope.EXERCISE)
        .when(subject(Kind.EXERCISE).get("rehabilitation"))
        .require(subject(Kind.EXERCISE).get("hurts-too-much").not())
        .message(
            "rehabilitation of a finger whose last scores were above 5 of 10, sharp or sudden, or above 2 and higher than the week before")
        .source(
            "pain-monitoring model, Thomee 1997† and Silbernagel 2007† (no rise from week to week, limit of 5); sharp and sudden are common practice. † Not verified against the original publication.")
        .neverWaived()
        .build();
  }

  private static Rule rehabilitationFailure() {
    return Rule.error("rehabilitation-failure", Scope.EXERCISE)
        .when(subject(Kind.EXERCISE).get("rehabilitation"))
        .require(subject(Kind.EXERCISE).get("to-failure").not())
        .message("a hold to failure, as written or by the estimate, in rehabilitation")
        .source("common practice")
        .neverWaived()
        .build();
  }

  private static Rule afterInjuryFailure() {
    return Rule.warning("after-injury-failure", Scope.EXERCISE)
        .when(
            subject(Kind.EXERCISE)
                .get("since-clearance")
                .lessThan(amount(12, Unit.WEEK))
                .and(subject(Kind.EXERCISE).get("rehabilitation").not())
                .and(subject(Kind.EXERCISE).get("test").not())
                .and(subject(Kind.EXERCISE).get("tested").not()))
        .require(subject(Kind.EXERCISE).get("to-failure").not())
        .message(
            "a hold to failure, as written or by the estimate, on a finger in the first 12 weeks after its injury was cleared")
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
                .and(subject(Kind.EXERCISE).get("rehabilitation").not())
                .and(subject(Kind.EXERCISE).get("tested").not()))
        .require(
            subject(Kind.EXERCISE)
                .get("level")
                .exists()
                .and(subject(Kind.EXERCISE).get("level").atMost(percentOfMax(60)))
                .or(
                    subject(Kind.EXERCISE)
                        .get("level")
                        .exists()
                        .not()
                        .and(subject(Kind.EXERCISE).get("known-light"))))
        .message(
            "the first week on a finger after its injury was cleared starts above 60 % of the maximum, or at a load that is not known to be light")
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
                .and(subject(Kind.EXERCISE).get("rehabilitation").not())
                .and(subject(Kind.EXERCISE).get("test").not()))
        .require(
            subject(Kind.EXERCISE)
                .get("level")
                .exists()
                .and(
                    subject(Kind.EXERCISE)
                        .get("level")
                        .atMost(percent(105).times(subject(Kind.EXERCISE).get("level-before"))))
                .or(
                    subject(Kind.EXERCISE)
                        .get("level")
                        .exists()
                        .not()
                        .and(subject(Kind.EXERCISE).get("known-light"))))
        .message(
            "the level on a finger rises by more than 5 % a week within 12 weeks of its clearance, or is not known")
        .source("common practice")
        .build();
  }

  private static Rule afterInjurySets() {
    return Rule.error("after-injury-sets", Scope.EXERCISE)
        .when(
            subject(Kind.EXERCISE)
                .get("since-clearance")
                .lessThan(amount(4, Unit.WEEK))
                .and(subject(Kind.EXERCISE).get("rehabilitation").not())
                .and(subject(Kind.EXERCISE).get("test").not()))
        .require(subject(Kind.EXERCISE).get("sets").atMost(Expression.number(3)))
        .message(
            "more than 3 sets of an exercise on a finger in the first 4 weeks after its injury was cleared")
        .source("no published number; the choice of this library")
        .build();
  }

  private static Rule afterInjuryFullCrimp() {
    return Rule.error("after-injury-full-crimp", Scope.EXERCISE)
        .when(
            subject(Kind.EXERCISE)
                .get("since-clearance")
                .lessThan(amount(4, Unit.WEEK))
                .and(subject(Kind.EXERCISE).get("rehabilitation").not())
                .and(subject(Kind.EXERCISE).get("tested").not()))
        .require(subject(Kind.EXERCISE).get("grip").get("fully-crimped").not())
        .message("full crimp with a finger in the first 4 weeks after its injury was cleared")
        .source("no published number; the choice of this library")
        .build();
  }

  private static Rule afterInjuryTest() {
    return Rule.error("after-injury-test", Scope.EXERCISE)
        .when(
            subject(Kind.EXERCISE)
                .get("since-clearance")
                .lessThan(amount(4, Unit.WEEK))
                .and(subject(Kind.EXERCISE).get("tested").not()))
        .require(subject(Kind.EXERCISE).get("test").not())
        .message("a planned test of a finger in the first 4 weeks after its injury was cleared")
        .source("no published number; the choice of this library")
        .build();
  }

  private static Rule afterPainStart() {
    return Rule.warning("after-pain-start", Scope.EXERCISE)
        .when(
            subject(Kind.EXERCISE)
                .get("since-pain")
                .lessThan(amount(12, Unit.WEEK))
                .and(subject(Kind.EXERCISE).get("level-since-pain").exists().not())
                .and(subject(Kind.EXERCISE).get("rehabilitation").not())
                .and(subject(Kind.EXERCISE).get("tested").not()))
        .require(
            subject(Kind.EXERCISE)
                .get("level")
                .exists()
                .and(subject(Kind.EXERCISE).get("level").atMost(percentOfMax(60)))
                .or(
                    subject(Kind.EXERCISE)
                        .get("level")
                        .exists()
                        .not()
                        .and(subject(Kind.EXERCISE).get("known-light"))))
        .message(
            "the first week on a finger after pain that stopped it starts above 60 % of the maximum, or at a load that is not known to be light")
        .source("no published number; the choice of this library")
        .build();
  }

  private static Rule levelUnknown() {
    return Rule.advice("level-unknown", Scope.EXERCISE)
        .when(
            subject(Kind.EXERCISE)
                .get("level")
                .exists()
                .not()
                .and(subject(Kind.EXERCISE).get("test").not())
                .and(subject(Kind.EXERCISE).get("logged").not())
                .and(subject(Kind.EXERCISE).get("rehabilitation").not())
                .and(
                    subject(Kind.EXERCISE)
                        .get("athlete")
                        .get("age")
                        .atLeast(amount(192, Unit.MONTH)))
                .and(
                    subject(Kind.EXERCISE)
                        .get("athlete")
                        .get("trained")
                        .atLeast(amount(12, Unit.MONTH)))
                .and(subject(Kind.EXERCISE).get("grip").get("structure").is("single").not())
                .and(subject(Kind.EXERCISE).get("grip").get("fully-crimped").not())
                .and(subject(Kind.EXERCISE).get("uses-injured-finger").not())
                .and(
                    subject(Kind.EXERCISE)
                        .get("since-clearance")
                        .exists()
                        .not()
                        .or(
                            subject(Kind.EXERCISE)
                                .get("since-clearance")
                                .atLeast(amount(12, Unit.WEEK))))
                .and(
                    subject(Kind.EXERCISE)
                        .get("since-pain")
                        .exists()
                        .not()
                        .or(
                            subject(Kind.EXERCISE)
                                .get("since-pain")
                                .atLeast(amount(12, Unit.WEEK)))))
        .require(
            subject(Kind.EXERCISE)
                .get("light-load")
                .exists()
                .and(
                    subject(Kind.EXERCISE)
                        .get("total-load")
                        .atMost(subject(Kind.EXERCISE).get("light-load"))))
        .message(
            "a load whose level is not known: log a test of this grip, edge and hands, or begin with a load that is known to be light")
        .source("no published numbers; the choice of this library")
        .build();
  }

  private static Rule weekLoadRise() {
    return Rule.warning("week-load-rise", Scope.WEEK)
        .when(
            subject(Kind.WEEK)
                .get("recent-load")
                .exists()
                .and(subject(Kind.WEEK).get("one-step").not()))
        .require(
            subject(Kind.WEEK)
                .get("load")
                .atMost(
                    percent(100)
                        .plus(subject(Kind.WEEK).get("plan").get("weekly-rise"))
                        .times(subject(Kind.WEEK).get("recent-load"))))
        .message(
            "the week's load-time (kg times seconds) rises by more than the plan's weekly rise (10 % unless it says otherwise) over the highest of the last three weeks, deload weeks left out")
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
        .source(
            "Garber CE et al. 2011, Med Sci Sports Exerc 43(7):1334-1359: 48 h between sessions for one muscle group; for fingers common practice")
        .build();
  }

  private static Rule hardHoursApart() {
    return Rule.warning("hard-hours-apart", Scope.PAIR_OF_SESSIONS)
        .when(
            subject(Kind.PAIR)
                .get("gap")
                .atLeast(amount(48, Unit.HOUR))
                .and(subject(Kind.PAIR).get("earlier").get("hard"))
                .and(subject(Kind.PAIR).get("later").get("hard"))
                .and(subject(Kind.PAIR).get("shared-hard-fingers")))
        .require(subject(Kind.PAIR).get("pause").atLeast(amount(40, Unit.HOUR)))
        .message(
            "hard work on the same fingers less than 40 h apart by the clock, though on different days")
        .source("common practice; the number is the choice of this library")
        .build();
  }

  private static Rule hoursBetweenDays() {
    return Rule.warning("hours-between-days", Scope.PAIR_OF_SESSIONS)
        .when(
            subject(Kind.PAIR)
                .get("gap")
                .atLeast(amount(24, Unit.HOUR))
                .and(subject(Kind.PAIR).get("gap").lessThan(amount(48, Unit.HOUR))))
        .require(subject(Kind.PAIR).get("pause").atLeast(amount(8, Unit.HOUR)))
        .message("two sessions less than 8 h apart by the clock, though on different days")
        .source("no published number; the choice of this library")
        .build();
  }

  private static Rule edgeTiny() {
    return Rule.error("edge-tiny", Scope.EXERCISE)
        .require(subject(Kind.EXERCISE).get("edge").atLeast(amount(4, Unit.MILLIMETRE)))
        .message("an edge below 4 mm (0.16 inch)")
        .source("no published number; the choice of this library")
        .build();
  }

  private static Rule edgeSmallCeiling() {
    return Rule.error("edge-small-ceiling", Scope.EXERCISE)
        .when(
            subject(Kind.EXERCISE)
                .get("grip")
                .get("fully-crimped")
                .or(subject(Kind.EXERCISE).get("grip").get("structure").is("single"))
                .or(
                    subject(Kind.EXERCISE)
                        .get("athlete")
                        .get("trained")
                        .lessThan(amount(24, Unit.MONTH))))
        .require(subject(Kind.EXERCISE).get("edge").moreThan(amount(6, Unit.MILLIMETRE)))
        .message(
            "an edge of 6 mm (0.24 inch) or less with a full crimp, a single finger or before 24 months of finger training")
        .source("no published numbers; the choice of this library")
        .build();
  }

  private static Rule edgeSmall() {
    return Rule.warning("edge-small", Scope.EXERCISE)
        .when(
            subject(Kind.EXERCISE)
                .get("edge")
                .atLeast(amount(4, Unit.MILLIMETRE))
                .and(
                    subject(Kind.EXERCISE)
                        .get("athlete")
                        .get("trained")
                        .atLeast(amount(24, Unit.MONTH)))
                .and(
                    subject(Kind.EXERCISE)
                        .get("grip")
                        .get("fully-crimped")
                        .or(subject(Kind.EXERCISE).get("grip").get("structure").is("single"))
                        .not()))
        .require(subject(Kind.EXERCISE).get("edge").moreThan(amount(6, Unit.MILLIMETRE)))
        .message(
            "an edge of 6 mm (0.24 inch) or less: few fingers can hold it, and the load on skin and joints is higher than on a deeper edge")
        .source("no published number; the choice of this library")
        .build();
  }

  private static Rule edgeWide() {
    return Rule.warning("edge-wide", Scope.EXERCISE)
        .require(subject(Kind.EXERCISE).get("edge").atMost(amount(60, Unit.MILLIMETRE)))
        .message("an edge deeper than 60 mm (2.4 inch): check whether mm or cm is meant")
        .source("no published number; the choice of this library")
        .build();
  }

  private static Rule joinLoadRise() {
    return Rule.warning("join-load-rise", Scope.WEEK)
        .about(Topic.JOIN)
        .when(subject(Kind.WEEK).get("load-before").exists())
        .require(
            subject(Kind.WEEK)
                .get("starting-load")
                .atMost(
                    percent(100)
                        .plus(subject(Kind.WEEK).get("plan").get("weekly-rise"))
                        .times(subject(Kind.WEEK).get("load-before"))))
        .message(
            "a block begins with much more load-time (kg times seconds) than the weeks before it")
        .source("common practice")
        .build();
  }

  private static Rule joinSessions() {
    return Rule.warning("join-sessions", Scope.WEEK)
        .when(subject(Kind.WEEK).get("more-sessions").exists())
        .require(subject(Kind.WEEK).get("more-sessions").atMost(Expression.number(1)))
        .message(
            "a block begins with at least two more sessions a week of the same protocol on the same grip than the weeks before it")
        .source("common practice")
        .build();
  }

  private static Rule steepWeeklyRise() {
    return Rule.advice("steep-weekly-rise", Scope.PLAN)
        .require(subject(Kind.PLAN).get("weekly-rise").atMost(percent(15)))
        .message("the plan allows a steeper weekly rise than is usual")
        .source("common practice: about 10 % a week; the limit is the choice of this library")
        .build();
  }

  private static Rule hardFingerDays() {
    return Rule.warning("hard-finger-days", Scope.DAY)
        .require(
            subject(Kind.DAY)
                .get("days-at-80")
                .atMost(Expression.number(4))
                .and(subject(Kind.DAY).get("days-at-70").atMost(Expression.number(5))))
        .message(
            "fingers are trained at 80 % of the maximum on more than 4 days of 7, or at 70 % on more than 5")
        .source("common practice; the numbers are the choice of this library")
        .build();
  }

  private static Rule restDay() {
    return Rule.warning("rest-day", Scope.DAY)
        .require(subject(Kind.DAY).get("rest-days").atLeast(Expression.number(1)))
        .message(
            "no day of rest among seven in a row: each has work at 60 % of the maximum or more, a test or hard climbing")
        .source("common practice; the numbers are the choice of this library")
        .build();
  }

  private static Rule hardWorkOfADay() {
    return Rule.warning("hard-work-of-a-day", Scope.DAY)
        .require(
            subject(Kind.DAY)
                .get("hand-holds-above-80")
                .atMost(Expression.number(40))
                .and(subject(Kind.DAY).get("hand-time-at-80").atMost(amount(5, Unit.MINUTE))))
        .message(
            "more hard work for a hand in a day than is usual: 40 holds above 80 % of the maximum, or 5 min under tension at 80 % or more")
        .source("common practice; the numbers are the choice of this library")
        .build();
  }

  private static Rule heavyWorkOfADay() {
    return Rule.warning("heavy-work-of-a-day", Scope.DAY)
        .require(
            subject(Kind.DAY)
                .get("hand-time-at-60")
                .atMost(amount(15, Unit.MINUTE))
                .and(subject(Kind.DAY).get("grip-time-at-60").atMost(amount(10, Unit.MINUTE)))
                .and(subject(Kind.DAY).get("hand-sets-at-60").lessThan(Expression.number(50))))
        .message(
            "more work at 60 % of the maximum or above for a hand in a day than is usual: 15 min under tension, 10 min on one grip, or 50 sets")
        .source("common practice; the numbers are the choice of this library")
        .build();
  }

  private static Rule workOfADay() {
    return Rule.warning("work-of-a-day", Scope.DAY)
        .require(
            subject(Kind.DAY)
                .get("hand-time-at-40")
                .atMost(amount(20, Unit.MINUTE))
                .and(subject(Kind.DAY).get("hand-holds").lessThan(Expression.number(300))))
        .message(
            "more work for a hand in a day than is usual: 20 min under tension at 40 % of the maximum or above, or 300 holds at any load")
        .source("common practice; the numbers are the choice of this library")
        .build();
  }

  private static Rule warmUpBeforeHard() {
    return Rule.warning("warm-up-before-hard", Scope.SESSION)
        .when(subject(Kind.SESSION).get("warm-up").exists())
        .require(subject(Kind.SESSION).get("warm-up").atLeast(amount(5, Unit.MINUTE)))
        .message(
            "holds at 80 % of the maximum or more after less than 5 min of warm-up; work below 60 % before them and climbing that day count")
        .source("common practice; the number is the choice of this library")
        .build();
  }

  private static Rule weeksWithoutEase() {
    return Rule.advice("weeks-without-ease", Scope.PLAN)
        .when(subject(Kind.PLAN).get("weeks-without-ease").atMost(amount(13, Unit.WEEK)))
        .require(subject(Kind.PLAN).get("weeks-without-ease").atMost(amount(10, Unit.WEEK)))
        .message(
            "more than 10 weeks in a row with work at 60 % of the maximum or more on two days, and none of them at 70 % of the load or less")
        .source("common practice; the numbers are the choice of this library")
        .build();
  }

  private static Rule manyWeeksWithoutEase() {
    return Rule.warning("many-weeks-without-ease", Scope.PLAN)
        .require(subject(Kind.PLAN).get("weeks-without-ease").atMost(amount(13, Unit.WEEK)))
        .message(
            "more than 13 weeks in a row with work at 60 % of the maximum or more on two days, and none of them at 70 % of the load or less")
        .source("common practice; the numbers are the choice of this library")
        .build();
  }

  private static Rule effortsNearGreatest() {
    return Rule.warning("efforts-near-greatest", Scope.SESSION)
        .when(subject(Kind.SESSION).get("hard-efforts").exists())
        .require(subject(Kind.SESSION).get("hard-efforts").lessThan(Expression.number(3)))
        .message(
            "three sessions in a row were logged at an effort of 9.5 or more, where less was planned")
        .source("common practice; the numbers are the choice of this library")
        .build();
  }

  private static Rule freshAfterHardWork() {
    return Rule.warning("fresh-after-hard-work", Scope.DAY)
        .when(subject(Kind.DAY).get("until-fresh").lessThan(amount(48, Unit.HOUR)))
        .require(
            subject(Kind.DAY)
                .get("retest")
                .not()
                .and(
                    subject(Kind.DAY).get("sessions").any(subject(Kind.SESSION).get("hard")).not()))
        .message("a hard session or a test less than 48 h before the day to be fresh on")
        .source("common practice")
        .build();
  }

  private static Rule freshAfterClimbing() {
    return Rule.advice("fresh-after-climbing", Scope.DAY)
        .when(
            subject(Kind.DAY)
                .get("until-fresh")
                .moreThan(amount(0, Unit.HOUR))
                .and(subject(Kind.DAY).get("until-fresh").lessThan(amount(48, Unit.HOUR))))
        .require(subject(Kind.DAY).get("climbing").not())
        .message("hard climbing less than 48 h before the day to be fresh on")
        .source("common practice")
        .build();
  }

  private static Rule usualClimbing() {
    return Rule.warning("usual-climbing", Scope.PLAN)
        .require(
            subject(Kind.PLAN)
                .get("athlete")
                .get("hard-climbing-days")
                .atMost(Expression.number(4))
                .or(subject(Kind.PLAN).get("athlete").get("age").lessThan(amount(192, Unit.MONTH)))
                .and(
                    subject(Kind.PLAN)
                        .get("athlete")
                        .get("hard-climbing-time")
                        .atMost(amount(8, Unit.HOUR))))
        .message(
            "usual hard climbing on more than 4 days a week, or for more than 8 h on one of them")
        .source("common practice; the numbers are the choice of this library")
        .build();
  }

  private static Rule loggedClimbing() {
    return Rule.warning("logged-climbing", Scope.PLAN)
        .when(subject(Kind.PLAN).get("athlete").get("age").atLeast(amount(216, Unit.MONTH)))
        .require(subject(Kind.PLAN).get("hard-climbing-days").atMost(Expression.number(5)))
        .message("hard climbing was logged on more than 5 days of 7")
        .source("common practice; the numbers are the choice of this library")
        .build();
  }

  private static Rule loggedClimbingMinor() {
    return Rule.warning("logged-climbing-minor", Scope.PLAN)
        .when(
            subject(Kind.PLAN)
                .get("athlete")
                .get("age")
                .atLeast(amount(192, Unit.MONTH))
                .and(
                    subject(Kind.PLAN).get("athlete").get("age").lessThan(amount(216, Unit.MONTH))))
        .require(subject(Kind.PLAN).get("hard-climbing-days").atMost(Expression.number(4)))
        .message("hard climbing was logged on more than 4 days of 7, below the age of 18")
        .source("common practice; the numbers are the choice of this library")
        .build();
  }

  private static Rule climbingHours() {
    return Rule.error("climbing-hours", Scope.PLAN)
        .require(subject(Kind.PLAN).get("longest-climbing").atMost(amount(16, Unit.HOUR)))
        .message("climbing for more than 16 h on one day")
        .source("no published number; the choice of this library")
        .build();
  }
}
