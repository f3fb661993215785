package gripwright.planning.placement;

import gripwright.athlete.Slot;
import gripwright.budget.Meter;
import gripwright.grip.FingerSet;
import gripwright.schedule.DatedSession;
import gripwright.schedule.HardThing;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;

/**
 * Finds the days of a week for its sessions, taking the following weeks into account.
 *
 * <p>Best means, in this order: most sessions placed, most tests on a rested day of their own, no
 * session dropped earlier than necessary, preferred days used, no two sessions on one day, most
 * even gaps, earliest days. The result is optimal and deterministic.
 *
 * <p>The week alone is solved first. If its best solution doesn't affect a training day of the next
 * week, no later week can gain by another solution, and the search ends. Otherwise the following
 * weeks are placed together with it.
 */
public final class Placement {

  /** Least days between hard days on the same fingers; 48 h. */
  public static final int HARD_GAP_DAYS = 2;

  /** Approximate number of tries for including later weeks; beyond it, fewer weeks are included. */
  private static final int MOST_TRIES = 50_000;

  private static final int DAYS = 7;

  private Placement() {}

  /** Returns the fewest whole days between two dates that a gap allows. */
  public static int gapDays(Duration gap) {
    return (int) Math.max(1, (gap.toMinutes() + 24 * 60 - 1) / (24 * 60));
  }

  /**
   * A session that needs a day.
   *
   * @param name its name; sessions of the same name keep their gap
   * @param minutes how long it takes
   * @param gap least time between two of the same name
   * @param hardFingers fingers it works hard, if any
   * @param prefer weekdays to use first
   * @param onlyOn weekdays that it may be on; empty for any
   * @param share least time from the end of another session of the same day to its start, or the
   *     other way round; empty if it shares no day unless the other does
   * @param places names of the places that it may be at, of which the empty one is no place; empty
   *     for any
   */
  public record Request(
      String name,
      int minutes,
      Duration gap,
      Optional<FingerSet> hardFingers,
      List<DayOfWeek> prefer,
      List<DayOfWeek> onlyOn,
      Optional<Duration> share,
      Set<String> places) {

    /** Copies the places. */
    public Request {
      places = Set.copyOf(places);
    }

    /** Creates a request that may be at any place. */
    public Request(
        String name,
        int minutes,
        Duration gap,
        Optional<FingerSet> hardFingers,
        List<DayOfWeek> prefer,
        List<DayOfWeek> onlyOn,
        Optional<Duration> share) {
      this(name, minutes, gap, hardFingers, prefer, onlyOn, share, Set.of());
    }

    /** Creates a request that may be on any weekday. */
    public Request(
        String name,
        int minutes,
        Duration gap,
        Optional<FingerSet> hardFingers,
        List<DayOfWeek> prefer) {
      this(name, minutes, gap, hardFingers, prefer, List.of());
    }

    /** Creates a request that shares no day. */
    public Request(
        String name,
        int minutes,
        Duration gap,
        Optional<FingerSet> hardFingers,
        List<DayOfWeek> prefer,
        List<DayOfWeek> onlyOn) {
      this(name, minutes, gap, hardFingers, prefer, onlyOn, Optional.empty());
    }

    /** Returns the least minutes to another session of the day; 0 if it shares none. */
    int shareMinutes() {
      return share.map(time -> (int) time.plusMinutes(1).minusNanos(1).toMinutes()).orElse(0);
    }

    /** Returns whether the session fits into a slot. */
    public boolean fits(Slot slot) {
      return slot.time().toMinutes() >= minutes && isAt(slot);
    }

    /** Returns whether the session may be at the place of a slot. */
    public boolean isAt(Slot slot) {
      return Placement.isAt(places, slot);
    }

    /** Returns whether the session may be on the weekday of a date. */
    boolean allows(LocalDate day) {
      return onlyOn.isEmpty() || onlyOn.contains(day.getDayOfWeek());
    }

    /** Returns the fewest whole days between two dates that the gap allows. */
    public int gapDays() {
      return Placement.gapDays(gap);
    }
  }

