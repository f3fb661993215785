package gripwright.season;

import static gripwright.planning.Skarvdal.DRAG;
import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.athlete.Injury;
import gripwright.grip.Grip;
import gripwright.hand.Finger;
import gripwright.hand.Structure;
import gripwright.log.Log;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import gripwright.schedule.PlannedExercise;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** Which loads a finger gets after its injury was cleared, and in a rehabilitation. */
class AfterInjuryTest {

  private static final LocalDate TESTED = MONDAY.minusDays(40);

  private static Injury injury(Structure structure, int from, Integer cleared) {
    return Injury.builder(Finger.LITTLE, structure, MONDAY.plusDays(from))
        .cleared(Optional.ofNullable(cleared).map(MONDAY::plusDays))
        .build();
  }

  private static CompiledPlan compile(
      Log log, Grip grip, UnaryOperator<Exercise> line, Injury... injuries) {
    Plan plan =
        Plan.named("spring")
            .athlete("ylva")
            .from(MONDAY)
            .block(
                Block.named("base", 3)
                    .session(
                        SessionPlan.of("strength", 1, line.apply(Exercise.of(HOLDS, grip, EDGE))))
                    .advance(Advance.weekly(Advance.loadByPercent(5)))
                    .build())
            .build();
    var athlete = Skarvdal.ylva();
    for (Injury injury : injuries) {
      athlete.injury(injury);
    }
    return Planner.compile(plan, athlete.build(), log, List.of());
  }

  private static double maximum(Log log, Grip grip, Injury... injuries) {
    return first(compile(log, grip, line -> line, injuries))
        .maximum()
        .orElseThrow()
        .used()
        .kilograms();
  }

  private static PlannedExercise first(CompiledPlan plan) {
    return plan.sessions().get(0).exercises().get(0);
  }

  private static long warnings(CompiledPlan plan) {
    return plan.findings().stream().filter(f -> f.code().equals("plan.test-before-injury")).count();
  }

  private static final Log LOG =
      Skarvdal.log(Skarvdal.test(HALF_CRIMP, TESTED, 90), Skarvdal.test(DRAG, TESTED, 80));

  @Test
  void aTestFromBeforeTheInjuryCountsAtSeventyPerCent() {
    double whole = maximum(LOG, HALF_CRIMP);
    assertEquals(0.7 * whole, maximum(LOG, HALF_CRIMP, injury(Structure.A2, -39, -2)), 1e-6);
    assertEquals(whole, maximum(LOG, HALF_CRIMP, injury(Structure.A2, -40, -2)), 1e-6, "on it");
    assertEquals(whole, maximum(LOG, HALF_CRIMP, injury(Structure.SKIN, -39, -2)), 1e-6, "skin");
    assertEquals(
        maximum(LOG, DRAG), maximum(LOG, DRAG, injury(Structure.A2, -39, -2)), 1e-6, "spared");
    assertEquals(1, warnings(compile(LOG, HALF_CRIMP, l -> l, injury(Structure.A2, -39, -2))));
    assertEquals(0, warnings(compile(LOG, DRAG, l -> l, injury(Structure.A2, -39, -2))));
  }

  @Test
  void testIsReducedForTwelveWeeks() {
    Log old = Skarvdal.log(Skarvdal.test(HALF_CRIMP, MONDAY.minusDays(100), 90));
    double whole = maximum(old, HALF_CRIMP);
    assertEquals(0.7 * whole, maximum(old, HALF_CRIMP, injury(Structure.A2, -99, -83)), 1e-6);
    assertEquals(whole, maximum(old, HALF_CRIMP, injury(Structure.A2, -99, -84)), 1e-6);
  }

  @Test
  void aRehabilitationCountsTheTestInFullAndTakesNoStep() {
    CompiledPlan plan =
        compile(
            LOG,
            HALF_CRIMP,
            line -> line.rehabilitation("plan of the clinic"),
            injury(Structure.A2, -39, null));
    assertEquals(
        maximum(LOG, HALF_CRIMP), first(plan).maximum().orElseThrow().used().kilograms(), 1e-6);
    assertEquals(0, warnings(plan));
    assertEquals(
        1,
        plan.sessions().stream().map(s -> s.exercises().get(0).totalLoad()).distinct().count(),
        "no step in three weeks");
    CompiledPlan usual = compile(LOG, DRAG, line -> line);
    assertEquals(
        3, usual.sessions().stream().map(s -> s.exercises().get(0).totalLoad()).distinct().count());
  }
}
