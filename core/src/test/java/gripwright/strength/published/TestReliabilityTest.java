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

/** How far tests of each kind repeat. Rows of the agreement page hold the constants. */
class TestReliabilityTest {

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
}
