package gripwright.rule;

import gripwright.finding.ModelPath;
import gripwright.plan.PlanWeek;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A week as rules see it. */
final class WeekView {

  /** How many uneased weeks back the greatest load is looked for. */
  private static final int RECENT = 3;

  final PlanView plan;
  final @Nullable BlockView block;
  final PlanWeek week;
  final List<SessionView> sessions = new ArrayList<>();
  final List<ExerciseView> exercises = new ArrayList<>();
  final List<DayView> days = new ArrayList<>();
  double load;
  double timeUnderLoad;
  double minutes;
  @Nullable WeekView previous;
  double recentLoad = Double.NaN;
  private final @Nullable WeekView before;

  WeekView(PlanWeek week, PlanView plan, @Nullable BlockView block, @Nullable WeekView before) {
    this.week = week;
    this.plan = plan;
    this.block = block;
    this.before = before;
  }

  int number() {
    return week.number();
  }

  ModelPath path() {
    return week.path();
  }

  void add(SessionView session) {
    sessions.add(session);
    exercises.addAll(session.exercises);
    load += session.load;
    timeUnderLoad += session.timeUnderLoad;
    minutes += session.minutes;
  }

  /** Looks back once all weeks have their sessions; called in the order of weeks. */
  void settle() {
    if (before != null) {
      previous = before.sessions.isEmpty() ? before.previous : before;
    }
    int seen = 0;
    for (WeekView back = previous;
        back != null && back.block == block && seen < RECENT;
        back = back.previous) {
      if (!back.week.eased()) {
        recentLoad = Double.isNaN(recentLoad) ? back.load : Math.max(recentLoad, back.load);
        seen++;
      }
    }
  }

  AthleteView athlete() {
    return plan.athleteOn(week.from());
  }
}
