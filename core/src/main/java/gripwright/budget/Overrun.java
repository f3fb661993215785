package gripwright.budget;

import java.time.Duration;

/** Why a run was stopped. */
public sealed interface Overrun {

  /**
   * More than a limit allows.
   *
   * @param limit what went over
   * @param found how much there is, or was when the run was stopped
   * @param most how much the budget allows
   */
  record TooMuch(Limit limit, long found, long most) implements Overrun {}

  /**
   * The deadline passed.
   *
   * @param time how long the run was allowed to take
   */
  record OutOfTime(Duration time) implements Overrun {}

  /**
   * The host wants no result any more.
   *
   * @param interrupted true if the thread was interrupted, false if the host's flag was set
   */
  record Cancelled(boolean interrupted) implements Overrun {}
}
