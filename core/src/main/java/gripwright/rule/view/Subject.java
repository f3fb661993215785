package gripwright.rule.view;

import gripwright.finding.ModelPath;
import java.time.LocalDate;

/** What a rule looks at: a thing with a place and a day. */
public sealed interface Subject
    permits PlanView, BlockView, WeekView, DayView, SessionView, ExerciseView, PairView {

  /** Returns where it stands. */
  ModelPath path();

  /** Returns when it is; of more than a day the first, of two sessions the later. */
  LocalDate date();
}
