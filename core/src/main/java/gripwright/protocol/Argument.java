package gripwright.protocol;

import java.time.Duration;

/** What a protocol's parameter can be given. */
public sealed interface Argument {

  /**
   * How often.
   *
   * @param times 1 or more
   */
  record Count(int times) implements Argument {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the count is below 1
     */
    public Count {
      if (times < 1) {
        throw new IllegalArgumentException("not a number of repeats: " + times);
      }
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
     * @throws IllegalArgumentException if the time is negative
     */
    public Time {
      if (time.isNegative()) {
        throw new IllegalArgumentException("not a time: " + time);
      }
    }
  }

  /**
   * How hard.
   *
   * @param level the level
   */
  record AtLevel(Level level) implements Argument {}
}
