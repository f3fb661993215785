package gripwright.planning.mix;

import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.grip.Grip;
import gripwright.grip.StandardGrips;
import gripwright.log.Log;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import gripwright.schedule.GripMix;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import gripwright.season.Planner;
import gripwright.wording.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The mix of a line with a choice of grips. */
class ChoiceTest {

  private static final Grip HALF = StandardGrips.HALF_CRIMP;
  private static final Grip DRAG = StandardGrips.THREE_FINGER_DRAG;
  private static final Grip BACK = StandardGrips.BACK_THREE;
  private static final Grip FRONT = StandardGrips.FRONT_THREE;
  private static final Exercise.Weights MATCH = new Exercise.Weights(1, 0, 0);
  private static final Exercise.Weights MARGIN = new Exercise.Weights(0, 1, 0);
  private static final Exercise.Weights CARRY_OVER = new Exercise.Weights(0, 0, 1);

  private static List<PlannedExercise> first(
      Athlete athlete, Exercise.Weights weights, Map<Grip, Double> demand, Grip... grips) {
    Plan.Builder plan =
        Plan.named("thaw")
            .athlete("ylva")
            .from(MONDAY)
            .block(
                Block.named("base", 1)
                    .session(
                        SessionPlan.of(
                            "strength",
                            1,
                            Exercise.builder(
                                    HOLDS,
                                    new Exercise.BestOf(List.of(grips), Optional.of(weights)),
                                    EDGE)
                                .build()))
                    .build());
    demand.forEach(plan::demand);
    Log log =
        Skarvdal.log(
            Skarvdal.test(HALF, MONDAY.minusDays(7), 92.5),
            Skarvdal.test(DRAG, MONDAY.minusDays(7), 78));
    CompiledPlan compiled = Planner.compile(plan.build(), athlete, log, List.of());
    return compiled.sessions().get(0).exercises();
  }

  private static GripMix mix(Exercise.Weights weights, Map<Grip, Double> demand, Grip... grips) {
    return first(Skarvdal.ylva().build(), weights, demand, grips).get(0).mix().orElseThrow();
  }

  @Test
  void matchAloneFollowsTheDemand() {
    GripMix mix = mix(MATCH, Map.of(HALF, 0.6, DRAG, 0.4), HALF, DRAG);
    assertEquals(0.6, mix.best().shares().get("half-crimp"), 1e-6);
    assertEquals(0.4, mix.best().shares().get("three-finger-drag"), 1e-6);
    assertEquals(1, mix.best().match(), 1e-6);
    assertEquals(1, mix.best().score(), 1e-6);
  }

  @Test
  void wholeSetsFollowTheShares() {
    List<PlannedExercise> exercises =
        first(Skarvdal.ylva().build(), MATCH, Map.of(HALF, 0.6, DRAG, 0.4), HALF, DRAG);
    assertEquals(List.of(3, 2), exercises.stream().map(e -> e.scheme().sets()).toList());
    assertTrue(
        exercises.get(0).why().stream()
            .anyMatch(
                w ->
                    Words.step(w).equals("share of work")
                        && Words.say(w).startsWith("3 of 5 sets")),
        exercises.get(0).why().toString());
    assertTrue(
        exercises.get(1).why().stream()
            .anyMatch(w -> Words.say(w).equals("2 of 5 sets; for the reasons see half-crimp")),
        exercises.get(1).why().toString());
  }

  /** Work in exactly the posture in demand carries over in full; any other less. */
  @Test
  void carryOverAloneTrainsWhatIsInDemand() {
    GripMix mix = mix(CARRY_OVER, Map.of(DRAG, 1.0), HALF, DRAG);
    assertEquals(List.of("three-finger-drag"), List.copyOf(mix.best().shares().keySet()));
    assertEquals(1, mix.best().carryOver(), 1e-9);
    assertTrue(mix.nextBest().orElseThrow().carryOver() < 1);
  }

  /**
   * When the middle finger slips off a back three, the ring finger takes nearly all; a half crimp
   * loads that pulley and a drag, whose ring finger is straight, hardly does.
   */
  @Test
  void marginAloneTrainsTheGripThatLoadsThePulleyAtRisk() {
    GripMix mix = mix(MARGIN, Map.of(BACK, 1.0), HALF, DRAG);
    assertTrue(mix.best().shares().get("half-crimp") > 0.8, mix.toString());
    assertTrue(mix.best().margin() > 0);
  }

  /**
   * Front three is neither tested nor in the demand, and the model can't tell its margin from that
   * of a half crimp. It is fairly certain that the drag loads the pulleys at risk less, so the drag
   * gets somewhat less than the demand says, but not nothing.
   */
  @Test
  void marginsThatTheModelCannotTellApartAreEqualAndTheDemandDecides() {
    GripMix mix = mix(MARGIN, Map.of(HALF, 0.7, DRAG, 0.3), HALF, DRAG, FRONT);
    assertEquals(
        Set.of("half-crimp", "three-finger-drag"), mix.best().shares().keySet(), mix.toString());
    assertEquals(0.3, mix.best().shares().get("three-finger-drag"), 0.1, mix.toString());
    assertEquals(Optional.empty(), mix.unproven());
    GripMix tested = mix(MARGIN, Map.of(HALF, 1.0), HALF, DRAG, FRONT);
    assertEquals(Set.of("half-crimp"), tested.best().shares().keySet());
  }

