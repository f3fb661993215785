package gripwright.plan;

import gripwright.log.LogEntry;
import java.util.Optional;

/**
 * How a session of the past was trained, as the log tells. Immutable.
 *
 * @param kind what became of the plan for it
 * @param planned the session as it was planned, with its day and loads; empty if it was not
 * @param logged what was logged of it
 */
public record Happened(Kind kind, Optional<DatedSession> planned, LogEntry.Trained logged) {

  /** What became of the plan for a session. */
  public enum Kind {
    /** All of it was done: every exercise, in all its sets. */
    DONE("done"),
    /** Sets or exercises are missing. */
    IN_PART("done in part"),
    /** It was trained and not planned. */
    UNPLANNED("not planned");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** Returns it in words, such as {@code done in part}. */
    public String words() {
      return words;
    }
  }
}
