package gripwright.schedule;

import gripwright.finding.ModelPath;
import gripwright.grip.Setup;
import gripwright.plan.PlannedTest;
import gripwright.plan.TestCount;
import gripwright.plan.TestKind;
import gripwright.quantity.Load;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** Tests on a day. They count as hard. Immutable. */
public final class DatedRetest {

  /**
   * How often each setup is tried.
   *
   * @param number attempts on each setup, 1 or more
   * @param resting rest between them
   * @param counts which of them count for strength; empty if each does
   */
  public record Attempts(int number, Duration resting, Optional<TestCount> counts) {
    /** Refuses null. */
    public Attempts {
      Objects.requireNonNull(resting, "resting");
      Objects.requireNonNull(counts, "counts");
    }
  }

  /**
   * What prepares for the tests.
   *
   * @param minutes the time of the warm-up, in minutes, if it is not that of the plan
   * @param text words for the athlete about it
   * @param exercises exercises in it, in order, with loads; no log line is needed for them
   */
  public record WarmUp(
      OptionalDouble minutes, Optional<String> text, List<PlannedExercise> exercises) {
    /** Nothing but the warm-up of the plan. */
    public static final WarmUp OF_PLAN =
        new WarmUp(OptionalDouble.empty(), Optional.empty(), List.of());

    /** Refuses null and copies the list. */
    public WarmUp {
      Objects.requireNonNull(minutes, "minutes");
      Objects.requireNonNull(text, "text");
      exercises = List.copyOf(exercises);
    }
  }

  /** The components; lists are copied. */
  private record Parts(
      LocalDate date,
      Optional<LocalTime> time,
      Optional<String> place,
      int week,
      String block,
      List<Setup> setups,
      TestKind kind,
      Attempts attempts,
      WarmUp warmUp,
      List<String> notes,
      Map<String, Load> loads,
      String insteadOf,
      PlacementReason placedBecause,
      ModelPath path) {
    Parts {
      loads = Map.copyOf(loads);
      setups = List.copyOf(setups);
      notes = List.copyOf(notes);
    }
  }

  private final Parts parts;

  private DatedRetest(Parts parts) {
    this.parts = parts;
  }

  /**
   * Returns a builder for planned tests on a day of their own unless set.
   *
   * @param date the day
   * @param week plan week, from 1; 0 before the plan, above its last after it
   * @param block name of the block; empty outside the plan's weeks
   * @param test what was planned
   * @param path its place in the model
   */
  public static Builder of(
      LocalDate date, int week, String block, PlannedTest test, ModelPath path) {
    return new Builder(date, week, block, test.setups(), Duration.ofSeconds(1), path)
        .kind(test.kind())
        .attempts(new Attempts(test.attempts(), test.resting(), test.counts()))
        .warmUp(
            new WarmUp(
                test.warmUp().stream().mapToDouble(time -> time.toNanos() / 6e10).findFirst(),
                test.warmUpText(),
                List.of()))
        .notes(test.notes());
  }

  /**
   * Returns a builder for tests of a set time on a day of their own unless set.
   *
   * @param date the day
   * @param week plan week, from 1
   * @param block name of the block
   * @param setups setups to test, in order
   * @param hold how long each is held, above 0 s and up to 3600 s
   * @param path its place in the model
   */
  public static Builder builder(
      LocalDate date, int week, String block, List<Setup> setups, Duration hold, ModelPath path) {
    return new Builder(date, week, block, setups, hold, path);
  }

  /** Returns a builder with these components. */
  public Builder toBuilder() {
    return new Builder(parts);
  }

  /** Returns the day. */
  public LocalDate date() {
    return parts.date;
  }

  /** Returns the local time at which they begin, if the day says one. */
  public Optional<LocalTime> time() {
    return parts.time;
  }

  /** Returns the name of their place, if the day says one. */
  public Optional<String> place() {
    return parts.place;
  }