  /**
   * Where it is certain to do more than the rest, it takes the least share, and a reason says so.
   */
  @Test
  void anUnprovenGripTakesPartOnlyForAReason() {
    GripMix mix = mix(MARGIN, Map.of(BACK, 1.0), DRAG, FRONT);
    GripMix.Unproven unproven = mix.unproven().orElseThrow();
    assertEquals(List.of("front-three"), unproven.grips());
    assertTrue(mix.best().shares().containsKey("three-finger-drag"), mix.toString());
    assertTrue(unproven.without().orElseThrow().margin() < mix.best().margin());
    assertTrue(
        first(Skarvdal.ylva().build(), MARGIN, Map.of(BACK, 1.0), DRAG, FRONT).get(0).why().stream()
            .anyMatch(
                link ->
                    Words.say(link)
                        .startsWith(
                            "with front-three, neither tested nor in the demand; the best mix"
                                + " without has match 0 %, margin ")),
        mix.toString());
  }

  @Test
  void aGateThatCostsSomethingIsReportedWithItsRule() {
    Athlete beginner = Skarvdal.ylva().trained(18).build();
    GripMix mix =
        first(beginner, MATCH, Map.of(HALF, 0.5, FRONT, 0.5), HALF, FRONT)
            .get(0)
            .mix()
            .orElseThrow();
    assertEquals(1, mix.best().shares().get("half-crimp"), 1e-9);
    GripMix.Limit limit = mix.limits().get(0);
    assertEquals("front-three", limit.grip());
    assertEquals(new GripMix.ClosedByRule("split-grip-gate"), limit.reason());
    assertEquals(1, limit.cost(), 1e-6, "from the worst single grip to the best mix");
    assertTrue(mix.nextBest().isEmpty());
  }

  @Test
  void aFullCrimpIsTakenOnlyWhereTheDemandNamesIt() {
    GripMix without = mix(CARRY_OVER, Map.of(HALF, 1.0), StandardGrips.FULL_CRIMP, DRAG);
    assertEquals(List.of("three-finger-drag"), List.copyOf(without.best().shares().keySet()));
    GripMix.Limit limit = without.limits().get(0);
    assertEquals(new GripMix.NotNamed(), limit.reason());
    assertTrue(limit.cost() > 0.5, "a full crimp is nearer to a half crimp than a drag is");
  }

  @Test
  void theOrderWrittenChangesNothing() {
    Exercise.Weights weights = Exercise.Weights.STANDARD;
    Map<Grip, Double> demand = Map.of(HALF, 0.5, DRAG, 0.3, FRONT, 0.2);
    assertEquals(
        mix(weights, demand, HALF, DRAG, FRONT).best(),
        mix(weights, demand, FRONT, HALF, DRAG).best());
  }

  /** Any mix from 40 to 70 % half crimp matches 70 % of the demand; the demand itself decides. */
  @Test
  void ofEquallyGoodMixesTheOneNearestToTheDemandIsTaken() {
    Athlete beginner = Skarvdal.ylva().trained(18).build();
    GripMix mix =
        first(beginner, MATCH, Map.of(HALF, 0.4, DRAG, 0.3, FRONT, 0.3), HALF, DRAG, FRONT)
            .get(0)
            .mix()
            .orElseThrow();
    assertEquals(4 / 7.0, mix.best().shares().get("half-crimp"), 1e-6);
    assertEquals(3 / 7.0, mix.best().shares().get("three-finger-drag"), 1e-6);
  }

  @Test
  void withoutDemandOnlyGripsThatNeedNotBeNamedAreInDemand() {
    GripMix mix = mix(MATCH, Map.of(), HALF, DRAG, StandardGrips.FULL_CRIMP);
    assertEquals(1, mix.best().match(), 1e-6);
    assertEquals(0.5, mix.best().shares().get("half-crimp"), 1e-6);
  }

  @Test
  void withoutTestsTheMissingTestIsReported() {
    Plan plan =
        Plan.named("thaw")
            .athlete("ylva")
            .from(MONDAY)
            .block(
                Block.named("base", 1)
                    .session(
                        SessionPlan.of(
                            "strength",
                            1,
                            Exercise.builder(
                                    HOLDS,
                                    new Exercise.BestOf(List.of(HALF, DRAG), Optional.empty()),
                                    EDGE)
                                .build()))
                    .build())
            .build();
    CompiledPlan compiled =
        Planner.compile(plan, Skarvdal.ylva().build(), Log.empty("ylva"), List.of());
    assertEquals(
        List.of("plan.no-test"),
        compiled.findings().stream().filter(Finding::blocks).map(Finding::code).toList());
  }
}
