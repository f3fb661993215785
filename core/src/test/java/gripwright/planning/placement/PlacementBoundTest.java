package gripwright.planning.placement;

import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.grip.FingerSet;
import gripwright.planning.Skarvdal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The number of sessions that must lack a day: 90 min on Tuesday and Saturday, 60 on Thursday. */
class PlacementBoundTest {

  private static List<Placement.Request> times(
      int count, String name, int minutes, int gap, boolean hard) {
    return Collections.nCopies(
        count,
        new Placement.Request(
            name,
            minutes,
            Duration.ofHours(gap),
            hard ? Optional.of(FingerSet.FOUR) : Optional.empty(),
            List.of()));
  }

  @SafeVarargs
  private static PlacementBound bound(List<Placement.Request>... weeks) {
    List<Placement.WeekDemand> demand = new ArrayList<>();
    TreeSet<String> names = new TreeSet<>();
    for (List<Placement.Request> requests : weeks) {
      requests.forEach(r -> names.add(r.name()));
      demand.add(
          new Placement.WeekDemand(
              new Placement.Week(
                  MONDAY.plusWeeks(demand.size()),
                  Skarvdal.ylva().build()::slotsOn,
                  List.of(),
                  Map.of()),
              requests,
              List.of()));
    }
    return new PlacementBound(demand, List.copyOf(names));
  }

  private static List<Placement.Request> both(
      List<Placement.Request> one, List<Placement.Request> other) {
    List<Placement.Request> both = new ArrayList<>(one);
    both.addAll(other);
    return both;
  }

  @Test
  void eachNameByItselfWithItsGap() {
    assertEquals(0, bound(times(3, "s", 30, 48, false)).missing());
    assertEquals(1, bound(times(4, "s", 30, 48, false)).missing());
    assertEquals(1, bound(times(3, "s", 30, 72, false)).missing());
    assertEquals(1, bound(times(3, "s", 61, 48, false)).missing());
    assertEquals(
        2, bound(both(times(4, "s", 30, 48, false), times(4, "t", 30, 48, false))).missing());
  }

  @Test
  void allTogetherByTheTimeOfTheDays() {
    List<Placement.Request> six = both(times(3, "s", 45, 24, false), times(3, "t", 45, 24, false));
    assertEquals(1, bound(six).missing(), "two, one and two have time");
    assertEquals(
        0, bound(both(times(3, "s", 45, 24, false), times(2, "t", 45, 24, false))).missing());
    assertEquals(
        0, bound(both(times(3, "s", 30, 24, false), times(3, "t", 30, 24, false))).missing());
  }

  @Test
  void hardOnesByEveryOtherDay() {
    List<Placement.Request> hard = new ArrayList<>();
    for (String name : List.of("a", "b", "c", "d", "e")) {
      hard.addAll(times(1, name, 10, 24, true));
    }
    assertEquals(1, bound(hard).missing(), "four days of seven lie two apart");
    assertEquals(0, bound(hard.subList(0, 4)).missing());
  }

  @Test
  void weeksAddUp() {
    List<Placement.Request> four = times(4, "s", 30, 48, false);
    assertEquals(3, bound(four, four, four).missing());
  }

  @Test
  void fromADayOnOnlyTheRemainingSessionsCount() {
    PlacementBound bound = bound(times(3, "s", 30, 48, false), times(4, "s", 30, 48, false));
    // days since the last of the name, and how many are placed
    assertEquals(1, bound.missing(0, 0, new int[] {2, 0}, 1), "the second week alone");
    assertEquals(2, bound.missing(0, 2, new int[] {2, 0}, 1), "Tuesday is over");
    assertEquals(1, bound.missing(0, 2, new int[] {1, 1}, 1));
    assertEquals(2, bound.missing(0, 4, new int[] {2, 1}, 1));
    assertEquals(4, bound.missing(0, 7, new int[] {2, 0}, 1));
    assertEquals(1, bound.missing(0, 7, new int[] {2, 3}, 1));
    assertEquals(3, bound.missing(0, 3, new int[] {0, 0}, 1), "too soon for Thursday");
  }
}
