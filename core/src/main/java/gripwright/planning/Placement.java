package gripwright.planning;

import gripwright.grip.FingerSet;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Finds the days of a week for its sessions.
 *
 * <p>Every way to place them is looked at, in a fixed order, so the answer is the best there is and
 * always the same; a week with very many sessions is given up after a fixed number of tries, with
 * the best way found by then. Best means, in this order: most sessions placed, preferred days used,
 * no two sessions on one day, most even gaps, earliest days.
 */
final class Placement {

  /** Least days between hard days on the same fingers; 48 h. */
  static final int HARD_GAP_DAYS = 2;

  /**
   * A session that wants a day.
   *
   * @param name its name; sessions of one name keep their gap
   * @param minutes how long it takes
   * @param gap least time between two of its name
   * @param hardFingers fingers it works hard, if any
   * @param prefer weekdays to use first
   */
  record Request(
      String name,
      int minutes,
      Duration gap,
      Optional<FingerSet> hardFingers,
      List<DayOfWeek> prefer) {

    /** Returns the least whole days between two dates that the gap allows. */
    int gapDays() {
      return (int) Math.max(1, (gap.toMinutes() + 24 * 60 - 1) / (24 * 60));
    }
  }

  /**
   * Something hard on a day.
   *
   * @param date the day
   * @param fingers the fingers it works
   * @param what in words, such as {@code hard climbing}
   */
  record HardDay(LocalDate date, FingerSet fingers, String what) {}

  /**
   * What is fixed before a week is placed.
   *
   * @param first first day of the week
   * @param available minutes on a day
   * @param hardDays hard days near the week, that of other weeks included
   * @param lastOfName the last day of each session's name before this week
   */
  record Week(
      LocalDate first,
      Function<LocalDate, Duration> available,
      List<HardDay> hardDays,
      Map<String, LocalDate> lastOfName) {

    /** Copies what may change. */
    Week {
      hardDays = List.copyOf(hardDays);
      lastOfName = Map.copyOf(lastOfName);
    }
  }

  /** Tries after which the best way found so far is kept; far more than any usual week needs. */
  private static final int MOST_TRIES = 200_000;

  private static final int DAYS = 7;
  private static final int UNPLACED = -1;

  private final Week week;
  private final List<Request> requests;
  private final boolean[][] open;
  private int[] best = new int[0];
  private long[] bestCost = new long[0];
  private int tries;

  private Placement(Week week, List<Request> requests) {
    this.week = week;
    this.requests = requests;
    this.open = new boolean[requests.size()][DAYS];
    for (int r = 0; r < requests.size(); r++) {
      for (int d = 0; d < DAYS; d++) {
        open[r][d] = obstacle(week, requests.get(r), week.first().plusDays(d)).isEmpty();
      }
    }
  }

