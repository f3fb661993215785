package gripwright.grip;

import static gripwright.grip.PractisedGrips.EDGE;
import static gripwright.grip.PractisedGrips.HALF_CRIMP;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gripwright.hand.Finger;
import gripwright.hand.FlexionRange;
import gripwright.hand.Hand;
import gripwright.hand.HandShape;
import gripwright.hand.Joint;
import gripwright.hand.Segment;
import gripwright.hand.Sex;
import gripwright.quantity.Length;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class GripFitTest {

  private static final Hand HAND = Hand.ofLength(Length.ofMillimetres(180));

  @Test
  void aFitIsAValueOfGripHandEdgeAndLimits() {
    GripFit fit = GripFit.of(HALF_CRIMP, HAND, EDGE);
    GripFit same = GripFit.of(HALF_CRIMP, Hand.ofLength(Length.ofMillimetres(180)), EDGE);
    assertEquals(fit, same);
    assertEquals(fit.hashCode(), same.hashCode());
    assertEquals(fit.pose(), same.pose());
    assertNotEquals(fit, GripFit.of(PractisedGrips.FRONT_THREE, HAND, EDGE));
    assertNotEquals(fit, GripFit.of(HALF_CRIMP, HAND, Length.ofMillimetres(19)));
    assertNotEquals(
        fit,
        GripFit.of(
            HALF_CRIMP, HAND.withLimit(Finger.RING, Joint.PIP, FlexionRange.degrees(0, 90)), EDGE));
  }

  @Test
  void aHandsShapeIsAValueOfItsLengthsAndLimits() {
    HandShape shape = HandShape.of(HAND);
    assertEquals(shape, HandShape.of(Hand.ofLength(Length.ofMillimetres(180))));
    assertEquals(shape.hashCode(), HandShape.of(HAND).hashCode());
    assertEquals(shape, shape.times(1));
    assertNotEquals(shape, HandShape.of(HAND, Optional.of(Sex.FEMALE)));
    assertNotEquals(shape, HandShape.of(HAND.withKnuckle(Finger.LITTLE, Length.ofMillimetres(20))));
    assertNotEquals(
        shape, HandShape.of(HAND.withBone(Finger.RING, Segment.MIDDLE, Length.ofMillimetres(31))));
    assertNotEquals(
        shape, HandShape.of(HAND.withLimit(Finger.RING, Joint.PIP, FlexionRange.degrees(0, 100))));
    assertNotEquals(
        shape, HandShape.of(HAND.withBreadth(shape.breadth())), "measured, not guessed");
  }

  /** Builders refuse what a plan refuses. */
  @Test
  void whatNoHandHasIsRefused() {
    for (double bone : new double[] {0, 4.9, 80.1, 500}) {
      assertThrows(
          IllegalArgumentException.class,
          () -> HAND.withBone(Finger.RING, Segment.MIDDLE, Length.ofMillimetres(bone)));
    }
    for (double breadth : new double[] {0, 39, 141}) {
      assertThrows(
          IllegalArgumentException.class, () -> HAND.withBreadth(Length.ofMillimetres(breadth)));
    }
    assertThrows(
        IllegalArgumentException.class,
        () -> HAND.withKnuckle(Finger.MIDDLE, Length.ofMillimetres(30)));
    assertThrows(
        IllegalArgumentException.class,
        () -> HAND.withKnuckle(Finger.RING, Length.ofMillimetres(61)));
    assertEquals(1, HAND.withKnuckle(Finger.MIDDLE, Length.ofMillimetres(0)).knuckles().size());
  }
}
