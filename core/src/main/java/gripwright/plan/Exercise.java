package gripwright.plan;

import gripwright.finding.WrittenReason;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.protocol.Argument;
import gripwright.protocol.Protocol;
import gripwright.protocol.Scheme;
import gripwright.quantity.Length;
import gripwright.quantity.Range;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * One line of a session: a protocol, on a grip, on an edge.
 *
 * @param protocol the protocol
 * @param with values for the protocol's parameters
 * @param target the grip, or the grips to choose from
 * @param edge depth of the edge
 * @param hands which hands hold
 * @param lifting true if a weight is lifted from the floor
 * @param rehabilitation whose plan it follows, where the exercise is part of a rehabilitation
 */
public record Exercise(
    Protocol protocol,
    Map<String, Argument> with,
    Target target,
    Length edge,
    Hands hands,
    boolean lifting,
    Optional<String> rehabilitation) {

  /** The grip to train: one grip, or the best of several. */
  public sealed interface Target {
    /** Returns the grips that can be trained, in the order written. */
    List<Grip> grips();

    /**
     * Returns the weights for choosing a grip; empty if there is no choice, or the plan decides.
     */
    Optional<Weights> weights();
  }

  /**
   * One grip.
   *
   * @param grip the grip
   */
  public record On(Grip grip) implements Target {
    /** Refuses null. */
    public On {
      Objects.requireNonNull(grip, "grip");
    }

    @Override
    public List<Grip> grips() {
      return List.of(grip);
    }

    @Override
    public Optional<Weights> weights() {
      return Optional.empty();
    }
  }

  /**
   * The work is divided among grips by their value for the plan.
   *
   * @param grips 2 to 30 grips, in the order written
   * @param weights weights for choosing; empty means those of the plan, or else the standard
   *     weights
   */
  public record BestOf(List<Grip> grips, Optional<Weights> weights) implements Target {
    /**
     * Copies and checks the grips.
     *
     * @throws IllegalArgumentException if there are not 2 to 30 grips, or one appears twice
     */
    public BestOf {
      Objects.requireNonNull(grips, "grips");
      Objects.requireNonNull(weights, "weights");
      grips = List.copyOf(grips);
      Range.GRIPS.check(grips.size());
      Set<String> names = new HashSet<>();
      for (Grip grip : grips) {
        if (!names.add(grip.name())) {
          throw new IllegalArgumentException("the best of grips with " + grip.name() + " twice");
        }
      }
    }
  }

  /**
   * Weights for choosing grips. The three add up to 1.
   *
   * @param match weight of the demand trained directly
   * @param margin weight of the margin in the weakest structure
   * @param carryOver weight of the transfer to other grips
   */
  public record Weights(double match, double margin, double carryOver) {
    /** The default weights: the library's own choice. */
    public static final Weights STANDARD = new Weights(0.4, 0.3, 0.3);

    /**
     * Checks the sum.
     *
     * @throws IllegalArgumentException if a weight is outside 0 to 1 or they do not add up to 1
     */
    public Weights {
      Range.SHARE.check(match);
      Range.SHARE.check(margin);
      Range.SHARE.check(carryOver);
      if (Math.abs(match + margin + carryOver - 1) > 1e-9) {
        throw new IllegalArgumentException(
            "weights do not add to 100 %: " + match + ", " + margin + ", " + carryOver);
      }
    }
  }

  /**
   * Copies the values and checks them against the protocol.
   *
   * @throws IllegalArgumentException if the protocol has no such parameter, or one of another kind,
   *     the edge is outside 1 to 200 mm, the name of the rehabilitation plan has no letter and no
   *     digit, or there are more than 10,000 holds and rests
   */
  public Exercise {
    Objects.requireNonNull(protocol, "protocol");
    Objects.requireNonNull(with, "with");
    Objects.requireNonNull(target, "target");
    Objects.requireNonNull(edge, "edge");
    Objects.requireNonNull(hands, "hands");
    Objects.requireNonNull(rehabilitation, "rehabilitation");
    rehabilitation.ifPresent(whose -> WrittenReason.check(whose, "whose rehabilitation"));
    with = Collections.unmodifiableMap(new LinkedHashMap<>(with));
    Range.EDGE.check(edge);
    Range.STEPS.check(protocol.bind(with).size());
  }

  /** Returns an exercise with both hands, hanging, with the protocol's defaults. */
  public static Exercise of(Protocol protocol, Grip grip, Length edge) {
    return new Exercise(
        protocol, Map.of(), new On(grip), edge, Hands.BOTH, false, Optional.empty());
  }

  /** Returns this exercise with one parameter set. */
  public Exercise with(String parameter, Argument value) {
    Map<String, Argument> more = new LinkedHashMap<>(with);
    more.put(parameter, value);
    return new Exercise(protocol, more, target, edge, hands, lifting, rehabilitation);
  }

  /** Returns this exercise as part of a rehabilitation that a named practitioner planned. */
  public Exercise rehabilitation(String whosePlan) {
    return new Exercise(protocol, with, target, edge, hands, lifting, Optional.of(whosePlan));
  }

  /** Returns the scheme before any progression. */
  public Scheme scheme() {
    return protocol.bind(with);
  }

  /** Returns the names of the grips. */
  List<String> gripNames() {
    return target.grips().stream().map(Grip::name).toList();
  }

  /** Returns the setup of a grip of this exercise on its edge. */
  public Setup setup(Grip grip) {
    return new Setup(grip, edge, hands, lifting);
  }
}
