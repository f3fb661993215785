package gripwright.planning.progression;

import static gripwright.planning.Skarvdal.DRAG;
import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.athlete.Athlete;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.hand.Hands;
import gripwright.history.LogTimeline;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import gripwright.planning.load.HeldLoad;
import gripwright.protocol.Level;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.schedule.DatedSession;
import gripwright.season.CompiledPlan;
import gripwright.season.Planner;
import gripwright.wording.Words;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** The steps that a log has earned for an exercise, and what in it prevents harder work. */
class ProgressionBlockersTest {

  private static final Exercise LINE = Exercise.of(HOLDS, HALF_CRIMP, EDGE);

  /** Tuesday and Saturday for four weeks. */
  private static final Plan PLAN =
      Plan.named("spring")
          .athlete("ylva")
          .from(MONDAY)
          .block(Block.named("base", 4).session(SessionPlan.of("strength", 2, LINE)).build())
          .build();

  private static final OptionalDouble UNWRITTEN = OptionalDouble.empty();

  /** A line of a log with five planned sets. */
  private static final class Line {
    private final int day;
    private String protocol = "single-holds";
    private Setup setup = Setup.of(HALF_CRIMP, EDGE);
    private OptionalInt sets = OptionalInt.of(5);
    private Optional<Load> load = Optional.empty();
    private OptionalDouble effort = OptionalDouble.of(7);
    private OptionalDouble pain = OptionalDouble.of(0);

    private Line(int day) {
      this.day = day;
    }

    Line protocol(String name) {
      protocol = name;
      return this;
    }

    Line setup(Grip grip, double edge, Hands hands) {
      setup = new Setup(grip, Length.ofMillimetres(edge), hands, false);
      return this;
    }

    public Line sets(int count) {
      sets = OptionalInt.of(count);
      return this;
    }

    Line withoutSets() {
      sets = OptionalInt.empty();
      return this;
    }

    Line load(double kilograms) {
      load = Optional.of(Load.ofKilograms(kilograms));
      return this;
    }

    Line effort(OptionalDouble outOfTen) {
      effort = outOfTen;
      return this;
    }

    Line pain(OptionalDouble score) {
      pain = score;
      return this;
    }

    private LogEntry entry() {
      return new LogEntry.Trained(
          MONDAY.plusDays(day),
          "strength",
          List.of(
              LogEntry.Done.builder(protocol, setup)
                  .sets(sets)
                  .setsPlanned(5)
                  .load(load)
                  .effort(effort)
                  .pain(pain)
                  .build()),
          Optional.empty());
    }
  }

  private static Line on(int day) {
    return new Line(day);
  }

  private static Log log(Line... lines) {
    Log log = Skarvdal.tested();
    for (Line line : lines) {
      log = log.with(line.entry());
    }
    return log;
  }

  private static LogEntry ache(int day, double score) {
    return LogEntry.Pain.builder(MONDAY.plusDays(day), Finger.RING, score).build();
  }

  private static ProgressionBlockers blockers(Log log, List<DatedSession> soFar) {
    Athlete ylva = Skarvdal.ylva().build();
    return ProgressionBlockers.of(PLAN, LogTimeline.of(PLAN, ylva, log)).after(soFar);
  }

  private static final Advance.WhenLogged TWICE_IN_FULL =
      new Advance.WhenLogged(true, UNWRITTEN, UNWRITTEN, 2);

  private static int earned(Advance.WhenLogged pace, Log log) {
    return blockers(log, List.of())
        .earned(
            new ProgressionBlockers.Candidate(LINE, HALF_CRIMP, Optional.of(pace)),
            pace,
            MONDAY.plusDays(28));
  }

  private static int earned(Line... lines) {
    return earned(TWICE_IN_FULL, log(lines));
  }

  @Test
  void everySecondSessionInFullEarnsAStep() {
    assertEquals(0, earned(on(1)));
    assertEquals(1, earned(on(1), on(5)));
    assertEquals(1, earned(on(1), on(5), on(8)));
    assertEquals(2, earned(on(1), on(5), on(8), on(12)));
  }

  @Test
  void onlySessionsInThePlanAndBeforeTheDayEarnSteps() {
    assertEquals(0, earned(on(-1), on(1)));
    assertEquals(1, earned(on(0), on(27)));
    assertEquals(0, earned(on(1), on(28)));
  }

  @Test
  void missedSetsBreakTheRow() {
    assertEquals(0, earned(on(1), on(5).sets(4), on(8)));
    assertEquals(1, earned(on(1), on(5).sets(4), on(8), on(12)));
  }

  @Test
  void unloggedSetsAreNotInFull() {
    assertEquals(0, earned(on(1), on(5).withoutSets()));
    Advance.WhenLogged anyhow = new Advance.WhenLogged(false, OptionalDouble.of(8), UNWRITTEN, 2);
    assertEquals(1, earned(anyhow, log(on(1), on(5).withoutSets())));
  }

