package gripwright.season;

import static gripwright.planning.Skarvdal.DRAG;
import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.FRONT_THREE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static gripwright.planning.Skarvdal.SERIES;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.grip.Setup;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import gripwright.protocol.Level;
import gripwright.protocol.Protocol;
import gripwright.protocol.Term;
import gripwright.quantity.Load;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import gripwright.strength.StrengthTest;
import gripwright.wording.Words;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a plan becomes, line by line, against what the language says it means. */
class PlannerTest {

  private static CompiledPlan compile(Athlete athlete, Log log, Block... blocks) {
    Plan.Builder plan = Plan.named("spring").athlete("ylva").from(MONDAY);
    for (Block block : blocks) {
      plan.block(block);
    }
    return Planner.compile(plan.build(), athlete, log, List.of());
  }

  private static Block.Builder block(int weeks, Exercise... exercises) {
    return Block.named("base", weeks).session(SessionPlan.of("strength", 2, exercises));
  }

  private static Exercise holds() {
    return Exercise.of(HOLDS, HALF_CRIMP, EDGE);
  }

  private static List<Double> percents(CompiledPlan plan) {
    return plan.sessions().stream()
        .map(s -> s.exercises().get(0).percentOfMax().orElse(Double.NaN))
        .toList();
  }

  private static List<String> codes(CompiledPlan plan) {
    return plan.findings().stream()
        .map(Finding::code)
        .filter(c -> c.startsWith("plan."))
        .distinct()
        .toList();
  }

  @Test
  void sessionsKeepTheirGapOnTheDaysAvailable() {
    CompiledPlan plan =
        compile(Skarvdal.ylva().build(), Skarvdal.tested(), block(2, holds()).build());
    assertEquals(
        List.of(
            LocalDate.of(2027, 3, 2),
            LocalDate.of(2027, 3, 6),
            LocalDate.of(2027, 3, 9),
            LocalDate.of(2027, 3, 13)),
        plan.sessions().stream().map(DatedSession::date).toList());
    assertEquals(List.of(), codes(plan));
  }

  @Test
  void hardClimbingOnSundayLeavesSaturdayFree() {
    Athlete athlete =
        Skarvdal.ylva()
            .climbing(
                new Athlete.ClimbingDay(DayOfWeek.SUNDAY, true, "hard", Duration.ofMinutes(150)))
            .build();
    CompiledPlan plan = compile(athlete, Skarvdal.tested(), block(3, holds()).build());
    assertTrue(
        plan.sessions().stream().noneMatch(s -> s.date().getDayOfWeek() == DayOfWeek.SATURDAY));
    assertEquals(3, plan.climbing().size());
  }

  @Test
  void minutesAreWarmUpHoldsRestsAndChangesRoundedUp() {
    // 12 min + 5 x 10 s + 4 x 3 min + 3 min + (3 x 57 s + 2 x 2 min) = 34 min 41 s
    CompiledPlan plan =
        compile(
            Skarvdal.ylva().build(),
            Skarvdal.tested(),
            block(1, holds(), Exercise.of(SERIES, DRAG, EDGE)).build());
    assertEquals(35, plan.sessions().get(0).minutes());
  }

  @Test
  void totalIsRoundedDownToThePossibleLoads() {
    CompiledPlan plan =
        compile(Skarvdal.ylva().build(), Skarvdal.tested(), block(1, holds()).build());
    PlannedExercise exercise = plan.sessions().get(0).exercises().get(0);
    double wanted = exercise.maximum().orElseThrow().used().kilograms() * 0.84;
    double total = exercise.totalLoad().kilograms();
    assertTrue(total <= wanted && total > wanted - 1.25, total + " of " + wanted);
    assertEquals(0, (total - 60) % 1.25, 1e-9);
  }

  @Test
  void removedWeightIsRoundedUp() {
    Exercise light = holds().with("level", Level.ofMax(40));
    CompiledPlan plan =
        compile(Skarvdal.ylva().build(), Skarvdal.tested(), block(1, light).build());
    PlannedExercise exercise = plan.sessions().get(0).exercises().get(0);
    double wanted = exercise.maximum().orElseThrow().used().kilograms() * 0.4;
    assertTrue(exercise.added().kilograms() < 0);
    assertTrue(exercise.totalLoad().kilograms() <= wanted);
    assertTrue(exercise.totalLoad().kilograms() > wanted - 0.5);
  }

