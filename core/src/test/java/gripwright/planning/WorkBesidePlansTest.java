package gripwright.planning;

import static gripwright.planning.Skarvdal.DRAG;
import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.protocol.Level;
import gripwright.quantity.Load;
import gripwright.schedule.DatedSession;
import gripwright.schedule.NotMadeUp;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import gripwright.season.Planner;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What was logged and no plan has: as it was done, and what it takes from the plan. */
class WorkBesidePlansTest {

  private static CompiledPlan compile(LogEntry... lines) {
    Log log = Skarvdal.tested();
    for (LogEntry line : lines) {
      log = log.with(line);
    }
    Exercise line =
        Exercise.of(HOLDS, HALF_CRIMP, EDGE)
            .with("work", Duration.ofSeconds(12))
            .with("level", Level.ofMax(84));
    Plan plan =
        Plan.named("spring")
            .athlete("ylva")
            .from(MONDAY)
            .block(Block.named("base", 2).session(SessionPlan.of("strength", 3, line)).build())
            .build();
    return Planner.compile(
        plan,
        Skarvdal.ylva()
            .available(DayOfWeek.MONDAY, Duration.ofMinutes(90))
            .available(DayOfWeek.TUESDAY, Duration.ofMinutes(1))
            .available(DayOfWeek.WEDNESDAY, Duration.ofMinutes(90))
            .available(DayOfWeek.THURSDAY, Duration.ofMinutes(1))
            .build(),
        log,
        List.of());
  }

  private static LogEntry.Trained trained(int day, String name, Grip grip, double kilograms) {
    return new LogEntry.Trained(
        MONDAY.plusDays(day),
        name,
        List.of(
            LogEntry.Done.builder("single-holds", Setup.of(grip, EDGE))
                .sets(2)
                .load(Load.ofKilograms(kilograms))
                .build()),
        Optional.empty());
  }

  private static List<LocalDate> days(CompiledPlan plan) {
    return plan.sessions().stream().map(DatedSession::date).limit(3).toList();
  }

  @Test
  void workBeforeThePlanGetsTheHoldsOfThePlansProtocol() {
    DatedSession session = compile(trained(-3, "club", HALF_CRIMP, 50)).schedule().beside().get(0);
    PlannedExercise exercise = session.exercises().get(0);
    assertEquals(MONDAY.minusDays(3), session.date());
    assertEquals(50, exercise.totalLoad().kilograms(), 1e-9);
    assertEquals(2, exercise.scheme().sets());
    assertEquals(12, exercise.scheme().holds().get(0).time().toSeconds(), "as in the plan");
  }

  /** Tells of two logged sessions, by day of the plan and load, whether they are hard. */
  private static List<Boolean> hard(int day, double load, int later, double other) {
    return compile(
            trained(day, "club", HALF_CRIMP, load), trained(later, "club", HALF_CRIMP, other))
        .schedule()
        .beside()
        .stream()
        .map(DatedSession::hard)
        .toList();
  }

  @Test
  void lightWorkIsNotHardEvenIfPlannedHard() {
    assertEquals(List.of(false, true), hard(-5, 40, -3, 75));
  }

  @Test
  void workBeforeTheFirstTestIsRatedByThatTest() {
    assertEquals(List.of(false, true), hard(-10, 50, -9, 75));
  }

  @Test
  void twelveWeeksBeforeThePlanAreRead() {
    assertEquals(
        List.of(MONDAY.minusDays(84), MONDAY.minusDays(1)),
        compile(
                trained(-85, "club", DRAG, 30),
                trained(-84, "club", DRAG, 30),
                trained(-1, "club", DRAG, 30))
            .schedule()
            .beside()
            .stream()
            .map(DatedSession::date)
            .toList());
  }

  @Test
  void duringThePlanOnlyUnmatchedSessionsAreBeside() {
    CompiledPlan plan =
        compile(
            trained(1, "strength", HALF_CRIMP, 75),
            trained(2, "club", DRAG, 30),
            trained(4, "club", DRAG, 30));
    assertEquals(
        List.of(MONDAY.plusDays(4)),
        plan.schedule().beside().stream().map(DatedSession::date).toList());
  }

  /** Monday, Wednesday and Saturday are free; three hard sessions need all of them. */
  @Test
  void hardWorkOnTheEveningBeforeThePlanKeepsItsGap() {
    List<LocalDate> all = List.of(MONDAY, MONDAY.plusDays(2), MONDAY.plusDays(5));
    assertEquals(all, days(compile()));
    assertEquals(all, days(compile(trained(-1, "club", HALF_CRIMP, 40))));
    assertEquals(all, days(compile(trained(-2, "club", HALF_CRIMP, 75))));
    assertEquals(
        all.subList(1, 3), days(compile(trained(-1, "club", HALF_CRIMP, 75))).subList(0, 2));
    assertEquals(all.subList(1, 3), days(compile(test(-1))).subList(0, 2));
  }

  @Test
  void sessionsThatLoseTheirDayToTheLogAreListed() {
    assertEquals(List.of(), compile().schedule().notMadeUp());
    assertEquals(List.of(), compile(test(-2)).schedule().notMadeUp());
    assertEquals(
        List.of(new NotMadeUp(1, "strength", 1)), compile(test(-1)).schedule().notMadeUp());
  }

  private static LogEntry test(int day) {
    return new LogEntry.Tested(
        Skarvdal.test(HALF_CRIMP, MONDAY.plusDays(day), 92.5), Optional.empty());
  }
}
