package gripwright.planning.progression;

import static gripwright.planning.Skarvdal.DRAG;
import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.FRONT_THREE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.athlete.Athlete;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.history.LogTimeline;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import gripwright.planning.load.Dose;
import gripwright.planning.load.HandFindings;
import gripwright.planning.load.Prescription;
import gripwright.planning.load.Rise;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.schedule.Cause;
import gripwright.schedule.Derivation;
import gripwright.wording.Words;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The dose of a line in a week of its block, and its explanation. */
class ProgressionTest {

  /** Five holds of 10 s on 20 mm. */
  private static final Exercise LINE = Exercise.of(HOLDS, HALF_CRIMP, EDGE);

  private Log log = Log.empty("ylva");
  private List<Cause> lost = List.of();
  private Optional<Double> easedTo = Optional.empty();
  private double returning = 1;
  private Set<String> trained = Set.of("half-crimp", "three-finger-drag");

  /** Returns the dose after this many trained weeks. */
  private Dose dose(Exercise line, Grip grip, int weeks, UnaryOperator<Block.Builder> progress) {
    Block block =
        progress
            .apply(
                Block.named("base", 12)
                    .session(SessionPlan.of("strength", 2, LINE))
                    .session(SessionPlan.of("open", 1, Exercise.of(HOLDS, DRAG, EDGE))))
            .build();
    Plan plan = Plan.named("spring").athlete("ylva").from(MONDAY).block(block).build();
    Athlete ylva = Skarvdal.ylva().build();
    List<Progression.StepOpportunity> chances = new ArrayList<>();
    for (int week = 1; week <= weeks; week++) {
      chances.add(
          new Progression.StepOpportunity(
              MONDAY.plusWeeks(week - 1L), MONDAY.plusWeeks(week), trained));
    }
    return new Progression(
            block.content(), new Prescription(ylva, log, MONDAY, new HandFindings(ylva)))
        .dose(
            line,
            grip,
            new Progression.Week(
                MONDAY.plusWeeks(weeks),
                chances,
                lost,
                easedTo,
                new Progression.Returning(returning, Optional.of(new Cause.AfterPain())),
                Rise.of(0),
                ProgressionBlockers.of(plan, LogTimeline.of(plan, ylva, log)),
                Optional.empty()));
  }

  private Dose dose(int weeks, Advance advance) {
    return dose(LINE, HALF_CRIMP, weeks, b -> b.advance(advance));
  }

  private static String derivation(Dose dose) {
    return dose.why().stream().map(ProgressionTest::derivation).collect(Collectors.joining(" | "));
  }

  private static String derivation(Derivation link) {
    return Words.step(link)
        + " "
        + gripwright.quantity.Numbers.plain(link.value(), 3)
        + (Words.unit(link).isEmpty() ? "" : " " + Words.unit(link))
        + ": "
        + Words.say(link);
  }

  @Test
  void loadGrowsByAShareOfThePreviousLoad() {
    Advance advance = Advance.weekly(Advance.loadByPercent(2));
    assertEquals(1, dose(0, advance).loadFactor());
    assertEquals("", derivation(dose(0, advance)));
    assertEquals(1.02, dose(1, advance).loadFactor(), 1e-12);
    assertEquals("advance load 102 %: 1 step of 2 %", derivation(dose(1, advance)));
    assertEquals(1.0404, dose(2, advance).loadFactor(), 1e-12);
    assertEquals("advance load 104.04 %: 2 steps of 2 %", derivation(dose(2, advance)));
  }

  @Test
  void aLoadGrowsByKilograms() {
    Dose dose = dose(3, Advance.weekly(new Advance.LoadBy(Load.ofKilograms(1.25))));
    assertEquals(3.75, dose.loadStep().kilograms(), 1e-12);
    assertEquals(1, dose.loadFactor());
    assertEquals("advance load 3.75 kg: 3 steps of 1.25 kg", derivation(dose));
  }

  @Test
  void setsGrowUpToTheirLimit() {
    Advance advance = Advance.weekly(new Advance.SetsTo(8, 2));
    assertEquals(7, dose(1, advance).scheme().sets());
    assertEquals("advance sets 7: 1 step of 2", derivation(dose(1, advance)));
    assertEquals(8, dose(2, advance).scheme().sets());
    assertEquals(8, dose(5, advance).scheme().sets());
    assertEquals("advance sets 8: 2 steps of 2", derivation(dose(5, advance)));
  }

  private static double seconds(Dose dose) {
    return dose.scheme().holds().get(0).seconds();
  }

