package gripwright.rule;

import static gripwright.rule.Winter.BACK_TWO;
import static gripwright.rule.Winter.FRONT_TWO;
import static gripwright.rule.Winter.FULL_CRIMP;
import static gripwright.rule.Winter.HALF_CRIMP;
import static gripwright.rule.Winter.MIDDLE_ONE;
import static gripwright.rule.Winter.MONDAY;
import static gripwright.rule.Winter.line;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.athlete.Athlete;
import gripwright.athlete.Injury;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.grip.Prerequisites;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.log.LogEntry;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.strength.StrengthTest;
import gripwright.wording.Wording;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Each built-in rule at its boundary. The numbers are those of the language's definition; youth
 * starts at 16 after Morrison and Schoeffl 2007, the rest is common practice.
 */
class StandardRulesBoundariesTest {

  private static final List<String> NOTHING = List.of();

  private static StrengthTest heldOn(LocalDate day) {
    return new StrengthTest(
        day,
        Setup.of(HALF_CRIMP, Length.ofMillimetres(20)),
        new StrengthTest.Held(Duration.ofSeconds(7), Load.ofKilograms(80)));
  }

  @Test
  void aPlainPlanBreaksNothing() {
    assertEquals(NOTHING, new Winter().session(0, line(HALF_CRIMP, 84)).codes());
  }

  @Nested
  class Gates {

    @ParameterizedTest
    @CsvSource({"24, 18, true", "23.99, 18, false", "24, 17, false", "120, 32, true"})
    void splitGrips(double months, String ircra, boolean allowed) {
      Winter winter = trained(months, ircra).session(0, line(FRONT_TWO, 50));
      assertEquals(allowed ? NOTHING : List.of("rule.split-grip-gate"), winter.codes());
    }

    @ParameterizedTest
    @CsvSource({"60, 24, true", "59.99, 24, false", "60, 23, false"})
    void singleFingers(double months, String ircra, boolean allowed) {
      Winter winter = trained(months, ircra).session(0, line(MIDDLE_ONE, 50));
      assertEquals(allowed ? NOTHING : List.of("rule.single-finger-gate"), winter.codes());
    }

    @Test
    void trainingGrowsWithTheCalendar() {
      Winter winter = trained(23, "18");
      winter.session(28, line(FRONT_TWO, 50)).session(35, line(FRONT_TWO, 50));
      assertEquals(
          List.of("2027-02-01"),
          winter.check().get(0).places().stream().map(p -> p.steps().get(5).name()).toList(),
          "28 days are not a month, 35 are");
      assertEquals(List.of("rule.split-grip-gate"), winter.codes());
    }

    @ParameterizedTest
    @CsvSource({"80, true", "80.1, false"})
    void fullCrimpStopsAtEightyPerCent(double percent, boolean allowed) {
      assertEquals(
          allowed ? NOTHING : List.of("rule.full-crimp-ceiling"),
          new Winter().session(0, line(FULL_CRIMP, percent)).codes());
    }

    @ParameterizedTest
    @CsvSource({"80, true", "80.1, false"})
    void singleFingersStopAtEightyPerCent(double percent, boolean allowed) {
      assertEquals(
          allowed ? NOTHING : List.of("rule.single-finger-ceiling"),
          new Winter().session(0, line(MIDDLE_ONE, percent)).codes());
    }

    @ParameterizedTest
    @CsvSource({
      "HALF, 80, 3.9, rule.edge-tiny",
      "HALF, 80, 4, warning rule.edge-small",
      "HALF, 80, 6, warning rule.edge-small",
      "HALF, 80, 6.1,",
      "HALF, 80, 60,",
      "HALF, 80, 60.1, warning rule.edge-wide",
      "HALF, 24, 6, warning rule.edge-small",
      "HALF, 23.9, 6, rule.edge-small-ceiling",
      "HALF, 23.9, 6.1,",
      "HALF, 23.9, 3.9, rule.edge-tiny rule.edge-small-ceiling",
      "FULL, 80, 6, rule.edge-small-ceiling",
      "FULL, 80, 6.1,",
      "ONE, 80, 6, rule.edge-small-ceiling",
      "ONE, 80, 6.1,",
      "TWO, 80, 6, warning rule.edge-small"
    })
    void edges(String grip, double months, double edge, String codes) {
      Grip held =
          switch (grip) {
            case "FULL" -> FULL_CRIMP;
            case "ONE" -> MIDDLE_ONE;
            case "TWO" -> FRONT_TWO;
            default -> HALF_CRIMP;
          };
      assertEquals(
          codes == null ? "" : codes,
          String.join(" ", trained(months, "26").session(0, line(held, 50).edge(edge)).codes()));
    }