  @Test
  void theLoadAdvancesFromTheSecondTrainedWeekAndPausesInAnEasedOne() {
    CompiledPlan plan =
        compile(
            Skarvdal.ylva().build(),
            Skarvdal.tested(),
            block(5, holds())
                .advance(Advance.weekly(Advance.loadByPercent(2)))
                .ease(4, 0.6)
                .build());
    List<Double> weeks = percents(plan);
    double[] expected = {84, 84 * 1.02, 84 * 1.0404, 84 * 1.0404, 84 * 1.061208};
    for (int week = 0; week < 5; week++) {
      assertEquals(expected[week], weeks.get(week * 2), 1e-9, "week " + (week + 1));
    }
    assertEquals(3, plan.sessionsOf(4).get(0).exercises().get(0).scheme().sets());
    assertTrue(plan.sessionsOf(4).get(0).eased());
  }

  @Test
  void theWeekAfterAnAbsenceRepeatsTheLastTrainedWeek() {
    Athlete athlete = Skarvdal.ylva().away(away(8, 14)).build();
    CompiledPlan plan =
        compile(
            athlete,
            Skarvdal.tested(),
            block(4, holds()).advance(Advance.weekly(Advance.loadByPercent(2))).build());
    assertEquals(List.of(), plan.sessionsOf(2));
    assertTrue(plan.weeks().get(1).away());
    assertEquals(List.of("plan.week-away"), codes(plan));
    assertEquals(84, percents(plan).get(0), 1e-9);
    assertEquals(84, percents(plan).get(2), 1e-9);
    assertEquals(84 * 1.02, percents(plan).get(4), 1e-9);
  }

  @Test
  void afterTwoWeeksAwayTrainingStartsAgainLower() {
    Athlete athlete = Skarvdal.ylva().away(away(8, 21)).build();
    CompiledPlan plan = compile(athlete, Skarvdal.tested(), block(6, holds()).build());
    assertEquals(
        List.of(1, 4, 5, 6),
        plan.weeks().stream()
            .filter(w -> !plan.sessionsOf(w.number()).isEmpty())
            .map(PlanWeek::number)
            .toList());
    assertEquals(84 * 0.8, percents(plan).get(2), 1e-9);
    assertEquals(84 * 0.9, percents(plan).get(4), 1e-9);
    assertEquals(84, percents(plan).get(6), 1e-9);
  }

  @Test
  void nothingElseGetsHarderWhileALoadReturns() {
    CompiledPlan plan =
        compile(
            Skarvdal.ylva().away(away(8, 21)).build(),
            Skarvdal.tested(),
            block(9, holds())
                .advance(Advance.weekly(new Advance.SetsTo(9, 1)))
                .ease(6, 0.6)
                .build());
    assertEquals(
        List.of(
            "1: 5 at 84",
            "4: 5 at 67.2",
            "5: 5 at 75.6",
            "6: 3 at 75.6",
            "7: 5 at 84",
            "8: 6 at 84",
            "9: 7 at 84"),
        plan.weeks().stream()
            .filter(w -> !plan.sessionsOf(w.number()).isEmpty())
            .map(w -> w.number() + ": " + setsAndPercent(plan.sessionsOf(w.number()).get(0)))
            .toList());
  }

  private static String setsAndPercent(DatedSession session) {
    PlannedExercise exercise = session.exercises().get(0);
    return exercise.scheme().sets()
        + " at "
        + gripwright.quantity.Numbers.plain(exercise.percentOfMax().orElseThrow(), 2);
  }

  private static Athlete.Absence away(int fromDay, int toDay) {
    return new Athlete.Absence(
        LocalDate.of(2027, 3, fromDay), LocalDate.of(2027, 3, toDay), Optional.empty());
  }

  @Test
  void anIntroducedGripRisesInAStraightLineAndThenAdvances() {
    Exercise drag = Exercise.of(HOLDS, DRAG, EDGE).with("level", Level.ofMax(80));
    CompiledPlan plan =
        compile(
            Skarvdal.ylva().build(),
            Skarvdal.tested(),
            block(4, drag)
                .introduce(DRAG, 0.5, 3)
                .advance(Advance.weekly(Advance.loadByPercent(2)))
                .build());
    double[] expected = {50, 65, 80, 81.6};
    for (int week = 0; week < 4; week++) {
      assertEquals(expected[week], percents(plan).get(week * 2), 1e-9, "week " + (week + 1));
    }
  }

