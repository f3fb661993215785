package gripwright.planning.placement;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Slot;
import gripwright.grip.FingerSet;
import gripwright.planning.Calendars;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;

/** Placement in slots with times, against a search that tries every slot for every session. */
class SharedDaysProperties {

  private static final List<LocalTime> STARTS =
      List.of(LocalTime.of(7, 0), LocalTime.of(11, 30), LocalTime.of(18, 30));

  /** The days with time to train, few enough that sessions share them. */
  private static final List<Integer> DAYS = List.of(0, 2, 3);

  @Provide
  Arbitrary<Placement.WeekDemand> timedWeek() {
    return Combinators.combine(
            Arbitraries.of(0, 40, 90).list().ofSize(3 * DAYS.size()),
            kind("a"),
            kind("b"),
            kind("c"),
            Arbitraries.of(false, false, true))
        .as(
            (minutes, a, b, c, tested) ->
                new Placement.WeekDemand(
                    new Placement.Week(
                        Calendars.MONDAY, day -> slots(minutes, day), List.of(), Map.of()),
                    Stream.of(a, b, c).flatMap(List::stream).limit(4).toList(),
                    tested ? List.of(new Placement.Tests(40, FingerSet.FOUR)) : List.of()));
  }

  private static List<Slot> slots(List<Integer> minutes, LocalDate day) {
    int d = DAYS.indexOf((int) ChronoUnit.DAYS.between(Calendars.MONDAY, day));
    List<Slot> slots = new ArrayList<>();
    for (int s = 0; s < STARTS.size() && d >= 0; s++) {
      int free = minutes.get(3 * d + s);
      if (free > 0) {
        slots.add(Slot.on(day.getDayOfWeek(), STARTS.get(s), Duration.ofMinutes(free)));
      }
    }
    return slots;
  }