  @Test
  void effortMustBeLoggedAndNotAboveTheLimit() {
    Advance.WhenLogged pace = new Advance.WhenLogged(true, OptionalDouble.of(8), UNWRITTEN, 2);
    assertEquals(1, earned(pace, log(on(1), on(5).effort(OptionalDouble.of(8)))));
    assertEquals(0, earned(pace, log(on(1), on(5).effort(OptionalDouble.of(8.5)))));
    assertEquals(0, earned(pace, log(on(1), on(5).effort(UNWRITTEN))));
    assertEquals(1, earned(on(1), on(5).effort(UNWRITTEN)), "not asked for");
  }

  @Test
  void painMustBeLoggedAndNotAboveTheLimit() {
    Advance.WhenLogged pace = new Advance.WhenLogged(true, UNWRITTEN, OptionalDouble.of(1), 2);
    assertEquals(1, earned(pace, log(on(1), on(5).pain(OptionalDouble.of(1)))));
    assertEquals(0, earned(pace, log(on(1), on(5).pain(OptionalDouble.of(1.5)))));
    assertEquals(0, earned(pace, log(on(1), on(5).pain(UNWRITTEN))));
    assertEquals(1, earned(on(1), on(5).pain(UNWRITTEN)), "not asked for");
  }

  @Test
  void onlyTheSameWorkEarns() {
    assertEquals(0, earned(on(1), on(5).protocol("repeaters")));
    assertEquals(0, earned(on(1), on(5).setup(DRAG, 20, Hands.BOTH)));
    assertEquals(0, earned(on(1), on(5).setup(HALF_CRIMP, 20, Hands.LEFT)));
    assertEquals(1, earned(on(1), on(5).setup(HALF_CRIMP, 15, Hands.BOTH)), "another edge");
  }

  @Test
  void painEndsTheRowAndTheNextSessionDoesNotCount() {
    Log row = log(on(1), on(8), on(12)).with(ache(3, 4));
    assertEquals(0, earned(TWICE_IN_FULL, row), "the first session after pain earns nothing");
    assertEquals(1, earned(TWICE_IN_FULL, log(on(1), on(8), on(12), on(15)).with(ache(3, 4))));
    assertEquals(1, earned(TWICE_IN_FULL, log(on(1), on(8)).with(ache(3, 2))), "mild");
  }

  @Test
  void aStepIsLostAfterPainOrAProblemInItsOwnWeek() {
    assertEquals(0, earned(TWICE_IN_FULL, log(on(1), on(5)).with(ache(6, 4))));
    assertEquals(1, earned(TWICE_IN_FULL, log(on(1), on(5)).with(ache(7, 4))), "the week after");
    assertEquals(0, earned(on(1), on(3), on(5).sets(3)));
    assertEquals(1, earned(on(1), on(5), on(8).sets(3)), "the week after");
    assertEquals(1, earned(on(1), on(3), on(5).withoutSets()), "not in full, but no trouble");
  }

  @Test
  void aStepIsLostOnlyOnce() {
    Log log = log(on(1), on(2), on(8), on(9), on(11).sets(3), on(12).sets(3));
    assertEquals(1, earned(TWICE_IN_FULL, log), "of two weeks the second is lost");
    assertEquals(
        1,
        earned(TWICE_IN_FULL, log(on(1), on(2), on(8), on(9)).with(ache(10, 4)).with(ache(11, 4))));
    assertEquals(
        1,
        earned(TWICE_IN_FULL, log(on(1), on(2), on(8).sets(3), on(9).sets(3))),
        "trouble a week later does not count twice either");
  }

  private static final ProgressionBlockers.Candidate WEEKLY =
      new ProgressionBlockers.Candidate(LINE, HALF_CRIMP, Optional.empty());

  private static CompiledPlan compiled(Log log) {
    return Planner.compile(PLAN, Skarvdal.ylva().build(), log, List.of());
  }

  /** Returns what prevents a step in the second week. */
  private static List<String> reasons(Log log) {
    return Words.say(
        blockers(log, compiled(log).sessions()).reasons(WEEKLY, MONDAY, MONDAY.plusDays(7)));
  }

  private static double mostEffort(Exercise line, OptionalDouble atMost) {
    Advance.Pace pace = new Advance.WhenLogged(true, atMost, UNWRITTEN, 2);
    return new ProgressionBlockers.Candidate(line, HALF_CRIMP, Optional.of(pace)).mostEffort();
  }

  @Test
  void effortUpToNineIsAcceptedUnlessTheLineOrItsLevelHasALimit() {
    assertEquals(9, WEEKLY.mostEffort());
    assertEquals(8, mostEffort(LINE, OptionalDouble.of(8)));
    Exercise hard = LINE.with("level", Level.effort(9.5));
    assertEquals(9.5, mostEffort(hard, OptionalDouble.empty()));
    assertEquals(8, mostEffort(hard, OptionalDouble.of(8)), "the line on progress counts first");
  }

