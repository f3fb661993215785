package gripwright.compare;

import gripwright.finding.WrittenReason;
import gripwright.grip.Setup;
import gripwright.quantity.Range;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Adults who are described by distributions, for comparing protocols. The prerequisites of grips by
 * training history don't apply to a cohort. Immutable.
 */
public final class Cohort {

  /** A quantity that differs between the persons of a cohort. */
  public enum Trait {
    /** Hand length and breadth, as one percentile of the person's sex. */
    HAND,
    /** Body mass. */
    BODY_MASS,
    /** The greatest load held for 7 s in the setup of the cohort. */
    MAXIMUM,
    /** Critical force as a share of the maximum. */
    CRITICAL_FORCE;

    /** Returns the word written in a plan. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Returns the trait for a word. */
    public static Optional<Trait> parse(String word) {
      for (Trait value : values()) {
        if (value.word().equals(word)) {
          return Optional.of(value);
        }
      }
      return Optional.empty();
    }

    /** Returns the word. */
    @Override
    public String toString() {
      return word();
    }
  }

  /**
   * The share of women.
   *
   * @param female 0 to 1
   * @param source where the share comes from; empty if nobody says
   */
  public record Sexes(double female, Optional<String> source) {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the share is outside 0 to 1
     */
    public Sexes {
      Range.SHARE.check(female);
      Objects.requireNonNull(source, "source");
      source.ifPresent(text -> WrittenReason.check(text, "a source"));
    }
  }

  /**
   * The maximum and where it was measured.
   *
   * @param load kg
   * @param setup grip, edge and hands of the test
   */
  public record Maximum(Spread load, Setup setup) {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the median is outside the range of a load
     */
    public Maximum {
      Objects.requireNonNull(setup, "setup");
      Range.LOAD.check(load.median());
    }
  }

  /**
   * How two traits go together.
   *
   * @param one a trait
   * @param other another trait
   * @param value correlation of the two on the scale of their normal deviates, -0.99 to 0.99
   * @param source where it comes from; empty if nobody says
   */
  public record Correlation(Trait one, Trait other, double value, Optional<String> source) {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the traits are the same or the value is outside its range
     */
    public Correlation {
      Objects.requireNonNull(one, "one");
      Objects.requireNonNull(other, "other");
      Objects.requireNonNull(source, "source");
      source.ifPresent(text -> WrittenReason.check(text, "a source"));
      Range.CORRELATION.check(value);
      if (one == other) {
        throw new IllegalArgumentException("a trait correlates with another one: " + one);
      }
    }
  }

  /** The components, checked. */
  private record Parts(
      String name,
      Optional<String> title,
      int size,
      Optional<Sexes> sexes,
      Optional<String> handBySex,
      Optional<Spread> bodyMass,
      Maximum maximum,
      Optional<Spread> criticalForce,
      List<Correlation> correlations,
      List<String> sources,
      List<String> notes) {
    Parts {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(title, "title");
      Objects.requireNonNull(sexes, "sexes");
      Objects.requireNonNull(handBySex, "handBySex");
      Objects.requireNonNull(bodyMass, "bodyMass");
      Objects.requireNonNull(maximum, "maximum");
      Objects.requireNonNull(criticalForce, "criticalForce");
      correlations = List.copyOf(correlations);
      sources = List.copyOf(sources);
      notes = List.copyOf(notes);
      Range.COHORT.check(size);
      bodyMass.ifPresent(mass -> Range.BODY_MASS.check(mass.median()));
      criticalForce.ifPresent(share -> Range.CRITICAL_FORCE.check(share.median()));
      Set<Set<Trait>> pairs = new HashSet<>();
      for (Correlation each : correlations) {
        if (!pairs.add(Set.of(each.one(), each.other()))) {
          throw new IllegalArgumentException(
              "the correlation of " + each.one() + " and " + each.other() + " is given twice");
        }
      }
      if (!possible(correlations)) {
        throw new IllegalArgumentException("no persons have these correlations: " + correlations);
      }
    }
  }

  private final Parts parts;

  private Cohort(Parts parts) {
    this.parts = parts;
  }

  /**
   * Returns a builder.
   *
   * @param name kebab-case, unique in a project among athletes and cohorts
   * @param size how many persons are drawn, 2 to 10,000,000
   * @param maximum the maximum and where it was measured
   */
  public static Builder builder(String name, int size, Maximum maximum) {
    return new Builder(name, size, maximum);
  }

  /** Returns a builder with these components. */
  public Builder toBuilder() {
    return new Builder(parts);
  }

  /**
   * Returns whether persons with these correlations can exist: whether their matrix, with 0 for
   * pairs that are not given, is positive definite.
   */
  public static boolean possible(List<Correlation> correlations) {
    return CorrelatedDeviates.factor(correlations).isPresent();
  }

