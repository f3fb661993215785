package gripwright.grip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.hand.Finger;
import gripwright.hand.FlexionRange;
import gripwright.hand.Hand;
import gripwright.hand.HandMeasure;
import gripwright.hand.HandShape;
import gripwright.hand.Joint;
import gripwright.hand.JointLimits;
import gripwright.hand.Segment;
import gripwright.hand.Sex;
import gripwright.quantity.Angle;
import gripwright.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What an athlete's own joint limits change in a fit. */
class OwnLimitsTest {

  private static final Hand HAND = Hand.ofLength(HandMeasure.LENGTH.percentile(Sex.FEMALE, 50));

  private static GripFit fit(Grip grip, Hand hand) {
    return GripFit.of(grip, hand, PractisedGrips.EDGE);
  }

  private static Hand limited(Finger finger, Joint joint, double low, double high) {
    return HAND.withLimit(finger, joint, FlexionRange.degrees(low, high));
  }

  private static double pip(GripFit fit, Finger finger) {
    return fit.flexion(finger, Joint.PIP).map(Angle::degrees).orElse(Double.NaN);
  }

  private static Band own(GripFit fit, Finger finger, Joint joint) {
    Band band = fit.personalBands().get(new Grip.At(finger, joint));
    if (band == null) {
      throw new AssertionError("no own band of " + finger + " " + joint);
    }
    return band;
  }

  @Test
  void aStifferRingFingerShiftsItsOwnBandInAHalfCrimp() {
    GripFit free = fit(PractisedGrips.HALF_CRIMP, HAND);
    GripFit stiff = fit(PractisedGrips.HALF_CRIMP, limited(Finger.RING, Joint.PIP, 0, 78));
    assertTrue(pip(free, Finger.RING) > 82);
    assertTrue(stiff.reachable(), () -> stiff.misses().toString());
    assertTrue(pip(stiff, Finger.RING) <= 78 + GripFit.BAND_TOLERANCE);
    assertTrue(own(free, Finger.RING, Joint.PIP).high().degrees() > 92);
    assertTrue(own(stiff, Finger.RING, Joint.PIP).high().degrees() <= 78 + GripFit.BAND_TOLERANCE);
    assertTrue(
        own(stiff, Finger.RING, Joint.PIP).low().degrees()
            < own(free, Finger.RING, Joint.PIP).low().degrees());
  }

  @Test
  void aBandBeyondTheJointIsNotTakenAndTheJointIsTheReason() {
    GripFit fit = fit(PractisedGrips.FULL_CRIMP, limited(Finger.RING, Joint.PIP, 0, 80));
    assertFalse(fit.reachable());
    assertEquals(
        List.of(
            new FitMiss.BeyondLimit(
                Finger.RING, Joint.PIP, Band.degrees(95, 115), FlexionRange.degrees(0, 80), 15)),
        fit.misses());
    assertEquals(List.of(), fit.advice());
  }

  /** With the ring finger at 55 deg the little finger is too short; the ring finger is why. */
  @Test
  void theJointIsTheReasonAlsoWhereAnotherFingerMissesTheEdge() {
    GripFit fit = fit(PractisedGrips.HALF_CRIMP, limited(Finger.RING, Joint.PIP, 0, 55));
    assertTrue(fit(PractisedGrips.HALF_CRIMP, HAND).reachable());
    assertEquals(
        List.of(
            new FitMiss.BeyondLimit(
                Finger.RING, Joint.PIP, Band.degrees(84, 84), FlexionRange.degrees(0, 55), 29)),
        fit.misses());
  }

  /** No hand holds four straight fingers, so no joint is to blame. */
  @Test
  void aLimitIsNotTheReasonForWhatNoHandTakes() {
    Hand hand = limited(Finger.LITTLE, Joint.PIP, 0, 40);
    assertEquals(
        fit(PractisedGrips.STRAIGHT_FOUR, HAND).misses(),
        fit(PractisedGrips.STRAIGHT_FOUR, hand).misses());
  }

  @Test
  void aJointThatDoesNotStraightenIsTheReasonToo() {
    GripFit fit = fit(PractisedGrips.THREE_FINGER_DRAG, limited(Finger.INDEX, Joint.PIP, 40, 95));
    assertEquals(
        List.of(
            new FitMiss.BeyondLimit(
                Finger.INDEX, Joint.PIP, Band.degrees(0, 20), FlexionRange.degrees(40, 95), 20)),
        fit.misses());
  }

  @Test
  void aFingerWithoutABandGoesAsFarAsItsOwnJoint() {
    Grip mono = Grip.named("free").family(GripFamily.SINGLE).fingers(Finger.MIDDLE).build();
    GripFit fit = fit(mono, limited(Finger.MIDDLE, Joint.PIP, 60, 115));
    assertTrue(fit.reachable());
    assertTrue(pip(fit, Finger.MIDDLE) >= 60 - GripFit.BAND_TOLERANCE);
  }

