package gripwright.trial.worked;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.trial.DetectableChange;
import gripwright.trial.SampleSize;
import org.junit.jupiter.api.Test;

/** Numbers of participants and detectable changes that are printed elsewhere or follow by hand. */
class TrialPlanningTest {

  /**
   * Cohen J 1988, Statistical Power Analysis for the Behavioral Sciences, 2nd edition, table 2.4.1:
   * n = 64 for d = 0.50 and 26 for d = 0.80, two-sided 5 %, power 80 % (from memory).
   */
  @Test
  void participantsForAMediumAndALargeEffect() {
    assertEquals(64, SampleSize.of(0.5).completing());
    assertEquals(26, SampleSize.of(0.8).completing());
  }

  /** Means 11.9 and 8.4 with standard deviations of 10.5 and 4.4; the effect by arithmetic. */
  @Test
  void participantsForTwoMeansWithTheirDeviations() {
    SampleSize size = SampleSize.of(11.9 - 8.4, 10.5, 4.4);
    assertEquals(0.435, size.effect(), 0.0005);
    assertEquals(85, size.completing());
  }

  /** Borm GF et al. 2007: the covariate's factor is 1 - r squared; 64 x 0.51 = 32.64. */
  @Test
  void aCovariateLowersAndDropoutRaisesTheNumber() {
    assertEquals(33, SampleSize.of(0.5).covariate(0.7).completing());
    assertEquals(33, SampleSize.of(0.5).covariate(-0.7).completing());
    assertEquals(80, SampleSize.of(0.5).dropout(0.2).beginning());
    assertEquals(64, SampleSize.of(0.5).dropout(0.2).completing());
  }

  /** By definition of the test: without an effect it finds one with the probability alpha. */
  @Test
  void withoutAnEffectThePowerIsTheLevel() {
    for (int perArm : new int[] {2, 3, 10, 200}) {
      assertEquals(0.05, SampleSize.power(perArm, 0, 0.05), 1e-6);
    }
  }

  /** Cohen 1988, table 2.3.5: power 0.34 for n = 20 an arm and d = 0.50 (from memory). */
  @Test
  void powerOfASmallTrial() {
    assertEquals(0.34, SampleSize.power(20, 0.5, 0.05), 0.005);
  }

  @Test
  void morePowerOrALowerLevelTakesMore() {
    assertTrue(SampleSize.of(0.5).power(0.9).completing() > 64);
    assertTrue(SampleSize.of(0.5).alpha(0.01).completing() > 64);
    assertThrows(IllegalArgumentException.class, () -> SampleSize.of(0));
    assertThrows(IllegalArgumentException.class, () -> SampleSize.of(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> SampleSize.of(0.5).power(1));
    assertThrows(IllegalArgumentException.class, () -> SampleSize.of(0.5).covariate(1));
    assertThrows(IllegalArgumentException.class, () -> SampleSize.of(0.5).dropout(1));
    assertThrows(IllegalArgumentException.class, () -> SampleSize.of(1e-4).completing());
    assertThrows(IllegalArgumentException.class, () -> SampleSize.of(1, 0, 1));
  }

  /** Arithmetic: 1.96 x square root of 2 x 5.6 %, and x 10 x square root of 0.05. */
  @Test
  void minimalDetectableChanges() {
    assertEquals(0.1552, DetectableChange.ofVariation(0.056).at95(), 0.00005);
    DetectableChange reliable = DetectableChange.ofReliability(10, 0.95);
    assertEquals(2.236, reliable.standardError(), 0.0005);
    assertEquals(6.198, reliable.at95(), 0.0005);
    assertTrue(reliable.exceeds(6));
    assertTrue(reliable.exceeds(-6));
    assertFalse(reliable.exceeds(7));
    assertThrows(IllegalArgumentException.class, () -> DetectableChange.ofReliability(10, 1.1));
    assertThrows(IllegalArgumentException.class, () -> DetectableChange.ofVariation(-1));
  }
}
