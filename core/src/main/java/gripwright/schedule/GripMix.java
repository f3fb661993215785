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
 * How a line with a choice of grips divides its work, and why. Immutable.
 *
 * @param weights weights of the score
 * @param best the mix that scores highest
 * @param nextBest the best mix of another set of grips; empty if there is none
 * @param limits limits that lowered the score, the costliest first
 * @param equalMargin margin from which mixes count as equal: the highest that one reaches at the
 *     low ends of the model's intervals
 * @param unproven grips of the mix that are neither tested nor in the demand, and what the mix
 *     would be without; empty if there are none
 */
public record GripMix(
    Exercise.Weights weights,
    Blend best,
    Optional<Blend> nextBest,
    List<Limit> limits,
    double equalMargin,
    Optional<Unproven> unproven) {

  /** Copies the list. */
  public GripMix {
    limits = List.copyOf(limits);
  }

  /**
   * Shares of work and their score.
   *
   * @param shares by grip name, above 0 and at most 1; they add to 1
   * @param match share of the demand that is trained directly, 0 to 1
   * @param margin least quotient of a pulley's capacity, as trained, and its load when a finger
   *     slips, both relative to the athlete's own hang, above 0; a rough estimate for comparing
   *     mixes, not a measure of strength
   * @param carryOver demand-weighted transfer of the work, 0 to 1
   * @param score weighted sum of the three, each scaled from 0 for the worst single grip to 1 for
   *     the best mix
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
   * Grips of a mix that are neither tested nor in the demand.
   *
   * @param grips their names
   * @param without the best mix without them; empty if no other grip is left
   */
  public record Unproven(List<String> grips, Optional<Blend> without) {
    /** Copies the names. */
    public Unproven {
      grips = List.copyOf(grips);
    }
  }

  /**
   * The cost of a binding limit.
   *
   * @param grip the limited grip
   * @param reason the limit
   * @param cost increase of the score without this limit, 0 or more
   */
  public record Limit(String grip, Reason reason, double cost) {}

  /** Why a grip takes no part. */
  public sealed interface Reason extends Message {

    /** Returns the word for it, such as {@code not-named}. */
    String word();

    /** Returns the name of the exact limit, or its description if it has no name. */
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
   * @param code code of the finding; empty if there is none
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

  /** It is used only if the demand names it. */
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
   * The hand can't take it on this edge.
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
