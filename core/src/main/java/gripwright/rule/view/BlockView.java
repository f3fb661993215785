package gripwright.rule.view;

import gripwright.expression.Named;
import gripwright.finding.Clause;
import gripwright.finding.Message;
import gripwright.finding.ModelPath;
import gripwright.plan.Block;
import gripwright.plan.SessionPlan;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A block, as read by rules. */
public final class BlockView implements Named, Subject {

  final PlanView plan;
  public final ModelPath path;
  final List<WeekView> weeks = new ArrayList<>();
  final List<SessionView> sessions = new ArrayList<>();
  final List<ExerciseView> exercises = new ArrayList<>();
  double load;
  double timeUnderLoad;
  private @Nullable List<FingerView> atWork;
  private final Block block;

  BlockView(Block block, PlanView plan) {
    this.block = block;
    this.plan = plan;
    path = plan.path.then("block", block.name());
  }

  public String name() {
    return block.name();
  }

  int length() {
    return block.weeks();
  }

  /** Returns the number of the athlete's sessions in a week. */
  int sessionsAWeek() {
    return block.contentFor(plan.schedule.athlete().name()).sessions().stream()
        .mapToInt(SessionPlan::perWeek)
        .sum();
  }

  /** Returns the warm-up of a session, in seconds; NaN if the block has no such session. */
  double warmUp(String session) {
    String athlete = plan.schedule.athlete().name();
    return block.contentFor(athlete).sessions().stream()
        .filter(each -> each.name().equals(session))
        .map(each -> each.contentFor(athlete).warmUp().orElse(plan.schedule.plan().warmUp()))
        .mapToDouble(Duration::toSeconds)
        .findFirst()
        .orElse(Double.NaN);
  }

  /**
   * Returns the rest between two exercises of a session, in seconds; NaN if the block has no such
   * session.
   */
  double restBetween(String session) {
    String athlete = plan.schedule.athlete().name();
    return block.contentFor(athlete).sessions().stream()
        .filter(each -> each.name().equals(session))
        .map(
            each ->
                each.contentFor(athlete).restBetween().orElse(plan.schedule.plan().restBetween()))
        .mapToDouble(rest -> rest.toNanos() / 1e9)
        .findFirst()
        .orElse(Double.NaN);
  }

  /** Completes this view; called once after all weeks have their sessions. */
  void settle() {
    for (WeekView week : weeks) {
      sessions.addAll(week.sessions);
      exercises.addAll(week.exercises);
      load += week.load;
      timeUnderLoad += week.timeUnderLoad;
    }
  }

  public LocalDate from() {
    return weeks.isEmpty() ? plan.schedule.plan().from() : weeks.get(0).week.from();
  }

  AthleteView athlete() {
    return plan.athleteOn(from());
  }

  /** Returns the fingers that hold, computed on first use. */
  List<FingerView> fingers() {
    List<FingerView> known = atWork;
    if (known == null) {
      known = FingerView.of(FingerView.together(weeks.stream().map(WeekView::fingers).toList()));
      atWork = known;
    }
    return known;
  }

  @Override
  public Message called() {
    return Clause.of("breach.block", "name", name());
  }

  @Override
  public ModelPath path() {
    return path;
  }

  @Override
  public LocalDate date() {
    return from();
  }
}
