package gripwright.season;

import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.change.PlanChange;
import gripwright.change.SessionChange;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.hand.Side;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import gripwright.quantity.Load;
import gripwright.wording.Words;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Why days ahead are others than they were before the log was read. */
class LogReasonsTest {

  private static CompiledPlan compile(Advance advance, LogEntry... entries) {
    Plan plan =
        Plan.named("spring")
            .athlete("ylva")
            .from(MONDAY)
            .block(
                Block.named("base", 3)
                    .session(SessionPlan.of("strength", 2, Exercise.of(HOLDS, HALF_CRIMP, EDGE)))
                    .advance(advance)
                    .build())
            .build();
    Log log = Skarvdal.tested();
    for (LogEntry entry : entries) {
      log = log.with(entry);
    }
    return Planner.compile(plan, Skarvdal.ylva().build(), log, List.of());
  }

  private static final Advance WEEKLY = Advance.weekly(Advance.loadByPercent(2));

  private static LogEntry trained(int day, String session, int sets, double effort) {
    LogEntry.Done done =
        LogEntry.Done.builder("single-holds", Setup.of(HALF_CRIMP, EDGE))
            .sets(sets)
            .effort(effort)
            .build();
    return new LogEntry.Trained(MONDAY.plusDays(day), session, List.of(done), Optional.empty());
  }

  private static LogEntry trained(int day) {
    return trained(day, "strength", 5, 7);
  }

  private static LogEntry trained(int day, Load load) {
    LogEntry.Trained line = (LogEntry.Trained) trained(day);
    LogEntry.Done done = line.done().get(0);
    return new LogEntry.Trained(
        line.date(),
        line.session(),
        List.of(done.toBuilder().load(Optional.of(load)).build()),
        line.note());
  }

  private static LogEntry climbed(int day, boolean hard) {
    return LogEntry.Climbed.builder(MONDAY.plusDays(day), hard, "much", Duration.ofHours(2))
        .build();
  }

  private static List<String> because(CompiledPlan plan, Class<? extends PlanChange> kind) {
    List<LogChange> changes =
        plan.changes().stream().filter(c -> kind.isInstance(c.change())).toList();
    assertTrue(!changes.isEmpty(), plan.changes().toString());
    return Words.say(changes.get(0).because());
  }

  @Test
  void logOfThePlannedSessionsChangesNothing() {
    assertEquals(List.of(), compile(WEEKLY, trained(1)).changes());
  }

  @Test
  void hardClimbingIsTheReasonForADroppedSession() {
    CompiledPlan plan = compile(WEEKLY, trained(1), climbed(4, true));
    assertEquals(
        List.of("hard climbing on 2027-03-05"), because(plan, SessionChange.SessionDropped.class));
  }

  @Test
  void unplannedSessionIsTheReasonForAMovedSession() {
    CompiledPlan plan = compile(WEEKLY, trained(1), trained(4, "extra", 3, 9));
    assertEquals(
        List.of("extra trained on 2027-03-05"), because(plan, SessionChange.SessionDropped.class));
    CompiledPlan late = compile(WEEKLY, trained(4));
    assertEquals(
        List.of("strength trained on 2027-03-05"),
        because(late, SessionChange.SessionDropped.class));
  }

  @Test
  void testIsTheReasonForChangedLoadsAndDroppedSessions() {
    LogEntry test =
        new LogEntry.Tested(Skarvdal.test(HALF_CRIMP, MONDAY.plusDays(4), 99), Optional.empty());
    CompiledPlan plan = compile(WEEKLY, trained(1), test);
    assertEquals(
        List.of("tested on 2027-03-05"), because(plan, SessionChange.SessionDropped.class));
    assertEquals(
        List.of("tested on 2027-03-05"), because(plan, SessionChange.ExerciseChanged.class));
    LogEntry before =
        new LogEntry.Tested(Skarvdal.test(HALF_CRIMP, MONDAY.minusDays(1), 99), Optional.empty());
    assertEquals(List.of(), compile(WEEKLY, before).changes(), "known to the plan");
  }

  @Test
  void bodyMassIsTheReasonForChangedAddedLoad() {
    LogEntry lighter = new LogEntry.BodyMass(MONDAY.plusDays(2), Load.ofKilograms(58.3));
    assertEquals(
        List.of("body mass 58.3 kg"),
        because(compile(WEEKLY, trained(1), lighter), SessionChange.ExerciseChanged.class));
  }

  @Test
  void reasonsAgainstHarderWorkAreReportedOneByOne() {
    CompiledPlan plan = compile(WEEKLY, trained(1, "strength", 3, 7), trained(5, "strength", 4, 7));
    List<String> because = because(plan, SessionChange.ExerciseChanged.class);
    assertTrue(because.contains("3 of 5 sets on 2027-03-02"), because.toString());
    assertTrue(because.contains("4 of 5 sets on 2027-03-06"), because.toString());
  }

  @Test
  void earnedStepsAreReported() {
    Advance earned =
        new Advance(
            new Advance.Progress(
                Advance.loadByPercent(2.5),
                new Advance.WhenLogged(true, OptionalDouble.empty(), OptionalDouble.empty(), 2)),
            Optional.empty(),
            Optional.empty());
    assertEquals(
        List.of("earned in training: 1 step of 2.5 %"),
        because(compile(earned, trained(1), trained(5)), SessionChange.ExerciseChanged.class));
    Advance sets =
        new Advance(
            new Advance.Progress(
                new Advance.SetsTo(9, 1),
                new Advance.WhenLogged(true, OptionalDouble.empty(), OptionalDouble.empty(), 2)),
            Optional.empty(),
            Optional.empty());
    assertEquals(
        List.of("earned in training: 1 step of 1"),
        because(compile(sets, trained(1), trained(5)), SessionChange.ExerciseChanged.class));
  }

