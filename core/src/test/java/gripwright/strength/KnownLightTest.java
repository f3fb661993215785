package gripwright.strength;

import static gripwright.grip.StandardGrips.THREE_FINGER_DRAG;
import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.FRONT_THREE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Athlete;
import gripwright.athlete.Injury;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.planning.Skarvdal;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class KnownLightTest {

  private static final Setup HANG = Setup.of(HALF_CRIMP, EDGE);
  private static final Setup LEFT_LIFT = new Setup(HALF_CRIMP, EDGE, Hands.LEFT, true);

  /** The share of a body mass of 100 kg, in per cent; -1 where nothing is known to be light. */
  private static double share(Setup setup, boolean restricted) {
    return KnownLight.most(setup, Load.ofKilograms(100), restricted)
        .map(load -> Math.rint(load.kilograms() * 1e6) / 1e6)
        .orElse(-1.0);
  }

  private static Setup on(double millimetres) {
    return HANG.withEdge(Length.ofMillimetres(millimetres));
  }

  @Test
  void theTableIsKept() {
    assertEquals(60, share(HANG, false));
    assertEquals(40, share(HANG, true));
    assertEquals(60, share(on(34.9), false));
    assertEquals(80, share(on(35), false));
    assertEquals(40, share(on(35), true));
    assertEquals(40, share(Setup.of(THREE_FINGER_DRAG, EDGE), false));
    assertEquals(25, share(Setup.of(THREE_FINGER_DRAG, EDGE), true));
    assertEquals(25, share(HANG.withHands(Hands.RIGHT), false));
    assertEquals(25, share(LEFT_LIFT, false));
    assertEquals(15, share(LEFT_LIFT, true));
  }

  @Test
  void whatHasNoRowIsNotKnownToBeLight() {
    assertEquals(60, share(on(18), false));
    assertEquals(-1, share(on(17.9), false));
    assertEquals(-1, share(LEFT_LIFT.withEdge(Length.ofMillimetres(17.9)), false));
    assertEquals(-1, share(Setup.of(FRONT_THREE, EDGE), false));
    assertEquals(-1, share(Setup.of(THREE_FINGER_DRAG, EDGE).withHands(Hands.LEFT), false));
  }

  private static Injury ringOfTheLeft(Structure structure, Optional<LocalDate> cleared) {
    return Injury.builder(Finger.RING, structure, MONDAY.minusDays(100))
        .side(Side.LEFT)
        .cleared(cleared)
        .build();
  }

  private static boolean restricted(Structure structure, Optional<LocalDate> cleared) {
    Athlete hurt = Skarvdal.ylva().injury(ringOfTheLeft(structure, cleared)).build();
    assertFalse(KnownLight.restricted(hurt, HANG.withHands(Hands.RIGHT), MONDAY));
    return KnownLight.restricted(hurt, HANG, MONDAY);
  }

  @Test
  void anInjuryOfAFingerInUseRestrictsUntilTwelveWeeksAfterItsClearance() {
    assertTrue(restricted(Structure.A2, Optional.empty()));
    assertTrue(restricted(Structure.A2, Optional.of(MONDAY)));
    assertTrue(restricted(Structure.A2, Optional.of(MONDAY.minusDays(83))));
    assertFalse(restricted(Structure.A2, Optional.of(MONDAY.minusDays(84))));
    assertTrue(restricted(Structure.SKIN, Optional.empty()));
    assertFalse(restricted(Structure.SKIN, Optional.of(MONDAY)));
  }

  @Test
  void noTestIsAdvisedOnlyWhileAnInjuryIsOpen() {
    Athlete hurt = Skarvdal.ylva().injury(ringOfTheLeft(Structure.A2, Optional.empty())).build();
    assertTrue(KnownLight.forbidsTests(hurt, HANG, MONDAY));
    assertFalse(KnownLight.forbidsTests(hurt, HANG.withHands(Hands.RIGHT), MONDAY));
    Athlete cleared =
        Skarvdal.ylva().injury(ringOfTheLeft(Structure.A2, Optional.of(MONDAY))).build();
    assertFalse(KnownLight.forbidsTests(cleared, HANG, MONDAY));
  }

  @Test
  void theSixteenthBirthdayEndsTheRestriction() {
    Athlete young = Skarvdal.ylva().born(MONDAY.minusYears(16)).build();
    assertTrue(KnownLight.restricted(young, HANG, MONDAY.minusDays(1)));
    assertTrue(KnownLight.forbidsTests(young, HANG, MONDAY.minusDays(1)));
    assertFalse(KnownLight.restricted(young, HANG, MONDAY));
    assertFalse(KnownLight.forbidsTests(young, HANG, MONDAY));
  }
}
