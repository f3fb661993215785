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

  private final RealVector residuals;
  private final DecompositionSolver solver;
  private final RealVector ones;
  private final double levelPrecision;
  private final Functional fade;

  /** A linear functional of the unknowns, with its relation to the efforts. */
  private record Functional(RealVector solved, double level, double variance, RealVector weights) {}

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
    RealVector shares = new ArrayRealVector(allowed);
    RealMatrix whole = covariance.add(shares.outerProduct(shares).scalarMultiply(FADE_VARIANCE));
    solver = new CholeskyDecomposition(whole).getSolver();
    ones = solver.solve(new ArrayRealVector(n, 1.0));
    levelPrecision = sum(ones);
    residuals = new ArrayRealVector(loads).subtract(shares.mapMultiply(PRIOR_FADE));
    fade = functional(shares.mapMultiply(FADE_VARIANCE), 0, FADE_VARIANCE);
  }

  private static double sum(RealVector vector) {
    double sum = 0;
    for (int i = 0; i < vector.getDimension(); i++) {
      sum += vector.getEntry(i);
    }
    return sum;
  }

  /**
   * Returns a functional with these covariances with the efforts, which includes the level or not.
   */
  private Functional functional(RealVector covariances, double level, double variance) {
    RealVector solved = solver.solve(covariances);
    double missing = level - sum(solved);
    RealVector weights = solved.add(ones.mapMultiply(missing / levelPrecision));
    double posterior =
        variance - covariances.dotProduct(solved) + missing * missing / levelPrecision;
    return new Functional(solved, missing, posterior, weights);
  }

  /**
   * Returns the estimate at a place.
   *
   * @param covariances covariances of its deviation with that of each effort
   * @param variance variance of its deviation
   * @param expected expected difference of the place from the level
   */
  Point at(double[] covariances, double variance, double expected) {
    RealVector toEfforts = new ArrayRealVector(covariances);
    Functional place = functional(toEfforts, 1, variance);
    double covariance =
        place.level() * fade.level() / levelPrecision - toEfforts.dotProduct(fade.solved());
    double fadeMean = PRIOR_FADE + told(fade);
    double level = expected + told(place);
    double bound = Math.max(fadeMean, LEAST_FADE);
    if (bound > fadeMean) {
      level += covariance / fade.variance() * (bound - fadeMean);
    }
    List<Double> weights = Arrays.stream(place.weights().toArray()).boxed().toList();
    return new Point(level, bound, place.variance(), covariance, fade.variance(), weights);
  }

  private double told(Functional functional) {
    return functional.weights().dotProduct(residuals);
  }
}