  @Test
  void holdsGrowUpToTheirLimitAndNoneGetsShorter() {
    Advance advance =
        Advance.weekly(new Advance.HoldTo(Duration.ofSeconds(13), Duration.ofMillis(1500)));
    assertEquals(11.5, seconds(dose(1, advance)));
    assertEquals("advance hold 11.5 s: 1 step of 1.5 s", derivation(dose(1, advance)));
    assertEquals(13, seconds(dose(2, advance)), "exactly");
    assertEquals(13, seconds(dose(9, advance)));
    assertEquals("advance hold 13 s: 2 steps of 1.5 s", derivation(dose(9, advance)));
    Exercise longer = LINE.with("work", Duration.ofSeconds(20));
    assertEquals(20, seconds(dose(longer, HALF_CRIMP, 3, b -> b.advance(advance))));
  }

  @Test
  void edgesGetShallowerDownToTheirLimit() {
    Advance advance =
        Advance.weekly(new Advance.EdgeTo(Length.ofMillimetres(15), Length.ofMillimetres(2)));
    assertEquals(16, dose(2, advance).edge().millimetres());
    assertEquals("advance edge 16 mm: 2 steps of 2 mm", derivation(dose(2, advance)));
    assertEquals(15, dose(3, advance).edge().millimetres());
    assertEquals(15, dose(7, advance).edge().millimetres());
    assertEquals("advance edge 15 mm: 3 steps of 2 mm", derivation(dose(7, advance)));
  }

  @Test
  void everySecondWeekTakesHalfTheSteps() {
    Advance advance = Advance.every(2, new Advance.SetsTo(9, 1));
    assertEquals(5, dose(1, advance).scheme().sets());
    assertEquals(6, dose(2, advance).scheme().sets());
    assertEquals(6, dose(3, advance).scheme().sets());
    assertEquals(7, dose(4, advance).scheme().sets());
  }

  @Test
  void eachGripAdvancesByItsOwnLine() {
    UnaryOperator<Block.Builder> both =
        b ->
            b.advance(Advance.weekly(new Advance.SetsTo(9, 1)).on("half-crimp"))
                .advance(Advance.weekly(Advance.loadByPercent(2)).on("three-finger-drag"));
    assertEquals("advance sets 6: 1 step of 1", derivation(dose(LINE, HALF_CRIMP, 1, both)));
    assertEquals("advance load 102 %: 1 step of 2 %", derivation(dose(LINE, DRAG, 1, both)));
    UnaryOperator<Block.Builder> one =
        b -> b.advance(Advance.weekly(Advance.loadByPercent(2)).on("three-finger-drag"));
    assertEquals("", derivation(dose(LINE, HALF_CRIMP, 1, one)));
  }

  @Test
  void doubleProgressionAlternatesTwoVariables() {
    Advance advance = Advance.weekly(new Advance.SetsTo(7, 1)).then(Advance.loadByPercent(2.5));
    assertEquals("advance sets 7: 2 steps of 1", derivation(dose(2, advance)));
    assertEquals("advance load 102.5 %: 1 step of 2.5 %", derivation(dose(3, advance)));
    assertEquals(
        "advance load 102.5 %: 1 step of 2.5 % | advance sets 6: 1 step of 1",
        derivation(dose(4, advance)));
  }

  @Test
  void aGripIsIntroducedInAStraightLineOverItsOwnWeeks() {
    UnaryOperator<Block.Builder> ramp =
        b -> b.introduce(HALF_CRIMP, 0.4, 3).advance(Advance.weekly(Advance.loadByPercent(2)));
    assertEquals(Optional.of(new Dose.Ramp(0.4, 0)), dose(LINE, HALF_CRIMP, 0, ramp).ramp());
    assertEquals(Optional.of(new Dose.Ramp(0.4, 0.5)), dose(LINE, HALF_CRIMP, 1, ramp).ramp());
    assertEquals(Optional.empty(), dose(LINE, HALF_CRIMP, 2, ramp).ramp());
    assertEquals(1, dose(LINE, HALF_CRIMP, 2, ramp).loadFactor(), "it arrives");
    assertEquals(1.02, dose(LINE, HALF_CRIMP, 3, ramp).loadFactor(), 1e-12);
    assertEquals(Optional.empty(), dose(LINE, DRAG, 0, ramp).ramp(), "another grip");
    trained = Set.of("three-finger-drag");
    assertEquals(
        Optional.of(new Dose.Ramp(0.4, 0)),
        dose(LINE, HALF_CRIMP, 3, ramp).ramp(),
        "weeks without the grip do not count");
  }

