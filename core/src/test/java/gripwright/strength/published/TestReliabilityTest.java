package gripwright.strength.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.strength.TestReliability;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * McClean ZJ et al. 2023, Int J Exerc Sci 16(4):912-923: coefficients of variation, intraclass
 * correlations, and 95 % limits of agreement (-17.2 to 14.6, -62.6 to 58.1 and -40.5 to 30.9 %),
 * whose half-widths the minimal detectable change must nearly meet.
 */
class TestReliabilityTest {

  @ParameterizedTest
  @CsvSource({
    "PEAK_FORCE, 5.6, 0.938, 15.5, 15.9",
    "END_FORCE, 21.0, 0.848, 58.2, 60.4",
    "IMPULSE_ABOVE_END_FORCE, 13.2, 0.820, 36.6, 35.7"
  })
  void minimalDetectableChange(
      TestReliability measure, double variation, double icc, double change, double agreement) {
    assertEquals(variation, 100 * measure.variation(), 1e-9);
    assertEquals(icc, measure.correlation());
    assertEquals(change, 100 * measure.detectableChange(), 0.1);
    assertEquals(agreement, 100 * measure.detectableChange(), 0.04 * agreement);
  }

  /** Weir JP 2005, J Strength Cond Res 19(1):231-240 (from memory). */
  @Test
  void formulas() {
    assertEquals(2.7719, TestReliability.DETECTABLE, 1e-4);
    assertEquals(2, TestReliability.standardError(10, 0.96), 1e-12);
  }
}
