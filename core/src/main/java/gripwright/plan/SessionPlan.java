package gripwright.plan;

import gripwright.finding.WrittenReason;
import gripwright.quantity.Range;
import java.time.DayOfWeek;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** A kind of session in a block, with a number of times a week. Immutable. */
public final class SessionPlan {

  /** The default gap. */
  public static final Duration STANDARD_GAP = Duration.ofHours(48);

  /**
   * The content of a session.
   *
   * @param exercises in the order of training, 1 to 100, at least one of them not a warm-up
   * @param warmUp duration of the warm-up, if this session has its own
   * @param restBetween rest between two exercises, if this session has its own
   * @param warmUpText what to do in its own warm-up, in words for people
   * @param notes what the coach wrote about it for people, in order
   */
  public record Content(
      List<Exercise> exercises,
      Optional<Duration> warmUp,
      Optional<Duration> restBetween,
      Optional<String> warmUpText,
      List<String> notes) {
    /**
     * Copies the list and checks the range.
     *
     * @throws IllegalArgumentException if there are not 1 to 100 exercises, all of them are
     *     warm-ups, a time is outside its {@link Range}, or there is a text for the warm-up without
     *     its duration
     */
    public Content {
      Objects.requireNonNull(exercises, "exercises");
      Objects.requireNonNull(warmUp, "warmUp");
      Objects.requireNonNull(restBetween, "restBetween");
      Objects.requireNonNull(warmUpText, "warmUpText");
      exercises = List.copyOf(exercises);
      notes = List.copyOf(Objects.requireNonNull(notes, "notes"));
      Range.EXERCISES.check(exercises.size());
      warmUp.ifPresent(Range.WARM_UP::check);
      restBetween.ifPresent(Range.REST_BETWEEN::check);
      if (exercises.stream().allMatch(Exercise::warmUp)) {
        throw new IllegalArgumentException("a session has an exercise that is not a warm-up");
      }
      if (warmUpText.isPresent() && warmUp.isEmpty()) {
        throw new IllegalArgumentException("a text for a warm-up without its duration");
      }
    }

    /** Creates content whose warm-up has no text. */
    public Content(
        List<Exercise> exercises, Optional<Duration> warmUp, Optional<Duration> restBetween) {
      this(exercises, warmUp, restBetween, Optional.empty(), List.of());
    }

    /** Creates content without notes. */
    public Content(
        List<Exercise> exercises,
        Optional<Duration> warmUp,
        Optional<Duration> restBetween,
        Optional<String> warmUpText) {
      this(exercises, warmUp, restBetween, warmUpText, List.of());
    }

    /** Returns content of these exercises alone. */
    public static Content of(Exercise... exercises) {
      Objects.requireNonNull(exercises, "exercises");
      return new Content(List.of(exercises), Optional.empty(), Optional.empty());
    }
  }

  /** The components, checked. */
  private record Parts(
      String name,
      int perWeek,
      Duration gap,
      Content content,
      List<DayOfWeek> prefer,
      List<DayOfWeek> onlyOn,
      Set<String> onlyAt,
      Optional<Duration> share,
      Map<String, Content> only,
      Optional<String> supervisedBy) {
    Parts {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(gap, "gap");
      Objects.requireNonNull(content, "content");
      Objects.requireNonNull(prefer, "prefer");
      Objects.requireNonNull(only, "only");
      Objects.requireNonNull(supervisedBy, "supervisedBy");
      Objects.requireNonNull(onlyOn, "onlyOn");
      onlyAt = Collections.unmodifiableSortedSet(new TreeSet<>(onlyAt));
      Objects.requireNonNull(share, "share");
      share.ifPresent(Range.DAY_GAP::check);
      prefer = List.copyOf(prefer);
      onlyOn = List.copyOf(onlyOn);
      only = Collections.unmodifiableMap(new TreeMap<>(only)); // a fixed order, whatever the input
      Range.PER_WEEK.check(perWeek);
      Range.GAP.check(gap);
      supervisedBy.ifPresent(who -> WrittenReason.check(who, "who supervises session " + name));
      if (Set.copyOf(prefer).size() < prefer.size()) {
        throw new IllegalArgumentException(
            "session " + name + " prefers a weekday twice: " + prefer);
      }
      if (Set.copyOf(onlyOn).size() < onlyOn.size()) {
        throw new IllegalArgumentException(
            "session " + name + " is only on a weekday twice: " + onlyOn);
      }
      if (!onlyOn.isEmpty() && onlyOn.size() < perWeek) {
        throw new IllegalArgumentException(
            "session " + name + " is " + perWeek + " per week, but only on " + onlyOn);
      }
    }
  }

