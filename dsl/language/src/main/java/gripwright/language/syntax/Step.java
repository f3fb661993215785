package gripwright.language.syntax;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** One step of the work: a hold, a rest, or steps that repeat. */
public sealed interface Step extends ProtocolItem {

  /** {@code repeat 6 resting 3 s { ... }}: steps done again, with a rest between repeats. */
  record RepeatStep(int id, Expr times, @Nullable Expr resting, List<Step> steps, boolean damaged)
      implements Step {
    /** Copies the lists. */
    public RepeatStep {
      steps = List.copyOf(steps);
    }
  }

  /** {@code hold 7 s at level}. */
  record HoldStep(int id, Expr time, Expr level) implements Step {}

  /** {@code rest 30 s}. */
  record RestStep(int id, Expr time) implements Step {}
}
