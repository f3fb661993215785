package gripwright.rule.view;

import gripwright.finding.ModelPath;
import java.time.LocalDate;

/** What a rule looks at: a thing with a place and a day. */
public sealed interface Subject
    permits PlanView, BlockView, WeekView, DayView, SessionView, ExerciseView, PairView {

  /** Returns where it stands. */
  ModelPath path();

  /**
   * Returns the place that a waiver covers: block, week, session and exercise, as far as it has
   * them.
   */
  default ModelPath waived() {
    return path();
  }

  /** Returns when it is; of more than a day the first, of two sessions the later. */
  LocalDate date();
}
