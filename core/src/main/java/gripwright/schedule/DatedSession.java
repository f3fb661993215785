package gripwright.schedule;

import gripwright.finding.ModelPath;
import gripwright.quantity.Load;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A session on a day. Immutable. */
public final class DatedSession {

  /** The components; lists are copied. */
  private record Parts(
      LocalDate date,
      Optional<LocalTime> time,
      Optional<String> place,
      int week,
      String block,
      int blockWeek,
      String name,
      int minutes,
      boolean hard,
      boolean eased,
      Load bodyMass,
      PlacementReason placedBecause,
      List<PlannedExercise> exercises,
      ModelPath path,
      Optional<Happened> happened,
      Optional<String> warmUpText,
      List<String> notes) {
    Parts {
      notes = List.copyOf(notes);
      exercises = List.copyOf(exercises);
    }
  }

  /** By day, then in the order of the day; those of a day without a time first, by name. */
  public static final Comparator<DatedSession> IN_ORDER =
      Comparator.comparing(DatedSession::date)
          .thenComparing(session -> session.time().orElse(LocalTime.MIN))
          .thenComparing(DatedSession::name);

  private final Parts parts;

  private DatedSession(Parts parts) {
    this.parts = parts;
  }

  /**
   * Returns a builder for a session on a day, without exercises and outside any block unless set.
   *
   * @param date the day
   * @param name name of the session
   * @param bodyMass body mass used for the loads
   * @param path its place in the model
   */
  public static Builder builder(LocalDate date, String name, Load bodyMass, ModelPath path) {
    return new Builder(date, name, bodyMass, path);
  }

  /** Returns a builder with these components. */
  public Builder toBuilder() {
    return new Builder(parts);
  }

  /** Returns the day. */
  public LocalDate date() {
    return parts.date;
  }

  /** Returns the local time at which it begins, if the day says one. */
  public Optional<LocalTime> time() {
    return parts.time;
  }

  /** Returns the name of its place, if the day says one. */
  public Optional<String> place() {
    return parts.place;
  }

  /** Returns the plan week, from 1; 0 for a session that is in no plan. */
  public int week() {
    return parts.week;
  }

  /** Returns the name of the block; empty for a session that is in no plan. */
  public String block() {
    return parts.block;
  }

  /** Returns the week of the block, from 1; 0 for a session that is in no plan. */
  public int blockWeek() {
    return parts.blockWeek;
  }

  /** Returns the name of the session. */
  public String name() {
    return parts.name;
  }

  /** Returns the minutes of warm-up, holds, rests and changes together, rounded up. */
  public int minutes() {
    return parts.minutes;
  }

  /** Returns whether any exercise is hard. */
  public boolean hard() {
    return parts.hard;
  }

  /** Returns whether the week is eased. */
  public boolean eased() {
    return parts.eased;
  }

  /** Returns the body mass used for the loads. */
  public Load bodyMass() {
    return parts.bodyMass;
  }

  /** Returns the reason for its day. */
  public PlacementReason placedBecause() {
    return parts.placedBecause;
  }

  /** Returns the exercises in the order of training. */
  public List<PlannedExercise> exercises() {
    return parts.exercises;
  }

  /** Returns its place in the model; a {@code week} in a path is the week of the block. */
  public ModelPath path() {
    return parts.path;
  }

  /**
   * Returns how it was trained, for a past session, whose day and exercises are then those trained;
   * empty for a future session.
   */
  public Optional<Happened> happened() {
    return parts.happened;
  }

  /** Returns what to do in the warm-up, in the coach's words, if there are any. */
  public Optional<String> warmUpText() {
    return parts.warmUpText;
  }

  /** Returns what the coach wrote about it for people, in order. */
  public List<String> notes() {
    return parts.notes;
  }

  /** Returns the time under tension, in seconds. */
  public double timeUnderLoadSeconds() {
    return parts.exercises.stream().mapToDouble(PlannedExercise::timeUnderLoadSeconds).sum();
  }

  /** Returns the load-time: the sum of total load times hold time, in kg s. */
  public double loadIndex() {
    return parts.exercises.stream().mapToDouble(PlannedExercise::loadIndex).sum();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof DatedSession that && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return "DatedSession" + parts.toString().substring("Parts".length());
  }

