package gripwright.planning.load;

import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.Severity;
import gripwright.grip.Band;
import gripwright.grip.FitAdvice;
import gripwright.grip.FitMiss;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.grip.GripFit;
import gripwright.grip.PractisedGrips;
import gripwright.grip.Setup;
import gripwright.grip.StandardGrips;
import gripwright.hand.Finger;
import gripwright.hand.Hand;
import gripwright.hand.HandShape;
import gripwright.hand.Hands;
import gripwright.hand.Joint;
import gripwright.hand.Segment;
import gripwright.hand.Sex;
import gripwright.hand.Side;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import gripwright.protocol.Argument;
import gripwright.protocol.Level;
import gripwright.quantity.Angle;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import gripwright.season.Planner;
import gripwright.wording.Wording;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What the athlete's hands have to say about a plan. */
class HandFindingsTest {

  private static final Length SHALLOW = Length.ofMillimetres(15);
  private static final Grip STRAIGHT = PractisedGrips.STRAIGHT_FOUR;
  private static final Hand HAND = Hand.ofLength(Length.ofMillimetres(180));

  /** So short a little finger that a half crimp goes on 15 mm and not on 20 mm. */
  private static final Hand SHORT_LITTLE =
      HAND.withBone(Finger.LITTLE, Segment.PROXIMAL, Length.ofMillimetres(13.9));

  /** Taken only with the palm rolled beyond neutral. */
  private static final Grip ROLLED = PractisedGrips.BACK_THREE_MIDDLE_OPEN;

  private static Exercise kilograms(Exercise.Target target, Hands hands, double load) {
    return Exercise.builder(HOLDS, target, EDGE)
        .with(Map.of("level", Argument.of(Level.total(Load.ofKilograms(load)))))
        .hands(hands)
        .lifting(true)
        .build();
  }

  private static Exercise on(Grip grip, Hands hands) {
    return kilograms(new Exercise.On(grip), hands, 10);
  }

  private static CompiledPlan compile(Athlete athlete, Plan.Builder plan) {
    return Planner.compile(
        plan.athlete("ylva").from(MONDAY).build(), athlete, Skarvdal.tested(), List.of());
  }

  private static CompiledPlan compile(Athlete athlete, Exercise... exercises) {
    return compile(
        athlete,
        Plan.named("spring")
            .block(
                Block.named("base", 2).session(SessionPlan.of("strength", 2, exercises)).build()));
  }

  private static List<Finding> reported(CompiledPlan plan, String code) {
    return plan.findings().stream().filter(f -> f.code().equals(code)).toList();
  }

  private static Finding one(CompiledPlan plan, String code) {
    List<Finding> found = reported(plan, code);
    assertEquals(1, found.size(), () -> plan.findings().toString());
    return found.get(0);
  }

  @Test
  void anExerciseCarriesTheFitsOfTheHandsThatHold() {
    Athlete athlete = Skarvdal.ylva().sex(Sex.FEMALE).build();
    CompiledPlan plan =
        compile(
            athlete,
            on(StandardGrips.HALF_CRIMP, Hands.BOTH),
            on(StandardGrips.HALF_CRIMP, Hands.RIGHT));
    List<PlannedExercise> exercises = plan.sessions().get(0).exercises();
    Map<Side, GripFit> both = exercises.get(0).fits();
    assertEquals(List.of(Side.LEFT, Side.RIGHT), List.copyOf(both.keySet()));
    assertSame(both.get(Side.LEFT), both.get(Side.RIGHT), "two equal hands share one fit");
    assertEquals(
        GripFit.of(StandardGrips.HALF_CRIMP, HandShape.of(HAND, Optional.of(Sex.FEMALE)), EDGE),
        both.get(Side.LEFT));
    assertEquals(Set.of(Side.RIGHT), exercises.get(1).fits().keySet());
    assertSame(
        both.get(Side.LEFT),
        plan.sessions().get(3).exercises().get(1).fits().get(Side.RIGHT),
        "fitted once in a run");
  }

