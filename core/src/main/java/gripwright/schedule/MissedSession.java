package gripwright.schedule;

import java.util.Optional;

/**
 * A past session that was planned but not done, according to the log. Immutable.
 *
 * @param planned the session as it was planned
 * @param kind whether the log says so or has no line
 * @param note the reason, in the athlete's words
 */
public record MissedSession(DatedSession planned, Kind kind, Optional<String> note) {

  /** How it is known that a session was not done. */
  public enum Kind {
    /** The log has a line that it was skipped. */
    SKIPPED,
    /** The log continues after it without a line for it. */
    NOT_LOGGED
  }
}