  /**
   * Hard work on a day.
   *
   * @param date the day
   * @param fingers the fingers it works
   * @param what the kind of work
   */
  public record HardDay(LocalDate date, FingerSet fingers, HardThing what) {

    /** Returns whether this is a plan's goal, and on the given day. */
    boolean isToBeFreshOn(LocalDate day) {
      return what instanceof HardThing.Goal && date.equals(day);
    }
  }

  /**
   * Tests that need a rested day.
   *
   * @param minutes how long they take
   * @param fingers the fingers they work
   * @param restedDays days since the last hard work, 2 or more
   * @param onlyOn the weekdays on which they may be; empty if on any
   * @param places the places at which they may be, as in a request
   */
  public record Tests(
      int minutes, FingerSet fingers, int restedDays, Set<DayOfWeek> onlyOn, Set<String> places) {
    /** Copies weekdays and places. */
    public Tests {
      onlyOn = Set.copyOf(onlyOn);
      places = Set.copyOf(places);
    }

    /** Returns whether they may be where a session is. */
    boolean isAt(DatedSession session) {
      return places.isEmpty() || places.contains(session.place().orElse(""));
    }

    /** Returns whether they fit into a slot. */
    boolean fits(Slot slot) {
      return slot.time().toMinutes() >= minutes && Placement.isAt(places, slot);
    }

    /** Creates tests on any rested weekday. */
    public Tests(int minutes, FingerSet fingers) {
      this(minutes, fingers, HARD_GAP_DAYS, Set.of(), Set.of());
    }

    /** Returns whether hard work on a day leaves another day rested. */
    boolean restsOn(LocalDate day, LocalDate hard) {
      long since = ChronoUnit.DAYS.between(hard, day);
      return since >= restedDays || -since >= HARD_GAP_DAYS;
    }
  }

  /**
   * The fixed data of a week.
   *
   * @param first first day of the week
   * @param slots the times of a day, in order of day; one without a time takes sessions one after
   *     another, and one with a time begins one session
   * @param hardDays hard days near the week, including those in other weeks
   * @param lastOfName the last day of each session's name before this week
   */
  public record Week(
      LocalDate first,
      Function<LocalDate, List<Slot>> slots,
      List<HardDay> hardDays,
      Map<String, LocalDate> lastOfName) {

    /** Copies what may change. */
    public Week {
      hardDays = List.copyOf(hardDays);
      lastOfName = Map.copyOf(lastOfName);
    }

    /** Returns the longest time on a day, in minutes; 0 if there is none. */
    public long longestOn(LocalDate day) {
      return slots.apply(day).stream().mapToLong(slot -> slot.time().toMinutes()).max().orElse(0);
    }
  }

  /**
   * A week with the sessions and tests to place.
   *
   * @param week its fixed data
   * @param requests sessions in any order; those of one name are equal
   * @param tests tests that are due
   */
  public record WeekDemand(Week week, List<Request> requests, List<Tests> tests) {

    /** Copies what may change. */
    public WeekDemand {
      requests = List.copyOf(requests);
      tests = List.copyOf(tests);
    }
  }

  /**
   * A day and the slot of it in which a session is.
   *
   * @param date the day
   * @param slot its slot
   */
  public record Spot(LocalDate date, Slot slot) {}

  /**
   * The days of a week.
   *
   * @param sessions a day for each request, in the same order; empty if there was none left
   * @param tests the same for tests; empty if no rested day was left
   * @param slots the slot of each session, in the same order
   */
  public record Days(
      List<Optional<LocalDate>> sessions,
      List<Optional<LocalDate>> tests,
      List<Optional<Slot>> slots) {

    /** Returns the day and the slot of a session, if it has one. */
    public Optional<Spot> spot(int session) {
      return sessions
          .get(session)
          .flatMap(day -> slots.get(session).map(slot -> new Spot(day, slot)));
    }

    /** Returns whether every session has a day. */
    boolean complete() {
      return sessions.stream().allMatch(Optional::isPresent);
    }
  }

