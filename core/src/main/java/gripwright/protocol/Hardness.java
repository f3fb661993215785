package gripwright.protocol;

import java.util.Objects;

/**
 * Decides whether a hold is hard. Hard work keeps a gap of days from other hard work on the same
 * fingers, and several built-in rules depend on it.
 */
public final class Hardness {

  /** The share of the maximum from which a hold is hard; common practice. */
  public static final double SHARE_OF_MAX = 0.8;

  /** The predicted reserve, in seconds, up to which a hold is hard; common practice. */
  public static final double RESERVE_SECONDS = 3;

  /** The effort from which a hold is hard, of 10; common practice. */
  public static final double EFFORT = 8;

  private Hardness() {}

  /** Returns whether a hold is hard as written: to failure, or by its level. */
  public static boolean isWritten(Scheme.Hold hold) {
    Objects.requireNonNull(hold, "hold");
    return hold.extent() == Extent.TO_FAILURE || isWritten(hold.level());
  }

  /** Returns whether a level is hard as written, without knowledge of the maximum. */
  public static boolean isWritten(Level level) {
    Objects.requireNonNull(level, "level");
    return (level instanceof Level.Effort effort && effort.outOfTen() >= EFFORT)
        || (level instanceof Level.Reserve reserve
            && reserve.time().toNanos() / 1e9 <= RESERVE_SECONDS);
  }
}
