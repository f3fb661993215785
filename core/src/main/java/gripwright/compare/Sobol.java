package gripwright.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
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
    List<Sums> sums = new ArrayList<>();
    for (int output = 0; output < outputs; output++) {
      sums.add(new Sums(output, inputs));
    }
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
      sums.forEach(each -> each.add(ofA, ofB, mixed));
    }
    return sums.stream().map(Sums::indices).toArray(double[][]::new);
  }

  /** What is summed up for one output over all rows. */
  private static final class Sums {
    private final int output;
    private final double[] firsts;
    private final double[] totals;
    private double sum;
    private double squares;
    private long count;

    Sums(int output, int inputs) {
      this.output = output;
      firsts = new double[inputs];
      totals = new double[inputs];
    }

    void add(double[] ofA, double[] ofB, double[][] mixed) {
      double inA = ofA[output];
      double inB = ofB[output];
      boolean whole =
          !Double.isNaN(inA + inB)
              && Arrays.stream(mixed).noneMatch(values -> Double.isNaN(values[output]));
      if (!whole) {
        return;
      }
      count++;
      sum += inA + inB;
      squares += inA * inA + inB * inB;
      for (int i = 0; i < mixed.length; i++) {
        firsts[i] += Math.pow(inB - mixed[i][output], 2);
        totals[i] += Math.pow(inA - mixed[i][output], 2);
      }
    }

    double[] indices() {
      int inputs = firsts.length;
      double[] indices = new double[2 * inputs];
      double mean = sum / (2 * count);
      double variance = squares / (2 * count) - mean * mean;
      for (int i = 0; i < inputs && variance > 0; i++) {
        indices[i] = 1 - firsts[i] / (2.0 * count) / variance;
        indices[inputs + i] = totals[i] / (2.0 * count) / variance;
      }
      return indices;
    }
  }

  /** Returns the indices of one function; see {@link #indices}. */
  static double[] of(int inputs, int rows, Input draw, ToDoubleFunction<double[]> function) {
    return indices(inputs, rows, 1, draw, input -> new double[] {function.applyAsDouble(input)})[0];
  }
}