    @ParameterizedTest
    @CsvSource({"11.99, 80, false", "11.99, 79.9, true", "12, 80, true"})
    void theFirstYearStaysBelowEightyPerCent(double months, double percent, boolean allowed) {
      assertEquals(
          allowed ? NOTHING : List.of("warning rule.first-year-ceiling"),
          trained(months, "14").session(0, line(HALF_CRIMP, percent)).codes());
    }

    @ParameterizedTest
    @CsvSource({
      "HALF, 11.99, first-year-failure",
      "HALF, 12,",
      "FULL, 120, full-crimp-failure",
      "ONE, 120, single-finger-failure"
    })
    void holdsToFailure(String grip, double months, String code) {
      Grip held =
          switch (grip) {
            case "FULL" -> FULL_CRIMP;
            case "ONE" -> MIDDLE_ONE;
            default -> HALF_CRIMP;
          };
      assertEquals(NOTHING, trained(months, "26").session(0, line(held, 40)).codes());
      assertEquals(
          code == null ? NOTHING : List.of("warning rule." + code),
          trained(months, "26").session(0, line(held, 40).toFailure()).codes());
    }

    @ParameterizedTest
    @CsvSource({"6, true", "5.9, false"})
    void aGripsOwnNeeds(double familiarMonths, boolean allowed) {
      Grip demanding =
          Grip.named("low-open")
              .family(GripFamily.OPEN)
              .fingers(Finger.INDEX, Finger.MIDDLE, Finger.RING)
              .needs(
                  new Prerequisites(
                      36,
                      Optional.of(Ability.of(GradeScale.FRENCH, "7a")),
                      Map.of("half-crimp", 6.0)))
              .build();
      Winter winter =
          new Winter()
              .athlete(a -> a.familiar("half-crimp", familiarMonths))
              .session(0, line(demanding, 50));
      assertEquals(allowed ? NOTHING : List.of("rule.grip-needs-gate"), winter.codes());
    }

    @Test
    void aClosedGateDoesNotHideALimit() {
      Winter winter =
          trained(3, "13").session(0, line(FRONT_TWO, 84)).session(7, line(FRONT_TWO, 84));
      assertEquals(
          List.of("rule.split-grip-gate", "warning rule.first-year-ceiling"), winter.codes());
      assertEquals(2, winter.check().get(0).places().size());
    }

    @Test
    void aWaivedGateDoesNotHideALimit() {
      Winter winter = trained(30, "20").session(0, line(MIDDLE_ONE, 90));
      winter.waive("single-finger-gate");
      assertEquals(
          List.of("waived rule.single-finger-gate", "rule.single-finger-ceiling"), winter.codes());
    }

    @ParameterizedTest
    @CsvSource({"36, true", "36.1, false"})
    void inTheFirstYearALoadOfUnknownLevelIsKnownToBeLight(double kilograms, boolean allowed) {
      assertEquals(
          allowed ? NOTHING : List.of("warning rule.first-year-ceiling"),
          trained(3, "14").session(0, unknown(HALF_CRIMP, kilograms)).codes());
    }

    @Test
    void fullCrimpAndSingleFingersNeedAKnownLevel() {
      assertEquals(
          List.of("rule.full-crimp-ceiling"),
          new Winter().session(0, unknown(FULL_CRIMP, 36.1)).codes());
      assertEquals(NOTHING, new Winter().session(0, unknown(FULL_CRIMP, 36)).codes());
      assertEquals(
          List.of("rule.single-finger-ceiling"),
          new Winter().session(0, unknown(MIDDLE_ONE, 5)).codes());
    }

    @ParameterizedTest
    @CsvSource({"28, true", "27, false", "21, false"})
    void testsOfTheFirstYearAreFourWeeksApart(int second, boolean allowed) {
      Winter winter = trained(3, "14").retest(0, HALF_CRIMP).retest(second, HALF_CRIMP);
      assertEquals(
          allowed
              ? List.of("advice rule.first-year-testing")
              : List.of("advice rule.first-year-testing", "warning rule.first-year-test"),
          winter.codes());
    }

