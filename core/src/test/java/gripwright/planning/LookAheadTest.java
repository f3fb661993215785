package gripwright.planning;

import static gripwright.planning.Skarvdal.DRAG;
import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.athlete.Athlete;
import gripwright.grip.FingerSet;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.history.LogTimeline;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.plan.SessionPlan;
import gripwright.planning.load.HandFindings;
import gripwright.planning.load.Rise;
import gripwright.planning.placement.Placement;
import gripwright.planning.progression.Progression;
import gripwright.planning.progression.ProgressionBlockers;
import gripwright.schedule.DatedSession;
import gripwright.schedule.HardThing;
import gripwright.season.CompiledPlan;
import gripwright.season.Planner;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the weeks to come are taken to want, and what that changes today. */
class LookAheadTest {

  private static final Exercise LINE = Exercise.of(HOLDS, HALF_CRIMP, EDGE);
  private static final Grip LITTLE =
      Grip.named("little-one").family(GripFamily.SINGLE).fingers(Finger.LITTLE).build();

  private static PlannedTest retest(int everyWeeks, int seconds, Grip... grips) {
    return PlannedTest.every(
        List.of(grips).stream().map(g -> Setup.of(g, EDGE)).toList(),
        Duration.ofSeconds(seconds),
        everyWeeks);
  }

  private static Block.Builder block(String name, int weeks, SessionPlan session) {
    return Block.named(name, weeks).session(session);
  }

  private static SessionPlan session(String name, int perWeek) {
    return SessionPlan.of(name, perWeek, LINE);
  }

  private static Plan.Builder plan(Block.Builder... blocks) {
    Plan.Builder plan = Plan.named("spring").athlete("ylva").from(MONDAY);
    for (Block.Builder block : blocks) {
      plan.block(block.build());
    }
    return plan;
  }

  private static LookAhead ahead(Plan plan) {
    Athlete ylva = Skarvdal.ylva().build();
    LogTimeline timeline = LogTimeline.of(plan, ylva, Skarvdal.tested());
    return new LookAhead(
        plan,
        ylva,
        ProgressionBlockers.of(plan, timeline),
        new SessionExpansion(plan, ylva, timeline, Map.of(), new HandFindings(ylva)));
  }

  @Test
  void durationOfTestsIncludesWarmUpHoldsAndRests() {
    LookAhead ahead = ahead(plan(block("base", 4, session("s", 1))).build());
    assertEquals(13, ahead.minutes(retest(1, 60, HALF_CRIMP)), "12 min and one");
    assertEquals(14, ahead.minutes(retest(1, 61, HALF_CRIMP)));
    assertEquals(16, ahead.minutes(retest(1, 7, HALF_CRIMP, DRAG)), "15 min 14 s");
  }

  @Test
  void testsAreDueEveryNWeeksExceptInTheTaper() {
    LookAhead ahead =
        ahead(
            plan(block("base", 6, session("s", 1)))
                .retest(retest(2, 7, DRAG, LITTLE))
                .retest(retest(3, 7, DRAG))
                .towards(MONDAY.plusDays(41), "rock")
                .taper(1, 0.5)
                .build());
    assertEquals(List.of(), ahead.testsIn(1));
    assertEquals(List.of(new Placement.Tests(16, FingerSet.FOUR)), ahead.testsIn(2));
    assertEquals(List.of(new Placement.Tests(13, DRAG.fingers())), ahead.testsIn(3));
    assertEquals(List.of(), ahead.testsIn(6), "the taper");
    assertEquals(true, ahead.tapers(6));
    assertEquals(false, ahead.tapers(5));
  }

  private static WeekContext week(Plan plan, Block block, int number, int blockWeek) {
    LocalDate first = MONDAY.plusWeeks(number - 1L);
    LogTimeline timeline = LogTimeline.of(plan, Skarvdal.ylva().build(), Skarvdal.tested());
    return new WeekContext(
        block,
        number,
        blockWeek,
        first,
        plan.path(),
        new Progression.Week(
            first,
            List.of(),
            List.of(),
            Optional.empty(),
            Progression.Returning.NOTHING,
            Rise.of(0),
            ProgressionBlockers.of(plan, timeline),
            Optional.empty()));
  }