  @Test
  void rampCutShortByItsBlockIsAdvice() {
    CompiledPlan plan =
        compile(
            Skarvdal.ylva().build(),
            Skarvdal.tested(),
            block(2, holds()).introduce(HALF_CRIMP, 0.5, 3).build());
    assertEquals(List.of("plan.ramp-unfinished"), codes(plan));
  }

  @Test
  void setsHoldsAndEdgesStopAtTheirLimits() {
    CompiledPlan sets =
        compile(
            Skarvdal.ylva().build(),
            Skarvdal.tested(),
            block(4, holds()).advance(Advance.weekly(new Advance.SetsTo(6, 1))).build());
    assertEquals(
        List.of(5, 5, 6, 6, 6, 6, 6, 6),
        sets.sessions().stream().map(s -> s.exercises().get(0).scheme().sets()).toList());
    CompiledPlan longer =
        compile(
            Skarvdal.ylva().build(),
            Skarvdal.tested(),
            block(3, holds())
                .advance(
                    Advance.weekly(
                        new Advance.HoldTo(Duration.ofSeconds(12), Duration.ofSeconds(5))))
                .build());
    assertEquals(12, longer.sessionsOf(2).get(0).exercises().get(0).steps().get(0).seconds());
    CompiledPlan edge =
        compile(
            Skarvdal.ylva().build(),
            Skarvdal.tested(),
            block(3, holds())
                .advance(
                    Advance.every(
                        2,
                        new Advance.EdgeTo(
                            gripwright.quantity.Length.ofMillimetres(15),
                            gripwright.quantity.Length.ofMillimetres(5))))
                .build());
    assertEquals(20, edge.sessionsOf(2).get(0).exercises().get(0).setup().edge().millimetres());
    assertEquals(15, edge.sessionsOf(3).get(0).exercises().get(0).setup().edge().millimetres());
  }

  @Test
  void doubleProgressionStartsTheFirstVariableAgainWhenTheSecondSteps() {
    CompiledPlan plan =
        compile(
            Skarvdal.ylva().build(),
            Skarvdal.tested(),
            block(5, holds())
                .advance(Advance.weekly(new Advance.SetsTo(7, 1)).then(Advance.loadByPercent(2.5)))
                .build());
    assertEquals(
        List.of(5, 6, 7, 5, 6),
        List.of(1, 2, 3, 4, 5).stream()
            .map(w -> plan.sessionsOf(w).get(0).exercises().get(0).scheme().sets())
            .toList());
    assertEquals(84, percents(plan).get(4), 1e-9);
    assertEquals(84 * 1.025, percents(plan).get(6), 1e-9);
  }

  @Test
  void aLoggedAdvanceIsEarnedTwiceInARow() {
    Advance earned =
        new Advance(
            new Advance.Progress(
                Advance.loadByPercent(2.5),
                new Advance.WhenLogged(true, OptionalDouble.of(8), OptionalDouble.empty(), 2)),
            Optional.empty(),
            Optional.empty());
    Log log = Skarvdal.tested();
    log = log.with(done(MONDAY.plusDays(1), 5, 8)).with(done(MONDAY.plusDays(3), 5, 8));
    CompiledPlan plan =
        compile(Skarvdal.ylva().build(), log, block(3, holds()).advance(earned).build());
    assertEquals(84, percents(plan).get(0), 1e-9);
    assertEquals(84 * 1.025, percents(plan).get(2), 1e-9);
    Log tooHard =
        Skarvdal.tested()
            .with(done(MONDAY.plusDays(1), 5, 8.5))
            .with(done(MONDAY.plusDays(3), 5, 8));
    assertEquals(
        84,
        percents(
                compile(
                    Skarvdal.ylva().build(), tooHard, block(3, holds()).advance(earned).build()))
            .get(2),
        1e-9);
  }

  private static LogEntry done(LocalDate date, int sets, double effort) {
    return new LogEntry.Trained(
        date,
        "strength",
        List.of(
            LogEntry.Done.builder("single-holds", Setup.of(HALF_CRIMP, EDGE))
                .sets(sets)
                .setsPlanned(5)
                .effort(effort)
                .build()),
        Optional.empty());
  }

  @Test
  void aStepPastTheMaximumIsAnError() {
    CompiledPlan plan =
        compile(
            Skarvdal.ylva().build(),
            Skarvdal.tested(),
            block(6, holds()).advance(Advance.weekly(Advance.loadByPercent(5))).build());
    Finding finding =
        plan.findings().stream()
            .filter(f -> f.code().equals("plan.level-over-max"))
            .findFirst()
            .orElseThrow();
    assertTrue(finding.blocks());
    assertEquals(4, finding.places().size(), "weeks 5 and 6, two sessions each");
    assertEquals("107.2 %", finding.arguments().get("percent"), "of week 6");
    assertTrue(finding.place().toString().contains("week 5"), "the first place");
  }

