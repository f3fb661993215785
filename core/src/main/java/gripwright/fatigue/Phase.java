package gripwright.fatigue;

/**
 * The closed form of a period with one linear law: active and fatigued shares, each as a constant
 * and two decaying exponentials. Mutable, so that no object is created for every hold.
 */
final class Phase {

  private static final int STEPS = 200;
  private static final double ACCURACY = 1e-14; // of a time, in seconds, and relative
  private static final double ROUNDING = 1e-14; // of a share: passing a level by less doesn't count

  private double fast;
  private double slow;
  private double activeEnd;
  private double activeFast;
  private double activeSlow;
  private double fatiguedEnd;
  private double fatiguedFast;
  private double fatiguedSlow;

  /**
   * Sets rates and active share.
   *
   * @param decays the two rates, in 1/s
   * @param end share in the long run
   * @param ofFast factor of the faster exponential
   * @param ofSlow factor of the slower one
   */
  void active(Decays decays, double end, double ofFast, double ofSlow) {
    fast = decays.fast;
    slow = decays.slow;
    activeEnd = end;
    activeFast = ofFast;
    activeSlow = ofSlow;
  }

  /** Sets the fatigued share, as {@link #active}. */
  void fatigued(double end, double ofFast, double ofSlow) {
    fatiguedEnd = end;
    fatiguedFast = ofFast;
    fatiguedSlow = ofSlow;
  }

  /** Returns the active share where the exponentials have these values. */
  double active(double fastLeft, double slowLeft) {
    return activeEnd + activeFast * fastLeft + activeSlow * slowLeft;
  }

  /** Returns the fatigued share where the exponentials have these values. */
  double fatigued(double fastLeft, double slowLeft) {
    return fatiguedEnd + fatiguedFast * fastLeft + fatiguedSlow * slowLeft;
  }

  private double slope(double fastLeft, double slowLeft) {
    return -fast * fatiguedFast * fastLeft - slow * fatiguedSlow * slowLeft;
  }

  /**
   * Returns when the fatigued share first passes a level.
   *
   * <p>A sum of two exponentials has at most one extremum, so the share is monotone before and
   * after it, and a safeguarded Newton iteration finds the time on the right piece.
   *
   * @param level the share, not passed at the beginning
   * @param up 1 to look for a rising share, -1 for a falling one
   * @param seconds the time to search
   * @param fastLeft the faster exponential then
   * @param slowLeft the slower one then
   * @return seconds, or NaN if the level isn't passed
   */
  double passes(double level, int up, double seconds, double fastLeft, double slowLeft) {
    double before = up * slope(1, 1);
    double after = up * slope(fastLeft, slowLeft);
    if (before > 0 && after < 0) {
      double turn = turn();
      return up * (fatiguedAfter(turn) - level) > ROUNDING ? root(level, up, 0, turn) : Double.NaN;
    }
    if (!(up * (fatigued(fastLeft, slowLeft) - level) > ROUNDING)) {
      return Double.NaN;
    }
    return root(level, up, before < 0 && after > 0 ? turn() : 0, seconds);
  }

  private double turn() {
    return Math.log(-fast * fatiguedFast / (slow * fatiguedSlow)) / (fast - slow);
  }

  private double fatiguedAfter(double seconds) {
    return fatigued(Math.exp(-fast * seconds), Math.exp(-slow * seconds));
  }

  private double root(double level, int up, double from, double to) {
    double low = from;
    double high = to;
    double time = (low + high) / 2;
    for (int i = 0; i < STEPS; i++) {
      double fastLeft = Math.exp(-fast * time);
      double slowLeft = Math.exp(-slow * time);
      double missing = up * (fatigued(fastLeft, slowLeft) - level);
      if (missing < 0) {
        low = time;
      } else {
        high = time;
      }
      double next = time - missing / (up * slope(fastLeft, slowLeft));
      if (!(next > low && next < high)) {
        next = (low + high) / 2;
      }
      if (Math.abs(next - time) <= ACCURACY * Math.max(1, time)) {
        return next;
      }
      time = next;
    }
    return time;
  }
}
