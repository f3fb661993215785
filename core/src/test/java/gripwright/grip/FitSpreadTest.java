package gripwright.grip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.hand.Finger;
import gripwright.hand.FlexionRange;
import gripwright.hand.Hand;
import gripwright.hand.HandShape;
import gripwright.hand.HandVariation;
import gripwright.hand.Joint;
import gripwright.hand.Segment;
import gripwright.hand.StandardNormal;
import gripwright.quantity.Angle;
import gripwright.quantity.Length;
import java.util.Arrays;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;

class FitSpreadTest {

  @Provide
  Arbitrary<Grip> grips() {
    return Arbitraries.of(StandardGrips.all());
  }

  private static double width(GripFit fit, Finger finger) {
    FlexionRange range = fit.spread().flexion(finger, Joint.PIP).orElseThrow();
    return range.high().degrees() - range.low().degrees();
  }

  private static GripFit halfCrimp(Hand hand) {
    return GripFit.of(StandardGrips.HALF_CRIMP, hand, PractisedGrips.EDGE);
  }

  /** A hand of the same bones, measured instead of estimated. */
  private static Hand measured(Hand hand) {
    HandShape usual = HandShape.of(hand);
    Hand measured = hand.withBreadth(usual.breadth());
    for (Finger finger : Finger.values()) {
      for (Segment segment : Segment.values()) {
        measured = measured.withBone(finger, segment, usual.bone(finger, segment));
      }
    }
    return measured;
  }

  @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
  void rangesHoldTheFitAndAreTheSameEveryTime(
      @ForAll("grips") Grip grip,
      @ForAll @DoubleRange(min = 160, max = 215) double length,
      @ForAll @DoubleRange(min = 10, max = 30) double depth) {
    HandShape hand = PractisedGrips.ofLength(length);
    Length edge = Length.ofMillimetres(depth);
    GripFit fit = GripFit.of(grip, hand, edge);
    FitSpread spread = fit.spread();
    FitSpread again = GripFit.of(grip, hand, edge).spread();
    assertTrue(spread.taken() >= 0 && spread.taken() <= 1);
    assertEquals(spread.taken(), again.taken());
    assertEquals(0, spread.wristRoll().miss(fit.wristRoll().degrees()));
    for (Finger finger : Finger.values()) {
      for (Joint joint : Joint.values()) {
        assertEquals(spread.flexion(finger, joint), again.flexion(finger, joint));
        double flexion = fit.flexion(finger, joint).map(Angle::degrees).orElse(0.0);
        spread
            .flexion(finger, joint)
            .ifPresentOrElse(
                range -> assertEquals(0, range.miss(flexion)),
                () -> assertFalse(grip.fingers().has(finger)));
      }
    }
  }

  @Property(tries = 30, edgeCases = EdgeCasesMode.NONE)
  void measuringTheBonesNarrowsEveryFinger(
      @ForAll @DoubleRange(min = 160, max = 215) double length) {
    Hand hand = Hand.ofLength(Length.ofMillimetres(length));
    GripFit estimated = halfCrimp(hand);
    GripFit measured = halfCrimp(measured(hand));
    for (Finger finger : Finger.values()) {
      assertTrue(
          width(measured, finger) < 0.9 * width(estimated, finger),
          () -> finger + ": " + width(measured, finger) + " of " + width(estimated, finger));
    }
    assertTrue(measured.spread().taken() >= estimated.spread().taken());
  }

  /**
   * Bones good to 8 % (Buchholz B et al. 1992, Ergonomics 35(3):261-273) leave a half crimp's
   * little finger anywhere from straight to half bent.
   */
  @Example
  void estimatedBonesSayLittleOfTheLittleFinger() {
    GripFit fit = halfCrimp(Hand.ofLength(Length.ofMillimetres(180)));
    FlexionRange little = fit.spread().flexion(Finger.LITTLE, Joint.PIP).orElseThrow();
    assertTrue(little.low().degrees() < 5 && little.high().degrees() > 45, little::toString);
    assertTrue(fit.spread().taken() > 0.9);
  }

  /** The middle finger's knuckle is where the others are counted from. */
  @Example
  void aDrawKeepsLengthJointsAndTheMiddleKnuckle() {
    HandShape hand = PractisedGrips.ofLength(180);
    HandShape drawn = HandVariation.draw(hand, 5, 3);
    assertEquals(hand.length(), drawn.length());
    assertEquals(hand.limits(), drawn.limits());
    assertEquals(hand.knuckleAlong(Finger.MIDDLE), drawn.knuckleAlong(Finger.MIDDLE));
    assertFalse(hand.equals(drawn));
  }

  /** Mean 0, standard deviation 1, a twentieth above 1.645: what normal draws are. */
  @Property(tries = 20)
  void drawsAreNormal(@ForAll @LongRange(min = 0, max = 1_000_000) long stream) {
    double[] draws = new double[10_000];
    Arrays.setAll(draws, i -> StandardNormal.draw(stream, i));
    double mean = Arrays.stream(draws).average().orElseThrow();
    double variance =
        Arrays.stream(draws).map(d -> (d - mean) * (d - mean)).average().orElseThrow();
    assertEquals(0, mean, 0.05);
    assertEquals(1, variance, 0.07);
    assertEquals(0.05, Arrays.stream(draws).filter(d -> d > 1.645).count() / 1e4, 0.012);
  }
}
