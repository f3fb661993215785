package gripwright.strength;

import gripwright.quantity.Load;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DiagonalMatrix;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/**
 * The force-time curve of unbroken holds by critical force: load is critical force plus impulse
 * divided by time. Fitted by least squares, each load weighted by the inverse of its variance, with
 * the covariance that follows from these weights; with so few holds the scatter can't be used.
 *
 * <p>The change in strength since the newest hold is common to all holds, so it scales the curve;
 * earlier changes add to each hold's own variance.
 *
 * @param critical critical force and impulse
 * @param variances of force and impulse and their covariance, in kg and s
 */
record CriticalHold(CriticalForce critical, RealMatrix variances) implements ForceTime {

  /**
   * The largest spread of a usable force and impulse; below it the ends of the interval fall with
   * time like the best estimate. The library's own choice.
   */
  private static final double LARGEST_SPREAD = 0.4;

  /** The kind of test is not known here, so the less repeatable one is taken. */
  private static final double NOISE = TestReliability.PEAK_FORCE.variance();

  private static final int STEPS = 100;
  private static final double SINGULAR = 1e-14;

  static Optional<CriticalHold> fit(Collection<Effort> efforts) {
    List<Effort> served =
        efforts.stream()
            .filter(e -> e.seconds() >= CriticalForce.SHORTEST_HOLD_SECONDS)
            .filter(e -> e.seconds() <= LONGEST_SECONDS)
            .sorted(Effort.ORDER)
            .toList();
    if (served.size() < 2
        || served.get(served.size() - 1).seconds()
            < CriticalForce.TIMES_APART * served.get(0).seconds()) {
      return Optional.empty();
    }
    // In units of the first load and the first time, so that the numbers are near 1.
    double kilograms = served.get(0).load().kilograms();
    double seconds = served.get(0).seconds();
    Optimum fitted = solve(served, kilograms, seconds);
    double force = fitted.getPoint().getEntry(0) * kilograms;
    double impulse = fitted.getPoint().getEntry(1) * kilograms * seconds;
    RealMatrix scale = new DiagonalMatrix(new double[] {kilograms, kilograms * seconds});
    ArrayRealVector drift =
        new ArrayRealVector(new double[] {newest(served) * force, newest(served) * impulse});
    RealMatrix variances =
        scale
            .multiply(fitted.getCovariances(SINGULAR))
            .multiply(scale)
            .add(drift.outerProduct(drift));
    if (!(Math.sqrt(variances.getEntry(0, 0)) <= LARGEST_SPREAD * force
        && Math.sqrt(variances.getEntry(1, 1)) <= LARGEST_SPREAD * impulse)) {
      return Optional.empty();
    }
    return Optional.of(
        new CriticalHold(
            new CriticalForce(
                CriticalForce.Definition.HOLDS_TO_FAILURE,
                new LoadEstimate(
                    Load.ofKilograms(force), Math.sqrt(variances.getEntry(0, 0)) / force),
                impulse,
                Math.sqrt(variances.getEntry(1, 1)) / impulse,
                true),
            variances));
  }

  /** Returns the drift since the newest hold. */
  private static double newest(List<Effort> efforts) {
    return efforts.stream().mapToDouble(Effort::drift).min().orElseThrow();
  }

  private static Optimum solve(List<Effort> efforts, double kilograms, double seconds) {
    int n = efforts.size();
    double[] loads = new double[n];
    double[] weights = new double[n];
    double shared = newest(efforts);
    RealMatrix design = MatrixUtils.createRealMatrix(n, 2);
    for (int i = 0; i < n; i++) {
      loads[i] = efforts.get(i).load().kilograms() / kilograms;
      double drift = efforts.get(i).drift();
      double variance = NOISE + drift * drift - shared * shared;
      weights[i] = 1 / (variance * loads[i] * loads[i]);
      design.setEntry(i, 0, 1);
      design.setEntry(i, 1, seconds / efforts.get(i).seconds());
    }
    return new LevenbergMarquardtOptimizer()
        .optimize(
            new LeastSquaresBuilder()
                .model(point -> new Pair<>(design.operate(point), design))
                .start(new double[] {0.5, 0.5})
                .target(new ArrayRealVector(loads))
                .weight(new DiagonalMatrix(weights))
                .maxEvaluations(STEPS)
                .maxIterations(STEPS)
                .build());
  }

  @Override
  public Form form() {
    return Form.CRITICAL_FORCE;
  }

  @Override
  public double shortestSeconds() {
    return CriticalForce.SHORTEST_HOLD_SECONDS;
  }

  @Override
  public double longestSeconds() {
    return LONGEST_SECONDS;
  }

  @Override
  public LoadEstimate load(double seconds) {
    if (!isValidFor(seconds)) {
      throw new IllegalArgumentException("not a time from 30 s to 10 min: " + seconds + " s");
    }
    return estimate(1 / seconds);
  }

  /** Returns the load as a function of the inverse of time. */
  private LoadEstimate estimate(double pace) {
    double best = critical.force().best().kilograms() + critical.impulseKgS() * pace;
    double variance =
        variances.getEntry(0, 0)
            + 2 * variances.getEntry(0, 1) * pace
            + variances.getEntry(1, 1) * pace * pace;
    return new LoadEstimate(Load.ofKilograms(best), Math.sqrt(Math.max(0, variance)) / best);
  }

  @Override
  public HoldTime time(Load load) {
    if (!(load.kilograms() > 0)) {
      throw new IllegalArgumentException("not a load to hold: " + load);
    }
    return new HoldTime(
        seconds(load, LoadEstimate::low),
        seconds(load, LoadEstimate::best),
        seconds(load, LoadEstimate::high));
  }

  private double seconds(Load load, Function<LoadEstimate, Load> end) {
    double pace =
        Rising.zero(
            p -> Math.log(end.apply(estimate(p)).kilograms() / load.kilograms()),
            1 / longestSeconds(),
            1 / shortestSeconds());
    return pace < 0 ? Double.POSITIVE_INFINITY : 1 / pace;
  }
}
