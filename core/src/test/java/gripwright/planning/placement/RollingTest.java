package gripwright.planning.placement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.grip.FingerSet;
import gripwright.planning.Calendars;
import gripwright.schedule.HardThing;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The cost of deciding weeks one by one with a look ahead instead of all at once. */
class RollingTest {

  private static final int WEEKS = 16;
  private static final int SEASONS = 300;

  /**
   * The results of many seasons: sessions and tests without a day, days that were not preferred.
   */
  private record Tally(long sessions, long tests, long preferences) {
    Tally plus(long[] cost, int weeks) {
      return new Tally(sessions + cost[0], tests + cost[1], preferences + cost[2 + weeks]);
    }
  }

  /** An athlete's usual week, with times away, climbing, and up to three kinds of session. */
  static List<Placement.WeekDemand> season(long seed, int weeks) {
    Random random = new Random(seed);
    int[] usual = new int[7];
    for (int d = 0; d < 7; d++) {
      usual[d] = List.of(0, 0, 45, 60, 90, 120).get(random.nextInt(6));
    }
    boolean[] away = new boolean[7 * weeks];
    for (int trip = 0; trip < weeks / 4; trip++) {
      int from = random.nextInt(away.length);
      int to = Math.min(away.length, from + 2 + random.nextInt(4));
      java.util.Arrays.fill(away, from, to, true);
    }
    int climbing = random.nextInt(14);
    List<Placement.Request> requests = new ArrayList<>();
    for (int kind = 0; kind <= random.nextInt(3); kind++) {
      requests.addAll(kind("abc".substring(kind, kind + 1), random));
    }
    List<Placement.WeekDemand> all = new ArrayList<>();
    for (int w = 0; w < weeks; w++) {
      LocalDate first = Calendars.MONDAY.plusWeeks(w);
      List<Placement.HardDay> hard = new ArrayList<>();
      for (int d = -1; d < 8; d++) {
        if (Math.floorMod(d, 7) == climbing) {
          hard.add(
              new Placement.HardDay(first.plusDays(d), FingerSet.FOUR, new HardThing.Climbing()));
        }
      }
      Placement.Week week =
          new Placement.Week(
              first,
              Calendars.anytime(
                  day -> {
                    int n = (int) Calendars.MONDAY.until(day, java.time.temporal.ChronoUnit.DAYS);
                    boolean gone = n < 0 || n >= away.length || away[n];
                    return Duration.ofMinutes(gone ? 0 : usual[n % 7]);
                  }),
              hard,
              Map.of());
      List<Placement.Tests> tests =
          w % 6 == 5 ? List.of(new Placement.Tests(30, FingerSet.FOUR)) : List.of();
      all.add(new Placement.WeekDemand(week, requests, tests));
    }
    return all;
  }

  private static List<Placement.Request> kind(String name, Random random) {
    int hard = List.of(0, 0b0111, 0b1111, 0b1111).get(random.nextInt(4));
    List<DayOfWeek> prefer =
        random.nextBoolean() ? List.of() : List.of(DayOfWeek.of(1 + random.nextInt(7)));
    return Collections.nCopies(
        1 + random.nextInt(3),
        new Placement.Request(
            name,
            30 + 15 * random.nextInt(3),
            Duration.ofHours(List.of(48, 48, 72).get(random.nextInt(3))),
            hard == 0 ? Optional.empty() : Optional.of(new FingerSet(hard)),
            prefer));
  }

  /** Decides week after week; counts how often later weeks were needed. */
  static List<Placement.Days> rolling(List<Placement.WeekDemand> weeks, int horizon, int[] count) {
    List<Placement.Days> settled = new ArrayList<>();
    List<Placement.HardDay> hard = new ArrayList<>();
    Map<String, LocalDate> last = new HashMap<>();
    for (int w = 0; w < weeks.size(); w++) {
      int now = w;
      Placement.Found found =
          Placement.place(
              known(weeks.get(w), hard, last),
              PlacementProperties.longestGaps(weeks)::get,
              () -> {
                count[0]++;
                return weeks.subList(now + 1, Math.min(weeks.size(), now + horizon));
              });
      count[1] += found.tries();
      count[2] = Math.max(count[2], found.tries());
      Placement.Days days = found.first();
      settled.add(days);
      for (int i = 0; i < days.sessions().size(); i++) {
        Placement.Request request = weeks.get(w).requests().get(i);
        if (days.sessions().get(i).isPresent()) {
          LocalDate day = days.sessions().get(i).get();
          last.merge(request.name(), day, (a, b) -> a.isAfter(b) ? a : b);
          request
              .hardFingers()
              .ifPresent(
                  f ->
                      hard.add(
                          new Placement.HardDay(day, f, new HardThing.Session(request.name()))));
        }
      }
      for (int t = 0; t < days.tests().size(); t++) {
        FingerSet fingers = weeks.get(w).tests().get(t).fingers();
        days.tests()
            .get(t)
            .ifPresent(day -> hard.add(new Placement.HardDay(day, fingers, new HardThing.Tests())));
      }
    }
    return settled;
  }

