package gripwright.planning;

import gripwright.log.LogEntry;
import gripwright.schedule.DatedSession;
import gripwright.schedule.MissedSession;
import java.util.List;

/**
 * A week after its log was read.
 *
 * @param done what was trained in it, by date
 * @param missed what was planned in it up to the last day that is known, and not trained
 * @param late sessions of the week before that were trained or skipped in this one
 * @param ahead what is planned after that day and not done yet
 * @param open sessions that have no line, and may still find one in the next week
 * @param unplanned lines that no planned session stands for
 */
record ReconciledWeek(
    List<DatedSession> done,
    List<MissedSession> missed,
    List<DatedSession> late,
    List<DatedSession> ahead,
    List<DatedSession> open,
    List<LogEntry.Trained> unplanned) {}
