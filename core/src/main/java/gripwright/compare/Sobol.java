package gripwright.compare;

import gripwright.compare.ComparisonResult.Driver;
import gripwright.compare.ComparisonResult.Interval;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * Sobol indices: which share of the variance of a function's value goes with an input alone, and
 * with it and all others together. Design: two matrices of independent inputs and one more for each
 * input (Saltelli A 2002, Comput Phys Commun 145:280-297); estimators: Jansen MJW 1999, Comput Phys
 * Commun 117:35-43, as recommended in Saltelli A et al. 2010, Comput Phys Commun 181:259-270;
 * intervals: percentiles over samples drawn from the rows. The inputs are independent of each
 * other. Stateless.
 */
final class Sobol {

  private static final double LOW = 0.05;

  private Sobol() {}

  /** Draws an input. */
  interface Input {
    /** Returns the value of an input in a row of the first or the second matrix. */
    double draw(int row, int input, boolean second);
  }

  /**
   * An index.
   *
   * @param value as estimated from all rows; 0 if the function doesn't vary
   * @param interval that holds 90 % of the estimates from samples of the rows; without any, both
   *     ends are the value
   */
  record Index(double value, Interval interval) {}

  /**
   * The indices of a function.
   *
   * @param first first-order index of each input
   * @param total total index of each input
   */
  record Indices(List<Index> first, List<Index> total) {
    /**
     * Returns an input as what moves a difference. Estimates of a total index above 1 count as 1.
     *
     * @param name of the input
     */
    Driver driver(String name, int input) {
      Index whole = total.get(input);
      Interval range = whole.interval();
      return new Driver(
          name,
          Math.min(1, whole.value()),
          Optional.of(new Interval(Math.min(1, range.low()), Math.min(1, range.high()))),
          OptionalDouble.of(first.get(input).value()),
          Optional.of(first.get(input).interval()));
    }
  }

  /**
   * Estimates the indices of several functions at once.
   *
   * @param inputs how many
   * @param resampling the rows of each matrix, and the samples drawn from them
   * @param outputs how many values the function returns
   * @param function of the inputs; an output that is NaN is left out with its row
   * @return the indices by output
   */
  static List<Indices> indices(
      int inputs,
      Resampling resampling,
      int outputs,
      Input draw,
      Function<double[], double[]> function) {
    List<Sums> sums = new ArrayList<>();
    for (int output = 0; output < outputs; output++) {
      sums.add(new Sums(output, inputs, 1 + resampling.times()));
    }
    double[] a = new double[inputs];
    double[] b = new double[inputs];
    for (int row = 0; row < resampling.rows(); row++) {
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
      double[] weights = resampling.weights(row);
      sums.forEach(each -> each.add(ofA, ofB, mixed, weights));
    }
    return sums.stream().map(Sums::indices).toList();
  }

  /**
   * What is summed up for one output over all rows: at 0 for the rows themselves, then for each
   * sample drawn from them.
   */
  private static final class Sums {
    private final int output;
    private final double[][] firsts;
    private final double[][] totals;
    private final double[] sum;
    private final double[] squares;
    private final double[] count;

    Sums(int output, int inputs, int samples) {
      this.output = output;
      firsts = new double[inputs][samples];
      totals = new double[inputs][samples];
      sum = new double[samples];
      squares = new double[samples];
      count = new double[samples];
    }

    void add(double[] ofA, double[] ofB, double[][] mixed, double[] weights) {
      double inA = ofA[output];
      double inB = ofB[output];
      boolean whole =
          !Double.isNaN(inA + inB)
              && Arrays.stream(mixed).noneMatch(values -> Double.isNaN(values[output]));
      if (!whole) {
        return;
      }
      add(count, weights, 1);
      add(sum, weights, inA + inB);
      add(squares, weights, inA * inA + inB * inB);
      for (int i = 0; i < mixed.length; i++) {
        add(firsts[i], weights, Math.pow(inB - mixed[i][output], 2));
        add(totals[i], weights, Math.pow(inA - mixed[i][output], 2));
      }
    }

    private static void add(double[] sums, double[] weights, double value) {
      for (int sample = 0; sample < sums.length; sample++) {
        sums[sample] += weights[sample] * value;
      }
    }

    Indices indices() {
      double[] variance = new double[sum.length];
      for (int sample = 0; sample < sum.length; sample++) {
        double mean = sum[sample] / (2 * count[sample]);
        variance[sample] = squares[sample] / (2 * count[sample]) - mean * mean;
      }
      List<Index> first = new ArrayList<>();
      List<Index> total = new ArrayList<>();
      for (int i = 0; i < firsts.length; i++) {
        first.add(index(shares(firsts[i], variance), share -> 1 - share));
        total.add(index(shares(totals[i], variance), share -> share));
      }
      return new Indices(first, total);
    }

    /** Returns half the mean of squares as a share of the variance; NaN without variance. */
    private double[] shares(double[] sums, double[] variance) {
      double[] shares = new double[sums.length];
      for (int sample = 0; sample < sums.length; sample++) {
        shares[sample] =
            variance[sample] > 0
                ? sums[sample] / (2.0 * count[sample]) / variance[sample]
                : Double.NaN;
      }
      return shares;
    }

    private static Index index(double[] shares, DoubleUnaryOperator estimate) {
      if (Double.isNaN(shares[0])) {
        return new Index(0, new Interval(0, 0));
      }
      double value = estimate.applyAsDouble(shares[0]);
      double[] others =
          Arrays.stream(shares).skip(1).filter(Double::isFinite).map(estimate).sorted().toArray();
      return new Index(
          value,
          others.length == 0
              ? new Interval(value, value)
              : new Interval(quantile(others, LOW), quantile(others, 1 - LOW)));
    }

    private static double quantile(double[] sorted, double share) {
      return sorted[(int) Math.round(share * (sorted.length - 1))];
    }
  }

  /** Returns the indices of one function; see {@link #indices}. */
  static Indices of(
      int inputs, Resampling resampling, Input draw, ToDoubleFunction<double[]> function) {
    return indices(
            inputs, resampling, 1, draw, input -> new double[] {function.applyAsDouble(input)})
        .get(0);
  }
}
