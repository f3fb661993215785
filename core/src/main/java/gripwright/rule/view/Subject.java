package gripwright.rule.view;

import gripwright.finding.ModelPath;
import java.time.LocalDate;

/** A subject of rules, with a place and a day. */
public sealed interface Subject
    permits PlanView, BlockView, WeekView, DayView, SessionView, ExerciseView, PairView {

  /** Returns its place. */
  ModelPath path();

  /**
   * Returns the place that a waiver covers: block, week, session and exercise, as far as it has
   * them.
   */
  default ModelPath waived() {
    return path();
  }

  /** Returns its date: the first day of a span, the later day of a pair. */
  LocalDate date();
}
