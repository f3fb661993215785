package gripwright.survey;

import static gripwright.planning.Skarvdal.DRAG;
import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.FRONT_THREE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Athlete;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.planning.Skarvdal;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import gripwright.season.Planner;
import gripwright.strength.CriticalForce.Definition;
import gripwright.strength.ForceTime;
import gripwright.strength.StrengthMap;
import gripwright.strength.StrengthTest;
import gripwright.survey.StrengthSurvey.Critical;
import gripwright.survey.StrengthSurvey.Row;
import gripwright.survey.StrengthSurvey.Section;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StrengthSurveyTest {

  private static final Athlete YLVA = Skarvdal.ylva().build();

  private static StrengthSurvey survey(StrengthTest... tests) {
    return StrengthSurvey.of(
        YLVA,
        Skarvdal.log(tests),
        List.of(DRAG, FRONT_THREE, HALF_CRIMP),
        Optional.empty(),
        MONDAY);
  }

  private static StrengthTest toFailure(double seconds, double kilograms) {
    return new StrengthTest(
        MONDAY.minusDays(3),
        Setup.of(HALF_CRIMP, EDGE),
        new StrengthTest.ToFailure(
            Load.ofKilograms(kilograms), Duration.ofMillis(Math.round(seconds * 1000))));
  }

  @Test
  void everyGripIsCalculatedOnOwnedAndTestedEdges() {
    StrengthTest odd =
        new StrengthTest(
            MONDAY.minusDays(9),
            Setup.of(DRAG, Length.ofMillimetres(25)),
            new StrengthTest.Held(Duration.ofSeconds(7), Load.ofKilograms(80)));
    Section section =
        survey(odd, Skarvdal.test(HALF_CRIMP, MONDAY.minusDays(7), 92.5)).sections().get(0);
    assertEquals(
        List.of(25.0, 20.0, 15.0),
        section.rows().stream().map(r -> r.setup().edge().millimetres()).distinct().toList());
    assertEquals(9, section.rows().size());
    assertEquals(2, section.rows().stream().filter(r -> r.tests() == 1).count());
    assertFalse(section.testedAtSeveralTimes());
  }

  @Test
  void oneEdgeCanBeChosen() {
    StrengthSurvey survey =
        StrengthSurvey.of(
            YLVA,
            Skarvdal.tested(),
            List.of(HALF_CRIMP),
            Optional.of(Length.ofMillimetres(12)),
            MONDAY);
    assertEquals(1, survey.sections().get(0).rows().size());
    assertEquals(0, survey.sections().get(0).rows().get(0).tests());
  }

  @Test
  void waysOfHoldingAreDistinguished() {
    StrengthTest left =
        new StrengthTest(
            MONDAY.minusDays(7),
            Setup.of(HALF_CRIMP, EDGE).withHands(Hands.LEFT),
            new StrengthTest.Held(Duration.ofSeconds(7), Load.ofKilograms(45)));
    List<Section> sections = survey(left, Skarvdal.test(DRAG, MONDAY.minusDays(7), 78)).sections();
    assertEquals(List.of(Hands.BOTH, Hands.LEFT), sections.stream().map(Section::hands).toList());
    assertTrue(sections.get(1).rows().stream().allMatch(r -> r.setup().hands() == Hands.LEFT));
  }

  @Test
  void aFutureTestIsIgnored() {
    StrengthSurvey survey = survey(Skarvdal.test(DRAG, MONDAY.plusDays(1), 78));
    assertEquals(List.of(), survey.tests());
    assertEquals(List.of(), survey.sections());
  }

  /** The survey shows the numbers that plans use. */
  @Test
  void plansTakeTheirMaximumFromTheSameNumbers() {
    Plan plan =
        Plan.named("base")
            .athlete("ylva")
            .from(MONDAY)
            .block(
                gripwright.plan.Block.named("one", 1)
                    .session(
                        gripwright.plan.SessionPlan.of(
                            "fingers", 1, Exercise.of(Skarvdal.SERIES, FRONT_THREE, EDGE)))
                    .build())
            .build();
    CompiledPlan compiled = Planner.compile(plan, YLVA, Skarvdal.tested(), List.of());
    PlannedExercise exercise = compiled.sessions().get(0).exercises().get(0);
    Row row =
        StrengthSurvey.of(YLVA, Skarvdal.tested(), List.of(FRONT_THREE), Optional.of(EDGE), MONDAY)
            .sections()
            .get(0)
            .rows()
            .get(0);
    assertEquals(
        Optional.of(
            new PlannedExercise.Maximum(
                row.estimate().load().low(),
                row.estimate().load().best(),
                row.estimate().load().high())),
        exercise.maximum());
  }

  @Test
  void holdsOfSeveralTimesGiveEveryForm() {
    StrengthSurvey survey =
        survey(
            Skarvdal.test(HALF_CRIMP, MONDAY.minusDays(7), 92.5),
            toFailure(60, 52),
            toFailure(200, 34));
    Section section = survey.sections().get(0);
    assertTrue(section.testedAtSeveralTimes());
    assertEquals(
        List.of(ForceTime.Form.values()),
        section.curves().stream().map(c -> c.forceTime().form()).toList());
    Critical critical = survey.criticalForces().get(0);
    assertEquals(Definition.HOLDS_TO_FAILURE, critical.force().definition());
    assertEquals(MONDAY.minusDays(3), critical.date());
  }

  private static StrengthTest series(int daysAgo, Hands hands, double end) {
    List<Load> means = new ArrayList<>();
    for (int i = 0; i < 24; i++) {
      means.add(Load.ofKilograms(end + 40 * Math.exp(-i / 4.0)));
    }
    return new StrengthTest(
        MONDAY.minusDays(daysAgo),
        Setup.of(HALF_CRIMP, EDGE).withHands(hands),
        new StrengthTest.Series(Duration.ofSeconds(7), Duration.ofSeconds(3), means));
  }

  @Test
  void theMostCertainCriticalForceComesFirst() {
    StrengthSurvey survey =
        survey(series(5, Hands.BOTH, 30), toFailure(60, 52), toFailure(200, 34));
    assertEquals(
        List.of(Definition.HOLDS_TO_FAILURE, Definition.MEAN_OF_LAST_THREE, Definition.ASYMPTOTE),
        survey.criticalForces().stream().map(c -> c.force().definition()).toList());
    assertEquals(30, survey.criticalForces().get(2).force().force().best().kilograms(), 1e-6);
  }

  @Test
  void criticalForceOfOneHandComesAfterThatOfBoth() {
    List<Critical> found =
        survey(series(700, Hands.BOTH, 30), series(5, Hands.LEFT, 15)).criticalForces();
    assertEquals(
        List.of(Hands.BOTH, Hands.BOTH, Hands.LEFT, Hands.LEFT),
        found.stream().map(critical -> critical.setup().hands()).toList());
    assertEquals(
        Math.hypot(0.21, StrengthMap.drift(MONDAY.minusDays(700), MONDAY)),
        found.get(0).force().force().spread(),
        1e-9);
  }

  @Test
  void criticalForceOfHoldsHasTheirDays() {
    StrengthTest late = toFailure(200, 34);
    StrengthTest early =
        new StrengthTest(MONDAY.minusDays(40), late.setup(), toFailure(60, 52).result());
    StrengthTest maximum = Skarvdal.test(HALF_CRIMP, MONDAY.minusDays(1), 92.5);
    Critical critical = survey(early, late, maximum).criticalForces().get(0);
    assertEquals(early.date(), critical.first());
    assertEquals(late.date(), critical.date(), "a hold of 7 s has no part in it");
  }

  @Test
  void aShallowEdgeIsNotEstimatedFromADeeperOne() {
    Length shallow = Length.ofMillimetres(4);
    StrengthSurvey survey =
        StrengthSurvey.of(
            YLVA, Skarvdal.tested(), List.of(HALF_CRIMP), Optional.of(shallow), MONDAY);
    Section section = survey.sections().get(0);
    assertEquals(List.of(), section.rows());
    assertEquals(List.of(), section.curves());
    assertEquals(List.of(shallow), section.withoutEstimate());
  }

  @Test
  void curveTimesFollowTheEdge() {
    Length other = Length.ofMillimetres(12);
    StrengthSurvey survey =
        StrengthSurvey.of(YLVA, Skarvdal.tested(), List.of(HALF_CRIMP), Optional.of(other), MONDAY);
    assertEquals(other, survey.sections().get(0).curves().get(0).setup().edge());
  }

  @Test
  void unusableTestsAreListed() {
    StrengthSurvey survey = survey(toFailure(1.5, 99), toFailure(60, 52), toFailure(660, 20));
    assertEquals(1, survey.tests().size());
    assertEquals(
        List.of(StrengthSurvey.Reason.TOO_SHORT, StrengthSurvey.Reason.TOO_LONG),
        survey.unused().stream().map(StrengthSurvey.Unused::reason).sorted().toList());
  }

  private static StrengthTest on(Setup setup, int daysAgo) {
    return new StrengthTest(
        MONDAY.minusDays(daysAgo),
        setup,
        new StrengthTest.Held(Duration.ofSeconds(7), Load.ofKilograms(80)));
  }

  @Test
  void onlyVeryShallowEdgesAreNotEstimated() {
    Length shallow = Length.ofMillimetres(4);
    Athlete owner = Skarvdal.ylva().edge(shallow).build();
    Section section =
        StrengthSurvey.of(owner, Skarvdal.tested(), List.of(HALF_CRIMP), Optional.empty(), MONDAY)
            .sections()
            .get(0);
    assertEquals(List.of(shallow), section.withoutEstimate());
    assertEquals(
        List.of(20.0, 15.0),
        section.rows().stream().map(r -> r.setup().edge().millimetres()).toList());
  }

  @Test
  void testsOfOneWayOfHoldingDoNotCountForAnother() {
    Length deep = Length.ofMillimetres(30);
    List<Section> sections =
        survey(
                on(Setup.of(DRAG, EDGE), 7),
                on(new Setup(HALF_CRIMP, deep, Hands.LEFT, false), 6),
                new StrengthTest(
                    MONDAY.minusDays(5),
                    Setup.of(DRAG, EDGE),
                    new StrengthTest.Held(Duration.ofSeconds(10), Load.ofKilograms(70))))
            .sections();
    assertEquals(
        List.of(20.0, 15.0),
        sections.get(0).rows().stream()
            .map(r -> r.setup().edge().millimetres())
            .distinct()
            .toList());
    assertTrue(sections.get(0).testedAtSeveralTimes());
    assertFalse(sections.get(1).testedAtSeveralTimes());
    assertEquals(deep, sections.get(1).rows().get(0).setup().edge());
  }

  private static Setup curve(Optional<Length> only, StrengthTest... tests) {
    return StrengthSurvey.of(
            YLVA, Skarvdal.log(tests), List.of(DRAG, HALF_CRIMP, FRONT_THREE), only, MONDAY)
        .sections()
        .get(0)
        .curves()
        .get(0)
        .setup();
  }

  @Test
  void theCurveIsOfTheSetupTestedMostThenLastThenFirstInTheAlphabet() {
    Setup half = Setup.of(HALF_CRIMP, EDGE);
    Setup drag = Setup.of(DRAG, EDGE);
    Setup front = Setup.of(FRONT_THREE, EDGE);
    Optional<Length> any = Optional.empty();
    assertEquals(half, curve(any, on(half, 30), on(half, 20), on(drag, 10)));
    assertEquals(drag, curve(any, on(half, 30), on(drag, 10)));
    assertEquals(half, curve(any, on(half, 10), on(drag, 30)));
    assertEquals(front, curve(any, on(half, 10), on(drag, 10), on(front, 10)));
    Setup deep = half.withEdge(Length.ofMillimetres(25));
    assertEquals(deep, curve(any, on(half, 10), on(deep, 10)), "the deeper one");
  }

  @Test
  void onAChosenEdgeItsOwnTestsComeFirst() {
    Length deep = Length.ofMillimetres(25);
    Setup half = Setup.of(HALF_CRIMP, EDGE);
    Setup drag = Setup.of(DRAG, deep);
    assertEquals(drag, curve(Optional.of(deep), on(half, 30), on(half, 20), on(drag, 40)));
    assertEquals(
        half.withEdge(Length.ofMillimetres(12)),
        curve(Optional.of(Length.ofMillimetres(12)), on(half, 30), on(half, 20), on(drag, 40)));
  }

  @Test
  void seriesDoNotCountForTheCriticalForceOfHolds() {
    Critical holds =
        survey(series(90, Hands.BOTH, 30), toFailure(60, 52), toFailure(200, 34))
            .criticalForces()
            .stream()
            .filter(c -> c.force().definition() == Definition.HOLDS_TO_FAILURE)
            .findFirst()
            .orElseThrow();
    assertEquals(MONDAY.minusDays(3), holds.first());
    assertEquals(
        survey(toFailure(60, 52), toFailure(200, 34)).criticalForces().get(0).force(),
        holds.force());
  }

  /** What gives a plan no load, or a lower one, does so here. */
  @Test
  void doubtfulTestsCountAsInPlans() {
    StrengthTest high = Skarvdal.test(HALF_CRIMP, MONDAY.minusDays(9), 150);
    StrengthSurvey adult = survey(high);
    assertEquals(List.of(high), adult.lowered());
    assertEquals(List.of(), adult.unused());
    assertEquals(132, adult.tests().get(0).effort().orElseThrow().load().kilograms(), 1e-6);
    Athlete child = Skarvdal.ylva().born(MONDAY.minusYears(14)).build();
    StrengthSurvey young =
        StrengthSurvey.of(child, Skarvdal.log(high), List.of(HALF_CRIMP), Optional.empty(), MONDAY);
    assertEquals(
        List.of(StrengthSurvey.Reason.DOUBTED),
        young.unused().stream().map(StrengthSurvey.Unused::reason).toList());
    assertEquals(List.of(), young.tests());
    StrengthSurvey odd =
        survey(
            Skarvdal.test(HALF_CRIMP, MONDAY.minusDays(30), 80),
            Skarvdal.test(HALF_CRIMP, MONDAY.minusDays(20), 81),
            Skarvdal.test(HALF_CRIMP, MONDAY.minusDays(9), 120));
    assertEquals(
        List.of(StrengthSurvey.Reason.ODD),
        odd.unused().stream().map(StrengthSurvey.Unused::reason).toList());
  }

  @Test
  void twoSecondsAreLongEnough() {
    assertEquals(List.of(), survey(toFailure(2, 99)).unused());
    assertEquals(
        List.of(StrengthSurvey.Reason.TOO_SHORT),
        survey(toFailure(1.9, 99)).unused().stream().map(StrengthSurvey.Unused::reason).toList());
    assertEquals(List.of(), survey(toFailure(600, 20)).unused());
  }
}
