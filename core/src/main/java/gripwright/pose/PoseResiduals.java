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
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * What a palm's position leaves to be wished for, with its derivatives. Everything is a share of
 * hand length, an angle, or a moment by moment arms: a hand, an edge and arms twice as large give
 * the same numbers.
 */
final class PoseResiduals implements MultivariateJacobianFunction {

  private static final int UNKNOWNS = 4;

  /** What the flexors of a hand may leave at its knuckles, in mm for 1 N: an intrinsic's arm. */
  private static final double BALANCE_SCALE = 6;

  /** Weak pull to the start, by hand length; it only keeps the answer unique. */
  private static final double START_WEIGHT = 0.05;

  /** How far the start stays off the bounds, by their distance. */
  private static final double START_MARGIN = 0.05;

  private static final double ROLL_SCALE = Math.toRadians(15);
  private static final double TILT_SCALE = Math.toRadians(15);

  /** Flexion of the knuckle at the start, in degrees: about that of a hand under load. */
  private static final double START_KNUCKLE = 20;

  /** Flexion of the middle joint where no finger has a range, in degrees. */
  private static final double START_FLEXION = 45;

  /** The start comes nearer to the edge by so much, so often at most. */
  private static final double START_STEP = 0.95;

  private static final int START_STEPS = 15;

  private static final double[] LEAST = {0.1, -0.15};
  private static final double[] GREATEST = {0.6, 0.5};

  private final double handLength;
  private final TendonModel tendons;
  private final double[] least;
  private final double[] greatest;
  private final List<double[]> starts;
  private final FingerWish[] wishes;
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
    wishes =
        targets.stream()
            .map(target -> new FingerWish(shape, edge, target, target.share() / load, tendons))
            .toArray(FingerWish[]::new);
    starts = starts(shape, edge, targets);
    size = wishes.length * FingerWish.ROWS + 1 + UNKNOWNS;
    best = starts.get(0);
  }

  /**
   * Finds the starts: a palm with the middle finger bent as the grip asks; if that leaves a finger
   * straight, first the palm so much nearer that none is. Where some fingers are straight and
   * others not there may be two answers, and a search seldom comes from one to the other.
   */
  private List<double[]> starts(HandShape shape, double edge, List<PoseTarget> targets) {
    EdgeGeometry middle = new EdgeGeometry(shape, Finger.MIDDLE, edge);
    double flexion =
        targets.stream()
            .flatMap(target -> target.pip().stream())
            .mapToDouble(asked -> Math.max(0, asked.centre()))
            .average()
            .orElse(START_FLEXION);
    double reach = middle.distanceAt(flexion);
    double slope = Math.toRadians(90 - START_KNUCKLE - flexion) + middle.lift(reach);
    double[] asked = palm(middle, reach, slope);
    double[] bent = asked;
    for (int step = 0; step < START_STEPS && !bends(bent); step++) {
      reach *= START_STEP;
      bent = palm(middle, reach, slope);
    }
    if (bends(asked)) {
      return List.of(asked);
    }
    return wishes.length == 1 ? List.of(bent) : List.of(bent, asked);
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
    return Arrays.stream(wishes).allMatch(wish -> wish.bendsAt(palm[0], palm[1]));
  }

  /** Keeps a start off the bounds, where the transform has no slope. */
  private double within(int unknown, double value) {
    double margin = START_MARGIN * (greatest[unknown] - least[unknown]);
    return Math.max(least[unknown] + margin, Math.min(greatest[unknown] - margin, value));
  }

  int size() {
    return size;
  }

  FingerWish[] wishes() {
    return wishes.clone();
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

  /** Returns distance and depth in mm, roll and tilt in radians. */
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

  @Override
  public Pair<RealVector, RealMatrix> value(RealVector point) {
    double[] transformed = point.toArray();
    double[] palm = position(transformed);
    FingerWish.Rows rows = new FingerWish.Rows(size, UNKNOWNS);
    double left = -tendons.intrinsicMillimetres();
    double[] leftBy = new double[UNKNOWNS];
    for (FingerWish wish : wishes) {
      left += wish.fill(palm, rows, leftBy);
    }
    double balance = 1 / (BALANCE_SCALE * tendons.size());
    rows.add(balance * left, leftBy, balance);
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
    return new Pair<>(
        new ArrayRealVector(rows.values(), false),
        new Array2DRowRealMatrix(rows.derivatives(), false));
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