  private static Placement.WeekDemand known(
      Placement.WeekDemand demand, List<Placement.HardDay> more, Map<String, LocalDate> last) {
    List<Placement.HardDay> hard = new ArrayList<>(demand.week().hardDays());
    hard.addAll(more);
    return new Placement.WeekDemand(
        new Placement.Week(demand.week().first(), demand.week().slots(), hard, last),
        demand.requests(),
        demand.tests());
  }

  private static Tally rolled(int horizon) {
    Tally tally = new Tally(0, 0, 0);
    for (int seed = 0; seed < SEASONS; seed++) {
      List<Placement.WeekDemand> weeks = season(seed, WEEKS);
      tally = tally.plus(Calendars.cost(weeks, rolling(weeks, horizon, new int[3])), WEEKS);
    }
    return tally;
  }

  /** The figures of {@code docs/decisions.md}: of 16,560 sessions, this many find no day. */
  @Tag("full-build")
  @Test
  void eightWeeksAheadAreAsGoodAsAllAndOneIsNot() {
    Tally best = new Tally(0, 0, 0);
    for (int seed = 0; seed < SEASONS; seed++) {
      List<Placement.WeekDemand> weeks = season(seed, WEEKS);
      Placement.Found found = new PlacementSearch(weeks).search();
      assertTrue(found.proved());
      best = best.plus(Calendars.cost(weeks, found.weeks()), WEEKS);
    }
    assertEquals(new Tally(6755, 380, 2875), best);
    assertEquals(best, rolled(Calendars.WEEKS_TOGETHER));
    assertEquals(new Tally(6759, 379, 2862), rolled(4));
    assertEquals(new Tally(6921, 372, 2811), rolled(1));
  }

  /** Plans a year week by week, measured in steps of the search, not in time. */
  @Test
  void aYearTakesLittleWork() {
    int all = 0;
    int most = 0;
    int ahead = 0;
    for (int seed = 0; seed < 50; seed++) {
      int[] count = new int[3];
      rolling(season(seed, 52), Calendars.WEEKS_TOGETHER, count);
      ahead += count[0];
      all += count[1];
      most = Math.max(most, count[1]);
    }
    String seen = all + " tries in 50 years, " + most + " in one, " + ahead + " looks ahead";
    assertTrue(all < 50 * 100_000 && most < 1_000_000 && ahead < 50 * 20, seen);
  }

  /** Two sessions a week on days of their own: later weeks are never needed. */
  @Test
  void anEasyYearNeverLooksAhead() {
    Placement.Request request =
        new Placement.Request(
            "a", 60, Duration.ofHours(48), Optional.of(FingerSet.FOUR), List.of());
    List<Placement.WeekDemand> weeks = new ArrayList<>();
    for (int w = 0; w < 52; w++) {
      weeks.add(
          new Placement.WeekDemand(
              new Placement.Week(
                  Calendars.MONDAY.plusWeeks(w),
                  Calendars.anytime(
                      day ->
                          Duration.ofMinutes(
                              List.of(DayOfWeek.TUESDAY, DayOfWeek.FRIDAY)
                                      .contains(day.getDayOfWeek())
                                  ? 90
                                  : 0)),
                  List.of(),
                  Map.of()),
              List.of(request, request),
              List.of()));
    }
    int[] count = new int[3];
    rolling(weeks, Calendars.WEEKS_TOGETHER, count);
    assertEquals(0, count[0]);
    assertTrue(count[1] < 52 * 20, count[1] + " tries");
  }

  /**
   * With any number of sessions, the work is bounded, the days keep the rules, and the uncertainty
   * is reported.
   */
  @Test
  void theSearchOfACrowdedWeekIsBounded() {
    List<Placement.Request> requests = new ArrayList<>();
    for (int kind = 0; kind < 20; kind++) {
      requests.addAll(
          Collections.nCopies(
              2,
              new Placement.Request(
                  "kind" + kind, 30 + kind, Duration.ofHours(72), Optional.empty(), List.of())));
    }
    List<Placement.WeekDemand> weeks =
        List.of(
            new Placement.WeekDemand(
                new Placement.Week(
                    Calendars.MONDAY,
                    Calendars.anytime(day -> Duration.ofMinutes(90)),
                    List.of(),
                    Map.of()),
                requests,
                List.of()));
    Placement.Found found = new PlacementSearch(weeks).search();
    assertFalse(found.proved());
    assertTrue(Calendars.keepsRules(weeks, found.weeks()));
    int mostTries = 7 * 20 * (PlacementSearch.FIRST_WIDTH + PlacementSearch.WIDTH);
    assertTrue(found.tries() <= mostTries, found.tries() + " tries");
    assertEquals(40 - 14, Calendars.cost(weeks, found.weeks())[0]);
    assertEquals(0, Math.min(0, found.more()));
  }
}
