package gripwright.planning.placement;

import gripwright.athlete.Slot;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The sessions and tests to place in some weeks in a row, and the effect on a partial solution of
 * placing one of them, of the end of a day and of the end of a week.
 */
final class PlacementMoves {

  private static final int UNPLACED = -1;
  private static final int MOST_TESTS = 30;

  /** More than the slots of a day, each of which takes a minute or more. */
  private static final int SLOTS = 1_500;

  /** Position of the first week in a cost. */
  private static final int FIRST_WEEK = 2;

  private final List<Placement.WeekDemand> weeks;
  private final List<String> names;
  private final List<List<Kind>> kinds = new ArrayList<>();
  private final int[] longestGap;
  private final int slots;

  /** Position of the day of each week's first test. */
  private final int[] firstTest;

  private final PlacementLayout at;

  /**
   * The sessions of one name in one week.
   *
   * @param name its index
   * @param request one of them
   * @param wanted how many
   * @param slot position of the day of the first of them
   */
  private record Kind(int name, Placement.Request request, int wanted, int slot) {}

  /** One decision: something on a day or not. */
  interface Step {
    Optional<PlacementWay> take(PlacementWay way);
  }

  /** Prepares to place weeks in a row. */
  PlacementMoves(List<Placement.WeekDemand> weeks) {
    this.weeks = weeks;
    TreeSet<String> all = new TreeSet<>();
    weeks.forEach(w -> w.requests().forEach(r -> all.add(r.name())));
    this.names = List.copyOf(all);
    this.at = new PlacementLayout(names.size());
    this.longestGap = new int[names.size()];
    Arrays.fill(longestGap, 1);
    int slot = 0;
    for (Placement.WeekDemand week : weeks) {
      List<Kind> ofWeek = new ArrayList<>();
      Map<String, List<Placement.Request>> byName = new TreeMap<>();
      week.requests().forEach(r -> byName.computeIfAbsent(r.name(), n -> new ArrayList<>()).add(r));
      for (Map.Entry<String, List<Placement.Request>> entry : byName.entrySet()) {
        int name = names.indexOf(entry.getKey());
        Placement.Request request = entry.getValue().get(0);
        ofWeek.add(new Kind(name, request, entry.getValue().size(), slot));
        slot += entry.getValue().size();
        longestGap[name] = Math.max(longestGap[name], request.gapDays());
      }
      kinds.add(ofWeek);
    }
    this.firstTest = new int[weeks.size()];
    for (int w = 0; w < weeks.size(); w++) {
      firstTest[w] = slot;
      slot += tests(weeks.get(w));
    }
    this.slots = slot;
  }

  /** Returns the names of the sessions, sorted. */
  List<String> names() {
    return names;
  }

  private static int tests(Placement.WeekDemand week) {
    return Math.min(MOST_TESTS, week.tests().size());
  }

  /** Returns the decisions for a day of a week, in order. */
  List<Step> on(int number, int day) {
    Placement.WeekDemand week = weeks.get(number);
    LocalDate date = week.week().first().plusDays(day);
    List<Step> steps = new ArrayList<>();
    List<Slot> slots = week.week().slots().apply(date);
    for (int s = 0; s < slots.size(); s++) {
      for (Kind kind : kinds.get(number)) {
        if (Placement.isOpen(week.week(), kind.request(), date)
            && kind.request().fits(slots.get(s))) {
          steps.add(new SessionStep(kind, day, s, slots.get(s)));
        }
      }
    }
    for (int t = 0; t < tests(week); t++) {
      if (Placement.restsBefore(week.week(), week.tests().get(t), date)) {
        steps.add(new TestStep(t, week.tests().get(t), day, firstTest[number] + t));
      }
    }
    return steps;
  }

  /** Returns the partial solution before anything is placed. */
  PlacementWay start() {
    int[] now = new int[at.size()];
    Placement.Week first = weeks.get(0).week();
    for (int n = 0; n < names.size(); n++) {
      LocalDate last = first.lastOfName().get(names.get(n));
      now[n] =
          last == null
              ? longestGap[n]
              : (int) Math.min(longestGap[n], ChronoUnit.DAYS.between(last, first.first()));
    }
    now[at.lastDay()] = UNPLACED;
    int[] days = new int[slots];
    Arrays.fill(days, UNPLACED);
    return new PlacementWay(now, new long[FIRST_WEEK + weeks.size() + 4], days);
  }

  private final class SessionStep implements Step {
    private final Kind kind;
    private final int day;
    private final int number;
    private final Slot slot;
    private final int available;
    private final int hard;
    private final int share;
    private final boolean unpreferred;

    SessionStep(Kind kind, int day, int number, Slot slot) {
      this.kind = kind;
      this.day = day;
      this.number = number;
      this.slot = slot;
      this.available = (int) slot.time().toMinutes();
      this.share = kind.request().shareMinutes();
      this.hard = kind.request().hardFingers().map(f -> f.bits()).orElse(0);
      LocalDate date = weeks.get(0).week().first().plusDays(day); // weekdays repeat
      this.unpreferred =
          !kind.request().prefer().isEmpty()
              && !kind.request().prefer().contains(date.getDayOfWeek());
    }