  private final Parts parts;

  private SessionPlan(Parts parts) {
    this.parts = parts;
  }

  /**
   * Returns a builder for a session with the standard gap.
   *
   * @param name kebab-case, unique in its block
   * @param perWeek how many times a week it is done, 1 to 7
   * @param content the exercises
   */
  public static Builder builder(String name, int perWeek, Content content) {
    return new Builder(name, perWeek, content);
  }

  /** Returns a builder with these components. */
  public Builder toBuilder() {
    return new Builder(parts);
  }

  /** Returns the name: kebab-case, unique in its block. */
  public String name() {
    return parts.name;
  }

  /** Returns how many times a week it is done, 1 to 7. */
  public int perWeek() {
    return parts.perWeek;
  }

  /** Returns the least time between two of them, up to 31 days; whole days count. */
  public Duration gap() {
    return parts.gap;
  }

  /** Returns the exercises. */
  public Content content() {
    return parts.content;
  }

  /** Returns the weekdays to use first, if any are free. */
  public List<DayOfWeek> prefer() {
    return parts.prefer;
  }

  /** Returns the weekdays that it may be on; empty if it may be on any. */
  public List<DayOfWeek> onlyOn() {
    return parts.onlyOn;
  }

  /** Returns the names of the places that it may be at; empty if it may be at any. */
  public Set<String> onlyAt() {
    return parts.onlyAt;
  }

  /**
   * Returns the least time between it and another session of the same day, 4 to 24 h; empty if it
   * shares no day unless the other does. Days are shared from 16 years on, and by slots with a
   * time.
   */
  public Optional<Duration> share() {
    return parts.share;
  }

  /** Returns other content for some athletes, by athlete name. */
  public Map<String, Content> only() {
    return parts.only;
  }

  /** Returns who supervises it, instead of the person the plan names. */
  public Optional<String> supervisedBy() {
    return parts.supervisedBy;
  }

  /** Returns the exercises of all athletes. */
  List<Exercise> exercises() {
    List<Exercise> all = new ArrayList<>(parts.content.exercises());
    parts.only.values().forEach(own -> all.addAll(own.exercises()));
    return all;
  }

  /** Returns a session with the standard gap. */
  public static SessionPlan of(String name, int perWeek, Exercise... exercises) {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(exercises, "exercises");
    return builder(name, perWeek, Content.of(exercises)).build();
  }

  /** Returns this session with another gap. */
  public SessionPlan atLeastApart(Duration time) {
    return toBuilder().gap(time).build();
  }

  /** Returns this session with weekdays to use first. */
  public SessionPlan preferring(DayOfWeek... days) {
    List<DayOfWeek> more = new ArrayList<>(parts.prefer);
    more.addAll(List.of(days));
    return toBuilder().prefer(more).build();
  }

  /**
   * Returns this session on some weekdays only.
   *
   * @throws IllegalArgumentException if a weekday is named twice, or there are fewer than sessions
   *     a week
   */
  public SessionPlan onlyOn(DayOfWeek... days) {
    return toBuilder().onlyOn(List.of(days)).build();
  }

  /**
   * Returns this session on days that may have another.
   *
   * @param apart least time from the end of one to the start of the other
   * @throws IllegalArgumentException if it is outside 4 to 24 h
   */
  public SessionPlan sharingDays(Duration apart) {
    return toBuilder().share(Optional.of(apart)).build();
  }

  /** Returns this session with other content for one athlete. */
  public SessionPlan onlyFor(String athlete, Content other) {
    Map<String, Content> more = new TreeMap<>(parts.only);
    more.put(athlete, other);
    return toBuilder().only(more).build();
  }

