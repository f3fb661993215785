package gripwright.fatigue;

import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.quantity.Load;
import gripwright.schedule.PlannedExercise.LoadedStep;
import gripwright.schedule.PlannedExercise.Maximum;
import gripwright.strength.AllOutTest;
import gripwright.strength.ForceTime;
import java.util.List;
import java.util.Optional;

/**
 * The load of an exercise on the fingers.
 *
 * @param steps holds with their loads, and rests
 * @param hands which hands hold
 * @param maximum the reference maximum, if it is known
 * @param curve the athlete's own greatest load by time, if it is known
 * @param allOut the athlete's own all-out series in this setup, if there is one
 * @param turn whether the hands alternate
 */
record Work(
    List<LoadedStep> steps,
    Hands hands,
    Optional<Maximum> maximum,
    Optional<ForceTime> curve,
    Optional<AllOutTest> allOut,
    Turn turn) {

  /** Whether an exercise is one of two of alternating hands. */
  enum Turn {
    /** It is not. */
    NONE,
    /** The other hand works in its rests. */
    FIRST,
    /** It follows such an exercise without a rest. */
    LATER
  }

  Work(
      List<LoadedStep> steps,
      Hands hands,
      Optional<Maximum> maximum,
      Optional<ForceTime> curve,
      Optional<AllOutTest> allOut) {
    this(steps, hands, maximum, curve, allOut, Turn.NONE);
  }

  /** How an exercise is divided by its rests; loads play no part. */
  enum Kind {
    /** Short holds, some with short rests. */
    REPEATERS,
    /** Short rests, but also a long hold. */
    SHORT_RESTS,
    /** No short rest. */
    LONG_RESTS
  }

  Kind kind() {
    for (LoadedStep step : steps) {
      if (step.load().isEmpty() && step.seconds() <= PoolRates.LONGEST_SECONDS) {
        return longestHold() <= PoolRates.LONGEST_SECONDS ? Kind.REPEATERS : Kind.SHORT_RESTS;
      }
    }
    return Kind.LONG_RESTS;
  }

  /** Returns the longest time under load, in seconds, that no rest of 2 s or more divides. */
  double longestHold() {
    double longest = 0;
    double now = 0;
    for (LoadedStep step : steps) {
      if (step.load().isPresent()) {
        now += step.seconds();
        longest = Math.max(longest, now);
      } else if (step.seconds() >= PoolRates.SHORTEST_REST_SECONDS) {
        now = 0;
      }
    }
    return longest;
  }

  /** Returns the shortest rest, in seconds; infinite without a rest. */
  double shortestRest() {
    return steps.stream()
        .filter(step -> step.load().isEmpty())
        .mapToDouble(LoadedStep::seconds)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Returns this exercise with all loads multiplied. */
  Work times(double factor) {
    return with(steps.stream().map(s -> step(s, s.load().map(l -> l.times(factor)))).toList());
  }

  /** Returns this exercise with every hold at one load. */
  Work at(Load load) {
    return with(steps.stream().map(s -> step(s, s.load().map(l -> load))).toList());
  }

  private Work with(List<LoadedStep> others) {
    return new Work(others, hands, maximum, curve, allOut, turn);
  }

  private static LoadedStep step(LoadedStep like, Optional<Load> load) {
    return new LoadedStep(like.seconds(), load, like.extent());
  }

  /** Returns whether a hold may end early. */
  boolean hasBound() {
    for (LoadedStep step : steps) {
      if (step.extent().isBound()) {
        return true;
      }
    }
    return false;
  }

  /** Returns this exercise with every hold for its whole time. */
  Work withoutBounds() {
    return with(steps.stream().map(s -> new LoadedStep(s.seconds(), s.load())).toList());
  }

  boolean tires(Side side) {
    return maximum.isPresent() && hands.sides().contains(side);
  }

  double seconds() {
    return steps.stream().mapToDouble(LoadedStep::seconds).sum();
  }

  /** Returns the heaviest load as a share of the maximum, by its best estimate. */
  double heaviest() {
    double most = 0;
    for (LoadedStep step : steps) {
      if (step.load().isPresent()) {
        most = Math.max(most, step.load().get().kilograms());
      }
    }
    return most / maximum.orElseThrow().mean().kilograms();
  }

  /** Returns the load of a hold, from 0, as a share of the maximum by its best estimate. */
  double share(int hold) {
    return steps.stream()
            .filter(LoadedStep::isHold)
            .skip(hold)
            .findFirst()
            .flatMap(LoadedStep::load)
            .orElseThrow()
            .kilograms()
        / maximum.orElseThrow().mean().kilograms();
  }
}