  @Test
  void untestedGripIsModelledAndReported() {
    CompiledPlan plan =
        compile(
            Skarvdal.ylva().build(),
            Skarvdal.tested(),
            block(1, Exercise.of(HOLDS, FRONT_THREE, EDGE)).build());
    assertTrue(codes(plan).contains("plan.load-modelled"));
    double front = maximum(plan);
    double half =
        maximum(compile(Skarvdal.ylva().build(), Skarvdal.tested(), block(1, holds()).build()));
    assertTrue(front < half);
  }

  private static double maximum(CompiledPlan plan) {
    return plan.sessions().get(0).exercises().get(0).maximum().orElseThrow().used().kilograms();
  }

  @Test
  void oneHandIsNeverEstimatedFromTwo() {
    Exercise left =
        Exercise.builder(HOLDS, new Exercise.On(HALF_CRIMP), EDGE)
            .with(java.util.Map.of())
            .hands(gripwright.hand.Hands.LEFT)
            .build();
    CompiledPlan plan = compile(Skarvdal.ylva().build(), Skarvdal.tested(), block(1, left).build());
    assertEquals(List.of("plan.no-test"), codes(plan));
    assertFalse(plan.usable());
  }

  @Test
  void absoluteLoadsNeedNoTest() {
    Exercise total = holds().with("level", Level.total(Load.ofKilograms(50)));
    CompiledPlan plan =
        compile(Skarvdal.ylva().build(), Log.empty("ylva"), block(1, total).build());
    assertEquals(50, plan.sessions().get(0).exercises().get(0).totalLoad().kilograms());
    assertTrue(plan.sessions().get(0).hard(), "an unknown maximum is taken for hard");
  }

  @Test
  void loadOfAReserveFollowsTheTimeToFailure() {
    Exercise reserve = holds().with("level", Level.reserve(Duration.ofSeconds(3)));
    Exercise effort = holds().with("level", Level.effort(7.6923076923));
    double three =
        load(compile(Skarvdal.ylva().build(), Skarvdal.tested(), block(1, reserve).build()));
    double same =
        load(compile(Skarvdal.ylva().build(), Skarvdal.tested(), block(1, effort).build()));
    assertEquals(three, same, "10 s at effort 7.69 of 10 is 13 s to failure");
    assertTrue(
        compile(Skarvdal.ylva().build(), Skarvdal.tested(), block(1, reserve).build())
            .sessions()
            .get(0)
            .hard());
  }

  private static double load(CompiledPlan plan) {
    return plan.sessions().get(0).exercises().get(0).totalLoad().kilograms();
  }

  @Test
  void bodyMassComesFromTheLog() {
    Log lighter =
        Skarvdal.tested().with(new LogEntry.BodyMass(MONDAY.minusDays(1), Load.ofKilograms(58)));
    CompiledPlan plan = compile(Skarvdal.ylva().build(), lighter, block(1, holds()).build());
    assertEquals(58, plan.sessions().get(0).bodyMass().kilograms());
  }

  @Test
  void aWeekWithTooFewDaysNamesThoseLeftAndWhatPreventsThem() {
    Block three =
        Block.named("base", 1)
            .session(SessionPlan.of("strength", 3, holds()).atLeastApart(Duration.ofHours(72)))
            .build();
    CompiledPlan plan = compile(Skarvdal.ylva().build(), Skarvdal.tested(), three);
    Finding finding = plan.findings().get(0);
    assertEquals("plan.no-day", finding.code());
    assertEquals(2, finding.arguments().get("placed"));
    assertEquals(
        "tue, thu and sat are the only days left in week 1 and at least 72 h are needed between them",
        Words.fact(finding.arguments().get("reason")));
  }

  @Test
  void aSessionLongerThanAnyDayIsAnErrorOfItsOwn() {
    Exercise long60 = holds().with("pause", Duration.ofMinutes(25));
    CompiledPlan plan =
        compile(Skarvdal.ylva().build(), Skarvdal.tested(), block(1, long60).build());
    assertEquals(List.of("plan.session-too-long"), codes(plan));
  }

