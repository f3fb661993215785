package gripwright.strength.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.strength.ForceTime;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Endurance times of Rohmert W 1960, Int Z angew Physiol 18:123-164, by the polynomial that El
 * Ahrache K et al. 2006, Int J Ind Ergon 36:1-14 tabulate. Values from memory.
 */
class RohmertTest {

  @ParameterizedTest
  @CsvSource({"0.2, 390.0", "0.3, 152.2", "0.5, 66.0", "0.8, 23.0"})
  void enduranceTimeByShareOfMaximum(double share, double seconds) {
    assertEquals(seconds, ForceTime.enduranceSeconds(share), 0.1);
  }

  /**
   * An independent refit of the same curve, E = 1236.5 / (S - 15)^0.618 - 72.5 s with S in per
   * cent, used by Hincapie-Ramos JD et al. 2014 (consumed endurance), agrees within about 10 s from
   * 20 to 80 %.
   */
  @ParameterizedTest
  @CsvSource({"0.2", "0.3", "0.4", "0.5", "0.6", "0.7", "0.8"})
  void agreesWithARefit(double share) {
    double refit = 1236.5 / Math.pow(share * 100 - 15, 0.618) - 72.5;
    assertEquals(refit, ForceTime.enduranceSeconds(share), 10);
  }
}
