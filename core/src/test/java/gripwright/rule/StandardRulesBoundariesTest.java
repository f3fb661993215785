package gripwright.rule;

import static gripwright.rule.Winter.BACK_TWO;
import static gripwright.rule.Winter.FRONT_TWO;
import static gripwright.rule.Winter.FULL_CRIMP;
import static gripwright.rule.Winter.HALF_CRIMP;
import static gripwright.rule.Winter.MIDDLE_ONE;
import static gripwright.rule.Winter.MONDAY;
import static gripwright.rule.Winter.line;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.athlete.Athlete;
import gripwright.athlete.Injury;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.grip.Prerequisites;
import gripwright.hand.Finger;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.log.LogEntry;
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
    @CsvSource({"11.99, 80, false", "11.99, 79.9, true", "12, 80, true"})
    void theFirstYearStaysBelowEightyPerCent(double months, double percent, boolean allowed) {
      assertEquals(
          allowed ? NOTHING : List.of("warning rule.first-year-ceiling"),
          trained(months, "14").session(0, line(HALF_CRIMP, percent)).codes());
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
    void theFirstFailedGateIsReportedAlone() {
      Winter winter =
          trained(3, "13").session(0, line(FRONT_TWO, 84)).session(7, line(FRONT_TWO, 84));
      assertEquals(List.of("rule.split-grip-gate"), winter.codes());
      assertEquals(2, winter.check().get(0).places().size());
    }

    @Test
    void aGateSilencesOnlyItsOwnExercise() {
      Winter winter = trained(3, "13").session(0, line(FRONT_TWO, 84), line(HALF_CRIMP, 84));
      assertEquals(
          List.of("rule.split-grip-gate", "warning rule.first-year-ceiling"), winter.codes());
    }

    private Winter trained(double months, String ircra) {
      return new Winter()
          .athlete(a -> a.trained(months).ability(Ability.of(GradeScale.IRCRA, ircra)));
    }
  }

  @Nested
  class Youth {
    private final LocalDate sixteenToday = MONDAY.minusYears(16);

    @Test
    void theDayBeforeTheSixteenthBirthdayIsUnderSixteen() {
      assertEquals(
          List.of("rule.youth-added-load", "rule.youth-level"),
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
          allowed ? NOTHING : List.of("rule.youth-level"),
          child().session(0, line(HALF_CRIMP, percent).bodyMass(bodyMass)).codes());
    }

    @ParameterizedTest
    @CsvSource({"50, true", "49.9, false"})
    void anyAddedLoadIsTooMuch(double bodyMass, boolean allowed) {
      assertEquals(
          allowed ? NOTHING : List.of("rule.youth-added-load"),
          child().session(0, line(HALF_CRIMP, 50).bodyMass(bodyMass)).codes());
    }

    @ParameterizedTest
    @CsvSource({"18, true", "17.9, false"})
    void edges(double millimetres, boolean allowed) {
      assertEquals(
          allowed ? NOTHING : List.of("rule.youth-edge"),
          child().session(0, line(HALF_CRIMP, 50).edge(millimetres)).codes());
    }

    @Test
    void splitAndSingleAreRefusedOnceAndNotByTheGatesToo() {
      Winter winter =
          child()
              .athlete(a -> a.trained(2).ability(Ability.of(GradeScale.IRCRA, "10")))
              .session(0, line(FRONT_TWO, 40), line(MIDDLE_ONE, 40));
      assertEquals(List.of("rule.youth-grip", "rule.youth-grip"), winter.codes());
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
    void theOtherHandAloneIsSpared() {
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
      "9, SHARP, 14, true"
    })
    void strongPainCountsAlikeForFourteenDays(
        double score, LogEntry.Pain.Kind kind, int daysLater, boolean allowed) {
      Winter winter =
          new Winter().log(pain(MONDAY, score, kind)).session(daysLater, line(HALF_CRIMP, 50));
      assertEquals(allowed ? NOTHING : List.of("rule.painful-finger"), winter.codes());
    }

    @Test
    void painOfAnInjuryThatIsWrittenDownIsTheInjurys() {
      Winter winter =
          injured(Optional.empty(), Optional.empty())
              .log(pain(MONDAY, 8, LogEntry.Pain.Kind.SHARP))
              .session(1, line(HALF_CRIMP, 50));
      assertEquals(List.of("rule.injured-finger"), winter.codes());
    }

    private LogEntry pain(LocalDate day, double score, LogEntry.Pain.Kind kind) {
      return new LogEntry.Pain(
          day, Finger.MIDDLE, Optional.empty(), Optional.empty(), score, kind, Optional.empty());
    }

    private Winter injured(Optional<Side> side, Optional<LocalDate> cleared) {
      return injured(side, MONDAY.minusDays(200), cleared);
    }

    private Winter injured(LocalDate from, Optional<LocalDate> cleared) {
      return injured(Optional.empty(), from, cleared);
    }

    private Winter injured(Optional<Side> side, LocalDate from, Optional<LocalDate> cleared) {
      Injury injury =
          new Injury(Finger.MIDDLE, Structure.A2, side, from, cleared, Optional.empty());
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
    void easedAndEmptyWeeksAndOtherBlocksAreNoMeasure() {
      assertEquals(
          NOTHING,
          new Winter()
              .eased(2)
              .session(0, line(HALF_CRIMP, 50))
              .session(7, line(HALF_CRIMP, 50).sets(1))
              .session(21, line(HALF_CRIMP, 54))
              .session(28, line(HALF_CRIMP, 75))
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
