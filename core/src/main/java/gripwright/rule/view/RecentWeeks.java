package gripwright.rule.view;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The weeks of an athlete, across consecutive plans and weeks only known from the log, each with
 * the last three complete weeks before it. A complete week is not eased, not shortened by time
 * away, and no session of it was missed or displaced by the log. A session that was cut short
 * counts as planned, so that continuing an unchanged plan is no rise.
 */
final class RecentWeeks {

  private static final int RECENT = 3;

  private static final double SLACK = 1e-9;

  /**
   * Minimum number of days at 60 % or more in a week of heavy training; the library's own choice.
   */
  private static final int HEAVY_DAYS = 2;

  /** Maximum load of an eased week, as a share of the load before it; the library's own choice. */
  private static final double EASED = 0.7;

  private final PlanView plan;
  private final Map<WeekView, Compared> weeks = new HashMap<>();
  private int longestRow;

  /** A week and the weeks that it is compared with, the latest first. */
  record Compared(TrainedWeek week, List<TrainedWeek> recent, boolean inBlock) {}

  RecentWeeks(PlanView plan) {
    this.plan = plan;
    compareAll();
  }

  /** Returns a week of the plan with those before it; null if it has no training. */
  @Nullable Compared of(WeekView view) {
    return weeks.get(view);
  }

  /** Returns the longest row of weeks of heavy training that includes a week of the plan. */
  double longestRow() {
    return longestRow;
  }

  private void compareAll() {
    List<TrainedWeek> recent = new ArrayList<>();
    List<TrainedWeek> uneased = new ArrayList<>();
    int row = 0;
    LocalDate next = null;
    Set<WeekView> incomplete = incomplete();
    for (WeekView view : following()) {
      TrainedWeek week = new TrainedWeek(view, session -> session.exercises);
      plan.evaluation.take(1 + view.exercises.size());
      row = next != null && view.week.from().isAfter(next.plusDays(6)) ? 0 : row;
      next = view.week.to().plusDays(1);
      row = trainsOn(week, uneased) ? row + 1 : 0;
      if (!view.sessions.isEmpty()) {
        if (view.plan == plan && view.block != null) {
          boolean inBlock = recent.stream().anyMatch(r -> r.view.block == view.block);
          weeks.put(view, new Compared(week, List.copyOf(recent), inBlock));
          longestRow = Math.max(longestRow, row);
        }
        if (isWhole(view) && !incomplete.contains(view)) {
          keep(
              recent,
              view.wasPlanned() ? new TrainedWeek(view, SessionView::atLeastPlanned) : week);
        }
      }
    }
  }

  private static void keep(List<TrainedWeek> recent, TrainedWeek week) {
    recent.add(0, week);
    if (recent.size() > RECENT) {
      recent.remove(RECENT);
    }
  }

  /** Returns the plans that ended before this one began, by date, and this one. */
  private Stream<PlanView> plans() {
    return Stream.concat(
        plan.before.stream()
            .filter(other -> other.schedule.plan().to().isBefore(plan.schedule.plan().from())),
        Stream.of(plan));
  }

  /** Returns the weeks of these plans and those only known from the log, by date. */
  private List<WeekView> following() {
    return Stream.concat(plans().flatMap(some -> some.weeks.stream()), plan.logged.weeks.stream())
        .sorted(Comparator.comparing(view -> view.week.from()))
        .toList();
  }

  /** Returns the weeks in which a session was missed or lost its day. */
  private Set<WeekView> incomplete() {
    Set<WeekView> incomplete = new HashSet<>();
    plans()
        .forEach(
            some -> {
              Set<Integer> numbers = new HashSet<>();
              some.schedule.missed().forEach(missed -> numbers.add(missed.planned().week()));
              some.schedule.notMadeUp().forEach(lost -> numbers.add(lost.week()));
              some.weeks.stream()
                  .filter(view -> numbers.contains(view.number()))
                  .forEach(incomplete::add);
            });
    return incomplete;
  }

  private static boolean isWhole(WeekView view) {
    return !view.week.eased()
        && !(view.sessions.size() < view.plannedSessions()
            && days(view).anyMatch(view.plan.schedule.athlete()::isAway));
  }

  private static Stream<LocalDate> days(WeekView view) {
    return view.week.from().datesUntil(view.week.to().plusDays(1));
  }

  /**
   * Returns whether a week continues heavy training. A week with less load and no higher level than
   * those before it is eased and does not; this measure is the library's own choice.
   */
  private boolean trainsOn(TrainedWeek week, List<TrainedWeek> uneased) {
    if (week.view.sessions.isEmpty()) {
      return false;
    }
    boolean eased =
        !uneased.isEmpty()
            && week.load <= EASED * most(uneased, w -> w.load) + SLACK
            && week.level <= most(uneased, w -> w.level) + SLACK;
    if (eased) {
      return false;
    }
    keep(uneased, week);
    plan.evaluation.take(7);
    return days(week.view).filter(day -> plan.athleteDays().on(day).reaches(HeldWork.HEAVY)).count()
        >= HEAVY_DAYS;
  }

  private static double most(List<TrainedWeek> weeks, ToDoubleFunction<TrainedWeek> number) {
    return weeks.stream().mapToDouble(number).max().orElse(Double.NaN);
  }
}
