package gripwright.pose;

import gripwright.hand.EdgeGeometry;
import gripwright.hand.Finger;
import gripwright.hand.HandShape;
import gripwright.statics.TendonModel;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.AbstractOptimizationProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.AbstractEvaluation;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;

/**
 * The residuals of a palm position, with their derivatives. All are dimensionless, so scaling hand,
 * edge and moment arms together changes none of them.
 */
final class PoseResiduals {

  private static final int UNKNOWNS = 4;

  /**
   * An unbalanced knuckle moment that costs 1, in mm for 1 N: the moment arm of an intrinsic
   * muscle.
   */
  private static final double BALANCE_SCALE = 6;

  /** Weight of the distance from the start, per hand length; it only makes the solution unique. */
  private static final double START_WEIGHT = 0.05;

  /** Distance of the start from the bounds, as a share of their range. */
  private static final double START_MARGIN = 0.05;

  private static final double ROLL_SCALE = Math.toRadians(15);
  private static final double TILT_SCALE = Math.toRadians(15);

  /** Flexion of the knuckle at the start, in degrees; typical of a loaded hand. */
  private static final double START_KNUCKLE = 20;

  /** Flexion of the middle joint at the start if no finger has a range, in degrees. */
  private static final double START_FLEXION = 45;

  /** Factor by which the start moves towards the edge, at most {@link #START_STEPS} times. */
  private static final double START_STEP = 0.95;

  private static final int START_STEPS = 15;

  private static final double[] LEAST = {0.1, -0.15};
  private static final double[] GREATEST = {0.6, 0.5};

  private final double handLength;
  private final TendonModel tendons;
  private final double[] least;
  private final double[] greatest;
  private final List<double[]> starts;
  private final FingerResiduals[] fingers;
  private final int size;
  private double[] best;
  private double bestCost = Double.POSITIVE_INFINITY;

  PoseResiduals(
      HandShape shape,
      double edge,
      List<PoseTarget> targets,
      PalmLimits limits,
      TendonModel tendons) {
    this.tendons = tendons;
    handLength = shape.length().millimetres();
    double tilt = Math.toRadians(PalmLimits.TILT);
    least =
        new double[] {
          LEAST[0] * handLength, LEAST[1] * handLength, Math.toRadians(limits.least()), -tilt
        };
    greatest =
        new double[] {
          GREATEST[0] * handLength,
          GREATEST[1] * handLength,
          Math.toRadians(limits.greatest()),
          tilt
        };
    double load = targets.stream().mapToDouble(PoseTarget::share).sum();
    fingers =
        targets.stream()
            .map(target -> new FingerResiduals(shape, edge, target, target.share() / load, tendons))
            .toArray(FingerResiduals[]::new);
    starts = starts(shape, edge, targets);
    size = fingers.length * FingerResiduals.ROWS + 1 + UNKNOWNS;
    best = starts.get(0);
  }

  /**
   * Returns the starting palms. The first choice bends the middle finger as the grip requires. If
   * that leaves any finger straight, the search starts first from a nearer palm that bends all of
   * them, because solutions with and without straight fingers can both exist and a search rarely
   * crosses from one to the other.
   */
  private List<double[]> starts(HandShape shape, double edge, List<PoseTarget> targets) {
    EdgeGeometry middle = new EdgeGeometry(shape, Finger.MIDDLE, edge);
    double flexion =
        targets.stream()
            .flatMap(target -> target.pip().stream())
            .mapToDouble(target -> Math.max(0, target.centre()))
            .average()
            .orElse(START_FLEXION);
    double reach = middle.distanceAt(flexion);
    double slope = Math.toRadians(90 - START_KNUCKLE - flexion) + middle.lift(reach);
    double[] target = palm(middle, reach, slope);
    double[] bent = target;
    for (int step = 0; step < START_STEPS && !bends(bent); step++) {
      reach *= START_STEP;
      bent = palm(middle, reach, slope);
    }
    if (bends(target)) {
      return List.of(target);
    }
    return fingers.length == 1 ? List.of(bent) : List.of(bent, target);
  }

  private double[] palm(EdgeGeometry middle, double reach, double slope) {
    return new double[] {
      within(0, middle.endJoint() + reach * Math.cos(slope)),
      within(1, reach * Math.sin(slope)),
      0,
      0
    };
  }

  private boolean bends(double[] palm) {
    return Arrays.stream(fingers).allMatch(finger -> finger.bendsAt(palm[0], palm[1]));
  }

  /** Keeps a start off the bounds, where the derivative of the transform is zero. */
  private double within(int unknown, double value) {
    double margin = START_MARGIN * (greatest[unknown] - least[unknown]);
    return Math.max(least[unknown] + margin, Math.min(greatest[unknown] - margin, value));
  }

  FingerResiduals[] fingers() {
    return fingers.clone();
  }

  /** Returns the one or two starts in transformed coordinates: palms square to the edge. */
  List<double[]> starts() {
    return starts.stream().map(this::transformed).toList();
  }

