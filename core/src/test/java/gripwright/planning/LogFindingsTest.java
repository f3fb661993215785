package gripwright.planning;

import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.finding.Severity;
import gripwright.grip.Setup;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.protocol.Argument;
import gripwright.protocol.Level;
import gripwright.season.CompiledPlan;
import gripwright.season.Planner;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What is said of days that a log tells of. */
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
        new LogEntry.Done(
            "single-holds",
            Setup.of(HALF_CRIMP, EDGE),
            OptionalInt.of(5),
            OptionalInt.empty(),
            Optional.empty(),
            OptionalDouble.of(7),
            OptionalDouble.empty());
    return new LogEntry.Trained(MONDAY.plusDays(day), session, List.of(done), Optional.empty());
  }

  private static Finding finding(CompiledPlan plan, String code) {
    return plan.findings().stream().filter(f -> f.code().equals(code)).findFirst().orElseThrow();
  }

  @Test
  void sessionsWithoutALineAreToldOnceWithTheirDays() {
    Finding missed =
        finding(
            compile(trained(1, "strength"), trained(12, "strength")), "plan.session-not-logged");
    assertEquals("strength", missed.arguments().get("session"));
    assertEquals("2027-03-06, 2027-03-09", missed.arguments().get("dates"));
    assertEquals(MONDAY.plusDays(12), missed.arguments().get("until"));
    assertEquals(2, missed.places().size());
    assertEquals(Severity.ADVICE, missed.severity());
  }

  @Test
  void ofManyDaysSixAreTold() {
    Finding missed = finding(compile(trained(26, "strength")), "plan.session-not-logged");
    assertEquals(
        "2027-03-02, 2027-03-06, 2027-03-09, 2027-03-13, 2027-03-16, 2027-03-20 and 1 more",
        missed.arguments().get("dates"));
    Finding six = finding(compile(trained(22, "strength")), "plan.session-not-logged");
    assertEquals(
        "2027-03-02, 2027-03-06, 2027-03-09, 2027-03-13, 2027-03-16, 2027-03-20",
        six.arguments().get("dates"));
  }

  @Test
  void sessionsThatThePlanDoesNotHaveAreToldOnceWithTheNamesItHas() {
    CompiledPlan plan =
        compile(
            base().session(SessionPlan.of("arms", 1, Exercise.of(HOLDS, HALF_CRIMP, EDGE))),
            trained(1, "strength"),
            trained(2, "extra"),
            trained(9, "extra"),
            trained(12, "strength"));
    Finding unplanned = finding(plan, "plan.session-unplanned");
    assertEquals("extra", unplanned.arguments().get("session"));
    assertEquals("`arms`, `strength`", unplanned.arguments().get("names"));
    assertEquals("2027-03-03, 2027-03-10", unplanned.arguments().get("dates"));
    assertEquals(
        1, plan.findings().stream().filter(f -> f.code().equals("plan.session-unplanned")).count());
    assertEquals(
        "2027-03-03", unplanned.place().steps().get(unplanned.place().steps().size() - 1).name());
  }

  @Test
  void aSessionThatWouldComeTooSoonAfterWhatWasDoneIsNotMadeUp() {
    Exercise light =
        Exercise.of(HOLDS, HALF_CRIMP, EDGE)
            .with("level", new Argument.AtLevel(new Level.OfMax(0.5)));
    Block.Builder apart =
        Block.named("base", 2)
            .session(SessionPlan.of("strength", 2, light).atLeastApart(Duration.ofHours(96)));
    Finding dropped = finding(compile(apart, trained(3, "strength")), "plan.session-not-made-up");
    assertEquals("strength", dropped.arguments().get("session"));
    assertEquals(MONDAY.plusDays(5), dropped.arguments().get("dates"));
    assertEquals(1, dropped.arguments().get("week"));
    assertEquals(MONDAY.plusDays(3), dropped.arguments().get("until"));
  }

  /** Known up to Saturday of the first week. */
  private final CompiledPlan heard = compile(trained(5, "strength"));

  private ModelPath session(String week, LocalDate day) {
    return heard
        .weeks()
        .get(0)
        .path()
        .without("week")
        .then("week", week)
        .then("date", day.toString());
  }

  private final ModelPath past = session("1", MONDAY.plusDays(5));
  private final ModelPath ahead = session("1", MONDAY.plusDays(6));

  private static Finding error(ModelPath first, ModelPath... others) {
    Finding finding = Finding.error("rule.too-much", first).with("message", "too much");
    if (others.length > 0) {
      finding = finding.alsoAt(first);
    }
    for (ModelPath other : others) {
      finding = finding.alsoAt(other);
    }
    return finding;
  }

  private List<String> settled(Finding finding) {
    return LogFindings.settled(List.of(finding), heard).stream()
        .map(f -> f.severity().word() + " " + f.code() + " " + f.places().size())
        .toList();
  }

  @Test
  void anErrorAboutWhatHasHappenedIsAdvice() {
    assertEquals(List.of("advice plan.past-breach 1"), settled(error(past)));
    Finding breach = LogFindings.settled(List.of(error(past)), heard).get(0);
    assertEquals("too-much", breach.arguments().get("rule"));
    assertEquals("too much", breach.arguments().get("message"));
    assertEquals("2027-03-06", breach.arguments().get("dates"));
    assertEquals(past, breach.place());
  }

  @Test
  void anErrorAboutWhatLiesAheadStays() {
    assertEquals(List.of("error rule.too-much 0"), settled(error(ahead)));
    assertEquals(
        List.of("error rule.too-much 1", "advice plan.past-breach 1"), settled(error(past, ahead)));
    assertEquals(ahead, LogFindings.settled(List.of(error(past, ahead)), heard).get(0).place());
  }

  @Test
  void aWarningStaysAsItIsAndSoDoesAllWithoutALog() {
    Finding warning = Finding.warning("rule.too-much", past);
    assertEquals(List.of(warning), LogFindings.settled(List.of(warning), heard));
    assertEquals(List.of(error(past)), LogFindings.settled(List.of(error(past)), compile()));
  }

  @Test
  void aWeekIsPastOnceItsLastDayIs() {
    CompiledPlan sunday = compile(trained(5, "strength"), trained(8, "strength"));
    ModelPath week = sunday.weeks().get(0).path();
    assertEquals(List.of("error rule.too-much 0"), settled(error(week)), "Sunday is still ahead");
    assertEquals(
        "plan.past-breach", LogFindings.settled(List.of(error(week)), sunday).get(0).code());
    assertEquals(
        "rule.too-much",
        LogFindings.settled(List.of(error(sunday.weeks().get(1).path())), sunday).get(0).code());
  }
}
