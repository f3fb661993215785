package gripwright.planning.placement;

import gripwright.budget.Limit;
import gripwright.budget.Meter;
import java.nio.IntBuffer;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Finds the best days for the sessions and tests of some weeks in a row, exactly.
 *
 * <p>Goes through the days and, on each, through the names of sessions: on this day or not. What
 * comes later depends on what was done only through a situation: how long ago each session was, how
 * many of it are done this week, and what is hard yesterday and today. Of two ways into one
 * situation the worse can be forgotten, since every continuation serves both alike. So the work
 * grows with the situations and not with the ways: dynamic programming.
 *
 * <p>With many sessions a week there are too many situations. Then only the best of them are kept
 * after each step. That gives an answer to beat: the second search leaves out what must place fewer
 * sessions and keeps more. If even that is too little, the answer isn't proved, and says how many
 * more sessions a better one could place at most.
 */
final class PlacementSearch {

  /** Situations kept at first, enough for a usual plan. */
  static final int FIRST_WIDTH = 1_000;

  /** Situations kept where those were too few. */
  static final int WIDTH = 3_000;

  private static final int DAYS = 7;
  private static final int UNPLACED = -1;
  private static final int MOST_TESTS = 30;

  /** Places in a cost before and after those of the weeks. */
  private static final int FIRST_WEEK = 2;

  private final List<Placement.Asked> weeks;
  private final List<String> names;
  private final List<List<Kind>> kinds = new ArrayList<>();
  private final int[] longestGap;
  private final int slots;
  private final PlacementLayout at;
  private final PlacementBound bound;
  private final int mostWidth;
  private int width;
  private long missingToBeat = Long.MAX_VALUE;
  private boolean proved = true;
  private int tries;
  private Meter meter = Meter.unbounded();

  /**
   * The sessions of one name in one week.
   *
   * @param name its index
   * @param request one of them
   * @param wanted how many
   * @param slot where the days of the first of them are kept
   */
  private record Kind(int name, Placement.Request request, int wanted, int slot) {}

  /** One way into a situation. */
  private static final class Way {
    /** The situation: all of the past that the future depends on. */
    private final int[] now;

    /** In the order of what counts most. */
    private final long[] cost;

    /** The day of each session of each week, then of each test. */
    private final int[] days;

    Way(int[] now, long[] cost, int[] days) {
      this.now = now;
      this.cost = cost;
      this.days = days;
    }

    Way copy() {
      return new Way(now.clone(), cost.clone(), days.clone());
    }

    int compareTo(Way other) {
      int byCost = Arrays.compare(cost, other.cost);
      return byCost != 0 ? byCost : Arrays.compare(days, other.days);
    }
  }

  /** Prepares to place weeks in a row. */
  PlacementSearch(List<Placement.Asked> weeks) {
    this(weeks, FIRST_WIDTH, WIDTH);
  }