  /**
   * The days of some weeks.
   *
   * @param weeks one for each week requested
   * @param proved true if no better solution exists; false if there were too many to check them all
   * @param more most sessions that a better solution could place, if not proved
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
   * @param demand the week
   * @param gapDays the longest gap that sessions of a name keep, in this week or later, in days
   * @param later supplies the following weeks as far as they are known; called only if they matter
   */
  public static Found place(
      WeekDemand demand, ToIntFunction<String> gapDays, Supplier<List<WeekDemand>> later) {
    return place(demand, gapDays, later, Meter.unbounded());
  }

  /**
   * Places the sessions and tests of a week within a budget.
   *
   * @param meter counts the tries
   * @see #place(WeekDemand, ToIntFunction, Supplier)
   */
  public static Found place(
      WeekDemand demand,
      ToIntFunction<String> gapDays,
      Supplier<List<WeekDemand>> later,
      Meter meter) {
    Found alone = new PlacementSearch(List.of(demand)).search(meter);
    if (!alone.proved() || !reachesOver(demand, alone.first(), gapDays)) {
      return alone;
    }
    int horizon =
        MOST_TRIES / Math.max(1, alone.tries()); // each further week adds as much work again
    List<WeekDemand> weeks = new ArrayList<>(List.of(demand));
    later.get().stream().limit(horizon).forEach(weeks::add);
    Found ahead = new PlacementSearch(weeks).search(meter);
    List<Days> days = ahead.proved() ? ahead.weeks() : alone.weeks();
    return new Found(days, true, 0, alone.tries() + ahead.tries());
  }

  /** Returns whether a gap that begins in a week covers a possible training day after it. */
  private static boolean reachesOver(WeekDemand demand, Days days, ToIntFunction<String> gapDays) {
    LocalDate next = demand.week().first().plusDays(DAYS);
    LocalDate free = next;
    for (int i = 0; i < demand.requests().size(); i++) {
      Request request = demand.requests().get(i);
      int gap = request.hardFingers().isPresent() ? HARD_GAP_DAYS : 1;
      free = later(free, days.sessions().get(i), Math.max(gap, gapDays.applyAsInt(request.name())));
    }
    for (Optional<LocalDate> test : days.tests()) {
      free = later(free, test, HARD_GAP_DAYS);
    }
    return next.datesUntil(free).anyMatch(day -> !demand.week().slots().apply(day).isEmpty());
  }

  private static LocalDate later(LocalDate free, Optional<LocalDate> day, int gap) {
    return day.map(d -> d.plusDays(gap)).filter(free::isBefore).orElse(free);
  }

  /**
   * Returns whether a session can be on a day, apart from other sessions and its gap. Nothing can
   * be on the goal day.
   */
  public static boolean isOpen(Week week, Request request, LocalDate day) {
    return request.allows(day)
        && week.slots().apply(day).stream().anyMatch(request::fits)
        && week.hardDays().stream().noneMatch(hard -> hard.isToBeFreshOn(day))
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

  /** Returns whether there is time for tests on a day, and no fixed hard work within 48 h. */
  static boolean restsBefore(Week week, Tests tests, LocalDate day) {
    return week.slots().apply(day).stream().anyMatch(tests::fits)
        && (tests.onlyOn().isEmpty() || tests.onlyOn().contains(day.getDayOfWeek()))
        && week.hardDays().stream().allMatch(h -> tests.restsOn(day, h.date()));
  }

  private static boolean isAt(Set<String> places, Slot slot) {
    return places.isEmpty() || places.contains(slot.place().orElse(""));
  }

  private static long days(LocalDate one, LocalDate other) {
    return Math.abs(ChronoUnit.DAYS.between(one, other));
  }
}
