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
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.protocol.Level;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import gripwright.season.Planner;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** One thing at a time gets harder, and nothing in an eased week: cases that were once wrong. */
class SteadyProgressTest {

  private static final Advance SET_BY_LOG =
      new Advance(
          new Advance.Progress(
              new Advance.SetsTo(9, 1),
              new Advance.WhenLogged(true, OptionalDouble.of(8), OptionalDouble.empty(), 1)),
          Optional.empty(),
          Optional.empty());

  private static Block.Builder block(int weeks, Exercise exercise) {
    return Block.named("base", weeks).session(SessionPlan.of("strength", 1, exercise));
  }

  private static List<PlannedExercise> weekly(Block block, Log log) {
    Plan plan = Plan.named("winter").athlete("ylva").from(MONDAY).block(block).build();
    CompiledPlan compiled = Planner.compile(plan, Skarvdal.ylva().build(), log, List.of());
    return compiled.sessions().stream().map(s -> s.exercises().get(0)).toList();
  }

  private static List<Integer> sets(List<PlannedExercise> exercises) {
    return exercises.stream().map(e -> e.scheme().sets()).toList();
  }

  private static Log doneOn(LocalDate... days) {
    Log log = Skarvdal.tested();
    for (LocalDate day : days) {
      LogEntry.Done done =
          LogEntry.Done.builder(HOLDS.name(), Setup.of(HALF_CRIMP, EDGE))
              .sets(5)
              .setsPlanned(5)
              .effort(7)
              .build();
      log = log.with(new LogEntry.Trained(day, "strength", List.of(done), Optional.empty()));
    }
    return log;
  }

  @Test
  void earnedStepWaitsForTheEndOfAnEasedWeek() {
    Exercise exercise = Exercise.of(HOLDS, HALF_CRIMP, EDGE);
    Block block = block(3, exercise).advance(SET_BY_LOG).ease(2, 0.9).build();
    assertEquals(List.of(5, 4, 6), sets(weekly(block, doneOn(MONDAY.plusDays(1)))));
  }

  @Test
  void atMostOneEarnedStepIsTakenAWeek() {
    Exercise exercise = Exercise.of(HOLDS, HALF_CRIMP, EDGE);
    Block block = block(4, exercise).advance(SET_BY_LOG).build();
    Log log = doneOn(MONDAY.plusDays(1), MONDAY.plusDays(3), MONDAY.plusDays(5));
    assertEquals(List.of(5, 5, 5), sets(weekly(block, log)).subList(0, 3)); // as logged
    assertEquals(List.of(6, 7, 8), sets(weekly(block, log)).subList(3, 6));
  }

  @Test
  void earnedStepIsNotTakenWithTheLastStepOfARamp() {
    Exercise exercise = Exercise.of(HOLDS, HALF_CRIMP, EDGE);
    Block block = block(4, exercise).advance(SET_BY_LOG).introduce(HALF_CRIMP, 0.4, 3).build();
    Log log = doneOn(MONDAY.plusDays(1), MONDAY.plusDays(8), MONDAY.plusDays(15));
    assertEquals(List.of(5, 5, 5, 6), sets(weekly(block, log)));
  }

  @Test
  void anEasedHoldThatIsShorterIsNotHeavier() {
    Exercise exercise =
        Exercise.of(HOLDS, HALF_CRIMP, EDGE)
            .with("sets", 1)
            .with("level", Level.reserve(Duration.ofSeconds(6)));
    List<PlannedExercise> weeks =
        weekly(block(2, exercise).ease(2, 0.5).build(), Skarvdal.tested());
    assertEquals(5, weeks.get(1).timeUnderLoadSeconds());
    assertEquals(weeks.get(0).totalLoad(), weeks.get(1).totalLoad());
  }

  @Test
  void mixAddsNoSetsWhileAGripIsIntroduced() {
    Exercise exercise = bestOf(HALF_CRIMP, DRAG);
    Block block =
        block(4, exercise)
            .advance(Advance.weekly(new Advance.SetsTo(9, 1)))
            .introduce(DRAG, 0.7, 3)
            .build();
    Plan plan = Plan.named("winter").athlete("ylva").from(MONDAY).block(block).build();
    CompiledPlan compiled =
        Planner.compile(plan, Skarvdal.ylva().build(), Skarvdal.tested(), List.of());
    assertEquals(
        List.of(5, 5, 5, 6),
        compiled.sessions().stream()
            .map(s -> s.exercises().stream().mapToInt(e -> e.scheme().sets()).sum())
            .toList());
  }

  @Test
  void aMixSharesMoreSetsInAnEasedWeekThanOneOfItsGripsHasByItself() {
    Exercise exercise = bestOf(HALF_CRIMP, DRAG).with("sets", 1);
    Advance ofOneGrip = Advance.weekly(new Advance.SetsTo(7, 1)).on(HALF_CRIMP.name());
    Block block = block(7, exercise).advance(ofOneGrip).ease(7, 0.8).build();
    Plan plan = Plan.named("winter").athlete("ylva").from(MONDAY).block(block).build();
    CompiledPlan compiled =
        Planner.compile(plan, Skarvdal.ylva().build(), Skarvdal.tested(), List.of());
    assertEquals(
        List.of(1, 2, 3, 4, 5, 6, 5),
        compiled.sessions().stream()
            .map(s -> s.exercises().stream().mapToInt(e -> e.scheme().sets()).sum())
            .toList());
  }

  @Test
  void aMixOfOneSetIsEasedByAShorterHoldWhicheverGripTakesIt() {
    Exercise exercise = bestOf(HALF_CRIMP, DRAG).with("sets", 1); // which half crimp leads
    Advance ofTheOther = Advance.weekly(new Advance.SetsTo(7, 1)).on(DRAG.name());
    Plan plan =
        Plan.named("winter")
            .athlete("ylva")
            .from(MONDAY)
            .demand(HALF_CRIMP, 0.3)
            .demand(DRAG, 0.7)
            .weights(new Exercise.Weights(1, 0, 0))
            .block(block(5, exercise).advance(ofTheOther).ease(5, 0.5).build())
            .build();
    CompiledPlan compiled =
        Planner.compile(plan, Skarvdal.ylva().build(), Skarvdal.tested(), List.of());
    List<PlannedExercise> weeks =
        compiled.sessions().stream().flatMap(s -> s.exercises().stream()).toList();
    assertEquals(5, weeks.size());
    assertEquals(DRAG, weeks.get(4).setup().grip());
    assertEquals(5, weeks.get(4).timeUnderLoadSeconds());
    assertEquals(weeks.get(3).totalLoad(), weeks.get(4).totalLoad());
  }

  private static Exercise bestOf(Grip... grips) {
    return Exercise.builder(HOLDS, new Exercise.BestOf(List.of(grips), Optional.empty()), EDGE)
        .build();
  }
}
