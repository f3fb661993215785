package gripwright.strength.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gripwright.quantity.Load;
import gripwright.strength.CriticalForce;
import gripwright.strength.ImpulseBalance;
import gripwright.strength.LoadEstimate;
import org.junit.jupiter.api.Test;

/** Skiba PF, Chidnok W, Vanhatalo A, Jones AM 2012, Med Sci Sports Exerc 44(8):1526-1532. */
class ImpulseBalanceTest {

  private static final CriticalForce CRITICAL =
      new CriticalForce(
          CriticalForce.Definition.HOLDS_TO_FAILURE,
          new LoadEstimate(Load.ofKilograms(25), 0.1),
          1500,
          0.1,
          true);

  /** The impulse is used up when the load has been held for as long as possible. */
  @Test
  void theBalanceIsZeroAtFailureAndRecoversExponentially() {
    ImpulseBalance balance = new ImpulseBalance(CRITICAL, 400);
    Load load = Load.ofKilograms(50);
    double gone = balance.after(1500, load, CRITICAL.secondsAt(load));
    assertEquals(0, gone, 1e-9);
    assertEquals(1500 * (1 - Math.exp(-1)), balance.after(gone, Load.ZERO, 400), 1e-9);
    assertEquals(1500, balance.after(1500, Load.ZERO, 60), "never more than the whole");
    assertEquals(0, balance.after(10, load, 60), "never less than nought");
    assertThrows(IllegalArgumentException.class, () -> new ImpulseBalance(CRITICAL, 0));
  }

  @Test
  void atCriticalForceAndBelowAHoldIsUnlimited() {
    assertEquals(Double.POSITIVE_INFINITY, CRITICAL.secondsAt(Load.ofKilograms(25)));
    assertEquals(50, CRITICAL.loadFor(60).kilograms(), 1e-12);
  }
}