  /**
   * Returns this session with a supervisor.
   *
   * @param who in words
   * @throws IllegalArgumentException if that has no letter and no digit
   */
  public SessionPlan supervisedBy(String who) {
    return toBuilder().supervisedBy(who).build();
  }

  /** Returns the content for an athlete. */
  public Content contentFor(String athlete) {
    return parts.only.getOrDefault(athlete, parts.content);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof SessionPlan that && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return "SessionPlan" + parts.toString().substring("Parts".length());
  }

  /** Collects the components. Not thread-safe. */
  public static final class Builder {
    private String name;
    private int perWeek;
    private Duration gap = STANDARD_GAP;
    private Content content;
    private List<DayOfWeek> prefer = List.of();
    private List<DayOfWeek> onlyOn = List.of();
    private Set<String> onlyAt = Set.of();
    private Optional<Duration> share = Optional.empty();
    private Map<String, Content> only = Map.of();
    private Optional<String> supervisedBy = Optional.empty();

    private Builder(String name, int perWeek, Content content) {
      this.name = Objects.requireNonNull(name, "name");
      this.perWeek = perWeek;
      this.content = Objects.requireNonNull(content, "content");
    }

    private Builder(Parts copied) {
      name = copied.name;
      perWeek = copied.perWeek;
      gap = copied.gap;
      content = copied.content;
      prefer = copied.prefer;
      onlyOn = copied.onlyOn;
      onlyAt = copied.onlyAt;
      share = copied.share;
      only = copied.only;
      supervisedBy = copied.supervisedBy;
    }

    /** Sets the name: kebab-case, unique in its block. */
    public Builder name(String value) {
      Objects.requireNonNull(value, "value");
      name = value;
      return this;
    }

    /** Sets how many times a week it is done, 1 to 7. */
    public Builder perWeek(int value) {
      perWeek = value;
      return this;
    }

    /** Sets the least time between two of them, up to 31 days; whole days count. */
    public Builder gap(Duration value) {
      Objects.requireNonNull(value, "value");
      gap = value;
      return this;
    }

    /** Sets the exercises. */
    public Builder content(Content value) {
      Objects.requireNonNull(value, "value");
      content = value;
      return this;
    }

    /** Sets the weekdays to use first, if any are free. */
    public Builder prefer(List<DayOfWeek> value) {
      Objects.requireNonNull(value, "value");
      prefer = List.copyOf(value);
      return this;
    }

    /** Sets the weekdays that it may be on, at least as many as sessions a week; empty for any. */
    public Builder onlyOn(List<DayOfWeek> value) {
      Objects.requireNonNull(value, "value");
      onlyOn = List.copyOf(value);
      return this;
    }

    /** Sets the places that it may be at; empty for any. */
    public Builder onlyAt(Set<String> value) {
      Objects.requireNonNull(value, "value");
      onlyAt = Set.copyOf(value);
      return this;
    }

    /** Sets the least time to another session of the same day; empty if it shares no day. */
    public Builder share(Optional<Duration> value) {
      Objects.requireNonNull(value, "value");
      share = value;
      return this;
    }

    /** Sets other content for some athletes, by athlete name. */
    public Builder only(Map<String, Content> value) {
      Objects.requireNonNull(value, "value");
      only = Map.copyOf(value);
      return this;
    }

    /** Sets who supervises it, in words, instead of the person the plan names. */
    public Builder supervisedBy(String value) {
      Objects.requireNonNull(value, "value");
      return supervisedBy(Optional.of(value));
    }

    /** Sets who supervises it; empty if it is the person the plan names. */
    public Builder supervisedBy(Optional<String> value) {
      Objects.requireNonNull(value, "value");
      supervisedBy = value;
      return this;
    }

    /**
     * Returns the session.
     *
     * @throws IllegalArgumentException if it is not done 1 to 7 times a week, the gap is outside 0
     *     to 31 days or the hours to another session of a day outside 4 to 24, a weekday is
     *     preferred or allowed twice, fewer weekdays are allowed than sessions a week, or the
     *     supervisor's name has no letter and no digit
     */
    public SessionPlan build() {
      return new SessionPlan(
          new Parts(
              name, perWeek, gap, content, prefer, onlyOn, onlyAt, share, only, supervisedBy));
    }
  }
}
