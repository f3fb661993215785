package gripwright.compare;

/**
 * How often each row of a sample comes up when as many rows are drawn from it with replacement,
 * several times over: the bootstrap (Efron B 1979, Ann Stat 7(1):1-26; for Sobol indices Archer
 * GEB, Saltelli A, Sobol IM 1997, J Stat Comput Simul 58(2):99-120). Immutable; the counts follow
 * from the stream.
 */
final class Resampling {

  private static final int WORDS = 4;

  private final byte[][] counts;
  private final int times;

  /**
   * Draws the samples.
   *
   * @param rows of the sample, 1 or more
   * @param times how many samples are drawn from it; 0 for none
   * @param block of the stream's counter that nothing else uses
   */
  Resampling(int rows, int times, Philox random, int block) {
    this.times = times;
    counts = new byte[rows][times];
    for (int sample = 0; sample < times; sample++) {
      for (int row = 0; row < rows; row += WORDS) {
        int[] words = random.words(0, row / WORDS, sample, block);
        for (int i = 0; i < Math.min(WORDS, rows - row); i++) {
          counts[(int) ((Integer.toUnsignedLong(words[i]) * rows) >>> Integer.SIZE)][sample]++;
        }
      }
    }
  }

  /** Returns the number of rows of the sample. */
  int rows() {
    return counts.length;
  }

  /** Returns the number of samples drawn from it. */
  int times() {
    return times;
  }

  /** Returns 1 for the sample itself, then how often the row is in each sample drawn from it. */
  double[] weights(int row) {
    double[] weights = new double[1 + times];
    weights[0] = 1;
    for (int sample = 0; sample < times; sample++) {
      weights[1 + sample] = counts[row][sample];
    }
    return weights;
  }
}
