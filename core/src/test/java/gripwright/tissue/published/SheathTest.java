package gripwright.tissue.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.tissue.Sheath;
import org.junit.jupiter.api.Test;

class SheathTest {

  private static final double RIGHT_ANGLE = Math.PI / 2;

  /** Statics of a pulley, of which the registry holds 60 and 90 deg: pulley.identity.*. */
  @Test
  void pulleyReaction() {
    assertEquals(0, Sheath.EVEN.pulleyForce(1, -0.3));
    assertEquals(
        Sheath.EVEN.pulleyForce(1, RIGHT_ANGLE),
        Sheath.EVEN.withFriction(1e-9).pulleyForce(1, RIGHT_ANGLE),
        1e-6);
    assertTrue(
        Sheath.EVEN.withFriction(0.1).pulleyForce(1, RIGHT_ANGLE)
            < Sheath.EVEN.pulleyForce(1, RIGHT_ANGLE));
  }

  @Test
  void a2TakesOfTheTurnsOfKnuckleAndMiddleJoint() {
    assertEquals(0.45 * 0.3 + 0.43 * 1.5, Sheath.KNUCKLE.turnOfA2(0.3, 1.5), 1e-12);
    assertEquals(0.43 * 1.5, Sheath.KNUCKLE.turnOfA2(-0.3, 1.5), 1e-12);
    assertEquals(0.5 * 1.5, Sheath.EVEN.turnOfA2(0.3, 1.5), 1e-12);
  }

  @Test
  void a4TakesOfTheTurnsOfMiddleAndEndJoint() {
    assertEquals(0.57 * 0.3 + 0.15 * 0.9, Sheath.KNUCKLE.turnOfA4(0.3, 0.9), 1e-12);
    assertEquals(0.57 * 0.3, Sheath.KNUCKLE.turnOfA4(0.3, -0.4), 1e-12);
  }
}
