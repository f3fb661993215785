package gripwright.plan;

import gripwright.finding.WrittenReason;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.protocol.Argument;
import gripwright.protocol.Level;
import gripwright.protocol.Protocol;
import gripwright.protocol.Scheme;
import gripwright.quantity.Length;
import gripwright.quantity.Range;
import java.time.Duration;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** One line of a session: a protocol, on a grip, on an edge. Immutable. */
public final class Exercise {

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

  /** Whether the hands work in turn. */
  private enum Turns {
    /** They don't. */
    NONE,
    /** Each set is done with the left hand, then with the right. */
    OF_BOTH,
    /** This is what one of two hands does. */
    OF_ONE
  }

  /** The components, checked. */
  private record Parts(
      Protocol protocol,
      Map<String, Argument> with,
      Target target,
      Length edge,
      Hands hands,
      Turns turns,
      boolean lifting,
      Optional<String> rehabilitation,
      boolean warmUp,
      Optional<String> note) {
    Parts {
      Objects.requireNonNull(protocol, "protocol");
      Objects.requireNonNull(with, "with");
      Objects.requireNonNull(target, "target");
      Objects.requireNonNull(edge, "edge");
      Objects.requireNonNull(hands, "hands");
      Objects.requireNonNull(rehabilitation, "rehabilitation");
      rehabilitation.ifPresent(whose -> WrittenReason.check(whose, "whose rehabilitation"));
      Objects.requireNonNull(note, "note");
      with = Collections.unmodifiableMap(new LinkedHashMap<>(with));
      Range.EDGE.check(edge);
      if (turns == Turns.OF_BOTH && hands != Hands.BOTH) {
        throw new IllegalArgumentException("alternating hands are both hands");
      }
      if (warmUp && target instanceof BestOf) {
        throw new IllegalArgumentException("a warm-up has one grip, not the best of several");
      }
      if (warmUp && rehabilitation.isPresent()) {
        throw new IllegalArgumentException("a warm-up is not part of a rehabilitation");
      }
    }
  }

  private final Parts parts;
  private final Scheme scheme;

  /** What each hand does, left first, if they alternate; otherwise empty. */
  private final List<Exercise> ofHands;

  private Exercise(Parts parts) {
    this.parts = parts;
    this.scheme = parts.protocol.bind(parts.with);
    Range.STEPS.check(scheme.size());
    this.ofHands =
        parts.turns == Turns.OF_BOTH
            ? List.of(
                new Builder(parts).of(Hands.LEFT).build(),
                new Builder(parts).of(Hands.RIGHT).build())
            : List.of();
  }

  /**
   * Returns a builder for an exercise with both hands, hanging, with the protocol's defaults unless
   * set.
   *
   * @param protocol the protocol
   * @param target the grip, or the grips to choose from
   * @param edge depth of the edge, 1 to 200 mm
   */
  public static Builder builder(Protocol protocol, Target target, Length edge) {
    return new Builder(protocol, target, edge);
  }

  /** Returns a builder with these components. */
  public Builder toBuilder() {
    return new Builder(parts);
  }

  /** Returns the protocol. */
  public Protocol protocol() {
    return parts.protocol;
  }

  /** Returns the values for the protocol's parameters. */
  public Map<String, Argument> with() {
    return parts.with;
  }

  /** Returns the grip, or the grips to choose from. */
  public Target target() {
    return parts.target;
  }

  /** Returns the depth of the edge, 1 to 200 mm. */
  public Length edge() {
    return parts.edge;
  }

  /** Returns which hands hold. */
  public Hands hands() {
    return parts.hands;
  }

  /**
   * Returns whether each set is done with the left hand, then with the right, one in the rest of
   * the other.
   */
  public boolean alternating() {
    return parts.turns != Turns.NONE;
  }

  /**
   * Returns the exercises that it consists of: itself or, with alternating hands, that of the left
   * hand and that of the right, each by its own maximum. They are the same objects each time.
   */
  public List<Exercise> sides() {
    return ofHands.isEmpty() ? List.of(this) : ofHands;
  }

  /** Returns whether a weight is lifted from the floor. */
  public boolean lifting() {
    return parts.lifting;
  }

