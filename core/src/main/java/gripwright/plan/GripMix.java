package gripwright.plan;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How a line that may choose among grips shares its work, and why. Immutable.
 *
 * @param weights what counted how much
 * @param best the mix that scores highest
 * @param nextBest the best mix of another set of grips; empty if there is none
 * @param limits what kept the score down, the costliest first
 */
public record GripMix(
    Exercise.Weights weights, Blend best, Optional<Blend> nextBest, List<Limit> limits) {

  /** Copies the list. */
  public GripMix {
    Objects.requireNonNull(weights, "weights");
    Objects.requireNonNull(best, "best");
    Objects.requireNonNull(nextBest, "nextBest");
    Objects.requireNonNull(limits, "limits");
    limits = List.copyOf(limits);
  }

  /**
   * Shares of work and what they are worth.
   *
   * @param shares by grip name, above 0 and at most 1; they add to 1
   * @param match share of the demand that is trained directly, 0 to 1
   * @param margin least quotient of a pulley's capacity, as trained, and its load when a finger
   *     slips, above 0; a rough estimate, good to compare mixes by and not to be read as a strength
   * @param carryOver demand-weighted transfer of the work, 0 to 1
   * @param score weighted sum of the three, each brought to 0 for the worst single grip and 1 for
   *     the best that any mix reaches
   */
  public record Blend(
      SortedMap<String, Double> shares,
      double match,
      double margin,
      double carryOver,
      double score) {

    /** Copies the shares. */
    public Blend {
      Objects.requireNonNull(shares, "shares");
      shares = Collections.unmodifiableSortedMap(new TreeMap<>(shares));
    }
  }

  /**
   * What a binding limit costs.
   *
   * @param grip which grip it binds
   * @param kind what binds
   * @param reason in words, such as the name of the rule that stands against the grip
   * @param cost by how much the score would rise without this limit, 0 or more
   */
  public record Limit(String grip, Kind kind, String reason, double cost) {
    /** Refuses null. */
    public Limit {
      Objects.requireNonNull(grip, "grip");
      Objects.requireNonNull(kind, "kind");
      Objects.requireNonNull(reason, "reason");
    }
  }

  /** What binds a grip's share. */
  public enum Kind {
    /** A built-in rule stands against it. */
    GATE,
    /** It is taken only where the demand names it. */
    NOT_NAMED,
    /** The hand does not take it on this edge. */
    HAND,
    /** No load can be prescribed or built for it. */
    LOAD;

    /** Returns the word for it, such as {@code not-named}. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
