package gripwright.schedule;

import java.util.Optional;

/**
 * A session of the past that was planned and not done, as the log tells. Immutable.
 *
 * @param planned the session as it was planned
 * @param kind whether the log says so or says nothing
 * @param note why, in the athlete's words
 */
public record MissedSession(DatedSession planned, Kind kind, Optional<String> note) {

  /** How it is known that a session was not done. */
  public enum Kind {
    /** The log says that it was skipped. */
    SKIPPED,
    /** The log goes on after it and has no line for it. */
    NOT_LOGGED
  }
}
