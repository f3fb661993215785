package gripwright.fatigue;

import gripwright.quantity.Load;
import gripwright.schedule.PlannedExercise.LoadedStep;
import gripwright.schedule.PlannedExercise.Maximum;
import gripwright.strength.AllOutTest;
import gripwright.strength.ImpulseBalance;
import java.util.Optional;

/**
 * How often a load can be held, by the athlete's own all-out series: holds above critical force use
 * up the impulse above it. Critical force already contains the rests of the series, so only what a
 * rest has beyond them restores impulse.
 */
final class OwnRepetitions {

  /**
   * Time constant of the impulse's recovery in longer rests. None is published for fingers; that of
   * the slow pool, within the 316 to 862 s of cycling (Skiba PF et al. 2012, Med Sci Sports Exerc
   * 44(8):1526-1532).
   */
  private static final double RECOVERY_SECONDS = PoolRates.SHORT_RESTS.slowSeconds();

  /** Today's maximum as a share of the strongest hold of the series; the library's own choice. */
  private static final double STILL_AS_STRONG = 0.95;

  /** Critical force as a share of today's maximum that nobody exceeds; the library's own choice. */
  private static final double HIGHEST_CRITICAL = 0.8;

  private OwnRepetitions() {}

  /**
   * Returns the first hold for which no impulse is left; empty if all can be completed. A hold
   * whose time is a bound uses up what is left and is not missed.
   */
  static Optional<Miss> miss(Work work, AllOutTest test) {
    ImpulseBalance balance = new ImpulseBalance(test.critical(), RECOVERY_SECONDS);
    double critical = test.critical().force().best().kilograms();
    double left = test.critical().impulseKgS();
    int hold = 0;
    for (LoadedStep step : work.steps()) {
      if (step.load().isEmpty()) {
        left = balance.after(left, Load.ZERO, Math.max(0, step.seconds() - test.restSeconds()));
        continue;
      }
      double above = step.load().get().kilograms() - critical;
      if (above > 0) {
        double carried = left / above;
        boolean bound = step.extent().isBound();
        if (carried < step.seconds() && !bound) {
          return Optional.of(new Miss(hold, carried));
        }
        left =
            carried < step.seconds() ? 0 : balance.after(left, step.load().get(), step.seconds());
      }
      hold++;
    }
    return Optional.empty();
  }

  /**
   * Tells whether the test alone judges an exercise of fresh fingers: no hold longer, no rest
   * shorter than in the test, nothing heavier than any set was fitted to, since the impulse knows
   * no maximum, and an athlete who is as strong as on the day of the test.
   */
  static boolean covers(Work work, AllOutTest test) {
    return work.longestHold() <= test.workSeconds()
        && work.shortestRest() >= test.restSeconds()
        && PoolRates.SHORT_RESTS.ofMvc(work.heaviest()) <= FatigueRates.HEAVY
        && work.maximum().filter(maximum -> isAsStrong(maximum, test)).isPresent();
  }

  private static boolean isAsStrong(Maximum maximum, AllOutTest test) {
    double today = maximum.mean().kilograms();
    return today >= STILL_AS_STRONG * test.series().greatest().kilograms()
        && test.critical().force().best().kilograms() <= HIGHEST_CRITICAL * today;
  }
}
