package gripwright.planning;

import static gripwright.planning.Skarvdal.DRAG;
import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.Severity;
import gripwright.grip.Setup;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.plan.SessionPlan;
import gripwright.protocol.Level;
import gripwright.quantity.Length;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlanWeek;
import gripwright.season.CompiledPlan;
import gripwright.season.Planner;
import gripwright.wording.Words;
import java.time.DayOfWeek;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a compiled plan shows of its weeks, with the numbers a coach needs. */
class PlanFindingsTest {

  private static final Exercise LINE = Exercise.of(HOLDS, HALF_CRIMP, EDGE);

  private static Plan.Builder plan(Block.Builder... blocks) {
    Plan.Builder plan = Plan.named("spring").athlete("ylva").from(MONDAY);
    for (Block.Builder block : blocks) {
      plan.block(block.build());
    }
    return plan;
  }

  private static Block.Builder base(int weeks, int perWeek) {
    return Block.named("base", weeks).session(SessionPlan.of("strength", perWeek, LINE));
  }

  private static CompiledPlan compile(Plan.Builder plan, Athlete.Builder athlete) {
    return Planner.compile(plan.build(), athlete.build(), Skarvdal.tested(), List.of());
  }

  private static Finding finding(CompiledPlan plan, String code) {
    return plan.findings().stream().filter(f -> f.code().equals(code)).findFirst().orElseThrow();
  }

  private static boolean has(CompiledPlan plan, String code) {
    return plan.findings().stream().anyMatch(f -> f.code().equals(code));
  }

  private static Athlete.Absence away(int from, int to) {
    return new Athlete.Absence(MONDAY.plusDays(from), MONDAY.plusDays(to), Optional.empty());
  }

  @Test
  void aWeekWhoseTrainingDaysAreAllSpentAwayIsReportedWithItsDays() {
    // Tuesday to Saturday of the second week
    CompiledPlan plan = compile(plan(base(3, 1)), Skarvdal.ylva().away(away(8, 12)));
    Finding away = finding(plan, "plan.week-away");
    assertEquals(Severity.ADVICE, away.severity(), "the coach wrote it");
    assertEquals(2, away.arguments().get("week"));
    assertEquals(MONDAY.plusDays(7), away.arguments().get("from"));
    assertEquals(MONDAY.plusDays(13), away.arguments().get("to"));
    assertEquals(List.of(false, true, false), plan.weeks().stream().map(PlanWeek::away).toList());
    assertTrue(
        !has(compile(plan(base(3, 1)), Skarvdal.ylva().away(away(9, 12))), "plan.week-away"));
  }

  @Test
  void weeksSumUpTheirSessions() {
    CompiledPlan plan = compile(plan(base(1, 2)), Skarvdal.ylva());
    PlanWeek week = plan.weeks().get(0);
    assertEquals(100, week.timeUnderLoadSeconds(), 1e-9, "two times five holds of 10 s");
    assertEquals(
        plan.sessions().stream().mapToDouble(DatedSession::loadIndex).sum(),
        week.loadIndex(),
        1e-9);
    assertEquals(1, week.blockWeek());
  }

  @Test
  void sessionsAreSortedByDateAndName() {
    Block.Builder block =
        Block.named("base", 1)
            .session(SessionPlan.of("zeal", 3, light()))
            .session(SessionPlan.of("arms", 3, light()));
    assertEquals(
        List.of("arms", "zeal", "arms", "zeal", "arms", "zeal"),
        compile(plan(block), Skarvdal.ylva()).sessions().stream().map(DatedSession::name).toList());
  }

  private static Exercise light() {
    return LINE.with("level", Level.ofMax(50)).with("sets", 2);
  }

  @Test
  void aLightLoadInsteadOfAShareIsReportedAsItIsBuilt() {
    Block.Builder block =
        Block.named("base", 1)
            .session(SessionPlan.of("strength", 1, LINE.with("level", Level.ofMax(33))));
    CompiledPlan plan =
        Planner.compile(plan(block).build(), Skarvdal.ylva().build(), Log.empty("ylva"), List.of());
    assertEquals(
        plan.sessions().get(0).exercises().get(0).totalLoad(),
        finding(plan, "plan.level-light").arguments().get("load"));
  }

