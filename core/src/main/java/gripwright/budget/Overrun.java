package gripwright.budget;

import java.time.Duration;

/** Why a run was stopped. */
public sealed interface Overrun {

  /** Answers with what a visitor has for this kind. */
  <R> R accept(Visitor<R> visitor);

  /**
   * One answer for each kind of reason.
   *
   * @param <R> what is answered
   */
  interface Visitor<R> {
    /** Answers for more than a limit allows. */
    R tooMuch(TooMuch overrun);

    /** Answers for a deadline that passed. */
    R outOfTime(OutOfTime overrun);

    /** Answers for a host that wants no result any more. */
    R cancelled(Cancelled overrun);
  }

  /**
   * More than a limit allows.
   *
   * @param limit what went over
   * @param found how much there is, or was when the run was stopped
   * @param most how much the budget allows
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
   * The host wants no result any more.
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
