package gripwright.plan;

import gripwright.grip.Setup;
import gripwright.quantity.Range;
import java.time.DayOfWeek;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A test as planned by a coach: a line of a log without its result. Immutable.
 *
 * @since 1.0.0
 */
public final class PlannedTest {

  /** The time without hard work before a test, unless written; see {@code hard-days-apart}. */
  public static final Duration STANDARD_RESTED = Duration.ofHours(48);

  /** The rest between attempts that are not written. */
  public static final Duration STANDARD_RESTING = Duration.ZERO;

  /** The components, checked; lists are copied. */
  private record Parts(
      List<Setup> setups,
      TestKind kind,
      List<TestTime> times,
      int attempts,
      Duration resting,
      Optional<TestCount> counts,
      Duration rested,
      WarmUp warmUp,
      Set<DayOfWeek> onlyOn,
      Set<String> onlyAt,
      List<String> notes) {
    Parts {
      setups = List.copyOf(setups);
      times = List.copyOf(times);
      onlyOn = Set.copyOf(onlyOn);
      onlyAt = Collections.unmodifiableSortedSet(new TreeSet<>(onlyAt));
      notes = List.copyOf(notes);
      if (setups.isEmpty()) {
        throw new IllegalArgumentException("a retest of nothing");
      }
      if (Set.copyOf(setups).size() < setups.size()) {
        throw new IllegalArgumentException("a retest of one setup twice: " + setups);
      }
      if (times.isEmpty()) {
        throw new IllegalArgumentException("a test at no time");
      }
      if (Set.copyOf(times).size() < times.size()) {
        throw new IllegalArgumentException("a test at one time twice: " + times);
      }
      boolean later = times.stream().anyMatch(TestTime.Later.class::isInstance);
      if (later && !times.contains(new TestTime.After())) {
        throw new IllegalArgumentException("a later test without one after the last week");
      }
      Range.ATTEMPTS.check(attempts);
      Range.REST.check(resting);
      Range.RESTED.check(rested);
    }
  }

  /**
   * What prepares for a test.
   *
   * @param time its warm-up, if not that of the plan
   * @param text words for the athlete about it
   * @param exercises what is done in it besides, in order; not part of the time
   */
  private record WarmUp(Optional<Duration> time, Optional<String> text, List<Exercise> exercises) {
    WarmUp {
      exercises = List.copyOf(exercises);
      time.ifPresent(Range.WARM_UP::check);
      if (text.isPresent() && time.isEmpty()) {
        throw new IllegalArgumentException("a text of a warm-up without its time");
      }
      if (!exercises.isEmpty()) {
        Range.EXERCISES.check(exercises.size());
      }
      if (!exercises.stream().allMatch(Exercise::warmUp)) {
        throw new IllegalArgumentException("an exercise of a test that is not a warm-up");
      }
    }
  }

  private final Parts parts;

  private PlannedTest(Parts parts) {
    this.parts = parts;
  }

  /**
   * Returns regular tests of a load held for a set time, one attempt each.
   *
   * @param setups setups to test, in order
   * @param hold how long each is held, above 0 s and up to 3600 s
   * @param everyWeeks every N weeks of the plan, 1 to 520
   * @throws IllegalArgumentException if there is nothing to test, a setup is tested twice, or a
   *     number is outside its range
   */
  public static PlannedTest every(List<Setup> setups, Duration hold, int everyWeeks) {
    return of(setups, new TestKind.Hold(hold)).time(new TestTime.Every(everyWeeks)).build();
  }

  /**
   * Returns a builder for a test of one attempt.
   *
   * @param setups setups to test, in order
   * @param kind what is done on each
   */
  public static Builder of(List<Setup> setups, TestKind kind) {
    return new Builder(setups, kind);
  }

  /** Returns a builder with all parts of this test. */
  public Builder toBuilder() {
    return new Builder(parts);
  }

  /** Returns the setups to test, in order, at least one. */
  public List<Setup> setups() {
    return parts.setups;
  }

  /** Returns what is done on each setup. */
  public TestKind kind() {
    return parts.kind;
  }

  /** Returns when it is due, at least one time. */
  public List<TestTime> times() {
    return parts.times;
  }

  /** Returns the number of attempts on each setup, 1 to 20. */
  public int attempts() {
    return parts.attempts;
  }

  /** Returns the rest between attempts. */
  public Duration resting() {
    return parts.resting;
  }

  /** Returns which attempts count for strength; empty if each does. */
  public Optional<TestCount> counts() {
    return parts.counts;
  }

  /** Returns the time without hard work before it, 48 h to 14 days. */
  public Duration rested() {
    return parts.rested;
  }

  /** Returns its warm-up, if not that of the plan. */
  public Optional<Duration> warmUp() {
    return parts.warmUp.time;
  }

  /** Returns words for the athlete about its own warm-up. */
  public Optional<String> warmUpText() {
    return parts.warmUp.text;
  }

  /** Returns the exercises before it, each a warm-up, in order; they are not part of its time. */
  public List<Exercise> exercises() {
    return parts.warmUp.exercises;
  }

  /** Returns the weekdays on which it may be; empty if on any. */
  public Set<DayOfWeek> onlyOn() {
    return parts.onlyOn;
  }

  /** Returns the places at which it may be; empty if at any. */
  public Set<String> onlyAt() {
    return parts.onlyAt;
  }

  /** Returns notes for people. */
  public List<String> notes() {
    return parts.notes;
  }

