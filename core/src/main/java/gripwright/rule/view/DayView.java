package gripwright.rule.view;

import gripwright.expression.Named;
import gripwright.finding.Message;
import gripwright.finding.ModelPath;
import gripwright.finding.WrittenText;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A day with at least one event, as read by rules. */
public final class DayView implements Named, Subject {

  public final LocalDate date;
  final PlanView plan;
  final @Nullable WeekView week;
  public final ModelPath path;
  final List<SessionView> sessions;
  private final List<SessionView> tests;
  final List<ExerciseView> exercises;
  final boolean hard;
  final boolean retest;
  final boolean climbing;
  private @Nullable List<FingerView> atWork;

  DayView(LocalDate date, PlanView plan, @Nullable WeekView week, List<SessionView> events) {
    this.date = date;
    this.plan = plan;
    this.week = week;
    path = (week == null ? plan.path : week.path()).then("date", date.toString());
    sessions = events.stream().filter(e -> e.what == SessionView.What.TRAINING).toList();
    tests = events.stream().filter(e -> e.what == SessionView.What.RETEST).toList();
    exercises = all().flatMap(s -> s.exercises.stream()).toList();
    hard = events.stream().anyMatch(e -> e.hard);
    retest = events.stream().anyMatch(e -> e.what == SessionView.What.RETEST);
    climbing = events.stream().anyMatch(e -> e.what == SessionView.What.CLIMBING);
  }

  /** Returns the sessions and the tests, which add no more than their warm-ups. */
  private Stream<SessionView> all() {
    return Stream.concat(sessions.stream(), tests.stream());
  }

  double load() {
    return all().mapToDouble(s -> s.load).sum();
  }

  double timeUnderLoad() {
    return all().mapToDouble(s -> s.timeUnderLoad).sum();
  }

  double minutes() {
    return sessions.stream().mapToDouble(s -> s.minutes).sum();
  }

  /** Returns the work of the fingers on this day, over all plans of the athlete. */
  DayWork ofAllPlans() {
    return plan.athleteDays().on(date);
  }

  @Nullable BlockView block() {
    return week == null ? null : week.block;
  }

  /** Returns the fingers that hold, computed on first use. */
  List<FingerView> fingers() {
    List<FingerView> known = atWork;
    if (known == null) {
      known = FingerView.of(FingerView.together(all().map(SessionView::fingers).toList()));
      atWork = known;
    }
    return known;
  }

  @Override
  public Message called() {
    return new WrittenText(date.toString());
  }

  @Override
  public ModelPath path() {
    return path;
  }

  @Override
  public LocalDate date() {
    return date;
  }
}
