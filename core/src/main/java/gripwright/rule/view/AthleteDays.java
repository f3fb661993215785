package gripwright.rule.view;

import gripwright.athlete.Athlete;
import gripwright.log.LogEntry;
import gripwright.protocol.Hardness;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.ToIntBiFunction;
import java.util.stream.Stream;

/** The days of an athlete over all plans, because all of them strain the same body. */
final class AthleteDays {

  private static final int WINDOW = 7;

  private final PlanView plan;
  private final Map<LocalDate, DayWork> days = new HashMap<>();
  private final NavigableSet<LocalDate> freshOn = new TreeSet<>();

  /** Logged climbing time by day. */
  private final Map<LocalDate, Duration> logged = new HashMap<>();

  private final Set<LocalDate> loggedHard = new HashSet<>();

  AthleteDays(PlanView plan) {
    this.plan = plan;
    Stream.concat(plan.before.stream(), Stream.of(plan)).forEach(this::add);
    plan.logged.within.forEach(session -> add(session, false));
    plan.logged.before.forEach(session -> add(session, false));
    plan.timeline.log().of(LogEntry.Tested.class).forEach(test -> day(test.date()).test());
    for (LogEntry.Climbed climbed : plan.timeline.log().of(LogEntry.Climbed.class)) {
      logged.merge(climbed.date(), climbed.time(), Duration::plus);
      if (climbed.hard() || climbed.effort().orElse(0) >= Hardness.EFFORT) {
        loggedHard.add(climbed.date());
      }
    }
  }

  private void add(PlanView some) {
    some.events.forEach(event -> add(event, some == plan));
    some.schedule.plannedDays().forEach(day -> day(day).plan(some == plan));
    some.schedule.plan().towards().ifPresent(goal -> freshOn.add(goal.date()));
  }

  private void add(SessionView event, boolean own) {
    plan.evaluation.take(1 + event.exercises.size() + event.tests.size());
    DayWork day = day(event.date);
    event.exercises.forEach(exercise -> day.add(exercise, own));
    event.tests.forEach(test -> day.add(test, own));
    switch (event.what) {
      case CLIMBING -> day.climb(own);
      case TRAINING -> day.train(own);
      case RETEST -> {}
    }
  }

  private DayWork day(LocalDate date) {
    return days.computeIfAbsent(date, d -> new DayWork());
  }

  DayWork on(LocalDate day) {
    return days.getOrDefault(day, DayWork.NOTHING);
  }

  /**
   * Returns the highest number of counted days in any seven consecutive days that include a day. Of
   * this plan only days up to it count, because later days are checked by themselves; of earlier
   * plans all days count.
   *
   * @param counts selects the days up to the given one
   * @param othersCount selects the days after it, by the work of earlier plans
   */
  private int mostDays(LocalDate day, Predicate<DayWork> counts, Predicate<DayWork> othersCount) {
    return mostInWindow(day, (work, later) -> (later ? othersCount : counts).test(work) ? 1 : 0);
  }

  /** Returns the highest sum over any seven consecutive days that include a day. */
  private int mostInWindow(LocalDate day, ToIntBiFunction<DayWork, Boolean> number) {
    plan.evaluation.take(2 * WINDOW);
    int sum = 0;
    for (int back = 0; back < WINDOW; back++) {
      sum += number.applyAsInt(on(day.minusDays(back)), false);
    }
    int most = sum;
    for (int later = 1; later < WINDOW; later++) {
      sum += number.applyAsInt(on(day.plusDays(later)), true);
      sum -= number.applyAsInt(on(day.plusDays(later - WINDOW)), false);
      most = Math.max(most, sum);
    }
    return most;
  }

  /**
   * Returns the highest number of days with work at a level or above in any seven that include a
   * day.
   */
  double daysAt(double level, LocalDate day) {
    return mostDays(day, work -> work.reaches(level), work -> work.othersReach(level));
  }

  /** Returns the lowest number of rest days in any seven that include a day. */
  double restDays(LocalDate day) {
    return WINDOW - mostDays(day, work -> !work.rests(), work -> !work.othersRest());
  }

  /** Returns the highest number of sessions in any seven days that include a day. */
  double sessionsInWindow(LocalDate day) {
    return mostInWindow(day, (work, later) -> work.otherSessions() + (later ? 0 : work.sessions()));
  }

  /** Returns the same number from the planned days of the sessions, without the log. */
  double plannedInWindow(LocalDate day) {
    return mostInWindow(
        day, (work, later) -> work.otherPlannedSessions() + (later ? 0 : work.plannedSessions()));
  }

  /** Returns the days until the next day to be fresh on; NaN if there is none. */
  double daysToFresh(LocalDate day) {
    LocalDate next = freshOn.ceiling(day);
    return next == null ? Double.NaN : next.toEpochDay() - day.toEpochDay();
  }

  /** Returns the logged climbing time of a day, or else the usual one of its weekday. */
  Duration climbing(LocalDate day) {
    Duration climbed = logged.get(day);
    if (climbed != null) {
      return climbed;
    }
    Athlete athlete = plan.schedule.athlete();
    return athlete.isAway(day)
        ? Duration.ZERO
        : usual(athlete, false).getOrDefault(day.getDayOfWeek(), Duration.ZERO);
  }

  private static Map<DayOfWeek, Duration> usual(Athlete athlete, boolean hardAlone) {
    Map<DayOfWeek, Duration> usual = new EnumMap<>(DayOfWeek.class);
    athlete.climbing().stream()
        .filter(day -> day.hard() || !hardAlone)
        .forEach(day -> usual.merge(day.day(), day.time(), Duration::plus));
    return usual;
  }

  /** Returns the number of weekdays with usual hard climbing. */
  static double usualHardDays(Athlete athlete) {
    return usual(athlete, true).size();
  }

  /** Returns the longest usual climbing of a weekday with hard climbing, in seconds. */
  static double longestUsual(Athlete athlete) {
    return longest(usual(athlete, true).values().stream());
  }

  /** Returns the longest climbing time of a day, usual or logged during the plan, in seconds. */
  double longestClimbing() {
    return longest(
        Stream.concat(
            usual(plan.schedule.athlete(), false).values().stream(),
            logged.entrySet().stream().filter(e -> inPlan(e.getKey())).map(Map.Entry::getValue)));
  }

  private static double longest(Stream<Duration> times) {
    return times.mapToDouble(Duration::toSeconds).max().orElse(0);
  }

  private boolean inPlan(LocalDate day) {
    return !day.isBefore(plan.schedule.plan().from()) && !day.isAfter(plan.schedule.plan().to());
  }

  /**
   * Returns the highest number of logged days of hard climbing in any seven that end during the
   * plan.
   */
  double loggedHardDays() {
    List<LocalDate> last = loggedHard.stream().filter(this::inPlan).toList();
    plan.evaluation.take((long) WINDOW * last.size());
    return last.stream()
        .mapToLong(
            day ->
                day.minusDays(WINDOW - 1)
                    .datesUntil(day.plusDays(1))
                    .filter(loggedHard::contains)
                    .count())
        .max()
        .orElse(0);
  }
}