  /**
   * Returns whether the test is due in a week.
   *
   * @param week number of the week, 0 before the plan, above {@code weeks} after it
   * @param weeks number of weeks of the plan
   */
  public boolean isDueIn(int week, int weeks) {
    return parts.times.stream().anyMatch(time -> time.isDueIn(week, weeks));
  }

  /** Returns the number of weeks in which it is due, in a plan of some weeks. */
  public long dates(long weeks) {
    long dates = 0;
    for (TestTime time : parts.times) {
      dates += time instanceof TestTime.Every every ? weeks / every.weeks() + 1 : 1;
    }
    return dates;
  }

  /** Returns the weeks outside a plan in which it is due, by number. */
  public Set<Integer> weeksOutside(int weeks) {
    Set<Integer> outside = new TreeSet<>();
    for (TestTime time : parts.times) {
      if (time.isDueIn(0, weeks)) {
        outside.add(0);
      } else if (time.weeksAfter() > 0) {
        outside.add(weeks + time.weeksAfter());
      }
    }
    return outside;
  }

  /**
   * Returns whether this is a regular test of a set time with nothing else written, which every
   * logged test of its setup may be.
   */
  public boolean isPlain() {
    return parts.kind instanceof TestKind.Hold
        && parts.times.size() == 1
        && parts.times.get(0) instanceof TestTime.Every
        && equals(of(parts.setups, parts.kind).times(parts.times).build());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof PlannedTest that && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return "PlannedTest" + parts.toString().substring("Parts".length());
  }

  /** Collects the parts of a test. Not thread-safe. */
  public static final class Builder {
    private final List<Setup> setups;
    private final TestKind kind;
    private final List<TestTime> times = new ArrayList<>();
    private int attempts = 1;
    private Duration resting = STANDARD_RESTING;
    private Optional<TestCount> counts = Optional.empty();
    private Duration rested = STANDARD_RESTED;
    private Optional<Duration> warmUp = Optional.empty();
    private Optional<String> warmUpText = Optional.empty();
    private final List<Exercise> exercises = new ArrayList<>();
    private final Set<DayOfWeek> onlyOn = EnumSet.noneOf(DayOfWeek.class);
    private final Set<String> onlyAt = new TreeSet<>();
    private final List<String> notes = new ArrayList<>();

    private Builder(List<Setup> setups, TestKind kind) {
      this.setups = List.copyOf(Objects.requireNonNull(setups, "setups"));
      this.kind = Objects.requireNonNull(kind, "kind");
    }

    private Builder(Parts copied) {
      this(copied.setups, copied.kind);
      times.addAll(copied.times);
      attempts = copied.attempts;
      resting = copied.resting;
      counts = copied.counts;
      rested = copied.rested;
      warmUp = copied.warmUp.time;
      warmUpText = copied.warmUp.text;
      exercises.addAll(copied.warmUp.exercises);
      onlyOn.addAll(copied.onlyOn);
      onlyAt.addAll(copied.onlyAt);
      notes.addAll(copied.notes);
    }

    /** Adds a time at which it is due. */
    public Builder time(TestTime time) {
      times.add(Objects.requireNonNull(time, "time"));
      return this;
    }

    /** Adds times at which it is due. */
    public Builder times(List<TestTime> more) {
      times.addAll(Objects.requireNonNull(more, "more"));
      return this;
    }

    /**
     * Sets the attempts on each setup.
     *
     * @param number 1 to 20
     * @param rest between them, 0 s to a day
     */
    public Builder attempts(int number, Duration rest) {
      attempts = number;
      resting = Objects.requireNonNull(rest, "rest");
      return this;
    }

    /** Sets which attempts count for strength. */
    public Builder counts(TestCount count) {
      counts = Optional.of(count);
      return this;
    }

    /** Sets the time without hard work before it, 48 h to 14 days. */
    public Builder rested(Duration time) {
      rested = Objects.requireNonNull(time, "time");
      return this;
    }

    /** Sets a warm-up of its own. */
    public Builder warmUp(Duration time) {
      warmUp = Optional.of(time);
      return this;
    }

    /** Sets words for the athlete about its own warm-up, or none. */
    public Builder warmUpText(Optional<String> text) {
      warmUpText = Objects.requireNonNull(text, "text");
      return this;
    }

    /** Adds an exercise before it, which is a warm-up. */
    public Builder exercise(Exercise exercise) {
      exercises.add(Objects.requireNonNull(exercise, "exercise"));
      return this;
    }

    /** Adds a weekday on which it may be. */
    public Builder onlyOn(DayOfWeek day) {
      onlyOn.add(Objects.requireNonNull(day, "day"));
      return this;
    }

    /** Adds a place at which it may be. */
    public Builder onlyAt(String place) {
      onlyAt.add(Objects.requireNonNull(place, "place"));
      return this;
    }

    /** Adds a note for people. */
    public Builder note(String text) {
      notes.add(Objects.requireNonNull(text, "text"));
      return this;
    }

    /**
     * Returns the test.
     *
     * @throws IllegalArgumentException if there is nothing to test or no time, one of them is there
     *     twice, a later test has none after the last week, a number is outside its range, an
     *     exercise is not a warm-up, there are more than 100 of them, or a text of the warm-up has
     *     no time
     */
    public PlannedTest build() {
      WarmUp before = new WarmUp(warmUp, warmUpText, exercises);
      return new PlannedTest(
          new Parts(
              setups, kind, times, attempts, resting, counts, rested, before, onlyOn, onlyAt,
              notes));
    }
  }
}
