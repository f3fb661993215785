package gripwright.schedule;

import gripwright.finding.ModelPath;
import gripwright.grip.GripFit;
import gripwright.grip.Setup;
import gripwright.hand.Side;
import gripwright.protocol.Extent;
import gripwright.protocol.Scheme;
import gripwright.quantity.Load;
import gripwright.quantity.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** An exercise with its loads. Immutable. */
public final class PlannedExercise {

  /**
   * A load more than this many percentage points below the plan is well below it; our own number.
   */
  public static final double WELL_BELOW = 5;

  /**
   * A hold with its load, or a rest.
   *
   * @param seconds how long
   * @param load total load; empty for a rest
   * @param extent what the time of a hold means; {@link Extent#WHOLE} for a rest
   */
  public record LoadedStep(double seconds, Optional<Load> load, Extent extent) {
    /** Creates a hold of exactly this time, or a rest. */
    public LoadedStep(double seconds, Optional<Load> load) {
      this(seconds, load, Extent.WHOLE);
    }

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

  /** The components, checked. */
  private record Parts(
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
      Optional<Load> test,
      Optional<String> rehabilitation,
      boolean warmUp,
      boolean alternating,
      boolean inForce,
      boolean toFailure,
      Optional<String> note,
      Optional<GripMix> mix,
      List<Derivation> why,
      ModelPath path) {
    Parts {
      boolean fitting = fits.size() == setup.hands().sides().size();
      for (Side side : setup.hands().sides()) {
        GripFit fit = fits.get(side);
        fitting &=
            fit != null && fit.grip().equals(setup.grip()) && fit.edge().equals(setup.edge());
      }
      if (!fitting) {
        throw new IllegalArgumentException("not the fits of " + setup + ": " + fits);
      }
      fits = Collections.unmodifiableMap(new EnumMap<>(fits));
      steps = List.copyOf(steps);
      why = List.copyOf(why);
    }
  }

  private final Parts parts;

  private PlannedExercise(Parts parts) {
    this.parts = parts;
  }

  /**
   * Returns a builder for an exercise with its loads, first in its session and not hard unless set.
   * {@link Builder#fits} must be set.
   *
   * @param protocol name of the protocol
   * @param setup grip, edge and hands
   * @param scheme sets, holds and rests after progression
   * @param steps holds with their loads and rests, in the order they happen
   * @param bodyMass zero for a weight lifted from the floor
   * @param path its place in the model
   */
  public static Builder builder(
      String protocol,
      Setup setup,
      Scheme scheme,
      List<LoadedStep> steps,
      Load bodyMass,
      ModelPath path) {
    return new Builder(protocol, setup, scheme, steps, bodyMass, path);
  }

  /** Returns a builder with these components. */
  public Builder toBuilder() {
    return new Builder(parts);
  }

  /** Returns the position in the session as the coach wrote it, from 1. */
  public int order() {
    return parts.order;
  }

  /** Returns the name of the protocol. */
  public String protocol() {
    return parts.protocol;
  }

  /** Returns the grip, edge and hands. */
  public Setup setup() {
    return parts.setup;
  }

  /**
   * Returns the fit of each hand in use on the edge, by side, left first; two equal hands share one
   * fit.
   */
  public Map<Side, GripFit> fits() {
    return parts.fits;
  }

  /** Returns the sets, holds and rests after progression. */
  public Scheme scheme() {
    return parts.scheme;
  }

  /** Returns the holds with their loads and the rests, in the order they happen. */
  public List<LoadedStep> steps() {
    return parts.steps;
  }

  /**
   * Returns the written level after progression, in per cent, if all holds share one; {@link
   * #builtPercentOfMax} is the built share.
   */
  public OptionalDouble percentOfMax() {
    return parts.percentOfMax;
  }

  /** Returns the maximum that levels were calculated from, if known. */
  public Optional<Maximum> maximum() {
    return parts.maximum;
  }

  /** Returns the body mass; zero for a weight lifted from the floor. */
  public Load bodyMass() {
    return parts.bodyMass;
  }

