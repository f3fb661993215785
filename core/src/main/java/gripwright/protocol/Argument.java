package gripwright.protocol;

import gripwright.quantity.Range;
import java.time.Duration;
import java.util.Objects;

/** What a protocol's parameter can be given. */
public sealed interface Argument {

  /** Answers with what a visitor has for this kind. */
  <R> R accept(Visitor<R> visitor);

  /**
   * One answer for each kind of argument.
   *
   * @param <R> what is answered
   */
  interface Visitor<R> {
    /** Answers for how often. */
    R count(Count argument);

    /** Answers for how long. */
    R time(Time argument);

    /** Answers for how hard. */
    R atLevel(AtLevel argument);
  }

  /**
   * How often.
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
   * How long.
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
      Range.REST.check(time); // a hold is checked where it is held
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.time(this);
    }
  }

  /**
   * How hard.
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
