package gripwright.planning.placement;

import static gripwright.planning.Skarvdal.DRAG;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.athlete.Athlete;
import gripwright.grip.FingerSet;
import gripwright.planning.Skarvdal;
import gripwright.schedule.HardThing;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Which days are best, by one criterion after the other: Tuesday and Saturday have 90 min, Thursday
 * has 60.
 */
class PlacementSearchTest {

  private static final Athlete YLVA = Skarvdal.ylva().build();
  private static final Optional<FingerSet> EASY = Optional.empty();
  private static final Optional<FingerSet> HARD = Optional.of(FingerSet.FOUR);

  private final List<Placement.HardDay> hardDays = new ArrayList<>();
  private Map<String, LocalDate> last = Map.of();

  private static Placement.Request request(
      String name, int minutes, int gap, Optional<FingerSet> hard, DayOfWeek... prefer) {
    return new Placement.Request(name, minutes, Duration.ofHours(gap), hard, List.of(prefer));
  }

  private Placement.WeekDemand demand(
      int week, List<Placement.Tests> tests, List<Placement.Request> requests) {
    return new Placement.WeekDemand(
        new Placement.Week(
            MONDAY.plusWeeks(week), YLVA::slotsOn, hardDays, week == 0 ? last : Map.of()),
        requests,
        tests);
  }

  private static String days(List<Optional<LocalDate>> days) {
    return days.stream()
        .map(d -> d.map(day -> day.getDayOfWeek().name().substring(0, 3)).orElse("-"))
        .collect(Collectors.joining(" "));
  }

  private String place(Placement.Request... requests) {
    Placement.Found found =
        new PlacementSearch(List.of(demand(0, List.of(), List.of(requests)))).search();
    assertEquals(true, found.proved());
    assertEquals(0, found.more());
    return days(found.first().sessions());
  }

  private static Placement.Request[] times(int count, Placement.Request request) {
    return Collections.nCopies(count, request).toArray(Placement.Request[]::new);
  }

  @Test
  void oneSessionTakesTheEarliestDayThatIsLongEnough() {
    assertEquals("TUE", place(request("s", 60, 24, EASY)));
    hardDays.add(new Placement.HardDay(MONDAY, FingerSet.FOUR, new HardThing.Climbing()));
    assertEquals("THU", place(request("s", 60, 24, HARD)));
    assertEquals("SAT", place(request("s", 61, 24, HARD)));
  }

  @Test
  void gapsAreKeptAndMadeEven() {
    assertEquals("TUE SAT", place(times(2, request("s", 60, 24, EASY))));
    assertEquals("TUE THU SAT", place(times(3, request("s", 60, 48, EASY))));
    assertEquals("TUE SAT -", place(times(3, request("s", 60, 72, EASY))));
    assertEquals("TUE -", place(times(2, request("s", 60, 120, EASY))));
  }

  @Test
  void theLastOfItsNameBeforeTheWeekKeepsItsGap() {
    last = Map.of("s", MONDAY.minusDays(1));
    assertEquals("TUE", place(request("s", 60, 48, EASY)));
    assertEquals("THU", place(request("s", 60, 72, EASY)));
    assertEquals("TUE", place(request("t", 60, 72, EASY)));
  }

  @Test
  void preferredDaysComeBeforeEarlyOnes() {
    assertEquals("SAT", place(request("s", 60, 24, EASY, DayOfWeek.SATURDAY)));
    assertEquals("TUE", place(request("s", 60, 24, EASY, DayOfWeek.SUNDAY)));
    assertEquals(
        "THU SAT",
        place(times(2, request("s", 60, 24, EASY, DayOfWeek.THURSDAY, DayOfWeek.SATURDAY))));
  }

  @Test
  void twoSessionsShareADayOnlyWhereTheyMust() {
    assertEquals("TUE SAT", place(request("s", 40, 24, EASY), request("t", 40, 24, EASY)));
    Placement.Request s = request("s", 45, 48, EASY);
    Placement.Request t = request("t", 45, 48, EASY);
    assertEquals("TUE SAT TUE THU SAT", place(s, s, t, t, t));
    assertEquals("TUE SAT TUE THU SAT", place(s, s, request("t", 45, 48, EASY), t, t));
    Placement.Request longer = request("t", 46, 48, EASY);
    assertEquals("TUE - THU SAT", place(s, s, longer, longer), "91 min are too long for a day");
  }

