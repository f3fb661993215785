package gripwright.season;

import gripwright.budget.Meter;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.finding.Severity;
import gripwright.finding.Topic;
import gripwright.history.LogTimeline;
import gripwright.rule.RuleCheck;
import gripwright.rule.RuleSet;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.Schedule;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Checks lines without a load against the rules, so that one breach does not hide another. */
final class UnloadedLines {

  private UnloadedLines() {}

  /**
   * Returns the findings of a plan together with the rules that each of these lines breaks by
   * itself, whatever its load. Rules of sessions and weeks are left out, because the lines are not
   * trained. A waiver that covers one of the lines is not unused.
   *
   * @param found findings of the rest of the plan
   * @param lines the lines, each as a session of its own
   * @param schedule the rest of the plan
   */
  static List<Finding> with(
      List<Finding> found,
      List<DatedSession> lines,
      Schedule schedule,
      LogTimeline timeline,
      List<RuleSet> ruleSets,
      Meter meter) {
    Set<ModelPath> trained = places(schedule.sessions(), UnloadedLines::inItsWeek);
    List<DatedSession> ahead =
        lines.stream()
            .filter(line -> !timeline.isPast(line.date()))
            .filter(
                line ->
                    places(List.of(line), UnloadedLines::inItsWeek).stream()
                        .noneMatch(trained::contains))
            .toList();
    if (ahead.isEmpty()) {
      return found;
    }
    Set<ModelPath> places = places(ahead, PlannedExercise::path);
    Schedule alone =
        Schedule.builder(schedule.plan(), schedule.athlete())
            .sessions(ahead)
            .weeks(schedule.weeks())
            .build();
    List<Finding> ofLines = RuleCheck.check(alone, timeline, List.of(), ruleSets, meter);
    Set<Finding> unused =
        ofLines.stream().filter(f -> f.isAbout(Topic.UNUSED_WAIVER)).collect(Collectors.toSet());
    return Stream.concat(
            found.stream().filter(f -> !f.isAbout(Topic.UNUSED_WAIVER) || unused.contains(f)),
            ofLines.stream()
                .filter(f -> f.rule().isPresent() && places.contains(f.place()))
                .filter(f -> f.severity() != Severity.ADVICE))
        .toList();
  }

  private static Set<ModelPath> places(
      List<DatedSession> sessions, Function<PlannedExercise, ModelPath> place) {
    return sessions.stream()
        .flatMap(session -> session.exercises().stream())
        .map(place)
        .collect(Collectors.toSet());
  }

  /** Compares places without the day, because a line may get its load later in the week. */
  private static ModelPath inItsWeek(PlannedExercise exercise) {
    return exercise.path().without("date");
  }
}
