package gripwright.grip;

import static gripwright.grip.PractisedGrips.EDGE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.Hand;
import gripwright.hand.HandShape;
import gripwright.hand.Joint;
import gripwright.hand.Segment;
import gripwright.hand.Sex;
import gripwright.quantity.Angle;
import gripwright.quantity.Length;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What coaches see on a 20 mm edge (common practice), from anthropometry alone, for hands from the
 * 5th to the 95th percentile of both sexes.
 */
class CommonPracticeTest {

  static List<HandShape> hands() {
    return PractisedGrips.hands();
  }

  private static double pip(GripFit fit, Finger finger) {
    return fit.flexion(finger, Joint.PIP).map(Angle::degrees).orElse(Double.NaN);
  }

  private static void between(double low, double high, double flexion) {
    assertTrue(flexion >= low && flexion <= high, () -> low + " to " + high + ": " + flexion);
  }

  @ParameterizedTest
  @MethodSource("hands")
  void halfCrimpBendsThreeFingersAndLeavesTheLittleOneAlmostStraight(HandShape hand) {
    GripFit fit = GripFit.of(PractisedGrips.HALF_CRIMP, hand, EDGE);
    assertTrue(fit.reachable());
    between(80, 100, pip(fit, Finger.INDEX));
    between(90, 108, pip(fit, Finger.MIDDLE));
    between(75, 100, pip(fit, Finger.RING));
    between(0, 15, pip(fit, Finger.LITTLE));
    assertEquals(List.of(), fit.advice());
  }

  @ParameterizedTest
  @MethodSource("hands")
  void threeFingerDragBendsTheMiddleFinger(HandShape hand) {
    GripFit fit = GripFit.of(PractisedGrips.THREE_FINGER_DRAG, hand, EDGE);
    assertTrue(fit.reachable());
    between(0, 20, pip(fit, Finger.INDEX));
    between(40, 75, pip(fit, Finger.MIDDLE));
    between(0, 20, pip(fit, Finger.RING));
  }

  @ParameterizedTest
  @MethodSource("hands")
  void everyPractisedGripIsTaken(HandShape hand) {
    for (Grip grip : PractisedGrips.all()) {
      GripFit fit = GripFit.of(grip, hand, EDGE);
      assertTrue(fit.reachable(), () -> grip.name() + ": " + fit.misses());
      fit.personalBands()
          .forEach(
              (at, band) ->
                  assertTrue(
                      band.contains(fit.flexion(at.finger(), at.joint()).orElseThrow()),
                      at + " " + band));
    }
  }

  @ParameterizedTest
  @MethodSource("hands")
  void everyGripOfTheCatalogueIsTakenOnUsualEdges(HandShape hand) {
    for (double edge : new double[] {10, 15, 20, 25}) {
      List<String> refused =
          StandardGrips.all().stream()
              .filter(grip -> !GripFit.of(grip, hand, Length.ofMillimetres(edge)).reachable())
              .map(Grip::name)
              .toList();
      assertEquals(List.of(), refused, edge + " mm");
    }
  }

  /**
   * Bones that vary by 3 % from one person to the next, each on its own, are no reason to refuse a
   * grip of the catalogue. The spread is the library's own guess: for one person the estimate of a
   * bone is good to about 8 % (Buchholz B et al. 1992, Ergonomics 35(3):261-273).
   */
  @Test
  void noHandOfUsualVarietyIsRefusedTheCatalogue() {
    Random random = new Random(17);
    for (int person = 0; person < 200; person++) {
      Hand hand = Hand.ofLength(Length.ofMillimetres(185 + 10 * random.nextGaussian()));
      HandShape usual = HandShape.of(hand);
      for (Finger finger : Finger.values()) {
        for (Segment segment : Segment.values()) {
          double bone = usual.bone(finger, segment).millimetres();
          hand =
              hand.withBone(
                  finger, segment, Length.ofMillimetres(bone * (1 + 0.03 * random.nextGaussian())));
        }
      }
      for (Grip grip : StandardGrips.all()) {
        GripFit fit = GripFit.of(grip, hand, EDGE);
        assertTrue(fit.reachable(), fit::toString);
      }
    }
  }

  /** The fingertips lie on one straight edge, so the short fingers are straighter. */
  @ParameterizedTest
  @MethodSource("hands")
  void theCataloguesOpenHandIsStraightAtItsEnds(HandShape hand) {
    GripFit fit = GripFit.of(StandardGrips.OPEN_FOUR, hand, EDGE);
    assertTrue(pip(fit, Finger.INDEX) < pip(fit, Finger.MIDDLE));
    assertTrue(pip(fit, Finger.LITTLE) < pip(fit, Finger.RING));
    between(0, 20, pip(fit, Finger.LITTLE));
    between(45, 70, pip(fit, Finger.MIDDLE));
    between(45, 70, pip(fit, Finger.RING));
    assertEquals(List.of(), fit.advice());
  }

