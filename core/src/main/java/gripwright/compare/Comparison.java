package gripwright.compare;

import gripwright.grip.Setup;
import gripwright.protocol.Protocol;
import gripwright.quantity.Range;
import gripwright.quantity.Unit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A comparison of protocols for one athlete. Immutable. */
public final class Comparison {

  /**
   * The quantity to make equal.
   *
   * @param quantity the quantity that all protocols share
   * @param by the parameter that is solved for
   */
  public record Match(Measure quantity, String by) {
    /** Refuses null. */
    public Match {
      Objects.requireNonNull(quantity, "quantity");
      Objects.requireNonNull(by, "by");
    }
  }

  /** The components, checked. */
  private record Parts(
      String name,
      Optional<String> title,
      String athlete,
      Setup setup,
      List<Protocol> protocols,
      Optional<Match> match,
      int perWeek,
      int weeks,
      List<Measure> measures) {
    Parts {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(title, "title");
      Objects.requireNonNull(athlete, "athlete");
      Objects.requireNonNull(setup, "setup");
      Objects.requireNonNull(protocols, "protocols");
      Objects.requireNonNull(match, "match");
      Objects.requireNonNull(measures, "measures");
      protocols = List.copyOf(protocols);
      measures = List.copyOf(measures);
      Range.PER_WEEK.check(perWeek);
      Range.COMPARISON.checkIn(Unit.WEEK, weeks);
      if (protocols.size() < 2) {
        throw new IllegalArgumentException("comparison " + name + " needs two protocols");
      }
    }
  }

  private final Parts parts;

  private Comparison(Parts parts) {
    this.parts = parts;
  }

  /**
   * Returns a builder for a comparison of protocols as written.
   *
   * @param name kebab-case, unique in a project
   * @param athlete name of the athlete
   * @param setup grip, edge and hands
   * @param protocols two or more
   * @param perWeek sessions a week, 1 to 7
   * @param weeks 1 to 520
   */
  public static Builder builder(
      String name, String athlete, Setup setup, List<Protocol> protocols, int perWeek, int weeks) {
    return new Builder(name, athlete, setup, protocols, perWeek, weeks);
  }

  /** Returns a builder with these components. */
  public Builder toBuilder() {
    return new Builder(parts);
  }

  /** Returns the name: kebab-case, unique in a project. */
  public String name() {
    return parts.name;
  }

  /** Returns the title for people. */
  public Optional<String> title() {
    return parts.title;
  }

  /** Returns the name of the athlete. */
  public String athlete() {
    return parts.athlete;
  }

  /** Returns the grip, edge and hands. */
  public Setup setup() {
    return parts.setup;
  }

  /** Returns the protocols, two or more. */
  public List<Protocol> protocols() {
    return parts.protocols;
  }

  /**
   * Returns the quantity to make equal, and the parameter solved for; empty if protocols are
   * compared as written.
   */
  public Optional<Match> match() {
    return parts.match;
  }

  /** Returns the sessions a week, 1 to 7. */
  public int perWeek() {
    return parts.perWeek;
  }

  /** Returns the number of weeks, 1 to 520. */
  public int weeks() {
    return parts.weeks;
  }

  /** Returns the measures to compare, in order. */
  public List<Measure> measures() {
    return parts.measures;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Comparison that && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return "Comparison" + parts.toString().substring("Parts".length());
  }

  /** Collects the components. Not thread-safe. */
  public static final class Builder {
    private String name;
    private Optional<String> title = Optional.empty();
    private String athlete;
    private Setup setup;
    private List<Protocol> protocols;
    private Optional<Match> match = Optional.empty();
    private int perWeek;
    private int weeks;
    private List<Measure> measures = List.of();

    private Builder(
        String name,
        String athlete,
        Setup setup,
        List<Protocol> protocols,
        int perWeek,
        int weeks) {
      this.name = Objects.requireNonNull(name, "name");
      this.athlete = Objects.requireNonNull(athlete, "athlete");
      this.setup = Objects.requireNonNull(setup, "setup");
      this.protocols = List.copyOf(Objects.requireNonNull(protocols, "protocols"));
      this.perWeek = perWeek;
      this.weeks = weeks;
    }

    private Builder(Parts copied) {
      name = copied.name;
      title = copied.title;
      athlete = copied.athlete;
      setup = copied.setup;
      protocols = copied.protocols;
      match = copied.match;
      perWeek = copied.perWeek;
      weeks = copied.weeks;
      measures = copied.measures;
    }

    /** Sets the name: kebab-case, unique in a project. */
    public Builder name(String value) {
      Objects.requireNonNull(value, "value");
      name = value;
      return this;
    }

    /** Sets the title for people. */
    public Builder title(String value) {
      Objects.requireNonNull(value, "value");
      return title(Optional.of(value));
    }

    /** Sets the title for people. */
    public Builder title(Optional<String> value) {
      Objects.requireNonNull(value, "value");
      title = value;
      return this;
    }

    /** Sets the name of the athlete. */
    public Builder athlete(String value) {
      Objects.requireNonNull(value, "value");
      athlete = value;
      return this;
    }

    /** Sets the grip, edge and hands. */
    public Builder setup(Setup value) {
      Objects.requireNonNull(value, "value");
      setup = value;
      return this;
    }

    /** Sets the protocols, two or more. */
    public Builder protocols(List<Protocol> value) {
      Objects.requireNonNull(value, "value");
      protocols = List.copyOf(value);
      return this;
    }

    /** Sets the quantity to make equal, and the parameter solved for. */
    public Builder match(Match value) {
      Objects.requireNonNull(value, "value");
      return match(Optional.of(value));
    }

    /**
     * Sets the quantity to make equal, and the parameter solved for; empty if protocols are
     * compared as written.
     */
    public Builder match(Optional<Match> value) {
      Objects.requireNonNull(value, "value");
      match = value;
      return this;
    }

    /** Sets the sessions a week, 1 to 7. */
    public Builder perWeek(int value) {
      perWeek = value;
      return this;
    }

    /** Sets the number of weeks, 1 to 520. */
    public Builder weeks(int value) {
      weeks = value;
      return this;
    }

    /** Sets the measures to compare, in order. */
    public Builder measures(List<Measure> value) {
      Objects.requireNonNull(value, "value");
      measures = List.copyOf(value);
      return this;
    }

    /**
     * Returns the comparison.
     *
     * @throws IllegalArgumentException if there are fewer than two protocols, or sessions a week or
     *     weeks are outside their {@link Range}
     */
    public Comparison build() {
      return new Comparison(
          new Parts(name, title, athlete, setup, protocols, match, perWeek, weeks, measures));
    }
  }
}