  private static Arbitrary<List<Placement.Request>> kind(String name) {
    return Combinators.combine(
            Arbitraries.of(30, 60),
            Arbitraries.of(24, 48),
            Arbitraries.of(0, 0, 0b0111, 0b1000),
            Arbitraries.integers().between(1, 2),
            Arbitraries.of(0, 0, 4, 6, 10))
        .as(
            (minutes, gap, fingers, count, share) ->
                Collections.nCopies(
                    count,
                    new Placement.Request(
                        name,
                        minutes,
                        Duration.ofHours(gap),
                        fingers == 0 ? Optional.empty() : Optional.of(new FingerSet(fingers)),
                        List.of(),
                        List.of(),
                        share == 0 ? Optional.empty() : Optional.of(Duration.ofHours(share)))));
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void noBetterWeekExists(@ForAll("timedWeek") Placement.WeekDemand week) {
    Placement.Found found = new PlacementSearch(List.of(week)).search();
    assertTrue(found.proved());
    Placement.Days days = found.first();
    assertTrue(keepsRules(week, spots(days), days.tests()), days.toString());
    long[] least = {Long.MAX_VALUE, Long.MAX_VALUE, Long.MAX_VALUE};
    least(week, new ArrayList<>(), least);
    assertArrayEquals(least, cost(week, spots(days), days.tests()), days.toString());
    assertEquals(found, new PlacementSearch(List.of(week)).search());
    Statistics.label("shared days").collect(least[2] > 0);
  }

  /** Of three sessions on a day, each two need one that shares days. */
  @Example
  void twoThatShareNoDayAreNotBroughtTogetherByAThird() {
    for (int sharing = 1; sharing <= 2; sharing++) {
      List<Placement.Request> requests = new ArrayList<>();
      for (String name : List.of("a", "b", "c")) {
        boolean shares = name.equals("b") || (sharing == 2 && name.equals("a"));
        requests.add(
            new Placement.Request(
                name,
                30,
                Duration.ofHours(24),
                Optional.empty(),
                List.of(),
                List.of(),
                shares ? Optional.of(Duration.ofHours(4)) : Optional.empty()));
      }
      List<Integer> minutes = new ArrayList<>(Collections.nCopies(3 * DAYS.size(), 0));
      Collections.fill(minutes.subList(0, 3), 40);
      Placement.Week week =
          new Placement.Week(Calendars.MONDAY, day -> slots(minutes, day), List.of(), Map.of());
      Placement.Found found =
          new PlacementSearch(List.of(new Placement.WeekDemand(week, requests, List.of())))
              .search();
      long placed = found.first().sessions().stream().filter(Optional::isPresent).count();
      assertEquals(1 + sharing, placed);
    }
  }

  /** Every fact of a conflict is necessary. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void theFactsOfAConflictAreNecessary(@ForAll("timedWeek") Placement.WeekDemand week) {
    Placement.Days days = new PlacementSearch(List.of(week)).search().first();
    for (int i = 0; i < week.requests().size(); i++) {
      Placement.Request request = week.requests().get(i);
      if (days.spot(i).isEmpty()) {
        List<Placement.Request> others = new ArrayList<>();
        for (int j = 0; j < week.requests().size(); j++) {
          Placement.Request other = week.requests().get(j);
          if (days.spot(j).isPresent() && !other.name().equals(request.name())) {
            others.add(other);
          }
        }
        int wanted = (int) week.requests().stream().filter(request::equals).count();
        Conflict conflict = new Conflict(week.week(), request, wanted, others);
        for (Conflict.Fact fact : conflict.fewest()) {
          List<Conflict.Fact> fewer = new ArrayList<>(conflict.fewest());
          fewer.remove(fact);
          assertTrue(conflict.fits(java.util.Set.copyOf(fewer)), fact.toString());
        }
      }
    }
  }

  private static List<Optional<Placement.Spot>> spots(Placement.Days days) {
    List<Optional<Placement.Spot>> spots = new ArrayList<>();
    for (int i = 0; i < days.sessions().size(); i++) {
      spots.add(days.spot(i));
    }
    return spots;
  }

  /** Sessions without a day, tests without one, sessions on the day of another. */
  private static long[] cost(
      Placement.WeekDemand week,
      List<Optional<Placement.Spot>> spots,
      List<Optional<LocalDate>> tests) {
    long placed = spots.stream().filter(Optional::isPresent).count();
    long days =
        spots.stream().flatMap(Optional::stream).map(Placement.Spot::date).distinct().count();
    return new long[] {
      week.requests().size() - placed,
      tests.stream().filter(Optional::isEmpty).count(),
      placed - days
    };
  }

  private static void least(
      Placement.WeekDemand week, List<Optional<Placement.Spot>> spots, long[] least) {
    if (spots.size() == week.requests().size()) {
      for (int d = -1; d < 7; d++) {
        List<Optional<LocalDate>> tests =
            week.tests().isEmpty()
                ? List.of()
                : List.of(d < 0 ? Optional.empty() : Optional.of(Calendars.MONDAY.plusDays(d)));
        long[] cost = cost(week, spots, tests);
        if (Arrays.compare(cost, least) < 0 && keepsRules(week, spots, tests)) {
          System.arraycopy(cost, 0, least, 0, cost.length);
        }
      }
      return;
    }
    spots.add(Optional.empty());
    least(week, spots, least);
    spots.remove(spots.size() - 1);
    Placement.Request request = week.requests().get(spots.size());
    for (int d = 0; d < 7; d++) {
      LocalDate day = Calendars.MONDAY.plusDays(d);
      for (Slot slot : week.week().slots().apply(day)) {
        if (slot.time().toMinutes() >= request.minutes()) {
          spots.add(Optional.of(new Placement.Spot(day, slot)));
          least(week, spots, least);
          spots.remove(spots.size() - 1);
        }
      }
    }
  }

  private static boolean keepsRules(
      Placement.WeekDemand week,
      List<Optional<Placement.Spot>> spots,
      List<Optional<LocalDate>> tests) {
    for (int i = 0; i < spots.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (spots.get(i).isPresent()
            && spots.get(j).isPresent()
            && !goTogether(
                week.requests().get(i), spots.get(i).get(),
                week.requests().get(j), spots.get(j).get())) {
          return false;
        }
      }
      for (Optional<LocalDate> test : tests) {
        if (spots.get(i).isPresent() && test.isPresent()) {
          long apart = Math.abs(ChronoUnit.DAYS.between(spots.get(i).get().date(), test.get()));
          boolean hard = week.requests().get(i).hardFingers().isPresent();
          if (apart == 0 || (hard && apart < 2)) {
            return false;
          }
        }
      }
    }
    return tests.stream()
        .flatMap(Optional::stream)
        .allMatch(
            day ->
                week.week().slots().apply(day).stream().anyMatch(s -> s.time().toMinutes() >= 40));
  }

  private static boolean goTogether(
      Placement.Request one, Placement.Spot at, Placement.Request other, Placement.Spot otherAt) {
    long apart = Math.abs(ChronoUnit.DAYS.between(at.date(), otherAt.date()));
    boolean sameFingers =
        one.hardFingers().flatMap(f -> other.hardFingers().map(f::overlaps)).orElse(false);
    if ((sameFingers && apart < 2)
        || (one.name().equals(other.name()) && apart < Math.max(1, one.gap().toDays()))) {
      return false;
    }
    if (apart > 0) {
      return true;
    }
    boolean first = at.slot().startMinute() < otherAt.slot().startMinute();
    int end =
        first
            ? at.slot().startMinute() + one.minutes()
            : otherAt.slot().startMinute() + other.minutes();
    int start = first ? otherAt.slot().startMinute() : at.slot().startMinute();
    long hours =
        Stream.of(one.share(), other.share())
            .flatMap(Optional::stream)
            .mapToLong(Duration::toHours)
            .max()
            .orElse(0);
    return hours > 0 && start - end >= 60 * hours;
  }
}
