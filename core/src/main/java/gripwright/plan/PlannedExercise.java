package gripwright.plan;

import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.grip.GripFit;
import gripwright.grip.Setup;
import gripwright.hand.Side;
import gripwright.protocol.Scheme;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.quantity.Unit;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * An exercise with its loads. Immutable.
 *
 * @param order position in the session as the coach wrote it, from 1
 * @param protocol name of the protocol
 * @param setup grip, edge and hands
 * @param fits how each hand that holds lies on the edge, by side, left first; two equal hands share
 *     one fit
 * @param scheme sets, holds and rests after progression
 * @param steps holds with their loads and rests, in the order they happen
 * @param percentOfMax the written level after progression, in per cent, where it is one and all
 *     holds share it
 * @param maximum what levels were reckoned from, where there is one
 * @param bodyMass zero where a weight is lifted from the floor
 * @param hard true if it counts as hard
 * @param endReserve predicted share of capacity left at the end, where a model gives one
 * @param rehabilitation whose plan it follows, if it is part of a rehabilitation
 * @param mix how it was chosen among several grips, where the line left a choice
 * @param why how each number came about, in order
 * @param path where it stands
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
    OptionalDouble endReserve,
    Optional<String> rehabilitation,
    Optional<GripMix> mix,
    List<Derivation> why,
    ModelPath path) {

  /**
   * A hold with its load, or a rest.
   *
   * @param seconds how long
   * @param load total load; empty for a rest
   */
  public record LoadedStep(double seconds, Optional<Load> load) {
    /** Tells whether it is a hold. */
    public boolean isHold() {
      return load.isPresent();
    }
  }

  /**
   * The reference maximum of a setup: the greatest load held for 7 s.
   *
   * @param used the lower credible bound, which levels are reckoned from
   * @param mean the best estimate
   */
  public record Maximum(Load used, Load mean) {}

  /**
   * One link of the chain behind a number.
   *
   * @param step what was done
   * @param value the number it gave
   * @param unit its unit, such as {@code kg}; empty for a pure number
   * @param from what it was made from, in words
   */
  public record Derivation(String step, double value, String unit, String from) {}

  /**
   * Copies the parts.
   *
   * @throws IllegalArgumentException unless there is a fit of this grip on this edge for each hand
   *     that holds, and for no other
   */
  public PlannedExercise {
    Grip grip = setup.grip();
    Length edge = setup.edge();
    if (!fits.keySet().equals(Set.copyOf(setup.hands().sides()))
        || !fits.values().stream().allMatch(f -> f.grip().equals(grip) && f.edge().equals(edge))) {
      throw new IllegalArgumentException("not the fits of " + setup + ": " + fits);
    }
    fits = Collections.unmodifiableMap(new EnumMap<>(fits));
    steps = List.copyOf(steps);
    why = List.copyOf(why);
  }

  /** Returns this exercise as one that was chosen. */
  public PlannedExercise chosenBy(GripMix chosen) {
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
        hard,
        endReserve,
        rehabilitation,
        Optional.of(chosen),
        why,
        path);
  }

  /** Returns the greatest total load of any hold. */
  public Load totalLoad() {
    return steps.stream().flatMap(s -> s.load().stream()).max(Load::compareTo).orElse(Load.ZERO);
  }

  /** Returns what is added to body mass at the greatest load; negative means taken off. */
  public Load added() {
    return totalLoad().minus(bodyMass);
  }

  /** Returns all holds, in seconds. */
  public double timeUnderLoadSeconds() {
    return steps.stream().filter(LoadedStep::isHold).mapToDouble(LoadedStep::seconds).sum();
  }

  /** Returns the sum of total load times hold time, in kg s. */
  public double loadIndex() {
    return steps.stream()
        .mapToDouble(s -> s.load().map(l -> l.kilograms() * s.seconds()).orElse(0.0))
        .sum();
  }

  /** Returns the impulse on the hands together, in N s. */
  public double impulse() {
    return loadIndex() * Unit.NEWTONS_PER_KILOGRAM;
  }
}
