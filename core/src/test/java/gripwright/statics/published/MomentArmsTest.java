package gripwright.statics.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.hand.Finger;
import gripwright.hand.Joint;
import gripwright.statics.Landsmeer;
import gripwright.statics.MomentArms;
import gripwright.statics.Tendon;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class MomentArmsTest {

  private static final double RIGHT_ANGLE = Math.PI / 2;

  /** Ketchum LD et al. 1978, J Hand Surg Am 3:571-578, as tabulated in an ergonomics handbook. */
  @ParameterizedTest
  @CsvSource({
    "INDEX, 6.5, 9.8, 8.3, 10.1, 12.1",
    "MIDDLE, 7.0, 10.7, 8.7, 11.6, 14.0",
    "RING, 6.8, 10.4, 8.5, 10.4, 13.0",
    "LITTLE, 6.0, 8.5, 7.4, 8.9, 9.8"
  })
  void ketchum(
      Finger finger, double dipFdp, double pipFdp, double pipFds, double mcpFdp, double mcpFds) {
    MomentArms arms = MomentArms.KETCHUM_1978;
    assertEquals(dipFdp, arms.arm(finger, Joint.DIP, Tendon.FDP));
    assertEquals(0, arms.arm(finger, Joint.DIP, Tendon.FDS));
    assertEquals(pipFdp, arms.arm(finger, Joint.PIP, Tendon.FDP));
    assertEquals(pipFds, arms.arm(finger, Joint.PIP, Tendon.FDS));
    assertEquals(mcpFdp, arms.arm(finger, Joint.MCP, Tendon.FDP));
    assertEquals(mcpFds, arms.arm(finger, Joint.MCP, Tendon.FDS));
  }

  /** An KN et al. 1983, J Biomech 16(6):419-425, index finger (from memory). */
  @Test
  void an() {
    MomentArms arms = MomentArms.AN_1983;
    assertEquals(4.1, arms.arm(Finger.INDEX, Joint.DIP, Tendon.FDP), 1e-12);
    assertEquals(7.9, arms.arm(Finger.INDEX, Joint.PIP, Tendon.FDP), 1e-12);
    assertEquals(6.2, arms.arm(Finger.INDEX, Joint.PIP, Tendon.FDS), 1e-12);
    assertEquals(11.1, arms.arm(Finger.INDEX, Joint.MCP, Tendon.FDP), 1e-12);
    assertEquals(11.9, arms.arm(Finger.INDEX, Joint.MCP, Tendon.FDS), 1e-12);
  }

  /**
   * FDP's arm grows from the end joint to the middle joint in every finger (nine-forearm cadaver
   * study, The moment arms and leverage of the human finger muscles, J Biomech). From middle joint
   * to knuckle Ketchum's ring finger stays level at 10.4 mm, against that study's strict order.
   */
  @ParameterizedTest
  @EnumSource(MomentArms.class)
  void armsShrinkTowardsTheTip(MomentArms arms) {
    for (Finger finger : Finger.values()) {
      double dip = arms.arm(finger, Joint.DIP, Tendon.FDP);
      double pip = arms.arm(finger, Joint.PIP, Tendon.FDP);
      double mcp = arms.arm(finger, Joint.MCP, Tendon.FDP);
      assertTrue(dip < pip && pip <= mcp, finger + " " + arms);
    }
  }

  /**
   * Excursion of the index FDP with MCP 90, PIP 100 and DIP 70 deg (arithmetic from the tables).
   */
  @ParameterizedTest
  @CsvSource({"KETCHUM_1978, 40.9", "AN_1983, 36.2"})
  void excursionOfTheWholeFinger(MomentArms arms, double millimetres) {
    double sum = 0;
    sum += Landsmeer.onBone(arms.arm(Finger.INDEX, Joint.MCP, Tendon.FDP), Math.toRadians(90));
    sum += Landsmeer.onBone(arms.arm(Finger.INDEX, Joint.PIP, Tendon.FDP), Math.toRadians(100));
    sum += Landsmeer.onBone(arms.arm(Finger.INDEX, Joint.DIP, Tendon.FDP), Math.toRadians(70));
    assertEquals(millimetres, sum, 0.1);
  }

  /** Landsmeer JMF 1961, Acta Morphol Neerl Scand 3:287-303 (from memory). */
  @Test
  void landsmeersModels() {
    assertEquals(15.708, Landsmeer.onBone(10, RIGHT_ANGLE), 1e-3);
    assertEquals(14.142, Landsmeer.inSling(10, RIGHT_ANGLE), 1e-3);
    assertEquals(8.858, Landsmeer.inSheath(4, 6, RIGHT_ANGLE), 1e-3);
    assertEquals(5.306, Landsmeer.inSheath(4, 6, Math.PI / 3), 1e-3);
    assertEquals(Landsmeer.onBone(10, 1.2), Landsmeer.inSheath(10, 0, 1.2), 1e-12);
  }

  /** The moment arm is the excursion's derivative. */
  @ParameterizedTest
  @CsvSource({"0.00005", "0.0003", "0.1", "0.5", "1", "1.5", "2.5"})
  void momentArmIsTheDerivative(double angle) {
    double step = 1e-5;
    double slope =
        (Landsmeer.inSheath(4, 6, angle + step) - Landsmeer.inSheath(4, 6, angle - step))
            / (2 * step);
    assertEquals(slope, Landsmeer.armInSheath(4, 6, angle), 1e-4);
  }
}
