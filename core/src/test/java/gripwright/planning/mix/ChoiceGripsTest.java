package gripwright.planning.mix;

import static gripwright.planning.Skarvdal.DRAG;
import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.FRONT_THREE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.grip.PractisedGrips;
import gripwright.grip.Setup;
import gripwright.grip.StandardGrips;
import gripwright.history.LogTimeline;
import gripwright.log.Log;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import gripwright.planning.load.HandFindings;
import gripwright.planning.load.Prescription;
import gripwright.schedule.GripMix;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Which grips take part in a choice, the cost of excluding others, and how whole sets are split.
 */
class ChoiceGripsTest {

  private static Exercise best(Grip... grips) {
    return Exercise.builder(
            HOLDS,
            new Exercise.BestOf(List.of(grips), Optional.of(new Exercise.Weights(0.6, 0.2, 0.2))),
            EDGE)
        .build();
  }

  private static Choice choice(Exercise line, Map<Grip, Double> demand) {
    Athlete ylva = Skarvdal.ylva().build();
    Log log = Skarvdal.tested();
    Plan.Builder plan =
        Plan.named("spring")
            .athlete("ylva")
            .from(MONDAY)
            .block(Block.named("base", 1).session(SessionPlan.of("strength", 1, line)).build());
    demand.forEach(plan::demand);
    Plan built = plan.build();
    HandFindings hands = new HandFindings(ylva);
    Prescription prescription = new Prescription(ylva, log, MONDAY, hands);
    return new Choice(
        LogTimeline.of(built, ylva, log),
        hands.fits(),
        prescription.strengthOn(MONDAY),
        prescription.bodyMassOn(MONDAY));
  }

  private static Optional<Choice.Exclusion> out(Grip grip, Map<Grip, Double> demand) {
    return choice(best(HALF_CRIMP, grip), demand).excludedByHand(Setup.of(grip, EDGE));
  }

  @Test
  void aFullCrimpOrASingleFingerMustBeNamedByTheDemand() {
    for (Grip grip : List.of(StandardGrips.FULL_CRIMP, StandardGrips.MIDDLE_SINGLE)) {
      Choice.Exclusion out = out(grip, Map.of(HALF_CRIMP, 1.0)).orElseThrow();
      assertEquals(new GripMix.NotNamed(), out.reason());
      assertEquals(Optional.empty(), out(grip, Map.of(HALF_CRIMP, 0.7, grip, 0.3)));
      assertTrue(out(grip, Map.of(HALF_CRIMP, 1.0, grip, 0.0)).isPresent(), "named with nothing");
      assertTrue(out(grip, Map.of()).isPresent());
    }
    assertEquals(Optional.empty(), out(DRAG, Map.of(HALF_CRIMP, 1.0)));
  }

  @Test
  void aGripOutOfReachIsExcluded() {
    Choice.Exclusion out = out(PractisedGrips.STRAIGHT_FOUR, Map.of()).orElseThrow();
    assertEquals(new GripMix.OutOfReach(EDGE), out.reason());
  }

  @Test
  void aGripWithoutALoadIsExcludedWithItsCause() {
    ModelPath place = ModelPath.of("plan", "spring");
    Choice.Exclusion out =
        Choice.Exclusion.withoutLoad(
            Setup.of(DRAG, EDGE),
            List.of(
                Finding.advice("plan.load-modelled", place), Finding.error("plan.no-test", place)));
    assertEquals(new GripMix.NoLoad("plan.no-test"), out.reason());
    assertEquals(
        new GripMix.NoLoad(""),
        Choice.Exclusion.withoutLoad(Setup.of(DRAG, EDGE), List.of()).reason());
  }

  private static GripMix mix(List<Choice.Exclusion> out) {
    Exercise line = best(HALF_CRIMP, DRAG, FRONT_THREE);
    return choice(line, Map.of(HALF_CRIMP, 0.5, DRAG, 0.4, FRONT_THREE, 0.1))
        .mix(line, Choice.grips(line).stream().map(g -> Setup.of(g, EDGE)).toList(), out)
        .orElseThrow();
  }

  private static Choice.Exclusion gate(Grip grip) {
    return new Choice.Exclusion(grip.name(), new GripMix.ClosedByRule("closed"));
  }

  @Test
  void exclusionsAreReportedByTheirCostTheCostliestFirst() {
    GripMix both = mix(List.of(gate(FRONT_THREE), gate(HALF_CRIMP)));
    GripMix withoutHalf = mix(List.of(gate(HALF_CRIMP)));
    GripMix withoutFront = mix(List.of(gate(FRONT_THREE)));
    assertEquals(
        List.of("half-crimp", "front-three"),
        both.limits().stream().map(GripMix.Limit::grip).toList());
    assertEquals(
        withoutFront.best().score() - both.best().score(), both.limits().get(0).cost(), 1e-9);
    assertEquals(
        withoutHalf.best().score() - both.best().score(), both.limits().get(1).cost(), 1e-9);
    assertEquals(List.of(), mix(List.of()).limits());
  }

  private static Map<String, Integer> split(int sets, double a, double b, double c) {
    return Choice.apportion(sets, new TreeMap<>(Map.of("a", a, "b", b, "c", c)));
  }

  @Test
  void theLargestRemaindersGetTheRemainingSets() {
    assertEquals(Map.of("a", 3, "b", 3, "c", 4), split(10, 0.33, 0.33, 0.34));
    assertEquals(Map.of("a", 0, "b", 2, "c", 3), split(5, 0.06, 0.45, 0.49));
    assertEquals(Map.of("a", 1, "b", 2, "c", 2), split(5, 0.1, 0.45, 0.45));
    assertEquals(Map.of("a", 1, "b", 1, "c", 2), split(4, 0.2, 0.35, 0.45));
    assertEquals(Map.of("a", 1, "b", 1, "c", 1), split(3, 0.3, 0.3, 0.4));
  }

  @Test
  void ofEqualRemaindersTheFirstInTheAlphabetIsTaken() {
    assertEquals(
        Map.of("a", 3, "b", 2), Choice.apportion(5, new TreeMap<>(Map.of("a", 0.5, "b", 0.5))));
    assertEquals(
        Map.of("a", 3, "b", 2),
        Choice.apportion(5, new TreeMap<>(Map.of("a", 0.5 - 1e-9, "b", 0.5 + 1e-9))),
        "alike as far as shares are known");
    assertEquals(
        Map.of("a", 2, "b", 1),
        Choice.apportion(3, new TreeMap<>(Map.of("a", 2.0 / 3 - 1e-9, "b", 1.0 / 3 + 1e-9))),
        "two whole sets but for a rounding error");
  }
}
