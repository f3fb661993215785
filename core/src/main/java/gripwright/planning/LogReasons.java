package gripwright.planning;

import gripwright.log.LogEntry;
import gripwright.plan.CompiledPlan;
import gripwright.plan.DatedSession;
import gripwright.plan.LogChange;
import gripwright.plan.PlanChange;
import gripwright.plan.PlanChanges;
import gripwright.plan.PlannedExercise;
import gripwright.plan.PlannedExercise.Derivation;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Says why a plan that has heard its log differs from the one that has not. */
final class LogReasons {

  private static final Pattern BETWEEN = Pattern.compile("; ");

  private final CompiledPlan unheard;
  private final CompiledPlan heard;

  LogReasons(CompiledPlan unheard, CompiledPlan heard) {
    this.unheard = unheard;
    this.heard = heard;
  }

  /** Returns what is another in the days that are not past, by date, each with its reasons. */
  List<LogChange> changes() {
    List<LogChange> changes = new ArrayList<>();
    for (PlanChange change : PlanChanges.between(unheard, heard)) {
      if (!heard.heard().isPast(change.date()) && isFelt(change)) {
        List<String> reasons = new ArrayList<>(reasons(change));
        if (reasons.isEmpty()) {
          reasons.add(
              heard
                  .heard()
                  .until()
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
      if (link.step().equals(Progression.HELD_BACK) || link.step().equals("return")) {
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
    return heard.log().tests().stream()
        .map(test -> test.date())
        .filter(d -> !d.isBefore(heard.plan().from()) && !d.isAfter(day))
        .reduce((first, second) -> second);
  }

  /** Says what lies so near to a day that it may move a session. */
  private List<String> near(LocalDate day) {
    List<String> reasons = new ArrayList<>();
    for (LogEntry.Climbed climbed : heard.log().of(LogEntry.Climbed.class)) {
      boolean hard = heard.climbing().contains(climbed.date());
      if (hard && isNear(climbed.date(), day, Placement.HARD_GAP_DAYS)) {
        reasons.add("hard climbing on " + climbed.date());
      }
    }
    for (LogEntry.Tested tested : heard.log().of(LogEntry.Tested.class)) {
      if (!tested.date().isBefore(heard.plan().from())
          && isNear(tested.date(), day, Placement.HARD_GAP_DAYS)) {
        reasons.add("tested on " + tested.date());
      }
    }
    for (DatedSession session : heard.sessions()) {
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
    for (LogEntry.Trained other : heard.log().of(LogEntry.Trained.class)) {
      boolean ahead = !heard.heard().isPast(other.date()); // its own day may not be over
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
