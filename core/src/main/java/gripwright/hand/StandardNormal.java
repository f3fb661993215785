package gripwright.hand;

import org.hipparchus.special.Erf;

/**
 * The standard normal distribution, and draws from it that are the same on every machine and in
 * every thread: a draw depends on its stream and its number alone.
 */
public final class StandardNormal {

  /** Steele GL, Lea D, Flood CH 2014, Fast splittable pseudorandom number generators, OOPSLA. */
  private static final long STEP = 0x9e3779b97f4a7c15L;

  private static final double HALF_OF_THE_UNIT = 0.5;
  private static final double UNIT = 0x1.0p-53;

  private StandardNormal() {}

  /** Returns the probability, 0 to 1, of a value below a deviate. */
  public static double probability(double deviate) {
    return 0.5 * Erf.erfc(-deviate / Math.sqrt(2));
  }

  /** Returns the deviate below which a value lies with a probability between 0 and 1. */
  public static double quantile(double probability) {
    return Math.sqrt(2) * Erf.erfInv(2 * probability - 1);
  }

  /**
   * Returns a draw, without dimension: the quantile of a number between 0 and 1 that is mixed from
   * stream and number as in SplitMix64.
   *
   * @param stream of random numbers, any value; the same stream gives the same sequence
   * @param number which of the sequence, 0 or more
   */
  public static double draw(long stream, long number) {
    long mixed = stream + STEP * (number + 1);
    mixed = (mixed ^ (mixed >>> 30)) * 0xbf58476d1ce4e5b9L;
    mixed = (mixed ^ (mixed >>> 27)) * 0x94d049bb133111ebL;
    mixed ^= mixed >>> 31;
    return quantile(((mixed >>> 11) + HALF_OF_THE_UNIT) * UNIT);
  }
}
