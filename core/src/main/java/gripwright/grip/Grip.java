package gripwright.grip;

import gripwright.hand.Finger;
import gripwright.hand.Joint;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A way to hold an edge: the fingers, how far each joint is bent, the family, and what to be
 * careful of. A joint without a band is free. Immutable.
 */
public final class Grip {

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

  /** The components, checked. */
  private record Parts(
      String name,
      Optional<String> title,
      GripFamily family,
      FingerSet fingers,
      Map<At, Band> bands,
      Prerequisites needs,
      List<String> cautions,
      List<String> notes) {
    Parts {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(title, "title");
      Objects.requireNonNull(family, "family");
      Objects.requireNonNull(fingers, "fingers");
      Objects.requireNonNull(bands, "bands");
      Objects.requireNonNull(needs, "needs");
      Objects.requireNonNull(cautions, "cautions");
      bands = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(bands));
      cautions = List.copyOf(cautions);
      notes = List.copyOf(notes);
      if (!family.allows(fingers.count())) {
        throw new IllegalArgumentException(
            "grip "
                + name
                + ": family "
                + family
                + " does not have "
                + fingers.count()
                + " fingers");
      }
      for (At at : bands.keySet()) {
        if (!fingers.has(at.finger())) {
          throw new IllegalArgumentException(
              "grip " + name + ": " + at.finger() + " does not hold");
        }
      }
      bands.forEach(
          (at, band) -> {
            at.joint().middleOfRange().check(band.centre().degrees());
            at.joint().greaterEndOfBand().check(band.high().degrees());
          });
    }
  }

  private final Parts parts;

  private Grip(Parts parts) {
    this.parts = parts;
  }

  /** Returns the name: kebab-case, unique in a project. */
  public String name() {
    return parts.name;
  }

  /** Returns the title for people, if it differs from the name. */
  public Optional<String> title() {
    return parts.title;
  }

  /** Returns how it is grouped for people; rules go by {@link #structure}. */
  public GripFamily family() {
    return parts.family;
  }

  /** Returns the fingers that hold. */
  public FingerSet fingers() {
    return parts.fingers;
  }

  /** Returns the flexion by finger and joint, in the order written. */
  public Map<At, Band> bands() {
    return parts.bands;
  }

  /** Returns what an athlete should bring by this declaration; see {@link #allNeeds}. */
  public Prerequisites needs() {
    return parts.needs;
  }

  /** Returns the sentences for the athlete. */
  public List<String> cautions() {
    return parts.cautions;
  }

  /** Returns what the coach wrote about it for people, in order. */
  public List<String> notes() {
    return parts.notes;
  }

  /** Returns the hash of the name, which grips of a project do not share. */
  @Override
  public int hashCode() {
    return parts.name.hashCode();
  }

  /** Returns the band of a joint; empty if the joint is free. */
  public Optional<Band> band(Finger finger, Joint joint) {
    return Optional.ofNullable(parts.bands.get(new At(finger, joint)));
  }

  /**
   * Returns the grip of the catalogue in whose place this one stands: it has the name, and is not
   * it. Empty for the catalogue's own grips and for those with names of their own.
   */
  public Optional<Grip> replaced() {
    for (Grip standard : StandardGrips.all()) {
      if (standard.parts.name.equals(parts.name)) {
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
    return GripStructure.of(parts.fingers, parts.bands);
  }

  /**
   * Returns whether it is a full crimp by its bands, or replaces one of the catalogue. Two fingers
   * make it one: the end joint's band lies wholly below 0 deg and the middle joint's at 75 deg or
   * more, or the middle joint's lies wholly above 100 deg. Our own numbers.
   */
  public boolean fullCrimp() {
    return GripStructure.isFullCrimp(parts.fingers, parts.bands)
        || replaced()
            .filter(r -> GripStructure.isFullCrimp(r.parts.fingers, r.parts.bands))
            .isPresent();
  }

  /**
   * Returns what an athlete has to bring: what the grip asks for, and no less than what the
   * catalogue's grip asks for that it replaces.
   */
  public Prerequisites allNeeds() {
    return replaced().map(standard -> parts.needs.and(standard.parts.needs)).orElse(parts.needs);
  }

  /** Returns a builder with all parts of this grip; parts added later follow them. */
  public Builder toBuilder() {
    return new Builder(parts);
  }

  /**
   * Returns a builder for a grip.
   *
   * @param name kebab-case, unique in a project
   */
  public static Builder named(String name) {
    Objects.requireNonNull(name, "name");
    return new Builder(name);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Grip that && parts.equals(that.parts);
  }

  @Override
  public String toString() {
    return "Grip" + parts.toString().substring("Parts".length());
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
    private final List<String> notes = new ArrayList<>();

    private Builder(String name) {
      this.name = name;
    }

    private Builder(Parts copied) {
      this(copied.name);
      title = copied.title;
      family = Optional.of(copied.family);
      fingers = Optional.of(copied.fingers);
      bands.putAll(copied.bands);
      needs = copied.needs;
      cautions.addAll(copied.cautions);
      notes.addAll(copied.notes);
    }

    /** Sets the title for people. */
    public Builder title(String text) {
      Objects.requireNonNull(text, "text");
      return title(Optional.of(text));
    }

    /** Sets the title for people, or none. */
    public Builder title(Optional<String> text) {
      Objects.requireNonNull(text, "text");
      title = text;
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

    /** Sets all sentences for the athlete, in place of those already there. */
    public Builder cautions(List<String> all) {
      Objects.requireNonNull(all, "all");
      cautions.clear();
      cautions.addAll(all);
      return this;
    }

    /** Adds a sentence for the athlete. */
    public Builder caution(String sentence) {
      Objects.requireNonNull(sentence, "sentence");
      cautions.add(sentence);
      return this;
    }

    /** Adds a note for people; it changes no load and no rule. */
    public Builder note(String text) {
      notes.add(Objects.requireNonNull(text, "text"));
      return this;
    }

    /**
     * Returns the grip.
     *
     * @throws IllegalStateException if family or fingers are missing
     * @throws IllegalArgumentException if the family does not allow so many fingers, a band is for
     *     a finger that does not hold, its middle is outside {@link Joint#middleOfRange}, or its
     *     greater end outside {@link Joint#greaterEndOfBand}
     */
    public Grip build() {
      return new Grip(
          new Parts(
              name,
              title,
              family.orElseThrow(
                  () -> new IllegalStateException("grip " + name + " has no family")),
              fingers.orElseThrow(
                  () -> new IllegalStateException("grip " + name + " has no fingers")),
              bands,
              needs,
              cautions,
              notes));
    }
  }
}
