package gripwright.planning;

import gripwright.log.LogEntry;
import gripwright.schedule.DatedSession;
import gripwright.schedule.MissedSession;
import java.util.List;

/**
 * A week after its log was read.
 *
 * @param done sessions trained in it, by date
 * @param missed sessions planned up to the last known day and not trained
 * @param late sessions of the week before that were trained or skipped in this one
 * @param ahead sessions planned after that day and not done yet
 * @param open sessions without a line, which may still get one in the next week
 * @param unplanned lines without a planned session
 */
record ReconciledWeek(
    List<DatedSession> done,
    List<MissedSession> missed,
    List<DatedSession> late,
    List<DatedSession> ahead,
    List<DatedSession> open,
    List<LogEntry.Trained> unplanned) {

  /** Returns a week without known sessions: all planned sessions lie ahead. */
  static ReconciledWeek ahead(List<DatedSession> planned, List<DatedSession> open) {
    return new ReconciledWeek(
        List.of(),
        List.of(),
        List.of(),
        planned.stream().sorted(DatedSession.IN_ORDER).toList(),
        open,
        List.of());
  }
}
