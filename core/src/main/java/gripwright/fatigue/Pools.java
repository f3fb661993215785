package gripwright.fatigue;

/**
 * Fingers with two pools of fatigue through a session. Mutable and for one thread.
 *
 * <p>With the fast and the slow pool p and q, load f, the rate F of fatigue, the share w of the
 * fast pool, its rate k of recovery and the time constant T of the slow pool:
 *
 * <pre>
 * p' = w F f         q' = (1 - w) F f    under load
 * p' = -k p          q' = -q / T         at rest
 * capacity = 1 - p - q
 * </pre>
 *
 * A load can't be carried any more once capacity falls below it. The laws are linear and each has a
 * closed form, so there are no time steps.
 *
 * <p>A hold that is missed counts as held to its end, so capacity can fall to 0. Thus a session
 * that is too heavy is never judged lighter for what it misses, and a lighter load or a longer rest
 * never leaves less. Maximal efforts, which go on with what is left, are {@link #give}.
 */
public final class Pools implements Fingers {

  private static final double INSTANT = 1e-9; // a hold that fails by less counts as completed

  private final PoolRates rates;
  private double fast;
  private double slow;
  private double rested = Double.NaN;
  private double fastLeft;
  private double slowLeft;

  /** Creates fresh fingers with these rates. */
  public Pools(PoolRates rates) {
    this.rates = rates;
  }

  /** Returns the fast pool: the part of MVC that is lost and soon recovers at rest, 0 or more. */
  public double fast() {
    return fast;
  }

  /** Returns the slow pool, 0 or more. */
  public double slow() {
    return slow;
  }

  /** Returns the current capacity as a fraction of MVC, 0..1. */
  public double capacity() {
    return Math.max(0, 1 - fast - slow);
  }

  @Override
  public double reserve() {
    return capacity();
  }

  @Override
  public double hold(double ofMvc, double seconds) {
    return hold(ofMvc, seconds, false);
  }

  @Override
  public double holdUpTo(double ofMvc, double seconds) {
    return hold(ofMvc, seconds, true);
  }

  private double hold(double ofMvc, double seconds, boolean lettingGo) {
    if (!(ofMvc > 0 && ofMvc < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("not a load to hold: " + ofMvc + " of MVC");
    }
    requireTime(seconds);
    double pace = rates.fatigue() * ofMvc;
    double carried = Math.max(0, (1 - fast - slow - ofMvc) / pace);
    tire(pace * (lettingGo ? Math.min(carried, seconds) : seconds));
    return carried > seconds - INSTANT ? seconds : carried;
  }

  /**
   * Holds as much as possible: force is the capacity, which falls exponentially.
   *
   * @param seconds how long, above 0 s
   * @return mean force as a fraction of MVC, 0..1
   * @throws IllegalArgumentException if the time is not above 0 s or not finite
   */
  public double give(double seconds) {
    requireTime(seconds);
    if (seconds == 0) {
      throw new IllegalArgumentException("no time to hold");
    }
    double lost = -capacity() * Math.expm1(-rates.fatigue() * seconds);
    tire(lost);
    return lost / (rates.fatigue() * seconds);
  }

  @Override
  public void rest(double seconds) {
    requireTime(seconds);
    if (seconds != rested) {
      rested = seconds;
      fastLeft = Math.exp(-rates.fastRecovery() * seconds);
      slowLeft = Math.exp(-seconds / rates.slowSeconds());
    }
    fast *= fastLeft;
    slow *= slowLeft;
  }

  private void tire(double lost) {
    fast += rates.fastShare() * lost;
    slow += (1 - rates.fastShare()) * lost;
  }

  private static void requireTime(double seconds) {
    if (!(seconds >= 0 && seconds < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("not a time: " + seconds + " s");
    }
  }
}
