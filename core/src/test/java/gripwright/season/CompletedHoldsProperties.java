package gripwright.season;

import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static gripwright.planning.Skarvdal.SERIES;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.grip.Setup;
import gripwright.history.CompletedHolds;
import gripwright.history.ExerciseMatch;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import gripwright.protocol.Extent;
import gripwright.protocol.Level;
import gripwright.protocol.Protocol;
import gripwright.protocol.Term;
import gripwright.quantity.Load;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import gripwright.strength.CompletedHold;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Completed holds of training are known to reports, and never raise a load. */
class CompletedHoldsProperties {

  private static final int WEEKS = 6;
  private static final int LOGGED = 3;

  private static CompiledPlan compile(Log log) {
    Plan plan =
        Plan.named("spring")
            .athlete("ylva")
            .from(MONDAY)
            .block(
                Block.named("base", WEEKS)
                    .session(SessionPlan.of("strength", 1, Exercise.of(HOLDS, HALF_CRIMP, EDGE)))
                    .build())
            .build();
    return Planner.compile(plan, Skarvdal.ylva().build(), log, List.of());
  }

  /** The loads and maxima of the weeks after those that are logged. */
  private static Map<Integer, PlannedExercise> later(CompiledPlan plan) {
    Map<Integer, PlannedExercise> later = new TreeMap<>();
    for (DatedSession session : plan.sessions()) {
      if (session.week() > LOGGED) {
        later.put(session.week(), session.exercises().get(0));
      }
    }
    return later;
  }

  @Property(tries = 60)
  void completedHoldsNeverRaiseALoad(
      @ForAll @Size(LOGGED) List<@DoubleRange(min = 0.9, max = 1.6) Double> heavier,
      @ForAll @IntRange(min = 0, max = 10) int effort) {
    Log tested = Skarvdal.log(Skarvdal.test(HALF_CRIMP, MONDAY.minusDays(20), 90));
    CompiledPlan planned = compile(tested);
    Log trained = tested;
    for (int week = 1; week <= LOGGED; week++) {
      DatedSession session = planned.sessions().get(week - 1);
      PlannedExercise asked = session.exercises().get(0);
      LogEntry.Done done =
          LogEntry.Done.builder(asked.protocol(), asked.setup())
              .sets(asked.scheme().sets())
              .load(asked.totalLoad().times(heavier.get(week - 1)))
              .effort(effort)
              .pain(0)
              .build();
      trained =
          trained.with(
              new LogEntry.Trained(
                  session.date(), session.name(), List.of(done), Optional.empty()));
    }
    Map<Integer, PlannedExercise> without = later(planned);
    Map<Integer, PlannedExercise> with = later(compile(trained));
    assertEquals(WEEKS - LOGGED, without.size());
    assertEquals(without.keySet(), with.keySet());
    with.forEach(
        (week, exercise) -> {
          PlannedExercise before = without.get(week);
          assertTrue(exercise.totalLoad().compareTo(before.totalLoad()) <= 0, () -> "week " + week);
          assertEquals(before.maximum(), exercise.maximum());
        });
  }

  @Example
  void anExerciseIsCompletedWithAllSetsLoadAndEffort() {
    assertEquals(
        List.of(
            new CompletedHold(
                MONDAY, Setup.of(HALF_CRIMP, EDGE), Duration.ofSeconds(7), Load.ofKilograms(70))),
        found(SERIES, 5, 5, 70, OptionalDouble.of(7)));
    assertEquals(
        List.of(),
        found(HOLDS, 5, 5, 70, OptionalDouble.of(7)),
        "a plan may have set another hold time");
    assertEquals(List.of(), found(SERIES, 4, 5, 70, OptionalDouble.of(7)), "a set is missing");
    assertEquals(List.of(), found(SERIES, 5, 5, 0, OptionalDouble.of(7)), "no load");
    assertEquals(List.of(), found(SERIES, 5, 5, 70, OptionalDouble.empty()), "no effort");
    assertEquals(List.of(), found(SERIES, 0, 0, 70, OptionalDouble.of(7)), "nothing was done");
  }

  private static List<CompletedHold> found(
      Protocol protocol, int sets, int planned, double kilograms, OptionalDouble effort) {
    LogEntry.Done done =
        LogEntry.Done.builder(protocol.name(), Setup.of(HALF_CRIMP, EDGE))
            .sets(sets)
            .setsPlanned(planned == 0 ? OptionalInt.empty() : OptionalInt.of(planned))
            .load(kilograms == 0 ? Optional.empty() : Optional.of(Load.ofKilograms(kilograms)))
            .effort(effort)
            .build();
    Log log =
        Skarvdal.log()
            .with(new LogEntry.Trained(MONDAY, "strength", List.of(done), Optional.empty()));
    return CompletedHolds.in(log, Map.of(protocol.name(), protocol));
  }

  /** Holds of 7 s: for their whole time, or as a bound. */
  private static Protocol sevens(Extent extent) {
    return Protocol.named("sevens")
        .step(
            new Protocol.Part.Hold(
                Term.of(Duration.ofSeconds(7)), Term.of(Level.ofMax(55)), extent))
        .build();
  }

  @Example
  void aHoldWithABoundIsNotKnownToBeCompleted() {
    assertEquals(1, found(sevens(Extent.WHOLE), 1, 1, 70, OptionalDouble.of(7)).size());
    assertEquals(List.of(), found(sevens(Extent.UP_TO), 1, 1, 70, OptionalDouble.of(7)));
    for (Extent extent : Extent.values()) {
      Exercise exercise = Exercise.of(sevens(extent), HALF_CRIMP, EDGE);
      Plan plan =
          Plan.named("spring")
              .athlete("ylva")
              .from(MONDAY)
              .block(
                  Block.named("base", 1).session(SessionPlan.of("strength", 1, exercise)).build())
              .build();
      Log log = Skarvdal.log(Skarvdal.test(HALF_CRIMP, MONDAY.minusDays(20), 90));
      PlannedExercise planned =
          Planner.compile(plan, Skarvdal.ylva().build(), log, List.of())
              .sessions()
              .get(0)
              .exercises()
              .get(0);
      LogEntry.Done done =
          LogEntry.Done.builder(planned.protocol(), planned.setup())
              .sets(1)
              .setsPlanned(1)
              .load(planned.totalLoad())
              .effort(7)
              .build();
      assertEquals(
          extent.isBound() ? 0 : 1,
          CompletedHolds.of(
                  MONDAY, new ExerciseMatch(Optional.of(planned), Optional.of(done)), Map.of())
              .count());
    }
  }
}
