package gripwright.schedule;

import java.util.Optional;

/**
 * How a session of the past was trained, as logged. Immutable.
 *
 * @param kind how the session was done
 * @param planned the session as it was planned, with its day and loads; empty if it was not
 * @param entry position of its line in the log, from 0
 */
public record Happened(Kind kind, Optional<DatedSession> planned, int entry) {

  /**
   * Checks the position.
   *
   * @throws IllegalArgumentException if it is negative
   */
  public Happened {
    if (entry < 0) {
      throw new IllegalArgumentException("entry " + entry + " is less than 0");
    }
  }

  /** How a session was done. */
  public enum Kind {
    /** All of it was done: every exercise, in all its sets. */
    DONE,
    /** Sets or exercises are missing. */
    IN_PART,
    /** It was trained but not planned. */
    UNPLANNED
  }
}
