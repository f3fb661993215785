package gripwright.strength;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Estimates loads at other places and times from efforts, all in logarithms of load.
 *
 * <p>The model is linear and Gaussian: a load is the athlete's level with a flat prior, plus the
 * deviation of the place, plus fade times the logarithm of the share that the law allows for the
 * time, plus noise. Fade has the prior mean 1 and the spread {@link StrengthMap#FADE_SPREAD}. So
 * scaling all efforts scales all estimates; variances depend on the place and time of efforts, not
 * on their loads, and a further effort never raises a variance. Method: universal kriging, by a
 * Cholesky decomposition (Rasmussen CE, Williams CKI 2006, Gaussian Processes for Machine Learning,
 * section 2.7, with infinite prior variance of the level).
 *
 * <p>To keep curves from rising with time, fade is at least {@link #LEAST_FADE}: if its posterior
 * mean is lower, all means are conditional on fade at this bound. Variances don't change.
 */
final class FadeField {

  /**
   * The least fade: above {@link LoadEstimate#LOW_DEVIATE} times the prior spread of fade, so that
   * the low end falls with time as well, for any distribution of the efforts.
   */
  static final double LEAST_FADE = 0.3;

  private static final double PRIOR_FADE = 1;
  private static final double FADE_VARIANCE = StrengthMap.FADE_SPREAD * StrengthMap.FADE_SPREAD;

  private final RealVector shares;
  private final RealVector residuals;
  private final DecompositionSolver solver;
  private final RealVector ones;
  private final double levelPrecision;
  private final Unknown fade;
  private final double fadeMean;

  /**
   * An unknown number, with its relation to the efforts: some level, a deviation, and fade by the
   * law's share.
   *
   * @param covariances with the efforts
   * @param solved the same by the inverse of the efforts' covariance
   * @param missing the part of the level that the efforts don't explain
   * @param allowed logarithm of the law's share for its time
   * @param weights of the efforts in its mean
   */
  record Unknown(
      RealVector covariances,
      RealVector solved,
      double missing,
      double allowed,
      RealVector weights) {}

  /**
   * The estimate at one place.
   *
   * @param level logarithm of the load at the time where the law's share counts as 1
   * @param fade steepness of the fall relative to the law, 1 for the population
   * @param levelVariance variance of the level
   * @param covariance of level and fade
   * @param fadeVariance variance of fade
   * @param weights weight of each effort in the level; they sum to 1
   */
  record Point(
      double level,
      double fade,
      double levelVariance,
      double covariance,
      double fadeVariance,
      List<Double> weights) {}

  /**
   * Conditions the model on efforts.
   *
   * @param covariance of the efforts' deviations and noise, without level and fade; positive
   *     definite
   * @param loads logarithm of each load, less the expected difference of its place from the level
   * @param allowed logarithm of the law's share for each time
   */
  FadeField(RealMatrix covariance, double[] loads, double[] allowed) {
    int n = loads.length;
    shares = new ArrayRealVector(allowed);
    RealMatrix whole = covariance.add(shares.outerProduct(shares).scalarMultiply(FADE_VARIANCE));
    solver = new CholeskyDecomposition(whole).getSolver();
    ones = solver.solve(new ArrayRealVector(n, 1.0));
    levelPrecision = sum(ones);
    residuals = new ArrayRealVector(loads).subtract(shares.mapMultiply(PRIOR_FADE));
    fade = unknown(new double[n], 0, 1);
    fadeMean = PRIOR_FADE + fade.weights().dotProduct(residuals);
  }

  private static double sum(RealVector vector) {
    double sum = 0;
    for (int i = 0; i < vector.getDimension(); i++) {
      sum += vector.getEntry(i);
    }
    return sum;
  }

  /**
   * Returns an unknown number.
   *
   * @param deviations covariances of its deviation with that of each effort
   * @param level 1 if it includes the athlete's level, 0 if not
   * @param allowed logarithm of the law's share for its time, 0 if it doesn't depend on time
   */
  Unknown unknown(double[] deviations, double level, double allowed) {
    RealVector covariances =
        new ArrayRealVector(deviations).add(shares.mapMultiply(FADE_VARIANCE * allowed));
    RealVector solved = solver.solve(covariances);
    double missing = level - sum(solved);
    RealVector weights = solved.add(ones.mapMultiply(missing / levelPrecision));
    return new Unknown(covariances, solved, missing, allowed, weights);
  }

  /** Returns the mean of an unknown number, less the expected difference of its place. */
  double mean(Unknown unknown) {
    double mean = PRIOR_FADE * unknown.allowed() + unknown.weights().dotProduct(residuals);
    return fadeMean < LEAST_FADE
        ? mean + covariance(unknown, fade, 0) / covariance(fade, fade, 0) * (LEAST_FADE - fadeMean)
        : mean;
  }

  /**
   * Returns the covariance of two unknown numbers, given the efforts.
   *
   * @param deviations covariance of their deviations, before the efforts are known
   */
  double covariance(Unknown one, Unknown other, double deviations) {
    return deviations
        + FADE_VARIANCE * one.allowed() * other.allowed()
        - one.covariances().dotProduct(other.solved())
        + one.missing() * other.missing() / levelPrecision;
  }

  /**
   * Returns the estimate at a place.
   *
   * @param covariances covariances of its deviation with that of each effort
   * @param variance variance of its deviation
   * @param expected expected difference of the place from the level
   */
  Point at(double[] covariances, double variance, double expected) {
    Unknown place = unknown(covariances, 1, 0);
    return new Point(
        expected + mean(place),
        Math.max(fadeMean, LEAST_FADE),
        covariance(place, place, variance),
        covariance(place, fade, 0),
        covariance(fade, fade, 0),
        Arrays.stream(place.weights().toArray()).boxed().toList());
  }
}
