package gripwright.season;

import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.finding.WrittenText;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import gripwright.wording.Words;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A rule that was broken on a day that is past stops nobody. */
class PastBreachesTest {

  private static CompiledPlan compiled(LogEntry... entries) {
    Plan plan =
        Plan.named("spring")
            .athlete("ylva")
            .from(MONDAY)
            .block(
                Block.named("base", 8)
                    .session(SessionPlan.of("strength", 2, Exercise.of(HOLDS, HALF_CRIMP, EDGE)))
                    .build())
            .build();
    Log log = Skarvdal.tested();
    for (LogEntry entry : entries) {
      log = log.with(entry);
    }
    return Planner.compile(plan, Skarvdal.ylva().build(), log, List.of());
  }

  private static LogEntry skipped(int day) {
    return new LogEntry.Skipped(MONDAY.plusDays(day), "strength", Optional.empty());
  }

  /** Known up to Saturday of the first week. */
  private final CompiledPlan logged = compiled(skipped(5));

  private ModelPath session(String week, LocalDate day) {
    return logged
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

  private static List<Finding> downgraded(Finding finding, CompiledPlan plan) {
    return PastBreaches.downgraded(List.of(finding), plan.schedule(), plan.timeline());
  }

  private List<String> reported(Finding finding) {
    return downgraded(finding, logged).stream()
        .map(f -> f.severity().word() + " " + f.code() + " " + f.places().size())
        .toList();
  }

  @Test
  void errorAboutPastDaysBecomesAdvice() {
    assertEquals(List.of("advice plan.past-breach 1"), reported(error(past)));
    Finding breach = downgraded(error(past), logged).get(0);
    assertEquals("too-much", breach.arguments().get("rule"));
    assertEquals(new WrittenText("too much"), breach.arguments().get("message"));
    assertEquals("2027-03-06", Words.fact(breach.arguments().get("dates")));
    assertEquals(past, breach.place());
  }

  @Test
  void errorAboutFutureDaysStays() {
    assertEquals(List.of("error rule.too-much 0"), reported(error(ahead)));
    assertEquals(
        List.of("error rule.too-much 1", "advice plan.past-breach 1"),
        reported(error(past, ahead)));
    assertEquals(ahead, downgraded(error(past, ahead), logged).get(0).place());
  }

  @Test
  void warningsAndFindingsWithoutALogStay() {
    Finding warning = Finding.warning("rule.too-much", past);
    assertEquals(List.of(warning), downgraded(warning, logged));
    assertEquals(List.of(error(past)), downgraded(error(past), compiled()));
  }

  @Test
  void aWeekIsPastOnceItsLastDayIs() {
    CompiledPlan sunday = compiled(skipped(5), skipped(8));
    ModelPath week = sunday.weeks().get(0).path();
    assertEquals(List.of("error rule.too-much 0"), reported(error(week)), "Sunday is still ahead");
    assertEquals("plan.past-breach", downgraded(error(week), sunday).get(0).code());
    assertEquals(
        "rule.too-much", downgraded(error(sunday.weeks().get(1).path()), sunday).get(0).code());
  }
}