    @Test
    void testsOfTheFirstYearAreOfFourFingersAndLoggedOnesCount() {
      assertEquals(
          List.of(
              "rule.split-grip-gate",
              "warning rule.first-year-test",
              "advice rule.first-year-testing"),
          trained(3, "14").retest(0, FRONT_TWO).codes());
      LogEntry before = new LogEntry.Tested(heldOn(MONDAY.minusDays(2)), Optional.empty());
      assertEquals(
          List.of("warning rule.first-year-test", "advice rule.first-year-testing"),
          trained(3, "14").log(before).retest(0, HALF_CRIMP).codes());
    }

    @Test
    void aLoggedTestBreaksNoLimit() {
      assertEquals(List.of("rule.full-crimp-ceiling"), new Winter().retest(0, FULL_CRIMP).codes());
      StrengthTest full =
          new StrengthTest(
              MONDAY.plusDays(1),
              Setup.of(FULL_CRIMP, Length.ofMillimetres(20)),
              new StrengthTest.Held(Duration.ofSeconds(7), Load.ofKilograms(80)));
      assertEquals(
          NOTHING,
          new Winter()
              .log(new LogEntry.Tested(full, Optional.empty()))
              .retest(0, FULL_CRIMP)
              .codes());
    }

    private Winter.Line unknown(Grip grip, double kilograms) {
      return line(grip, 0).inKilograms().lifted(kilograms).untested();
    }

    private Winter trained(double months, String ircra) {
      return new Winter()
          .athlete(a -> a.trained(months).ability(Ability.of(GradeScale.IRCRA, ircra)));
    }
  }

  @Nested
  class Youth {
    private static final String LIGHT_WORK = "warning rule.youth-light-work";

    private final LocalDate sixteenToday = MONDAY.minusYears(16);

    @Test
    void theDayBeforeTheSixteenthBirthdayIsUnderSixteen() {
      assertEquals(
          List.of("rule.youth-added-load", "rule.youth-level", LIGHT_WORK),
          born(sixteenToday.plusDays(1)).session(0, line(HALF_CRIMP, 61)).codes());
    }

    @Test
    void fromTheSixteenthBirthdayOnThereIsAWarning() {
      assertEquals(
          List.of("warning rule.youth-supervision"),
          born(sixteenToday).session(0, line(HALF_CRIMP, 70)).codes());
    }

    @ParameterizedTest
    @CsvSource({"1, true", "0, false"})
    void theEighteenthBirthdayEndsIt(int daysToGo, boolean supervised) {
      assertEquals(
          supervised ? List.of("warning rule.youth-supervision") : NOTHING,
          born(MONDAY.minusYears(18).plusDays(daysToGo)).session(0, line(HALF_CRIMP, 70)).codes());
    }

    @ParameterizedTest
    @CsvSource({"60, 80, false", "59.9, 80, true"})
    void sixtyPerCentIsTooMuch(double percent, double bodyMass, boolean allowed) {
      assertEquals(
          allowed ? List.of(LIGHT_WORK) : List.of("rule.youth-level", LIGHT_WORK),
          child().session(0, line(HALF_CRIMP, percent).bodyMass(bodyMass)).codes());
    }

    @ParameterizedTest
    @CsvSource({"50, true", "49.9, false"})
    void anyAddedLoadIsTooMuch(double bodyMass, boolean allowed) {
      assertEquals(
          allowed ? List.of(LIGHT_WORK) : List.of("rule.youth-added-load", LIGHT_WORK),
          child().session(0, line(HALF_CRIMP, 50).bodyMass(bodyMass)).codes());
    }

    @ParameterizedTest
    @CsvSource({"18, true", "17.9, false"})
    void edges(double millimetres, boolean allowed) {
      assertEquals(
          allowed ? List.of(LIGHT_WORK) : List.of(LIGHT_WORK, "rule.youth-edge"),
          child().session(0, line(HALF_CRIMP, 50).edge(millimetres)).codes());
    }

    @Test
    void splitAndSingleAreRefusedOnceAndNotByTheGatesToo() {
      Winter winter =
          child()
              .athlete(a -> a.trained(2).ability(Ability.of(GradeScale.IRCRA, "10")))
              .session(0, line(FRONT_TWO, 40), line(MIDDLE_ONE, 40));
      assertEquals(List.of(LIGHT_WORK, "rule.youth-grip", "rule.youth-grip"), winter.codes());
    }

