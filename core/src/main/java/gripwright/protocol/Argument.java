package gripwright.protocol;

import gripwright.quantity.Range;
import java.time.Duration;
import java.util.Objects;

/** A value of a protocol's parameter. */
public sealed interface Argument {

  /**
   * Returns a count.
   *
   * @param times 1 to 1000
   * @throws IllegalArgumentException if it is outside that range
   */
  static Argument of(int times) {
    return new Count(times);
  }

  /**
   * Returns a time.
   *
   * @param time above 0 s for a hold, 0 s to a day for a rest
   * @throws IllegalArgumentException if it is outside 0 s to a day
   */
  static Argument of(Duration time) {
    return new Time(time);
  }

  /** Returns a level. */
  static Argument of(Level level) {
    return new AtLevel(level);
  }

  /** Returns what the visitor returns for this kind. */
  <R> R accept(Visitor<R> visitor);

  /**
   * One method for each kind of argument.
   *
   * @param <R> the type of result
   */
  interface Visitor<R> {
    /** Visits a count. */
    R count(Count argument);

    /** Visits a time. */
    R time(Time argument);

    /** Visits a level. */
    R atLevel(AtLevel argument);
  }

  /**
   * A count.
   *
   * @param times 1 to 1000
   */
  record Count(int times) implements Argument {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the count is outside 1 to 1000
     */
    public Count {
      Range.REPEATS.check(times);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.count(this);
    }
  }

  /**
   * A time.
   *
   * @param time above 0 s for a hold, 0 s or more for a rest
   */
  record Time(Duration time) implements Argument {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the time is outside 0 s to a day
     */
    public Time {
      Objects.requireNonNull(time, "time");
      Range.REST.check(time); // the range of a hold is checked when the hold is created
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.time(this);
    }
  }

  /**
   * A level.
   *
   * @param level the level
   */
  record AtLevel(Level level) implements Argument {
    /** Refuses null. */
    public AtLevel {
      Objects.requireNonNull(level, "level");
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.atLevel(this);
    }
  }
}
