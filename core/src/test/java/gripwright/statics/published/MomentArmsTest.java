package gripwright.statics.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.hand.Finger;
import gripwright.hand.Joint;
import gripwright.statics.Landsmeer;
import gripwright.statics.MomentArms;
import gripwright.statics.Tendon;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The values themselves are held by the registry: arm.*, excursion.*. */
class MomentArmsTest {

  private static final double RIGHT_ANGLE = Math.PI / 2;

  /** FDS ends on the middle bone. */
  @ParameterizedTest
  @EnumSource(MomentArms.class)
  void superficialisDoesNotCrossTheEndJoint(MomentArms arms) {
    for (Finger finger : Finger.values()) {
      assertEquals(0, arms.arm(finger, Joint.DIP, Tendon.FDS));
    }
  }

  /** Without a sheath Landsmeer's third model is his first. */
  @Test
  void aTendonWithoutSheathLiesOnTheBone() {
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