  /** Returns whose plan it follows, where the exercise is part of a rehabilitation. */
  public Optional<String> rehabilitation() {
    return parts.rehabilitation;
  }

  /**
   * Returns whether it is a warm-up: it doesn't advance, is not eased and needs no log line, unless
   * it is too hard for a warm-up.
   */
  public boolean warmUp() {
    return parts.warmUp;
  }

  /** Returns the coach's words for it, if there are any. */
  public Optional<String> note() {
    return parts.note;
  }

  /**
   * Returns an exercise with both hands, hanging, with the protocol's defaults.
   *
   * @param edge depth of the edge, 1 to 200 mm
   * @throws IllegalArgumentException if the edge is outside its range
   */
  public static Exercise of(Protocol protocol, Grip grip, Length edge) {
    return builder(protocol, new On(grip), edge).build();
  }

  /**
   * Returns this exercise with one parameter set.
   *
   * @throws IllegalArgumentException if the protocol has no such parameter, or one of another kind,
   *     or the value is outside its range
   */
  public Exercise with(String parameter, Argument value) {
    return toBuilder().with(parameter, value).build();
  }

  /**
   * Returns this exercise with a number of repeats, such as of sets.
   *
   * @param times 1 to 1000
   * @throws IllegalArgumentException if the protocol has no such parameter, or one of another kind,
   *     or the value is outside its range
   */
  public Exercise with(String parameter, int times) {
    return with(parameter, Argument.of(times));
  }

  /**
   * Returns this exercise with a time.
   *
   * @throws IllegalArgumentException if the protocol has no such parameter, or one of another kind,
   *     or the value is outside its range
   */
  public Exercise with(String parameter, Duration time) {
    return with(parameter, Argument.of(time));
  }

  /**
   * Returns this exercise with a level.
   *
   * @throws IllegalArgumentException if the protocol has no such parameter, or one of another kind,
   *     or the value is outside its range
   */
  public Exercise with(String parameter, Level level) {
    return with(parameter, Argument.of(level));
  }

  /** Returns this exercise as part of a rehabilitation that a named practitioner planned. */
  public Exercise rehabilitation(String whosePlan) {
    return toBuilder().rehabilitation(whosePlan).build();
  }

  /**
   * Returns this exercise as a warm-up.
   *
   * @throws IllegalArgumentException if it has several grips or is part of a rehabilitation
   */
  public Exercise asWarmUp() {
    return toBuilder().warmUp(true).build();
  }

  /**
   * Returns this exercise with alternating hands, left first.
   *
   * @throws IllegalArgumentException if it is not for both hands
   */
  public Exercise alternatingHands() {
    return toBuilder().alternating(true).build();
  }

  /** Returns this exercise with words for the athlete. */
  public Exercise note(String text) {
    return toBuilder().note(text).build();
  }

  /** Returns the scheme before any progression. */
  public Scheme scheme() {
    return scheme;
  }

  /** Returns the names of the grips. */
  List<String> gripNames() {
    return parts.target.grips().stream().map(Grip::name).toList();
  }

  /** Returns the setup of a grip of this exercise on its edge. */
  public Setup setup(Grip grip) {
    return new Setup(grip, parts.edge, parts.hands, parts.lifting);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Exercise that && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return "Exercise" + parts.toString().substring("Parts".length());
  }

  /** Collects the components. Not thread-safe. */
  public static final class Builder {
    private Protocol protocol;
    private Map<String, Argument> with = Map.of();
    private Target target;
    private Length edge;
    private Hands hands = Hands.BOTH;
    private Turns turns = Turns.NONE;
    private boolean lifting;
    private Optional<String> rehabilitation = Optional.empty();
    private boolean warmUp;
    private Optional<String> note = Optional.empty();

    private Builder(Protocol protocol, Target target, Length edge) {
      this.protocol = Objects.requireNonNull(protocol, "protocol");
      this.target = Objects.requireNonNull(target, "target");
      this.edge = Objects.requireNonNull(edge, "edge");
    }

