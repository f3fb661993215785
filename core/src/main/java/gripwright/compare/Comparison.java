package gripwright.compare;

import gripwright.protocol.Report;
import gripwright.quantity.Range;
import gripwright.quantity.Unit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A question about protocols: who trains, what is compared, by which measures. Immutable. */
public final class Comparison {

  /** Draws of the model's parameters unless given. */
  public static final int DEFAULT_DRAWS = 10_000;

  /** The stream of random numbers unless given. */
  public static final long DEFAULT_STREAM = 2_027;

  /** Who trains. */
  public sealed interface Subjects {
    /** Returns the names: of the cohort, or of each athlete. */
    List<String> names();

    /** Returns what the visitor returns for this kind. */
    <R> R accept(Visitor<R> visitor);

    /**
     * One method for each kind.
     *
     * @param <R> the type of result
     */
    interface Visitor<R> {
      /** Visits a cohort. */
      R cohort(OfCohort subjects);

      /** Visits athletes. */
      R athletes(OfAthletes subjects);
    }
  }

  /**
   * Persons drawn from distributions.
   *
   * @param cohort the distributions
   */
  public record OfCohort(Cohort cohort) implements Subjects {
    /** Refuses null. */
    public OfCohort {
      Objects.requireNonNull(cohort, "cohort");
    }

    @Override
    public List<String> names() {
      return List.of(cohort.name());
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.cohort(this);
    }
  }

  /**
   * Athletes of the project.
   *
   * @param names one or more
   */
  public record OfAthletes(List<String> names) implements Subjects {
    /**
     * Copies the names.
     *
     * @throws IllegalArgumentException if there is none, or one appears twice
     */
    public OfAthletes {
      names = List.copyOf(names);
      if (names.isEmpty() || new HashSet<>(names).size() < names.size()) {
        throw new IllegalArgumentException("one or more athletes, each once: " + names);
      }
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.athletes(this);
    }
  }

  /**
   * A quantity to make equal, by changing one arm.
   *
   * @param quantity the quantity, one that {@linkplain Measure#matches() can be made equal}
   * @param arm name of the arm that is changed
   * @param to name of the arm whose quantity is to be reached
   * @param by the parameter of the changed arm's protocol that is solved for
   * @param within greatest difference that is left, as a share of the quantity to be reached; empty
   *     if any is accepted
   */
  public record Match(Measure quantity, String arm, String to, String by, OptionalDouble within) {
    /**
     * Checks the quantity.
     *
     * @throws IllegalArgumentException if it can't be made equal, an arm would be matched to
     *     itself, or the tolerance is not above 0 and at most 1
     */
    public Match {
      Objects.requireNonNull(arm, "arm");
      Objects.requireNonNull(to, "to");
      Objects.requireNonNull(by, "by");
      Range.WITHIN.check(within);
      if (!quantity.matches()) {
        throw new IllegalArgumentException("protocols can't be made equal by " + quantity);
      }
      if (arm.equals(to)) {
        throw new IllegalArgumentException("arm " + arm + " matched to itself");
      }
    }
  }

  /** The components, checked. */
  private record Parts(
      String name,
      Optional<String> title,
      Subjects subjects,
      List<Arm> arms,
      List<Match> matches,
      boolean matchEach,
      int perWeek,
      int weeks,
      int draws,
      long stream,
      List<Measure> measures,
      List<Objective> objectives,
      List<Report> reports,
      List<String> notes) {
    Parts {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(title, "title");
      Objects.requireNonNull(subjects, "subjects");
      arms = List.copyOf(arms);
      matches = List.copyOf(matches);
      measures = List.copyOf(measures);
      objectives = List.copyOf(objectives);
      reports = List.copyOf(reports);
      notes = List.copyOf(notes);
      Range.PER_WEEK.check(perWeek);
      Range.COMPARISON.checkIn(Unit.WEEK, weeks);
      Range.DRAWS.check(draws);
      Range.STREAM.check(stream);
      Set<String> names = new HashSet<>();
      for (Arm arm : arms) {
        refuseIf(!names.add(arm.name()), name, "arm " + arm.name() + " twice");
      }
      refuseIf(arms.size() < 2, name, "fewer than two arms");
      refuseIf(measures.isEmpty(), name, "no measure");
      refuseIf(new HashSet<>(measures).size() < measures.size(), name, "a measure twice");
      for (Match match : matches) {
        refuseIf(
            !names.contains(match.arm()) || !names.contains(match.to()),
            name,
            "a match of an unknown arm: " + match);
      }
      Set<Measure> preferred = new HashSet<>();
      for (Objective objective : objectives) {
        refuseIf(
            !measures.contains(objective.measure()) || !preferred.add(objective.measure()),
            name,
            "an objective that is not measured, or twice: " + objective);
      }
      refuseIf(matchEach && matches.isEmpty(), name, "nothing to match for each athlete");
    }

    private static void refuseIf(boolean wrong, String name, String why) {
      if (wrong) {
        throw new IllegalArgumentException("comparison " + name + " has " + why);
      }
    }
  }

  private final Parts parts;

  private Comparison(Parts parts) {
    this.parts = parts;
  }

  /**
   * Returns a builder.
   *
   * @param name kebab-case, unique in a project
   */
  public static Builder builder(String name, Subjects subjects) {
    return new Builder(name, subjects);
  }

  /** Returns a builder for a comparison on one or more athletes. */
  public static Builder builder(String name, String athlete) {
    return new Builder(name, new OfAthletes(List.of(athlete)));
  }

