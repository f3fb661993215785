package gripwright.hand.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.hand.Finger;
import gripwright.hand.Hand;
import gripwright.hand.HandShape;
import gripwright.hand.Segment;
import gripwright.quantity.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Bone lengths and knuckle centres by hand length and breadth: Buchholz B, Armstrong TJ, Goldstein
 * SA 1992, Ergonomics 35(3):261-273. The coefficients themselves are held by the registry:
 * anthro.buchholz.*, anthro.derived.*.
 */
class BuchholzTest {

  private static final HandShape UNIT =
      HandShape.of(Hand.ofLength(Length.ofMillimetres(200)).withBreadth(Length.ofMillimetres(100)));

  /** The middle finger's chain is 0.990 of hand length (arithmetic from the same table). */
  @ParameterizedTest
  @CsvSource({"150", "193", "230"})
  void theMiddleFingersChainIsAlmostTheHand(double length) {
    HandShape shape = HandShape.of(Hand.ofLength(Length.ofMillimetres(length)));
    double chain = shape.knuckleAlong(Finger.MIDDLE);
    for (Segment segment : Segment.values()) {
      chain += shape.bone(Finger.MIDDLE, segment).millimetres();
    }
    assertEquals(0.990, chain / length, 1e-9);
  }

  /**
   * anthro.buryanov.*: radiographic bones without cartilage keep the order of lengths: Buryanov A,
   * Kotiuk V 2010, Int J Morphol 28(3):755-758.
   */
  @ParameterizedTest
  @CsvSource({"MIDDLE, RING", "RING, INDEX", "INDEX, LITTLE"})
  void middleBonesAreOrderedAsOnRadiographs(Finger longer, Finger shorter) {
    assertEquals(
        1,
        UNIT.bone(longer, Segment.MIDDLE).compareTo(UNIT.bone(shorter, Segment.MIDDLE)),
        longer + " before " + shorter);
  }
}
