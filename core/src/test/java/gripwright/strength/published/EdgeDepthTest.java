package gripwright.strength.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.hand.Finger;
import gripwright.quantity.Angle;
import gripwright.quantity.Length;
import gripwright.strength.EdgeDepth;
import gripwright.strength.Posture;
import java.util.Map;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class EdgeDepthTest {

  private static Posture bent(double degrees) {
    Angle flexion = Angle.ofDegrees(degrees);
    return new Posture(
        Map.of(
            Finger.INDEX,
            flexion,
            Finger.MIDDLE,
            flexion,
            Finger.RING,
            flexion,
            Finger.LITTLE,
            flexion));
  }

  private static Length mm(double value) {
    return Length.ofMillimetres(value);
  }

  /**
   * depth.amca.monotone: Amca AM et al. 2012, J Sports Sci 30(7):669-677: mean maximal vertical
   * force over edges of 10, 20, 30 and 40 mm and three grips lies between 350.8 and 575.7 N and
   * rises with depth.
   */
  @Property
  void riseWithDepthInsideThePublishedEnvelope(
      @ForAll @DoubleRange(min = 5, max = 60) double from,
      @ForAll @DoubleRange(min = 5, max = 60) double to,
      @ForAll @DoubleRange(min = 0, max = 120) double flexion) {
    double factor = EdgeDepth.factor(mm(Math.min(from, to)), mm(Math.max(from, to)), bent(flexion));
    assertTrue(factor >= 1);
    double span = EdgeDepth.factor(mm(10), mm(40), bent(flexion));
    assertTrue(span > 1.2 && span <= 575.7 / 350.8, "span " + span);
    assertEquals(
        1,
        factor * EdgeDepth.factor(mm(Math.max(from, to)), mm(Math.min(from, to)), bent(flexion)),
        1e-12);
  }

  /**
   * depth.bourne.r.shallow_deep: Bourne R et al. 2011, J Appl Biomech 27(1):40-50: force on 2.8 and
   * 4.3 mm does not correlate with that on 12.5 mm (r below 0.1); that on 5.8 and 7.3 mm was not
   * found to be apart.
   */
  @Example
  void nothingIsEstimatedToOrFromVeryShallowEdges() {
    assertThrows(
        IllegalArgumentException.class, () -> EdgeDepth.factor(mm(12.5), mm(4.3), bent(90)));
    assertThrows(
        IllegalArgumentException.class, () -> EdgeDepth.factor(mm(2.8), mm(12.5), bent(90)));
    assertFalse(EdgeDepth.canEstimate(mm(2.8), mm(4.3)));
    assertTrue(EdgeDepth.canEstimate(mm(4.3), mm(4.3)), "an edge is estimated from itself");
    assertTrue(EdgeDepth.canEstimate(mm(12.5), mm(5.8)));
  }
}