    @ParameterizedTest
    @CsvSource({"24, true", "24.1, false"})
    void withoutATestTheLoadIsKnownToBeLight(double kilograms, boolean allowed) {
      assertEquals(
          allowed ? List.of(LIGHT_WORK) : List.of("rule.youth-level", LIGHT_WORK),
          child()
              .session(0, line(HALF_CRIMP, 0).inKilograms().lifted(kilograms).untested())
              .codes());
    }

    @Test
    void aKnownLevelCountsMoreThanALightLoad() {
      assertEquals(
          List.of("rule.youth-level", LIGHT_WORK),
          child().session(0, line(HALF_CRIMP, 60).lifted(24)).codes());
    }

    @Test
    void aPlannedTestIsOneErrorAndALoggedOneAWarning() {
      assertEquals(List.of("rule.youth-test"), child().retest(0, HALF_CRIMP).codes());
      LogEntry test = new LogEntry.Tested(heldOn(MONDAY.plusDays(2)), Optional.empty());
      assertEquals(
          List.of("warning rule.youth-logged-tests"),
          child().log(test).retest(0, HALF_CRIMP).codes());
    }

    @Test
    void fullCrimpIsRefusedAtEveryLoad() {
      assertEquals(
          List.of("rule.youth-full-crimp", LIGHT_WORK),
          child().session(0, line(FULL_CRIMP, 30)).codes());
    }

    @ParameterizedTest
    @CsvSource({"10, true", "11, false"})
    void holdsOfAHandInASession(int sets, boolean allowed) {
      assertEquals(
          allowed ? List.of(LIGHT_WORK) : List.of("rule.youth-session-holds", LIGHT_WORK),
          child()
              .session(
                  0,
                  line(HALF_CRIMP, 10).hands(Hands.LEFT).sets(sets),
                  line(HALF_CRIMP, 10).hands(Hands.RIGHT).sets(5))
              .codes());
    }

    @ParameterizedTest
    @CsvSource({"7, true", "6, false", "3, false"})
    void sessionsOfAWeek(int third, boolean allowed) {
      assertEquals(
          allowed ? List.of(LIGHT_WORK) : List.of(LIGHT_WORK, "rule.youth-week-sessions"),
          child()
              .session("one", 0, line(HALF_CRIMP, 40))
              .session("two", 2, line(HALF_CRIMP, 40))
              .session("three", third, line(HALF_CRIMP, 40))
              .codes());
    }

    @Test
    void sevenDaysInARowAreAWeekWhereverTheyBegin() {
      assertEquals(
          List.of(LIGHT_WORK, "rule.youth-week-sessions"),
          child()
              .session("one", 4, line(HALF_CRIMP, 40))
              .session("two", 6, line(HALF_CRIMP, 40))
              .session("three", 8, line(HALF_CRIMP, 40))
              .codes());
    }

    @ParameterizedTest
    @CsvSource({"1, true", "0, false"})
    void sessionsOfADay(int second, boolean allowed) {
      assertEquals(
          allowed ? List.of(LIGHT_WORK) : List.of("rule.youth-day-sessions", LIGHT_WORK),
          child()
              .session("one", 0, line(HALF_CRIMP, 40))
              .session("two", second, line(HALF_CRIMP, 40))
              .codes());
    }

    @ParameterizedTest
    @CsvSource({"0, true", "1, false"})
    void underTwelveNothingIsPlanned(int daysToGo, boolean allowed) {
      assertEquals(
          allowed ? List.of(LIGHT_WORK) : List.of("rule.youth-under-12", LIGHT_WORK),
          born(MONDAY.minusYears(12).plusDays(daysToGo)).session(0, line(HALF_CRIMP, 40)).codes());
    }

    @ParameterizedTest
    @CsvSource({"4, true", "5, false"})
    void daysOfHardClimbingInAWeek(int days, boolean allowed) {
      Winter winter = child();
      for (int day = 0; day < days; day++) {
        winter.climbing(day);
      }
      assertEquals(allowed ? NOTHING : List.of("warning rule.youth-climbing"), winter.codes());
    }

    @ParameterizedTest
    @CsvSource({"1, GROWTH_PLATE, false", "0, GROWTH_PLATE, true", "3, PIP, false", "3, A2, true"})
    void painOfAGrowingJoint(double score, Structure structure, boolean allowed) {
      LogEntry pain =
          LogEntry.Pain.builder(MONDAY.minusDays(20), Finger.RING, score)
              .structure(structure)
              .build();
      assertEquals(
          allowed
              ? List.of("warning rule.youth-supervision")
              : List.of("rule.growing-joint-pain", "warning rule.youth-supervision"),
          born(MONDAY.minusYears(17)).log(pain).session(0, line(HALF_CRIMP, 40)).codes());
    }

