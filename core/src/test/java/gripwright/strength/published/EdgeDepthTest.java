package gripwright.strength.published;

import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.strength.StrengthModel;
import org.junit.jupiter.api.Test;

/**
 * Amca AM et al. 2012, J Sports Sci 30(7):669-677: mean maximal vertical force over edges of 10,
 * 20, 30 and 40 mm and three grips lies between 350.8 and 575.7 N and rises with depth.
 */
class EdgeDepthTest {

  @Test
  void theDepthCurveStaysInsideThePublishedEnvelope() {
    double ratio = Math.pow(40.0 / 10.0, StrengthModel.DEPTH_EXPONENT);
    assertTrue(ratio > 1 && ratio <= 575.7 / 350.8, "ratio " + ratio);
  }
}
