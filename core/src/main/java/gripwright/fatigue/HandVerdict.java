package gripwright.fatigue;

import gripwright.fatigue.HandFatigue.End;
import gripwright.fatigue.SessionFatigue.Evidence;
import gripwright.fatigue.SessionFatigue.Violation;
import gripwright.fatigue.Work.Kind;
import gripwright.hand.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What one hand misses in a session and what it has left. Holds are judged by the model that serves
 * for the exercise: two pools for short holds with short rests, three compartments for other work.
 * What is left is never more than three compartments leave.
 *
 * <p>Where the models meet, neither a longer rest nor a shorter hold may make a verdict harder. So
 * a long hold with short rests must be possible by both, and work with long rests by one of them.
 */
final class HandVerdict {

  private static final PoolRates POOLS = PoolRates.SHORT_RESTS;

  private final List<Work> works;
  private final Side side;
  private final HandFatigue hand;
  private final List<Known> known = new ArrayList<>();

  /** A simulation and its inputs. */
  private record Known(FatigueSet set, End end, double cap, HandFatigue.Run run) {}

  HandVerdict(List<Work> works, double restSeconds, Side side) {
    this.works = works;
    this.side = side;
    this.hand = new HandFatigue(works, restSeconds, side);
  }

  /**
   * Returns the holds that are missed: by each set of three compartments the first with certainty,
   * by all sets together the first by the mean, since later ones follow from it, and all by the
   * athlete's own tests. Two pools are never certain: they rest on few rows, and pauses of minutes
   * were not measured.
   */
  List<Violation> violations() {
    List<Violation> violations = new ArrayList<>();
    List<Violation> byMean = new ArrayList<>();
    first(POOLS, End.MEAN).ifPresent(byMean::add);
    for (FatigueRates set : hand.sets()) {
      first(set, End.MEAN).ifPresent(byMean::add);
      first(set, End.OPTIMISTIC)
          .filter(v -> set.validAt(set.ofMvc(works.get(v.exercise()).share(v.hold()))))
          .ifPresent(violations::add);
    }
    byMean.stream().min(Violation.FIRST).ifPresent(violations::add);
    for (int i = 0; i < works.size(); i++) {
      if (works.get(i).tires(side) && works.get(i).kind() != Kind.LONG_RESTS) {
        int exercise = i;
        own(i)
            .map(miss -> Violation.of(exercise, miss, Evidence.ALL_OUT))
            .ifPresent(violations::add);
      }
    }
    return violations;
  }

  /** Tells whether the mean and the athlete's own all-out series complete all of an exercise. */
  boolean completes(int exercise) {
    Optional<Miss> repeated = repeated(exercise);
    return switch (works.get(exercise).kind()) {
      case REPEATERS -> repeated.isEmpty();
      case SHORT_RESTS -> repeated.isEmpty() && compartments(exercise).isEmpty();
      case LONG_RESTS -> repeated.isEmpty() || compartments(exercise).isEmpty();
    };
  }

  /**
   * Returns the capacity left after an exercise by three compartments, with short rests the lower
   * one of this and what two pools leave; NaN if this hand is not used in it.
   */
  double reserve(int exercise, End end) {
    FatigueRates valid = hand.valid();
    double least =
        works.get(exercise).kind() == Kind.LONG_RESTS
            ? 1
            : run(POOLS, end, Double.MAX_VALUE).reserve(exercise);
    for (FatigueRates rates : hand.sets()) {
      double cap = rates.equals(valid) ? Double.MAX_VALUE : rates.to();
      least = Math.min(least, run(rates, end, cap).reserve(exercise));
    }
    return least;
  }

  /** Returns the first hold that a set, where it serves, says is missed. */
  private Optional<Violation> first(FatigueSet set, End end) {
    for (int i = 0; i < works.size(); i++) {
      int exercise = i;
      Optional<Miss> miss = missed(set, end, i);
      if (miss.isPresent()) {
        return miss.map(m -> Violation.of(exercise, m, end.evidence()));
      }
    }
    return Optional.empty();
  }

  /**
   * Returns what a set says is missed where it serves. What the mean of the model in charge
   * completes is never missed.
   */
  private Optional<Miss> missed(FatigueSet set, End end, int exercise) {
    Kind kind = works.get(exercise).kind();
    if (set.equals(POOLS)) {
      return kind == Kind.LONG_RESTS || ownAlone(exercise)
          ? Optional.empty()
          : run(POOLS, end, POOLS.to()).miss(exercise);
    }
    if (kind == Kind.REPEATERS && end == End.MEAN) {
      return Optional.empty();
    }
    Optional<Miss> miss = run(set, end, set.to()).miss(exercise);
    return miss.isEmpty() || kind == Kind.SHORT_RESTS ? miss : Miss.both(miss, repeated(exercise));
  }

  /**
   * Returns what is missed by the athlete's own all-out series, if it covers the exercise, or else
   * by that or by the mean of the two pools.
   */
  private Optional<Miss> repeated(int exercise) {
    return ownAlone(exercise)
        ? own(exercise)
        : Miss.either(run(POOLS, End.MEAN, POOLS.to()).miss(exercise), own(exercise));
  }

  private Optional<Miss> compartments(int exercise) {
    Optional<Miss> first = Optional.empty();
    for (FatigueRates rates : hand.sets()) {
      first = Miss.either(first, run(rates, End.MEAN, rates.to()).miss(exercise));
    }
    return first;
  }

  private Optional<Miss> own(int exercise) {
    Work work = works.get(exercise);
    return work.allOut().flatMap(test -> OwnRepetitions.miss(work, test));
  }

  /** The all-out series is one of fresh fingers, so it judges alone only what comes first. */
  private boolean ownAlone(int exercise) {
    Work work = works.get(exercise);
    return work.tires(side)
        && work.allOut().filter(test -> OwnRepetitions.covers(work, test)).isPresent()
        && works.subList(0, exercise).stream().noneMatch(before -> before.tires(side));
  }

  private HandFatigue.Run run(FatigueSet set, End end, double cap) {
    for (Known each : known) {
      if (each.set == set && each.end == end && each.cap == cap) {
        return each.run;
      }
    }
    HandFatigue.Run run = hand.run(set, end, cap);
    known.add(new Known(set, end, cap, run));
    return run;
  }
}
