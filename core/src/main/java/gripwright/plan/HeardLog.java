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
 * @param changes what the log's lines since the plan began changed in the days ahead, by date
 */
public record HeardLog(
    Optional<LocalDate> until, List<MissedSession> missed, List<LogChange> changes) {

  /** A log that says nothing of the plan's days. */
  public static final HeardLog NOTHING = new HeardLog(Optional.empty(), List.of(), List.of());

  /** Copies the lists. */
  public HeardLog {
    missed = List.copyOf(missed);
    changes = List.copyOf(changes);
  }

  /** Returns this with what the log changed. */
  public HeardLog changing(List<LogChange> found) {
    return new HeardLog(until, missed, found);
  }

  /** Returns what is said of one day: what was missed on it and what changed on it. */
  public HeardLog on(LocalDate day) {
    return new HeardLog(
        until, missedOn(day), changes.stream().filter(c -> c.change().date().equals(day)).toList());
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