  @Test
  void fitsOfAnotherHandOrGripAreRefused() {
    PlannedExercise exercise =
        compile(Skarvdal.ylva().build(), on(StandardGrips.HALF_CRIMP, Hands.LEFT))
            .sessions()
            .get(0)
            .exercises()
            .get(0);
    GripFit fit = exercise.fits().values().iterator().next();
    assertEquals(exercise, withFits(exercise, Map.of(Side.LEFT, fit)));
    for (Map<Side, GripFit> wrong :
        List.of(
            Map.<Side, GripFit>of(),
            Map.of(Side.RIGHT, fit),
            Map.of(Side.LEFT, fit, Side.RIGHT, fit),
            Map.of(Side.LEFT, GripFit.of(STRAIGHT, HAND, EDGE)),
            Map.of(Side.LEFT, GripFit.of(StandardGrips.HALF_CRIMP, HAND, SHALLOW)))) {
      assertThrows(IllegalArgumentException.class, () -> withFits(exercise, wrong));
    }
  }

  private static PlannedExercise withFits(PlannedExercise exercise, Map<Side, GripFit> fits) {
    return exercise.toBuilder().fits(fits).build();
  }

  @Test
  void aGripOutOfReachIsOneErrorForAllItsWeeks() {
    CompiledPlan plan =
        compile(
            Skarvdal.ylva().build(),
            on(StandardGrips.HALF_CRIMP, Hands.BOTH),
            Exercise.of(HOLDS, STRAIGHT, EDGE));
    Finding finding = one(plan, "plan.grip-out-of-reach");
    assertTrue(finding.blocks());
    assertEquals(4, finding.places().size());
    assertTrue(finding.place().toString().endsWith("exercise 2"), finding.place().toString());
    assertEquals("ylva", finding.arguments().get("athlete"));
    assertEquals("straight-four", finding.arguments().get("grip"));
    assertEquals(EDGE, finding.arguments().get("edge"));
    assertEquals(Hands.BOTH, finding.arguments().get("hands"));
    assertFalse(finding.arguments().containsKey("other-edge"));
    FitMiss.TooShort reason = (FitMiss.TooShort) finding.arguments().get("reason");
    assertEquals(Finger.LITTLE, reason.finger(), "the finger that lacks most");
    assertEquals(3.6, reason.by().millimetres());
    assertEquals(
        List.of("plan.grip-out-of-reach"),
        plan.findings().stream().map(Finding::code).filter(c -> c.startsWith("plan.")).toList(),
        "that the grip was never tested comes later");
    assertTrue(plan.sessions().stream().allMatch(s -> s.exercises().size() == 1));
  }

  @Test
  void theReasonNamesTheNearestFlexion() {
    Grip stiff =
        Grip.named("stiff")
            .family(GripFamily.SPLIT)
            .fingers(Finger.INDEX, Finger.MIDDLE)
            .band(Finger.INDEX, Joint.PIP, Band.degrees(85, 95))
            .band(Finger.MIDDLE, Joint.PIP, Band.degrees(0, 20))
            .build();
    GripFit fit = GripFit.of(stiff, HAND, EDGE);
    FitMiss.OutOfBand reason =
        (FitMiss.OutOfBand)
            one(compile(Skarvdal.ylva().build(), on(stiff, Hands.LEFT)), "plan.grip-out-of-reach")
                .arguments()
                .get("reason");
    double nearest = fit.flexion(reason.finger(), Joint.PIP).orElseThrow().degrees();
    assertEquals(Angle.ofDegrees(Math.rint(nearest)), reason.nearest());
    assertEquals(stiff.band(reason.finger(), Joint.PIP).orElseThrow(), reason.required());
  }

  @Test
  void anEdgeThatTheHandTakesItOnIsNamed() {
    Athlete athlete = Skarvdal.ylva().hand(SHORT_LITTLE).build();
    Finding finding =
        one(compile(athlete, on(StandardGrips.HALF_CRIMP, Hands.BOTH)), "plan.grip-out-of-reach");
    assertEquals(SHALLOW, finding.arguments().get("other-edge"));
    FitMiss.OutOfBand reason = (FitMiss.OutOfBand) finding.arguments().get("reason");
    assertEquals(Finger.RING, reason.finger(), "held open by the short one beside it");
  }

