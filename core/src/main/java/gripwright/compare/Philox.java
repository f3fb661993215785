package gripwright.compare;

import gripwright.hand.StandardNormal;

/**
 * Random numbers that follow from a key and a counter alone, so that they are the same in any order
 * and on any number of threads: Philox4x32-10 (Salmon JK, Moraes MA, Dror RO, Shaw DE 2011,
 * Parallel random numbers: as easy as 1, 2, 3, SC '11, doi 10.1145/2063384.2063405). Immutable.
 */
final class Philox {

  private static final int ROUNDS = 10;
  private static final int MULTIPLIER_0 = 0xD2511F53;
  private static final int MULTIPLIER_1 = 0xCD9E8D57;
  private static final int WEYL_0 = 0x9E3779B9;
  private static final int WEYL_1 = 0xBB67AE85;

  private static final int SHIFT = 11;
  private static final double HALF = 0.5;
  private static final double UNIT = 0x1.0p-53;

  private final int key0;
  private final int key1;

  /** Creates the generator of a stream. */
  Philox(long stream) {
    this((int) stream, (int) (stream >>> 32));
  }

  Philox(int key0, int key1) {
    this.key0 = key0;
    this.key1 = key1;
  }

  /** Returns the four words of a counter. */
  int[] words(int counter0, int counter1, int counter2, int counter3) {
    int[] words = {counter0, counter1, counter2, counter3};
    int k0 = key0;
    int k1 = key1;
    for (int round = 0; round < ROUNDS; round++) {
      long one = Integer.toUnsignedLong(MULTIPLIER_0) * Integer.toUnsignedLong(words[0]);
      long two = Integer.toUnsignedLong(MULTIPLIER_1) * Integer.toUnsignedLong(words[2]);
      words[0] = (int) (two >>> 32) ^ words[1] ^ k0;
      words[1] = (int) two;
      words[2] = (int) (one >>> 32) ^ words[3] ^ k1;
      words[3] = (int) one;
      k0 += WEYL_0;
      k1 += WEYL_1;
    }
    return words;
  }

  /** Returns a number between 0 and 1, neither of them included. */
  double uniform(int athlete, int draw, int parameter, int block) {
    int[] words = words(athlete, draw, parameter, block);
    long bits = (long) words[0] << 32 | Integer.toUnsignedLong(words[1]);
    return ((bits >>> SHIFT) + HALF) * UNIT;
  }

  /** Returns a standard normal deviate. */
  double normal(int athlete, int draw, int parameter, int block) {
    return StandardNormal.quantile(uniform(athlete, draw, parameter, block));
  }
}
