package gripwright.plan;

import gripwright.protocol.Level;
import gripwright.quantity.Range;
import java.time.Duration;
import java.util.Objects;

/**
 * What is done in a planned test.
 *
 * @since 1.0.0
 */
public sealed interface TestKind {

  /**
   * Returns the time of one hold; zero for a hold to failure, whose time is what is tested.
   *
   * @return 0 s or above, up to 3600 s
   */
  Duration holdTime();

  /** Returns what the visitor returns for this kind. */
  <R> R accept(Visitor<R> visitor);

  /**
   * One method for each kind of test.
   *
   * @param <R> the type of result
   */
  interface Visitor<R> {
    /** Visits the greatest load for a set time. */
    R hold(Hold kind);

    /** Visits a load held to failure. */
    R toFailure(ToFailure kind);

    /** Visits repeated all-out holds. */
    R series(Series kind);
  }

  /**
   * The greatest load that can be held for a set time.
   *
   * @param time how long, above 0 s and up to 3600 s
   */
  record Hold(Duration time) implements TestKind {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the time is outside its range
     */
    public Hold {
      Objects.requireNonNull(time, "time");
      Range.HOLD.check(time);
    }

    @Override
    public Duration holdTime() {
      return time;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.hold(this);
    }
  }

  /**
   * A load held until it can be held no longer.
   *
   * @param level the load: a share of the maximum, a load, or body mass
   */
  record ToFailure(Level level) implements TestKind {
    /**
     * Checks the level.
     *
     * @throws IllegalArgumentException if the load follows from how long it could be held
     */
    public ToFailure {
      Objects.requireNonNull(level, "level");
      if (level.byTime()) {
        throw new IllegalArgumentException("a test to failure at " + level);
      }
    }

    @Override
    public Duration holdTime() {
      return Duration.ZERO;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.toFailure(this);
    }
  }

  /**
   * Repeated holds, each all-out.
   *
   * @param holds how many, 1 to 200
   * @param work each hold, above 0 s and up to 3600 s
   * @param rest between holds, 0 s to a day
   */
  record Series(int holds, Duration work, Duration rest) implements TestKind {
    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Series {
      Objects.requireNonNull(work, "work");
      Objects.requireNonNull(rest, "rest");
      Range.REPETITIONS.check(holds);
      Range.HOLD.check(work);
      Range.REST.check(rest);
    }

    @Override
    public Duration holdTime() {
      return work;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.series(this);
    }
  }
}
