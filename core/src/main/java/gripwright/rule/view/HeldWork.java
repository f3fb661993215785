package gripwright.rule.view;

import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.schedule.PlannedExercise;
import java.util.List;

/**
 * What the holds of one exercise come to, each by its own level: the greater of the level as it is
 * written and the share of the maximum that its load is.
 *
 * @param holds how many
 * @param holdsAbove80 those above 80 % of the maximum
 * @param secondsAt80 all holds at 80 % or more, in seconds
 * @param secondsAt60 all holds at 60 % or more, in seconds
 * @param secondsAt40 all holds at 40 % or more, in seconds
 * @param setsAt60 sets with a hold at 60 % or more
 * @param greatest the greatest level; 0.8 is 80 % of the maximum
 * @param lightBefore80 seconds of what is below 60 % and its rests, up to the first hold at 80 % or
 *     more, or of all if there is none
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

  /** From here on work is hard; the levels of this record are our own, but for this one. */
  static final double HARD = 0.8;

  /** From here on work is heavy enough to need days of rest. */
  static final double HEAVY = 0.6;

  /** Below this, work is light. */
  static final double MIDDLE = 0.4;

  private static final double TOLERANCE = 1e-9;

  /** What a test counts as, and a hold whose level is not known and that may be hard. */
  static final double WHOLE_MAXIMUM = 1;

  static HeldWork of(PlannedExercise exercise) {
    return new Count(exercise).result();
  }

  /** Tells whether a level is at least another. */
  static boolean reaches(double level, double least) {
    return level >= least - TOLERANCE;
  }

  /** Tells whether any hold is at a level or above. */
  boolean reaches(double least) {
    return holds > 0 && reaches(greatest, least);
  }

  /**
   * Returns the level of a hold of which neither a written share nor a maximum is known: it counts
   * as hard unless the exercise is known to be light.
   */
  private static double ifUnknown(PlannedExercise exercise) {
    return exercise.hard() ? WHOLE_MAXIMUM : 0;
  }

  /** Goes through the steps of an exercise once. */
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
