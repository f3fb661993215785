package gripwright.fatigue;

import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.quantity.Load;
import gripwright.schedule.PlannedExercise.EndReserve;
import gripwright.schedule.PlannedExercise.LoadedStep;
import gripwright.schedule.PlannedExercise.Maximum;
import gripwright.strength.ForceTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.BinaryOperator;

/**
 * What a session leaves in an athlete's fingers and which of its holds can't be completed: an
 * estimate with an interval.
 *
 * <p>Each hand is one muscle, whatever the grip, and two hands that hold together tire alike; while
 * one hand works the other rests. Loads are shares of MVC by the exercise's own maximum. The mean
 * takes the best estimate of the maximum and the rates as published, the optimistic end the upper
 * bound and less fatigue, the pessimistic end the lower bound and more. An exercise whose maximum
 * is not known counts as a rest.
 *
 * <p>A set of rates that a session is heavier than it serves for is asked what it says of the same
 * session with heavier loads taken for the heaviest it serves for; of two sets the one that leaves
 * less counts. So a lighter session never leaves less, though the sets disagree where they meet,
 * and a load above 80 % of MVC is not found too heavy by rates that were not fitted to it.
 * Immutable and the same for the same input.
 */
final class SessionFatigue {

  private static final FatigueRates MODERATE = FatigueRates.HAND_2012;
  private static final double TOLERANCE = 1e-9;

  private final List<Work> works;
  private final double restSeconds;

  /**
   * @param works exercises in the order of training
   * @param restSeconds rest between two exercises, 0 s or more
   */
  SessionFatigue(List<Work> works, double restSeconds) {
    this.works = List.copyOf(works);
    this.restSeconds = restSeconds;
  }

  /**
   * An exercise as the fingers feel it.
   *
   * @param steps holds with their loads, and rests
   * @param hands which hands hold
   * @param maximum the reference maximum, if it is known
   * @param curve the athlete's own greatest load by time, if it is known
   */
  record Work(
      List<LoadedStep> steps, Hands hands, Optional<Maximum> maximum, Optional<ForceTime> curve) {

    /** Returns this exercise with all loads multiplied. */
    Work times(double factor) {
      return with(steps.stream().map(s -> step(s, s.load().map(l -> l.times(factor)))).toList());
    }

    /** Returns this exercise with every hold at one load. */
    Work at(Load load) {
      return with(steps.stream().map(s -> step(s, s.load().map(l -> load))).toList());
    }

    private Work with(List<LoadedStep> others) {
      return new Work(others, hands, maximum, curve);
    }

    private static LoadedStep step(LoadedStep like, Optional<Load> load) {
      return new LoadedStep(like.seconds(), load);
    }

    boolean tires(Side side) {
      return maximum.isPresent() && hands.sides().contains(side);
    }

    double seconds() {
      return steps.stream().mapToDouble(LoadedStep::seconds).sum();
    }

    /** Returns the heaviest load as a share of the maximum, by its best estimate. */
    double heaviest() {
      double most =
          steps.stream()
              .flatMap(s -> s.load().stream())
              .mapToDouble(Load::kilograms)
              .max()
              .orElse(0);
      return most / maximum.orElseThrow().mean().kilograms();
    }
  }

  /** What says that a hold can't be completed, the surest first. */
  enum Witness {
    /** The optimistic end of the model, at a load that its rates serve for. */
    OPTIMISTIC,
    /** The athlete's own force-time curve, by its best estimate. */
    CURVE,
    /** The mean of the model. */
    MEAN
  }

  /**
   * A hold that can't be completed.
   *
   * @param exercise its exercise, from 0
   * @param hold its place among the holds of the exercise, from 0
   * @param carriedSeconds how long the load is carried, 0 s or more and less than the hold
   * @param witness what says so
   */
  record Miss(int exercise, int hold, double carriedSeconds, Witness witness) {

    private static final Comparator<Miss> FIRST =
        Comparator.comparingInt(Miss::exercise)
            .thenComparingInt(Miss::hold)
            .thenComparingDouble(Miss::carriedSeconds)
            .thenComparing(Miss::witness);

    private static final Comparator<Miss> SUREST =
        Comparator.comparing(Miss::witness).thenComparing(FIRST);
  }

  /** An end of the interval. */
  private enum End {
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

    /** Returns what a share of the best estimate is multiplied by. */
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

  /** What one hand is left with after each exercise, and each exercise's first hold it misses. */
  private static final class Run {
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

    Optional<Miss> first(Witness witness) {
      for (int i = 0; i < missed.length; i++) {
        if (missed[i] >= 0) {
          return Optional.of(new Miss(i, missed[i], carried[i], witness));
        }
      }
      return Optional.empty();
    }
  }

  /** Returns what each exercise leaves; empty where its maximum is not known. */
  List<Optional<EndReserve>> reserves() {
    List<Map<End, OptionalDouble>> least = new ArrayList<>();
    works.forEach(work -> least.add(new EnumMap<>(End.class)));
    for (Side side : sides()) {
      FatigueRates serving = serving(side);
      for (FatigueRates rates : sets(side)) {
        double cap = rates.equals(serving) ? Double.MAX_VALUE : rates.to();
        for (End end : End.values()) {
          double[] left = run(side, rates, end, cap).reserves;
          for (int i = 0; i < left.length; i++) {
            least.get(i).merge(end, known(left[i]), SessionFatigue::less);
          }
        }
      }
    }
    return least.stream().map(SessionFatigue::reserve).toList();
  }

