package gripwright.rule;

import static gripwright.expression.Expression.amount;
import static gripwright.expression.Expression.percentOfMax;
import static gripwright.expression.Expression.subject;
import static gripwright.rule.Winter.FRONT_TWO;
import static gripwright.rule.Winter.HALF_CRIMP;
import static gripwright.rule.Winter.MONDAY;
import static gripwright.rule.Winter.line;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.expression.Condition;
import gripwright.expression.Expression;
import gripwright.expression.Kind;
import gripwright.expression.Scope;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.quantity.Unit;
import gripwright.wording.Words;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RuleCheckTest {

  private static final Expression WEEK = subject(Kind.WEEK);

  /** The club's own: no more than 50 s on split grips a week. */
  private static final Rule SPLIT_TIME =
      Rule.warning("split-time", Scope.WEEK)
          .require(
              WEEK.get("exercises")
                  .summarizeWhere(
                      Expression.Summary.SUM,
                      subject(Kind.EXERCISE).get("time-under-load"),
                      subject(Kind.EXERCISE).get("grip").get("family").is("split"))
                  .atMost(amount(50, Unit.SECOND)))
          .message("too much work on split grips this week")
          .source("club rule")
          .build();

  /** The club's own: no more than 35 s on one finger a week. */
  private static final Rule FINGER_TIME =
      Rule.warning("finger-time", Scope.WEEK)
          .require(
              WEEK.get("fingers")
                  .every(
                      subject(Kind.FINGER).get("time-under-load").atMost(amount(35, Unit.SECOND))))
          .message("too much for one finger")
          .build();

  private static final RuleSet CLUB = RuleSet.of("club", SPLIT_TIME);

  /** Six holds of 10 s on a split grip in each of the first three weeks. */
  private static Winter splitWeeks() {
    Winter winter = new Winter().rules("club");
    for (int week = 0; week < 3; week++) {
      winter.session(7 * week, line(FRONT_TWO, 50)).session(7 * week + 3, line(FRONT_TWO, 50));
    }
    return winter;
  }

  @Test
  void oneLineThatBreaksARuleOftenIsOneFindingWithItsPlaces() {
    Winter winter = new Winter().athlete(a -> a.trained(3));
    winter.session(0, line(FRONT_TWO, 50)).session(3, line(FRONT_TWO, 50));
    winter.session(28, line(FRONT_TWO, 50));
    List<Finding> findings = winter.check();
    assertEquals(2, findings.size(), "one a block");
    assertEquals(
        "plan winter / for tove / block base / week 1 / session strength / date 2027-01-04"
            + " / exercise 1",
        findings.get(0).place().toString());
    assertEquals(2, findings.get(0).places().size());
    assertEquals(List.of(findings.get(1).place()), findings.get(1).places(), "it has a date");
  }

  @Test
  void aFindingHasTheMessageTheSourceAndBothSides() {
    Finding finding = splitWeeks().check(CLUB).get(0);
    assertEquals("rule.split-time", finding.code());
    assertEquals("too much work on split grips this week", finding.arguments().get("message"));
    assertEquals("club rule", finding.arguments().get("source"));
    assertEquals("60 s", Words.fact(finding.arguments().get("was")));
    assertEquals("50 s", Words.fact(finding.arguments().get("limit")));
    assertEquals(Winter.weekPath(1), finding.place());
    assertEquals(3, finding.places().size());
  }

  @Test
  void theNumbersAreThoseOfTheWorstPlaceAndPlacesKeepTheirOrder() {
    Winter winter = new Winter().rules("club");
    winter.session(0, line(FRONT_TWO, 50).sets(6));
    winter.session(7, line(FRONT_TWO, 50).sets(9));
    winter.session(14, line(FRONT_TWO, 50).sets(9)).session(21, line(FRONT_TWO, 50).sets(7));
    Finding finding = winter.check(CLUB).get(0);
    assertEquals("90 s", Words.fact(finding.arguments().get("was")));
    assertEquals(Winter.weekPath(2).without("for"), finding.arguments().get("worst"));
    assertEquals(Winter.weekPath(1), finding.place());
    assertEquals(List.of(1, 2, 3, 4).stream().map(Winter::weekPath).toList(), finding.places());
  }

  @Test
  void equalPlacesHaveNoWorst() {
    assertFalse(splitWeeks().check(CLUB).get(0).arguments().containsKey("worst"));
  }

  @Test
  void ofSeveralElementsTheWorstOfAllPlacesIsReported() {
    RuleSet club = RuleSet.of("club", FINGER_TIME);
    Winter winter = new Winter().rules("club");
    winter.session(0, line(HALF_CRIMP, 50).sets(4));
    winter.session(7, line(HALF_CRIMP, 50).sets(3), line(FRONT_TWO, 50).sets(3));
    Finding finding = winter.check(club).get(0);
    assertEquals("60 s", Words.fact(finding.arguments().get("was")));
    assertEquals(Winter.weekPath(2).without("for"), finding.arguments().get("worst"));
  }

  @Test
  void aSetThatThePlanDoesNotNameDoesNotApply() {
    RuleSet other = RuleSet.of("other", SPLIT_TIME);
    assertEquals(List.of("warning rule.split-time"), splitWeeks().codes(other, CLUB));
    assertEquals(List.of(), new Winter().session(0, line(FRONT_TWO, 50).sets(6)).codes(CLUB));
  }

  @Test
  void aWaiverAcceptsItsPlacesAndLeavesTheOthers() {
    List<Finding> findings = splitWeeks().waive("split-time", "base", 3).check(CLUB);
    assertEquals(
        List.of("warning rule.split-time", "waived warning rule.split-time"),
        findings.stream().map(Winter::code).toList());
    assertEquals(2, findings.get(0).places().size());
    assertEquals(Winter.weekPath(3), findings.get(1).place());
    assertEquals(Optional.of("watched by the coach"), findings.get(1).waivedBecause());
  }

  @Test
  void aWaivedErrorKeepsItsSeverityAndDoesNotBlock() {
    Winter winter = new Winter().athlete(a -> a.trained(3)).session(0, line(FRONT_TWO, 50));
    assertTrue(winter.check().get(0).blocks());
    winter.waive("split-grip-gate");
    assertEquals(List.of("waived rule.split-grip-gate"), winter.codes());
    assertEquals(0, winter.check().stream().filter(Finding::blocks).count());
  }

  @Test
  void aWaiverThatWaivesNothingIsAWarningAtTheWaiver() {
    List<Finding> findings =
        splitWeeks()
            .waive("split-time")
            .waive("split-time", "build", 1)
            .waive("no-such")
            .check(CLUB);
    assertEquals(
        List.of(
            "waived warning rule.split-time",
            "warning plan.waiver-unused",
            "warning plan.waiver-unused"),
        findings.stream().map(Winter::code).toList());
    assertEquals("plan winter / waiver 2", findings.get(1).place().toString());
    assertEquals("no-such", findings.get(2).arguments().get("rule"));
  }

  @Test
  void aRuleThatIsNeverWaivedStillApplies() {
    Winter child =
        new Winter()
            .athlete(a -> a.born(MONDAY.minusYears(14)))
            .session(0, line(HALF_CRIMP, 70).bodyMass(80))
            .waive("youth-level");
    assertEquals(
        List.of("rule.youth-level", "warning rule.youth-light-work", "plan.waiver-refused"),
        child.codes());
    assertEquals("plan winter / waiver 1", child.check().get(2).place().toString());
  }

  @Test
  void wrongNamesOfAPlanBuiltInJavaAreReported() {
    assertEquals(
        List.of("name.unknown"),
        new Winter().rules("nowhere").session(0, line(HALF_CRIMP, 50)).codes());
    Rule namesake =
        Rule.advice("youth-level", Scope.EXERCISE)
            .require(new Condition.Truth(true))
            .message("nothing")
            .build();
    assertEquals(
        List.of("name.doubled"),
        new Winter()
            .rules("mine")
            .session(0, line(HALF_CRIMP, 50))
            .codes(RuleSet.of("mine", namesake)));
  }

  @Test
  void namesAreThoseThatAWaiverCanName() {
    List<String> names = RuleCheck.names(splitWeeks().compiled().plan(), List.of(CLUB));
    assertTrue(names.contains("split-time") && names.contains("week-load-rise"), names.toString());
    assertEquals(names.stream().sorted().toList(), names);
  }

  @Test
  void everyScopeIsChecked() {
    Winter winter =
        new Winter()
            .rules("all")
            .session(0, line(HALF_CRIMP, 50), line(FRONT_TWO, 50))
            .session(10, line(HALF_CRIMP, 50))
            .climbing(3);
    Rule[] rules = new Rule[Scope.values().length];
    for (Scope scope : Scope.values()) {
      rules[scope.ordinal()] =
          Rule.advice("never-" + scope.kind().word(), scope)
              .require(new Condition.Truth(false))
              .message("always broken")
              .build();
    }
    List<Finding> findings = winter.check(RuleSet.of("all", rules));
    assertEquals(3, places(findings, "exercise").size());
    assertEquals(2, places(findings, "session").size());
    assertEquals(3, places(findings, "day").size());
    assertEquals(8, places(findings, "week").size());
    assertEquals(2, places(findings, "block").size());
    assertEquals(
        List.of(ModelPath.of("plan", "winter").then("for", "tove")), places(findings, "plan"));
    // Three pairs, two of them placed at the later session: each line is reported once a day.
    assertEquals(2, places(findings, "pair").size());
  }

  private static List<ModelPath> places(List<Finding> findings, String kind) {
    return findings.stream()
        .filter(f -> f.code().equals("rule.never-" + kind))
        .flatMap(f -> f.places().isEmpty() ? List.of(f.place()).stream() : f.places().stream())
        .toList();
  }

  @Test
  void pairsAreCheckedForFourteenDaysUnlessTheRuleHasLess() {
    Expression pair = subject(Kind.PAIR);
    Rule any =
        Rule.advice("no-two", Scope.PAIR_OF_SESSIONS)
            .require(pair.get("gap").lessThan(amount(0, Unit.HOUR)))
            .message("two sessions")
            .build();
    RuleSet set = RuleSet.of("mine", any);
    assertEquals(1, twoSessions(14).codes(set).size());
    assertEquals(0, twoSessions(15).codes(set).size());
  }

  private static Winter twoSessions(int days) {
    return new Winter()
        .rules("mine")
        .session(0, line(HALF_CRIMP, 50))
        .session(days, line(HALF_CRIMP, 50));
  }

  @Test
  void missingValuesMakeARuleNotApply() {
    Rule rule =
        Rule.error("no-rise", Scope.WEEK)
            .require(WEEK.get("load").atMost(WEEK.get("previous").get("load")))
            .message("the load rises")
            .build();
    Winter winter =
        new Winter()
            .rules("mine")
            .session(0, line(HALF_CRIMP, 50))
            .session(14, line(HALF_CRIMP, 51));
    assertEquals(
        List.of(Winter.weekPath(3)),
        winter.check(RuleSet.of("mine", rule)).stream().map(Finding::place).toList(),
        "week 1 has no previous one, and week 2 has no session to rise");
  }

  @Test
  void theFirstSideThatFailsIsMeasured() {
    Expression exercise = subject(Kind.EXERCISE);
    Rule rule =
        Rule.error("both", Scope.EXERCISE)
            .require(
                exercise
                    .get("edge")
                    .atLeast(amount(10, Unit.MILLIMETRE))
                    .and(exercise.get("level").atMost(percentOfMax(40))))
            .message("too much")
            .build();
    Finding finding =
        new Winter()
            .rules("mine")
            .session(0, line(HALF_CRIMP, 50))
            .check(RuleSet.of("mine", rule))
            .get(0);
    assertEquals("50 % max", Words.fact(finding.arguments().get("was")));
    assertEquals("40 % max", Words.fact(finding.arguments().get("limit")));
  }

  @Test
  void aFindingAboutThePlanAsAWholeHasNoListOfPlaces() {
    Rule long8 =
        Rule.advice("short", Scope.PLAN)
            .require(subject(Kind.PLAN).get("length").atMost(amount(7, Unit.WEEK)))
            .message("more than seven weeks")
            .build();
    Finding finding = new Winter().rules("mine").check(RuleSet.of("mine", long8)).get(0);
    assertEquals("rule.short", finding.code());
    assertEquals(List.of(), finding.places());
  }

  @Test
  void findingsOfOneDayAreInOrderOfTheirPlaceInThePlan() {
    Rule never =
        Rule.advice("never", Scope.SESSION)
            .require(new Condition.Truth(false))
            .message("always broken")
            .build();
    List<Finding> findings =
        new Winter()
            .rules("mine")
            .session("power", 0, line(HALF_CRIMP, 50))
            .session("base", 0, line(HALF_CRIMP, 50))
            .check(RuleSet.of("mine", never));
    assertEquals(
        List.of("base", "power"),
        findings.stream().map(f -> f.place().steps().get(4).name()).toList());
  }

  private static final Expression GAP = subject(Kind.PAIR).get("gap");

  private static List<String> datesOfPairs(Winter winter, Expression require) {
    Rule rule =
        Rule.advice("pairs", Scope.PAIR_OF_SESSIONS)
            .require(require)
            .message("two that do not go together")
            .build();
    return winter.rules("mine").check(RuleSet.of("mine", rule)).stream()
        .filter(f -> f.code().equals("rule.pairs"))
        .flatMap(f -> f.places().stream())
        .map(p -> p.steps().get(p.steps().size() - 1).name())
        .toList();
  }

  @Test
  void placesOfPairsAreInOrderOfDate() {
    Winter winter = new Winter();
    for (int day : new int[] {0, 2, 3, 5}) {
      winter.session(day, line(HALF_CRIMP, 50));
    }
    // Of Monday's pairs only that with Saturday is broken, and of Wednesday's that with Thursday.
    assertEquals(
        List.of("2027-01-07", "2027-01-09"),
        datesOfPairs(
            winter, GAP.notEqualTo(amount(5, Unit.DAY)).and(GAP.notEqualTo(amount(1, Unit.DAY)))));
  }

  @Test
  void aPairIsPlacedAtItsSessionOrElseAtItsTest() {
    Expression never = GAP.lessThan(amount(0, Unit.HOUR));
    assertEquals(
        List.of("2027-01-07"), datesOfPairs(new Winter().climbing(1).retest(3, HALF_CRIMP), never));
    assertEquals(
        List.of("2027-01-05"), datesOfPairs(new Winter().retest(1, HALF_CRIMP).climbing(3), never));
    assertEquals(
        List.of("2027-01-04"),
        datesOfPairs(new Winter().session(0, line(HALF_CRIMP, 50)).retest(3, HALF_CRIMP), never));
    assertEquals(
        List.of("2027-01-08"),
        datesOfPairs(new Winter().retest(3, HALF_CRIMP).session(4, line(HALF_CRIMP, 50)), never));
    assertEquals(List.of(), datesOfPairs(new Winter().climbing(1).climbing(3), never));
  }

  @Test
  void aRuleWithAGapAndAnAlternativeIsCheckedUpToTheGap() {
    Expression other = subject(Kind.PAIR).get("shared-hard-fingers").not();
    Winter winter = new Winter();
    winter.session(0, line(HALF_CRIMP, 85)).session(3, line(HALF_CRIMP, 85));
    assertEquals(
        List.of("2027-01-07"), datesOfPairs(winter, other.or(GAP.atLeast(amount(4, Unit.DAY)))));
    assertEquals(List.of(), datesOfPairs(winter, other.or(GAP.atLeast(amount(3, Unit.DAY)))));
    assertEquals(
        List.of("2027-01-07"), datesOfPairs(winter, GAP.moreThan(amount(3, Unit.DAY)).or(other)));
  }
}