  @ParameterizedTest
  @MethodSource("hands")
  void theCataloguesHalfCrimpBendsAsCoachesSee(HandShape hand) {
    GripFit fit = GripFit.of(StandardGrips.HALF_CRIMP, hand, EDGE);
    between(80, 100, pip(fit, Finger.INDEX));
    between(90, 108, pip(fit, Finger.MIDDLE));
    between(75, 100, pip(fit, Finger.RING));
    between(0, 15, pip(fit, Finger.LITTLE));
    assertEquals(List.of(), fit.advice());
  }

  /**
   * Index and middle near a right angle; the ring finger as it falls, often 110 to 120 included.
   */
  @ParameterizedTest
  @MethodSource("hands")
  void theCataloguesFrontThreeLeavesTheRingFingerMoreOpen(HandShape hand) {
    GripFit fit = GripFit.of(StandardGrips.FRONT_THREE, hand, EDGE);
    between(75, 105, pip(fit, Finger.INDEX));
    between(75, 105, pip(fit, Finger.MIDDLE));
    between(60, 80, pip(fit, Finger.RING));
    assertTrue(pip(fit, Finger.RING) < pip(fit, Finger.INDEX));
    assertEquals(List.of(), fit.advice());
  }

  @ParameterizedTest
  @MethodSource("hands")
  void theCataloguesBackThreeKeepsTheMiddleFingerNearARightAngle(HandShape hand) {
    GripFit fit = GripFit.of(StandardGrips.BACK_THREE, hand, EDGE);
    between(80, 105, pip(fit, Finger.MIDDLE));
    between(75, 100, pip(fit, Finger.RING));
    assertEquals(List.of(), fit.advice());
  }

  /** A bent knuckle is a hand at rest: under load the flexors could not hold it. */
  @ParameterizedTest
  @MethodSource("hands")
  void noKnuckleOfABentFingerIsThatOfAHandAtRest(HandShape hand) {
    for (Grip grip : StandardGrips.all()) {
      for (FingerPose pose : GripFit.of(grip, hand, EDGE).pose().fingers()) {
        if (pose.pip().degrees() > 20) {
          between(-10, 35, pose.mcp().degrees());
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("hands")
  void aSingleFingerIsHeldOpen(HandShape hand) {
    for (Grip grip : StandardGrips.all()) {
      if (grip.family() == GripFamily.SINGLE) {
        for (FingerPose pose : GripFit.of(grip, hand, EDGE).pose().fingers()) {
          between(20, 75, pose.pip().degrees());
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("hands")
  void noHandHoldsFourStraightFingers(HandShape hand) {
    GripFit fit = GripFit.of(PractisedGrips.STRAIGHT_FOUR, hand, EDGE);
    assertFalse(fit.reachable());
    assertTrue(
        fit.misses().stream().anyMatch(miss -> miss.finger() == Finger.LITTLE),
        () -> "the shortest finger is reported: " + fit.misses());
    assertEquals(List.of(), fit.advice());
    assertTrue(fit.personalBands().isEmpty());
  }

  @Test
  void theReasonSaysWhichFingerAndHowMuch() {
    Grip grip =
        Grip.named("stiff")
            .family(GripFamily.SPLIT)
            .fingers(Finger.INDEX, Finger.MIDDLE)
            .band(Finger.INDEX, Joint.PIP, Band.degrees(85, 95))
            .band(Finger.MIDDLE, Joint.PIP, Band.degrees(0, 20))
            .build();
    GripFit fit = GripFit.of(grip, PractisedGrips.hand(Sex.MALE, 50), EDGE);
    assertFalse(fit.reachable());
    FitMiss.OutOfBand miss =
        assertInstanceOf(
            FitMiss.OutOfBand.class,
            fit.misses().stream()
                .filter(m -> m.finger() == Finger.MIDDLE)
                .findFirst()
                .orElseThrow());
    assertTrue(miss.degrees() > 10, miss.toString());
    assertEquals(Band.degrees(0, 20), miss.required());
  }

  @Test
  void aFingerThatNeedsARolledPalmIsNotToBeForced() {
    GripFit fit =
        GripFit.of(PractisedGrips.BACK_THREE_MIDDLE_OPEN, PractisedGrips.hand(Sex.MALE, 50), EDGE);
    assertTrue(fit.reachable());
    assertTrue(fit.wristRoll().degrees() > 10, fit::toString);
    assertTrue(
        fit.advice().stream()
            .anyMatch(
                advice ->
                    advice.finger() == Finger.MIDDLE
                        && advice.reason() == FitAdvice.Reason.WRIST_ROLL));
  }
}