  @Test
  void aReturningLoadHasItsReason() {
    returning = 0.8;
    Dose dose = dose(0, Advance.weekly(Advance.loadByPercent(2)));
    assertEquals(0.8, dose.loadFactor(), 1e-12);
    assertEquals("return 80 %: first weeks after pain that stopped training", derivation(dose));
  }

  @Test
  void anEasedWeekKeepsAShareOfTheSetsAndAtLeastOne() {
    easedTo = Optional.of(0.6);
    Advance advance = Advance.weekly(new Advance.SetsTo(9, 1));
    assertEquals(3, dose(0, advance).scheme().sets());
    assertEquals("deload 3: 60 % of 5", derivation(dose(0, advance)));
    easedTo = Optional.of(0.1);
    assertEquals(1, dose(0, advance).scheme().sets());
  }

  @ParameterizedTest
  @CsvSource({
    "3, 0.6, 2",
    "3, 0.5, 1",
    "3, 0.51, 2",
    "4, 0.6, 2",
    "5, 0.7, 3",
    "2, 0.6, 1",
    "2, 0.9, 1",
    "3, 0.9, 2",
    "10, 0.95, 9",
    "5, 0.05, 1"
  })
  void easedSetsAreRoundedToTheNearestAndAreFewer(int sets, double keep, int kept) {
    easedTo = Optional.of(keep);
    Exercise line = LINE.with("sets", sets);
    assertEquals(kept, dose(line, HALF_CRIMP, 0, b -> b).scheme().sets());
  }

  private static Exercise oneHold(Duration time) {
    return LINE.with("sets", 1).with("work", time);
  }

  private Dose easedHold(long millis, double keep) {
    easedTo = Optional.of(keep);
    return dose(oneHold(Duration.ofMillis(millis)), HALF_CRIMP, 0, b -> b);
  }

  @Test
  void anEasedSingleSetKeepsAShareOfItsHold() {
    Dose dose = easedHold(9_000, 0.5);
    assertEquals(4, seconds(dose), "whole seconds");
    assertEquals("deload 4 s: 50 % of the hold of the one set", derivation(dose));
    assertEquals(9, dose.whole().orElseThrow().holds().get(0).seconds());
    assertEquals(1, seconds(easedHold(2_000, 0.5)));
    assertEquals(0.9, seconds(easedHold(1_800, 0.5)), 1e-12, "below a second it is not rounded");
    assertEquals(1, seconds(easedHold(3_000, 0.5)), 1e-12);
  }

  private static List<Cause> weeks(int... numbers) {
    return Arrays.stream(numbers).<Cause>mapToObj(Cause.WeekNotTrained::new).toList();
  }

  private void trained(int week, int sets) {
    log =
        log.with(
            new LogEntry.Trained(
                MONDAY.plusDays(7L * (week - 1) + 1),
                "strength",
                List.of(
                    LogEntry.Done.builder("single-holds", Setup.of(HALF_CRIMP, EDGE))
                        .sets(sets)
                        .setsPlanned(5)
                        .build()),
                Optional.empty()));
  }

  @Test
  void preventedStepsHaveAtMostThreeReasons() {
    Advance advance = Advance.weekly(Advance.loadByPercent(2));
    lost = weeks(1);
    assertEquals(
        "held back 1 step: week 1 was not trained | advance load 102 %: 1 step of 2 %",
        derivation(dose(1, advance)));
    lost = weeks(1, 2, 3);
    assertEquals(
        "held back 3 steps: week 1 was not trained; week 2 was not trained;"
            + " week 3 was not trained",
        derivation(dose(0, advance)));
    lost = weeks(1, 2, 3, 4, 5);
    assertEquals(
        "held back 5 steps: week 1 was not trained; week 2 was not trained; week 3 was not trained;"
            + " and 2 more",
        derivation(dose(0, advance)));
    lost = weeks(1);
    trained(1, 4);
    assertEquals(
        "held back 2 steps: week 1 was not trained; 4 of 5 sets on 2027-03-02 | advance load 102 %: 1 step of 2 %",
        derivation(dose(2, advance)));
  }

  @Test
  void stepsThatALogEarnsAreNotCountedFromWeeks() {
    Advance earned =
        new Advance(
            new Advance.Progress(
                Advance.loadByPercent(2.5),
                new Advance.WhenLogged(true, OptionalDouble.empty(), OptionalDouble.empty(), 1)),
            Optional.empty(),
            Optional.empty());
    lost = weeks(1);
    assertEquals("", derivation(dose(2, earned)));
    trained(1, 5);
    assertEquals("advance load 102.5 %: 1 step of 2.5 %", derivation(dose(2, earned)));
    assertEquals("", derivation(dose(LINE, FRONT_THREE, 2, b -> b.advance(earned))));
  }
}
