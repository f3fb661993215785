package gripwright.schedule;

import gripwright.athlete.Athlete;
import gripwright.plan.Plan;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * What came of a plan for one athlete, by date. Immutable.
 *
 * @param plan what the coach wrote
 * @param athlete for whom
 * @param sessions sessions by date: those of the past as they were done, then those planned
 * @param weeks every week of the plan, in order
 * @param retests dated tests
 * @param climbing hard climbing days that fall in the plan, by date
 * @param missed what was planned in the past and not done
 */
public record Schedule(
    Plan plan,
    Athlete athlete,
    List<DatedSession> sessions,
    List<PlanWeek> weeks,
    List<DatedRetest> retests,
    List<LocalDate> climbing,
    List<MissedSession> missed) {

  /** Copies the lists. */
  public Schedule {
    sessions = List.copyOf(sessions);
    weeks = List.copyOf(weeks);
    retests = List.copyOf(retests);
    climbing = List.copyOf(climbing);
    missed = List.copyOf(missed);
  }

  /** Returns the sessions of a plan week, from 1, by date. */
  public List<DatedSession> sessionsOf(int week) {
    return sessions.stream().filter(s -> s.week() == week).toList();
  }

  /** Returns the sessions of a day. */
  public List<DatedSession> sessionsOn(LocalDate day) {
    return sessions.stream().filter(s -> s.date().equals(day)).toList();
  }

  /** Returns what was missed on a day. */
  public List<MissedSession> missedOn(LocalDate day) {
    return missed.stream().filter(m -> m.planned().date().equals(day)).toList();
  }

  /**
   * Returns what was planned for the athlete, by date: sessions of the past as they were planned,
   * those that were missed with them, and what is still planned.
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
   * Returns this schedule with nothing but one day of it: its sessions, tests, climbing and missed
   * sessions, and the week that it lies in.
   */
  public Schedule on(LocalDate day) {
    return new Schedule(
        plan,
        athlete,
        sessionsOn(day),
        weeks.stream().filter(w -> !day.isBefore(w.from()) && !day.isAfter(w.to())).toList(),
        retests.stream().filter(r -> r.date().equals(day)).toList(),
        climbing.stream().filter(day::equals).toList(),
        missedOn(day));
  }
}
