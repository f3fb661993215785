package gripwright.rule.view;

import gripwright.history.LogTimeline;
import gripwright.log.LogEntry;
import gripwright.protocol.Hardness;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlanWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Logged days of the athlete that belong to no plan. Before the plan these are sessions, tests and
 * days of hard climbing; during the plan, sessions that match none of its own.
 */
final class LoggedDays {

  private static final int WEEK = 7;

  private final PlanView plan;

  /** Sessions before the plan, by date. */
  final List<SessionView> before = new ArrayList<>();

  /** Sessions during the plan, by date. */
  final List<SessionView> within = new ArrayList<>();

  /**
   * Weeks before the plan with logged sessions, by date. Weeks with a skipped session, or partly
   * covered by another plan, are left out, because their planned load is not known.
   */
  final List<WeekView> weeks = new ArrayList<>();

  LoggedDays(PlanView plan) {
    this.plan = plan;
    LocalDate from = plan.schedule.plan().from();
    List<SessionView> trained = new ArrayList<>();
    for (DatedSession session : plan.schedule.beside()) {
      if (session.date().isBefore(from)) {
        trained.add(SessionView.of(session, plan, null));
      } else {
        within.add(SessionView.of(session, plan, plan.weekOf(session.date())));
      }
    }
    before.addAll(trained);
    before.addAll(tests(from));
    before.addAll(climbing(from));
    before.sort(Comparator.comparing(session -> session.date));
    weeks.addAll(weeks(from, trained));
  }

  private <T extends LogEntry> Stream<T> of(Class<T> kind, LocalDate from) {
    List<T> lines = plan.timeline.log().of(kind);
    plan.evaluation.take(lines.size());
    LocalDate since = from.minusWeeks(LogTimeline.WEEKS_BACK);
    return lines.stream()
        .filter(line -> line.date().isBefore(from) && !line.date().isBefore(since));
  }

  private List<SessionView> tests(LocalDate from) {
    Map<LocalDate, Integer> fingers = new TreeMap<>();
    of(LogEntry.Tested.class, from)
        .filter(line -> !isOfAPlan(line))
        .forEach(
            line ->
                fingers.merge(
                    line.date(),
                    line.test().setup().grip().fingers().bits(),
                    (one, other) -> one | other));
    List<SessionView> tests = new ArrayList<>();
    fingers.forEach((day, bits) -> tests.add(SessionView.tested(day, bits, plan)));
    return tests;
  }

  /** Returns whether this plan, in the week before it, or an earlier one has planned this test. */
  private boolean isOfAPlan(LogEntry.Tested line) {
    return Stream.concat(plan.before.stream(), Stream.of(plan))
        .flatMap(other -> other.schedule.retests().stream())
        .anyMatch(test -> test.date().equals(line.date()) && test.tests(line.test().setup()));
  }

  private List<SessionView> climbing(LocalDate from) {
    return of(LogEntry.Climbed.class, from)
        .filter(line -> line.hard() || line.effort().orElse(0) >= Hardness.EFFORT)
        .map(LogEntry.Climbed::date)
        .distinct()
        .map(day -> SessionView.climbing(day, plan, null))
        .toList();
  }

  private List<WeekView> weeks(LocalDate from, List<SessionView> trained) {
    List<LocalDate> skipped = of(LogEntry.Skipped.class, from).map(LogEntry::date).toList();
    List<WeekView> all = new ArrayList<>();
    for (int back = LogTimeline.WEEKS_BACK; back >= 1; back--) {
      LocalDate first = from.minusWeeks(back);
      LocalDate last = first.plusDays(WEEK - 1);
      List<SessionView> sessions =
          trained.stream().filter(s -> isBetween(s.date, first, last)).toList();
      plan.evaluation.take(trained.size() + skipped.size());
      boolean isWhole =
          skipped.stream().noneMatch(day -> isBetween(day, first, last))
              && plan.before.stream()
                  .map(other -> other.schedule.plan())
                  .noneMatch(other -> !other.to().isBefore(first) && !other.from().isAfter(last));
      if (!sessions.isEmpty() && isWhole) {
        WeekView week =
            new WeekView(
                PlanWeek.builder(1 - back, "", 0, first, plan.path).build(), plan, null, null);
        sessions.forEach(week::add);
        all.add(week);
      }
    }
    return all;
  }

  private static boolean isBetween(LocalDate day, LocalDate first, LocalDate last) {
    return !day.isBefore(first) && !day.isAfter(last);
  }
}
