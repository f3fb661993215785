package gripwright.grip;

import gripwright.hand.Finger;
import gripwright.hand.Joint;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A way to hold an edge: the fingers, how far each joint is bent, the family, and what to be
 * careful of. A joint without a band is free. Immutable.
 *
 * @param name kebab-case, unique in a project
 * @param title for people, if it differs from the name
 * @param family how it is grouped for people; rules go by {@link #structure}
 * @param fingers the fingers that hold
 * @param bands flexion by finger and joint, in the order written
 * @param needs what an athlete should bring by this declaration; see {@link #allNeeds}
 * @param cautions sentences for the athlete
 */
public record Grip(
    String name,
    Optional<String> title,
    GripFamily family,
    FingerSet fingers,
    Map<At, Band> bands,
    Prerequisites needs,
    List<String> cautions) {

  /**
   * A joint of a finger.
   *
   * @param finger whose
   * @param joint which
   */
  public record At(Finger finger, Joint joint) {
    /** Refuses null. */
    public At {
      Objects.requireNonNull(finger, "finger");
      Objects.requireNonNull(joint, "joint");
    }
  }

  /**
   * Copies and checks the parts.
   *
   * @throws IllegalArgumentException if the family does not allow so many fingers, a band is for a
   *     finger that does not hold, its middle is outside {@link Joint#middleOfRange}, or its
   *     greater end outside {@link Joint#greaterEndOfBand}
   */
  public Grip {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(family, "family");
    Objects.requireNonNull(fingers, "fingers");
    Objects.requireNonNull(bands, "bands");
    Objects.requireNonNull(needs, "needs");
    Objects.requireNonNull(cautions, "cautions");
    bands = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(bands));
    cautions = List.copyOf(cautions);
    if (!family.allows(fingers.count())) {
      throw new IllegalArgumentException(
          "grip " + name + ": family " + family + " does not have " + fingers.count() + " fingers");
    }
    for (At at : bands.keySet()) {
      if (!fingers.has(at.finger())) {
        throw new IllegalArgumentException("grip " + name + ": " + at.finger() + " does not hold");
      }
    }
    bands.forEach(
        (at, band) -> {
          at.joint().middleOfRange().check(band.centre().degrees());
          at.joint().greaterEndOfBand().check(band.high().degrees());
        });
  }

  /** Returns the hash of the name, which grips of a project do not share. */
  @Override
  public int hashCode() {
    return name.hashCode();
  }

  /** Returns the band of a joint; empty if the joint is free. */
  public Optional<Band> band(Finger finger, Joint joint) {
    return Optional.ofNullable(bands.get(new At(finger, joint)));
  }

  /**
   * Returns the grip of the catalogue in whose place this one stands: it has the name, and is not
   * it. Empty for the catalogue's own grips and for those with names of their own.
   */
  public Optional<Grip> replaced() {
    for (Grip standard : StandardGrips.all()) {
      if (standard.name.equals(name)) {
        return standard.equals(this) ? Optional.empty() : Optional.of(standard);
      }
    }
    return Optional.empty();
  }

  /**
   * Returns what the grip is by its fingers and bands, whatever its name and family. One that
   * replaces a grip of the catalogue counts at least as strictly as that one.
   */
  public GripStructure structure() {
    GripStructure own = ownStructure();
    return replaced().map(Grip::ownStructure).map(own::stricter).orElse(own);
  }

  /** Returns what its own fingers and bands make of it, whatever it replaces. */
  public GripStructure ownStructure() {
    return GripStructure.of(fingers, bands);
  }

  /**
   * Returns whether it is a full crimp by its bands, or replaces one of the catalogue. Two fingers
   * make it one: the end joint's band lies wholly below 0 deg and the middle joint's at 75 deg or
   * more, or the middle joint's lies wholly above 100 deg. Our own numbers.
   */
  public boolean fullCrimp() {
    return GripStructure.isFullCrimp(fingers, bands)
        || replaced().filter(r -> GripStructure.isFullCrimp(r.fingers, r.bands)).isPresent();
  }

  /**
   * Returns what an athlete has to bring: what the grip asks for, and no less than what the
   * catalogue's grip asks for that it replaces.
   */
  public Prerequisites allNeeds() {
    return replaced().map(standard -> needs.and(standard.needs)).orElse(needs);
  }

  /** Starts a grip. */
  public static Builder named(String name) {
    Objects.requireNonNull(name, "name");
    return new Builder(name);
  }

  /** Collects the parts of a grip. Not thread-safe. */
  public static final class Builder {
    private final String name;
    private Optional<String> title = Optional.empty();
    private Optional<GripFamily> family = Optional.empty();
    private Optional<FingerSet> fingers = Optional.empty();
    private final Map<At, Band> bands = new LinkedHashMap<>();
    private Prerequisites needs = Prerequisites.NONE;
    private final List<String> cautions = new ArrayList<>();

    private Builder(String name) {
      this.name = name;
    }

    /** Sets the title for people. */
    public Builder title(String text) {
      Objects.requireNonNull(text, "text");
      title = Optional.of(text);
      return this;
    }

    /** Sets the family. */
    public Builder family(GripFamily value) {
      Objects.requireNonNull(value, "value");
      family = Optional.of(value);
      return this;
    }

    /** Sets the fingers that hold. */
    public Builder fingers(FingerSet value) {
      Objects.requireNonNull(value, "value");
      fingers = Optional.of(value);
      return this;
    }

    /** Sets the fingers that hold. */
    public Builder fingers(Finger first, Finger... others) {
      Objects.requireNonNull(first, "first");
      Objects.requireNonNull(others, "others");
      return fingers(FingerSet.of(first, others));
    }

    /** Sets the flexion of a joint. */
    public Builder band(Finger finger, Joint joint, Band band) {
      Objects.requireNonNull(finger, "finger");
      Objects.requireNonNull(joint, "joint");
      Objects.requireNonNull(band, "band");
      bands.put(new At(finger, joint), band);
      return this;
    }

    /** Sets what an athlete should bring. */
    public Builder needs(Prerequisites value) {
      Objects.requireNonNull(value, "value");
      needs = value;
      return this;
    }

    /** Adds a sentence for the athlete. */
    public Builder caution(String sentence) {
      Objects.requireNonNull(sentence, "sentence");
      cautions.add(sentence);
      return this;
    }

    /**
     * Returns the grip.
     *
     * @throws IllegalStateException if family or fingers are missing
     */
    public Grip build() {
      return new Grip(
          name,
          title,
          family.orElseThrow(() -> new IllegalStateException("grip " + name + " has no family")),
          fingers.orElseThrow(() -> new IllegalStateException("grip " + name + " has no fingers")),
          bands,
          needs,
          cautions);
    }
  }
}
