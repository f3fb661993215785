package gripwright.planning.placement;

import static gripwright.planning.Skarvdal.DRAG;
import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.athlete.Athlete;
import gripwright.finding.ModelPath;
import gripwright.grip.FingerSet;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.history.LogTimeline;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import gripwright.protocol.Level;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlacementReason;
import gripwright.season.CompiledPlan;
import gripwright.season.Planner;
import gripwright.wording.Words;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Which days near a week are hard, and on which fingers. */
class HardDaysTest {

  private static final LocalDate WEEK = MONDAY.plusDays(14);

  private Athlete.Builder athlete = Skarvdal.ylva();
  private Log log = Log.empty("ylva");
  private Optional<LocalDate> goal = Optional.empty();
  private final List<DatedSession> sessions = new ArrayList<>();
  private final List<DatedRetest> retests = new ArrayList<>();
  private final Map<ModelPath, FingerSet> withoutLogLimits = new HashMap<>();

  private static Exercise holds(double level) {
    return Exercise.of(HOLDS, HALF_CRIMP, EDGE).with("level", new Level.OfMax(level));
  }

  private static Plan.Builder plan(Exercise... lines) {
    return Plan.named("spring")
        .athlete("ylva")
        .from(MONDAY)
        .block(Block.named("base", 6).session(SessionPlan.of("strength", 2, lines)).build());
  }

  private HardDays days() {
    Plan.Builder plan = plan(holds(0.84));
    goal.ifPresent(day -> plan.towards(new Plan.Goal(day, Optional.empty())));
    Plan built = plan.build();
    Athlete ylva = athlete.build();
    return new HardDays(LogTimeline.of(built, ylva, log), List.of(), List.of());
  }

  private HardWork work() {
    return new HardWork(sessions, retests, withoutLogLimits);
  }

  /** Writes the hard work near the third week: days from its Monday, kind, and fingers. */
  private List<String> near() {
    return near(days());
  }

  private List<String> near(HardDays days) {
    return days.near(WEEK, work()).stream()
        .map(
            h ->
                WEEK.until(h.date()).getDays()
                    + " "
                    + Words.say(h.what())
                    + (h.fingers().equals(FingerSet.FOUR) ? "" : " " + h.fingers().count()))
        .toList();
  }

  private void climbsOnSundays(boolean hard) {
    athlete =
        athlete.climbing(
            new Athlete.ClimbingDay(DayOfWeek.SUNDAY, hard, "much", Duration.ofHours(2)));
  }

  private LogEntry climbed(int day, boolean hard, OptionalDouble effort) {
    return LogEntry.Climbed.builder(WEEK.plusDays(day), hard, "much", Duration.ofHours(2))
        .effort(effort)
        .build();
  }

  @Test
  void hardClimbingIsHardFromAWeekBeforeToAWeekAfter() {
    climbsOnSundays(true);
    assertEquals(
        List.of("-8 hard climbing", "-1 hard climbing", "6 hard climbing", "13 hard climbing"),
        near());
    assertEquals(
        List.of(WEEK.minusDays(1), WEEK.plusDays(6)),
        days().climbing(WEEK.minusDays(1), WEEK.plusDays(6)));
  }

  @Test
  void easyClimbingAndDaysAwayAreNotHard() {
    climbsOnSundays(false);
    assertEquals(List.of(), near());
    climbsOnSundays(true);
    athlete = athlete.away(new Athlete.Absence(WEEK, WEEK.plusDays(6), Optional.empty()));
    assertEquals(List.of("-8 hard climbing", "-1 hard climbing", "13 hard climbing"), near());
  }

  @Test
  void loggedClimbingReplacesRegularClimbing() {
    climbsOnSundays(true);
    log = log.with(climbed(-1, false, OptionalDouble.empty()));
    log = log.with(climbed(2, true, OptionalDouble.empty()));
    log = log.with(climbed(3, false, OptionalDouble.of(8)));
    log = log.with(climbed(4, false, OptionalDouble.of(7.5)));
    assertEquals(
        List.of(
            "-8 hard climbing",
            "2 hard climbing",
            "3 hard climbing",
            "6 hard climbing",
            "13 hard climbing"),
        near());
  }

  @Test
  void loggedClimbingReplacesRegularClimbingBeforeThePlan() {
    climbsOnSundays(true);
    log = log.with(climbed(-15, false, OptionalDouble.empty()));
    log = log.with(climbed(-17, true, OptionalDouble.empty()));
    assertEquals(List.of(MONDAY.minusDays(3)), days().climbing(MONDAY.minusDays(6), MONDAY));
  }

  @Test
  void goalDayIsHardIfNear() {
    goal = Optional.of(WEEK.plusDays(14));
    assertEquals(List.of("14 the goal"), near());
    goal = Optional.of(WEEK.plusDays(15));
    assertEquals(List.of(), near());
    goal = Optional.of(WEEK.minusDays(7));
    assertEquals(List.of("-7 the goal"), near());
    goal = Optional.of(WEEK.minusDays(8));
    assertEquals(List.of(), near());
  }

  @Test
  void regularClimbingIsLeftOutOnTheDayOfTheGoal() {
    athlete =
        athlete.climbing(
            new Athlete.ClimbingDay(DayOfWeek.SUNDAY, true, "hard", Duration.ofHours(2)));
    goal = Optional.of(WEEK.plusDays(6));
    assertEquals(List.of(), days().climbing(WEEK, WEEK.plusDays(6)));
    assertEquals(List.of(WEEK.plusDays(13)), days().climbing(WEEK.plusDays(7), WEEK.plusDays(13)));
  }

