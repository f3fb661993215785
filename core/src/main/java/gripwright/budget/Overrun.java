package gripwright.budget;

import java.time.Duration;
import java.util.function.Function;

/** Why a run was stopped. */
public sealed interface Overrun {

  /**
   * Returns what one of three functions gives: a kind more is a parameter more, so that the
   * compiler points at every place that has to know it.
   */
  <R> R match(
      Function<TooMuch, R> tooMuch,
      Function<OutOfTime, R> outOfTime,
      Function<Cancelled, R> cancelled);

  /**
   * More than a limit allows.
   *
   * @param limit what went over
   * @param found how much there is, or was when the run was stopped
   * @param most how much the budget allows
   */
  record TooMuch(Limit limit, long found, long most) implements Overrun {
    @Override
    public <R> R match(
        Function<TooMuch, R> tooMuch,
        Function<OutOfTime, R> outOfTime,
        Function<Cancelled, R> cancelled) {
      return tooMuch.apply(this);
    }
  }

  /**
   * The deadline passed.
   *
   * @param time how long the run was allowed to take
   */
  record OutOfTime(Duration time) implements Overrun {
    @Override
    public <R> R match(
        Function<TooMuch, R> tooMuch,
        Function<OutOfTime, R> outOfTime,
        Function<Cancelled, R> cancelled) {
      return outOfTime.apply(this);
    }
  }

  /**
   * The host wants no result any more.
   *
   * @param interrupted true if the thread was interrupted, false if the host's flag was set
   */
  record Cancelled(boolean interrupted) implements Overrun {
    @Override
    public <R> R match(
        Function<TooMuch, R> tooMuch,
        Function<OutOfTime, R> outOfTime,
        Function<Cancelled, R> cancelled) {
      return cancelled.apply(this);
    }
  }
}
