package gripwright.rule.view;

import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.schedule.PlannedExercise;
import java.util.List;

/**
 * The work of one exercise, counted hold by hold. The level of a hold is the written level or its
 * load as a share of the maximum, whichever is greater.
 *
 * @param holds the number of holds
 * @param holdsAbove80 the number of holds above 80 % of the maximum
 * @param secondsAt80 time of all holds at 80 % or more, in seconds
 * @param secondsAt60 time of all holds at 60 % or more, in seconds
 * @param secondsAt40 time of all holds at 40 % or more, in seconds
 * @param setsAt60 the number of sets with a hold at 60 % or more
 * @param greatest the highest level; 0.8 is 80 % of the maximum
 * @param lightBefore80 time of holds below 60 % and their rests before the first hold at 80 % or
 *     more, or of all of them if there is none, in seconds
 */
record HeldWork(
    long holds,
    long holdsAbove80,
    double secondsAt80,
    double secondsAt60,
    double secondsAt40,
    long setsAt60,
    double greatest,
    double lightBefore80) {

  /** Lowest level of hard work. The other levels of this record are the library's own choice. */
  static final double HARD = 0.8;

  /** Lowest level of heavy work, which needs rest days. */
  static final double HEAVY = 0.6;

  /** Work below this level is light. */
  static final double MIDDLE = 0.4;

  private static final double TOLERANCE = 1e-9;

  /** The level of a test, and of a hold of unknown level that may be hard. */
  static final double WHOLE_MAXIMUM = 1;

  static HeldWork of(PlannedExercise exercise) {
    return new Count(exercise).result();
  }

  /** Returns whether a level is at least another, within the tolerance. */
  static boolean reaches(double level, double least) {
    return level >= least - TOLERANCE;
  }

  /** Returns whether any hold is at a level or above. */
  boolean reaches(double least) {
    return holds > 0 && reaches(greatest, least);
  }

  /**
   * Returns the level of a hold without a written share or a known maximum, which counts as hard
   * unless the exercise is known to be light.
   */
  private static double ifUnknown(PlannedExercise exercise) {
    return exercise.hard() ? WHOLE_MAXIMUM : 0;
  }

  /** Counts the steps of an exercise in one pass. */
  private static final class Count {
    private final PlannedExercise exercise;
    private final double maximum;
    private final List<Scheme.Hold> written;
    private long holds;
    private long above80;
    private double at80;
    private double at60;
    private double at40;
    private long sets;
    private int lastSet;
    private double greatest;
    private double light;
    private boolean easy = true;
    private boolean before80 = true;

    Count(PlannedExercise exercise) {
      this.exercise = exercise;
      maximum = exercise.maximum().map(m -> m.used().kilograms()).orElse(0.0);
      written = exercise.percentOfMax().isPresent() ? List.of() : exercise.scheme().holds();
    }

    HeldWork result() {
      int perSet = Math.max(1, exercise.scheme().repetitionsPerSet());
      for (PlannedExercise.LoadedStep step : exercise.steps()) {
        if (step.isHold()) {
          hold(step, (int) (holds / perSet) + 1);
        }
        light += before80 && easy ? step.seconds() : 0;
      }
      return new HeldWork(holds, above80, at80, at60, at40, sets, greatest, light);
    }

    private void hold(PlannedExercise.LoadedStep step, int set) {
      double level = level(step, (int) holds);
      holds++;
      greatest = Math.max(greatest, level);
      above80 += level > HARD + TOLERANCE ? 1 : 0;
      at80 += reaches(level, HARD) ? step.seconds() : 0;
      at60 += reaches(level, HEAVY) ? step.seconds() : 0;
      at40 += reaches(level, MIDDLE) ? step.seconds() : 0;
      if (reaches(level, HEAVY) && lastSet != set) {
        lastSet = set;
        sets++;
      }
      easy = !reaches(level, HEAVY);
      before80 &= !reaches(level, HARD);
    }

    private double level(PlannedExercise.LoadedStep step, int hold) {
      double share = exercise.percentOfMax().orElse(0) / 100;
      if (hold < written.size() && written.get(hold).level() instanceof Level.OfMax ofMax) {
        share = ofMax.fraction();
      }
      if (maximum > 0) {
        share = Math.max(share, step.load().orElseThrow().kilograms() / maximum);
      }
      return share > 0 ? share : ifUnknown(exercise);
    }
  }
}
