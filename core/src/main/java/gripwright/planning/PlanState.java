package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.finding.FindingList;
import gripwright.planning.placement.HardWork;
import gripwright.planning.progression.ReturnRamp;
import gripwright.schedule.DatedSession;
import gripwright.schedule.MissedSession;
import gripwright.schedule.PlanWeek;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What came of the weeks of a plan so far: all that the next week is planned from. Immutable.
 *
 * @param work sessions and tests so far, week after week
 * @param weeks weeks so far
 * @param past what the log made of the weeks so far
 * @param progress how far the present block has come
 * @param ramp the return after a time without training
 * @param findings what can't be met, week after week; nothing is added to this list
 */
record PlanState(
    HardWork work,
    List<PlanWeek> weeks,
    Past past,
    BlockProgress progress,
    ReturnRamp ramp,
    FindingList findings) {

  PlanState {
    weeks = List.copyOf(weeks);
  }

  /**
   * What the log made of weeks.
   *
   * @param missed what was planned and not done
   * @param open sessions of the last week that have no line and may still find one
   * @param notes what weeks had beside their plan
   */
  record Past(List<MissedSession> missed, List<DatedSession> open, List<LogFindings.Note> notes) {

    private static final Past NOTHING = new Past(List.of(), List.of(), List.of());

    Past {
      missed = List.copyOf(missed);
      open = List.copyOf(open);
      notes = List.copyOf(notes);
    }
  }

  /** Returns the state before the first week. */
  static PlanState start(Athlete athlete, LocalDate from) {
    return new PlanState(
        new HardWork(List.of(), List.of(), Map.of()),
        List.of(),
        Past.NOTHING,
        BlockProgress.start(from),
        ReturnRamp.none(athlete),
        new FindingList());
  }

  /** Returns this state where another block begins. */
  PlanState beginning(LocalDate from) {
    return new PlanState(work, weeks, past, BlockProgress.start(from), ramp, findings);
  }

  /** Returns this state with more findings. */
  PlanState with(FindingList more) {
    return new PlanState(work, weeks, past, progress, ramp, findings.plus(more));
  }

  /** Returns the last day with a session. */
  Optional<LocalDate> lastSession() {
    return work.sessions().stream().map(DatedSession::date).max(Comparator.naturalOrder());
  }

  /** Returns the last day of each session's name. */
  static Map<String, LocalDate> lastOfName(List<DatedSession> sessions) {
    Map<String, LocalDate> last = new HashMap<>();
    for (DatedSession session : sessions) {
      last.merge(session.name(), session.date(), (one, other) -> one.isAfter(other) ? one : other);
    }
    return last;
  }
}