    private Winter born(LocalDate day) {
      return new Winter().athlete(a -> a.born(day));
    }

    private Winter child() {
      return born(MONDAY.minusYears(15));
    }
  }

  @Nested
  class Injuries {

    @Test
    void anOpenInjuryStopsEveryGripWithThatFinger() {
      Winter winter =
          injured(Optional.of(Side.LEFT), Optional.empty())
              .session(0, line(HALF_CRIMP, 30), line(FRONT_TWO, 30), line(BACK_TWO, 30));
      assertEquals(List.of("rule.injured-finger", "rule.injured-finger"), winter.codes());
    }

    @Test
    void theOtherHandAloneIsNotAffected() {
      Winter winter = injured(Optional.of(Side.LEFT), Optional.empty());
      assertEquals(NOTHING, winter.session(0, line(HALF_CRIMP, 30).hands(Hands.RIGHT)).codes());
      assertEquals(
          List.of("rule.injured-finger"),
          winter.session(7, line(HALF_CRIMP, 30).hands(Hands.LEFT)).codes());
    }

    @Test
    void beforeItHappenedAndOnTheDayOfClearanceItIsNotOpen() {
      assertEquals(
          NOTHING,
          injured(MONDAY.plusDays(1), Optional.empty()).session(0, line(HALF_CRIMP, 84)).codes());
      assertEquals(
          NOTHING,
          injured(MONDAY.minusDays(60), Optional.of(MONDAY))
              .session(0, line(HALF_CRIMP, 50))
              .codes());
      assertEquals(
          List.of("rule.injured-finger"),
          injured(MONDAY.minusDays(60), Optional.of(MONDAY.plusDays(1)))
              .session(0, line(HALF_CRIMP, 50))
              .codes());
    }

    @Test
    void rehabilitationHasAWarningOfItsOwn() {
      assertEquals(
          List.of("warning rule.rehabilitation-exercise"),
          injured(Optional.empty(), Optional.empty())
              .session(0, line(HALF_CRIMP, 30).rehabilitation("plan of the clinic"))
              .codes());
    }

    @ParameterizedTest
    @CsvSource({"60, 83, true", "60.1, 83, false", "60.1, 84, true", "60.1, 0, false"})
    void afterClearanceTheStartIsLow(double percent, int daysSince, boolean allowed) {
      assertEquals(
          allowed ? NOTHING : List.of("rule.after-injury-start"),
          injured(MONDAY.minusDays(200), Optional.of(MONDAY.minusDays(daysSince)))
              .session(0, line(HALF_CRIMP, percent))
              .codes());
    }

    @ParameterizedTest
    @CsvSource({"24, true", "24.1, false"})
    void afterClearanceALoadOfUnknownLevelIsKnownToBeLight(double kilograms, boolean allowed) {
      assertEquals(
          allowed ? NOTHING : List.of("rule.after-injury-start"),
          injured(MONDAY.minusDays(200), Optional.of(MONDAY.minusDays(7)))
              .session(0, line(HALF_CRIMP, 0).inKilograms().lifted(kilograms).untested())
              .codes());
    }

    @ParameterizedTest
    @CsvSource({"63, true", "63.1, false"})
    void afterClearanceTheRiseIsSlow(double percent, boolean allowed) {
      assertEquals(
          allowed ? NOTHING : List.of("rule.after-injury-rise"),
          injured(MONDAY.minusDays(200), Optional.of(MONDAY.minusDays(7)))
              .session(0, line(HALF_CRIMP, 60))
              .session(14, line(HALF_CRIMP, percent))
              .codes());
    }

    @ParameterizedTest
    @CsvSource({
      "5, DULL, 0, true",
      "5.5, DULL, 0, false",
      "1, SHARP, 0, false",
      "1, SUDDEN, 13, false",
      "9, SHARP, 140, false"
    })
    void strongPainCountsAlikeUntilItIsSaidToBeOver(
        double score, LogEntry.Pain.Kind kind, int daysLater, boolean allowed) {
      Winter winter =
          new Winter().log(pain(MONDAY, score, kind)).session(daysLater, line(HALF_CRIMP, 50));
      assertEquals(allowed ? NOTHING : List.of("rule.painful-finger"), winter.codes());
    }

