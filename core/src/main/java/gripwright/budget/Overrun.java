package gripwright.budget;

import java.time.Duration;

/** Why a run was stopped. */
public sealed interface Overrun {

  /** Returns what the visitor returns for this kind. */
  <R> R accept(Visitor<R> visitor);

  /**
   * One method for each kind of reason.
   *
   * @param <R> the type of result
   */
  interface Visitor<R> {
    /** Visits an exceeded limit. */
    R tooMuch(TooMuch overrun);

    /** Visits a passed deadline. */
    R outOfTime(OutOfTime overrun);

    /** Visits a cancellation. */
    R cancelled(Cancelled overrun);
  }

  /**
   * A limit was exceeded.
   *
   * @param limit the limit
   * @param found the count, at least when the run was stopped
   * @param most the most that the budget allows
   */
  record TooMuch(Limit limit, long found, long most) implements Overrun {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.tooMuch(this);
    }
  }

  /**
   * The deadline passed.
   *
   * @param time how long the run was allowed to take
   */
  record OutOfTime(Duration time) implements Overrun {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.outOfTime(this);
    }
  }

  /**
   * The host cancelled the run.
   *
   * @param interrupted true if the thread was interrupted, false if the host's flag was set
   */
  record Cancelled(boolean interrupted) implements Overrun {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.cancelled(this);
    }
  }
}
