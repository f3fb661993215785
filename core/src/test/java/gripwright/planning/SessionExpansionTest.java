package gripwright.planning;

import static gripwright.planning.Skarvdal.DRAG;
import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.FRONT_THREE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.FindingList;
import gripwright.grip.FingerSet;
import gripwright.grip.Grip;
import gripwright.history.LogTimeline;
import gripwright.log.Log;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.load.HandFindings;
import gripwright.planning.load.Rise;
import gripwright.planning.progression.Progression;
import gripwright.planning.progression.ProgressionBlockers;
import gripwright.protocol.Level;
import gripwright.quantity.Length;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import gripwright.season.Planner;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** What a kind of session asks of a day, and which exercises it becomes. */
class SessionExpansionTest {

  private static Exercise line(Grip grip, double level) {
    return Exercise.of(HOLDS, grip, EDGE).with("level", new Level.OfMax(level));
  }

  private static Exercise best(Length edge, Grip... grips) {
    return Exercise.builder(HOLDS, new Exercise.BestOf(List.of(grips), Optional.empty()), edge)
        .build();
  }

  private static Exercise timed(Duration hold) {
    return line(HALF_CRIMP, 0.6).with("sets", 1).with("work", hold);
  }

  private static Plan.Builder plan(UnaryOperator<Block.Builder> more, Exercise... lines) {
    return Plan.named("spring")
        .athlete("ylva")
        .from(MONDAY)
        .block(
            more.apply(Block.named("base", 3).session(SessionPlan.of("strength", 1, lines)))
                .build());
  }

  private static CompiledPlan compile(Plan.Builder plan) {
    return Planner.compile(plan.build(), Skarvdal.ylva().build(), Skarvdal.tested(), List.of());
  }

  private static CompiledPlan compile(Exercise... lines) {
    return compile(plan(b -> b, lines));
  }

  private static List<String> exercises(CompiledPlan plan, int week) {
    return plan.sessionsOf(week).get(0).exercises().stream()
        .map(e -> e.order() + " " + e.setup().grip().name() + " " + e.scheme().sets())
        .toList();
  }

  @Test
  void minutesAreRoundedUpFromTheLastPartOfASecond() {
    assertEquals(13, compile(timed(Duration.ofSeconds(60))).sessions().get(0).minutes());
    assertEquals(14, compile(timed(Duration.ofMillis(60_500))).sessions().get(0).minutes());
    assertEquals(14, compile(timed(Duration.ofSeconds(61))).sessions().get(0).minutes());
    assertEquals(13, compile(timed(Duration.ofMillis(59_500))).sessions().get(0).minutes());
  }

  @Test
  void exercisesAreNumberedInTheOrderTheyAreTrained() {
    Plan.Builder plan =
        plan(b -> b, line(FRONT_THREE, 0.5), best(EDGE, HALF_CRIMP, DRAG), line(DRAG, 0.5))
            .demand(HALF_CRIMP, 0.6)
            .demand(DRAG, 0.4);
    assertEquals(
        List.of(
            "1 front-three 5", "2 half-crimp 3", "3 three-finger-drag 2", "4 three-finger-drag 5"),
        exercises(compile(plan), 1));
    assertEquals(
        List.of("1", "2", "2", "3"),
        compile(plan).sessions().get(0).exercises().stream()
            .map(e -> e.path().steps().get(e.path().steps().size() - 1).name())
            .toList(),
        "both grips stand on one line");
  }

  @Test
  void shareTooSmallForASetGetsNoSet() {
    Plan.Builder plan =
        plan(b -> b, best(EDGE, HALF_CRIMP, DRAG)).demand(HALF_CRIMP, 0.96).demand(DRAG, 0.04);
    assertEquals(List.of("1 half-crimp 5"), exercises(compile(plan), 1));
  }

  @Test
  void aLineWaitsForTheGripThatIsIntroduced() {
    UnaryOperator<Block.Builder> more =
        b ->
            b.introduce(DRAG, 0.5, 3)
                .advance(gripwright.plan.Advance.weekly(new gripwright.plan.Advance.SetsTo(9, 2)));
    Plan.Builder waits =
        plan(more, best(EDGE, HALF_CRIMP, DRAG)).demand(HALF_CRIMP, 0.6).demand(DRAG, 0.4);
    assertEquals(List.of("1 half-crimp 3", "2 three-finger-drag 2"), exercises(compile(waits), 2));
    Plan.Builder alone =
        plan(more, best(EDGE, HALF_CRIMP, DRAG)).demand(HALF_CRIMP, 0.99).demand(DRAG, 0.01);
    assertEquals(5, sets(compile(alone), 1));
  }

  private static int sets(CompiledPlan plan, int week) {
    return plan.sessionsOf(week).get(0).exercises().stream()
        .mapToInt((PlannedExercise e) -> e.scheme().sets())
        .sum();
  }

  private static SessionExpansion.Draft draft(Exercise... lines) {
    Plan plan = plan(b -> b, lines).build();
    Athlete ylva = Skarvdal.ylva().build();
    LogTimeline timeline = LogTimeline.of(plan, ylva, Skarvdal.tested());
    Block block = plan.blocks().get(0);
    WeekContext week =
        new WeekContext(
            block,
            1,
            1,
            MONDAY,
            plan.path(),
            new Progression.Week(
                MONDAY,
                List.of(),
                List.of(),
                Optional.empty(),
                Progression.Returning.NOTHING,
                Rise.of(0),
                ProgressionBlockers.of(plan, timeline),
                Optional.empty()));
    return new SessionExpansion(plan, ylva, timeline, Map.of(), new HandFindings(ylva))
        .drafts(week, new FindingList())
        .get(0);
  }

  @Test
  void aSessionIsHardOnTheFingersOfAllItsHardExercises() {
    assertEquals(
        Optional.of(FingerSet.FOUR),
        draft(line(DRAG, 0.84), line(HALF_CRIMP, 0.84)).request().hardFingers());
    assertEquals(
        Optional.of(DRAG.fingers()),
        draft(line(DRAG, 0.84), line(HALF_CRIMP, 0.5)).request().hardFingers());
    assertEquals(Optional.empty(), draft(line(HALF_CRIMP, 0.5)).request().hardFingers());
    assertEquals(
        25, draft(line(HALF_CRIMP, 0.84)).request().minutes(), "12 min warm-up, 12 min 50 s");
  }

  @Test
  void aChoiceWithoutATestReportsWhatItsFirstGripLacks() {
    Plan plan = plan(b -> b, best(EDGE, HALF_CRIMP, DRAG)).build();
    CompiledPlan compiled =
        Planner.compile(plan, Skarvdal.ylva().build(), Log.empty("ylva"), List.of());
    Finding none = compiled.findings().get(0);
    assertEquals("plan.no-test", none.code());
    assertEquals("1", none.place().steps().get(none.place().steps().size() - 1).name());
  }
}