  /** Prepares to place weeks in a row with other widths than usual. */
  PlacementSearch(List<Placement.Asked> weeks, int firstWidth, int mostWidth) {
    this.width = firstWidth;
    this.mostWidth = mostWidth;
    this.weeks = List.copyOf(weeks);
    TreeSet<String> all = new TreeSet<>();
    weeks.forEach(w -> w.requests().forEach(r -> all.add(r.name())));
    this.names = List.copyOf(all);
    this.at = new PlacementLayout(names.size());
    this.longestGap = new int[names.size()];
    Arrays.fill(longestGap, 1);
    int slot = 0;
    for (Placement.Asked week : weeks) {
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
    for (Placement.Asked week : weeks) {
      slot += tests(week);
    }
    this.slots = slot;
    this.bound = new PlacementBound(weeks, names);
  }

  private static int tests(Placement.Asked week) {
    return Math.min(MOST_TESTS, week.tests().size());
  }

  /** Searches; the same question gets the same answer. */
  Placement.Found search() {
    return search(Meter.unbounded());
  }

  /**
   * Searches within a budget.
   *
   * @param counting counts the tries
   */
  Placement.Found search(Meter counting) {
    meter = counting;
    Way best = bestWay().orElseThrow();
    if (!proved) {
      missingToBeat = best.cost[0];
      width = mostWidth;
      proved = true;
      Way first = best;
      best = bestWay().filter(second -> second.compareTo(first) < 0).orElse(first);
    }
    return found(best);
  }

  private Optional<Way> bestWay() {
    Collection<Way> ways = List.of(start());
    int testSlot = slots - weeks.stream().mapToInt(PlacementSearch::tests).sum();
    for (int w = 0; w < weeks.size(); w++) {
      Placement.Asked week = weeks.get(w);
      for (int d = 0; d < DAYS; d++) {
        LocalDate day = week.week().first().plusDays(d);
        for (Kind kind : kinds.get(w)) {
          if (Placement.isOpen(week.week(), kind.request(), day)) {
            ways = step(ways, new SessionStep(kind, d, available(week, day)));
          }
        }
        for (int t = 0; t < tests(week); t++) {
          if (Placement.restsBefore(week.week(), week.tests().get(t), day)) {
            ways = step(ways, new TestStep(t, week.tests().get(t), d, testSlot + t));
          }
        }
        ways.forEach(this::endDay);
        ways = merged(promising(ways, w, d + 1));
      }
      int number = w;
      ways.forEach(way -> endWeek(way, number));
      ways = merged(ways);
      testSlot += tests(week);
    }
    return ways.stream().min(Way::compareTo);
  }

  /** Leaves out the ways that must place fewer sessions than one that is known. */
  private Collection<Way> promising(Collection<Way> ways, int week, int day) {
    if (missingToBeat == Long.MAX_VALUE) {
      return ways;
    }
    return ways.stream()
        .filter(
            way -> way.cost[0] + bound.missing(week, day, way.now, at.count(0)) <= missingToBeat)
        .toList();
  }

  private static int available(Placement.Asked week, LocalDate day) {
    return (int) week.week().available().apply(day).toMinutes();
  }

  private Way start() {
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
    return new Way(now, new long[FIRST_WEEK + weeks.size() + 4], days);
  }

  /** One yes or no: something on a day. */
  private interface Step {
    Optional<Way> take(Way way);
  }

  private Collection<Way> step(Collection<Way> ways, Step step) {
    meter.take(Limit.PLACEMENT, ways.size());
    List<Way> next = new ArrayList<>(ways);
    for (Way way : ways) {
      tries++;
      step.take(way).ifPresent(next::add);
    }
    return merged(next);
  }

  private Collection<Way> merged(Collection<Way> ways) {
    Map<IntBuffer, Way> best = new HashMap<>();
    for (Way way : ways) {
      best.merge(IntBuffer.wrap(way.now), way, (a, b) -> a.compareTo(b) <= 0 ? a : b);
    }
    if (best.size() <= width) {
      return best.values();
    }
    proved = false;
    return best.values().stream()
        .sorted(Comparator.comparingLong(this::missingSoFar).thenComparing(Way::compareTo))
        .limit(width)
        .toList();
  }

  private long missingSoFar(Way way) {
    long missing = way.cost[0];
    for (int n = 0; n < names.size(); n++) {
      missing -= way.now[at.count(n)];
    }
    return missing;
  }

  private final class SessionStep implements Step {
    private final Kind kind;
    private final int day;
    private final int available;
    private final int hard;
    private final boolean unpreferred;

    SessionStep(Kind kind, int day, int available) {
      this.kind = kind;
      this.day = day;
      this.available = available;
      this.hard = kind.request().hardFingers().map(f -> f.bits()).orElse(0);
      LocalDate date = weeks.get(0).week().first().plusDays(day); // weekdays repeat
      this.unpreferred =
          !kind.request().prefer().isEmpty()
              && !kind.request().prefer().contains(date.getDayOfWeek());
    }

    @Override
    public Optional<Way> take(Way way) {
      int[] now = way.now;
      int done = now[at.count(kind.name())];
      boolean clash =
          done == kind.wanted()
              || now[kind.name()] < kind.request().gapDays()
              || now[at.minutes()] + kind.request().minutes() > available
              || now[at.testedToday()] == 1
              || (hard & (now[at.yesterday()] | now[at.today()])) != 0
              || (hard != 0 && now[at.testedYesterday()] == 1);
      if (clash) {
        return Optional.empty();
      }
      Way placed = way.copy();
      placed.days[kind.slot() + done] = day;
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
      return Optional.of(placed);
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
    public Optional<Way> take(Way way) {
      int[] now = way.now;
      boolean clash =
          (now[at.tests()] & 1 << test) != 0
              || now[at.lastDay()] == day
              || now[at.testedToday()] == 1
              || now[at.yesterday()] != 0;
      if (clash) {
        return Optional.empty();
      }
      Way placed = way.copy();
      placed.now[at.tests()] |= 1 << test;
      placed.now[at.testedToday()] = 1;
      placed.now[at.today()] = hard;
      placed.days[slot] = day;
      return Optional.of(placed);
    }
  }

  private void endDay(Way way) {
    int[] now = way.now;
    for (int n = 0; n < names.size(); n++) {
      now[n] = Math.min(longestGap[n], now[n] + 1);
    }
    now[at.yesterday()] = now[at.today()];
    now[at.today()] = 0;
    now[at.minutes()] = 0;
    now[at.testedYesterday()] = now[at.testedToday()];
    now[at.testedToday()] = 0;
  }

  private void endWeek(Way way, int week) {
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
    now[at.testedYesterday()] = 0; // within a week alone; shared fingers are in `yesterday`
  }

  private Placement.Found found(Way best) {
    List<Placement.Days> days = new ArrayList<>();
    int testSlot = slots - weeks.stream().mapToInt(PlacementSearch::tests).sum();
    for (int w = 0; w < weeks.size(); w++) {
      Placement.Asked week = weeks.get(w);
      Map<String, Integer> next = new HashMap<>();
      kinds.get(w).forEach(k -> next.put(k.request().name(), k.slot()));
      List<Optional<LocalDate>> sessions = new ArrayList<>();
      for (Placement.Request request : week.requests()) {
        int slot = next.merge(request.name(), 1, Integer::sum) - 1;
        sessions.add(date(week, best.days[slot]));
      }
      List<Optional<LocalDate>> tests = new ArrayList<>();
      for (int t = 0; t < week.tests().size(); t++) {
        tests.add(t < MOST_TESTS ? date(week, best.days[testSlot + t]) : Optional.empty());
      }
      testSlot += tests(week);
      days.add(new Placement.Days(sessions, tests));
    }
    long more = proved ? 0 : best.cost[0] - bound.missing();
    return new Placement.Found(days, proved, (int) more, tries);
  }

  private static Optional<LocalDate> date(Placement.Asked week, int day) {
    return day == UNPLACED ? Optional.empty() : Optional.of(week.week().first().plusDays(day));
  }
}