  /** Collects the components. Not thread-safe. */
  public static final class Builder {
    private LocalDate date;
    private Optional<LocalTime> time = Optional.empty();
    private Optional<String> place = Optional.empty();
    private int week;
    private String block = "";
    private int blockWeek;
    private String name;
    private int minutes;
    private boolean hard;
    private boolean eased;
    private Load bodyMass;
    private PlacementReason placedBecause = new PlacementReason.Unplaced();
    private List<PlannedExercise> exercises = List.of();
    private ModelPath path;
    private Optional<Happened> happened = Optional.empty();
    private Optional<String> warmUpText = Optional.empty();
    private List<String> notes = List.of();

    private Builder(LocalDate date, String name, Load bodyMass, ModelPath path) {
      this.date = Objects.requireNonNull(date, "date");
      this.name = Objects.requireNonNull(name, "name");
      this.bodyMass = Objects.requireNonNull(bodyMass, "bodyMass");
      this.path = Objects.requireNonNull(path, "path");
    }

    private Builder(Parts copied) {
      date = copied.date;
      time = copied.time;
      place = copied.place;
      week = copied.week;
      block = copied.block;
      blockWeek = copied.blockWeek;
      name = copied.name;
      minutes = copied.minutes;
      hard = copied.hard;
      eased = copied.eased;
      bodyMass = copied.bodyMass;
      placedBecause = copied.placedBecause;
      exercises = copied.exercises;
      path = copied.path;
      happened = copied.happened;
      warmUpText = copied.warmUpText;
      notes = copied.notes;
    }

    /** Sets the day. */
    public Builder date(LocalDate value) {
      Objects.requireNonNull(value, "value");
      date = value;
      return this;
    }

    /** Sets the local time at which it begins, if the day says one. */
    public Builder time(Optional<LocalTime> value) {
      Objects.requireNonNull(value, "value");
      time = value;
      return this;
    }

    /** Sets the name of its place, if the day says one. */
    public Builder place(Optional<String> value) {
      Objects.requireNonNull(value, "value");
      place = value;
      return this;
    }

    /** Sets the plan week, from 1; 0 for a session that is in no plan. */
    public Builder week(int value) {
      week = value;
      return this;
    }

    /** Sets the name of the block; empty for a session that is in no plan. */
    public Builder block(String value) {
      Objects.requireNonNull(value, "value");
      block = value;
      return this;
    }

    /** Sets the week of the block, from 1; 0 for a session that is in no plan. */
    public Builder blockWeek(int value) {
      blockWeek = value;
      return this;
    }

    /** Sets the name of the session. */
    public Builder name(String value) {
      Objects.requireNonNull(value, "value");
      name = value;
      return this;
    }

    /** Sets the minutes of warm-up, holds, rests and changes together, rounded up. */
    public Builder minutes(int value) {
      minutes = value;
      return this;
    }

    /** Sets whether any exercise is hard. */
    public Builder hard(boolean value) {
      hard = value;
      return this;
    }

    /** Sets whether the week is eased. */
    public Builder eased(boolean value) {
      eased = value;
      return this;
    }

    /** Sets the body mass used for the loads. */
    public Builder bodyMass(Load value) {
      Objects.requireNonNull(value, "value");
      bodyMass = value;
      return this;
    }

    /** Sets the reason for its day. */
    public Builder placedBecause(PlacementReason value) {
      Objects.requireNonNull(value, "value");
      placedBecause = value;
      return this;
    }

    /** Sets the exercises in the order of training. */
    public Builder exercises(List<PlannedExercise> value) {
      Objects.requireNonNull(value, "value");
      exercises = List.copyOf(value);
      return this;
    }

    /** Sets its place in the model; a {@code week} in a path is the week of the block. */
    public Builder path(ModelPath value) {
      Objects.requireNonNull(value, "value");
      path = value;
      return this;
    }

    /**
     * Sets how it was trained, for a past session, whose day and exercises are then those trained;
     * empty for a future session.
     */
    public Builder happened(Optional<Happened> value) {
      Objects.requireNonNull(value, "value");
      happened = value;
      return this;
    }

    /** Sets what to do in the warm-up, in the coach's words, if there are any. */
    public Builder warmUpText(Optional<String> value) {
      Objects.requireNonNull(value, "value");
      warmUpText = value;
      return this;
    }

    /** Sets what the coach wrote about it for people. */
    public Builder notes(List<String> all) {
      notes = List.copyOf(Objects.requireNonNull(all, "all"));
      return this;
    }

    /** Returns the session. */
    public DatedSession build() {
      return new DatedSession(
          new Parts(
              date,
              time,
              place,
              week,
              block,
              blockWeek,
              name,
              minutes,
              hard,
              eased,
              bodyMass,
              placedBecause,
              exercises,
              path,
              happened,
              warmUpText,
              notes));
    }
  }
}
