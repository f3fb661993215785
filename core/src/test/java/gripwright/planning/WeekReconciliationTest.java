package gripwright.planning;

import static gripwright.planning.Skarvdal.DRAG;
import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static gripwright.planning.Skarvdal.SERIES;
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
import gripwright.protocol.Protocol;
import gripwright.protocol.Term;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.schedule.DatedSession;
import gripwright.schedule.Derivation;
import gripwright.schedule.Happened;
import gripwright.schedule.MissedSession;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.PlannedExercise.LoadedStep;
import gripwright.season.CompiledPlan;
import gripwright.season.Planner;
import gripwright.wording.Words;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What a logged session was, exercise by exercise. */
class WeekReconciliationTest {

  private static final Exercise LIGHT =
      Exercise.of(HOLDS, HALF_CRIMP, EDGE).with("level", Level.ofMax(60));

  /** On Tuesday and Saturday: light holds, then a series on a drag. */
  private static Plan plan(Exercise... lines) {
    return Plan.named("spring")
        .athlete("ylva")
        .from(MONDAY)
        .block(Block.named("base", 3).session(SessionPlan.of("strength", 2, lines)).build())
        .build();
  }

  private static CompiledPlan compile(LogEntry... entries) {
    return compile(plan(LIGHT, Exercise.of(SERIES, DRAG, EDGE)), entries);
  }

  private static CompiledPlan compile(Plan plan, LogEntry... entries) {
    Log log = Skarvdal.tested();
    for (LogEntry entry : entries) {
      log = log.with(entry);
    }
    return Planner.compile(plan, Skarvdal.ylva().build(), log, List.of());
  }

  /** One exercise of a line. */
  private static final class Work {
    private final String protocol;
    private final Grip grip;
    private Length edge = EDGE;
    private OptionalInt sets = OptionalInt.empty();
    private Optional<Load> load = Optional.empty();
    private OptionalDouble effort = OptionalDouble.empty();
    private OptionalDouble pain = OptionalDouble.empty();

    Work(String protocol, Grip grip) {
      this.protocol = protocol;
      this.grip = grip;
    }

    Work edge(double millimetres) {
      edge = Length.ofMillimetres(millimetres);
      return this;
    }

    Work sets(int count) {
      sets = OptionalInt.of(count);
      return this;
    }

    Work load(double kilograms) {
      load = Optional.of(Load.ofKilograms(kilograms));
      return this;
    }

    Work felt(double outOfTen, double score) {
      effort = OptionalDouble.of(outOfTen);
      pain = OptionalDouble.of(score);
      return this;
    }

    private LogEntry.Done done() {
      return LogEntry.Done.builder(protocol, Setup.of(grip, edge))
          .sets(sets)
          .load(load)
          .effort(effort)
          .pain(pain)
          .build();
    }
  }

  private static Work holds() {
    return new Work("single-holds", HALF_CRIMP);
  }

  private static Work series() {
    return new Work("series", DRAG);
  }

  private static LogEntry trained(int day, String session, Work... works) {
    return new LogEntry.Trained(
        MONDAY.plusDays(day),
        session,
        List.of(works).stream().map(Work::done).toList(),
        Optional.empty());
  }

  private static LogEntry trained(int day, Work... works) {
    return trained(day, "strength", works);
  }

  private static DatedSession first(LogEntry... entries) {
    return compile(entries).sessions().get(0);
  }

  private static PlannedExercise holds(Work work) {
    return first(trained(1, work, series())).exercises().get(0);
  }

  private final PlannedExercise planned = compile().sessions().get(0).exercises().get(0);

  private static String reported(PlannedExercise exercise) {
    return String.join(
        " | ",
        exercise.why().stream()
            .map(
                (Derivation w) ->
                    Words.step(w) + " " + w.value() + " " + w.unit() + ": " + Words.say(w))
            .toList());
  }

