package gripwright.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What a log said of the days of a plan. Immutable.
 *
 * @param until the last day whose sessions are known; what lies after it is planned. Empty if the
 *     log says nothing of the plan's sessions
 * @param missed what was planned on or before that day and not done, by date
 */
public record HeardLog(Optional<LocalDate> until, List<MissedSession> missed) {

  /** A log that says nothing of the plan's days. */
  public static final HeardLog NOTHING = new HeardLog(Optional.empty(), List.of());

  /** Copies the list. */
  public HeardLog {
    missed = List.copyOf(missed);
  }

  /** Tells whether a day is past: what is said of it has happened. */
  public boolean isPast(LocalDate day) {
    return until.isPresent() && !day.isAfter(until.get());
  }

  /** Returns what was missed on a day. */
  public List<MissedSession> missedOn(LocalDate day) {
    return missed.stream().filter(m -> m.planned().date().equals(day)).toList();
  }
}
