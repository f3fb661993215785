package gripwright.protocol;

import gripwright.quantity.Range;
import java.time.Duration;
import java.util.Objects;

/** What a protocol's parameter can be given. */
public sealed interface Argument {

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
  }
}
