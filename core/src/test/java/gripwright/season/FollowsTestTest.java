package gripwright.season;

import static gripwright.planning.Skarvdal.DRAG;
import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Athlete;
import gripwright.athlete.Injury;
import gripwright.hand.Finger;
import gripwright.hand.Structure;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import gripwright.planning.load.Rise;
import gripwright.quantity.Length;
import gripwright.schedule.Cause;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.ProgressLink;
import gripwright.schedule.StrengthLink;
import gripwright.strength.StrengthTest;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** A higher test raises loads week by week, a lower one lowers them at once. */
class FollowsTestTest {

  private static final int WEEKS = 8;

  /** One session a week, 5 sets of 10 s at 84 % of the maximum. */
  private static CompiledPlan compile(
      Log log, UnaryOperator<Block.Builder> block, Optional<Double> rise) {
    Plan.Builder plan =
        Plan.named("spring")
            .athlete("ylva")
            .from(MONDAY)
            .block(
                block
                    .apply(
                        Block.named("base", WEEKS)
                            .session(
                                SessionPlan.of(
                                    "strength", 1, Exercise.of(HOLDS, HALF_CRIMP, EDGE))))
                    .build());
    rise.ifPresent(plan::weeklyRise);
    return Planner.compile(plan.build(), Skarvdal.ylva().build(), log, List.of());
  }

  private static CompiledPlan compile(Log log) {
    return compile(log, block -> block, Optional.empty());
  }

  private static Log log(int day, double... kilograms) {
    Log log = Skarvdal.log(Skarvdal.test(HALF_CRIMP, MONDAY.minusDays(20), kilograms[0]));
    for (int i = 1; i < kilograms.length; i++) {
      StrengthTest test = Skarvdal.test(HALF_CRIMP, MONDAY.plusDays(day + i - 1L), kilograms[i]);
      log = log.with(new LogEntry.Tested(test, Optional.empty()));
    }
    return log;
  }

  private static double load(CompiledPlan plan, int week) {
    return exercise(plan, week).totalLoad().kilograms();
  }

  private static PlannedExercise exercise(CompiledPlan plan, int week) {
    return plan.sessions().stream()
        .filter(session -> session.week() == week)
        .map(DatedSession::exercises)
        .findFirst()
        .orElseThrow()
        .get(0);
  }

  private static Optional<StrengthLink.FollowsTest> follows(PlannedExercise exercise) {
    return exercise.why().stream()
        .filter(StrengthLink.FollowsTest.class::isInstance)
        .map(StrengthLink.FollowsTest.class::cast)
        .findFirst();
  }

  private static LogEntry.Done done(PlannedExercise asked) {
    return LogEntry.Done.builder("single-holds", asked.setup()).sets(5).effort(7).pain(0).build();
  }

  @Test
  void aHigherTestRaisesTheLoadByTenPerCentAWeek() {
    CompiledPlan plan = compile(log(12, 90, 118, 118));
    assertEquals(load(plan, 1), load(plan, 2));
    assertEquals(load(plan, 2) * 1.1, load(plan, 3), 1.25, "rounded down to the plates");
    assertTrue(load(plan, 4) > load(plan, 3), "and goes on");
    assertTrue(follows(exercise(plan, 3)).isPresent());
    StrengthLink.FollowsTest why = follows(exercise(plan, 3)).orElseThrow();
    assertEquals(0.1, why.rise());
    assertTrue(why.allowed().compareTo(why.load()) > 0);
    assertTrue(follows(exercise(plan, WEEKS)).isEmpty(), "until the test is reached");
    assertTrue(load(plan, WEEKS) > load(plan, 1) * 1.15);
  }

  @Test
  void aLowerTestCountsAtOnce() {
    CompiledPlan plan = compile(log(13, 90, 75));
    assertTrue(load(plan, 3) <= 75 * 0.84);
    assertTrue(follows(exercise(plan, 3)).isEmpty());
  }

  @Test
  void estimateOnAShallowerEdgeDoesNotExceedTheLastTestOnADeeperOne() {
    Log log =
        Skarvdal.log(
            Skarvdal.test(HALF_CRIMP, MONDAY.minusDays(40), 100),
            Skarvdal.test(HALF_CRIMP, MONDAY.minusDays(38), 100),
            Skarvdal.test(HALF_CRIMP, MONDAY.minusDays(6), 75));
    Length smaller = Length.ofMillimetres(18);
    Athlete athlete = Skarvdal.ylva().edge(smaller).build();
    Block block =
        Block.named("base", 1)
            .session(SessionPlan.of("strength", 1, Exercise.of(HOLDS, HALF_CRIMP, smaller)))
            .build();
    Plan plan = Plan.named("spring").athlete("ylva").from(MONDAY).block(block).build();
    PlannedExercise first = exercise(Planner.compile(plan, athlete, log, List.of()), 1);
    assertEquals(75, first.maximum().orElseThrow().used().kilograms(), 0.01);
  }

  @Test
  void loadsDoNotRiseInAWeekWithoutTraining() {
    Rise rise = Rise.of(0.1).in(MONDAY, true, Set.of("half-crimp")).after(true);
    Rise next = rise.in(MONDAY.plusWeeks(1), true, Set.of("half-crimp"));
    assertTrue(next.weeks().get(1).open());
    assertTrue(next.after(true).weeks().get(1).open());
    assertFalse(next.after(false).weeks().get(1).open());
  }

