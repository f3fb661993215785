package gripwright.planning;

import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.finding.Finding;
import gripwright.finding.Severity;
import gripwright.grip.Setup;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.plan.SessionPlan;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import gripwright.season.Planner;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Less work before the day a plan works towards, and rest beside it. */
class TaperTest {

  private static Plan.Builder plan(int weeks, LocalDate goal) {
    return Plan.named("spring")
        .athlete("ylva")
        .from(MONDAY)
        .towards(goal, "first rock")
        .block(
            Block.named("base", weeks)
                .session(SessionPlan.of("strength", 2, Exercise.of(HOLDS, HALF_CRIMP, EDGE)))
                .advance(Advance.weekly(Advance.loadByPercent(1)))
                .ease(4, 0.25)
                .build());
  }

  private static CompiledPlan compile(Plan.Builder plan) {
    return Planner.compile(plan.build(), Skarvdal.ylva().build(), Skarvdal.tested(), List.of());
  }

  private static PlannedExercise first(CompiledPlan plan, int week) {
    return plan.sessionsOf(week).get(0).exercises().get(0);
  }

  private static List<String> codes(CompiledPlan plan) {
    return plan.findings().stream()
        .map(Finding::code)
        .filter(c -> c.startsWith("plan."))
        .distinct()
        .toList();
  }

  @Test
  void theWeeksThatBeginInTheTaperAreEased() {
    LocalDate goal = MONDAY.plusWeeks(6).minusDays(1); // the Sunday of week 6
    CompiledPlan whole = compile(plan(6, goal));
    CompiledPlan tapered = compile(plan(6, goal).taper(2, 0.5));
    int sets = first(whole, 5).scheme().sets();
    assertEquals(sets, first(tapered, 3).scheme().sets());
    assertEquals(sets / 2, first(tapered, 5).scheme().sets());
    assertEquals(sets / 2, first(tapered, 6).scheme().sets());
    assertEquals(tapered.sessionsOf(3).size(), tapered.sessionsOf(5).size(), "as often as before");
    assertEquals(
        List.of(false, false, false, true, true, true),
        tapered.weeks().stream().map(w -> w.eased()).toList());
    assertEquals(
        first(tapered, 3).totalLoad(), first(tapered, 6).totalLoad(), "the load per hold is kept");
  }

  @Test
  void lowerShareOfEaseAndTaperCounts() {
    LocalDate goal = MONDAY.plusWeeks(4).minusDays(1);
    CompiledPlan tapered = compile(plan(4, goal).taper(2, 0.5));
    CompiledPlan eased = compile(plan(4, goal));
    assertEquals(first(eased, 4).scheme().sets(), first(tapered, 4).scheme().sets());
    assertTrue(first(tapered, 3).scheme().sets() > first(tapered, 4).scheme().sets());
  }

  @Test
  void aWeekBelongsToTheTaperByItsFirstDay() {
    Plan onMonday = plan(6, MONDAY.plusWeeks(5)).taper(2, 0.5).build();
    assertEquals(
        List.of(4, 5),
        java.util.stream.IntStream.rangeClosed(1, 6)
            .filter(n -> onMonday.taperIn(MONDAY.plusWeeks(n - 1L)).isPresent())
            .boxed()
            .toList());
  }

  @Test
  void taperHasNoTests() {
    PlannedTest retest =
        PlannedTest.every(List.of(Setup.of(HALF_CRIMP, EDGE)), Duration.ofSeconds(7), 3);
    LocalDate goal = MONDAY.plusWeeks(6).minusDays(1);
    CompiledPlan tapered = compile(plan(6, goal).retest(retest).taper(2, 0.5));
    assertEquals(List.of(3), tapered.retests().stream().map(r -> r.week()).toList());
    assertTrue(codes(tapered).contains("plan.retest-tapered"));
  }

  @Test
  void noHardSessionAndNoTestLiesWithin48HoursOfTheGoal() {
    PlannedTest retest =
        PlannedTest.every(List.of(Setup.of(HALF_CRIMP, EDGE)), Duration.ofSeconds(7), 1);
    for (int day = 14; day < 21; day++) {
      LocalDate goal = MONDAY.plusDays(day);
      CompiledPlan compiled = compile(plan(4, goal).retest(retest));
      for (DatedSession session : compiled.sessions()) {
        assertTrue(
            !session.hard() || Math.abs(ChronoUnit.DAYS.between(session.date(), goal)) >= 2,
            session.date() + " beside " + goal);
      }
      assertTrue(
          compiled.retests().stream()
              .allMatch(r -> Math.abs(ChronoUnit.DAYS.between(r.date(), goal)) >= 2));
    }
  }

  @Test
  void tooFewDaysBeforeTheGoalGiveAWarning() {
    for (int day = 14; day < 21; day++) {
      CompiledPlan compiled = compile(plan(4, MONDAY.plusDays(day)));
      int placed = compiled.sessionsOf(3).size();
      List<Finding> reported =
          compiled.findings().stream().filter(f -> f.code().startsWith("plan.")).toList();
      assertEquals(placed < 2 ? 1 : 0, reported.size(), reported::toString);
      reported.forEach(
          f -> {
            assertEquals("plan.week-short", f.code());
            assertEquals(Severity.WARNING, f.severity());
            assertTrue(f.arguments().containsKey("goal"));
          });
    }
  }

  @Test
  void aTaperThatEasesNothingIsReported() {
    assertTrue(
        codes(compile(plan(4, MONDAY.plusWeeks(9)).taper(4, 0.5))).contains("plan.taper-idle"));
  }

  @Test
  void aTaperNeedsADay() {
    Plan.Builder plan = Plan.named("spring").athlete("ylva").from(MONDAY).taper(2, 0.5);
    plan.block(
        Block.named("base", 1)
            .session(SessionPlan.of("strength", 1, Exercise.of(HOLDS, HALF_CRIMP, EDGE)))
            .build());
    assertThrows(IllegalArgumentException.class, plan::build);
  }
}