    @ParameterizedTest
    @CsvSource({"2, 10, 12, 12, true", "2, 10, 12, 11, false", "2, 10, 11, 12, false"})
    void twoLowScoresEndTheStop(
        double score, int first, int second, int daysLater, boolean allowed) {
      Winter winter =
          new Winter()
              .log(pain(MONDAY, 9, LogEntry.Pain.Kind.SHARP))
              .log(pain(MONDAY.plusDays(first), score, LogEntry.Pain.Kind.DULL))
              .log(pain(MONDAY.plusDays(second), score, LogEntry.Pain.Kind.DULL))
              .session(daysLater, line(HALF_CRIMP, 50));
      assertEquals(allowed ? NOTHING : List.of("rule.painful-finger"), winter.codes());
    }

    private Winter over() {
      return new Winter()
          .log(pain(MONDAY.minusDays(9), 9, LogEntry.Pain.Kind.SHARP))
          .log(pain(MONDAY.minusDays(4), 1, LogEntry.Pain.Kind.DULL))
          .log(pain(MONDAY.minusDays(2), 1, LogEntry.Pain.Kind.DULL));
    }

    @ParameterizedTest
    @CsvSource({"60, 0, true", "60.1, 0, false", "60.1, 81, false", "60.1, 82, true"})
    void afterPainTheStartIsLow(double percent, int daysLater, boolean allowed) {
      assertEquals(
          allowed ? NOTHING : List.of("warning rule.after-pain-start"),
          over().session(daysLater, line(HALF_CRIMP, percent)).codes());
    }

    @Test
    void afterTheFirstWeekTheLevelIsFree() {
      assertEquals(
          NOTHING,
          over().session(0, line(HALF_CRIMP, 60)).session(14, line(HALF_CRIMP, 66)).codes());
    }

    @ParameterizedTest
    @CsvSource({"60, true", "60.1, false"})
    void rehabilitationIsLight(double percent, boolean allowed) {
      assertEquals(
          allowed
              ? List.of("warning rule.rehabilitation-exercise")
              : List.of("warning rule.rehabilitation-exercise", "rule.rehabilitation-level"),
          injured(Optional.empty(), Optional.empty())
              .session(0, line(HALF_CRIMP, percent).rehabilitation("plan of the clinic"))
              .codes());
    }

    @ParameterizedTest
    @CsvSource({
      "5, 5, DULL, true",
      "4, 6, DULL, false",
      "2, 3, DULL, false",
      "1, 2, DULL, true",
      "3, 3, SHARP, false",
      "6, 5, DULL, true"
    })
    void rehabilitationStopsWithPainThatIsTooMuch(
        double before, double now, LogEntry.Pain.Kind kind, boolean allowed) {
      assertEquals(
          allowed
              ? List.of("warning rule.rehabilitation-exercise")
              : List.of("warning rule.rehabilitation-exercise", "rule.rehabilitation-pain"),
          injured(Optional.empty(), Optional.empty())
              .log(pain(MONDAY.minusDays(200), 9, LogEntry.Pain.Kind.SUDDEN)) // the injury
              .log(pain(MONDAY.minusDays(9), before, LogEntry.Pain.Kind.DULL))
              .log(pain(MONDAY.minusDays(2), now, kind))
              .session(0, line(HALF_CRIMP, 40).rehabilitation("plan of the clinic"))
              .codes());
    }

    @ParameterizedTest
    @CsvSource({"3, 27, true", "4, 27, false", "4, 28, true"})
    void afterClearanceThereAreFewSets(int sets, int daysSince, boolean allowed) {
      assertEquals(
          allowed ? NOTHING : List.of("rule.after-injury-sets"),
          injured(MONDAY.minusDays(200), Optional.of(MONDAY.minusDays(daysSince)))
              .session(0, line(HALF_CRIMP, 50).sets(sets))
              .codes());
    }

    @ParameterizedTest
    @CsvSource({"0, false", "83, false", "84, true"})
    void afterClearanceHoldsEndBeforeFailure(int daysSince, boolean allowed) {
      assertEquals(
          allowed ? NOTHING : List.of("warning rule.after-injury-failure"),
          injured(MONDAY.minusDays(200), Optional.of(MONDAY.minusDays(daysSince)))
              .session(0, line(HALF_CRIMP, 50).toFailure())
              .codes());
    }

