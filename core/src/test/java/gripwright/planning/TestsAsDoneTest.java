package gripwright.planning;

import static gripwright.planning.Skarvdal.DRAG;
import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.finding.FindingList;
import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.history.LogTimeline;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.plan.SessionPlan;
import gripwright.planning.placement.LoggedRetests;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.PlacementReason;
import gripwright.wording.Words;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What becomes of tests that were planned in a week that a log covers. */
class TestsAsDoneTest {

  private static final Plan PLAN =
      Plan.named("spring")
          .athlete("ylva")
          .from(MONDAY)
          .block(
              Block.named("base", 2)
                  .session(SessionPlan.of("strength", 1, Exercise.of(HOLDS, HALF_CRIMP, EDGE)))
                  .build())
          .retest(
              PlannedTest.every(
                  List.of(Setup.of(HALF_CRIMP, EDGE), Setup.of(DRAG, EDGE)),
                  Duration.ofSeconds(7),
                  1))
          .build();

  private static final Plan EVERY_TWO_WEEKS =
      Plan.named("spring")
          .athlete("ylva")
          .from(MONDAY.minusDays(7))
          .block(
              Block.named("base", 3)
                  .session(SessionPlan.of("strength", 1, Exercise.of(HOLDS, HALF_CRIMP, EDGE)))
                  .build())
          .retest(
              PlannedTest.every(
                  List.of(Setup.of(HALF_CRIMP, EDGE), Setup.of(DRAG, EDGE)),
                  Duration.ofSeconds(7),
                  2))
          .build();

  /** Planned for Thursday: a half crimp and a drag. */
  private static final DatedRetest THURSDAY =
      DatedRetest.builder(
              MONDAY.plusDays(3),
              1,
              "base",
              List.of(Setup.of(HALF_CRIMP, EDGE), Setup.of(DRAG, EDGE)),
              Duration.ofSeconds(7),
              ModelPath.of("plan", "spring").then("retest", 1).then("date", "2027-03-04"))
          .insteadOf("strength")
          .placedBecause(new PlacementReason.Rested(60))
          .build();

  private final FindingList findings = new FindingList();

  private List<DatedRetest> tests(Log log) {
    return tests(PLAN, log, List.of());
  }

  private List<DatedRetest> tests(Plan plan, Log log, List<DatedRetest> before) {
    LogTimeline timeline = LogTimeline.of(plan, Skarvdal.ylva().build(), log);
    return TestsAsDone.of(timeline, MONDAY, List.of(THURSDAY), before, findings);
  }

  private static LogEntry tested(int day, Grip grip) {
    return new LogEntry.Tested(Skarvdal.test(grip, MONDAY.plusDays(day), 90), Optional.empty());
  }

  private static LogEntry skipped(int day) {
    return new LogEntry.Skipped(MONDAY.plusDays(day), "strength", Optional.empty());
  }

  @Test
  void testIsOnTheDayOfItsFirstTestedGrip() {
    for (Grip grip : List.of(HALF_CRIMP, DRAG)) {
      DatedRetest done = tests(Log.empty("ylva").with(tested(4, grip)).with(skipped(6))).get(0);
      assertEquals(LocalDate.of(2027, 3, 5), done.date());
      assertEquals("tested on this day, as logged", Words.say(done.placedBecause()));
      assertEquals("strength", done.insteadOf());
      assertEquals("plan spring / retest 1 / date 2027-03-05", done.path().toString());
    }
    assertEquals(List.of(), findings.all());
  }

  @Test
  void testWithinTheWeekCountsAndNoOther() {
    for (int day : new int[] {0, 6}) {
      assertEquals(
          MONDAY.plusDays(day), tests(Log.empty("ylva").with(tested(day, DRAG))).get(0).date());
    }
    for (int day : new int[] {-1, 7}) {
      assertEquals(
          List.of(THURSDAY), tests(Log.empty("ylva").with(tested(day, DRAG))), "day " + day);
    }
  }

  @Test
  void entryOutsideTheWeekIsTheTestUpToThreeDaysAway() {
    DatedRetest saturday = onDay(THURSDAY, MONDAY.plusDays(5));
    DatedRetest tuesday = onDay(THURSDAY, MONDAY.plusDays(1));
    for (Map.Entry<Integer, DatedRetest> near :
        Map.of(-2, tuesday, -1, tuesday, 7, saturday, 8, saturday).entrySet()) {
      LocalDate day = MONDAY.plusDays(near.getKey());
      assertEquals(Optional.of(day), dayOf(EVERY_TWO_WEEKS, near), "day " + near.getKey());
      assertEquals(Optional.empty(), dayOf(PLAN, near), "a week that asks for a test itself");
    }
    for (Map.Entry<Integer, DatedRetest> far :
        Map.of(-3, tuesday, 9, saturday, 7, tuesday).entrySet()) {
      assertEquals(Optional.empty(), dayOf(EVERY_TWO_WEEKS, far), "day " + far.getKey());
    }
  }

  private static Optional<LocalDate> dayOf(Plan plan, Map.Entry<Integer, DatedRetest> line) {
    return new LoggedRetests(plan, Log.empty("ylva").with(tested(line.getKey(), DRAG)))
        .dayOf(line.getValue(), MONDAY, List.of());
  }

  private static DatedRetest onDay(DatedRetest test, LocalDate day) {
    return test.toBuilder().date(day).build();
  }

  @Test
  void nearestEntryOfTheWeekIsTheTestAndUsedOnce() {
    Log log = Log.empty("ylva").with(tested(0, DRAG)).with(tested(4, DRAG));
    DatedRetest done = tests(log).get(0);
    assertEquals(MONDAY.plusDays(4), done.date());
    assertEquals(MONDAY, tests(PLAN, log, List.of(done)).get(0).date(), "that of Friday is taken");
  }

  @Test
  void entryOfAnotherGripIsNotTheTest() {
    assertEquals(List.of(THURSDAY), tests(Log.empty("ylva").with(tested(3, Skarvdal.FRONT_THREE))));
  }

  @Test
  void pastTestWithoutALogEntryIsDroppedAndReported() {
    assertEquals(List.of(THURSDAY), tests(Log.empty("ylva").with(skipped(2))), "still ahead");
    assertEquals(List.of(), tests(Log.empty("ylva").with(skipped(5))));
    assertEquals("plan.test-not-logged", findings.all().get(0).code());
    assertEquals(MONDAY.plusDays(3), findings.all().get(0).arguments().get("dates"));
    assertEquals(MONDAY.plusDays(5), findings.all().get(0).arguments().get("until"));
  }
}
