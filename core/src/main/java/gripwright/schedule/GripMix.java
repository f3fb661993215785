package gripwright.schedule;

import gripwright.finding.Message;
import gripwright.finding.WrittenText;
import gripwright.plan.Exercise;
import gripwright.quantity.Length;
import java.util.Collections;
import java.util.List;
import java.util.Map;
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
      shares = Collections.unmodifiableSortedMap(new TreeMap<>(shares));
    }
  }

  /**
   * What a binding limit costs.
   *
   * @param grip which grip it binds
   * @param reason what binds it
   * @param cost by how much the score would rise without this limit, 0 or more
   */
  public record Limit(String grip, Reason reason, double cost) {}

  /** Why a grip takes no part. */
  public sealed interface Reason extends Message {

    /** Returns the word for it, such as {@code not-named}. */
    String word();

    /** Returns a name for what exactly binds, or what it is in words where it has none. */
    default Message detail() {
      return this;
    }
  }

  /**
   * A built-in rule prevents it.
   *
   * @param rule its name
   */
  public record ClosedByRule(String rule) implements Reason {
    @Override
    public String word() {
      return "gate";
    }

    @Override
    public String key() {
      return "derivation.mix-gate";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("rule", rule);
    }

    @Override
    public Message detail() {
      return new WrittenText(rule);
    }
  }

  /**
   * No load can be prescribed or built for it.
   *
   * @param code what is wrong with it; empty if nothing was found
   */
  public record NoLoad(String code) implements Reason {
    @Override
    public String word() {
      return "load";
    }

    @Override
    public String key() {
      return code.isEmpty() ? "derivation.mix-no-load" : "derivation.mix-no-load-because";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("code", code);
    }

    @Override
    public Message detail() {
      return new WrittenText(code);
    }
  }

  /** It is taken only where the demand names it. */
  public record NotNamed() implements Reason {
    @Override
    public String word() {
      return "not-named";
    }

    @Override
    public String key() {
      return "derivation.mix-not-named";
    }
  }

  /**
   * The hand does not take it on this edge.
   *
   * @param edge depth of the edge
   */
  public record OutOfReach(Length edge) implements Reason {
    @Override
    public String word() {
      return "hand";
    }

    @Override
    public String key() {
      return "derivation.mix-hand";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("edge", edge);
    }
  }
}
