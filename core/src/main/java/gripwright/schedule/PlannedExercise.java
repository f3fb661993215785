package gripwright.schedule;

import gripwright.finding.ModelPath;
import gripwright.grip.GripFit;
import gripwright.grip.Setup;
import gripwright.hand.Side;
import gripwright.protocol.Scheme;
import gripwright.quantity.Load;
import gripwright.quantity.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An exercise with its loads. Immutable.
 *
 * @param order position in the session as the coach wrote it, from 1
 * @param protocol name of the protocol
 * @param setup grip, edge and hands
 * @param fits the fit of each hand in use on the edge, by side, left first; two equal hands share
 *     one fit
 * @param scheme sets, holds and rests after progression
 * @param steps holds with their loads and rests, in the order they happen
 * @param percentOfMax the written level after progression, in per cent, if all holds share one;
 *     {@link #builtPercentOfMax} returns the built share
 * @param maximum the maximum that levels were calculated from, if known
 * @param bodyMass zero for a weight lifted from the floor
 * @param hard true if it counts as hard
 * @param endReserve estimated capacity left after the last hold, where the maximum is known
 * @param rehabilitation whose plan it follows, if it is part of a rehabilitation
 * @param mix how it was chosen among several grips, if the line has a choice
 * @param why the derivation of each number, in order
 * @param path its place in the model
 */
public record PlannedExercise(
    int order,
    String protocol,
    Setup setup,
    Map<Side, GripFit> fits,
    Scheme scheme,
    List<LoadedStep> steps,
    OptionalDouble percentOfMax,
    Optional<Maximum> maximum,
    Load bodyMass,
    boolean hard,
    Optional<EndReserve> endReserve,
    Optional<String> rehabilitation,
    Optional<GripMix> mix,
    List<Derivation> why,
    ModelPath path) {

  /**
   * A load more than this many percentage points below the plan is well below it; our own number.
   */
  public static final double WELL_BELOW = 5;

  /**
   * A hold with its load, or a rest.
   *
   * @param seconds how long
   * @param load total load; empty for a rest
   */
  public record LoadedStep(double seconds, Optional<Load> load) {
    /** Returns whether it is a hold. */
    public boolean isHold() {
      return load.isPresent();
    }
  }

  /**
   * The reference maximum of a setup: the greatest load held for 7 s.
   *
   * @param used the lower credible bound, from which levels are calculated
   * @param mean the best estimate
   * @param high the upper credible bound
   */
  public record Maximum(Load used, Load mean, Load high) {}

  /**
   * Capacity of the fingers after the last hold, once the load is released, as a share of the
   * capacity at the beginning of the session: an estimate, never a measurement. Of two hands the
   * more fatigued one counts.
   *
   * @param mean by published or fitted rates and the best estimate of the maximum, 0..1
   * @param low by the pessimistic end of both, 0..1 and at most the mean
   * @param high by the optimistic end of both, 0..1 and at least the mean
   */
  public record EndReserve(double mean, double low, double high) {

    /** An exercise with less capacity left, by the mean, is hard. */
    public static final double LITTLE = 0.15;

    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException unless low, mean and high lie between 0 and 1 in this order
     */
    public EndReserve {
      if (!(low >= 0 && low <= mean && mean <= high && high <= 1)) {
        throw new IllegalArgumentException("not a reserve: " + low + ", " + mean + ", " + high);
      }
    }
  }

  /**
   * Copies the parts.
   *
   * @throws IllegalArgumentException unless there is a fit of this grip on this edge for each hand
   *     in use, and for no other
   */
  public PlannedExercise {
    boolean fitting = fits.size() == setup.hands().sides().size();
    for (Side side : setup.hands().sides()) {
      GripFit fit = fits.get(side);
      fitting &= fit != null && fit.grip().equals(setup.grip()) && fit.edge().equals(setup.edge());
    }
    if (!fitting) {
      throw new IllegalArgumentException("not the fits of " + setup + ": " + fits);
    }
    fits = Collections.unmodifiableMap(new EnumMap<>(fits));
    steps = List.copyOf(steps);
    why = List.copyOf(why);
  }

  /**
   * Returns the greatest load of any hold in per cent of the maximum that levels are calculated
   * from: the actual share, after rounding to loads that the equipment can build. Empty if the
   * maximum is unknown.
   */
  public OptionalDouble builtPercentOfMax() {
    return maximum.isEmpty() || maximum.get().used().kilograms() <= 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(totalLoad().kilograms() / maximum.get().used().kilograms() * 100);
  }

  /**
   * Returns whether the greatest load is well below the planned level: by more than {@link
   * #WELL_BELOW} points. Outputs then show the built share of the maximum.
   */
  public boolean builtWellBelowLevel() {
    OptionalDouble built = builtPercentOfMax();
    return built.isPresent()
        && percentOfMax.isPresent()
        && percentOfMax.getAsDouble() - built.getAsDouble() > WELL_BELOW + 1e-9;
  }

  /** Returns this exercise as one that was chosen. */
  public PlannedExercise chosenBy(GripMix chosen) {
    return with(hard, endReserve, Optional.of(chosen), why);
  }

  /**
   * Returns this exercise with the estimated capacity left.
   *
   * @param reserve capacity left after the last hold
   * @param link its derivation, added to the chain
   * @param countsAsHard true to make the exercise hard, if it is not already
   */
  public PlannedExercise leaving(EndReserve reserve, Derivation link, boolean countsAsHard) {
    List<Derivation> longer = new ArrayList<>(why);
    longer.add(link);
    return with(hard || countsAsHard, Optional.of(reserve), mix, longer);
  }

  private PlannedExercise with(
      boolean asHard,
      Optional<EndReserve> reserve,
      Optional<GripMix> chosen,
      List<Derivation> chain) {
    return new PlannedExercise(
        order,
        protocol,
        setup,
        fits,
        scheme,
        steps,
        percentOfMax,
        maximum,
        bodyMass,
        asHard,
        reserve,
        rehabilitation,
        chosen,
        chain,
        path);
  }

  /** Returns the greatest total load of any hold. */
  public Load totalLoad() {
    Load greatest = Load.ZERO;
    for (LoadedStep step : steps) {
      Load load = step.load().orElse(Load.ZERO);
      greatest = load.compareTo(greatest) > 0 ? load : greatest;
    }
    return greatest;
  }

  /** Returns the load added to body mass at the greatest load; negative if load is removed. */
  public Load added() {
    return totalLoad().minus(bodyMass);
  }

  /** Returns the time under tension, in seconds. */
  public double timeUnderLoadSeconds() {
    double seconds = 0;
    for (LoadedStep step : steps) {
      seconds += step.isHold() ? step.seconds() : 0;
    }
    return seconds;
  }

  /** Returns the load-time: the sum of total load times hold time, in kg s. */
  public double loadIndex() {
    double sum = 0;
    for (LoadedStep step : steps) {
      sum += step.load().isPresent() ? step.load().get().kilograms() * step.seconds() : 0;
    }
    return sum;
  }

  /** Returns the impulse on the hands together, in N s. */
  public double impulse() {
    return loadIndex() * Unit.NEWTONS_PER_KILOGRAM;
  }
}
