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

/**
 * A kind of session in a block, with a number of times a week. Immutable.
 *
 * @param name kebab-case, unique in its block
 * @param perWeek times a week, 1 to 7
 * @param gap least time between two of them, up to 31 days; whole days count
 * @param content the exercises
 * @param prefer weekdays to use first, if any are free
 * @param only other content for some athletes, by athlete name
 * @param supervisedBy who supervises it, instead of the person the plan names
 */
public record SessionPlan(
    String name,
    int perWeek,
    Duration gap,
    Content content,
    List<DayOfWeek> prefer,
    Map<String, Content> only,
    Optional<String> supervisedBy) {

  /** The default gap. */
  public static final Duration STANDARD_GAP = Duration.ofHours(48);

  /**
   * The content of a session.
   *
   * @param exercises in the order of training, 1 to 100
   * @param warmUp duration of the warm-up, if this session has its own
   * @param restBetween rest between two exercises, if this session has its own
   */
  public record Content(
      List<Exercise> exercises, Optional<Duration> warmUp, Optional<Duration> restBetween) {
    /**
     * Copies the list and checks the range.
     *
     * @throws IllegalArgumentException if there are not 1 to 100 exercises, or a time is outside
     *     its {@link Range}
     */
    public Content {
      Objects.requireNonNull(exercises, "exercises");
      Objects.requireNonNull(warmUp, "warmUp");
      Objects.requireNonNull(restBetween, "restBetween");
      exercises = List.copyOf(exercises);
      Range.EXERCISES.check(exercises.size());
      warmUp.ifPresent(Range.WARM_UP::check);
      restBetween.ifPresent(Range.REST_BETWEEN::check);
    }

    /** Returns content of these exercises alone. */
    public static Content of(Exercise... exercises) {
      Objects.requireNonNull(exercises, "exercises");
      return new Content(List.of(exercises), Optional.empty(), Optional.empty());
    }
  }

  /**
   * Copies and checks the parts.
   *
   * @throws IllegalArgumentException if it is not done 1 to 7 times a week, the gap is outside 0 to
   *     31 days, a weekday is preferred twice, or the supervisor's name has no letter and no digit
   */
  public SessionPlan {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(gap, "gap");
    Objects.requireNonNull(content, "content");
    Objects.requireNonNull(prefer, "prefer");
    Objects.requireNonNull(only, "only");
    Objects.requireNonNull(supervisedBy, "supervisedBy");
    prefer = List.copyOf(prefer);
    only = Collections.unmodifiableMap(new TreeMap<>(only)); // a fixed order, whatever the input
    Range.PER_WEEK.check(perWeek);
    Range.GAP.check(gap);
    supervisedBy.ifPresent(who -> WrittenReason.check(who, "who supervises session " + name));
    if (Set.copyOf(prefer).size() < prefer.size()) {
      throw new IllegalArgumentException("session " + name + " prefers a weekday twice: " + prefer);
    }
  }

  /**
   * Creates a session without its own supervision.
   *
   * @throws IllegalArgumentException as the other constructor does
   */
  public SessionPlan(
      String name,
      int perWeek,
      Duration gap,
      Content content,
      List<DayOfWeek> prefer,
      Map<String, Content> only) {
    this(name, perWeek, gap, content, prefer, only, Optional.empty());
  }

  /** Returns the exercises of all athletes. */
  List<Exercise> exercises() {
    List<Exercise> all = new ArrayList<>(content.exercises());
    only.values().forEach(own -> all.addAll(own.exercises()));
    return all;
  }

  /** Returns a session with the standard gap. */
  public static SessionPlan of(String name, int perWeek, Exercise... exercises) {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(exercises, "exercises");
    return new SessionPlan(name, perWeek, STANDARD_GAP, Content.of(exercises), List.of(), Map.of());
  }

  /** Returns this session with another gap. */
  public SessionPlan atLeastApart(Duration time) {
    return new SessionPlan(name, perWeek, time, content, prefer, only, supervisedBy);
  }

  /** Returns this session with weekdays to use first. */
  public SessionPlan preferring(DayOfWeek... days) {
    List<DayOfWeek> more = new ArrayList<>(prefer);
    more.addAll(List.of(days));
    return new SessionPlan(name, perWeek, gap, content, more, only, supervisedBy);
  }

  /** Returns this session with other content for one athlete. */
  public SessionPlan onlyFor(String athlete, Content other) {
    Map<String, Content> more = new TreeMap<>(only);
    more.put(athlete, other);
    return new SessionPlan(name, perWeek, gap, content, prefer, more, supervisedBy);
  }

  /**
   * Returns this session with a supervisor.
   *
   * @param who in words
   * @throws IllegalArgumentException if that has no letter and no digit
   */
  public SessionPlan supervisedBy(String who) {
    return new SessionPlan(name, perWeek, gap, content, prefer, only, Optional.of(who));
  }

  /** Returns the content for an athlete. */
  public Content contentFor(String athlete) {
    return only.getOrDefault(athlete, content);
  }
}
