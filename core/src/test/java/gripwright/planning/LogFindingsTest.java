package gripwright.planning;

import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.finding.Finding;
import gripwright.finding.Severity;
import gripwright.grip.Setup;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.protocol.Level;
import gripwright.season.CompiledPlan;
import gripwright.season.Planner;
import gripwright.wording.Words;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is reported of days that a log covers. */
class LogFindingsTest {

  /** Tuesday and Saturday for eight weeks. */
  private static CompiledPlan compile(LogEntry... entries) {
    return compile(base(), entries);
  }

  private static Block.Builder base() {
    return Block.named("base", 8)
        .session(SessionPlan.of("strength", 2, Exercise.of(HOLDS, HALF_CRIMP, EDGE)));
  }

  private static CompiledPlan compile(Block.Builder block, LogEntry... entries) {
    Plan plan = Plan.named("spring").athlete("ylva").from(MONDAY).block(block.build()).build();
    Log log = Skarvdal.tested();
    for (LogEntry entry : entries) {
      log = log.with(entry);
    }
    return Planner.compile(plan, Skarvdal.ylva().build(), log, List.of());
  }

  private static LogEntry trained(int day, String session) {
    LogEntry.Done done =
        LogEntry.Done.builder("single-holds", Setup.of(HALF_CRIMP, EDGE)).sets(5).effort(7).build();
    return new LogEntry.Trained(MONDAY.plusDays(day), session, List.of(done), Optional.empty());
  }

  private static Finding finding(CompiledPlan plan, String code) {
    return plan.findings().stream().filter(f -> f.code().equals(code)).findFirst().orElseThrow();
  }

  @Test
  void aSessionWithNothingInItIsReportedAsEmpty() {
    LogEntry empty =
        new LogEntry.Trained(MONDAY.plusDays(1), "strength", List.of(), Optional.empty());
    Finding missed = finding(compile(empty, trained(5, "strength")), "plan.session-not-logged");
    assertEquals("strength", missed.arguments().get("empty"));
    assertEquals(MONDAY.plusDays(1), missed.arguments().get("first"));
    Finding without = finding(compile(trained(5, "strength")), "plan.session-not-logged");
    assertEquals(null, without.arguments().get("empty"));
  }

  @Test
  void additionalSessionOfAWeekIsReported() {
    Finding third =
        finding(
            compile(
                trained(1, "strength"),
                trained(3, "strength"),
                trained(5, "strength"),
                trained(8, "strength"),
                trained(12, "strength")),
            "plan.session-unplanned");
    assertEquals("strength", third.arguments().get("again"));
    Finding other =
        finding(compile(trained(1, "power"), trained(5, "strength")), "plan.session-unplanned");
    assertEquals(null, other.arguments().get("again"));
  }

  @Test
  void sessionsWithoutALogEntryAreReportedOnceWithTheirDays() {
    Finding missed =
        finding(
            compile(trained(1, "strength"), trained(12, "strength")), "plan.session-not-logged");
    assertEquals("strength", missed.arguments().get("session"));
    assertEquals("2027-03-06, 2027-03-09", Words.fact(missed.arguments().get("dates")));
    assertEquals(MONDAY.plusDays(12), missed.arguments().get("until"));
    assertEquals(2, missed.places().size());
    assertEquals(Severity.ADVICE, missed.severity());
  }

  @Test
  void atMostSixDaysAreNamed() {
    Finding missed = finding(compile(trained(26, "strength")), "plan.session-not-logged");
    assertEquals(
        "2027-03-02, 2027-03-06, 2027-03-09, 2027-03-13, 2027-03-16, 2027-03-20 and 1 more",
        Words.fact(missed.arguments().get("dates")));
    Finding six = finding(compile(trained(22, "strength")), "plan.session-not-logged");
    assertEquals(
        "2027-03-02, 2027-03-06, 2027-03-09, 2027-03-13, 2027-03-16, 2027-03-20",
        Words.fact(six.arguments().get("dates")));
  }

  @Test
  void unknownSessionNamesAreReportedOnceWithTheKnownOnes() {
    CompiledPlan plan =
        compile(
            base().session(SessionPlan.of("arms", 1, Exercise.of(HOLDS, HALF_CRIMP, EDGE))),
            trained(1, "strength"),
            trained(2, "extra"),
            trained(9, "extra"),
            trained(12, "strength"));
    Finding unplanned = finding(plan, "plan.session-unplanned");
    assertEquals("extra", unplanned.arguments().get("session"));
    assertEquals("`arms`, `strength`", Words.fact(unplanned.arguments().get("names")));
    assertEquals("2027-03-03, 2027-03-10", Words.fact(unplanned.arguments().get("dates")));
    assertEquals(
        1, plan.findings().stream().filter(f -> f.code().equals("plan.session-unplanned")).count());
    assertEquals(
        "2027-03-03", unplanned.place().steps().get(unplanned.place().steps().size() - 1).name());
  }

  @Test
  void sessionTooSoonAfterLoggedWorkIsNotMadeUp() {
    Exercise light = Exercise.of(HOLDS, HALF_CRIMP, EDGE).with("level", Level.ofMax(50));
    Block.Builder apart =
        Block.named("base", 2)
            .session(SessionPlan.of("strength", 2, light).atLeastApart(Duration.ofHours(96)));
    Finding dropped = finding(compile(apart, trained(3, "strength")), "plan.session-not-made-up");
    assertEquals("strength", dropped.arguments().get("session"));
    assertEquals(MONDAY.plusDays(5), dropped.arguments().get("dates"));
    assertEquals(1, dropped.arguments().get("week"));
    assertEquals(MONDAY.plusDays(3), dropped.arguments().get("until"));
  }

  private static Block.Builder hard(int perWeek) {
    return Block.named("base", 1)
        .session(SessionPlan.of("strength", perWeek, Exercise.of(HOLDS, HALF_CRIMP, EDGE)));
  }

  /** Free are Tuesday, Thursday and Saturday; 48 h before and after Wednesday leave Saturday. */
  @Test
  void loggedSessionOnADayWithoutOneIsNoErrorOfThePlan() {
    LogEntry climbing =
        LogEntry.Climbed.builder(MONDAY.plusDays(2), true, "much", Duration.ofHours(2)).build();
    LogEntry test =
        new LogEntry.Tested(Skarvdal.test(HALF_CRIMP, MONDAY.plusDays(2), 90), Optional.empty());
    for (LogEntry line : List.of(climbing, test)) {
      CompiledPlan plan = compile(hard(2), line);
      Finding left = finding(plan, "plan.session-not-made-up");
      assertEquals(Severity.ADVICE, left.severity());
      assertEquals(1, left.arguments().get("placed"));
      assertEquals(2, left.arguments().get("wanted"));
      assertEquals(0, plan.findings().stream().filter(Finding::blocks).count());
    }
    CompiledPlan four = compile(hard(4), climbing);
    assertEquals(3, finding(four, "plan.no-day").arguments().get("placed"));
    assertEquals(1, finding(four, "plan.session-not-made-up").arguments().get("placed"));
    assertEquals(3, finding(compile(hard(4)), "plan.no-day").arguments().get("placed"));
  }
}
