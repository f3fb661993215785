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
 * SA 1992, Ergonomics 35(3):261-273.
 */
class BuchholzTest {

  private static final HandShape UNIT =
      HandShape.of(Hand.ofLength(Length.ofMillimetres(200)).withBreadth(Length.ofMillimetres(100)));

  @ParameterizedTest
  @CsvSource({
    "INDEX, 0.245, 0.143, 0.097",
    "MIDDLE, 0.266, 0.170, 0.108",
    "RING, 0.244, 0.165, 0.107",
    "LITTLE, 0.204, 0.117, 0.093"
  })
  void bonesAreSharesOfHandLength(Finger finger, double proximal, double middle, double distal) {
    assertEquals(proximal, UNIT.bone(finger, Segment.PROXIMAL).millimetres() / 200, 1e-12);
    assertEquals(middle, UNIT.bone(finger, Segment.MIDDLE).millimetres() / 200, 1e-12);
    assertEquals(distal, UNIT.bone(finger, Segment.DISTAL).millimetres() / 200, 1e-12);
  }

  @ParameterizedTest
  @CsvSource({
    "INDEX, 0.447, 0.251",
    "MIDDLE, 0.446, 0",
    "RING, 0.409, -0.206",
    "LITTLE, 0.368, -0.402"
  })
  void knucklesLieOnTheHandsArc(Finger finger, double along, double across) {
    assertEquals(along, UNIT.knuckleAlong(finger) / 200, 1e-12);
    assertEquals(across, UNIT.knuckleAcross(finger) / 100, 1e-12);
  }

  @ParameterizedTest
  @CsvSource({"INDEX, 47.3, 27.6, 18.7", "MIDDLE, 51.3, 32.8, 20.8", "LITTLE, 39.4, 22.6, 17.9"})
  void bonesOfAHandOf193Millimetres(Finger finger, double proximal, double middle, double distal) {
    HandShape shape = HandShape.of(Hand.ofLength(Length.ofMillimetres(193)));
    assertEquals(proximal, shape.bone(finger, Segment.PROXIMAL).millimetres(), 0.1);
    assertEquals(middle, shape.bone(finger, Segment.MIDDLE).millimetres(), 0.1);
    assertEquals(distal, shape.bone(finger, Segment.DISTAL).millimetres(), 0.1);
  }

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
   * Radiographic bones without cartilage keep the order of lengths: Buryanov A, Kotiuk V 2010, Int
   * J Morphol 28(3):755-758.
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
