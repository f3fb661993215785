package gripwright.planning.placement;

import static gripwright.planning.Skarvdal.DRAG;
import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.grip.FingerSet;
import gripwright.grip.Setup;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import gripwright.protocol.Level;
import gripwright.schedule.DatedSession;
import gripwright.schedule.HardThing;
import gripwright.season.Planner;
import gripwright.wording.Words;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The day of a week for its tests: Tuesday, Thursday and Saturday are available. */
class RetestDayTest {

  private static final PlannedTest ONE =
      PlannedTest.every(List.of(Setup.of(HALF_CRIMP, EDGE)), Duration.ofSeconds(7), 1);

  private static List<DatedSession> week(double level, int perWeek) {
    Exercise line = Exercise.of(HOLDS, HALF_CRIMP, EDGE).with("level", new Level.OfMax(level));
    Plan plan =
        Plan.named("spring")
            .athlete("ylva")
            .from(MONDAY)
            .block(Block.named("base", 1).session(SessionPlan.of("s", perWeek, line)).build())
            .build();
    return Planner.compile(plan, Skarvdal.ylva().build(), Skarvdal.tested(), List.of()).sessions();
  }

  private static Placement.HardDay hard(int day, HardThing what) {
    return new Placement.HardDay(MONDAY.plusDays(day), FingerSet.FOUR, what);
  }

  private static String find(
      PlannedTest tests, int minutes, List<DatedSession> week, Placement.HardDay... hard) {
    Optional<RetestDay.Found> found =
        new RetestDay(tests, minutes).find(MONDAY, Skarvdal.ylva().build(), List.of(hard), week);
    return found
        .map(
            f ->
                f.day().getDayOfWeek()
                    + ": "
                    + Words.say(f.because())
                    + f.displaced().map(s -> " " + s.date()).orElse(""))
        .orElse("none");
  }

  @Test
  void theFirstRestedDayWithTimeIsTaken() {
    assertEquals(
        "TUESDAY: rested: nothing hard within 48 h, 90 min free", find(ONE, 60, List.of()));
    assertEquals(
        "TUESDAY: rested: nothing hard within 48 h, 90 min free", find(ONE, 90, List.of()));
    assertEquals("none", find(ONE, 91, List.of()));
  }

  @Test
  void hardDaysWithinFortyEightHoursAreNoRest() {
    assertEquals(
        "THURSDAY: rested: nothing hard within 48 h, 60 min free",
        find(ONE, 60, List.of(), hard(0, new HardThing.Climbing())));
    assertEquals(
        "TUESDAY: rested: nothing hard within 48 h, 90 min free",
        find(ONE, 60, List.of(), hard(3, new HardThing.Climbing())));
    assertEquals(
        "SATURDAY: rested: nothing hard within 48 h, 90 min free",
        find(ONE, 60, List.of(), hard(2, new HardThing.Climbing())));
  }

  @Test
  void anEasySessionTakesItsOwnDayAndAHardOneItsNeighboursToo() {
    assertEquals(
        "THURSDAY: rested: nothing hard within 48 h, 60 min free", find(ONE, 60, week(0.6, 1)));
    assertEquals(
        "THURSDAY: rested: nothing hard within 48 h, 60 min free", find(ONE, 60, week(0.84, 1)));
  }

  private static final Placement.HardDay[] FULL = {
    hard(1, new HardThing.Climbing()),
    hard(3, new HardThing.Climbing()),
    hard(5, new HardThing.Climbing())
  };

  @Test
  void withoutARestedDayTheTestTakesThePlaceOfTheHardestSession() {
    assertEquals(
        "TUESDAY: there is no rested day for 1 test, so it takes the place of the hardest session 2027-03-02",
        find(ONE, 60, week(0.84, 2), FULL));
    PlannedTest two =
        PlannedTest.every(
            List.of(Setup.of(HALF_CRIMP, EDGE), Setup.of(DRAG, EDGE)), Duration.ofSeconds(7), 1);
    assertEquals(
        "TUESDAY: there is no rested day for 2 tests, so they take the place of the hardest session 2027-03-02",
        find(two, 60, week(0.84, 2), FULL));
  }

  @Test
  void theHardestIsAHardOneAndThenThatOfTheGreatestLoad() {
    DatedSession easy = week(0.6, 2).get(0);
    DatedSession hard = week(0.84, 2).get(1);
    DatedSession harder = week(0.88, 2).get(1);
    assertEquals(
        "SATURDAY: there is no rested day for 1 test, so it takes the place of the hardest session 2027-03-06",
        find(ONE, 60, List.of(easy, hard), FULL));
    RetestDay.Found found =
        new RetestDay(ONE, 60)
            .find(MONDAY, Skarvdal.ylva().build(), List.of(FULL), List.of(hard, harder))
            .orElseThrow();
    assertEquals(Optional.of(harder), found.displaced());
  }

  @Test
  void noSessionNearTheGoalGivesItsPlace() {
    Placement.HardDay[] goal = {
      hard(0, new HardThing.Climbing()),
      hard(3, new HardThing.Climbing()),
      hard(6, new HardThing.Goal())
    };
    assertEquals(
        "TUESDAY: there is no rested day for 1 test, so it takes the place of the hardest session 2027-03-02",
        find(ONE, 60, week(0.84, 2), goal));
    assertEquals(
        "none", find(ONE, 60, List.of(week(0.84, 2).get(1)), goal), "Saturday is the day before");
  }
}