  /** Returns the plan week, from 1; 0 before the plan, above its last after it. */
  public int week() {
    return parts.week;
  }

  /** Returns the name of the block; empty outside the plan's weeks. */
  public String block() {
    return parts.block;
  }

  /** Returns the setups to test, in order. */
  public List<Setup> setups() {
    return parts.setups;
  }

  /** Returns what is done on each setup. */
  public TestKind kind() {
    return parts.kind;
  }

  /** Returns how long each hold is; zero for a hold to failure. */
  public Duration hold() {
    return parts.kind.holdTime();
  }

  /** Returns how often each setup is tried. */
  public Attempts attempts() {
    return parts.attempts;
  }

  /** Returns what prepares for the tests. */
  public WarmUp warmUp() {
    return parts.warmUp;
  }

  /** Returns the exercises of the warm-up, in order, with loads. */
  public List<PlannedExercise> exercises() {
    return parts.warmUp.exercises;
  }

  /** Returns the load-time of the warm-up, in kg s; the tests themselves have none. */
  public double loadIndex() {
    return parts.warmUp.exercises.stream().mapToDouble(PlannedExercise::loadIndex).sum();
  }

  /** Returns the time under tension of the warm-up, in s. */
  public double timeUnderLoadSeconds() {
    return parts.warmUp.exercises.stream().mapToDouble(PlannedExercise::timeUnderLoadSeconds).sum();
  }

  /** Returns the load on which a setup is held to failure, if it is such a test and it is known. */
  public Optional<Load> load(Setup setup) {
    return Optional.ofNullable(parts.loads.get(setup.toString()));
  }

  /** Returns the coach's notes. */
  public List<String> notes() {
    return parts.notes;
  }

  /** Returns the name of the session it replaces; empty if it has a day of its own. */
  public String insteadOf() {
    return parts.insteadOf;
  }

  /** Returns the reason for its day. */
  public PlacementReason placedBecause() {
    return parts.placedBecause;
  }

  /** Returns its place in the model. */
  public ModelPath path() {
    return parts.path;
  }

  /** Returns whether a setup is one of those that are tested. */
  public boolean tests(Setup setup) {
    return parts.setups.stream().anyMatch(s -> s.toString().equals(setup.toString()));
  }

  /** Returns whether it is one attempt at a hold of a set time, with nothing else said. */
  public boolean isPlain() {
    return parts.kind instanceof TestKind.Hold
        && parts.attempts.equals(new Attempts(1, Duration.ZERO, Optional.empty()))
        && parts.warmUp.equals(WarmUp.OF_PLAN)
        && parts.notes.isEmpty();
  }

  /** Returns whether it was done according to the log. */
  public boolean done() {
    return parts.placedBecause instanceof PlacementReason.TestedOnDay;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof DatedRetest that && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return "DatedRetest" + parts.toString().substring("Parts".length());
  }

  /** Collects the components. Not thread-safe. */
  public static final class Builder {
    private LocalDate date;
    private Optional<LocalTime> time = Optional.empty();
    private Optional<String> place = Optional.empty();
    private int week;
    private String block;
    private List<Setup> setups;
    private TestKind kind;
    private Attempts attempts = new Attempts(1, Duration.ZERO, Optional.empty());
    private WarmUp warmUp = WarmUp.OF_PLAN;
    private List<String> notes = List.of();
    private final Map<String, Load> loads = new HashMap<>();
    private String insteadOf = "";
    private PlacementReason placedBecause = new PlacementReason.Unplaced();
    private ModelPath path;

    private Builder(
        LocalDate date, int week, String block, List<Setup> setups, Duration hold, ModelPath path) {
      this.date = Objects.requireNonNull(date, "date");
      this.week = week;
      this.block = Objects.requireNonNull(block, "block");
      this.setups = List.copyOf(Objects.requireNonNull(setups, "setups"));
      this.kind = new TestKind.Hold(Objects.requireNonNull(hold, "hold"));
      this.path = Objects.requireNonNull(path, "path");
    }