  /** Returns whether it counts as hard. */
  public boolean hard() {
    return parts.hard;
  }

  /** Returns the estimated capacity left after the last hold, where the maximum is known. */
  public Optional<EndReserve> endReserve() {
    return parts.endReserve;
  }

  /** Returns the load of the test that the levels are a share of; empty if they are not. */
  public Optional<Load> test() {
    return parts.test;
  }

  /** Returns whose plan it follows, if it is part of a rehabilitation. */
  public Optional<String> rehabilitation() {
    return parts.rehabilitation;
  }

  /**
   * Returns whether it is a light warm-up: it doesn't advance, is not eased and needs no log line.
   * A line that is written as a warm-up but too hard for one is not.
   */
  public boolean warmUp() {
    return parts.warmUp;
  }

  /**
   * Returns whether its load follows from a test in N, so that a sensor can show it: outputs give
   * the force beside the load.
   */
  public boolean inForce() {
    return parts.inForce;
  }

  /**
   * Returns whether it is what one of two alternating hands does: each set left, then right, one
   * hand in the rest of the other.
   */
  public boolean alternating() {
    return parts.alternating;
  }

  /**
   * Returns whether it goes to failure: it is written so, or a time or number that is a bound is
   * beyond what the estimate says can be held.
   */
  public boolean isToFailure() {
    return parts.toFailure
        || parts.scheme.written().stream().anyMatch(h -> h.extent() == Extent.TO_FAILURE);
  }

  /** Returns the coach's words for it, if there are any. */
  public Optional<String> note() {
    return parts.note;
  }

  /** Returns how it was chosen among several grips, if the line has a choice. */
  public Optional<GripMix> mix() {
    return parts.mix;
  }

  /** Returns the derivation of each number, in order. */
  public List<Derivation> why() {
    return parts.why;
  }

  /** Returns its place in the model. */
  public ModelPath path() {
    return parts.path;
  }

  /**
   * Returns the greatest load of any hold in per cent of the maximum that levels are calculated
   * from: the actual share, after rounding to loads that the equipment can build. Empty if the
   * maximum is unknown.
   */
  public OptionalDouble builtPercentOfMax() {
    return parts.maximum.isEmpty() || parts.maximum.get().used().kilograms() <= 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(totalLoad().kilograms() / parts.maximum.get().used().kilograms() * 100);
  }

  /**
   * Returns whether the greatest load is well below the planned level: by more than {@link
   * #WELL_BELOW} points. Outputs then show the built share of the maximum.
   */
  public boolean builtWellBelowLevel() {
    OptionalDouble built = builtPercentOfMax();
    return built.isPresent()
        && parts.percentOfMax.isPresent()
        && parts.percentOfMax.getAsDouble() - built.getAsDouble() > WELL_BELOW + 1e-9;
  }

  /** Returns this exercise as one that was chosen. */
  public PlannedExercise chosenBy(GripMix chosen) {
    return toBuilder().mix(Optional.of(chosen)).build();
  }

  /**
   * Returns this exercise with the estimated capacity left.
   *
   * @param reserve capacity left after the last hold
   * @param link its derivation, added to the chain
   * @param countsAsHard true to make the exercise hard, if it is not already
   */
  public PlannedExercise leaving(EndReserve reserve, Derivation link, boolean countsAsHard) {
    List<Derivation> longer = new ArrayList<>(parts.why);
    longer.add(link);
    return toBuilder()
        .hard(parts.hard || countsAsHard)
        .endReserve(Optional.of(reserve))
        .why(longer)
        .build();
  }

  /** Returns this exercise as one whose bound is beyond what can be held, which is hard. */
  public PlannedExercise toFailure() {
    return toBuilder().toFailure(true).hard(true).build();
  }

  /** Returns the greatest total load of any hold. */
  public Load totalLoad() {
    Load greatest = Load.ZERO;
    for (LoadedStep step : parts.steps) {
      Load load = step.load().orElse(Load.ZERO);
      greatest = load.compareTo(greatest) > 0 ? load : greatest;
    }
    return greatest;
  }

