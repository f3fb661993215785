package gripwright.schedule;

import gripwright.quantity.Load;
import gripwright.schedule.PlannedExercise.LoadedStep;

/**
 * Follows the holds and rests of an exercise: holds with almost no rest between them count as one
 * hold, since fingers don't recover in less than a second. Not thread-safe.
 */
public final class HoldChain {

  /** A shorter rest, in seconds, doesn't separate two holds; our own number. */
  public static final double LEAST_REST_SECONDS = 1;

  private double seconds;
  private double heavy;
  private double least = Double.POSITIVE_INFINITY;

  /** Starts without a hold. */
  public HoldChain() {}

  /** Returns whether a rest of this many seconds ends a hold. */
  public static boolean parts(double rest) {
    return rest >= LEAST_REST_SECONDS;
  }

  /** Adds a hold or a rest. */
  public void add(LoadedStep step) {
    step.load().ifPresentOrElse(load -> hold(step.seconds(), load), () -> rest(step.seconds()));
  }

  private void hold(double time, Load load) {
    seconds += time;
    heavy = (load.kilograms() > least ? 0 : heavy) + time;
    least = load.kilograms();
  }

  /** Adds a rest, which ends the hold unless it is too short. */
  public void rest(double time) {
    if (parts(time)) {
      seconds = 0;
      heavy = 0;
      least = Double.POSITIVE_INFINITY;
    }
  }

  /** Returns the time of the current hold without a rest, in seconds; 0 after a rest. */
  public double seconds() {
    return seconds;
  }

  /** Returns the time for which the last load or more has been held without a rest, in seconds. */
  public double secondsAtLoad() {
    return heavy;
  }
}