  @Test
  void aNarrowerLimitThanTheBandIsKept() {
    GripFit fit = fit(PractisedGrips.HALF_CRIMP, limited(Finger.MIDDLE, Joint.PIP, 0, 90));
    assertTrue(fit.reachable());
    assertTrue(pip(fit, Finger.MIDDLE) <= 90 + GripFit.BAND_TOLERANCE);
    assertTrue(own(fit, Finger.MIDDLE, Joint.PIP).high().degrees() <= 93);
  }

  @Test
  void anEndJointBentBeyondItsOwnLimitIsNotToBeForced() {
    GripFit free = fit(StandardGrips.FULL_CRIMP, HAND);
    GripFit stiff = fit(StandardGrips.FULL_CRIMP, limited(Finger.MIDDLE, Joint.DIP, -5, 70));
    assertEquals(List.of(), free.advice());
    assertTrue(stiff.reachable());
    assertEquals(pip(free, Finger.MIDDLE), pip(stiff, Finger.MIDDLE));
    assertEquals(
        List.of(FitAdvice.Reason.BEYOND_OWN_LIMIT),
        stiff.advice().stream()
            .filter(advice -> advice.finger() == Finger.MIDDLE && advice.joint() == Joint.DIP)
            .map(FitAdvice::reason)
            .toList());
  }

  private static List<FitAdvice> advice(GripFit fit, FitAdvice.Reason reason) {
    return fit.advice().stream().filter(advice -> advice.reason() == reason).toList();
  }

  /** Held back by the ring finger the index finger lies at the end of its band too. */
  @Test
  void theStiffJointIsReportedAndNotTheFingerItHoldsBack() {
    Hand hand =
        HAND.withBone(Finger.INDEX, Segment.PROXIMAL, Length.ofMillimetres(46))
            .withLimit(Finger.RING, Joint.PIP, FlexionRange.degrees(5, 72));
    GripFit stiff = fit(StandardGrips.FRONT_THREE, hand);
    assertTrue(stiff.reachable(), () -> stiff.misses().toString());
    assertEquals(
        List.of(Finger.RING),
        advice(stiff, FitAdvice.Reason.AT_OWN_LIMIT).stream().map(FitAdvice::finger).toList());
    assertEquals(List.of(), advice(stiff, FitAdvice.Reason.AWAY_FROM_NATURAL));
  }

  @Test
  void aStraightFingerThatStraightensIsAtNoLimit() {
    GripFit fit = fit(PractisedGrips.HALF_CRIMP, limited(Finger.LITTLE, Joint.PIP, 0, 90));
    assertEquals(0, pip(fit, Finger.LITTLE), 1);
    assertEquals(List.of(), fit.advice());
    GripFit bent = fit(PractisedGrips.HALF_CRIMP, limited(Finger.LITTLE, Joint.PIP, 25, 90));
    assertEquals(1, advice(bent, FitAdvice.Reason.AT_OWN_LIMIT).size(), bent::toString);
  }

  /** The middle finger of a full crimp lies beyond the norm on every hand. */
  @Test
  void aFlexionBeyondTheNormInsideTheBandIsNoAdvice() {
    GripFit fit = fit(StandardGrips.FULL_CRIMP, HAND);
    assertTrue(pip(fit, Finger.MIDDLE) > 100);
    assertEquals(List.of(), fit.advice());
  }

  @Test
  void anEndJointThatDoesNotStraightenStaysBent() {
    GripFit fit = fit(PractisedGrips.FRONT_THREE, limited(Finger.RING, Joint.DIP, 10, 70));
    assertEquals(
        10, fit.flexion(Finger.RING, Joint.DIP).map(Angle::degrees).orElse(Double.NaN), 1e-9);
  }

  @Test
  void aKnuckleBentBeyondItsOwnLimitIsNotToBeForced() {
    GripFit fit = fit(PractisedGrips.HALF_CRIMP, limited(Finger.LITTLE, Joint.MCP, -20, 30));
    assertTrue(fit.reachable());
    assertTrue(
        fit.advice().stream()
            .anyMatch(
                advice ->
                    advice.finger() == Finger.LITTLE
                        && advice.joint() == Joint.MCP
                        && advice.reason() == FitAdvice.Reason.BEYOND_OWN_LIMIT));
  }

  @Test
  void scalingAHandKeepsItsLimits() {
    HandShape shape = HandShape.of(limited(Finger.RING, Joint.PIP, 0, 80));
    assertEquals(shape.limits(), shape.times(1.2).limits());
    assertEquals(
        JointLimits.UNKNOWN.with(Finger.RING, Joint.PIP, FlexionRange.degrees(0, 80)),
        shape.limits());
  }

  @Test
  void whatOneHandDoesNotSayIsThatOfTheOther() {
    FlexionRange first = FlexionRange.degrees(0, 80);
    FlexionRange second = FlexionRange.degrees(0, 95);
    JointLimits both =
        JointLimits.UNKNOWN
            .with(Finger.RING, Joint.PIP, first)
            .with(Finger.RING, Joint.DIP, second);
    JointLimits own = JointLimits.UNKNOWN.with(Finger.RING, Joint.PIP, second);
    assertEquals(both.with(Finger.RING, Joint.PIP, second), own.over(both));
  }
}
