package gripwright.planning.placement;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.athlete.Athlete;
import gripwright.grip.FingerSet;
import gripwright.planning.Skarvdal;
import gripwright.schedule.HardThing;
import gripwright.wording.Words;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A smallest set of facts that prevents a session's day. */
class ConflictTest {

  private static final LocalDate MONDAY = Skarvdal.MONDAY;

  /** Ylva trains on Tuesday, Thursday and Saturday; 60 min on Thursday, 90 on the others. */
  private static String reason(
      Athlete athlete,
      Placement.Request request,
      int wanted,
      List<Placement.HardDay> hard,
      Map<String, LocalDate> last,
      Placement.Request... others) {
    Placement.Week week = new Placement.Week(MONDAY, athlete::slotsOn, hard, last);
    Set<Conflict.Fact> facts = new Conflict(week, request, wanted, List.of(others)).fewest();
    return Words.say(new PlacementReasons(week, athlete, 3).conflict(request, facts));
  }

  private static Placement.Request session(String name, int minutes, int gap, boolean hard) {
    return new Placement.Request(
        name,
        minutes,
        Duration.ofHours(gap),
        hard ? Optional.of(FingerSet.FOUR) : Optional.empty(),
        List.of());
  }

  @Test
  void theGapAndTheDaysThatAreLeft() {
    Athlete.Builder always = Skarvdal.ylva();
    for (DayOfWeek day : DayOfWeek.values()) {
      always.available(day, Duration.ofHours(2));
    }
    assertEquals(
        "tue, thu and sat are the only days left in week 3 and at least 72 h are needed between them",
        reason(ylva(), session("s", 45, 72, true), 3, List.of(), Map.of()));
    assertEquals(
        "week 3 has seven days and at least 72 h are needed between them",
        reason(always.build(), session("s", 45, 72, true), 4, List.of(), Map.of()));
    assertEquals(
        "tue, thu and sat are the only days left in week 3",
        reason(ylva(), session("s", 45, 72, true), 4, List.of(), Map.of()));
  }

  @Test
  void theOnlyWeekdaysAreNamed() {
    Placement.Request only =
        new Placement.Request(
            "s",
            45,
            Duration.ofHours(72),
            Optional.empty(),
            List.of(),
            List.of(DayOfWeek.THURSDAY, DayOfWeek.TUESDAY));
    assertEquals(
        "it is only on tue and thu and at least 72 h are needed between them",
        reason(ylva(), only, 2, List.of(), Map.of()));
    assertEquals(
        "tue, thu and sat are the only days left in week 3 and it is only on mon",
        reason(
            ylva(),
            new Placement.Request(
                "s",
                45,
                Duration.ofHours(24),
                Optional.empty(),
                List.of(),
                List.of(DayOfWeek.MONDAY)),
            1,
            List.of(),
            Map.of()));
  }

  private static Athlete ylva() {
    return Skarvdal.ylva().build();
  }

  @Test
  void aShortDayAndDaysAway() {
    assertEquals(
        "tue and sat are the only days left in week 3 and thu has 60 min for 75 min",
        reason(ylva(), session("s", 75, 24, false), 3, List.of(), Map.of()));
    Athlete away =
        Skarvdal.ylva()
            .away(
                new Athlete.Absence(MONDAY.plusDays(3), MONDAY.plusDays(9), Optional.of("a trip")))
            .build();
    assertEquals(
        "tue is the only day left in week 3 and the athlete is away on thu and sat",
        reason(away, session("s", 45, 48, false), 2, List.of(), Map.of()));
  }

  @Test
  void climbingAndTheLastOne() {
    Placement.HardDay wednesday =
        new Placement.HardDay(MONDAY.plusDays(2), FingerSet.FOUR, new HardThing.Climbing());
    assertEquals(
        "tue, thu and sat are the only days left in week 3 and it must be 48 h from hard climbing on"
            + " wed",
        reason(ylva(), session("s", 45, 48, true), 2, List.of(wednesday), Map.of()));
    assertEquals(
        "tue, thu and sat are the only days left in week 3, at least 72 h are needed between them and the last one was on"
            + " sun 2027-02-28",
        reason(
            ylva(), session("s", 45, 72, false), 2, List.of(), Map.of("s", MONDAY.minusDays(1))));
  }

  @Test
  void otherSessionsOnTheSameFingersOrInTheSameTime() {
    Placement.Request other = session("power", 45, 48, true);
    assertEquals(
        "tue, thu and sat are the only days left in week 3 and it must be 48 h from session power",
        reason(ylva(), session("s", 45, 24, true), 2, List.of(), Map.of(), other, other));
    assertEquals(
        "tue, thu and sat are the only days left in week 3 and session power also takes time",
        reason(
            ylva(),
            session("s", 50, 24, false),
            3,
            List.of(),
            Map.of(),
            Collections.nCopies(3, other).toArray(Placement.Request[]::new)));
  }

  @Test
  void noFactWithinTheWeekMeansLaterWeeks() {
    assertEquals(
        "placing it would cost as many sessions in the following weeks",
        reason(ylva(), session("s", 45, 48, true), 2, List.of(), Map.of()));
  }
}
