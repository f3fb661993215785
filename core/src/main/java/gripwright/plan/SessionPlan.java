package gripwright.plan;

import java.time.DayOfWeek;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A kind of session in a block, done so many times a week. Immutable.
 *
 * @param name kebab-case, unique in its block
 * @param perWeek times a week, 1 to 7
 * @param gap least time between two of them; whole days count
 * @param content what is done
 * @param prefer weekdays to use first, if any are free
 * @param only other content for some athletes, by athlete name
 */
public record SessionPlan(
    String name,
    int perWeek,
    Duration gap,
    Content content,
    List<DayOfWeek> prefer,
    Map<String, Content> only) {

  /** The gap where none is written. */
  public static final Duration STANDARD_GAP = Duration.ofHours(48);

  /**
   * What is done in a session.
   *
   * @param exercises in the order of training
   * @param warmUp how long the warm-up is, where this session says
   * @param restBetween rest between two exercises, where this session says
   */
  public record Content(
      List<Exercise> exercises, Optional<Duration> warmUp, Optional<Duration> restBetween) {
    /** Copies the list. */
    public Content {
      exercises = List.copyOf(exercises);
    }

    /** Returns content of these exercises alone. */
    public static Content of(Exercise... exercises) {
      return new Content(List.of(exercises), Optional.empty(), Optional.empty());
    }
  }

  /**
   * Copies and checks the parts.
   *
   * @throws IllegalArgumentException if it is not done 1 to 7 times a week
   */
  public SessionPlan {
    prefer = List.copyOf(prefer);
    only = Collections.unmodifiableMap(new TreeMap<>(only)); // one order, everywhere
    if (perWeek < 1 || perWeek > 7) {
      throw new IllegalArgumentException("session " + name + ": " + perWeek + " per week");
    }
  }

  /** Returns a session with the standard gap. */
  public static SessionPlan of(String name, int perWeek, Exercise... exercises) {
    return new SessionPlan(name, perWeek, STANDARD_GAP, Content.of(exercises), List.of(), Map.of());
  }

  /** Returns this session with another gap. */
  public SessionPlan atLeastApart(Duration time) {
    return new SessionPlan(name, perWeek, time, content, prefer, only);
  }

  /** Returns this session with weekdays to use first. */
  public SessionPlan preferring(DayOfWeek... days) {
    List<DayOfWeek> more = new ArrayList<>(prefer);
    more.addAll(List.of(days));
    return new SessionPlan(name, perWeek, gap, content, more, only);
  }

  /** Returns this session with other content for one athlete. */
  public SessionPlan onlyFor(String athlete, Content other) {
    Map<String, Content> more = new TreeMap<>(only);
    more.put(athlete, other);
    return new SessionPlan(name, perWeek, gap, content, prefer, more);
  }

  /** Returns what an athlete does in this session. */
  public Content contentFor(String athlete) {
    return only.getOrDefault(athlete, content);
  }
}