    @Override
    public Optional<PlacementWay> take(PlacementWay way) {
      int[] now = way.now;
      int done = now[at.count(kind.name())];
      boolean clash =
          done == kind.wanted()
              || now[kind.name()] < kind.request().gapDays()
              || (now[at.lastDay()] == day && !sharesDay(now))
              || now[at.testedToday()] == 1
              || (hard & (now[at.yesterday()] | now[at.today()])) != 0
              || (hard != 0 && now[at.testedYesterday()] == 1);
      if (clash) {
        return Optional.empty();
      }
      PlacementWay placed = way.copy();
      placed.days[kind.slot() + done] = day * SLOTS + number;
      placed.now[at.count(kind.name())]++;
      placed.now[kind.name()] = 0;
      placed.now[at.minutes()] += kind.request().minutes();
      placed.now[at.today()] |= hard;
      int before = now[at.lastDay()];
      int costs = FIRST_WEEK + weeks.size();
      placed.cost[costs] += unpreferred ? 1 : 0;
      placed.cost[costs + 1] += before == day ? 1 : 0;
      placed.cost[costs + 2] += before == UNPLACED || before == day ? 0 : 420 / (day - before);
      placed.cost[costs + 3] += day;
      placed.now[at.lastDay()] = day;
      placed.now[at.shareToday()] = share;
      if (slot.at().isPresent()) {
        placed.now[at.endToday()] = slot.startMinute() + kind.request().minutes();
        placed.now[at.unsharedToday()] |= share == 0 ? 1 : 0;
      }
      return Optional.of(placed);
    }

    /** Returns whether the session may be on the day of another that is placed. */
    private boolean sharesDay(int[] now) {
      int apart = Math.max(share, now[at.shareToday()]);
      if (slot.at().isEmpty()) {
        return apart == 0 && now[at.minutes()] + kind.request().minutes() <= available;
      }
      return apart > 0
          && (share > 0 || now[at.unsharedToday()] == 0)
          && slot.startMinute() >= now[at.endToday()] + apart;
    }
  }

  private final class TestStep implements Step {
    private final int test;
    private final int hard;
    private final int day;
    private final int slot;

    TestStep(int test, Placement.Tests tests, int day, int slot) {
      this.test = test;
      this.hard = tests.fingers().bits();
      this.day = day;
      this.slot = slot;
    }

    @Override
    public Optional<PlacementWay> take(PlacementWay way) {
      int[] now = way.now;
      boolean clash =
          (now[at.tests()] & 1 << test) != 0
              || now[at.lastDay()] == day
              || now[at.testedToday()] == 1
              || now[at.yesterday()] != 0;
      if (clash) {
        return Optional.empty();
      }
      PlacementWay placed = way.copy();
      placed.now[at.tests()] |= 1 << test;
      placed.now[at.testedToday()] = 1;
      placed.now[at.today()] = hard;
      placed.days[slot] = day * SLOTS;
      return Optional.of(placed);
    }
  }

  /** Moves to the next day. */
  void endDay(PlacementWay way) {
    int[] now = way.now;
    for (int n = 0; n < names.size(); n++) {
      now[n] = Math.min(longestGap[n], now[n] + 1);
    }
    now[at.yesterday()] = now[at.today()];
    now[at.today()] = 0;
    now[at.minutes()] = 0;
    now[at.testedYesterday()] = now[at.testedToday()];
    now[at.testedToday()] = 0;
    now[at.endToday()] = 0;
    now[at.shareToday()] = 0;
    now[at.unsharedToday()] = 0;
  }

  /** Counts what a week has not placed and moves to the next. */
  void endWeek(PlacementWay way, int week) {
    int[] now = way.now;
    for (Kind kind : kinds.get(week)) {
      int missing = kind.wanted() - now[at.count(kind.name())];
      way.cost[0] += missing;
      way.cost[FIRST_WEEK + week] += missing;
      now[at.count(kind.name())] = 0;
    }
    way.cost[1] += tests(weeks.get(week)) - Integer.bitCount(now[at.tests()]);
    now[at.lastDay()] = UNPLACED;
    now[at.tests()] = 0;
    now[at.testedYesterday()] = 0; // within a week only; shared fingers are in `yesterday`
  }

  /** Returns how many sessions the past weeks lack, less those placed in the current week. */
  long missingSoFar(PlacementWay way) {
    long missing = way.cost[0];
    for (int n = 0; n < names.size(); n++) {
      missing -= way.now[at.count(n)];
    }
    return missing;
  }

  /** Returns the days of a solution. */
  List<Placement.Days> days(PlacementWay best) {
    List<Placement.Days> days = new ArrayList<>();
    for (int w = 0; w < weeks.size(); w++) {
      Placement.WeekDemand week = weeks.get(w);
      Map<String, Integer> next = new HashMap<>();
      kinds.get(w).forEach(k -> next.put(k.request().name(), k.slot()));
      List<Optional<LocalDate>> sessions = new ArrayList<>();
      List<Optional<Slot>> slots = new ArrayList<>();
      for (Placement.Request request : week.requests()) {
        int spot = best.days[next.merge(request.name(), 1, Integer::sum) - 1];
        sessions.add(date(week, spot));
        slots.add(date(week, spot).map(day -> week.week().slots().apply(day).get(spot % SLOTS)));
      }
      List<Optional<LocalDate>> tests = new ArrayList<>();
      for (int t = 0; t < week.tests().size(); t++) {
        tests.add(t < MOST_TESTS ? date(week, best.days[firstTest[w] + t]) : Optional.empty());
      }
      days.add(new Placement.Days(sessions, tests, slots));
    }
    return days;
  }

  private static Optional<LocalDate> date(Placement.WeekDemand week, int spot) {
    return spot == UNPLACED
        ? Optional.empty()
        : Optional.of(week.week().first().plusDays(spot / SLOTS));
  }
}
