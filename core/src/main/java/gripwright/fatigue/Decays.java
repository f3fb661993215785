package gripwright.fatigue;

import java.util.Arrays;

/**
 * The factors by which two rates decay over a time. A session has few different times, so the
 * factors are cached.
 */
final class Decays {

  private static final int SLOTS = 16;
  private static final int SHIFT = 60; // the upper four bits choose a slot
  private static final long MIX = 0x9E3779B97F4A7C15L;

  final double fast;
  final double slow;
  private final double[] seconds = new double[SLOTS];
  private final double[] fastLeft = new double[SLOTS];
  private final double[] slowLeft = new double[SLOTS];

  /** Two rates in 1/s, above 0, the faster first. */
  Decays(double fast, double slow) {
    this.fast = fast;
    this.slow = slow;
    Arrays.fill(seconds, Double.NaN);
  }

  /** Returns the slot of a time in seconds, for the two methods below. */
  int slot(double time) {
    int slot = (int) ((Double.doubleToRawLongBits(time) * MIX) >>> SHIFT);
    if (seconds[slot] != time) {
      seconds[slot] = time;
      fastLeft[slot] = Math.exp(-fast * time);
      slowLeft[slot] = Math.exp(-slow * time);
    }
    return slot;
  }

  double fastLeft(int slot) {
    return fastLeft[slot];
  }

  double slowLeft(int slot) {
    return slowLeft[slot];
  }
}