  private LogEntry tested(LocalDate day, Grip grip) {
    return new LogEntry.Tested(Skarvdal.test(grip, day, 90), Optional.empty());
  }

  @Test
  void loggedTestsAreHardOnTheirFingers() {
    log = log.with(tested(WEEK.minusDays(8), DRAG)).with(tested(WEEK.minusDays(7), DRAG));
    log = log.with(tested(WEEK.plusDays(14), HALF_CRIMP)).with(tested(WEEK.plusDays(15), DRAG));
    assertEquals(List.of("-7 a logged test 3", "14 a logged test"), near());
    log = Log.empty("ylva").with(tested(MONDAY.minusDays(1), DRAG)).with(tested(MONDAY, DRAG));
    assertEquals(
        List.of(MONDAY.minusDays(1), MONDAY),
        days().near(MONDAY, work()).stream().map(Placement.HardDay::date).toList());
  }

  private static LogEntry.Done done(Grip grip, OptionalDouble effort) {
    return LogEntry.Done.builder("single-holds", Setup.of(grip, EDGE))
        .sets(3)
        .effort(effort)
        .build();
  }

  private LogEntry extra(int day, LogEntry.Done... lines) {
    return new LogEntry.Trained(WEEK.plusDays(day), "extra", List.of(lines), Optional.empty());
  }

  @Test
  void anUnplannedSessionIsHardUnlessItsEffortWasLow() {
    log = log.with(extra(1, done(DRAG, OptionalDouble.empty())));
    log = log.with(extra(2, done(DRAG, OptionalDouble.of(8))));
    log = log.with(extra(3, done(DRAG, OptionalDouble.of(7.9))));
    log =
        log.with(
            extra(4, done(DRAG, OptionalDouble.of(9)), done(HALF_CRIMP, OptionalDouble.of(9))));
    log = log.with(extra(15, done(DRAG, OptionalDouble.of(9))));
    log = log.with(extra(-8, done(DRAG, OptionalDouble.of(9))));
    assertEquals(List.of("1 session extra 3", "2 session extra 3", "4 session extra"), near());
  }

  private static DatedSession session(LocalDate date, double level) {
    CompiledPlan plan =
        Planner.compile(
            plan(holds(level)).build(), Skarvdal.ylva().build(), Skarvdal.tested(), List.of());
    return plan.sessions().stream().filter(s -> s.date().equals(date)).findFirst().orElseThrow();
  }

  @Test
  void sessionsOfThePlanAreHardByTheirHardExercises() {
    sessions.add(session(WEEK.minusDays(6), 0.84));
    sessions.add(session(WEEK.plusDays(1), 0.6));
    sessions.add(session(WEEK.minusDays(9), 0.84));
    assertEquals(List.of("-6 session strength"), near());
  }

  @Test
  void aSessionThatALogMadeLighterKeepsItsGap() {
    DatedSession light = session(WEEK.plusDays(1), 0.6);
    sessions.add(light);
    HardDays days = days();
    withoutLogLimits.put(light.path(), DRAG.fingers());
    assertEquals(List.of("1 session strength 3"), near(days));
    assertEquals(List.of("1 session strength 3"), near(days.before(WEEK)), "and is remembered");
  }

  @Test
  void aLoggedTestThatWasPlannedIsHardOnce() {
    log = log.with(tested(WEEK.plusDays(3), DRAG)).with(tested(WEEK.plusDays(5), DRAG));
    for (boolean done : new boolean[] {true, false}) {
      retests.clear();
      retests.add(
          DatedRetest.builder(
                  WEEK.plusDays(3),
                  3,
                  "base",
                  List.of(Setup.of(DRAG, EDGE)),
                  Duration.ofSeconds(7),
                  ModelPath.of("plan", "spring").then("retest", 1))
              .placedBecause(
                  done ? new PlacementReason.TestedOnDay() : new PlacementReason.Unplaced())
              .build());
      assertEquals(
          done
              ? List.of("5 a logged test 3", "3 tests 3")
              : List.of("3 a logged test 3", "5 a logged test 3", "3 tests 3"),
          near());
    }
  }

  @Test
  void withoutTheLogOnlyRegularClimbingIsHard() {
    climbsOnSundays(true);
    log = log.with(climbed(2, true, OptionalDouble.empty())).with(tested(WEEK, DRAG));
    assertEquals(
        List.of("-1 hard climbing", "6 hard climbing", "13 hard climbing"),
        near(days().withoutLog()).stream().filter(d -> !d.startsWith("-8")).toList());
  }

  @Test
  void plannedTestsAreHardOnTheFingersOfAllTheirGrips() {
    for (int day : new int[] {-8, -7, 3}) {
      retests.add(
          DatedRetest.builder(
                  WEEK.plusDays(day),
                  3,
                  "base",
                  day == 3
                      ? List.of(Setup.of(DRAG, EDGE), Setup.of(HALF_CRIMP, EDGE))
                      : List.of(Setup.of(DRAG, EDGE)),
                  Duration.ofSeconds(7),
                  ModelPath.of("plan", "spring").then("retest", 1))
              .build());
    }
    assertEquals(List.of("-7 tests 3", "3 tests"), near());
  }

  @Test
  void laterEntriesAreIgnored() {
    log = log.with(climbed(2, true, OptionalDouble.empty()));
    assertEquals(List.of("2 hard climbing"), near());
    assertEquals(List.of(), near(days().before(WEEK.plusDays(2))));
  }
}
