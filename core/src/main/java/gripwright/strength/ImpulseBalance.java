package gripwright.strength;

import gripwright.quantity.Load;
import java.util.Objects;

/**
 * The remaining impulse above critical force while loads change: above critical force it is used
 * up, below it it recovers exponentially. At most the whole impulse, and 0 at failure.
 *
 * <p>The form is that of Skiba PF et al. 2012, Med Sci Sports Exerc 44(8):1526-1532, written as a
 * differential equation. Their recovery time is for cycling and in terms of watts; no value for
 * fingers is published, so here the caller supplies a constant. Immutable.
 *
 * @param critical critical force and the whole impulse
 * @param recoverySeconds time constant of recovery, above 0
 */
public record ImpulseBalance(CriticalForce critical, double recoverySeconds) {

  private static final double CYCLING_SPAN = 546;
  private static final double CYCLING_RATE = 0.01;
  private static final double CYCLING_LEAST = 316;

  /**
   * Checks the time.
   *
   * @throws IllegalArgumentException if it is not above 0
   */
  public ImpulseBalance {
    Objects.requireNonNull(critical, "critical");
    if (!(recoverySeconds > 0)) {
      throw new IllegalArgumentException("not a time of recovery: " + recoverySeconds + " s");
    }
  }

  /**
   * Returns the impulse left after a load.
   *
   * @param left the impulse left before, in kg s, 0 to the whole impulse
   * @param load the load; zero for a rest
   * @param seconds how long, 0 or more
   * @return in kg s, 0 to the whole impulse
   */
  public double after(double left, Load load, double seconds) {
    double above = load.kilograms() - critical.force().best().kilograms();
    double whole = critical.impulseKgS();
    return above > 0
        ? Math.max(0, left - above * seconds)
        : whole - (whole - left) * Math.exp(-seconds / recoverySeconds);
  }

  /**
   * Returns the time constant of recovery in cycling: {@code 546 exp(-0.01 D) + 316} s. It doesn't
   * apply to loads or forces and is here for comparison only.
   *
   * @param wattsBelow critical power less the mean power below it, in watts
   */
  public static double cyclingRecoverySeconds(double wattsBelow) {
    return CYCLING_SPAN * Math.exp(-CYCLING_RATE * wattsBelow) + CYCLING_LEAST;
  }
}