  private static List<String> after(Plan plan, int block, int number, int blockWeek) {
    Placement.Request now =
        new Placement.Request("now", 30, Duration.ofHours(48), Optional.empty(), List.of());
    return ahead(plan)
        .after(
            week(plan, plan.blocks().get(block), number, blockWeek),
            List.of(now),
            first ->
                List.of(new Placement.HardDay(first, FingerSet.FOUR, new HardThing.Climbing())))
        .stream()
        .map(
            a ->
                a.week().first()
                    + " "
                    + a.requests().stream().map(Placement.Request::name).toList()
                    + " "
                    + a.tests().size()
                    + " "
                    + a.week().hardDays().get(0).date())
        .toList();
  }

  @Test
  void demandOfLaterWeeksIsThatOfThisWeekOrOfTheNextBlock() {
    Plan plan =
        plan(
                block("base", 2, session("a", 1)),
                block("build", 2, session("b", 2)).session(session("arms", 1)))
            .retest(retest(2, 7, HALF_CRIMP))
            .build();
    assertEquals(
        List.of(
            "2027-03-08 [now] 1 2027-03-08",
            "2027-03-15 [arms, b, b] 0 2027-03-15",
            "2027-03-22 [arms, b, b] 1 2027-03-22"),
        after(plan, 0, 1, 1));
    assertEquals(List.of("2027-03-22 [now] 1 2027-03-22"), after(plan, 1, 3, 1));
    assertEquals(List.of(), after(plan, 1, 4, 2), "the plan ends");
  }

  @Test
  void eightWeeksArePlacedTogether() {
    assertEquals(7, after(plan(block("base", 20, session("a", 1))).build(), 0, 1, 1).size());
  }

  private static String days(CompiledPlan plan) {
    return String.join(
        " ",
        plan.sessions().stream()
            .map((DatedSession s) -> s.date().getDayOfWeek().name().substring(0, 3) + s.week())
            .toList());
  }

  private static CompiledPlan compile(Plan.Builder plan) {
    return Planner.compile(plan.build(), Skarvdal.ylva().build(), Skarvdal.tested(), List.of());
  }

  @Test
  void aPreferredDayIsGivenUpForASessionOfTheNextWeek() {
    SessionPlan one =
        session("s", 1).preferring(DayOfWeek.SATURDAY).atLeastApart(Duration.ofHours(96));
    SessionPlan two = session("s", 2).atLeastApart(Duration.ofHours(96));
    assertEquals(
        "SAT1 THU2",
        days(
            compile(
                plan(
                    block("base", 1, one),
                    block("build", 1, session("s", 1).atLeastApart(Duration.ofHours(96)))))),
        "the last of its name keeps its gap");
    assertEquals(
        "TUE1 TUE2 SAT2", days(compile(plan(block("base", 1, one), block("build", 1, two)))));
    assertEquals(
        "TUE1 TUE2 SAT2",
        days(compile(
                plan(
                    block("base", 1, one),
                    block("build", 1, two),
                    block("rest", 1, session("t", 1)))))
            .substring(0, 14));
  }

  @Test
  void longestGapOfANameIsFoundInTheWholePlan() {
    LookAhead ahead =
        ahead(
            plan(
                    block("base", 1, session("s", 1).atLeastApart(Duration.ofHours(48))),
                    block("build", 1, session("s", 1).atLeastApart(Duration.ofHours(96))),
                    block("rest", 1, session("s", 1).atLeastApart(Duration.ofHours(24))))
                .build());
    assertEquals(4, ahead.gapDays("s"));
    assertEquals(1, ahead.gapDays("t"));
  }
}