  @Test
  void testsTakeARestedDayOrElseThePlaceOfTheHardestSession() {
    PlannedTest retest =
        PlannedTest.every(List.of(Setup.of(HALF_CRIMP, EDGE)), Duration.ofSeconds(7), 2);
    Plan.Builder plan = Plan.named("spring").athlete("ylva").from(MONDAY).retest(retest);
    DatedRetest own =
        Planner.compile(
                plan.block(Block.named("b", 2).session(SessionPlan.of("s", 2, holds())).build())
                    .build(),
                Skarvdal.ylva().build(),
                Skarvdal.tested(),
                List.of())
            .retests()
            .get(0);
    assertEquals(LocalDate.of(2027, 3, 11), own.date(), "between Tuesday and Saturday");
    assertEquals("", own.insteadOf());
    Athlete sundays =
        Skarvdal.ylva()
            .climbing(
                new Athlete.ClimbingDay(DayOfWeek.SUNDAY, true, "hard", Duration.ofMinutes(90)))
            .build();
    CompiledPlan displaced = Planner.compile(plan.build(), sundays, Skarvdal.tested(), List.of());
    assertEquals("s", displaced.retests().get(0).insteadOf());
    assertEquals(1, displaced.sessionsOf(2).size());
    assertTrue(codes(displaced).contains("plan.retest-displaces"));
  }

  @Test
  void theBestOfSeveralGripsSharesTheSetsByDemand() {
    Exercise best =
        Exercise.builder(
                HOLDS, new Exercise.BestOf(List.of(HALF_CRIMP, DRAG), Optional.empty()), EDGE)
            .with(java.util.Map.of())
            .hands(gripwright.hand.Hands.BOTH)
            .build();
    Plan plan =
        Plan.named("spring")
            .athlete("ylva")
            .from(MONDAY)
            .demand(HALF_CRIMP, 0.6)
            .demand(DRAG, 0.4)
            .block(block(1, best).build())
            .build();
    CompiledPlan compiled =
        Planner.compile(plan, Skarvdal.ylva().build(), Skarvdal.tested(), List.of());
    assertEquals(
        List.of("half-crimp 3", "three-finger-drag 2"),
        compiled.sessions().get(0).exercises().stream()
            .map(e -> e.setup().grip().name() + " " + e.scheme().sets())
            .toList());
  }

  @Test
  void everyNumberHasAReason() {
    CompiledPlan plan =
        compile(
            Skarvdal.ylva().build(),
            Skarvdal.tested(),
            block(2, holds()).advance(Advance.weekly(Advance.loadByPercent(2))).build());
    List<String> steps =
        plan.sessionsOf(2).get(0).exercises().get(0).why().stream().map(Words::step).toList();
    assertEquals(
        List.of(
            "test's share",
            "test's share",
            "maximum, best estimate",
            "maximum, upper bound",
            "maximum, lower bound",
            "level",
            "advance load",
            "load wanted",
            "body mass",
            "added",
            "total load",
            "capacity left, estimate"),
        steps);
  }

  /** The curve alone would give more, because long holds raise it. */
  @Test
  void aReserveTakesNoLoadThatFailedSooner() {
    Setup half = Setup.of(HALF_CRIMP, EDGE);
    LocalDate day = MONDAY.minusDays(7);
    Log log =
        Skarvdal.log(
            Skarvdal.test(HALF_CRIMP, day, 95),
            new StrengthTest(day, half, failure(60, 45)),
            new StrengthTest(day, half, failure(45, 120)),
            new StrengthTest(day, half, failure(40, 300)));
    Protocol held =
        Protocol.named("held")
            .step(
                new Protocol.Part.Hold(
                    Term.of(Duration.ofSeconds(45)), Term.of(Level.reserve(Duration.ofSeconds(3)))))
            .build();
    PlannedExercise exercise =
        compile(Skarvdal.ylva().build(), log, block(1, Exercise.of(held, HALF_CRIMP, EDGE)).build())
            .sessions()
            .get(0)
            .exercises()
            .get(0);
    assertTrue(exercise.totalLoad().kilograms() <= 60, exercise.totalLoad().toString());
    assertTrue(
        exercise.why().stream().anyMatch(w -> Words.step(w).equals("failed before")),
        exercise.why().toString());
  }

  private static StrengthTest.ToFailure failure(double kilograms, int seconds) {
    return new StrengthTest.ToFailure(Load.ofKilograms(kilograms), Duration.ofSeconds(seconds));
  }
}