  @Test
  void workDoneAsPlannedEqualsThePlan() {
    DatedSession session = first(trained(1, holds(), series()));
    PlannedExercise exercise = session.exercises().get(0);
    assertEquals("trained as planned, as logged", Words.say(session.placedBecause()));
    assertEquals(planned.steps(), exercise.steps());
    assertEquals(planned.scheme(), exercise.scheme());
    assertEquals(planned.percentOfMax(), exercise.percentOfMax());
    assertEquals(planned.maximum(), exercise.maximum());
    assertEquals(false, exercise.hard());
    double load = planned.totalLoad().kilograms();
    assertEquals(
        "planned " + load + " kg: 5 sets | done " + load + " kg: 5 sets, as logged",
        reported(exercise));
  }

  @Test
  void anotherDayIsReported() {
    DatedSession session = first(trained(2, holds(), series()));
    assertEquals(
        "trained on this day, as logged; planned for 2027-03-02",
        Words.say(session.placedBecause()));
    assertEquals(compile().sessions().get(0).minutes(), session.minutes());
  }

  @Test
  void differentLoadAndSetsAreReportedWithEffortAndPain() {
    PlannedExercise exercise = holds(holds().sets(1).load(50).felt(7.5, 1));
    assertEquals(1, exercise.scheme().sets());
    assertEquals(List.of(new LoadedStep(10, Optional.of(Load.ofKilograms(50)))), exercise.steps());
    assertEquals(
        "planned "
            + planned.totalLoad().kilograms()
            + " kg: 5 sets | done 50.0 kg: 1 set, effort 7.5, pain 1, as logged",
        reported(exercise));
    assertEquals(OptionalDouble.empty(), exercise.percentOfMax());
    assertEquals(planned.maximum(), exercise.maximum());
    assertEquals(Level.total(Load.ofKilograms(50)), exercise.scheme().holds().get(0).level());
    assertEquals(
        List.of(10.0, 180.0, 10.0),
        holds(holds().sets(2).load(50)).steps().stream().map(LoadedStep::seconds).toList());
  }

  @Test
  void workIsHardByEffortOrFromEightyPerCent() {
    double maximum = planned.maximum().orElseThrow().used().kilograms();
    assertEquals(false, holds(holds().felt(7.9, 0)).hard());
    assertEquals(true, holds(holds().felt(8, 0)).hard());
    assertEquals(true, holds(holds().load(0.8 * maximum)).hard());
    assertEquals(false, holds(holds().load(0.79 * maximum)).hard());
    assertEquals(
        false,
        holds(holds().edge(15).load(0.8 * maximum)).hard(),
        "its maximum on that edge is another");
    assertEquals(true, holds(holds().edge(15).load(50).felt(8, 0)).hard());
  }

  @Test
  void onAnotherEdgeTheMaximumIsNotKnown() {
    PlannedExercise exercise = holds(holds().edge(15));
    assertEquals(15, exercise.setup().edge().millimetres());
    assertEquals(Optional.empty(), exercise.maximum());
    assertEquals(OptionalDouble.empty(), exercise.percentOfMax());
    assertEquals(planned.totalLoad(), exercise.totalLoad());
  }

  @Test
  void sessionWithMissingSetsOrExercisesIsPartial() {
    assertEquals(Happened.Kind.DONE, kind(trained(1, holds(), series())));
    assertEquals(Happened.Kind.DONE, kind(trained(1, holds().sets(6), series())));
    assertEquals(Happened.Kind.IN_PART, kind(trained(1, holds().sets(4), series())));
    assertEquals(Happened.Kind.IN_PART, kind(trained(1, holds())));
  }

  private static Happened.Kind kind(LogEntry line) {
    return first(line).happened().orElseThrow().kind();
  }

  @Test
  void anExerciseKeepsItsNumberInThePlan() {
    DatedSession session = first(trained(1, series()));
    assertEquals(1, session.exercises().size());
    assertEquals(1, session.exercises().get(0).order());
    assertEquals(
        "2", session.exercises().get(0).path().steps().stream().reduce((a, b) -> b).get().name());
  }

  @Test
  void entryWithoutSetsIsAnUntrainedSession() {
    CompiledPlan plan = compile(trained(1, holds().sets(0)));
    assertEquals(
        List.of(MissedSession.Kind.NOT_LOGGED),
        plan.missed().stream().map(MissedSession::kind).toList());
  }

  private static DatedSession extra(Work... works) {
    return withExtra(works).sessionsOf(1).stream()
        .filter(s -> s.name().equals("extra"))
        .findFirst()
        .orElseThrow();
  }

