package gripwright.rule;

import gripwright.finding.ModelPath;
import gripwright.rule.view.BlockView;
import gripwright.rule.view.DayView;
import gripwright.rule.view.ExerciseView;
import gripwright.rule.view.PairView;
import gripwright.rule.view.PlanView;
import gripwright.rule.view.SessionView;
import gripwright.rule.view.WeekView;
import java.time.LocalDate;

/**
 * A place where a rule is broken.
 *
 * @param rule the rule
 * @param rank position among the built-in rules; {@link Integer#MAX_VALUE} for any other
 * @param plan the plan it is broken in
 * @param subject what was looked at
 */
record Breach(Rule rule, int rank, PlanView plan, Object subject) {

  /** Returns where it stands. */
  ModelPath path() {
    if (subject instanceof ExerciseView exercise) {
      return exercise.path();
    }
    if (subject instanceof SessionView session) {
      return session.path;
    }
    if (subject instanceof DayView day) {
      return day.path;
    }
    if (subject instanceof WeekView week) {
      return week.path();
    }
    if (subject instanceof PairView pair) {
      return pair.place().path;
    }
    return subject instanceof BlockView block ? block.path : plan.path;
  }

  /** Returns when it is. */
  LocalDate date() {
    if (subject instanceof ExerciseView exercise) {
      return exercise.session.date;
    }
    if (subject instanceof SessionView session) {
      return session.date;
    }
    if (subject instanceof DayView day) {
      return day.date;
    }
    if (subject instanceof WeekView week) {
      return week.week.from();
    }
    if (subject instanceof PairView pair) {
      return pair.later().date;
    }
    return subject instanceof BlockView block ? block.from() : plan.schedule.plan().from();
  }
}
