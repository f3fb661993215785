package gripwright.compare;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;

/**
 * Sobol indices: which share of the variance of a function's value goes with an input alone, and
 * with it and all others together. Design: two matrices of independent inputs and one more for each
 * input (Saltelli A 2002, Comput Phys Commun 145:280-297); estimators: Jansen MJW 1999, Comput Phys
 * Commun 117:35-43, as recommended in Saltelli A et al. 2010, Comput Phys Commun 181:259-270. The
 * inputs are independent of each other. Stateless.
 */
final class Sobol {

  private Sobol() {}

  /** Draws an input. */
  interface Input {
    /** Returns the value of an input in a row of the first or the second matrix. */
    double draw(int row, int input, boolean second);
  }

  /**
   * Estimates the indices of several functions at once.
   *
   * @param inputs how many
   * @param rows of each matrix
   * @param outputs how many values the function returns
   * @param function of the inputs; an output that is NaN is left out with its row
   * @return by output: the first-order index of each input, then the total index of each
   */
  static double[][] indices(
      int inputs,
      int rows,
      int outputs,
      Input draw,
      java.util.function.Function<double[], double[]> function) {
    double[][] firsts = new double[outputs][inputs];
    double[][] totals = new double[outputs][inputs];
    double[] sums = new double[outputs];
    double[] squares = new double[outputs];
    long[] counts = new long[outputs];
    double[] a = new double[inputs];
    double[] b = new double[inputs];
    for (int row = 0; row < rows; row++) {
      for (int i = 0; i < inputs; i++) {
        a[i] = draw.draw(row, i, false);
        b[i] = draw.draw(row, i, true);
      }
      double[] ofA = function.apply(a.clone());
      double[] ofB = function.apply(b.clone());
      double[][] mixed = new double[inputs][];
      for (int i = 0; i < inputs; i++) {
        double[] input = a.clone();
        input[i] = b[i];
        mixed[i] = function.apply(input);
      }
      for (int output = 0; output < outputs; output++) {
        add(output, ofA, ofB, mixed, firsts, totals, sums, squares, counts);
      }
    }
    double[][] indices = new double[outputs][2 * inputs];
    for (int output = 0; output < outputs; output++) {
      long n = 2 * counts[output];
      double mean = sums[output] / n;
      double variance = squares[output] / n - mean * mean;
      for (int i = 0; i < inputs && variance > 0; i++) {
        indices[output][i] = 1 - firsts[output][i] / (2.0 * counts[output]) / variance;
        indices[output][inputs + i] = totals[output][i] / (2.0 * counts[output]) / variance;
      }
    }
    return indices;
  }

  private static void add(
      int output,
      double[] ofA,
      double[] ofB,
      double[][] mixed,
      double[][] firsts,
      double[][] totals,
      double[] sums,
      double[] squares,
      long[] counts) {
    double inA = ofA[output];
    double inB = ofB[output];
    boolean whole =
        !Double.isNaN(inA + inB)
            && Arrays.stream(mixed).noneMatch(values -> Double.isNaN(values[output]));
    if (!whole) {
      return;
    }
    counts[output]++;
    sums[output] += inA + inB;
    squares[output] += inA * inA + inB * inB;
    for (int i = 0; i < mixed.length; i++) {
      firsts[output][i] += Math.pow(inB - mixed[i][output], 2);
      totals[output][i] += Math.pow(inA - mixed[i][output], 2);
    }
  }

  /** Returns the indices of one function; see {@link #indices}. */
  static double[] of(int inputs, int rows, Input draw, ToDoubleFunction<double[]> function) {
    return indices(inputs, rows, 1, draw, input -> new double[] {function.applyAsDouble(input)})[0];
  }
}
