package gripwright.planning.placement;

import gripwright.finding.ModelPath;
import gripwright.grip.FingerSet;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The sessions and tests dated so far, which may be hard. Immutable.
 *
 * @param sessions sessions
 * @param retests tests, which are hard
 * @param withoutLogLimits fingers that a session would work hard without limits from the log, by
 *     its place; they determine its gaps
 */
public record HardWork(
    List<DatedSession> sessions,
    List<DatedRetest> retests,
    Map<ModelPath, FingerSet> withoutLogLimits) {

  /** Copies the parts. */
  public HardWork {
    sessions = List.copyOf(sessions);
    retests = List.copyOf(retests);
    withoutLogLimits = Map.copyOf(withoutLogLimits);
  }

  /** Returns this with further sessions and tests. */
  public HardWork with(List<DatedSession> moreSessions, List<DatedRetest> moreRetests) {
    return new HardWork(
        Stream.concat(sessions.stream(), moreSessions.stream()).toList(),
        Stream.concat(retests.stream(), moreRetests.stream()).toList(),
        withoutLogLimits);
  }

  /**
   * Returns this with the fingers that further sessions would work hard without limits from the
   * log.
   */
  public HardWork with(Map<ModelPath, FingerSet> more) {
    Map<ModelPath, FingerSet> all = new HashMap<>(withoutLogLimits);
    all.putAll(more);
    return new HardWork(sessions, retests, all);
  }
}
