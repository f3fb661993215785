package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.finding.FindingList;
import gripwright.plan.Plan;
import gripwright.planning.load.Rise;
import gripwright.planning.placement.HardWork;
import gripwright.planning.progression.ReturnRamp;
import gripwright.schedule.DatedSession;
import gripwright.schedule.MissedSession;
import gripwright.schedule.NotMadeUp;
import gripwright.schedule.PlanWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The result of the weeks of a plan so far: all that the next week is planned from. Immutable.
 *
 * @param work sessions and tests so far, week after week
 * @param weeks weeks so far
 * @param past what the log made of the weeks so far
 * @param progress how far the present block has come
 * @param ramp the return after a time without training
 * @param rise in which weeks loads may follow a higher test
 * @param findings what can't be met, week after week; nothing is added to this list
 */
record PlanState(
    HardWork work,
    List<PlanWeek> weeks,
    Past past,
    BlockProgress progress,
    ReturnRamp ramp,
    Rise rise,
    FindingList findings) {

  PlanState {
    weeks = List.copyOf(weeks);
  }

  /**
   * What the log made of weeks.
   *
   * @param missed what was planned and not done
   * @param open sessions of the last week that have no line and may still find one
   * @param notes the differences of weeks from their plan
   * @param notMadeUp what lost its day to the log
   */
  record Past(
      List<MissedSession> missed,
      List<DatedSession> open,
      List<LogFindings.Note> notes,
      List<NotMadeUp> notMadeUp) {

    private static final Past NOTHING = new Past(List.of(), List.of(), List.of(), List.of());

    Past {
      missed = List.copyOf(missed);
      open = List.copyOf(open);
      notes = List.copyOf(notes);
      notMadeUp = List.copyOf(notMadeUp);
    }

    /** Returns this with more sessions that lost their day. */
    Past withNotMadeUp(List<NotMadeUp> more) {
      List<NotMadeUp> all = new ArrayList<>(notMadeUp);
      all.addAll(more);
      return new Past(missed, open, notes, all);
    }
  }

  /** Returns the state before the first week. */
  static PlanState start(Athlete athlete, Plan plan) {
    return new PlanState(
        new HardWork(List.of(), List.of(), Map.of()),
        List.of(),
        Past.NOTHING,
        BlockProgress.start(plan.from()),
        ReturnRamp.none(athlete),
        Rise.of(plan.weeklyRise().orElse(Plan.STANDARD_WEEKLY_RISE)),
        new FindingList());
  }

  /** Returns this state where another block begins. */
  PlanState beginning(LocalDate from) {
    return new PlanState(work, weeks, past, BlockProgress.start(from), ramp, rise, findings);
  }

  /** Returns this state with other work. */
  PlanState with(HardWork other) {
    return new PlanState(other, weeks, past, progress, ramp, rise, findings);
  }

  /** Returns this state with more findings. */
  PlanState with(FindingList more) {
    return new PlanState(work, weeks, past, progress, ramp, rise, findings.plus(more));
  }

  /** Returns the last day with a session. */
  Optional<LocalDate> lastSession() {
    return work.sessions().stream().map(DatedSession::date).max(Comparator.naturalOrder());
  }

  /** Returns a list with one more. */
  static <T> List<T> append(List<T> list, T one) {
    List<T> longer = new ArrayList<>(list);
    longer.add(one);
    return longer;
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
