package gripwright.language.syntax;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** One step of the work: a hold, a rest, or steps that repeat. */
public sealed interface Step extends ProtocolItem {

  /** Returns what the visitor returns for this kind. */
  <R> R accept(Visitor<R> visitor);

  @Override
  default void accept(ProtocolItem.Visitor visitor) {
    visitor.step(this);
  }

  /**
   * One method for each kind of step.
   *
   * @param <R> the type of result
   */
  interface Visitor<R> {
    /** Visits steps done again. */
    R repeatStep(RepeatStep step);

    /** Visits a hold. */
    R holdStep(HoldStep step);

    /** Visits a rest. */
    R restStep(RestStep step);
  }

  /**
   * {@code repeat 6 resting 3 s { ... }}: steps done again, with a rest between repeats; {@code
   * upTo} if the number is a bound.
   */
  record RepeatStep(
      int id, boolean upTo, Expr times, @Nullable Expr resting, List<Step> steps, boolean damaged)
      implements Step {
    /** Copies the lists. */
    public RepeatStep {
      steps = List.copyOf(steps);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.repeatStep(this);
    }
  }

  /** What the time of a hold means. */
  enum Bound {
    /** The whole time. */
    NONE,
    /** {@code up to}: at most this time. */
    UP_TO,
    /** {@code to-failure up to}: until failure, at most this time. */
    TO_FAILURE
  }

  /** {@code hold 7 s at level}, {@code hold up to 20 s at level}. */
  record HoldStep(int id, Bound bound, Expr time, Expr level) implements Step {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.holdStep(this);
    }
  }

  /** {@code rest 30 s "walk"}. */
  record RestStep(int id, Expr time, @Nullable Text text) implements Step {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.restStep(this);
    }
  }
}
