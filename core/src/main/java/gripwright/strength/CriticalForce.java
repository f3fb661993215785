package gripwright.strength;

import gripwright.quantity.Load;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The load that can be sustained for long, and the impulse available above it. These numbers depend
 * on how they were measured, so the definition is part of the result: two definitions in one paper
 * differ by 3.3 of 20.1 kg in the same twelve people, and the first was held for 440 s only (Balas
 * J et al. 2024, Eur J Appl Physiol 124(9):2787-2798).
 *
 * <p>Critical force repeats badly from day to day: 21 % for the force at the end of a series and 13
 * % for the impulse (McClean ZJ et al. 2023, Int J Exerc Sci 16(4):912-923). The spreads include
 * this; for the mean of the last holds, where nothing is published, the same values are used. The
 * time since the test adds to them as it does in the {@link StrengthMap}. Immutable.
 *
 * @param definition how it was measured
 * @param force critical force
 * @param impulseKgS impulse above it, in kg s, above 0; 1 kg s is 9.80665 N s
 * @param impulseSpread standard deviation of the impulse, as a share of it
 * @param levelled false if the load still fell at the end of the series, so that critical force is
 *     likely lower
 */
public record CriticalForce(
    Definition definition,
    LoadEstimate force,
    double impulseKgS,
    double impulseSpread,
    boolean levelled) {
  /** Refuses null. */
  public CriticalForce {
    Objects.requireNonNull(definition, "definition");
    Objects.requireNonNull(force, "force");
  }

  /** How a critical force was measured. */
  public enum Definition {
    /** Mean load of the last three holds of an all-out series. */
    MEAN_OF_LAST_THREE,
    /** Load at the end of the last three holds of an all-out series, as a mean. */
    END_OF_LAST_THREE,
    /** The asymptote of an exponential fitted to the loads of all holds of an all-out series. */
    ASYMPTOTE,
    /**
     * The level that load approaches over the time of unbroken holds: load less impulse divided by
     * time.
     */
    HOLDS_TO_FAILURE
  }

  /** The shortest all-out series, rests included, in seconds; the published one lasts 240 s. */
  public static final double SHORTEST_SERIES_SECONDS = 180;

  /** The fewest holds of an all-out series; the library's own choice. */
  public static final int FEWEST_HOLDS = 12;

  /**
   * How many times longer the longest unbroken hold must last than the shortest; the library's own
   * choice.
   */
  public static final double TIMES_APART = 2;

  /**
   * The shortest unbroken hold that counts, in seconds: the loads of shorter ones lie below the
   * hyperbola. The library's own choice.
   */
  public static final double SHORTEST_HOLD_SECONDS = 30;

  private static final int LAST = 3;

  /**
   * The last three holds must reach this share of the three before, for the load to count as
   * levelled off.
   */
  private static final double LEVELLED = 0.95;

  /**
   * Calculates critical force from the mean loads of an all-out series.
   *
   * @param series the series
   * @param definition {@link Definition#MEAN_OF_LAST_THREE}, as published, or {@link
   *     Definition#ASYMPTOTE}, which is lower where load still falls at the end
   * @return empty if the series is shorter than {@link #SHORTEST_SERIES_SECONDS} or {@link
   *     #FEWEST_HOLDS}, never above its end, or without an asymptote
   * @throws IllegalArgumentException if the definition is not one of the two
   */
  public static Optional<CriticalForce> ofSeries(
      StrengthTest.Series series, Definition definition) {
    return switch (definition) {
      case MEAN_OF_LAST_THREE -> ofSeries(series, series.means(), definition);
      case ASYMPTOTE ->
          AllOutDecay.asymptote(series)
              .flatMap(force -> ofSeries(series, series.means(), definition, force));
      default -> throw new IllegalArgumentException(definition + " is not of mean loads");
    };
  }

  /**
   * Calculates critical force from the load at the end of the last three holds of an all-out
   * series.
   *
   * @param series the series
   * @param ends load at the end of each hold, in order
   * @throws IllegalArgumentException if there is not one end for each hold
   */
  public static Optional<CriticalForce> ofEnds(StrengthTest.Series series, List<Load> ends) {
    if (ends.size() != series.means().size()) {
      throw new IllegalArgumentException(
          series.means().size() + " holds and " + ends.size() + " ends");
    }
    return ofSeries(series, ends, Definition.END_OF_LAST_THREE);
  }

  /**
   * Calculates critical force from unbroken holds: weighted least squares of load over the inverse
   * of time.
   *
   * @param efforts greatest loads by time, in any order; those shorter than {@link
   *     #SHORTEST_HOLD_SECONDS} or longer than 10 min are left out
   * @return empty if there are fewer than two, their times do not differ by a factor of {@link
   *     #TIMES_APART}, or they, or the time since, leave critical force or impulse too uncertain
   */
  public static Optional<CriticalForce> ofHolds(Collection<Effort> efforts) {
    return CriticalHold.fit(efforts).map(CriticalHold::critical);
  }

  /**
   * Returns this critical force for a later day, with larger spreads of force and impulse.
   *
   * @param drift the possible change since, see {@link StrengthMap#drift}
   */
  public CriticalForce aged(double drift) {
    return new CriticalForce(
        definition,
        new LoadEstimate(force.best(), Math.hypot(force.spread(), drift)),
        impulseKgS,
        Math.hypot(impulseSpread, drift),
        levelled);
  }

  private static Optional<CriticalForce> ofSeries(
      StrengthTest.Series series, List<Load> loads, Definition definition) {
    return loads.size() < LAST
        ? Optional.empty()
        : ofSeries(series, loads, definition, mean(loads, loads.size() - LAST));
  }

  private static Optional<CriticalForce> ofSeries(
      StrengthTest.Series series, List<Load> loads, Definition definition, double force) {
    int holds = loads.size();
    double work = series.work().toNanos() / 1e9;
    double rest = series.rest().toNanos() / 1e9;
    if (holds < FEWEST_HOLDS || holds * (work + rest) < SHORTEST_SERIES_SECONDS) {
      return Optional.empty();
    }
    double impulse =
        series.means().stream()
            .mapToDouble(load -> Math.max(0, load.kilograms() - force) * work)
            .sum();
    if (!(force > 0 && impulse > 0)) {
      return Optional.empty();
    }
    return Optional.of(
        new CriticalForce(
            definition,
            new LoadEstimate(Load.ofKilograms(force), TestReliability.END_FORCE.variation()),
            impulse,
            TestReliability.IMPULSE_ABOVE_END_FORCE.variation(),
            mean(loads, holds - LAST) >= LEVELLED * mean(loads, holds - 2 * LAST)));
  }

  private static double mean(List<Load> loads, int from) {
    return loads.subList(from, from + LAST).stream()
        .mapToDouble(Load::kilograms)
        .average()
        .orElseThrow();
  }

  /**
   * Returns how long a load can be held above critical force: impulse divided by the load above it.
   *
   * @param load total load
   * @return seconds; infinite at critical force and below
   */
  public double secondsAt(Load load) {
    double above = load.kilograms() - force.best().kilograms();
    return above > 0 ? impulseKgS / above : Double.POSITIVE_INFINITY;
  }

  /**
   * Returns the load that uses up the impulse in a time.
   *
   * @param seconds above 0
   * @throws IllegalArgumentException if it is not
   */
  public Load loadFor(double seconds) {
    if (!(seconds > 0)) {
      throw new IllegalArgumentException("not a time: " + seconds + " s");
    }
    return force.best().plus(Load.ofKilograms(impulseKgS / seconds));
  }
}