  @Test
  void nothingPreventsAStepAfterAGoodWeek() {
    assertEquals(List.of(), reasons(log(on(1), on(5))));
  }

  @Test
  void theWorstPainComesFirstAndAllReasonsAreGiven() {
    Log log = log(on(1).sets(3), on(5)).with(ache(5, 3)).with(ache(6, 4));
    assertEquals(
        List.of(
            "pain ring 4 on 2027-03-07", "pain ring 3 on 2027-03-06", "3 of 5 sets on 2027-03-02"),
        reasons(log));
    assertEquals(List.of("3 of 5 sets on 2027-03-02"), reasons(log(on(1).sets(3), on(5))));
  }

  @Test
  void aLeftOutExercisePreventsAStep() {
    assertEquals(
        List.of("left out on 2027-03-02", "left out on 2027-03-06"),
        reasons(log(on(1).protocol("repeaters"), on(5).protocol("repeaters"))).stream()
            .filter(r -> r.startsWith("left out"))
            .toList());
  }

  @Test
  void aWeekWithoutLogEntriesPreventsAStep() {
    Log log = log(on(8));
    assertEquals(
        List.of("not trained from 2027-03-01 to 2027-03-07"),
        Words.say(
            blockers(log, compiled(log).sessions()).reasons(WEEKLY, MONDAY, MONDAY.plusDays(7))));
    assertEquals(
        List.of(),
        blockers(log, compiled(log).sessions())
            .reasons(WEEKLY, MONDAY.plusDays(7), MONDAY.plusDays(14)),
        "the second week is not over");
  }

  private static Optional<String> ceiling(double edge, int day, Log log) {
    return blockers(log, compiled(log).sessions())
        .ceiling(WEEKLY, Length.ofMillimetres(edge), MONDAY.plusDays(day))
        .map(c -> c.most() + ", " + Words.say(c.why()));
  }

  @Test
  void afterAProblemTheLoadDoesNotExceedTheLastOne() {
    Log log = log(on(1).sets(3).load(60), on(5).sets(4).load(58));
    assertEquals(
        Optional.of("60 kg, no more than on 2027-03-02: 3 of 5 sets on 2027-03-02"),
        ceiling(20, 3, log));
    assertEquals(
        Optional.of("58 kg, no more than on 2027-03-06: 4 of 5 sets on 2027-03-06"),
        ceiling(20, 8, log));
    assertEquals(
        Optional.of("58 kg, no more than on 2027-03-06: 4 of 5 sets on 2027-03-06"),
        ceiling(15, 8, log));
    assertEquals(Optional.empty(), ceiling(25, 8, log), "on a deeper edge more may be held");
    assertEquals(Optional.empty(), ceiling(20, 8, log(on(1).load(60), on(5).load(60))));
  }

  @Test
  void painLimitsTheLoadOfTheNextTwoSessions() {
    Log log = log(on(1).load(60)).with(ache(1, 3)).with(ache(2, 4));
    assertEquals(
        Optional.of("60 kg, no more than on 2027-03-02: pain ring 4 on 2027-03-03"),
        ceiling(20, 5, log));
    Log later = log(on(1).load(60), on(5).load(60), on(8).load(60)).with(ache(2, 4));
    assertEquals(
        Optional.of("60 kg, no more than on 2027-03-06: pain ring 4 on 2027-03-03"),
        ceiling(20, 8, later));
    assertEquals(Optional.empty(), ceiling(20, 9, later), "two sessions since");
  }

  private static Optional<HeldLoad> held(Log log, int day) {
    return blockers(log, compiled(log).sessions())
        .held(WEEKLY, Optional.empty(), MONDAY.plusDays(day));
  }

  @Test
  void aLoadIsLimitedIfLessThanPlannedWasUsedWithAProblem() {
    assertEquals(Optional.empty(), held(log(on(1).load(50), on(5).load(50)), 7), "by choice");
    assertEquals(50, held(log(on(1).load(50).sets(4)), 7).orElseThrow().load().kilograms(), 1e-9);
    assertEquals(
        50, held(log(on(1).load(50)).with(ache(2, 4)), 7).orElseThrow().load().kilograms(), 1e-9);
    assertEquals(Optional.empty(), held(log(on(1).sets(4)), 7), "at the load that was asked");
    assertEquals(
        Optional.empty(),
        held(log(on(1).sets(4), on(8).load(50)), 14),
        "the trouble was a week before");
  }

  @Test
  void aSessionDoesNotAffectEarlierDays() {
    Log log = log(on(1).load(50).sets(4));
    assertEquals(Optional.empty(), held(log, 1));
    LocalDate tuesday = held(log, 2).orElseThrow().date();
    assertEquals(MONDAY.plusDays(1), tuesday);
  }
}
