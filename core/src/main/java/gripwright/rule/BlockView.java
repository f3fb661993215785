package gripwright.rule;

import gripwright.finding.ModelPath;
import gripwright.plan.Block;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** A block as rules see it. */
final class BlockView {

  final PlanView plan;
  final ModelPath path;
  final List<WeekView> weeks = new ArrayList<>();
  private final Block block;

  BlockView(Block block, PlanView plan) {
    this.block = block;
    this.plan = plan;
    path = plan.path.then("block", block.name());
  }

  String name() {
    return block.name();
  }

  int length() {
    return block.weeks();
  }

  List<SessionView> sessions() {
    return weeks.stream().flatMap(w -> w.sessions.stream()).toList();
  }

  List<ExerciseView> exercises() {
    return weeks.stream().flatMap(w -> w.exercises.stream()).toList();
  }

  double load() {
    return weeks.stream().mapToDouble(w -> w.load).sum();
  }

  double timeUnderLoad() {
    return weeks.stream().mapToDouble(w -> w.timeUnderLoad).sum();
  }

  LocalDate from() {
    return weeks.isEmpty() ? plan.compiled.plan().from() : weeks.get(0).week.from();
  }

  AthleteView athlete() {
    return plan.athleteOn(from());
  }
}
