package gripwright.season;

import gripwright.change.PlanChange;
import gripwright.change.PlanChanges;
import gripwright.history.LogTimeline;
import gripwright.log.LogEntry;
import gripwright.planning.load.Dose;
import gripwright.planning.placement.Placement;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.PlannedExercise.Derivation;
import gripwright.schedule.Schedule;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Says why a schedule that follows from a log differs from the one without it. */
final class LogReasons {

  private static final Pattern BETWEEN = Pattern.compile("; ");

  private final Schedule before;
  private final Schedule after;
  private final LogTimeline timeline;

  LogReasons(Schedule before, Schedule after, LogTimeline timeline) {
    this.before = before;
    this.after = after;
    this.timeline = timeline;
  }

  /** Returns what is another in the days that are not past, by date, each with its reasons. */
  List<LogChange> changes() {
    List<LogChange> changes = new ArrayList<>();
    for (PlanChange change : PlanChanges.between(before, after)) {
      if (!timeline.isPast(change.date()) && isFelt(change)) {
        List<String> reasons = new ArrayList<>(reasons(change));
        if (reasons.isEmpty()) {
          reasons.add(
              timeline
                  .lastKnownDay()
                  .map(day -> "it follows from what was done up to " + day)
                  .orElse("it follows from what was logged"));
        }
        changes.add(new LogChange(change, reasons.stream().distinct().toList()));
      }
    }
    return changes;
  }

  /** Tells whether an athlete would see it: a level that the equipment can't build is not seen. */
  private static boolean isFelt(PlanChange change) {
    return !(change instanceof PlanChange.GripStarts)
        && !(change instanceof PlanChange.ExerciseChanged c
            && (c.measure() == PlanChange.Measure.LEVEL
                || c.measure() == PlanChange.Measure.HARDNESS));
  }

  private List<String> reasons(PlanChange change) {
    if (change instanceof PlanChange.ExerciseChanged changed) {
      return reasons(changed);
    }
    if (change instanceof PlanChange.SessionMoved moved) {
      return near(moved.before().date());
    }
    if (change instanceof PlanChange.SessionDropped dropped) {
      return near(dropped.session().date());
    }
    return near(change.date());
  }

  private List<String> reasons(PlanChange.ExerciseChanged changed) {
    PlannedExercise before = changed.before();
    PlannedExercise after = changed.after();
    List<String> reasons = new ArrayList<>();
    for (Derivation link : after.why()) {
      if (link.step().equals(Dose.HELD_BACK) || link.step().equals("return")) {
        reasons.addAll(List.of(BETWEEN.split(link.from())));
      }
    }
    if (changed.measure() != PlanChange.Measure.LOAD) {
      return reasons.isEmpty() ? earned(after) : reasons;
    }
    if (!before.maximum().equals(after.maximum())) {
      lastTest(changed.date()).ifPresent(day -> reasons.add("tested on " + day));
    }
    if (before.bodyMass().compareTo(after.bodyMass()) != 0) {
      reasons.add("body mass " + after.bodyMass());
    }
    return reasons.isEmpty() ? earned(after) : reasons;
  }

  private static List<String> earned(PlannedExercise after) {
    return after.why().stream()
        .filter(link -> link.step().startsWith("advance"))
        .map(link -> "earned in training: " + link.from())
        .toList();
  }

  private Optional<LocalDate> lastTest(LocalDate day) {
    return timeline.log().tests().stream()
        .map(test -> test.date())
        .filter(d -> !d.isBefore(after.plan().from()) && !d.isAfter(day))
        .reduce((first, second) -> second);
  }

  /** Says what lies so near to a day that it may move a session. */
  private List<String> near(LocalDate day) {
    List<String> reasons = new ArrayList<>();
    for (LogEntry.Climbed climbed : timeline.log().of(LogEntry.Climbed.class)) {
      boolean hard = after.climbing().contains(climbed.date());
      if (hard && isNear(climbed.date(), day, Placement.HARD_GAP_DAYS)) {
        reasons.add("hard climbing on " + climbed.date());
      }
    }
    for (LogEntry.Tested tested : timeline.log().of(LogEntry.Tested.class)) {
      if (!tested.date().isBefore(after.plan().from())
          && isNear(tested.date(), day, Placement.HARD_GAP_DAYS)) {
        reasons.add("tested on " + tested.date());
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
        reasons.add(session.name() + " trained on " + session.date());
      }
    }
    for (LogEntry.Trained other : timeline.log().of(LogEntry.Trained.class)) {
      boolean ahead = !timeline.isPast(other.date()); // its own day may not be over
      if (ahead && isNear(other.date(), day, Placement.HARD_GAP_DAYS)) {
        reasons.add(other.session() + " trained on " + other.date());
      }
    }
    return reasons;
  }

  private static boolean isNear(LocalDate one, LocalDate other, int days) {
    return Math.abs(ChronoUnit.DAYS.between(one, other)) < days;
  }
}