  /** Returns the load added to body mass at the greatest load; negative if load is removed. */
  public Load added() {
    return totalLoad().minus(parts.bodyMass);
  }

  /** Returns the time under tension, in seconds. */
  public double timeUnderLoadSeconds() {
    double seconds = 0;
    for (LoadedStep step : parts.steps) {
      seconds += step.isHold() ? step.seconds() : 0;
    }
    return seconds;
  }

  /** Returns the load-time: the sum of total load times hold time, in kg s. */
  public double loadIndex() {
    double sum = 0;
    for (LoadedStep step : parts.steps) {
      sum += step.load().isPresent() ? step.load().get().kilograms() * step.seconds() : 0;
    }
    return sum;
  }

  /** Returns the impulse on the hands together, in N s. */
  public double impulse() {
    return loadIndex() * Unit.NEWTONS_PER_KILOGRAM;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof PlannedExercise that && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return "PlannedExercise" + parts.toString().substring("Parts".length());
  }

  /** Collects the components. Not thread-safe. */
  public static final class Builder {
    private int order = 1;
    private String protocol;
    private Setup setup;
    private Optional<Map<Side, GripFit>> fits = Optional.empty();
    private Scheme scheme;
    private List<LoadedStep> steps;
    private OptionalDouble percentOfMax = OptionalDouble.empty();
    private Optional<Maximum> maximum = Optional.empty();
    private Load bodyMass;
    private boolean hard;
    private Optional<EndReserve> endReserve = Optional.empty();
    private Optional<Load> test = Optional.empty();
    private Optional<String> rehabilitation = Optional.empty();
    private boolean warmUp;
    private boolean alternating;
    private boolean inForce;
    private boolean toFailure;
    private Optional<String> note = Optional.empty();
    private Optional<GripMix> mix = Optional.empty();
    private List<Derivation> why = List.of();
    private ModelPath path;

    private Builder(
        String protocol,
        Setup setup,
        Scheme scheme,
        List<LoadedStep> steps,
        Load bodyMass,
        ModelPath path) {
      this.protocol = Objects.requireNonNull(protocol, "protocol");
      this.setup = Objects.requireNonNull(setup, "setup");
      this.scheme = Objects.requireNonNull(scheme, "scheme");
      this.steps = List.copyOf(Objects.requireNonNull(steps, "steps"));
      this.bodyMass = Objects.requireNonNull(bodyMass, "bodyMass");
      this.path = Objects.requireNonNull(path, "path");
    }

    private Builder(Parts copied) {
      order = copied.order;
      protocol = copied.protocol;
      setup = copied.setup;
      fits = Optional.of(copied.fits);
      scheme = copied.scheme;
      steps = copied.steps;
      percentOfMax = copied.percentOfMax;
      maximum = copied.maximum;
      bodyMass = copied.bodyMass;
      hard = copied.hard;
      endReserve = copied.endReserve;
      test = copied.test;
      rehabilitation = copied.rehabilitation;
      warmUp = copied.warmUp;
      alternating = copied.alternating;
      inForce = copied.inForce;
      toFailure = copied.toFailure;
      note = copied.note;
      mix = copied.mix;
      why = copied.why;
      path = copied.path;
    }

    /** Sets the position in the session as the coach wrote it, from 1. */
    public Builder order(int value) {
      order = value;
      return this;
    }

    /** Sets the name of the protocol. */
    public Builder protocol(String value) {
      Objects.requireNonNull(value, "value");
      protocol = value;
      return this;
    }

    /** Sets the grip, edge and hands. */
    public Builder setup(Setup value) {
      Objects.requireNonNull(value, "value");
      setup = value;
      return this;
    }

    /**
     * Sets the fit of each hand in use on the edge, by side; two equal hands share one fit. It must
     * be set.
     */
    public Builder fits(Map<Side, GripFit> value) {
      Objects.requireNonNull(value, "value");
      fits = Optional.of(Collections.unmodifiableMap(new LinkedHashMap<>(value)));
      return this;
    }