    private Builder(Parts copied) {
      date = copied.date;
      time = copied.time;
      place = copied.place;
      week = copied.week;
      block = copied.block;
      setups = copied.setups;
      kind = copied.kind;
      attempts = copied.attempts;
      warmUp = copied.warmUp;
      notes = copied.notes;
      loads.putAll(copied.loads);
      insteadOf = copied.insteadOf;
      placedBecause = copied.placedBecause;
      path = copied.path;
    }

    /** Sets the day. */
    public Builder date(LocalDate value) {
      Objects.requireNonNull(value, "value");
      date = value;
      return this;
    }

    /** Sets the local time at which they begin, if the day says one. */
    public Builder time(Optional<LocalTime> value) {
      Objects.requireNonNull(value, "value");
      time = value;
      return this;
    }

    /** Sets the name of their place, if the day says one. */
    public Builder place(Optional<String> value) {
      Objects.requireNonNull(value, "value");
      place = value;
      return this;
    }

    /** Sets the plan week, from 1. */
    public Builder week(int value) {
      week = value;
      return this;
    }

    /** Sets the name of the block. */
    public Builder block(String value) {
      Objects.requireNonNull(value, "value");
      block = value;
      return this;
    }

    /** Sets the setups to test, in order. */
    public Builder setups(List<Setup> value) {
      Objects.requireNonNull(value, "value");
      setups = List.copyOf(value);
      return this;
    }

    /** Sets how long each is held. */
    public Builder hold(Duration value) {
      Objects.requireNonNull(value, "value");
      kind = new TestKind.Hold(value);
      return this;
    }

    /** Sets what is done on each setup. */
    public Builder kind(TestKind value) {
      Objects.requireNonNull(value, "value");
      kind = value;
      return this;
    }

    /** Sets how often each setup is tried. */
    public Builder attempts(Attempts value) {
      Objects.requireNonNull(value, "value");
      attempts = value;
      return this;
    }

    /** Sets what prepares for the tests. */
    public Builder warmUp(WarmUp value) {
      Objects.requireNonNull(value, "value");
      warmUp = value;
      return this;
    }

    /** Sets the load on which a setup is held to failure. */
    public Builder load(Setup setup, Load load) {
      loads.put(setup.toString(), Objects.requireNonNull(load, "load"));
      return this;
    }

    /** Sets the coach's notes. */
    public Builder notes(List<String> value) {
      Objects.requireNonNull(value, "value");
      notes = List.copyOf(value);
      return this;
    }

    /** Sets the name of the session it replaces; empty if it has a day of its own. */
    public Builder insteadOf(String value) {
      Objects.requireNonNull(value, "value");
      insteadOf = value;
      return this;
    }

    /** Sets the reason for its day. */
    public Builder placedBecause(PlacementReason value) {
      Objects.requireNonNull(value, "value");
      placedBecause = value;
      return this;
    }

    /** Sets its place in the model, and the places of its exercises. */
    public Builder at(ModelPath value) {
      List<PlannedExercise> moved = new ArrayList<>();
      for (PlannedExercise exercise : warmUp.exercises()) {
        List<ModelPath.Step> steps = exercise.path().steps();
        String number = steps.get(steps.size() - 1).name();
        moved.add(exercise.toBuilder().path(value.then("exercise", number)).build());
      }
      warmUp = new WarmUp(warmUp.minutes(), warmUp.text(), moved);
      return path(value);
    }

    /** Sets its place in the model. */
    public Builder path(ModelPath value) {
      Objects.requireNonNull(value, "value");
      path = value;
      return this;
    }

    /** Returns the tests. */
    public DatedRetest build() {
      return new DatedRetest(
          new Parts(
              date,
              time,
              place,
              week,
              block,
              setups,
              kind,
              attempts,
              warmUp,
              notes,
              loads,
              insteadOf,
              placedBecause,
              path));
    }
  }
}
