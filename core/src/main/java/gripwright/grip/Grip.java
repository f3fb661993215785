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
 * @param family how it is grouped
 * @param fingers the fingers that hold
 * @param bands flexion by finger and joint, in the order written
 * @param needs what an athlete should bring
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
   *     finger that does not hold, or its middle is outside {@link Joint#middleOfRange}
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
    bands.forEach((at, band) -> at.joint().middleOfRange().check(band.centre().degrees()));
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
