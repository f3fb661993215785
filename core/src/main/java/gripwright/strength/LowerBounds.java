package gripwright.strength;

import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.special.Erf;

/**
 * What it means for numbers with a joint normal distribution that each, plus noise, was at least a
 * bound. The result is not normal; it is replaced by the normal distribution with nearly the same
 * mean and variance, by expectation propagation. It is exact for a single bound; where several
 * bounds of equal numbers overlap, the spread is up to an eighth too small.
 *
 * <p>Method: Rasmussen CE, Williams CKI 2006, Gaussian Processes for Machine Learning, section 3.6,
 * with the bound in place of 0 and the noise in place of 1.
 */
final class LowerBounds {

  private static final int MOST_ROUNDS = 100;
  private static final double SETTLED = 1e-10;

  /** Below this many standard deviations the ratio is taken by its limit. */
  private static final double FAR_BELOW = -30;

  private final RealVector means;
  private final double[] bounds;
  private final double[] noise;
  private final double[] precision;
  private final double[] shift;
  private final RealMatrix covariance;
  private final RealVector mean;
  private final DecompositionSolver solver;

  /**
   * What the bounds change in another number.
   *
   * @param mean added to its mean
   * @param variance added to its variance; 0 or less
   */
  record Effect(double mean, double variance) {}

  /**
   * Applies bounds.
   *
   * @param means of the numbers
   * @param prior covariance of the numbers
   * @param bounds each plus noise was at least this
   * @param noise variance of the noise of each, above 0
   */
  LowerBounds(double[] means, RealMatrix prior, double[] bounds, double[] noise) {
    int n = means.length;
    this.means = new ArrayRealVector(means);
    this.bounds = bounds.clone();
    this.noise = noise.clone();
    this.precision = new double[n];
    this.shift = new double[n];
    this.covariance = prior.copy();
    this.mean = new ArrayRealVector(means);
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double moved = 0;
      for (int i = 0; i < n; i++) {
        moved = Math.max(moved, refine(i));
      }
      if (moved < SETTLED) {
        break;
      }
    }
    RealMatrix system = MatrixUtils.createRealIdentityMatrix(n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        system.addToEntry(i, j, precision[i] * prior.getEntry(i, j));
      }
    }
    this.solver = new LUDecomposition(system).getSolver();
  }

  /** Refines what one bound says, and returns how far its number moved, in its own spreads. */
  private double refine(int i) {
    double variance = covariance.getEntry(i, i);
    double without = 1 / variance - precision[i];
    double cavity = 1 / without;
    double centre = cavity * (mean.getEntry(i) / variance - shift[i]);
    double spread = Math.sqrt(noise[i] + cavity);
    double z = (centre - bounds[i]) / spread;
    double ratio = ratio(z);
    double posteriorMean = centre + cavity * ratio / spread;
    double posterior = cavity * (1 - cavity / (noise[i] + cavity) * ratio * (z + ratio));
    double morePrecision = Math.max(0, 1 / posterior - without) - precision[i];
    double moreShift = posteriorMean / posterior - without * centre - shift[i];
    precision[i] += morePrecision;
    shift[i] += moreShift;
    RealVector column = covariance.getColumnVector(i);
    double factor = 1 + morePrecision * variance;
    double step = (moreShift - morePrecision * mean.getEntry(i)) / factor;
    mean.combineToSelf(1, step, column);
    for (int row = 0; row < column.getDimension(); row++) {
      for (int other = 0; other < column.getDimension(); other++) {
        covariance.addToEntry(
            row, other, -morePrecision / factor * column.getEntry(row) * column.getEntry(other));
      }
    }
    return Math.abs(step) * Math.sqrt(variance);
  }

  /** Returns the density of the standard normal distribution divided by its distribution. */
  private static double ratio(double z) {
    if (z < FAR_BELOW) {
      return -z - 1 / z + 2 / (z * z * z);
    }
    double density = Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
    return density / (Erf.erfc(-z / Math.sqrt(2)) / 2);
  }

  /**
   * Returns what the bounds change in another number.
   *
   * @param covariances of that number with those that have bounds
   */
  Effect effectOn(double[] covariances) {
    RealVector with = new ArrayRealVector(covariances);
    RealVector pull = new ArrayRealVector(covariances.length);
    RealVector weighed = new ArrayRealVector(covariances.length);
    for (int i = 0; i < covariances.length; i++) {
      pull.setEntry(i, shift[i] - precision[i] * means.getEntry(i));
      weighed.setEntry(i, precision[i] * covariances[i]);
    }
    return new Effect(with.dotProduct(solver.solve(pull)), -with.dotProduct(solver.solve(weighed)));
  }
}
