package gripwright.planning;

import gripwright.athlete.Slot;
import gripwright.grip.FingerSet;
import gripwright.planning.placement.Placement;
import gripwright.schedule.HardThing;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Weeks to be placed, and what placement has to keep and to reach, each said the plain way. */
public final class Calendars {

  /** Weeks that a plan places together. */
  public static final int WEEKS_TOGETHER = LookAhead.WEEKS;

  public static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);
  private static final LocalDate LAST_A = MONDAY.minusDays(1);

  private Calendars() {}

  /**
   * Weeks of up to so many kinds of session, each up to so many times a week; another block with
   * sessions of the same names may begin in one of them.
   */
  public static Arbitrary<List<Placement.WeekDemand>> weeks(int count, int kinds, int most) {
    return Combinators.combine(
            Arbitraries.of(0, 0, 30, 60, 90).list().ofSize(7 * count),
            block(kinds, most),
            block(kinds, most),
            Arbitraries.integers().between(1, count),
            tests(),
            Arbitraries.integers().between(0, count))
        .as(Calendars::demand);
  }

  private static Arbitrary<List<Placement.Request>> block(int kinds, int most) {
    return Combinators.combine(
            kind("a", most),
            kinds > 1 ? kind("b", most) : none(),
            kinds > 2 ? kind("c", most) : none())
        .as((a, b, c) -> Stream.of(a, b, c).flatMap(List::stream).toList());
  }

  private static Arbitrary<List<Placement.Request>> none() {
    return Arbitraries.just(List.of());
  }

  private static Arbitrary<List<Placement.Tests>> tests() {
    return Arbitraries.of(0b0111, 0b1111)
        .map(fingers -> List.of(new Placement.Tests(30, new FingerSet(fingers))));
  }

  /** Sessions of one name, all alike, as a plan has them. */
  private static Arbitrary<List<Placement.Request>> kind(String name, int most) {
    return Combinators.combine(
            Arbitraries.of(30, 60),
            Arbitraries.of(24, 48, 72, 96),
            Arbitraries.of(0, 0b0111, 0b1000, 0b1111),
            Arbitraries.integers().between(1, most),
            Arbitraries.of(
                List.<DayOfWeek>of(), List.of(DayOfWeek.SUNDAY), List.of(DayOfWeek.TUESDAY)),
            Arbitraries.of(
                List.<DayOfWeek>of(),
                List.<DayOfWeek>of(),
                List.of(DayOfWeek.TUESDAY, DayOfWeek.THURSDAY, DayOfWeek.SATURDAY)))
        .as(
            (minutes, gap, fingers, count, prefer, onlyOn) ->
                Collections.nCopies(
                    count,
                    new Placement.Request(
                        name,
                        minutes,
                        Duration.ofHours(gap),
                        fingers == 0 ? Optional.empty() : Optional.of(new FingerSet(fingers)),
                        prefer,
                        onlyOn)));
  }

  private static List<Placement.WeekDemand> demand(
      List<Integer> minutes,
      List<Placement.Request> block,
      List<Placement.Request> nextBlock,
      int turn,
      List<Placement.Tests> tests,
      int testWeek) {
    List<Placement.WeekDemand> weeks = new ArrayList<>();
    for (int w = 0; w < minutes.size() / 7; w++) {
      weeks.add(
          new Placement.WeekDemand(
              new Placement.Week(
                  MONDAY.plusWeeks(w),
                  anytime(day -> minutesOn(minutes, day)),
                  List.of(
                      new Placement.HardDay(
                          MONDAY.plusDays(9), FingerSet.FOUR, new HardThing.Climbing())),
                  w == 0 ? Map.of("a", LAST_A) : Map.of()),
              w < turn ? block : nextBlock,
              w == testWeek ? tests : List.of()));
    }
    return weeks;
  }

  /** Times of a week that have no time of day. */
  public static Function<LocalDate, List<Slot>> anytime(Function<LocalDate, Duration> time) {
    return day -> {
      Duration of = time.apply(day);
      return of.isZero() ? List.of() : List.of(Slot.on(day.getDayOfWeek(), of));
    };
  }

  private static Duration minutesOn(List<Integer> minutes, LocalDate day) {
    int index = (int) ChronoUnit.DAYS.between(MONDAY, day);
    return Duration.ofMinutes(index < minutes.size() ? minutes.get(index) : 0);
  }

  /** Something on a day: a session of a week, or tests. */
  private record Placed(
      int week, LocalDate day, String name, int minutes, int gapDays, int hard, boolean tests) {

    /** Returns whether its session may be on its weekday. */
    boolean isOnItsWeekday(Placement.WeekDemand demand) {
      return demand.requests().stream()
          .filter(request -> !tests && request.name().equals(name))
          .allMatch(
              request ->
                  request.onlyOn().isEmpty() || request.onlyOn().contains(day.getDayOfWeek()));
    }
  }

  private static List<Placed> placed(List<Placement.WeekDemand> weeks, List<Placement.Days> days) {
    List<Placed> all = new ArrayList<>();
    for (int w = 0; w < days.size(); w++) {
      Placement.WeekDemand demand = weeks.get(w);
      for (int i = 0; i < days.get(w).sessions().size(); i++) {
        Placement.Request r = demand.requests().get(i);
        Optional<LocalDate> day = days.get(w).sessions().get(i);
        if (day.isPresent()) {
          int hard = r.hardFingers().map(FingerSet::bits).orElse(0);
          all.add(new Placed(w, day.get(), r.name(), r.minutes(), r.gapDays(), hard, false));
        }
      }
      for (int i = 0; i < days.get(w).tests().size(); i++) {
        Placement.Tests t = demand.tests().get(i);
        Optional<LocalDate> day = days.get(w).tests().get(i);
        if (day.isPresent()) {
          all.add(new Placed(w, day.get(), "tests", t.minutes(), 2, t.fingers().bits(), true));
        }
      }
    }
    return all;
  }

  /** Returns whether days keep every rule; a list that ends early is a plan not finished. */
  public static boolean keepsRules(List<Placement.WeekDemand> weeks, List<Placement.Days> days) {
    List<Placed> all = placed(weeks, days);
    for (Placed one : all) {
      Placement.Week week = weeks.get(one.week()).week();
      if (!one.isOnItsWeekday(weeks.get(one.week()))) {
        return false;
      }
      int minutes = 0;
      for (Placed other : all) {
        long apart = Math.abs(ChronoUnit.DAYS.between(one.day(), other.day()));
        minutes += apart == 0 ? other.minutes() : 0;
        if (one != other && !compatible(one, other, apart)) {
          return false;
        }
      }
      if (minutes > week.longestOn(one.day())
          || (one.name().equals("a")
              && ChronoUnit.DAYS.between(LAST_A, one.day()) < one.gapDays())) {
        return false;
      }
      for (Placement.HardDay hard : week.hardDays()) {
        boolean near = Math.abs(ChronoUnit.DAYS.between(hard.date(), one.day())) < 2;
        if (near && (one.tests() || (one.hard() & hard.fingers().bits()) != 0)) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean compatible(Placed one, Placed other, long apart) {
    boolean later = !one.day().isBefore(other.day()); // which keeps its gap to the one before
    if (later && one.name().equals(other.name()) && !one.tests() && apart < one.gapDays()) {
      return false;
    }
    boolean shared = (one.hard() & other.hard()) != 0;
    if (shared && apart < 2) {
      return false;
    }
    if (!one.tests()) {
      return true; // the other way round is looked at too
    }
    boolean before = other.day().isBefore(one.day()) || other.week() == one.week();
    return !(apart == 0 || (other.hard() != 0 && apart < 2 && before));
  }

  /** What days cost, what counts most first; fewer is better. */
  public static long[] cost(List<Placement.WeekDemand> weeks, List<Placement.Days> days) {
    long[] cost = new long[2 + weeks.size() + 4];
    for (int w = 0; w < weeks.size(); w++) {
      Placement.WeekDemand demand = weeks.get(w);
      Map<Integer, Integer> perDay = new TreeMap<>();
      for (int i = 0; i < demand.requests().size(); i++) {
        Optional<LocalDate> day = days.get(w).sessions().get(i);
        List<DayOfWeek> prefer = demand.requests().get(i).prefer();
        if (day.isEmpty()) {
          cost[0]++;
          cost[2 + w]++;
        } else {
          boolean liked = prefer.isEmpty() || prefer.contains(day.get().getDayOfWeek());
          cost[2 + weeks.size()] += liked ? 0 : 1;
          int d = (int) ChronoUnit.DAYS.between(demand.week().first(), day.get());
          perDay.merge(d, 1, Integer::sum);
          cost[cost.length - 1] += d;
        }
      }
      cost[1] += days.get(w).tests().stream().filter(Optional::isEmpty).count();
      int before = -1;
      for (Map.Entry<Integer, Integer> day : perDay.entrySet()) {
        cost[cost.length - 3] += day.getValue() - 1;
        cost[cost.length - 2] += before < 0 ? 0 : 420 / (day.getKey() - before);
        before = day.getKey();
      }
    }
    return cost;
  }

  /** Tries every day for every session and every test, and knows no shortcuts. */
  public static long[] leastCost(List<Placement.WeekDemand> weeks) {
    return least(weeks, new ArrayList<>(), null);
  }

  private static long[] least(
      List<Placement.WeekDemand> weeks, List<Placement.Days> days, long[] least) {
    if (!keepsRules(weeks, days)) {
      return least;
    }
    int w = days.size() - 1;
    boolean full =
        w < 0
            || (days.get(w).sessions().size() == weeks.get(w).requests().size()
                && days.get(w).tests().size() == weeks.get(w).tests().size());
    if (full && days.size() == weeks.size()) {
      long[] cost = cost(weeks, days);
      return least == null || Arrays.compare(cost, least) < 0 ? cost : least;
    }
    long[] best = least;
    if (full) {
      days.add(new Placement.Days(new ArrayList<>(), new ArrayList<>(), List.of()));
      best = least(weeks, days, best);
      days.remove(days.size() - 1);
      return best;
    }
    Placement.Days week = days.get(w);
    List<Optional<LocalDate>> list =
        week.sessions().size() < weeks.get(w).requests().size() ? week.sessions() : week.tests();
    for (int d = -1; d < 7; d++) {
      LocalDate first = weeks.get(w).week().first();
      list.add(d < 0 ? Optional.empty() : Optional.of(first.plusDays(d)));
      best = least(weeks, days, best);
      list.remove(list.size() - 1);
    }
    return best;
  }
}
