package gripwright.rule.view;

import gripwright.expression.Named;
import gripwright.finding.Clause;
import gripwright.finding.Message;
import gripwright.finding.ModelPath;
import gripwright.plan.Block;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A block as rules see it. */
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

  /** Adds up once all weeks have their sessions. */
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

  /** Returns the fingers that hold, reckoned when they are first asked for. */
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
