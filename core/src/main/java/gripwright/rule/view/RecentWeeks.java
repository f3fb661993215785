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
 * The weeks of an athlete, over the plans that follow each other and what the log alone knows, each
 * beside the last three before it that are whole: not eased, nothing missed in them, nothing that
 * lost its day to the log, and none cut short by time away. A session of which less was done than
 * planned counts as it was planned: the plan that goes on unchanged does not rise by it.
 */
final class RecentWeeks {

  private static final int RECENT = 3;

  private static final double SLACK = 1e-9;

  /** A week trains heavily that has work at 60 % or more on so many days; our own number. */
  private static final int HEAVY_DAYS = 2;

  /** A week is eased that has at most this share of the load before it; our own number. */
  private static final double EASED = 0.7;

  private final PlanView plan;
  private final Map<WeekView, Compared> weeks = new HashMap<>();
  private int longestRow;

  /** A week and those that it is compared with, the latest first. */
  record Compared(TrainedWeek week, List<TrainedWeek> recent, boolean inBlock) {}

  RecentWeeks(PlanView plan) {
    this.plan = plan;
    compareAll();
  }

  /** Returns a week of the plan with those before it; null where nothing is trained in it. */
  @Nullable Compared of(WeekView view) {
    return weeks.get(view);
  }

  /** Returns the most weeks in a row of heavy training that the plan is part of. */
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

  /** Returns their weeks, and those that the log alone knows, by date. */
  private List<WeekView> following() {
    return Stream.concat(plans().flatMap(some -> some.weeks.stream()), plan.logged.weeks.stream())
        .sorted(Comparator.comparing(view -> view.week.from()))
        .toList();
  }

  /** Returns the weeks that have less than was planned: a session was missed, or lost its day. */
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
   * Tells whether a week goes on training heavily; one that is eased does not. Our own measure: a
   * week is eased that has less load, and no higher level, than those before it.
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