  @Test
  void onlyTheHandThatHoldsCounts() {
    Athlete athlete = Skarvdal.ylva().hand(HAND).hand(Side.LEFT, SHORT_LITTLE).build();
    CompiledPlan right = compile(athlete, on(StandardGrips.HALF_CRIMP, Hands.RIGHT));
    assertEquals(List.of(), reported(right, "plan.grip-out-of-reach"));
    assertEquals(
        GripFit.of(StandardGrips.HALF_CRIMP, HAND, EDGE),
        right.sessions().get(0).exercises().get(0).fits().get(Side.RIGHT));
    for (Hands hands : List.of(Hands.LEFT, Hands.BOTH)) {
      Finding finding =
          one(compile(athlete, on(StandardGrips.HALF_CRIMP, hands)), "plan.grip-out-of-reach");
      assertEquals(Hands.LEFT, finding.arguments().get("hands"), "the right hand takes it");
    }
    CompiledPlan shallow =
        compile(
            athlete,
            Plan.named("spring")
                .block(
                    Block.named("base", 1)
                        .session(
                            SessionPlan.of(
                                "strength",
                                1,
                                Exercise.builder(
                                        HOLDS, new Exercise.On(StandardGrips.HALF_CRIMP), SHALLOW)
                                    .with(
                                        Map.of(
                                            "level",
                                            Argument.of(Level.total(Load.ofKilograms(10)))))
                                    .lifting(true)
                                    .build()))
                        .build()));
    Map<Side, GripFit> fits = shallow.sessions().get(0).exercises().get(0).fits();
    assertNotEquals(fits.get(Side.LEFT), fits.get(Side.RIGHT));
  }

  @Test
  void anEdgeThatIsNotThereIsReportedBeforeTheHand() {
    Exercise exercise = Exercise.of(HOLDS, STRAIGHT, Length.ofMillimetres(12));
    CompiledPlan plan = compile(Skarvdal.ylva().build(), exercise);
    assertEquals(
        List.of("plan.edge-missing"), plan.findings().stream().map(Finding::code).toList());
  }

  @Test
  void anAdvancingEdgeIsCheckedWhereItLeads() {
    Athlete athlete = Skarvdal.ylva().hand(SHORT_LITTLE).edge(Length.ofMillimetres(25)).build();
    Exercise shallower =
        Exercise.builder(HOLDS, new Exercise.On(StandardGrips.HALF_CRIMP), Length.ofMillimetres(20))
            .with(Map.of("level", Argument.of(Level.total(Load.ofKilograms(10)))))
            .lifting(true)
            .build();
    CompiledPlan plan =
        compile(
            athlete,
            Plan.named("spring")
                .block(
                    Block.named("base", 3)
                        .session(
                            SessionPlan.of(
                                "strength",
                                2,
                                shallower,
                                on(StandardGrips.INDEX_SINGLE, Hands.RIGHT)))
                        .advance(
                            Advance.weekly(new Advance.EdgeTo(SHALLOW, Length.ofMillimetres(5))))
                        .build()));
    Finding finding = one(plan, "plan.grip-out-of-reach");
    assertEquals(2, finding.places().size(), "the two sessions of the first week");
    assertEquals(2, plan.sessionsOf(2).get(0).exercises().size());
  }

  @Test
  void aFingerIsNotForcedInWhatIsHard() {
    Athlete athlete = Skarvdal.ylva().build();
    Exercise hard = Exercise.of(HOLDS, ROLLED, EDGE).with("level", Level.ofMax(90));
    Finding finding = one(compile(athlete, hard), "plan.finger-not-forced");
    assertEquals(Severity.ADVICE, finding.severity());
    assertEquals(4, finding.places().size());
    assertEquals("back-three-middle-open", finding.arguments().get("grip"));
    assertEquals(Hands.BOTH, finding.arguments().get("hands"));
    List<?> advice = (List<?>) finding.arguments().get("advice");
    FitAdvice first = (FitAdvice) advice.get(0);
    assertEquals(Finger.MIDDLE, first.finger());
    assertEquals(FitAdvice.Reason.WRIST_ROLL, first.reason());
    assertEquals(Math.rint(first.degrees()), first.degrees());
    Exercise light = Exercise.of(HOLDS, ROLLED, EDGE).with("level", Level.ofMax(50));
    CompiledPlan easy = compile(athlete, light);
    assertFalse(easy.sessions().get(0).hard());
    assertEquals(List.of(), reported(easy, "plan.finger-not-forced"));
  }

