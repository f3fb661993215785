package gripwright.schedule;

import gripwright.athlete.Athlete;
import gripwright.plan.Plan;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The compiled sessions of a plan for one athlete, by date. Immutable.
 *
 * @param plan the plan as written
 * @param athlete the athlete
 * @param sessions sessions by date: past ones as trained, then planned ones
 * @param weeks every week of the plan, in order
 * @param retests dated tests
 * @param climbing hard climbing days that fall in the plan, by date
 * @param missed past planned sessions that were not done
 * @param notMadeUp sessions that lost their day to the log and got no other
 * @param beside logged sessions that are in no plan, from twelve weeks before this plan to its end;
 *     they belong to no block, and their week is 0
 * @param withoutLog the days of the sessions as planned without the log; empty if nothing was
 *     logged during the plan
 */
public record Schedule(
    Plan plan,
    Athlete athlete,
    List<DatedSession> sessions,
    List<PlanWeek> weeks,
    List<DatedRetest> retests,
    List<LocalDate> climbing,
    List<MissedSession> missed,
    List<NotMadeUp> notMadeUp,
    List<DatedSession> beside,
    Optional<List<LocalDate>> withoutLog) {

  /** Copies the lists. */
  public Schedule {
    sessions = List.copyOf(sessions);
    weeks = List.copyOf(weeks);
    retests = List.copyOf(retests);
    climbing = List.copyOf(climbing);
    missed = List.copyOf(missed);
    notMadeUp = List.copyOf(notMadeUp);
    beside = List.copyOf(beside);
    withoutLog = withoutLog.map(List::copyOf);
  }

  /** Returns the sessions of a plan week, from 1, by date. */
  public List<DatedSession> sessionsOf(int week) {
    return sessions.stream().filter(s -> s.week() == week).toList();
  }

  /** Returns the sessions of a day. */
  public List<DatedSession> sessionsOn(LocalDate day) {
    return sessions.stream().filter(s -> s.date().equals(day)).toList();
  }

  /** Returns this schedule with the planned days of the schedule without the log. */
  public Schedule besides(Schedule other) {
    return new Schedule(
        plan,
        athlete,
        sessions,
        weeks,
        retests,
        climbing,
        missed,
        notMadeUp,
        beside,
        Optional.of(other.sessions.stream().map(DatedSession::date).toList()));
  }

  /**
   * Returns the planned days of the sessions, without the log if that is known. A day with several
   * sessions is listed several times.
   */
  public List<LocalDate> plannedDays() {
    return withoutLog.orElseGet(() -> planned().stream().map(DatedSession::date).toList());
  }

  /** Returns the sessions missed on a day. */
  public List<MissedSession> missedOn(LocalDate day) {
    return missed.stream().filter(m -> m.planned().date().equals(day)).toList();
  }

  /**
   * Returns the planned sessions, by date: past ones as they were planned, including missed ones,
   * and future ones.
   */
  public List<DatedSession> planned() {
    return Stream.concat(
            sessions.stream()
                .flatMap(
                    s ->
                        s.happened().isEmpty()
                            ? Stream.of(s)
                            : s.happened().get().planned().stream()),
            missed.stream().map(MissedSession::planned))
        .sorted(Comparator.comparing(DatedSession::date).thenComparing(DatedSession::name))
        .toList();
  }

  /**
   * Returns this schedule reduced to one day: its sessions, tests, climbing and missed sessions,
   * and its week.
   */
  public Schedule on(LocalDate day) {
    return new Schedule(
        plan,
        athlete,
        sessionsOn(day),
        weeks.stream().filter(w -> !day.isBefore(w.from()) && !day.isAfter(w.to())).toList(),
        retests.stream().filter(r -> r.date().equals(day)).toList(),
        climbing.stream().filter(day::equals).toList(),
        missedOn(day),
        List.of(),
        beside.stream().filter(s -> s.date().equals(day)).toList(),
        withoutLog.map(days -> days.stream().filter(day::equals).toList()));
  }
}
