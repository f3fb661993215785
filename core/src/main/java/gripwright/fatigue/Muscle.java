package gripwright.fatigue;

/**
 * The fibres of the fingers through a session: resting, active and fatigued shares, which add up to
 * 1. Mutable and for one thread; it keeps nothing else, so one object can simulate any number of
 * sessions in constant memory.
 *
 * <p>With active a, fatigued m and resting 1 - a - m fibres, load f and the rates F, R and r:
 *
 * <pre>
 * a' = C - F a
 * m' = F a - R m     under load
 * m' = F a - r R m   at rest, f = 0
 * C  = 10 (f - a)         while 1 - m &gt; f: fibres are activated until the load is carried
 * C  = 10 (1 - a - m)     otherwise: all resting fibres are activated
 * </pre>
 *
 * Each law is linear, so every period between two changes of law has a closed form, and the time of
 * a change is found by iteration to rounding precision, without the error of a step size. Source:
 * Xia T, Frey Law LA 2008, J Biomech 41(14):3046-3052, with finite drive both ways; r only where
 * the load is zero: Rakshit R, Xiang Y, Yang J 2021, J Biomech 110695, eq. 7.
 */
public final class Muscle implements Fingers {

  private static final double DRIVE = FatigueRates.DRIVE;
  private static final double INSTANT = 1e-9; // a hold that fails by less counts as completed

  private final double fatigue;
  private final double recovery;
  private final Decays carrying;
  private final Decays spent;
  private final Decays resting;
  private final double spentEnd;
  private final Phase phase = new Phase();

  private double active;
  private double fatigued;

  /** Creates fresh fingers with these rates. */
  public Muscle(FatigueRates rates) {
    fatigue = rates.fatigue();
    recovery = rates.recovery();
    carrying = new Decays(DRIVE + fatigue, recovery);
    resting = new Decays(DRIVE + fatigue, recovery * rates.restMultiplier());
    double sum = DRIVE + fatigue + recovery;
    double product = DRIVE * (fatigue + recovery) + fatigue * recovery;
    double fast = (sum + Math.sqrt(sum * sum - 4 * product)) / 2;
    spent = new Decays(fast, product / fast);
    spentEnd = fatigue * DRIVE / product;
  }

  /** Resets all fibres to rest. */
  public void freshen() {
    active = 0;
    fatigued = 0;
  }

  /** Returns the active share, 0..1: the force as a fraction of MVC. */
  public double active() {
    return active;
  }

  /** Returns the fatigued share, 0..1. */
  public double fatigued() {
    return fatigued;
  }

  /** Returns the resting share, 0..1. */
  public double resting() {
    return Math.max(0, 1 - active - fatigued);
  }

  /** Returns the current capacity as a fraction of MVC: all fibres that are not fatigued. */
  public double capacity() {
    return 1 - fatigued;
  }

  /**
   * Returns the estimated reserve: the capacity once the load is released, as a fraction of MVC. Of
   * fibres that are released, the share F / (10 + F) fatigues before it rests, so this is up to a
   * thousandth less than {@link #capacity}, and the same after a second of rest. Unlike capacity,
   * it never falls during a rest.
   */
  @Override
  public double reserve() {
    return 1 - fatigued - active * fatigue / (DRIVE + fatigue);
  }

  /**
   * Holds a load. If capacity falls below it, the hold continues with the remaining capacity.
   *
   * @param ofMvc load as a fraction of MVC, above 0; above 1 can't be carried
   * @param seconds how long, 0 s or more
   * @return for how many seconds the load was carried: all of them if the hold was completed
   * @throws IllegalArgumentException if load or time is out of range or not finite
   */
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
    double level = 1 - ofMvc;
    boolean failing = fatigued > level || level <= 0; // MVC itself can't be held for any time
    double carried = failing ? 0 : seconds;
    double left = failing && lettingGo ? 0 : seconds;
    while (left > 0) {
      Decays decays = failing ? spent : carrying;
      if (failing) {
        giveAll();
      } else {
        carry(ofMvc, carrying, recovery);
      }
      int slot = decays.slot(left);
      double fastLeft = decays.fastLeft(slot);
      double slowLeft = decays.slowLeft(slot);
      double change = phase.passes(level, failing ? -1 : 1, left, fastLeft, slowLeft);
      if (!(change < left)) {
        move(fastLeft, slowLeft);
        break;
      }
      move(Math.exp(-decays.fast * change), Math.exp(-decays.slow * change));
      fatigued = level;
      left -= change;
      failing = !failing;
      if (failing && left > INSTANT) {
        carried = Math.min(carried, seconds - left);
        left = lettingGo ? 0 : left;
      }
    }
    return carried;
  }

  /**
   * Rests.
   *
   * @param seconds how long, 0 s or more
   * @throws IllegalArgumentException if the time is negative or not finite
   */
  @Override
  public void rest(double seconds) {
    requireTime(seconds);
    carry(0, resting, resting.slow);
    int slot = resting.slot(seconds);
    move(resting.fastLeft(slot), resting.slowLeft(slot));
  }

  private static void requireTime(double seconds) {
    if (!(seconds >= 0 && seconds < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("not a time: " + seconds + " s");
    }
  }

  private void move(double fastLeft, double slowLeft) {
    active = Math.max(0, phase.active(fastLeft, slowLeft));
    fatigued = Math.max(0, phase.fatigued(fastLeft, slowLeft));
  }

  /** Activates or releases fibres until the load is carried. */
  private void carry(double ofMvc, Decays decays, double back) {
    double end = DRIVE * ofMvc / decays.fast;
    double ahead = active - end;
    double fatiguedEnd = fatigue * end / back;
    double ofFast = fatigue * ahead / (back - decays.fast);
    phase.active(decays, end, ahead, 0);
    phase.fatigued(fatiguedEnd, ofFast, fatigued - fatiguedEnd - ofFast);
  }

  /** Activates all resting fibres. */
  private void giveAll() {
    double slope = fatigue * active - recovery * fatigued;
    double off = fatigued - spentEnd;
    double ofFast = (slope + spent.slow * off) / (spent.slow - spent.fast);
    double ofSlow = off - ofFast;
    phase.active(
        spent,
        recovery * spentEnd / fatigue,
        (recovery - spent.fast) * ofFast / fatigue,
        (recovery - spent.slow) * ofSlow / fatigue);
    phase.fatigued(spentEnd, ofFast, ofSlow);
  }
}