    private Builder(Parts copied) {
      protocol = copied.protocol;
      with = copied.with;
      target = copied.target;
      edge = copied.edge;
      hands = copied.hands;
      turns = copied.turns;
      lifting = copied.lifting;
      rehabilitation = copied.rehabilitation;
      warmUp = copied.warmUp;
      note = copied.note;
    }

    /** Sets the protocol. */
    public Builder protocol(Protocol value) {
      Objects.requireNonNull(value, "value");
      protocol = value;
      return this;
    }

    /** Sets the value of one parameter of the protocol. */
    public Builder with(String parameter, Argument value) {
      Objects.requireNonNull(parameter, "parameter");
      Objects.requireNonNull(value, "value");
      Map<String, Argument> more = new LinkedHashMap<>(with);
      more.put(parameter, value);
      return with(more);
    }

    /** Sets one parameter to a number of repeats, such as of sets, 1 to 1000. */
    public Builder with(String parameter, int times) {
      Objects.requireNonNull(parameter, "parameter");
      return with(parameter, Argument.of(times));
    }

    /** Sets one parameter to a time. */
    public Builder with(String parameter, Duration time) {
      Objects.requireNonNull(parameter, "parameter");
      Objects.requireNonNull(time, "time");
      return with(parameter, Argument.of(time));
    }

    /** Sets one parameter to a level. */
    public Builder with(String parameter, Level level) {
      Objects.requireNonNull(parameter, "parameter");
      Objects.requireNonNull(level, "level");
      return with(parameter, Argument.of(level));
    }

    /** Sets all values for the protocol's parameters, in place of those already there. */
    public Builder with(Map<String, Argument> value) {
      Objects.requireNonNull(value, "value");
      with = Collections.unmodifiableMap(new LinkedHashMap<>(value));
      return this;
    }

    /** Sets the grip, or the grips to choose from. */
    public Builder target(Target value) {
      Objects.requireNonNull(value, "value");
      target = value;
      return this;
    }

    /** Sets the depth of the edge, 1 to 200 mm. */
    public Builder edge(Length value) {
      Objects.requireNonNull(value, "value");
      edge = value;
      return this;
    }

    /** Sets which hands hold. */
    public Builder hands(Hands value) {
      Objects.requireNonNull(value, "value");
      hands = value;
      return this;
    }

    /**
     * Sets whether each set is done with the left hand, then with the right; the hands are both
     * then.
     */
    public Builder alternating(boolean value) {
      turns = value ? Turns.OF_BOTH : Turns.NONE;
      return this;
    }

    private Builder of(Hands one) {
      hands = one;
      turns = Turns.OF_ONE;
      return this;
    }

    /** Sets whether a weight is lifted from the floor. */
    public Builder lifting(boolean value) {
      lifting = value;
      return this;
    }

    /** Makes the exercise part of a rehabilitation; the value is whose plan it follows. */
    public Builder rehabilitation(String value) {
      Objects.requireNonNull(value, "value");
      return rehabilitation(Optional.of(value));
    }

    /** Sets whose plan it follows; empty if the exercise is not part of a rehabilitation. */
    public Builder rehabilitation(Optional<String> value) {
      Objects.requireNonNull(value, "value");
      rehabilitation = value;
      return this;
    }

    /** Sets whether it is a warm-up. */
    public Builder warmUp(boolean value) {
      warmUp = value;
      return this;
    }

    /** Sets words for the athlete. */
    public Builder note(String value) {
      Objects.requireNonNull(value, "value");
      return note(Optional.of(value));
    }

    /** Sets words for the athlete, or none. */
    public Builder note(Optional<String> value) {
      Objects.requireNonNull(value, "value");
      note = value;
      return this;
    }

    /**
     * Returns the exercise.
     *
     * @throws IllegalArgumentException if the protocol has no such parameter, or one of another
     *     kind, a value is outside its range, the edge is outside 1 to 200 mm, the name of the
     *     rehabilitation plan has no letter and no digit, one hand alternates, a warm-up has
     *     several grips or is part of a rehabilitation, or there are more than 10,000 holds and
     *     rests
     */
    public Exercise build() {
      return new Exercise(
          new Parts(
              protocol, with, target, edge, hands, turns, lifting, rehabilitation, warmUp, note));
    }
  }
}
