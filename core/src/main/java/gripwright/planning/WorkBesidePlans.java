package gripwright.planning;

import gripwright.finding.ModelPath;
import gripwright.grip.HandFits;
import gripwright.history.ExerciseMatch;
import gripwright.history.LogTimeline;
import gripwright.log.LogEntry;
import gripwright.plan.Exercise;
import gripwright.planning.load.Prescription;
import gripwright.protocol.Argument;
import gripwright.schedule.DatedSession;
import gripwright.schedule.Happened;
import gripwright.schedule.PlacementReason;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.Schedule;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Logged sessions that are in no plan, as done. An entry gives only protocol, sets and load. The
 * rest is taken from an exercise of the plan with the same protocol, preferably on the same grip,
 * because athletes mostly continue their habits; without one the protocol's defaults apply.
 */
final class WorkBesidePlans {

  private final LogTimeline timeline;
  private final SessionExpansion expansion;
  private final WorkAsDone work;
  private final ModelPath root;
  private final List<Exercise> ofPlan;

  WorkBesidePlans(LogTimeline timeline, SessionExpansion expansion, HandFits fits) {
    this.timeline = timeline;
    this.expansion = expansion;
    this.work = new WorkAsDone(expansion, fits);
    String athlete = timeline.athlete().name();
    this.root = timeline.plan().path().then("for", athlete);
    this.ofPlan =
        timeline.plan().blocks().stream()
            .flatMap(block -> block.contentFor(athlete).sessions().stream())
            .flatMap(session -> session.contentFor(athlete).exercises().stream())
            .toList();
  }

  /**
   * Returns the sessions by date; sessions without usable work are left out.
   *
   * @param earlier the schedules of the athlete's plans that began before this one
   */
  List<DatedSession> sessions(List<Schedule> earlier) {
    return timeline.beside(earlier).stream()
        .map(this::session)
        .filter(session -> !session.exercises().isEmpty())
        .toList();
  }

  private DatedSession session(LogEntry.Trained line) {
    LocalDate day = line.date();
    ModelPath path = root.then("session", line.session()).then("date", day.toString());
    List<PlannedExercise> exercises = new ArrayList<>();
    for (LogEntry.Done done : line.done()) {
      Prescription.Place place =
          new Prescription.Place(
              day, exercises.size() + 1, path.then("exercise", exercises.size() + 1));
      expansion
          .unplanned(done, with(done), knownBy(day), place.path())
          .map(like -> asDone(like, done, place))
          .ifPresent(exercises::addAll);
    }
    return DatedSession.builder(day, line.session(), expansion.bodyMassOn(day), path)
        .minutes(
            exercises.stream()
                .mapToInt(e -> (int) ((e.scheme().duration().toSeconds() + 59) / 60))
                .sum())
        .hard(exercises.stream().anyMatch(PlannedExercise::hard))
        .placedBecause(new PlacementReason.NotPlanned())
        .exercises(exercises)
        .happened(
            Optional.of(
                new Happened(Happened.Kind.UNPLANNED, Optional.empty(), timeline.entry(line))))
        .build();
  }

  /**
   * Returns the day up to which tests determine the strength; before the first test, the start of
   * the plan.
   */
  private LocalDate knownBy(LocalDate day) {
    LocalDate from = timeline.plan().from();
    boolean tested = timeline.log().tests().stream().anyMatch(test -> !test.date().isAfter(day));
    return tested || from.isBefore(day) ? day : from;
  }

  private List<PlannedExercise> asDone(
      PlannedExercise like, LogEntry.Done done, Prescription.Place place) {
    ExerciseMatch match = new ExerciseMatch(Optional.empty(), Optional.of(done));
    return WorkAsDone.sets(match, like) == 0
        ? List.of()
        : List.of(work.of(like, match, place, expansion.bodyMassOn(place.day())));
  }

  private Map<String, Argument> with(LogEntry.Done done) {
    List<Exercise> same =
        ofPlan.stream().filter(e -> e.protocol().name().equals(done.protocol())).toList();
    return same.stream()
        .filter(e -> e.target().grips().contains(done.setup().grip()))
        .findFirst()
        .or(() -> same.stream().findFirst())
        .map(Exercise::with)
        .orElse(Map.of());
  }
}
