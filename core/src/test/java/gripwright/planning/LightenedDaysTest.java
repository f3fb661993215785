package gripwright.planning;

import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Athlete;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.protocol.Level;
import gripwright.quantity.Load;
import gripwright.schedule.DatedSession;
import gripwright.season.CompiledPlan;
import gripwright.season.Planner;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Days that a log has no reason to move: hard climbing on Sunday keeps hard sessions to Tuesday and
 * Thursday, where light ones would rather be on Tuesday and Saturday.
 */
class LightenedDaysTest {

  private static final int WEEKS = 5;

  private static CompiledPlan compile(UnaryOperator<Block.Builder> more, double level, Log log) {
    Exercise line = Exercise.of(HOLDS, HALF_CRIMP, EDGE).with("level", new Level.OfMax(level));
    Plan plan =
        Plan.named("spring")
            .athlete("ylva")
            .from(MONDAY)
            .block(
                more.apply(Block.named("base", WEEKS).session(SessionPlan.of("strength", 2, line)))
                    .build())
            .build();
    Athlete ylva =
        Skarvdal.ylva()
            .climbing(new Athlete.ClimbingDay(DayOfWeek.SUNDAY, true, "hard", Duration.ofHours(2)))
            .build();
    return Planner.compile(plan, ylva, log, List.of());
  }

  private static Log done(Log log, int day, int sets, double load) {
    LogEntry.Done done =
        LogEntry.Done.builder("single-holds", Setup.of(HALF_CRIMP, EDGE))
            .sets(sets)
            .load(load > 0 ? Optional.of(Load.ofKilograms(load)) : Optional.empty())
            .effort(7)
            .build();
    return log.with(
        new LogEntry.Trained(MONDAY.plusDays(day), "strength", List.of(done), Optional.empty()));
  }

  private static List<LocalDate> days(CompiledPlan plan, int week) {
    return plan.sessionsOf(week).stream().map(DatedSession::date).toList();
  }

  private static void staysWhereItWas(
      CompiledPlan before, CompiledPlan after, int from, int light) {
    assertEquals(true, before.sessionsOf(light).get(0).hard());
    assertEquals(false, after.sessionsOf(light).get(0).hard(), "made lighter by the log");
    for (int week = from; week <= WEEKS; week++) {
      assertEquals(days(before, week), days(after, week), "week " + week);
    }
  }

  @Test
  void lightSessionsAloneWouldGetOtherDays() {
    CompiledPlan hard = compile(b -> b, 0.84, Skarvdal.tested());
    CompiledPlan light = compile(b -> b, 0.6, Skarvdal.tested());
    assertEquals(List.of(MONDAY.plusDays(1), MONDAY.plusDays(3)), days(hard, 1));
    assertEquals(List.of(MONDAY.plusDays(1), MONDAY.plusDays(5)), days(light, 1));
  }

  @Test
  void limitedLoadKeepsItsDays() {
    Log log = done(done(Skarvdal.tested(), 1, 3, 55), 3, 3, 55);
    log = log.with(LogEntry.Pain.builder(MONDAY.plusDays(3), Finger.RING, 4).build());
    staysWhereItWas(compile(b -> b, 0.84, Skarvdal.tested()), compile(b -> b, 0.84, log), 2, 2);
  }

  @Test
  void returningLoadKeepsItsDays() {
    Log log = done(done(Skarvdal.tested(), 1, 5, 0), 3, 5, 0);
    for (int day : new int[] {8, 10}) {
      log = log.with(new LogEntry.Skipped(MONDAY.plusDays(day), "strength", Optional.empty()));
    }
    staysWhereItWas(compile(b -> b, 0.84, Skarvdal.tested()), compile(b -> b, 0.84, log), 3, 3);
  }

  @Test
  void heldRampKeepsItsDays() {
    UnaryOperator<Block.Builder> ramp = b -> b.introduce(HALF_CRIMP, 0.5, 3);
    Log log = Skarvdal.tested();
    for (int day : new int[] {1, 5, 8, 12}) {
      log = done(log, day, 3, 0);
    }
    CompiledPlan before = compile(ramp, 0.84, Skarvdal.tested());
    CompiledPlan after = compile(ramp, 0.84, log);
    assertTrue(days(before, 3).contains(MONDAY.plusDays(17)), days(before, 3).toString());
    staysWhereItWas(before, after, 3, 3);
  }

  @Test
  void restOfALighterWeekKeepsItsDays() {
    Log log = done(Skarvdal.tested(), 1, 3, 55);
    CompiledPlan after = compile(b -> b, 0.84, log);
    assertEquals(false, after.sessionsOf(1).get(1).hard());
    assertEquals(MONDAY.plusDays(3), after.sessionsOf(1).get(1).date());
    assertEquals(days(compile(b -> b, 0.84, Skarvdal.tested()), 2), days(after, 2));
  }
}