  private static OptionalDouble known(double reserve) {
    return Double.isNaN(reserve)
        ? OptionalDouble.empty()
        : OptionalDouble.of(Math.max(0, Math.min(1, reserve)));
  }

  private static OptionalDouble less(OptionalDouble one, OptionalDouble other) {
    return one.isEmpty() || (other.isPresent() && other.getAsDouble() < one.getAsDouble())
        ? other
        : one;
  }

  private static Optional<EndReserve> reserve(Map<End, OptionalDouble> ends) {
    OptionalDouble mean = ends.getOrDefault(End.MEAN, OptionalDouble.empty());
    if (mean.isEmpty()) {
      return Optional.empty();
    }
    double middle = mean.getAsDouble();
    double low = ends.getOrDefault(End.PESSIMISTIC, mean).orElse(middle);
    double high = ends.getOrDefault(End.OPTIMISTIC, mean).orElse(middle);
    return Optional.of(new EndReserve(middle, Math.min(low, middle), Math.max(middle, high)));
  }

  /**
   * Returns what can't be completed, at most one hold of an exercise: of several that say so, on
   * either hand, the surest counts and then the earliest. By the model only the exercise that is
   * missed first speaks, since what comes after it suffers from it; each exercise's own curve
   * always does.
   */
  List<Miss> misses() {
    Map<Integer, Miss> surest = new TreeMap<>();
    for (Side side : sides()) {
      for (Miss miss : misses(side)) {
        surest.merge(miss.exercise(), miss, BinaryOperator.minBy(Miss.SUREST));
      }
    }
    return List.copyOf(surest.values());
  }

  private List<Miss> misses(Side side) {
    List<Miss> misses = new ArrayList<>();
    for (FatigueRates rates : sets(side)) {
      Optional<Miss> mean = run(side, rates, End.MEAN, rates.to()).first(Witness.MEAN);
      if (mean.isPresent()) { // else the optimistic end misses nothing either
        misses.add(mean.get());
        run(side, rates, End.OPTIMISTIC, rates.to())
            .first(Witness.OPTIMISTIC)
            .filter(m -> rates.validAt(rates.ofMvc(share(m))))
            .ifPresent(misses::add);
      }
    }
    // Of both sets' means the first speaks; the other misses the rest because of it.
    misses.stream()
        .filter(miss -> miss.witness() == Witness.MEAN)
        .min(Miss.FIRST)
        .ifPresent(
            first ->
                misses.removeIf(miss -> miss.witness() == Witness.MEAN && !miss.equals(first)));
    for (int i = 0; i < works.size(); i++) {
      if (works.get(i).tires(side)) {
        beyondCurve(i).ifPresent(misses::add);
      }
    }
    return misses;
  }

  /**
   * Tells whether no hold of an exercise is missed by the mean or beyond the athlete's own curve.
   */
  boolean completes(int exercise) {
    return beyondCurve(exercise).isEmpty()
        && works.get(exercise).hands().sides().stream()
            .filter(sides()::contains)
            .allMatch(
                side ->
                    sets(side).stream()
                        .allMatch(
                            rates -> run(side, rates, End.MEAN, rates.to()).missed[exercise] < 0));
  }

  /** Returns this session with one exercise changed. */
  SessionFatigue with(int exercise, Work changed) {
    List<Work> others = new ArrayList<>(works);
    others.set(exercise, changed);
    return new SessionFatigue(others, restSeconds);
  }

  /** The hands to look at: one stands for both where they do the same. */
  private List<Side> sides() {
    return works.stream().allMatch(work -> work.hands() == Hands.BOTH)
        ? List.of(Side.LEFT)
        : List.of(Side.values());
  }

  private FatigueRates serving(Side side) {
    double heaviest =
        works.stream().filter(w -> w.tires(side)).mapToDouble(Work::heaviest).max().orElse(0);
    return FatigueRates.forHeaviest(MODERATE.ofMvc(heaviest));
  }

  /** The sets to ask: always the one for moderate loads, and the other where loads are heavier. */
  private List<FatigueRates> sets(Side side) {
    FatigueRates serving = serving(side);
    return serving.equals(MODERATE) ? List.of(MODERATE) : List.of(MODERATE, serving);
  }

  private Run run(Side side, FatigueRates rates, End end, double cap) {
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

  private double share(Miss miss) {
    Work work = works.get(miss.exercise());
    return work.steps().stream()
            .filter(LoadedStep::isHold)
            .skip(miss.hold())
            .findFirst()
            .flatMap(LoadedStep::load)
            .orElseThrow()
            .kilograms()
        / work.maximum().orElseThrow().mean().kilograms();
  }

  private Optional<Miss> beyondCurve(int exercise) {
    Work work = works.get(exercise);
    if (work.curve().isEmpty()) {
      return Optional.empty();
    }
    ForceTime curve = work.curve().get();
    double seconds = Double.NaN;
    double allowed = Double.POSITIVE_INFINITY;
    int hold = 0;
    for (LoadedStep step : work.steps()) {
      if (step.load().isEmpty()) {
        continue;
      }
      if (step.seconds() != seconds) {
        seconds = step.seconds();
        allowed =
            curve.serves(seconds)
                ? curve.load(seconds).best().kilograms()
                : Double.POSITIVE_INFINITY;
      }
      Load load = step.load().get();
      if (load.kilograms() > allowed * (1 + TOLERANCE)) {
        return Optional.of(new Miss(exercise, hold, curve.time(load).best(), Witness.CURVE));
      }
      hold++;
    }
    return Optional.empty();
  }
}