    @Test
    void rehabilitationEndsBeforeFailure() {
      assertEquals(
          List.of("warning rule.rehabilitation-exercise", "rule.rehabilitation-failure"),
          injured(Optional.empty(), Optional.empty())
              .session(0, line(HALF_CRIMP, 30).rehabilitation("plan of the clinic").toFailure())
              .codes());
    }

    @ParameterizedTest
    @CsvSource({"27, false", "28, true"})
    void afterClearanceFullCrimpWaits(int daysSince, boolean allowed) {
      assertEquals(
          allowed ? NOTHING : List.of("rule.after-injury-full-crimp"),
          injured(MONDAY.minusDays(200), Optional.of(MONDAY.minusDays(daysSince)))
              .session(0, line(FULL_CRIMP, 50))
              .codes());
    }

    @ParameterizedTest
    @CsvSource({"13, false", "14, true"})
    void afterClearanceTestsWait(int daysSince, boolean allowed) {
      List<String> codes =
          injured(MONDAY.minusDays(200), Optional.of(MONDAY.minusDays(daysSince)))
              .session(0, line(HALF_CRIMP, 50))
              .retest(14, HALF_CRIMP)
              .codes();
      assertEquals(allowed ? NOTHING : List.of("rule.after-injury-test"), codes);
    }

    @Test
    void hardClimbingWaitsForTheClearance() {
      assertEquals(
          List.of("rule.injured-climbing"),
          injured(MONDAY.minusDays(20), Optional.of(MONDAY.plusDays(8)))
              .climbing(6)
              .climbing(7)
              .climbing(13)
              .codes(),
          "one finding");
      assertEquals(
          NOTHING,
          injured(MONDAY.minusDays(20), Optional.of(MONDAY.plusDays(8))).climbing(8).codes());
    }

    private LogEntry.Tested tested(LocalDate day) {
      return new LogEntry.Tested(
          new StrengthTest(
              day,
              Setup.of(HALF_CRIMP, Length.ofMillimetres(20)),
              new StrengthTest.Held(Duration.ofSeconds(7), Load.ofKilograms(80))),
          Optional.empty());
    }

    @ParameterizedTest
    @CsvSource({"21, true", "20, true", "19, false", "3, false", "2, true"})
    void aTestOnAnInjuryIsReported(int daysBefore, boolean allowed) {
      assertEquals(
          allowed ? NOTHING : List.of("warning rule.injured-work-logged"),
          injured(MONDAY.minusDays(20), Optional.of(MONDAY.minusDays(2)))
              .log(tested(MONDAY.minusDays(daysBefore)))
              .session(0, line(HALF_CRIMP, 40))
              .codes());
    }

    @Test
    void clearedSkinHasNoReturnPeriod() {
      Injury skin =
          Injury.builder(Finger.MIDDLE, Structure.SKIN, MONDAY.minusDays(20))
              .cleared(MONDAY.minusDays(2))
              .build();
      assertEquals(
          NOTHING,
          new Winter().athlete(a -> a.injury(skin)).session(0, line(HALF_CRIMP, 80)).codes());
    }

    @Test
    void painOfARecordedInjuryIsNotReportedTwice() {
      Winter winter =
          injured(Optional.empty(), Optional.empty())
              .log(pain(MONDAY, 8, LogEntry.Pain.Kind.SHARP))
              .session(1, line(HALF_CRIMP, 50));
      assertEquals(List.of("rule.injured-finger"), winter.codes());
    }

    private LogEntry pain(LocalDate day, double score, LogEntry.Pain.Kind kind) {
      return LogEntry.Pain.builder(day, Finger.MIDDLE, score).kind(kind).build();
    }

    private Winter injured(Optional<Side> side, Optional<LocalDate> cleared) {
      return injured(side, MONDAY.minusDays(200), cleared);
    }

    private Winter injured(LocalDate from, Optional<LocalDate> cleared) {
      return injured(Optional.empty(), from, cleared);
    }

    private Winter injured(Optional<Side> side, LocalDate from, Optional<LocalDate> cleared) {
      Injury injury =
          Injury.builder(Finger.MIDDLE, Structure.A2, from).side(side).cleared(cleared).build();
      return new Winter().athlete((Athlete.Builder a) -> a.injury(injury));
    }
  }

  @Nested
  class LoadAndRest {

