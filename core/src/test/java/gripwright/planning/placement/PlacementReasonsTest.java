package gripwright.planning.placement;

import static gripwright.planning.Skarvdal.DRAG;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.athlete.Athlete;
import gripwright.grip.FingerSet;
import gripwright.planning.Skarvdal;
import gripwright.schedule.HardThing;
import gripwright.wording.Words;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Why a session is on its day, or on none: Tuesday, Thursday and Saturday are available. */
class PlacementReasonsTest {

  private static final LocalDate TUESDAY = MONDAY.plusDays(1);
  private static final LocalDate THURSDAY = MONDAY.plusDays(3);

  private static Placement.Request request(
      int minutes, Optional<FingerSet> hard, DayOfWeek... prefer) {
    return new Placement.Request("s", minutes, Duration.ofHours(48), hard, List.of(prefer));
  }

  private static Placement.Spot spot(LocalDate day) {
    return new Placement.Spot(day, Skarvdal.ylva().build().slotsOn(day).get(0));
  }

  private static Placement.HardDay hard(int day, FingerSet fingers, HardThing what) {
    return new Placement.HardDay(MONDAY.plusDays(day), fingers, what);
  }

  private static PlacementReasons words(
      Athlete athlete, Map<String, LocalDate> last, Placement.HardDay... hard) {
    return new PlacementReasons(
        new Placement.Week(MONDAY, athlete::slotsOn, List.of(hard), last), athlete, 2);
  }

  private static PlacementReasons words(Placement.HardDay... hard) {
    return words(Skarvdal.ylva().build(), Map.of(), hard);
  }

  private static final Optional<FingerSet> FOUR = Optional.of(FingerSet.FOUR);

  @Test
  void theReasonHasTheTimeOfTheDayAndTheLastSession() {
    assertEquals(
        "90 min free for 45 min",
        Words.say(words().because(request(45, Optional.empty()), spot(TUESDAY))));
    assertEquals(
        "60 min free for 45 min, a preferred day",
        Words.say(
            words().because(request(45, Optional.empty(), DayOfWeek.THURSDAY), spot(THURSDAY))));
    assertEquals(
        "60 min free for 45 min; 4 days after the last one",
        Words.say(
            words(Skarvdal.ylva().build(), Map.of("s", MONDAY.minusDays(1), "t", MONDAY))
                .because(request(45, Optional.empty()), spot(THURSDAY))));
  }

  @Test
  void theReasonHasTheLastHardDayOnTheSameFingers() {
    Placement.HardDay[] days = {
      hard(-2, FingerSet.FOUR, new HardThing.Climbing()),
      hard(0, DRAG.fingers(), new HardThing.Session("power")),
      hard(3, FingerSet.FOUR, new HardThing.Tests()),
      hard(5, FingerSet.FOUR, new HardThing.Climbing())
    };
    assertEquals(
        "60 min free for 45 min; 3 days after session power",
        Words.say(words(days).because(request(45, FOUR), spot(THURSDAY))));
    FingerSet little = new FingerSet(FingerSet.FOUR.bits() & ~DRAG.fingers().bits());
    assertEquals(
        "60 min free for 45 min; 5 days after hard climbing",
        Words.say(words(days).because(request(45, Optional.of(little)), spot(THURSDAY))));
    assertEquals(
        "60 min free for 45 min",
        Words.say(words(days).because(request(45, Optional.empty()), spot(THURSDAY))));
  }

  private static String reason(PlacementReasons words, Conflict.Fact... facts) {
    Set<Conflict.Fact> all = new LinkedHashSet<>(List.of(facts));
    return Words.say(words.conflict(request(75, FOUR), all));
  }

  @Test
  void aHardSessionAloneIsAReason() {
    assertEquals(
        "tue and sat are the only days left in week 2 and it is hard, so it must be 48 h from other hard work",
        reason(words(), new Conflict.Hard(), new Conflict.TimeOn(THURSDAY.plusDays(1))));
  }

  @Test
  void factsOutsideTheWeekHaveTheirDate() {
    assertEquals(
        "week 2 has seven days and it must be 48 h from tests on sun 2027-02-28, hard climbing on mon"
            + " and the goal on mon 2027-03-08",
        reason(
            words(),
            new Conflict.Hard(),
            new Conflict.HardOn(hard(7, FingerSet.FOUR, new HardThing.Goal())),
            new Conflict.HardOn(hard(0, FingerSet.FOUR, new HardThing.Climbing())),
            new Conflict.HardOn(hard(-1, FingerSet.FOUR, new HardThing.Tests()))));
    assertEquals(
        "week 2 has seven days and it must be 48 h from tests on sun",
        reason(words(), new Conflict.HardOn(hard(6, FingerSet.FOUR, new HardThing.Tests()))));
  }

  @Test
  void aWeekWithoutAFreeDayIsReported() {
    Athlete none =
        Skarvdal.ylva()
            .away(new Athlete.Absence(MONDAY, MONDAY.plusDays(6), Optional.empty()))
            .build();
    assertEquals(
        "no day is left in week 2 and the athlete is away on tue",
        reason(words(none, Map.of()), new Conflict.TimeOn(TUESDAY)));
  }

  @Test
  void aDayThatIsJustLongEnoughIsNoReason() {
    PlacementReasons words = words();
    Set<Conflict.Fact> thursday = Set.of(new Conflict.TimeOn(THURSDAY));
    assertEquals(
        "tue, thu and sat are the only days left in week 2",
        Words.say(words.conflict(request(60, FOUR), thursday)));
    assertEquals(
        "tue and sat are the only days left in week 2 and thu has 60 min for 61 min",
        Words.say(words.conflict(request(61, FOUR), thursday)));
  }
}