  @Test
  void whatTheModelKnowsOnlyRoughlyIsNotReported() {
    Grip wishful =
        Grip.named("wishful")
            .family(GripFamily.SPLIT)
            .fingers(Finger.INDEX, Finger.MIDDLE)
            .band(Finger.INDEX, Joint.PIP, Band.degrees(75, 105))
            .band(Finger.INDEX, Joint.MCP, Band.degrees(-40, -30))
            .band(Finger.MIDDLE, Joint.MCP, Band.degrees(80, 90))
            .build();
    GripFit fit = GripFit.of(wishful, HAND, EDGE);
    assertTrue(
        fit.advice().stream().anyMatch(a -> a.reason() == FitAdvice.Reason.WISH_NOT_MET),
        () -> fit.advice().toString());
    assertEquals(
        List.of(),
        reported(
            compile(Skarvdal.ylva().build(), Exercise.of(HOLDS, wishful, EDGE)),
            "plan.finger-not-forced"));
  }

  @Test
  void bestOfLeavesOutWhatTheHandCannotTake() {
    Exercise.BestOf two =
        new Exercise.BestOf(List.of(StandardGrips.HALF_CRIMP, STRAIGHT), Optional.empty());
    CompiledPlan plan = compile(Skarvdal.ylva().build(), kilograms(two, Hands.BOTH, 10));
    assertTrue(
        plan.sessions().stream()
            .flatMap(s -> s.exercises().stream())
            .allMatch(e -> e.setup().grip().equals(StandardGrips.HALF_CRIMP)));
    assertEquals(4, plan.sessions().size());
    assertEquals(List.of(), reported(plan, "plan.grip-out-of-reach"));
  }

  @Test
  void aChoiceThatLeavesNothingSaysThatTheHandIsWhy() {
    Exercise.BestOf neither =
        new Exercise.BestOf(List.of(StandardGrips.INDEX_SINGLE, STRAIGHT), Optional.empty());
    Finding none =
        one(
            compile(Skarvdal.ylva().build(), kilograms(neither, Hands.BOTH, 10)),
            "plan.choose-none");
    String reasons = Wording.english().sentence(none);
    assertTrue(reasons.contains("straight-four: the hand can't take it on 20 mm"), reasons);
    assertTrue(reasons.contains("index-single: no demand"), reasons);
    Exercise.BestOf gated =
        new Exercise.BestOf(
            List.of(StandardGrips.INDEX_SINGLE, StandardGrips.RING_SINGLE), Optional.empty());
    Finding needs =
        one(compile(Skarvdal.ylva().build(), kilograms(gated, Hands.BOTH, 10)), "plan.choose-none");
    assertFalse(Wording.english().sentence(needs).contains("hand"));
  }

  @Test
  void testsAreLookedAtToo() {
    Plan.Builder plan =
        Plan.named("spring")
            .block(
                Block.named("base", 2)
                    .session(
                        SessionPlan.of("strength", 1, on(StandardGrips.HALF_CRIMP, Hands.BOTH)))
                    .build())
            .retest(
                PlannedTest.every(
                    List.of(
                        Setup.of(StandardGrips.HALF_CRIMP, EDGE),
                        Setup.of(STRAIGHT, EDGE),
                        Setup.of(ROLLED, EDGE)),
                    Duration.ofSeconds(7),
                    1));
    CompiledPlan compiled = compile(Skarvdal.ylva().build(), plan);
    Finding refused = one(compiled, "plan.grip-out-of-reach");
    assertEquals("straight-four", refused.arguments().get("grip"));
    assertTrue(refused.place().toString().contains("retest 1"), refused.place().toString());
    assertEquals(2, refused.places().size());
    assertEquals(
        "back-three-middle-open", one(compiled, "plan.finger-not-forced").arguments().get("grip"));
  }
}