    @ParameterizedTest
    @CsvSource({"55, true", "55.1, false"})
    void aWeekRisesByTenPerCentAtMost(double percent, boolean allowed) {
      assertEquals(
          allowed ? NOTHING : List.of("warning rule.week-load-rise"),
          new Winter()
              .session(0, line(HALF_CRIMP, 50))
              .session(7, line(HALF_CRIMP, percent))
              .codes());
    }

    @ParameterizedTest
    @CsvSource({"52.5, true", "52.6, false"})
    void thePlanCanSayLess(double percent, boolean allowed) {
      assertEquals(
          allowed ? NOTHING : List.of("warning rule.week-load-rise"),
          new Winter()
              .weeklyRise(0.05)
              .session(0, line(HALF_CRIMP, 50))
              .session(7, line(HALF_CRIMP, percent))
              .codes());
    }

    @Test
    void easedAndEmptyWeeksAreNoBaseline() {
      assertEquals(
          NOTHING,
          new Winter()
              .eased(2)
              .session(0, line(HALF_CRIMP, 50))
              .session(7, line(HALF_CRIMP, 50).sets(1))
              .session(21, line(HALF_CRIMP, 54))
              .codes());
    }

    @ParameterizedTest
    @CsvSource({"50, 55, true", "50, 55.1, false", "50, 75, false", "70, 50, true"})
    void aBlockBeginsWithLittleMoreThanTheWeeksBeforeIt(
        double before, double after, boolean allowed) {
      assertEquals(
          allowed ? NOTHING : List.of("warning rule.join-load-rise"),
          new Winter()
              .session(21, line(HALF_CRIMP, before))
              .session(28, line(HALF_CRIMP, after))
              .codes());
    }

    @Test
    void somethingNewMayBeMoreWorkOrHarderButNotBoth() {
      Winter harder =
          new Winter()
              .session(21, line(HALF_CRIMP, 50).sets(4))
              .session(28, line(FULL_CRIMP, 75).sets(2));
      assertEquals(NOTHING, harder.codes());
      Winter longer =
          new Winter()
              .session(21, line(HALF_CRIMP, 50).sets(2))
              .session(28, line(FULL_CRIMP, 50).sets(4));
      assertEquals(NOTHING, longer.codes());
      Winter both =
          new Winter()
              .session(21, line(HALF_CRIMP, 50).sets(3))
              .session(28, line(FULL_CRIMP, 75).sets(3));
      assertEquals(List.of("warning rule.join-load-rise"), both.codes());
      String advice = Wording.english().advice(both.check().get(0)).orElseThrow();
      assertTrue(advice.contains(" on closed-crimp rises most"), advice);
    }

    @ParameterizedTest
    @CsvSource({"3, 4, true", "3, 5, false", "2, 3, false"})
    void oneSetMoreIsNoRiseUpToAThirdOfTheWeek(int before, int after, boolean allowed) {
      assertEquals(
          allowed ? NOTHING : List.of("warning rule.week-load-rise"),
          new Winter()
              .session(0, line(HALF_CRIMP, 50).sets(before))
              .session(7, line(HALF_CRIMP, 50).sets(after))
              .codes());
    }

    @ParameterizedTest
    @CsvSource({"2, true", "1, false", "0, false"})
    void hardDaysOnSharedFingersAreFortyEightHoursApart(int days, boolean allowed) {
      assertEquals(
          allowed ? NOTHING : List.of("warning rule.hard-days-apart"),
          new Winter()
              .session("one", 0, line(HALF_CRIMP, 80))
              .session("two", days, line(FRONT_TWO, 80))
              .codes());
    }

    @Test
    void otherFingersAndEasySessionsMayFollow() {
      assertEquals(
          NOTHING,
          new Winter()
              .session("one", 0, line(BACK_TWO, 80))
              .session("two", 1, line(FRONT_TWO, 80))
              .session("three", 2, line(HALF_CRIMP, 79))
              .codes());
    }

    @Test
    void climbingAndRetestsCount() {
      assertEquals(
          List.of("warning rule.hard-days-apart"),
          new Winter().climbing(0).session(1, line(HALF_CRIMP, 80)).codes());
      assertEquals(
          List.of("warning rule.hard-days-apart"),
          new Winter().retest(1, HALF_CRIMP).climbing(2).codes());
      assertEquals(NOTHING, new Winter().climbing(0).climbing(1).codes());
    }
  }
}