  private double[] transformed(double[] palm) {
    double[] start = new double[UNKNOWNS];
    for (int i = 0; i < UNKNOWNS; i++) {
      start[i] = Math.asin(2 * (palm[i] - least[i]) / (greatest[i] - least[i]) - 1);
    }
    return start;
  }

  /** Returns the palm's distance and depth in mm, and its roll and tilt in radians. */
  double[] position(double[] transformed) {
    double[] position = new double[UNKNOWNS];
    for (int i = 0; i < UNKNOWNS; i++) {
      position[i] = least[i] + (greatest[i] - least[i]) * (1 + Math.sin(transformed[i])) / 2;
    }
    return position;
  }

  double[] best() {
    return best.clone();
  }

  double bestCost() {
    return bestCost;
  }

  /**
   * Returns the least-squares problem of a start. Unlike one from the optimiser's builder, it
   * copies neither points nor matrices.
   *
   * @param start in transformed coordinates
   * @param evaluations how many are allowed
   */
  LeastSquaresProblem problem(double[] start, int evaluations) {
    return new Problem(start, evaluations);
  }

  private final class Problem extends AbstractOptimizationProblem<LeastSquaresProblem.Evaluation>
      implements LeastSquaresProblem {
    private final double[] start;

    Problem(double[] start, int evaluations) {
      super(evaluations, evaluations, null);
      this.start = start;
    }

    @Override
    public RealVector getStart() {
      return new ArrayRealVector(start);
    }

    @Override
    public int getObservationSize() {
      return size;
    }

    @Override
    public int getParameterSize() {
      return UNKNOWNS;
    }

    @Override
    public Evaluation evaluate(RealVector point) {
      return PoseResiduals.this.evaluate(point.toArray());
    }
  }

  /** The residuals at a point, negative as the optimiser wants them. */
  private static final class At extends AbstractEvaluation {
    private final RealVector point;
    private final RealVector residuals;
    private final RealMatrix jacobian;

    At(double[] point, double[] residuals, double[][] derivatives) {
      super(residuals.length);
      this.point = new ArrayRealVector(point, false);
      this.residuals = new ArrayRealVector(residuals, false);
      this.jacobian = new Jacobian(derivatives);
    }

    @Override
    public RealMatrix getJacobian() {
      return jacobian;
    }

    @Override
    public RealVector getResiduals() {
      return residuals;
    }

    @Override
    public RealVector getPoint() {
      return point;
    }
  }

  /** Returns the residuals at a point in transformed coordinates, and remembers the best point. */
  LeastSquaresProblem.Evaluation evaluate(double[] transformed) {
    double[] palm = position(transformed);
    FingerResiduals.Rows rows = new FingerResiduals.Rows(size, UNKNOWNS);
    double moment = -tendons.intrinsicMillimetres();
    double[] momentBy = new double[UNKNOWNS];
    for (FingerResiduals finger : fingers) {
      moment += finger.fill(palm, rows, momentBy);
    }
    double balance = 1 / (BALANCE_SCALE * tendons.size());
    rows.add(balance * moment, momentBy, balance);
    double start = START_WEIGHT / handLength;
    rows.add(start * (palm[0] - starts.get(0)[0]), new double[] {1, 0, 0, 0}, start);
    rows.add(start * (palm[1] - starts.get(0)[1]), new double[] {0, 1, 0, 0}, start);
    rows.add(palm[2] / ROLL_SCALE, new double[] {0, 0, 1, 0}, 1 / ROLL_SCALE);
    rows.add(palm[3] / TILT_SCALE, new double[] {0, 0, 0, 1}, 1 / TILT_SCALE);
    remember(palm, rows.values());
    for (double[] derivatives : rows.derivatives()) {
      for (int i = 0; i < UNKNOWNS; i++) {
        derivatives[i] *= (greatest[i] - least[i]) / 2 * Math.cos(transformed[i]);
      }
    }
    double[] residuals = rows.values();
    for (int i = 0; i < residuals.length; i++) {
      residuals[i] = 0 - residuals[i];
    }
    return new At(transformed, residuals, rows.derivatives());
  }

  /**
   * A Jacobian of which the optimiser gets the negative in one step, with the numbers themselves
   * instead of a copy.
   */
  private static final class Jacobian extends Array2DRowRealMatrix {
    private static final long serialVersionUID = 1;

    Jacobian(double[][] rows) {
      super(rows, false);
    }

    @Override
    public RealMatrix scalarMultiply(double factor) {
      double[][] rows = getDataRef();
      double[][] product = new double[rows.length][UNKNOWNS];
      for (int i = 0; i < rows.length; i++) {
        for (int j = 0; j < UNKNOWNS; j++) {
          product[i][j] = rows[i][j] * factor;
        }
      }
      return new Jacobian(product);
    }

    @Override
    public double[][] getData() {
      return getDataRef();
    }
  }

  private void remember(double[] palm, double[] values) {
    double cost = 0;
    for (double value : values) {
      cost += value * value / 2;
    }
    if (cost < bestCost) {
      bestCost = cost;
      best = palm;
    }
  }
}
