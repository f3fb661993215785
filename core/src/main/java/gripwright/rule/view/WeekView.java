package gripwright.rule.view;

import gripwright.expression.Named;
import gripwright.finding.Clause;
import gripwright.finding.Message;
import gripwright.finding.ModelPath;
import gripwright.schedule.PlanWeek;
import gripwright.tissue.FingerWork;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A week, as read by rules. */
public final class WeekView implements Named, Subject {

  /** Number of uneased weeks in which the highest load is searched. */
  private static final int RECENT = 3;

  final PlanView plan;
  final @Nullable BlockView block;
  public final PlanWeek week;
  final List<SessionView> sessions = new ArrayList<>();
  private final List<SessionView> tests = new ArrayList<>();
  final List<ExerciseView> exercises = new ArrayList<>();
  final List<DayView> days = new ArrayList<>();
  double load;
  double timeUnderLoad;
  double minutes;
  @Nullable WeekView previous;
  private final @Nullable WeekView before;

  /** The last uneased weeks of the block with a session, the latest first. */
  private final List<WeekView> recent = new ArrayList<>(RECENT + 1);

  private @Nullable List<FingerWork> work;
  private @Nullable List<FingerView> atWork;

  WeekView(PlanWeek week, PlanView plan, @Nullable BlockView block, @Nullable WeekView before) {
    this.week = week;
    this.plan = plan;
    this.block = block;
    this.before = before;
  }

  public int number() {
    return week.number();
  }

  /** Returns the exercise whose load rises most where a block begins; empty in other weeks. */
  public Optional<Message> steepestAtJoin() {
    return plan.loadRise().steepestAtJoin(this).map(TrainedLine::words);
  }

  @Override
  public ModelPath path() {
    return week.path();
  }

  /** Returns whether any planned session of it was trained, even if changed. */
  boolean wasPlanned() {
    return sessions.stream().anyMatch(session -> !session.planned.isEmpty());
  }

  void add(SessionView session) {
    sessions.add(session);
    exercises.addAll(session.exercises);
    load += session.load;
    timeUnderLoad += session.timeUnderLoad;
    minutes += session.minutes;
  }

  /** Adds the warm-up of planned tests, which make no session. */
  void addTest(SessionView test) {
    tests.add(test);
    exercises.addAll(test.exercises);
    load += test.load;
    timeUnderLoad += test.timeUnderLoad;
  }

  /** Returns the load-time of tests' warm-ups that are light enough for one, in kg s. */
  double lightBeforeTests() {
    return tests.stream()
        .flatMap(test -> test.exercises.stream())
        .filter(ExerciseView::warmUp)
        .mapToDouble(exercise -> exercise.load)
        .sum();
  }

  /** Finds the recent weeks; called in week order after all weeks have their sessions. */
  void settle() {
    if (before != null) {
      previous = before.sessions.isEmpty() ? before.previous : before;
    }
    if (previous == null || previous.block != block) {
      return;
    }
    recent.addAll(previous.recent);
    plan.evaluation.take(recent.size());
    if (!previous.week.eased()) {
      recent.add(0, previous);
    }
    if (recent.size() > RECENT) {
      recent.remove(RECENT);
    }
  }

  /** Returns the number of sessions that the block plans for a week. */
  int plannedSessions() {
    return block == null ? 0 : block.sessionsAWeek();
  }

  AthleteView athlete() {
    return plan.athleteOn(week.from());
  }

  /** Returns the fingers that hold, computed on first use. */
  List<FingerView> fingers() {
    List<FingerView> known = atWork;
    if (known == null) {
      known = FingerView.besides(work(), recent.stream().map(WeekView::work).toList());
      atWork = known;
    }
    return known;
  }

  private List<FingerWork> work() {
    List<FingerWork> known = work;
    if (known == null) {
      known =
          FingerView.together(
              Stream.concat(sessions.stream(), tests.stream()).map(SessionView::fingers).toList());
      work = known;
    }
    return known;
  }

  @Override
  public Message called() {
    return Clause.of("common.week", "week", number());
  }

  @Override
  public LocalDate date() {
    return week.from();
  }
}