  @Test
  void rampCutShortByItsBlockReportsItsLastStep() {
    CompiledPlan plan =
        compile(
            plan(
                base(2, 1)
                    .session(SessionPlan.of("open", 1, Exercise.of(HOLDS, DRAG, EDGE)))
                    .introduce(DRAG, 0.5, 3)
                    .introduce(HALF_CRIMP, 0.5, 4)),
            Skarvdal.ylva());
    List<Finding> ramps =
        plan.findings().stream().filter(f -> f.code().equals("plan.ramp-unfinished")).toList();
    assertEquals(
        List.of("2 of 3", "2 of 4"),
        ramps.stream()
            .map(f -> f.arguments().get("reached") + " of " + f.arguments().get("weeks"))
            .toList());
    assertEquals(
        List.of("1", "2"),
        ramps.stream()
            .map(f -> f.place().steps().get(f.place().steps().size() - 1).name())
            .toList());
    assertTrue(
        !has(
            compile(plan(base(3, 1).introduce(HALF_CRIMP, 0.5, 3)), Skarvdal.ylva()),
            "plan.ramp-unfinished"));
  }

  @Test
  void aSessionLongerThanAnyDayIsReportedWithBothTimes() {
    Exercise slow = LINE.with("pause", Duration.ofMinutes(25));
    Finding tooLong =
        finding(
            compile(
                plan(Block.named("base", 1).session(SessionPlan.of("strength", 1, slow))),
                Skarvdal.ylva()),
            "plan.session-too-long");
    assertEquals(113, tooLong.arguments().get("minutes"), "12 min, 50 s and 4 x 25 min");
    assertEquals(90L, tooLong.arguments().get("longest"));
    Exercise exact = LINE.with("sets", 4).with("pause", Duration.ofSeconds(1546));
    assertEquals(
        List.of(90),
        compile(
                plan(Block.named("base", 1).session(SessionPlan.of("strength", 1, exact))),
                Skarvdal.ylva())
            .sessions()
            .stream()
            .map(DatedSession::minutes)
            .toList(),
        "just long enough");
  }

  @Test
  void aSessionWithoutADayIsAnErrorUnlessTheAthleteIsAway() {
    Finding none = finding(compile(plan(base(1, 4)), Skarvdal.ylva()), "plan.no-day");
    assertTrue(none.blocks());
    assertEquals(4, none.arguments().get("wanted"));
    assertEquals(3, none.arguments().get("placed"));
    assertEquals(1, none.arguments().get("week"));
    Finding shorter =
        finding(compile(plan(base(1, 3)), Skarvdal.ylva().away(away(3, 6))), "plan.week-short");
    assertTrue(!shorter.blocks());
    assertTrue(shorter.arguments().get("goal") == null);
    assertEquals(1, shorter.arguments().get("placed"));
  }

  @Test
  void aGoalThatLeavesTooFewDaysIsReportedWithItsDay() {
    CompiledPlan plan =
        compile(plan(base(1, 3)).towards(MONDAY.plusDays(6), "first rock"), Skarvdal.ylva());
    Finding shorter = finding(plan, "plan.week-short");
    assertEquals(MONDAY.plusDays(6), shorter.arguments().get("goal"));
  }

  @Test
  void taperWithoutAWeekIsReported() {
    CompiledPlan plan =
        compile(
            plan(base(2, 1)).towards(MONDAY.plusWeeks(9), "first rock").taper(2, 0.5),
            Skarvdal.ylva());
    Finding idle = finding(plan, "plan.taper-idle");
    assertEquals(2, idle.arguments().get("weeks"));
    assertEquals(MONDAY.plusWeeks(9), idle.arguments().get("goal"));
    assertEquals(MONDAY.plusDays(13), idle.arguments().get("to"));
    assertTrue(
        !has(
            compile(
                plan(base(9, 1)).towards(MONDAY.plusWeeks(9), "first rock").taper(2, 0.5),
                Skarvdal.ylva()),
            "plan.taper-idle"));
  }

