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
 * What is dated so far and may be hard. Immutable.
 *
 * @param sessions sessions
 * @param retests tests, which are hard
 * @param withoutLogLimits fingers that a session would work hard if the log had limited nothing, by
 *     its place: it keeps its gaps by that
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

  /** Returns this with more. */
  public HardWork with(List<DatedSession> moreSessions, List<DatedRetest> moreRetests) {
    return new HardWork(
        Stream.concat(sessions.stream(), moreSessions.stream()).toList(),
        Stream.concat(retests.stream(), moreRetests.stream()).toList(),
        withoutLogLimits);
  }

  /** Returns this with what more sessions would work hard if the log had limited nothing. */
  public HardWork with(Map<ModelPath, FingerSet> more) {
    Map<ModelPath, FingerSet> all = new HashMap<>(withoutLogLimits);
    all.putAll(more);
    return new HardWork(sessions, retests, all);
  }
}