  /** Returns a builder for a comparison on a cohort. */
  public static Builder builder(String name, Cohort cohort) {
    return new Builder(name, new OfCohort(cohort));
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

  /** Returns who trains. */
  public Subjects subjects() {
    return parts.subjects;
  }

  /** Returns what is compared, two arms or more. */
  public List<Arm> arms() {
    return parts.arms;
  }

  /** Returns the quantities to make equal; empty if arms are compared as written. */
  public List<Match> matches() {
    return parts.matches;
  }

  /**
   * Returns whether matches are solved anew for each athlete. Otherwise they are solved once, on
   * the reference athlete, and everybody gets the same prescription.
   */
  public boolean matchEach() {
    return parts.matchEach;
  }

  /** Returns the sessions a week of arms with one exercise, 1 to 7. */
  public int perWeek() {
    return parts.perWeek;
  }

  /** Returns the number of weeks of arms with one exercise, 1 to 520. */
  public int weeks() {
    return parts.weeks;
  }

  /** Returns how many draws of the model's parameters give the intervals. */
  public int draws() {
    return parts.draws;
  }

  /** Returns the stream of random numbers. */
  public long stream() {
    return parts.stream;
  }

  /** Returns the measures to compare, in order, one or more. */
  public List<Measure> measures() {
    return parts.measures;
  }

  /** Returns the measures of which more or less is preferred. */
  public List<Objective> objectives() {
    return parts.objectives;
  }

  /** Returns facts about the delivery of the training. */
  public List<Report> reports() {
    return parts.reports;
  }

  /** Returns the notes. */
  public List<String> notes() {
    return parts.notes;
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
    private final String name;
    private Subjects subjects;
    private Optional<String> title = Optional.empty();
    private final List<Arm> arms = new ArrayList<>();
    private final List<Match> matches = new ArrayList<>();
    private boolean matchEach;
    private int perWeek = 1;
    private int weeks = 1;
    private int draws = DEFAULT_DRAWS;
    private long stream = DEFAULT_STREAM;
    private List<Measure> measures = List.of();
    private List<Objective> objectives = List.of();
    private final List<Report> reports = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    private Builder(String name, Subjects subjects) {
      this.name = Objects.requireNonNull(name, "name");
      this.subjects = Objects.requireNonNull(subjects, "subjects");
    }

    private Builder(Parts copied) {
      this(copied.name, copied.subjects);
      title = copied.title;
      arms.addAll(copied.arms);
      matches.addAll(copied.matches);
      matchEach = copied.matchEach;
      perWeek = copied.perWeek;
      weeks = copied.weeks;
      draws = copied.draws;
      stream = copied.stream;
      measures = copied.measures;
      objectives = copied.objectives;
      reports.addAll(copied.reports);
      notes.addAll(copied.notes);
    }

    /** Sets the title for people. */
    public Builder title(Optional<String> value) {
      title = Objects.requireNonNull(value, "value");
      return this;
    }

    /** Sets who trains. */
    public Builder subjects(Subjects value) {
      subjects = Objects.requireNonNull(value, "value");
      return this;
    }

    /** Adds an arm. */
    public Builder arm(Arm value) {
      arms.add(Objects.requireNonNull(value, "value"));
      return this;
    }

    /** Sets the arms, in place of those already there. */
    public Builder arms(List<Arm> value) {
      List<Arm> copied = List.copyOf(value);
      arms.clear();
      arms.addAll(copied);
      return this;
    }

    /** Adds a quantity to make equal. */
    public Builder match(Match value) {
      matches.add(Objects.requireNonNull(value, "value"));
      return this;
    }

    /** Sets whether matches are solved anew for each athlete. */
    public Builder matchEach(boolean value) {
      matchEach = value;
      return this;
    }

    /** Sets the sessions a week of arms with one exercise, 1 to 7. */
    public Builder perWeek(int value) {
      perWeek = value;
      return this;
    }

    /** Sets the number of weeks of arms with one exercise, 1 to 520. */
    public Builder weeks(int value) {
      weeks = value;
      return this;
    }

    /** Sets how many draws of the model's parameters give the intervals, 100 or more. */
    public Builder draws(int value) {
      draws = value;
      return this;
    }

    /** Sets the stream of random numbers, 0 or more. */
    public Builder stream(long value) {
      stream = value;
      return this;
    }

    /** Sets the measures to compare, in order. */
    public Builder measures(List<Measure> value) {
      measures = List.copyOf(value);
      return this;
    }

    /** Sets the measures of which more or less is preferred. */
    public Builder objectives(List<Objective> value) {
      objectives = List.copyOf(value);
      return this;
    }

    /** Adds a fact about the delivery of the training. */
    public Builder report(Report value) {
      reports.add(Objects.requireNonNull(value, "value"));
      return this;
    }

    /** Adds a note. */
    public Builder note(String value) {
      notes.add(Objects.requireNonNull(value, "value"));
      return this;
    }

    /**
     * Returns the comparison.
     *
     * @throws IllegalArgumentException if there are fewer than two arms, two of one name, no
     *     measure, a match of an unknown arm, an objective that is not measured, or a number is
     *     outside its {@link Range}
     */
    public Comparison build() {
      return new Comparison(
          new Parts(
              name,
              title,
              subjects,
              arms,
              matches,
              matchEach,
              perWeek,
              weeks,
              draws,
              stream,
              measures,
              objectives,
              reports,
              notes));
    }
  }
}