  @Test
  void hardSessionsOnTheSameFingersAreTwoDaysApart() {
    Placement.Request drag = request("d", 30, 24, Optional.of(DRAG.fingers()));
    FingerSet little = new FingerSet(FingerSet.FOUR.bits() & ~DRAG.fingers().bits());
    assertEquals("TUE THU SAT -", place(times(3, request("s", 30, 24, HARD))) + " " + place4(drag));
    assertEquals(
        "TUE THU SAT TUE",
        place(drag, drag, drag, request("l", 30, 24, Optional.of(little))),
        "other fingers may be worked on the same day");
  }

  private String place4(Placement.Request drag) {
    String days =
        place(
            request("s", 30, 24, HARD),
            request("s", 30, 24, HARD),
            request("s", 30, 24, HARD),
            drag);
    return days.substring(days.lastIndexOf(' ') + 1);
  }

  private String tested(List<Placement.Tests> tests, Placement.Request... requests) {
    Placement.Days days =
        new PlacementSearch(List.of(demand(0, tests, List.of(requests)))).search().first();
    return days(days.sessions()) + " / " + days(days.tests());
  }

  @Test
  void testsTakeARestedDayOfTheirOwn() {
    Placement.Tests half = new Placement.Tests(30, FingerSet.FOUR);
    assertEquals(" / TUE", tested(List.of(half)));
    assertEquals("TUE / THU", tested(List.of(half), request("s", 30, 24, HARD)));
    assertEquals("TUE SAT / THU", tested(List.of(half), times(2, request("s", 30, 24, HARD))));
    assertEquals(
        "TUE THU SAT / -",
        tested(List.of(half), times(3, request("s", 30, 24, HARD))),
        "sessions come first");
    assertEquals(" / TUE THU", tested(List.of(half, half)));
    assertEquals(" / - TUE THU SAT", tested(List.of(half, half, half, half)));
    assertEquals(
        " / TUE", tested(List.of(new Placement.Tests(90, FingerSet.FOUR))), "just long enough");
    assertEquals(" / -", tested(List.of(new Placement.Tests(91, FingerSet.FOUR))));
  }

  @Test
  void nothingHardComesTheDayAfterATest() {
    Athlete always = always();
    Placement.WeekDemand week =
        new Placement.WeekDemand(
            new Placement.Week(MONDAY, always::slotsOn, List.of(), Map.of()),
            List.of(request("s", 30, 24, HARD)),
            List.of(new Placement.Tests(30, FingerSet.FOUR)));
    Placement.Days days = new PlacementSearch(List.of(week)).search().first();
    assertEquals("MON / WED", days(days.sessions()) + " / " + days(days.tests()));
  }

  private static Athlete always() {
    Athlete.Builder always = Skarvdal.ylva();
    for (DayOfWeek day : DayOfWeek.values()) {
      always.available(day, Duration.ofMinutes(90));
    }
    return always.build();
  }

  @Test
  void aGapReachesIntoTheNextWeek() {
    List<Placement.Request> two = List.of(times(2, request("s", 60, 96, EASY)));
    Placement.Found found =
        new PlacementSearch(List.of(demand(0, List.of(), two), demand(1, List.of(), two))).search();
    assertEquals("TUE SAT", days(found.weeks().get(0).sessions()));
    assertEquals("THU -", days(found.weeks().get(1).sessions()));
  }

  @Test
  void noSessionIsDroppedEarlierThanNecessary() {
    // Saturday and the Tuesday after it lie three days apart, so that one of them is dropped.
    List<Placement.Request> one = List.of(request("s", 80, 96, EASY, DayOfWeek.SATURDAY));
    List<Placement.Request> two = List.of(times(2, request("s", 80, 96, EASY)));
    Placement.Found found =
        new PlacementSearch(List.of(demand(0, List.of(), one), demand(1, List.of(), two))).search();
    assertEquals("TUE", days(found.weeks().get(0).sessions()), "a place next week counts more");
    assertEquals("TUE SAT", days(found.weeks().get(1).sessions()));
  }

  @Test
  void withTooFewStatesTheSolutionIsNotProved() {
    List<Placement.Request> many = new ArrayList<>();
    for (String name : List.of("a", "b", "c", "d", "e")) {
      many.addAll(List.of(times(3, request(name, 20, 24, EASY))));
    }
    Placement.Found narrow =
        new PlacementSearch(List.of(demand(0, List.of(), many)), 1, 1).search();
    Placement.Found wide = new PlacementSearch(List.of(demand(0, List.of(), many))).search();
    long placed = wide.first().sessions().stream().filter(Optional::isPresent).count();
    assertEquals(true, wide.proved());
    assertEquals(11, placed, "four on each of the long days and three on the short one");
    assertEquals(
        true,
        narrow.proved()
            || narrow.first().sessions().stream().filter(Optional::isPresent).count()
                    + narrow.more()
                >= placed);
  }
}
