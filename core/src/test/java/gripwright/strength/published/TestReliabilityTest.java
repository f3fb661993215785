package gripwright.strength.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.quantity.Load;
import gripwright.strength.StrengthTest;
import gripwright.strength.TestReliability;
import java.time.Duration;
import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;
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

  /**
   * Assessing climbing-specific strength: body position and elbow flexion, J Sports Sci 2025 (26
   * climbers, 48 to 96 h apart): 2.04 to 3.37 % between sessions, which is a minimal detectable
   * change of 5.7 to 9.3 %, and an intraclass correlation of 0.978 to 0.991.
   */
  @Test
  void aMaximalHoldRepeatsAsPublished() {
    double published = Math.sqrt((2.04 * 2.04 + 3.37 * 3.37) / 2);
    assertEquals(published, 100 * TestReliability.MAXIMAL_HOLD.variation(), 0.05);
    double change = 100 * TestReliability.MAXIMAL_HOLD.detectableChange();
    assertTrue(change > 5.7 && change < 9.3, "detectable: " + change);
    double icc = TestReliability.MAXIMAL_HOLD.correlation();
    assertTrue(icc >= 0.978 && icc <= 0.991, "correlation: " + icc);
  }

  /** By the normal distribution: with the noise of an all-out series a gain of 10 % is missed. */
  @Test
  void aGainOfTenPerCentIsSeenInTwoTestsOfTheRightKind() {
    double gain = 0.10 / 1.05; // relative to the mean of both
    double spread = Math.sqrt(2) * TestReliability.MAXIMAL_HOLD.variation();
    NormalDistribution normal = new NormalDistribution(gain, spread);
    double seen = 1 - normal.cumulativeProbability(TestReliability.MAXIMAL_HOLD.detectableChange());
    assertEquals(0.65, seen, 0.03);
    double seenBefore =
        1 - normal.cumulativeProbability(TestReliability.PEAK_FORCE.detectableChange());
    assertEquals(0.10, seenBefore, 0.04);
  }

  @Test
  void eachKindOfTestHasItsOwn() {
    Load load = Load.ofKilograms(80);
    assertEquals(
        TestReliability.MAXIMAL_HOLD,
        TestReliability.of(new StrengthTest.Held(Duration.ofSeconds(20), load)));
    assertEquals(
        TestReliability.PEAK_FORCE,
        TestReliability.of(new StrengthTest.Held(Duration.ofSeconds(21), load)));
    assertEquals(
        TestReliability.PEAK_FORCE,
        TestReliability.of(new StrengthTest.ToFailure(load, Duration.ofSeconds(9))));
    assertEquals(
        TestReliability.PEAK_FORCE,
        TestReliability.of(
            new StrengthTest.Series(Duration.ofSeconds(7), Duration.ofSeconds(3), List.of(load))));
  }

  /** Weir JP 2005, J Strength Cond Res 19(1):231-240 (from memory). */
  @Test
  void formulas() {
    assertEquals(2.7719, TestReliability.DETECTABLE, 1e-4);
    assertEquals(2, TestReliability.standardError(10, 0.96), 1e-12);
  }
}