  /**
   * Places sessions.
   *
   * @param week the week and what is fixed in it
   * @param requests sessions in any order; those of one name are alike
   * @return a day for each request, in the order given; empty where there was none left
   */
  static List<Optional<LocalDate>> place(Week week, List<Request> requests) {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < requests.size(); i++) {
      order.add(i);
    }
    order.sort(Comparator.comparing(i -> requests.get(i).name()));
    Placement placement = new Placement(week, order.stream().map(requests::get).toList());
    int[] days = placement.search();
    List<Optional<LocalDate>> dates = new ArrayList<>();
    for (int i = 0; i < requests.size(); i++) {
      dates.add(Optional.empty());
    }
    for (int i = 0; i < order.size(); i++) {
      if (days[i] != UNPLACED) {
        dates.set(order.get(i), Optional.of(week.first().plusDays(days[i])));
      }
    }
    return dates;
  }

  /** Tells why a session can't be on a day, whatever else is placed; empty if it can. */
  static Optional<String> obstacle(Week week, Request request, LocalDate day) {
    long minutes = week.available().apply(day).toMinutes();
    if (minutes == 0) {
      return Optional.of("no time");
    }
    if (minutes < request.minutes()) {
      return Optional.of(minutes + " min is too short for " + request.minutes() + " min");
    }
    LocalDate last = week.lastOfName().get(request.name());
    if (last != null && days(last, day) < request.gapDays()) {
      return Optional.of(
          "the gap of " + request.gap().toHours() + " h to " + last + " is not kept");
    }
    if (request.hardFingers().isPresent()) {
      for (HardDay hard : week.hardDays()) {
        if (hard.fingers().overlaps(request.hardFingers().get())
            && days(hard.date(), day) < HARD_GAP_DAYS) {
          return Optional.of("less than 48 h from " + hard.what() + " on " + hard.date());
        }
      }
    }
    return Optional.empty();
  }

  private static long days(LocalDate one, LocalDate other) {
    return Math.abs(ChronoUnit.DAYS.between(one, other));
  }

  private int[] search() {
    int[] days = new int[requests.size()];
    best = new int[requests.size()];
    java.util.Arrays.fill(best, UNPLACED);
    bestCost = cost(best);
    extend(days, 0, 0);
    return best;
  }

  private void extend(int[] days, int next, long unplaced) {
    if (unplaced > bestCost[0] || ++tries > MOST_TRIES) {
      return;
    }
    if (next == requests.size()) {
      long[] cost = cost(days);
      if (java.util.Arrays.compare(cost, bestCost) < 0) {
        bestCost = cost;
        best = days.clone();
      }
      return;
    }
    boolean sameAsLast =
        next > 0 && requests.get(next).name().equals(requests.get(next - 1).name());
    if (!(sameAsLast && days[next - 1] == UNPLACED)) {
      for (int d = sameAsLast ? days[next - 1] + 1 : 0; d < DAYS; d++) {
        if (open[next][d] && fits(days, next, d)) {
          days[next] = d;
          extend(days, next + 1, unplaced);
        }
      }
    }
    days[next] = UNPLACED;
    extend(days, next + 1, unplaced + 1);
  }

  private boolean fits(int[] days, int next, int day) {
    Request request = requests.get(next);
    int minutes = request.minutes();
    for (int i = 0; i < next; i++) {
      if (days[i] == UNPLACED) {
        continue;
      }
      Request other = requests.get(i);
      int apart = Math.abs(days[i] - day);
      if (other.name().equals(request.name()) && apart < request.gapDays()) {
        return false;
      }
      if (apart < HARD_GAP_DAYS
          && request.hardFingers().isPresent()
          && other.hardFingers().isPresent()
          && request.hardFingers().get().overlaps(other.hardFingers().get())) {
        return false;
      }
      if (apart == 0) {
        minutes += other.minutes();
      }
    }
    return minutes <= week.available().apply(week.first().plusDays(day)).toMinutes();
  }

  /** Unplaced, unpreferred, shared days, unevenness, sum of days, then the days themselves. */
  private long[] cost(int[] days) {
    long[] cost = new long[5 + days.length];
    Map<Integer, Integer> perDay = new TreeMap<>();
    for (int i = 0; i < days.length; i++) {
      Request request = requests.get(i);
      cost[5 + i] = days[i];
      if (days[i] == UNPLACED) {
        cost[0]++;
        continue;
      }
      if (!request.prefer().isEmpty()
          && !request.prefer().contains(week.first().plusDays(days[i]).getDayOfWeek())) {
        cost[1]++;
      }
      perDay.merge(days[i], 1, Integer::sum);
      cost[4] += days[i];
    }
    perDay.values().forEach(n -> cost[2] += n - 1L);
    cost[3] = unevenness(new ArrayList<>(perDay.keySet()));
    return cost;
  }

  /** Sum of inverse gaps between neighbouring training days, so that even spacing costs least. */
  private static long unevenness(List<Integer> days) {
    long sum = 0;
    for (int i = 1; i < days.size(); i++) {
      sum += 420L / (days.get(i) - days.get(i - 1));
    }
    return sum;
  }
}
