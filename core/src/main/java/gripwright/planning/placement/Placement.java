package gripwright.planning.placement;

import gripwright.budget.Meter;
import gripwright.grip.FingerSet;
import gripwright.schedule.HardThing;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;

/**
 * Finds the days of a week for its sessions, with an eye on the weeks that follow.
 *
 * <p>Best means, in this order: most sessions placed, most tests on a rested day of their own, no
 * session given up earlier than need be, preferred days used, no two sessions on one day, most even
 * gaps, earliest days. The answer is the best there is and always the same.
 *
 * <p>The week alone is looked at first. If nothing of its best way reaches into a day on which the
 * athlete trains in the next week, no later week can gain by another way, and that is the answer.
 * Only otherwise are the weeks after it placed along with it.
 */
public final class Placement {

  /** Least days between hard days on the same fingers; 48 h. */
  public static final int HARD_GAP_DAYS = 2;

  /** Tries that a look at later weeks is worth, about; beyond it fewer weeks are looked at. */
  private static final int MOST_TRIES = 50_000;

  private static final int DAYS = 7;

  private Placement() {}

  /** Returns the least whole days between two dates that a gap allows. */
  public static int gapDays(Duration gap) {
    return (int) Math.max(1, (gap.toMinutes() + 24 * 60 - 1) / (24 * 60));
  }

  /**
   * A session that wants a day.
   *
   * @param name its name; sessions of one name keep their gap
   * @param minutes how long it takes
   * @param gap least time between two of its name
   * @param hardFingers fingers it works hard, if any
   * @param prefer weekdays to use first
   */
  public record Request(
      String name,
      int minutes,
      Duration gap,
      Optional<FingerSet> hardFingers,
      List<DayOfWeek> prefer) {

    /** Returns the least whole days between two dates that the gap allows. */
    public int gapDays() {
      return Placement.gapDays(gap);
    }
  }

  /**
   * Something hard on a day.
   *
   * @param date the day
   * @param fingers the fingers it works
   * @param what what is hard
   */
  public record HardDay(LocalDate date, FingerSet fingers, HardThing what) {}

  /**
   * Tests that want a rested day.
   *
   * @param minutes how long they take
   * @param fingers the fingers they work
   */
  public record Tests(int minutes, FingerSet fingers) {}

  /**
   * What is fixed before a week is placed.
   *
   * @param first first day of the week
   * @param available minutes on a day
   * @param hardDays hard days near the week, that of other weeks included
   * @param lastOfName the last day of each session's name before this week
   */
  public record Week(
      LocalDate first,
      Function<LocalDate, Duration> available,
      List<HardDay> hardDays,
      Map<String, LocalDate> lastOfName) {

    /** Copies what may change. */
    public Week {
      hardDays = List.copyOf(hardDays);
      lastOfName = Map.copyOf(lastOfName);
    }
  }

  /**
   * A week and what wants a day in it.
   *
   * @param week what is fixed
   * @param requests sessions in any order; those of one name are alike
   * @param tests tests that are due
   */
  public record Asked(Week week, List<Request> requests, List<Tests> tests) {

    /** Copies what may change. */
    public Asked {
      requests = List.copyOf(requests);
      tests = List.copyOf(tests);
    }
  }

  /**
   * The days of a week.
   *
   * @param sessions a day for each request, in the order asked; empty where there was none left
   * @param tests the same for tests; empty where no rested day was left
   */
  public record Days(List<Optional<LocalDate>> sessions, List<Optional<LocalDate>> tests) {

    /** Tells whether every session has a day. */
    boolean complete() {
      return sessions.stream().allMatch(Optional::isPresent);
    }
  }

  /**
   * The days of some weeks.
   *
   * @param weeks one for each week asked
   * @param proved true if no better way exists; false if there were too many to look at them all
   * @param more sessions that a better way could place at most, if not proved
   * @param tries steps of the search, a measure of its work
   */
  public record Found(List<Days> weeks, boolean proved, int more, int tries) {

    /** Returns the days of the first week. */
    public Days first() {
      return weeks.get(0);
    }
  }

  /**
   * Places the sessions and tests of a week.
   *
   * @param asked the week
   * @param gapDays the longest gap that sessions of a name keep, in this week or later, in days
   * @param later gives the weeks after it, as far as they can be told; asked only if they matter
   */
  public static Found place(
      Asked asked, ToIntFunction<String> gapDays, Supplier<List<Asked>> later) {
    return place(asked, gapDays, later, Meter.unbounded());
  }

  /**
   * Places the sessions and tests of a week within a budget.
   *
   * @param meter counts the tries
   * @see #place(Asked, ToIntFunction, Supplier)
   */
  public static Found place(
      Asked asked, ToIntFunction<String> gapDays, Supplier<List<Asked>> later, Meter meter) {
    Found alone = new PlacementSearch(List.of(asked)).search(meter);
    if (!alone.proved() || !reachesOver(asked, alone.first(), gapDays)) {
      return alone;
    }
    int horizon = MOST_TRIES / Math.max(1, alone.tries()); // a week more is as much work again
    List<Asked> weeks = new ArrayList<>(List.of(asked));
    later.get().stream().limit(horizon).forEach(weeks::add);
    Found ahead = new PlacementSearch(weeks).search(meter);
    List<Days> days = ahead.proved() ? ahead.weeks() : alone.weeks();
    return new Found(days, true, 0, alone.tries() + ahead.tries());
  }

  /**
   * Tells whether a gap that begins in a week covers a day on which something could be after it.
   */
  private static boolean reachesOver(Asked asked, Days days, ToIntFunction<String> gapDays) {
    LocalDate next = asked.week().first().plusDays(DAYS);
    LocalDate free = next;
    for (int i = 0; i < asked.requests().size(); i++) {
      Request request = asked.requests().get(i);
      int gap = request.hardFingers().isPresent() ? HARD_GAP_DAYS : 1;
      free = later(free, days.sessions().get(i), Math.max(gap, gapDays.applyAsInt(request.name())));
    }
    for (Optional<LocalDate> test : days.tests()) {
      free = later(free, test, HARD_GAP_DAYS);
    }
    return next.datesUntil(free).anyMatch(day -> !asked.week().available().apply(day).isZero());
  }

  private static LocalDate later(LocalDate free, Optional<LocalDate> day, int gap) {
    return day.map(d -> d.plusDays(gap)).filter(free::isBefore).orElse(free);
  }

  /**
   * Tells whether a session can be on a day, whatever else is placed and however long ago the last
   * one was.
   */
  public static boolean isOpen(Week week, Request request, LocalDate day) {
    long minutes = week.available().apply(day).toMinutes();
    return minutes > 0
        && minutes >= request.minutes()
        && request
            .hardFingers()
            .map(
                fingers ->
                    week.hardDays().stream()
                        .noneMatch(
                            hard ->
                                hard.fingers().overlaps(fingers)
                                    && days(hard.date(), day) < HARD_GAP_DAYS))
            .orElse(true);
  }

  /** Tells whether there is time for tests on a day, and nothing fixed is hard within 48 h. */
  static boolean restsBefore(Week week, Tests tests, LocalDate day) {
    return week.available().apply(day).toMinutes() >= tests.minutes()
        && week.hardDays().stream().noneMatch(h -> days(h.date(), day) < HARD_GAP_DAYS);
  }

  private static long days(LocalDate one, LocalDate other) {
    return Math.abs(ChronoUnit.DAYS.between(one, other));
  }
}
