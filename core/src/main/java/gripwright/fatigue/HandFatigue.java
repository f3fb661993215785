package gripwright.fatigue;

import gripwright.fatigue.SessionFatigue.Evidence;
import gripwright.fatigue.SessionFatigue.Violation;
import gripwright.fatigue.SessionFatigue.Work;
import gripwright.hand.Side;
import gripwright.quantity.Load;
import gripwright.schedule.PlannedExercise.LoadedStep;
import gripwright.schedule.PlannedExercise.Maximum;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Simulates one hand through the exercises of a session by a set of rates: one muscle for all
 * grips. The hand rests while the other one works alone.
 */
final class HandFatigue {

  private static final FatigueRates MODERATE = FatigueRates.HAND_2012;

  private final List<Work> works;
  private final double restSeconds;
  private final Side side;

  /**
   * @param works exercises in the order of training
   * @param restSeconds rest between two exercises, 0 s or more
   * @param side which hand
   */
  HandFatigue(List<Work> works, double restSeconds, Side side) {
    this.works = works;
    this.restSeconds = restSeconds;
    this.side = side;
  }

  /** An end of the interval. */
  enum End {
    OPTIMISTIC,
    MEAN,
    PESSIMISTIC;

    FatigueRates of(FatigueRates rates) {
      return switch (this) {
        case OPTIMISTIC -> rates.optimistic();
        case MEAN -> rates;
        case PESSIMISTIC -> rates.pessimistic();
      };
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

    boolean completes(int exercise) {
      return missed[exercise] < 0;
    }

    Optional<Violation> first(Evidence evidence) {
      for (int i = 0; i < missed.length; i++) {
        if (missed[i] >= 0) {
          return Optional.of(new Violation(i, missed[i], carried[i], evidence));
        }
      }
      return Optional.empty();
    }
  }

  /** Returns the set that is valid for the heaviest load of this hand. */
  FatigueRates valid() {
    double heaviest =
        works.stream().filter(w -> w.tires(side)).mapToDouble(Work::heaviest).max().orElse(0);
    return FatigueRates.forHeaviest(MODERATE.ofMvc(heaviest));
  }

  /**
   * Returns the sets to use: the one for moderate loads, and also the other if loads are heavier.
   */
  List<FatigueRates> sets() {
    FatigueRates valid = valid();
    return valid.equals(MODERATE) ? List.of(MODERATE) : List.of(MODERATE, valid);
  }

  /**
   * Simulates the session.
   *
   * @param cap the greatest share of MVC; heavier loads count as this
   */
  Run run(FatigueRates rates, End end, double cap) {
    Muscle muscle = new Muscle(end.of(rates));
    double maximumOfMvc = rates.ofMvc(1);
    Run run = new Run(works.size());
    for (int i = 0; i < works.size(); i++) {
      Work work = works.get(i);
      if (i > 0) {
        muscle.rest(restSeconds);
      }
      if (work.tires(side)) {
        Maximum maximum = work.maximum().orElseThrow();
        double mean = maximum.mean().kilograms();
        double factor = end.factor(maximum);
        int hold = 0;
        for (LoadedStep step : work.steps()) {
          if (step.load().isEmpty()) {
            muscle.rest(step.seconds());
            continue;
          }
          double ofMvc = step.load().get().kilograms() / mean * maximumOfMvc;
          double carried = muscle.hold(Math.min(cap, ofMvc) * factor, step.seconds());
          if (run.missed[i] < 0 && carried < step.seconds()) {
            run.missed[i] = hold;
            run.carried[i] = carried;
          }
          run.reserves[i] = muscle.reserve();
          hold++;
        }
      } else {
        muscle.rest(work.seconds());
      }
    }
    return run;
  }
}
