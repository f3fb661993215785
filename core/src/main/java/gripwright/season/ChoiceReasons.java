package gripwright.season;

import gripwright.athlete.PainReport;
import gripwright.change.PlanChange;
import gripwright.change.SessionChange;
import gripwright.finding.FindingList;
import gripwright.grip.Grip;
import gripwright.history.LogTimeline;
import gripwright.history.PainReports;
import gripwright.schedule.Cause;
import gripwright.schedule.DatedSession;
import gripwright.schedule.GripMix;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.Schedule;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Explains why the log changed the shares of a {@code best of}: pain closes one grip, and the
 * others take over its sets.
 */
final class ChoiceReasons {

  private final Schedule before;
  private final LogTimeline timeline;

  ChoiceReasons(Schedule before, LogTimeline timeline) {
    this.before = before;
    this.timeline = timeline;
  }

  /** Returns the pain that changed the choice; empty if no pain did, or there is no choice. */
  List<Cause> of(PlanChange change) {
    return change instanceof SessionChange of
        ? exercise(of).map(exercise -> pain(of.session(), exercise)).orElseGet(List::of)
        : List.of();
  }

  /** Returns the exercises of a session from the same line of the plan as another, including it. */
  static List<PlannedExercise> ofLine(DatedSession session, PlannedExercise one) {
    return session.exercises().stream()
        .filter(e -> FindingList.line(e.path()).equals(FindingList.line(one.path())))
        .toList();
  }

  /** Returns the exercise whose share of a choice changed. */
  private static Optional<PlannedExercise> exercise(SessionChange change) {
    Optional<PlannedExercise> exercise = Optional.empty();
    if (change instanceof SessionChange.ExerciseDropped dropped) {
      exercise = Optional.of(dropped.exercise());
    } else if (change instanceof SessionChange.ExerciseAdded added) {
      exercise = Optional.of(added.exercise());
    } else if (change instanceof SessionChange.ExerciseChanged changed
        && changed.measure() == SessionChange.Measure.SETS) {
      exercise = Optional.of(changed.after());
    }
    return exercise.filter(e -> e.mix().isPresent());
  }

  private List<Cause> pain(DatedSession session, PlannedExercise exercise) {
    List<Cause> reasons = new ArrayList<>();
    for (Grip grip : closed(session, exercise)) {
      PainReports.of(
              timeline.pains(),
              timeline.plan().from(),
              session.date(),
              grip,
              exercise.setup().hands())
          .stream()
          .filter(PainReport::stops)
          .max(Comparator.comparing(PainReport::date))
          .map(p -> new Cause.Pain(p.date(), p.score(), p.rising(), p.where()))
          .ifPresent(reasons::add);
    }
    return reasons;
  }

  /**
   * Returns the grips that a rule closes now: the exercise's own if its line has no other exercise
   * left.
   */
  private List<Grip> closed(DatedSession session, PlannedExercise exercise) {
    List<PlannedExercise> line = ofLine(session, exercise);
    return line.isEmpty()
        ? List.of(exercise.setup().grip())
        : line.stream()
            .flatMap(e -> e.mix().stream())
            .flatMap(mix -> mix.limits().stream())
            .filter(limit -> limit.reason() instanceof GripMix.ClosedByRule)
            .map(GripMix.Limit::grip)
            .distinct()
            .flatMap(name -> named(name).stream())
            .toList();
  }

  private Optional<Grip> named(String name) {
    return before.sessions().stream()
        .flatMap(session -> session.exercises().stream())
        .map(exercise -> exercise.setup().grip())
        .filter(grip -> grip.name().equals(name))
        .findFirst();
  }
}