  private static CompiledPlan withExtra(Work... works) {
    return compile(
        trained(1, holds(), series()), trained(2, "extra", works), trained(5, holds(), series()));
  }

  @Test
  void unplannedWorkIsCalculatedFromASimilarExercise() {
    DatedSession extra = extra(holds().sets(2));
    assertEquals("extra", extra.name());
    assertEquals("trained without being planned, as logged", Words.say(extra.placedBecause()));
    assertEquals(Happened.Kind.UNPLANNED, extra.happened().orElseThrow().kind());
    PlannedExercise exercise = extra.exercises().get(0);
    assertEquals(planned.totalLoad(), exercise.totalLoad());
    assertEquals(2, exercise.scheme().sets());
    assertEquals(
        "done " + planned.totalLoad().kilograms() + " kg: 2 sets, as logged", reported(exercise));
    assertEquals(4, extra.minutes(), "200 s");
    assertEquals(
        "exercise 1", exercise.path().steps().stream().reduce((a, b) -> b).get().toString());
  }

  @Test
  void workOnAnotherSetupNeedsALoggedLoad() {
    assertEquals(60, extra(holds().edge(15).load(60)).exercises().get(0).totalLoad().kilograms());
    assertEquals(5, extra(holds().edge(15).load(60)).exercises().get(0).scheme().sets());
    PlannedExercise drag = extra(new Work("single-holds", DRAG)).exercises().get(0);
    assertEquals(84, drag.percentOfMax().orElseThrow(), 1e-9, "the protocol's own level");
  }

  @Test
  void aSecondSessionOfAKnownNameTakesAsLongAsThePlanSays() {
    CompiledPlan plan =
        compile(
            trained(1, holds(), series()),
            trained(3, holds(), series()),
            trained(5, holds(), series()));
    DatedSession unplanned =
        plan.sessionsOf(1).stream()
            .filter(s -> s.happened().orElseThrow().kind() == Happened.Kind.UNPLANNED)
            .findFirst()
            .orElseThrow();
    assertEquals(compile().sessions().get(0).minutes(), unplanned.minutes());
    assertEquals(
        "2", unplanned.exercises().get(1).path().steps().stream().reduce((a, b) -> b).get().name());
  }

  private static final Protocol PYRAMID =
      Protocol.named("pyramid")
          .step(hold(0.5))
          .step(new Protocol.Part.Rest(Term.of(Duration.ofMinutes(2))))
          .step(hold(0.75))
          .build();

  private static Protocol.Part hold(double level) {
    return new Protocol.Part.Hold(Term.of(Duration.ofSeconds(10)), Term.of(new Level.OfMax(level)));
  }

  @Test
  void loggedHighestLoadScalesTheOtherHolds() {
    CompiledPlan plan =
        compile(
            plan(Exercise.of(PYRAMID, HALF_CRIMP, EDGE)),
            trained(1, new Work("pyramid", HALF_CRIMP).load(60)));
    PlannedExercise asked =
        compile(plan(Exercise.of(PYRAMID, HALF_CRIMP, EDGE))).sessions().get(0).exercises().get(0);
    double share = 60 / asked.totalLoad().kilograms();
    List<LoadedStep> steps = plan.sessions().get(0).exercises().get(0).steps();
    assertEquals(
        asked.steps().get(0).load().orElseThrow().kilograms() * share,
        steps.get(0).load().orElseThrow().kilograms(),
        1e-9);
    assertEquals(120, steps.get(1).seconds());
    assertEquals(60, steps.get(2).load().orElseThrow().kilograms(), 1e-9);
  }

  @Test
  void aSessionOfTheWeekBeforeMayBeTrainedInThisOne() {
    CompiledPlan plan =
        compile(
            trained(1, holds(), series()),
            trained(7, holds(), series()),
            trained(8, holds(), series()));
    assertEquals(List.of(), plan.missed());
    assertEquals(
        List.of("2027-03-08 Optional[2027-03-06]", "2027-03-09 Optional[2027-03-09]"),
        plan.sessionsOf(2).stream()
            .filter(s -> s.happened().isPresent())
            .map(s -> s.date() + " " + s.happened().orElseThrow().planned().map(DatedSession::date))
            .toList());
  }
}
