package gripwright.planning.placement;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.planning.Calendars;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;

/** Placement against a search that tries every day for every session and knows no shortcuts. */
public class PlacementProperties {

  @Provide
  Arbitrary<List<Placement.WeekDemand>> oneWeek() {
    return Calendars.weeks(1, 3, 2);
  }

  @Provide
  Arbitrary<List<Placement.WeekDemand>> twoWeeks() {
    return Calendars.weeks(2, 2, 2);
  }

  @Provide
  Arbitrary<List<Placement.WeekDemand>> threeWeeks() {
    return Calendars.weeks(3, 2, 1);
  }

  @Provide
  Arbitrary<List<Placement.WeekDemand>> fiveWeeks() {
    return Calendars.weeks(5, 3, 3);
  }

  private static void assertBest(List<Placement.WeekDemand> weeks) {
    Placement.Found found = new PlacementSearch(weeks).search();
    assertTrue(found.proved());
    assertTrue(Calendars.keepsRules(weeks, found.weeks()), found.toString());
    assertArrayEquals(Calendars.leastCost(weeks), Calendars.cost(weeks, found.weeks()));
    long cost = Calendars.cost(weeks, found.weeks())[0];
    Statistics.label("sessions without a day").collect(cost == 0 ? "none" : "some");
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void theDaysOfAWeekAreOptimal(@ForAll("oneWeek") List<Placement.WeekDemand> weeks) {
    assertBest(weeks);
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void theDaysOfTwoWeeksAreOptimal(@ForAll("twoWeeks") List<Placement.WeekDemand> weeks) {
    assertBest(weeks);
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void theDaysOfThreeWeeksAreOptimal(@ForAll("threeWeeks") List<Placement.WeekDemand> weeks) {
    assertBest(weeks);
  }

  /** The first week of the best solution for all weeks, whether the others were searched or not. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void laterWeeksAreLeftOutOnlyWhereTheyChangeNothing(
      @ForAll("threeWeeks") List<Placement.WeekDemand> weeks) {
    boolean[] lookedAhead = {false};
    Placement.Found found =
        Placement.place(
            weeks.get(0),
            longestGaps(weeks)::get,
            () -> {
              lookedAhead[0] = true;
              return weeks.subList(1, 3);
            });
    assertEquals(new PlacementSearch(weeks).search().first(), found.first());
    Statistics.label("looked ahead").collect(lookedAhead[0]);
  }

  /** Returns the longest gap of each name, in days. */
  public static Map<String, Integer> longestGaps(List<Placement.WeekDemand> weeks) {
    Map<String, Integer> gaps = new HashMap<>();
    weeks.stream()
        .flatMap(week -> week.requests().stream())
        .forEach(request -> gaps.merge(request.name(), request.gapDays(), Math::max));
    return gaps;
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void theOrderOfTheRequestsDoesNotMatter(
      @ForAll("fiveWeeks") List<Placement.WeekDemand> weeks,
      @ForAll @IntRange(min = 0, max = 1000) int seed) {
    List<Placement.WeekDemand> shuffled =
        weeks.stream()
            .map(
                demand -> {
                  List<Placement.Request> requests = new ArrayList<>(demand.requests());
                  Collections.shuffle(requests, new Random(seed));
                  return new Placement.WeekDemand(demand.week(), requests, demand.tests());
                })
            .toList();
    assertEquals(days(weeks), days(shuffled));
  }

  private static List<String> days(List<Placement.WeekDemand> weeks) {
    Placement.Found found = new PlacementSearch(weeks).search();
    List<String> words = new ArrayList<>();
    for (int w = 0; w < weeks.size(); w++) {
      List<Optional<LocalDate>> days = found.weeks().get(w).sessions();
      for (int i = 0; i < days.size(); i++) {
        words.add(w + weeks.get(w).requests().get(i).name() + " " + days.get(i));
      }
    }
    Collections.sort(words);
    return words;
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void theSameInputGivesTheSameResult(@ForAll("fiveWeeks") List<Placement.WeekDemand> weeks) {
    assertEquals(new PlacementSearch(weeks).search(), new PlacementSearch(weeks).search());
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void lessTimeNeverAddsASession(
      @ForAll("fiveWeeks") List<Placement.WeekDemand> weeks,
      @ForAll @IntRange(min = 0, max = 34) int day,
      @ForAll @IntRange(min = 0, max = 60) int minutes) {
    LocalDate cut = Calendars.MONDAY.plusDays(day);
    List<Placement.WeekDemand> shorter =
        weeks.stream()
            .map(
                demand -> {
                  Placement.Week week = demand.week();
                  Placement.Week less =
                      new Placement.Week(
                          week.first(),
                          Calendars.anytime(
                              d -> {
                                java.time.Duration time =
                                    java.time.Duration.ofMinutes(week.longestOn(d));
                                java.time.Duration most = java.time.Duration.ofMinutes(minutes);
                                return d.equals(cut) && time.compareTo(most) > 0 ? most : time;
                              }),
                          week.hardDays(),
                          week.lastOfName());
                  return new Placement.WeekDemand(less, demand.requests(), demand.tests());
                })
            .toList();
    long[] before = Calendars.cost(weeks, new PlacementSearch(weeks).search().weeks());
    long[] after = Calendars.cost(shorter, new PlacementSearch(shorter).search().weeks());
    assertTrue(Arrays.compare(before, 0, 2, after, 0, 2) <= 0);
  }

  /** States dropped by the second search never lead to a better solution. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void aPoorFirstSolutionChangesNothing(@ForAll("fiveWeeks") List<Placement.WeekDemand> weeks) {
    Placement.Found found = new PlacementSearch(weeks, 2, PlacementSearch.WIDTH).search();
    assertTrue(found.proved());
    assertEquals(new PlacementSearch(weeks).search().weeks(), found.weeks());
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void anUnprovedSolutionStatesItsLargestPossibleError(
      @ForAll("fiveWeeks") List<Placement.WeekDemand> weeks) {
    Placement.Found poor = new PlacementSearch(weeks, 2, 3).search();
    long best = Calendars.cost(weeks, new PlacementSearch(weeks).search().weeks())[0];
    long missing = Calendars.cost(weeks, poor.weeks())[0];
    assertTrue(Calendars.keepsRules(weeks, poor.weeks()));
    assertTrue(missing - poor.more() <= best, missing + " less " + poor.more() + ", " + best);
    Statistics.label("sessions off").collect(poor.proved() ? "proved" : "" + (missing - best));
  }

  /** Every fact of a conflict is necessary. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void withoutOneFactOfAConflictAllSessionsFit(
      @ForAll("oneWeek") List<Placement.WeekDemand> weeks) {
    Placement.WeekDemand demand = weeks.get(0);
    Placement.Days days = new PlacementSearch(weeks).search().first();
    for (int i = 0; i < demand.requests().size(); i++) {
      Placement.Request request = demand.requests().get(i);
      if (days.sessions().get(i).isEmpty()) {
        List<Placement.Request> others = new ArrayList<>();
        for (int j = 0; j < demand.requests().size(); j++) {
          Placement.Request other = demand.requests().get(j);
          if (days.sessions().get(j).isPresent() && !other.name().equals(request.name())) {
            others.add(other);
          }
        }
        int wanted =
            (int) demand.requests().stream().filter(r -> r.name().equals(request.name())).count();
        Conflict conflict = new Conflict(demand.week(), request, wanted, others);
        Set<Conflict.Fact> facts = conflict.fewest();
        assertFalse(facts.isEmpty());
        assertFalse(conflict.fits(facts));
        for (Conflict.Fact fact : facts) {
          Set<Conflict.Fact> fewer = new LinkedHashSet<>(facts);
          fewer.remove(fact);
          assertTrue(conflict.fits(fewer), fact + " of " + facts);
        }
        Statistics.label("facts in a conflict").collect(facts.size());
      }
    }
  }
}
