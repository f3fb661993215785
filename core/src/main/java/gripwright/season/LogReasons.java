package gripwright.season;

import gripwright.change.PlanChange;
import gripwright.change.PlanChanges;
import gripwright.change.SessionChange;
import gripwright.history.LogTimeline;
import gripwright.log.LogEntry;
import gripwright.planning.placement.Placement;
import gripwright.schedule.Cause;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.ProgressLink;
import gripwright.schedule.Schedule;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Explains why a schedule with a log differs from the one without it. */
final class LogReasons {

  private final Schedule before;
  private final Schedule after;
  private final LogTimeline timeline;
  private final ChoiceReasons choices;

  LogReasons(Schedule before, Schedule after, LogTimeline timeline) {
    this.before = before;
    this.after = after;
    this.timeline = timeline;
    this.choices = new ChoiceReasons(before, timeline);
  }

  /** Returns the changes on days that are not past, by date, each with its causes. */
  List<LogChange> changes() {
    List<LogChange> changes = new ArrayList<>();
    for (PlanChange change : PlanChanges.between(before, after)) {
      if (!timeline.isPast(change.date()) && isFelt(change)) {
        List<Cause> reasons = new ArrayList<>(reasons(change));
        if (reasons.isEmpty()) {
          reasons.add(new Cause.FollowsFromLog(timeline.lastKnownDay()));
        }
        changes.add(new LogChange(change, reasons.stream().distinct().toList()));
      }
    }
    return changes;
  }

  /**
   * Returns whether an athlete would notice a change, unlike a level that the equipment can't
   * build.
   */
  private static boolean isFelt(PlanChange change) {
    return !(change instanceof PlanChange.GripStarts)
        && !(change instanceof SessionChange.ExerciseChanged c
            && (c.measure() == SessionChange.Measure.LEVEL
                || c.measure() == SessionChange.Measure.HARDNESS));
  }

  private List<Cause> reasons(PlanChange change) {
    List<Cause> ofChoice = choices.of(change);
    if (!ofChoice.isEmpty()) {
      return ofChoice;
    }
    if (change instanceof SessionChange.ExerciseChanged changed) {
      return reasons(changed);
    }
    return near(
        change instanceof SessionChange.SessionMoved moved ? moved.before().date() : change.date());
  }

  private List<Cause> reasons(SessionChange.ExerciseChanged changed) {
    PlannedExercise before = changed.before();
    PlannedExercise after = changed.after();
    List<Cause> reasons = new ArrayList<>(held(after));
    if (changed.measure() == SessionChange.Measure.SETS && after.mix().isPresent()) {
      // Grips of one line share its sets, so a limit of one grip limits them all.
      ChoiceReasons.ofLine(changed.session(), after).forEach(e -> reasons.addAll(held(e)));
      if (after.scheme().sets() < before.scheme().sets()) {
        return reasons;
      }
    }
    if (changed.measure() != SessionChange.Measure.LOAD) {
      return reasons.isEmpty() ? earned(after) : reasons;
    }
    if (!before.maximum().equals(after.maximum())) {
      lastTest(changed.date()).ifPresent(day -> reasons.add(new Cause.Tested(day)));
    }
    if (before.bodyMass().compareTo(after.bodyMass()) != 0) {
      reasons.add(new Cause.BodyMass(after.bodyMass()));
    }
    return reasons.isEmpty() ? earned(after) : reasons;
  }

  private static List<Cause> held(PlannedExercise exercise) {
    List<Cause> reasons = new ArrayList<>();
    exercise.why().forEach(link -> reasons.addAll(link.causes()));
    return reasons;
  }

  private static List<Cause> earned(PlannedExercise after) {
    return after.why().stream()
        .filter(ProgressLink.Advanced.class::isInstance)
        .<Cause>map(link -> new Cause.Earned((ProgressLink.Advanced) link))
        .toList();
  }

  private Optional<LocalDate> lastTest(LocalDate day) {
    return timeline.log().tests().stream()
        .map(test -> test.date())
        .filter(d -> !d.isBefore(after.plan().from()) && !d.isAfter(day))
        .reduce((first, second) -> second);
  }

  /** Returns causes near enough to a day to move a session. */
  private List<Cause> near(LocalDate day) {
    List<Cause> reasons = new ArrayList<>();
    for (LogEntry.Climbed climbed : timeline.log().of(LogEntry.Climbed.class)) {
      boolean hard = after.climbing().contains(climbed.date());
      if (hard && isNear(climbed.date(), day, Placement.HARD_GAP_DAYS)) {
        reasons.add(new Cause.HardClimbing(climbed.date()));
      }
    }
    for (LogEntry.Tested tested : timeline.log().of(LogEntry.Tested.class)) {
      if (!tested.date().isBefore(after.plan().from())
          && isNear(tested.date(), day, Placement.HARD_GAP_DAYS)) {
        reasons.add(new Cause.Tested(tested.date()));
      }
    }
    for (DatedSession session : after.sessions()) {
      boolean asPlanned =
          session
              .happened()
              .flatMap(h -> h.planned())
              .filter(p -> p.date().equals(session.date()))
              .isPresent();
      if (session.happened().isPresent() && !asPlanned && isNear(session.date(), day, 7)) {
        reasons.add(new Cause.Trained(session.name(), session.date()));
      }
    }
    for (LogEntry.Trained other : timeline.log().of(LogEntry.Trained.class)) {
      boolean ahead = !timeline.isPast(other.date()); // its own day may not be over yet
      if (ahead && isNear(other.date(), day, Placement.HARD_GAP_DAYS)) {
        reasons.add(new Cause.Trained(other.session(), other.date()));
      }
    }
    return reasons;
  }

  private static boolean isNear(LocalDate one, LocalDate other, int days) {
    return Math.abs(ChronoUnit.DAYS.between(one, other)) < days;
  }
}
