package gripwright.fatigue;

import gripwright.fatigue.HandFatigue.End;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.quantity.Load;
import gripwright.schedule.HoldChain;
import gripwright.schedule.PlannedExercise.EndReserve;
import gripwright.schedule.PlannedExercise.LoadedStep;
import gripwright.strength.ForceTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.BinaryOperator;

/**
 * Estimates the remaining capacity of an athlete's fingers after a session and which of its holds
 * can't be completed: an estimate with an interval.
 *
 * <p>Each hand is one muscle for all grips, and two hands that hold together tire equally; while
 * one hand works the other rests. Loads are shares of MVC by the exercise's own maximum. The mean
 * uses the best estimate of the maximum and the published rates, the optimistic end the upper bound
 * and less fatigue, the pessimistic end the lower bound and more fatigue. An exercise with an
 * unknown maximum counts as a rest.
 *
 * <p>Which model serves depends on rests and holds, never on loads, see {@link HandVerdict}. If a
 * session is heavier than the valid range of a set, the set is used with loads capped at the end of
 * its range; of two sets of three compartments the one with less remaining capacity counts. So a
 * lighter session never leaves less capacity, although the sets disagree where their ranges meet,
 * and rates that were not fitted above 80 % of MVC don't judge such a load as too heavy. The result
 * is the same for the same input. Not thread-safe.
 */
final class SessionFatigue {

  private static final double TOLERANCE = 1e-9;

  private final List<Work> works;
  private final double restSeconds;
  private final Map<Side, HandVerdict> hands = new EnumMap<>(Side.class);

  /**
   * @param works exercises in the order of training
   * @param restSeconds rest between two exercises, 0 s or more
   */
  SessionFatigue(List<Work> works, double restSeconds) {
    this.works = List.copyOf(works);
    this.restSeconds = restSeconds;
  }

  /** The evidence that a hold can't be completed, the strongest first. */
  enum Evidence {
    /** The optimistic end of the model, at a load where its rates are valid. */
    OPTIMISTIC,
    /** The athlete's own force-time curve, by its best estimate. */
    CURVE,
    /** The athlete's own all-out series. */
    ALL_OUT,
    /** The mean of the model. */
    MEAN
  }

  /**
   * A hold that can't be completed.
   *
   * @param exercise its exercise, from 0
   * @param hold its position among the holds of the exercise, from 0
   * @param carriedSeconds how long the load is carried, 0 s or more and less than the hold
   * @param evidence the evidence for it
   */
  record Violation(int exercise, int hold, double carriedSeconds, Evidence evidence) {

    static final Comparator<Violation> FIRST =
        Comparator.comparingInt(Violation::exercise)
            .thenComparingInt(Violation::hold)
            .thenComparingDouble(Violation::carriedSeconds)
            .thenComparing(Violation::evidence);

    private static final Comparator<Violation> SUREST =
        Comparator.comparing(Violation::evidence).thenComparing(FIRST);

    static Violation of(int exercise, Miss miss, Evidence evidence) {
      return new Violation(exercise, miss.hold(), miss.carriedSeconds(), evidence);
    }
  }

  /** Returns the capacity left after each exercise; empty if its maximum is unknown. */
  List<Optional<EndReserve>> reserves() {
    List<Map<End, OptionalDouble>> least = new ArrayList<>();
    works.forEach(work -> least.add(new EnumMap<>(End.class)));
    for (Side side : sides()) {
      HandVerdict hand = hand(side);
      for (End end : End.values()) {
        for (int i = 0; i < works.size(); i++) {
          least.get(i).merge(end, known(hand.reserve(i, end)), SessionFatigue::less);
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
   * Returns what can't be completed, at most one hold of an exercise: of several on either hand,
   * the one with the strongest evidence counts, then the earliest. By the model only the first
   * missed exercise is reported, since it affects the following ones; violations of an exercise's
   * own curve are always reported.
   */
  List<Violation> violations() {
    Map<Integer, Violation> surest = new TreeMap<>();
    for (Side side : sides()) {
      for (Violation violation : violations(side)) {
        surest.merge(violation.exercise(), violation, BinaryOperator.minBy(Violation.SUREST));
      }
    }
    return List.copyOf(surest.values());
  }

  private List<Violation> violations(Side side) {
    List<Violation> violations = hand(side).violations();
    for (int i = 0; i < works.size(); i++) {
      if (works.get(i).tires(side)) {
        beyondCurve(i).ifPresent(violations::add);
      }
    }
    return violations;
  }

  /**
   * Tells whether an exercise can be completed by the mean, by the athlete's all-out series and by
   * the athlete's own curve.
   */
  boolean completes(int exercise) {
    return beyondCurve(exercise).isEmpty()
        && works.get(exercise).hands().sides().stream()
            .filter(sides()::contains)
            .allMatch(side -> hand(side).completes(exercise));
  }

  /**
   * Tells whether a time or a number that is a bound is beyond what can be held, so that the
   * exercise goes to failure.
   */
  boolean failsBeforeBound(int exercise) {
    Work work = works.get(exercise);
    return work.hasBound() && !with(exercise, work.withoutBounds()).completes(exercise);
  }

  /** Returns this session with one exercise changed. */
  SessionFatigue with(int exercise, Work changed) {
    List<Work> others = new ArrayList<>(works);
    others.set(exercise, changed);
    return new SessionFatigue(others, restSeconds);
  }

  /** Returns the hands to simulate: one if both do the same. */
  private List<Side> sides() {
    return works.stream().allMatch(work -> work.hands() == Hands.BOTH)
        ? List.of(Side.LEFT)
        : List.of(Side.values());
  }

  private HandVerdict hand(Side side) {
    return hands.computeIfAbsent(side, each -> new HandVerdict(works, restSeconds, each));
  }

  private Optional<Violation> beyondCurve(int exercise) {
    Work work = works.get(exercise);
    if (work.curve().isEmpty()) {
      return Optional.empty();
    }
    ForceTime curve = work.curve().get();
    double seconds = Double.NaN;
    double allowed = Double.POSITIVE_INFINITY;
    int hold = 0;
    HoldChain held = new HoldChain();
    for (LoadedStep step : work.steps()) {
      held.add(step);
      if (step.load().isEmpty()) {
        continue;
      }
      if (held.secondsAtLoad() != seconds) {
        seconds = held.secondsAtLoad();
        allowed =
            curve.isValidFor(seconds)
                ? curve.load(seconds).best().kilograms()
                : Double.POSITIVE_INFINITY;
      }
      Load load = step.load().get();
      if (load.kilograms() > allowed * (1 + TOLERANCE) && !step.extent().isBound()) {
        double before = held.secondsAtLoad() - step.seconds();
        double carried = Math.max(0, curve.time(load).best() - before);
        return Optional.of(new Violation(exercise, hold, carried, Evidence.CURVE));
      }
      hold++;
    }
    return Optional.empty();
  }
}
