package gripwright.strength.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gripwright.quantity.Load;
import gripwright.strength.EnduranceLaw;
import gripwright.strength.ForceTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EnduranceLawTest {

  /**
   * Both directions of the power law: et.freylaw.handgrip.20 to .80, whose times the registry
   * holds.
   */
  @ParameterizedTest
  @CsvSource({
    "0.2, 447.7",
    "0.3, 233.1",
    "0.4, 146.7",
    "0.5, 102.4",
    "0.6, 76.4",
    "0.7, 59.6",
    "0.8, 48.1"
  })
  void thePowerLawIsInverted(double share, double seconds) {
    assertEquals(share, EnduranceLaw.FREY_LAW_AVIN.share(seconds), 1e-3);
  }

  /**
   * Frey Law LA, Avin KG 2010, Ergonomics 53(1):109-129 (et.freylaw.handgrip.90): at 90 % it would
   * give 39.8 s, at 100 % 34 s, which is unrealistic.
   */
  @Test
  void thePowerLawIsNotUsedAboveEightyPerCent() {
    assertThrows(IllegalArgumentException.class, () -> EnduranceLaw.FREY_LAW_AVIN.seconds(0.9));
    assertThrows(IllegalArgumentException.class, () -> EnduranceLaw.FREY_LAW_AVIN.share(39.8));
  }

  /**
   * Rohmert's polynomial at 98.6 % of maximal force gives 7 s; so the two maxima differ by 1.4 %.
   */
  @Test
  void maximalForceAndTheSevenSecondMaximumAreConverted() {
    double share = EnduranceLaw.ROHMERT.share(7);
    assertEquals(7, -90 + 126 / share - 36 / Math.pow(share, 2) + 6 / Math.pow(share, 3), 1e-9);
    assertEquals(98.6, ForceTime.referenceOf(Load.ofKilograms(100)).kilograms(), 0.05);
    assertEquals(
        100, ForceTime.maximalOf(ForceTime.referenceOf(Load.ofKilograms(100))).kilograms(), 1e-9);
  }

  @Test
  void outsideTheRangeNothingIsExtrapolated() {
    assertThrows(IllegalArgumentException.class, () -> EnduranceLaw.ROHMERT.share(1.9));
    assertThrows(IllegalArgumentException.class, () -> EnduranceLaw.ROHMERT.share(601));
    assertEquals(Double.POSITIVE_INFINITY, EnduranceLaw.ROHMERT.seconds(0.15));
    assertEquals(Double.POSITIVE_INFINITY, EnduranceLaw.FREY_LAW_AVIN.seconds(0.1));
  }
}