    /** Sets the sets, holds and rests after progression. */
    public Builder scheme(Scheme value) {
      Objects.requireNonNull(value, "value");
      scheme = value;
      return this;
    }

    /** Sets the holds with their loads and the rests, in the order they happen. */
    public Builder steps(List<LoadedStep> value) {
      Objects.requireNonNull(value, "value");
      steps = List.copyOf(value);
      return this;
    }

    /**
     * Sets the written level after progression, in per cent, if all holds share one; {@link
     * #builtPercentOfMax} is the built share.
     */
    public Builder percentOfMax(OptionalDouble value) {
      Objects.requireNonNull(value, "value");
      percentOfMax = value;
      return this;
    }

    /** Sets the maximum that levels were calculated from, if known. */
    public Builder maximum(Optional<Maximum> value) {
      Objects.requireNonNull(value, "value");
      maximum = value;
      return this;
    }

    /** Sets the body mass; zero for a weight lifted from the floor. */
    public Builder bodyMass(Load value) {
      Objects.requireNonNull(value, "value");
      bodyMass = value;
      return this;
    }

    /** Sets whether it counts as hard. */
    public Builder hard(boolean value) {
      hard = value;
      return this;
    }

    /** Sets the estimated capacity left after the last hold, where the maximum is known. */
    public Builder endReserve(Optional<EndReserve> value) {
      Objects.requireNonNull(value, "value");
      endReserve = value;
      return this;
    }

    /** Sets the load of the test that the levels are a share of; empty if they are not. */
    public Builder test(Optional<Load> value) {
      Objects.requireNonNull(value, "value");
      test = value;
      return this;
    }

    /** Sets whose plan it follows, if it is part of a rehabilitation. */
    public Builder rehabilitation(Optional<String> value) {
      Objects.requireNonNull(value, "value");
      rehabilitation = value;
      return this;
    }

    /** Sets whether it is a light warm-up. */
    public Builder warmUp(boolean value) {
      warmUp = value;
      return this;
    }

    /** Sets whether its load follows from a test in N. */
    public Builder inForce(boolean value) {
      inForce = value;
      return this;
    }

    /** Sets whether it is what one of two alternating hands does. */
    public Builder alternating(boolean value) {
      alternating = value;
      return this;
    }

    /** Sets whether a time or number that is a bound is beyond what can be held. */
    public Builder toFailure(boolean value) {
      toFailure = value;
      return this;
    }

    /** Sets the coach's words for it, if there are any. */
    public Builder note(Optional<String> value) {
      Objects.requireNonNull(value, "value");
      note = value;
      return this;
    }

    /** Sets how it was chosen among several grips, if the line has a choice. */
    public Builder mix(Optional<GripMix> value) {
      Objects.requireNonNull(value, "value");
      mix = value;
      return this;
    }

    /** Sets the derivation of each number, in order. */
    public Builder why(List<Derivation> value) {
      Objects.requireNonNull(value, "value");
      why = List.copyOf(value);
      return this;
    }

    /** Sets its place in the model. */
    public Builder path(ModelPath value) {
      Objects.requireNonNull(value, "value");
      path = value;
      return this;
    }

    /**
     * Returns the exercise.
     *
     * @throws IllegalStateException if the fits are missing
     * @throws IllegalArgumentException unless there is a fit of this grip on this edge for each
     *     hand in use, and for no other
     */
    public PlannedExercise build() {
      return new PlannedExercise(
          new Parts(
              order,
              protocol,
              setup,
              fits.orElseThrow(
                  () -> new IllegalStateException("exercise " + protocol + " has no fits")),
              scheme,
              steps,
              percentOfMax,
              maximum,
              bodyMass,
              hard,
              endReserve,
              test,
              rehabilitation,
              warmUp,
              alternating,
              inForce,
              toFailure,
              note,
              mix,
              why,
              path));
    }
  }
}