  /** Returns the name: kebab-case, unique in a project among athletes and cohorts. */
  public String name() {
    return parts.name;
  }

  /** Returns the title for people. */
  public Optional<String> title() {
    return parts.title;
  }

  /** Returns how many persons are drawn, 2 to 10,000,000. */
  public int size() {
    return parts.size;
  }

  /** Returns the share of women; empty stands for one half. */
  public Optional<Sexes> sexes() {
    return parts.sexes;
  }

  /**
   * Returns where hand sizes come from if they are drawn by sex; empty if everybody has the median
   * hand of their sex.
   */
  public Optional<String> handBySex() {
    return parts.handBySex;
  }

  /** Returns body mass, in kg; empty if it isn't known. */
  public Optional<Spread> bodyMass() {
    return parts.bodyMass;
  }

  /** Returns the maximum and where it was measured. */
  public Maximum maximum() {
    return parts.maximum;
  }

  /** Returns critical force as a share of the maximum; empty if it isn't known. */
  public Optional<Spread> criticalForce() {
    return parts.criticalForce;
  }

  /** Returns the correlations given; all others are 0. */
  public List<Correlation> correlations() {
    return parts.correlations;
  }

  /** Returns the sources of the cohort as a whole. */
  public List<String> sources() {
    return parts.sources;
  }

  /** Returns the notes. */
  public List<String> notes() {
    return parts.notes;
  }

  /** Returns the traits that have a distribution, with it; the hand is not among them. */
  public Map<Trait, Spread> spreads() {
    Map<Trait, Spread> spreads = new EnumMap<>(Trait.class);
    bodyMass().ifPresent(spread -> spreads.put(Trait.BODY_MASS, spread));
    spreads.put(Trait.MAXIMUM, maximum().load());
    criticalForce().ifPresent(spread -> spreads.put(Trait.CRITICAL_FORCE, spread));
    return spreads;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Cohort that && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return "Cohort" + parts.toString().substring("Parts".length());
  }

  /** Collects the components. Not thread-safe. */
  public static final class Builder {
    private final String name;
    private final int size;
    private final Maximum maximum;
    private Optional<String> title = Optional.empty();
    private Optional<Sexes> sexes = Optional.empty();
    private Optional<String> handBySex = Optional.empty();
    private Optional<Spread> bodyMass = Optional.empty();
    private Optional<Spread> criticalForce = Optional.empty();
    private final List<Correlation> correlations = new ArrayList<>();
    private final List<String> sources = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    private Builder(String name, int size, Maximum maximum) {
      this.name = Objects.requireNonNull(name, "name");
      this.size = size;
      this.maximum = Objects.requireNonNull(maximum, "maximum");
    }

    private Builder(Parts copied) {
      this(copied.name, copied.size, copied.maximum);
      title = copied.title;
      sexes = copied.sexes;
      handBySex = copied.handBySex;
      bodyMass = copied.bodyMass;
      criticalForce = copied.criticalForce;
      correlations.addAll(copied.correlations);
      sources.addAll(copied.sources);
      notes.addAll(copied.notes);
    }

    /** Sets the title for people. */
    public Builder title(Optional<String> value) {
      title = Objects.requireNonNull(value, "value");
      return this;
    }

    /** Sets the share of women. */
    public Builder sexes(Sexes value) {
      sexes = Optional.of(value);
      return this;
    }

    /** Draws hand sizes by sex; the value is their source. */
    public Builder handBySex(String source) {
      handBySex = Optional.of(source);
      return this;
    }

    /** Sets body mass, in kg. */
    public Builder bodyMass(Spread value) {
      bodyMass = Optional.of(value);
      return this;
    }

    /** Sets critical force as a share of the maximum. */
    public Builder criticalForce(Spread value) {
      criticalForce = Optional.of(value);
      return this;
    }

    /** Adds a correlation of two traits. */
    public Builder correlation(Correlation value) {
      correlations.add(Objects.requireNonNull(value, "value"));
      return this;
    }

    /** Adds a source of the cohort as a whole. */
    public Builder source(String value) {
      sources.add(WrittenReason.check(value, "a source"));
      return this;
    }

    /** Adds a note. */
    public Builder note(String value) {
      notes.add(Objects.requireNonNull(value, "value"));
      return this;
    }

    /**
     * Returns the cohort.
     *
     * @throws IllegalArgumentException if the size is outside its range, a median is, a correlation
     *     is given twice, or no persons can have the correlations given
     */
    public Cohort build() {
      return new Cohort(
          new Parts(
              name,
              title,
              size,
              sexes,
              handBySex,
              bodyMass,
              maximum,
              criticalForce,
              correlations,
              sources,
              notes));
    }
  }
}