  @Test
  void aTestBeforeThePlanCountsAtOnceAndSoDoesTheFirstOfASetup() {
    assertTrue(follows(exercise(compile(log(-2, 90, 118, 118)), 1)).isEmpty());
    Log first =
        Skarvdal.log(
            Skarvdal.test(DRAG, MONDAY.minusDays(20), 70),
            Skarvdal.test(HALF_CRIMP, MONDAY.plusDays(13), 100));
    CompiledPlan plan = compile(first);
    assertTrue(load(plan, 3) > load(plan, 2) * 1.1, load(plan, 2) + " to " + load(plan, 3));
    assertTrue(follows(exercise(plan, 3)).isEmpty());
  }

  @Test
  void aTestInTheFirstWeekBeforeAnythingWasTrainedCountsAtOnce() {
    CompiledPlan plan = compile(log(0, 90, 118, 118));
    assertTrue(follows(exercise(plan, 2)).isEmpty());
    Log trained =
        log(2, 90, 118, 118)
            .with(
                new LogEntry.Trained(
                    MONDAY.plusDays(1),
                    "strength",
                    List.of(done(exercise(plan, 1))),
                    Optional.empty()));
    assertTrue(follows(exercise(compile(trained), 2)).isPresent());
  }

  @Test
  void riseAfterAnInjuryIsFivePerCentAWeek() {
    Injury injury =
        Injury.builder(Finger.RING, Structure.A2, MONDAY.minusDays(60))
            .cleared(MONDAY.minusDays(10))
            .build();
    Plan plan =
        Plan.named("spring")
            .athlete("ylva")
            .from(MONDAY)
            .block(
                Block.named("base", WEEKS)
                    .session(SessionPlan.of("strength", 1, Exercise.of(HOLDS, HALF_CRIMP, EDGE)))
                    .build())
            .build();
    CompiledPlan compiled =
        Planner.compile(
            plan, Skarvdal.ylva().injury(injury).build(), log(12, 90, 118, 118), List.of());
    assertEquals(0.05, follows(exercise(compiled, 4)).orElseThrow().rise());
    for (int week = 2; week <= WEEKS; week++) {
      double before = exercise(compiled, week - 1).maximum().orElseThrow().used().kilograms();
      double now = exercise(compiled, week).maximum().orElseThrow().used().kilograms();
      assertTrue(now <= before * 1.05 + 1e-6, "week " + week + ": " + before + " to " + now);
    }
  }

  @Test
  void anEasedWeekDoesNotRise() {
    CompiledPlan plan = compile(log(12, 90, 118, 118), b -> b.ease(4, 0.6), Optional.empty());
    assertEquals(load(plan, 3), load(plan, 4));
    assertTrue(load(plan, 5) > load(plan, 4));
    assertTrue(load(plan, 5) <= load(plan, 4) * 1.1 + 1.25, load(plan, 4) + " to " + load(plan, 5));
  }

  @Test
  void stepsWaitUntilTheTestIsReached() {
    CompiledPlan plan =
        compile(
            log(12, 90, 118, 118),
            b -> b.advance(Advance.weekly(new Advance.SetsTo(8, 1))),
            Optional.empty());
    int[] sets = new int[WEEKS + 1];
    for (int week = 1; week <= WEEKS; week++) {
      sets[week] = exercise(plan, week).scheme().sets();
      if (week > 3 && load(plan, week) > load(plan, week - 1)) {
        assertEquals(sets[week - 1], sets[week], "week " + week);
      }
    }
    assertTrue(sets[WEEKS] > sets[3]);
    assertTrue(
        exercise(plan, 4).why().stream()
            .filter(ProgressLink.StepsHeld.class::isInstance)
            .flatMap(link -> ((ProgressLink.StepsHeld) link).causes().stream())
            .anyMatch(Cause.FollowsTestFirst.class::isInstance));
  }

  @Test
  void untrainedWeekDoesNotRaiseLoads() {
    Log log = log(12, 90, 118, 118);
    for (int week = 1; week <= 2; week++) {
      LocalDate day = MONDAY.plusDays(7L * (week - 1) + 1);
      log =
          log.with(
              new LogEntry.Trained(
                  day,
                  "strength",
                  List.of(done(exercise(compile(log(13, 90)), 1))),
                  Optional.empty()));
    }
    Log skipped =
        log.with(new LogEntry.Skipped(MONDAY.plusDays(15), "strength", Optional.of("late shift")));
    CompiledPlan plan = compile(skipped);
    double believed = exercise(plan, 4).maximum().orElseThrow().used().kilograms();
    double before = exercise(compile(log(13, 90)), 2).maximum().orElseThrow().used().kilograms();
    assertTrue(believed <= before * 1.1 + 1e-6, before + " to " + believed);
  }

  /** For any rise, day and test, no week of a plan rises by more. */
  @Property(tries = 60)
  void noWeekIsHeavierByMoreThanTheWeeklyRise(
      @ForAll @IntRange(min = 7, max = 40) int day,
      @ForAll @IntRange(min = 60, max = 130) int load,
      @ForAll @IntRange(min = 60, max = 140) int later,
      @ForAll @IntRange(min = 3, max = 20) int percent) {
    CompiledPlan plan = compile(log(day, 90, load, later), b -> b, Optional.of(percent / 100.0));
    for (int week = 2; week <= WEEKS; week++) {
      double before = exercise(plan, week - 1).maximum().orElseThrow().used().kilograms();
      double now = exercise(plan, week).maximum().orElseThrow().used().kilograms();
      double step = 1.25;
      assertTrue(
          now <= Math.max(before * (1 + percent / 100.0), before + step) + 1e-6,
          "week " + week + ": " + before + " to " + now);
    }
  }
}