  @Test
  void moreLoadThanPlannedEarnsNoStep() {
    Advance earned =
        new Advance(
            new Advance.Progress(
                Advance.loadByPercent(2.5),
                new Advance.WhenLogged(true, OptionalDouble.empty(), OptionalDouble.empty(), 2)),
            Optional.empty(),
            Optional.empty());
    Load planned = compile(earned).sessions().get(0).exercises().get(0).totalLoad();
    assertEquals(
        List.of("earned in training: 1 step of 2.5 %"),
        because(
            compile(earned, trained(1, planned), trained(5, planned)),
            SessionChange.ExerciseChanged.class));
    Load more = planned.times(1.2);
    CompiledPlan after = compile(earned, trained(1, more), trained(5, more));
    assertEquals(
        planned,
        after.sessions().get(after.sessions().size() - 1).exercises().get(0).totalLoad(),
        after.changes().toString());
  }

  @Test
  void easyClimbingMovesNothing() {
    assertEquals(List.of(), compile(WEEKLY, trained(1), climbed(4, false)).changes());
  }

  @Test
  void pastDaysAreNotReported() {
    CompiledPlan plan = compile(WEEKLY, trained(2, "strength", 3, 7), trained(5, "strength", 5, 7));
    LocalDate until = plan.lastKnownDay().orElseThrow();
    assertTrue(
        plan.changes().stream().allMatch(c -> c.change().date().isAfter(until)),
        plan.changes().toString());
  }

  @Test
  void eventNearTheOldDayIsTheReasonForAMovedSession() {
    CompiledPlan plan = compile(WEEKLY, trained(1), trained(5), climbed(7, true));
    assertEquals(
        List.of("hard climbing on 2027-03-08"), because(plan, SessionChange.SessionMoved.class));
    assertEquals(
        List.of(),
        compile(WEEKLY, trained(1), climbed(3, true)).changes(),
        "two days before is not near");
  }

  private static CompiledPlan choosing(Advance advance, LogEntry... entries) {
    Exercise.Target both =
        new Exercise.BestOf(List.of(HALF_CRIMP, Skarvdal.DRAG), Optional.empty());
    Exercise line = Exercise.builder(HOLDS, both, EDGE).build();
    Plan plan =
        Plan.named("spring")
            .athlete("ylva")
            .from(MONDAY)
            .demand(HALF_CRIMP, 0.6)
            .demand(Skarvdal.DRAG, 0.4)
            .block(
                Block.named("base", 3)
                    .session(SessionPlan.of("strength", 2, line))
                    .advance(advance)
                    .build())
            .build();
    Log log = Skarvdal.tested();
    for (LogEntry entry : entries) {
      log = log.with(entry);
    }
    return Planner.compile(plan, Skarvdal.ylva().build(), log, List.of());
  }

  /** The little finger holds in the half crimp and not in the drag. */
  @Test
  void painIsTheReasonForAChangedChoiceOfGrips() {
    LogEntry skipped = new LogEntry.Skipped(MONDAY.plusDays(1), "strength", Optional.empty());
    LogEntry pain =
        LogEntry.Pain.builder(MONDAY.plusDays(2), Finger.LITTLE, 7)
            .side(Side.LEFT)
            .kind(LogEntry.Pain.Kind.SHARP)
            .build();
    CompiledPlan plan = choosing(WEEKLY, skipped, pain);
    assertEquals(
        List.of("pain little 7, sharp, on 2027-03-03"),
        because(plan, SessionChange.ExerciseDropped.class));
    List<LogChange> sets = sets(plan);
    assertTrue(!sets.isEmpty());
    for (LogChange change : sets) {
      assertEquals(List.of("pain little 7, sharp, on 2027-03-03"), Words.say(change.because()));
    }
  }

  /** The line's sets are those of its first grip, which was left out. */
  @Test
  void fewerSetsOfAChoiceAreNotReportedAsEarned() {
    LogEntry.Done drag =
        LogEntry.Done.builder("single-holds", Setup.of(Skarvdal.DRAG, EDGE)).sets(5).build();
    LogEntry trained =
        new LogEntry.Trained(MONDAY.plusDays(1), "strength", List.of(drag), Optional.empty());
    CompiledPlan plan = choosing(Advance.weekly(new Advance.SetsTo(9, 1)), trained);
    for (LogChange change : sets(plan)) {
      SessionChange.ExerciseChanged changed = (SessionChange.ExerciseChanged) change.change();
      if (changed.after().scheme().sets() < changed.before().scheme().sets()) {
        String because = String.join("; ", Words.say(change.because()));
        assertTrue(because.contains("left out on 2027-03-02"), because);
      }
    }
  }

  private static List<LogChange> sets(CompiledPlan plan) {
    return plan.changes().stream()
        .filter(
            change ->
                change.change() instanceof SessionChange.ExerciseChanged changed
                    && changed.measure() == SessionChange.Measure.SETS)
        .toList();
  }
}
