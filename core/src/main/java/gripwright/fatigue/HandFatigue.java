package gripwright.fatigue;

import gripwright.fatigue.SessionFatigue.Evidence;
import gripwright.hand.Side;
import gripwright.quantity.Load;
import gripwright.schedule.PlannedExercise.LoadedStep;
import gripwright.schedule.PlannedExercise.Maximum;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Simulates one hand through the exercises of a session by one model: one muscle for all grips. The
 * hand rests while the other one works alone.
 */
final class HandFatigue {

  private static final FatigueRates MODERATE = FatigueRates.HAND_2012;

  private final List<Work> works;
  private final double restSeconds;
  private final Side side;
  private final List<FatigueRates> sets;

  /**
   * @param works exercises in the order of training
   * @param restSeconds rest between two exercises, 0 s or more
   * @param side which hand
   */
  HandFatigue(List<Work> works, double restSeconds, Side side) {
    this.works = works;
    this.restSeconds = restSeconds;
    this.side = side;
    double heaviest = 0;
    for (Work work : works) {
      if (work.tires(side)) {
        heaviest = Math.max(heaviest, work.heaviest());
      }
    }
    FatigueRates valid = FatigueRates.forHeaviest(MODERATE.ofMvc(heaviest));
    this.sets = valid.equals(MODERATE) ? List.of(MODERATE) : List.of(MODERATE, valid);
  }

  /** An end of the interval. */
  enum End {
    OPTIMISTIC,
    MEAN,
    PESSIMISTIC;

    FatigueSet of(FatigueSet set) {
      return switch (this) {
        case OPTIMISTIC -> set.optimistic();
        case MEAN -> set;
        case PESSIMISTIC -> set.pessimistic();
      };
    }

    /** Returns the evidence that a hold is missed which this end misses. */
    Evidence evidence() {
      return this == OPTIMISTIC ? Evidence.OPTIMISTIC : Evidence.MEAN;
    }

    /** Returns the factor for shares of the best estimate. */
    double factor(Maximum maximum) {
      Load of =
          switch (this) {
            case OPTIMISTIC -> maximum.high();
            case MEAN -> maximum.mean();
            case PESSIMISTIC -> maximum.used();
          };
      return maximum.mean().kilograms() / of.kilograms();
    }
  }

  /**
   * The remaining capacity of one hand after each exercise, and the first hold it misses in each.
   */
  static final class Run {
    private final double[] reserves;
    private final int[] missed;
    private final double[] carried;

    Run(int exercises) {
      reserves = new double[exercises];
      missed = new int[exercises];
      carried = new double[exercises];
      Arrays.fill(reserves, Double.NaN);
      Arrays.fill(missed, -1);
    }

    /** Returns the capacity left after an exercise; NaN if this hand is not used in it. */
    double reserve(int exercise) {
      return reserves[exercise];
    }

    /** Returns the first hold that is missed in an exercise. */
    Optional<Miss> miss(int exercise) {
      return missed[exercise] < 0
          ? Optional.empty()
          : Optional.of(new Miss(missed[exercise], carried[exercise]));
    }
  }

  /** Returns the set that is valid for the heaviest load of this hand. */
  FatigueRates valid() {
    return sets.get(sets.size() - 1);
  }

  /**
   * Returns the sets of three compartments to use: the one for moderate loads, and also the other
   * if loads are heavier.
   */
  List<FatigueRates> sets() {
    return sets;
  }

  /**
   * Simulates the session. A hold whose time is a bound ends when the load can't be held any more,
   * and is not missed.
   *
   * @param cap the greatest share of MVC; heavier loads count as this
   */
  Run run(FatigueSet set, End end, double cap) {
    Fingers fingers = end.of(set).fresh();
    double maximumOfMvc = set.ofMvc(1);
    Run run = new Run(works.size());
    for (int i = 0; i < works.size(); i++) {
      Work work = works.get(i);
      if (i > 0 && work.turn() != Work.Turn.LATER) {
        fingers.rest(restSeconds);
      }
      if (work.tires(side)) {
        Maximum maximum = work.maximum().orElseThrow();
        double mean = maximum.mean().kilograms();
        double factor = end.factor(maximum);
        int hold = 0;
        for (LoadedStep step : work.steps()) {
          if (step.load().isEmpty()) {
            fingers.rest(step.seconds());
            continue;
          }
          double ofMvc = step.load().get().kilograms() / mean * maximumOfMvc;
          double held = Math.min(cap, ofMvc) * factor;
          boolean bound = step.extent().isBound();
          double carried =
              bound ? fingers.holdUpTo(held, step.seconds()) : fingers.hold(held, step.seconds());
          if (!bound && run.missed[i] < 0 && carried < step.seconds()) {
            run.missed[i] = hold;
            run.carried[i] = carried;
          }
          run.reserves[i] = fingers.reserve();
          hold++;
        }
      } else if (work.turn() == Work.Turn.NONE) { // else this hand works in those rests
        fingers.rest(work.seconds());
      }
    }
    return run;
  }
}