  private static PlannedTest retest(int everyWeeks, Setup... setups) {
    return PlannedTest.every(List.of(setups), Duration.ofSeconds(7), everyWeeks);
  }

  @Test
  void testsAreEveryNWeeksAndHaveTheirSetups() {
    CompiledPlan plan =
        compile(
            plan(base(6, 1)).retest(retest(2, Setup.of(HALF_CRIMP, EDGE), Setup.of(DRAG, EDGE))),
            Skarvdal.ylva());
    assertEquals(List.of(2, 4, 6), plan.retests().stream().map(DatedRetest::week).toList());
    DatedRetest first = plan.retests().get(0);
    assertEquals("base", first.block());
    assertEquals(2, first.setups().size());
    assertEquals(
        "plan spring / for ylva / retest 1 / week 2 / date " + first.date(),
        first.path().toString());
  }

  @Test
  void reasonAgainstATestIsReported() {
    Setup small = Setup.of(HALF_CRIMP, Length.ofMillimetres(10));
    Finding missing =
        finding(
            compile(plan(base(1, 1)).retest(retest(1, small)), Skarvdal.ylva()),
            "plan.edge-missing");
    assertEquals("10 mm", String.valueOf(missing.arguments().get("edge")));
    assertEquals("20 mm, 15 mm", Words.fact(missing.arguments().get("owned")));
    PlannedTest half = retest(1, Setup.of(HALF_CRIMP, EDGE));
    Finding displaces =
        finding(compile(plan(base(1, 2)).retest(half), sundays()), "plan.retest-displaces");
    assertEquals("strength", displaces.arguments().get("session"));
    assertEquals(1, displaces.arguments().get("week"));
    Finding noDay =
        finding(
            compile(plan(base(1, 1)).retest(half), Skarvdal.ylva().away(away(0, 6))),
            "plan.retest-no-day");
    assertEquals(1, noDay.arguments().get("week"));
    Finding tapered =
        finding(
            compile(
                plan(base(2, 1))
                    .retest(retest(2, Setup.of(HALF_CRIMP, EDGE)))
                    .towards(MONDAY.plusDays(13), "rock")
                    .taper(1, 0.5),
                Skarvdal.ylva()),
            "plan.retest-tapered");
    assertEquals(2, tapered.arguments().get("week"));
  }

  private static Athlete.Builder sundays() {
    return Skarvdal.ylva()
        .climbing(new Athlete.ClimbingDay(DayOfWeek.SUNDAY, true, "hard", Duration.ofMinutes(90)));
  }

  @Test
  void weekWithMissingSessionsIsNoErrorAfterALog() {
    LogEntry.Done done =
        LogEntry.Done.builder("single-holds", Setup.of(HALF_CRIMP, EDGE))
            .sets(java.util.OptionalInt.of(5))
            .setsPlanned(java.util.OptionalInt.empty())
            .effort(java.util.OptionalDouble.of(7))
            .pain(java.util.OptionalDouble.empty())
            .build();
    Log log =
        Skarvdal.tested()
            .with(
                new LogEntry.Trained(
                    MONDAY.plusDays(1), "strength", List.of(done), Optional.empty()));
    CompiledPlan plan =
        Planner.compile(plan(base(3, 4)).build(), Skarvdal.ylva().build(), log, List.of());
    Finding shorter = finding(plan, "plan.week-short");
    assertEquals(2, shorter.arguments().get("week"), "the first week is told as it was done");
    assertEquals(MONDAY.plusDays(1), shorter.arguments().get("after"));
    assertEquals(3, finding(plan, "plan.no-day").arguments().get("week"));
  }

  @Test
  void hardClimbingLeavesTooFewDaysWithoutAGoal() {
    Finding none = finding(compile(plan(base(1, 3)), sundays()), "plan.no-day");
    assertTrue(none.arguments().get("goal") == null);
    assertEquals(2, none.arguments().get("placed"));
  }
}
