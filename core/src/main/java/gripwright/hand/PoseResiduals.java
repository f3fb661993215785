package gripwright.hand;

import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * What a palm's position leaves to be wished for, with its derivatives. Everything is a share of
 * hand length or an angle, so a hand and an edge twice as large give the same numbers.
 */
final class PoseResiduals implements MultivariateJacobianFunction {

  private static final int UNKNOWNS = 3;

  /** Pull to the middle of a range, by half the range. */
  private static final double CENTRE_WEIGHT = 0.3;

  /** A range is missed by so much of a hand length: about 1 mm, 2 deg at a right angle. */
  private static final double REACH_SCALE = 0.005;

  /** The least half width of a range, as a share of hand length. */
  private static final double LEAST_HALF = 0.002;

  /** Miss of a range of knuckle or end joint, which is only a wish: 10 deg. */
  private static final double WISH_SCALE = Math.toRadians(10);

  /** How far the start stays off the bounds, by their distance. */
  private static final double START_MARGIN = 0.05;

  private static final double ROLL_SCALE = Math.toRadians(15);

  /**
   * Flexion of the knuckle in a hand at ease, in degrees: the hand's position of function (from
   * memory).
   */
  private static final double EASY_KNUCKLE = 45;

  /** Flexion of the middle joint where no finger has a range, in degrees. */
  private static final double EASY_FLEXION = 45;

  private static final double[] LEAST = {0.1, -0.15};
  private static final double[] GREATEST = {0.6, 0.5};

  private final double handLength;
  private final double[] least;
  private final double[] greatest;
  private final double easyDistance;
  private final double easyDepth;
  private final FingerWish[] wishes;
  private final int size;
  private double[] best;
  private double bestCost = Double.POSITIVE_INFINITY;

  PoseResiduals(HandShape shape, double edge, List<PoseTarget> targets, PalmLimits limits) {
    handLength = shape.length().millimetres();
    least =
        new double[] {LEAST[0] * handLength, LEAST[1] * handLength, Math.toRadians(limits.least())};
    greatest =
        new double[] {
          GREATEST[0] * handLength, GREATEST[1] * handLength, Math.toRadians(limits.greatest())
        };
    EdgeGeometry middle = new EdgeGeometry(shape, Finger.MIDDLE, edge);
    double flexion =
        targets.stream()
            .flatMap(target -> target.pip().stream())
            .mapToDouble(asked -> Math.max(0, asked.centre()))
            .average()
            .orElse(EASY_FLEXION);
    double reach = middle.distanceAt(flexion);
    double slope = Math.toRadians(90 - EASY_KNUCKLE - flexion) + middle.lift(reach);
    easyDistance = within(0, middle.endJoint() + reach * Math.cos(slope));
    easyDepth = within(1, reach * Math.sin(slope));
    wishes =
        targets.stream()
            .map(target -> new FingerWish(shape, edge, target, handLength))
            .toArray(FingerWish[]::new);
    size = wishes.length * FingerWish.ROWS + UNKNOWNS;
    best = position(start());
  }

  /** Keeps a start off the bounds, where the transform has no slope. */
  private double within(int unknown, double value) {
    double margin = START_MARGIN * (greatest[unknown] - least[unknown]);
    return Math.max(least[unknown] + margin, Math.min(greatest[unknown] - margin, value));
  }

  int size() {
    return size;
  }

  /** Returns the start in transformed coordinates: the palm at ease. */
  double[] start() {
    double[] easy = {easyDistance, easyDepth, 0};
    double[] start = new double[UNKNOWNS];
    for (int i = 0; i < UNKNOWNS; i++) {
      start[i] = Math.asin(2 * (easy[i] - least[i]) / (greatest[i] - least[i]) - 1);
    }
    return start;
  }

  /** Returns distance and depth in mm and roll in radians. */
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
    double[] values = new double[size];
    double[][] rows = new double[size][UNKNOWNS];
    int row = 0;
    for (FingerWish wish : wishes) {
      wish.fill(palm, values, rows, row);
      row += FingerWish.ROWS;
    }
    values[row] = (palm[0] - easyDistance) / handLength;
    rows[row][0] = 1 / handLength;
    values[row + 1] = (palm[1] - easyDepth) / handLength;
    rows[row + 1][1] = 1 / handLength;
    values[row + 2] = palm[2] / ROLL_SCALE;
    rows[row + 2][2] = 1 / ROLL_SCALE;
    remember(palm, values);
    for (double[] derivatives : rows) {
      for (int i = 0; i < UNKNOWNS; i++) {
        derivatives[i] *= (greatest[i] - least[i]) / 2 * Math.cos(transformed[i]);
      }
    }
    return new Pair<>(new ArrayRealVector(values, false), new Array2DRowRealMatrix(rows, false));
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

  /** The residuals of one finger: middle of its range, its ends, and the two wishes. */
  private static final class FingerWish {
    static final int ROWS = 4;

    /** What a reach is divided by at least. */
    private static final double LEAST_DISTANCE = 1e-9;

    private final EdgeGeometry geometry;
    private final PoseTarget target;
    private final double far;
    private final double near;
    private final double centre;
    private final double centreScale;
    private final double reachScale;

    FingerWish(HandShape shape, double edge, PoseTarget target, double handLength) {
      this.geometry = new EdgeGeometry(shape, target.finger(), edge);
      this.target = target;
      FlexionRange range = target.reach(shape.limits());
      far = geometry.distanceAt(range.low().degrees());
      near = geometry.distanceAt(range.high().degrees());
      // A limit bounds and does not pull: the middle is that of what is asked.
      FlexionRange asked = target.pip().orElse(range);
      centre = geometry.distanceAt(asked.centre());
      double span =
          geometry.distanceAt(asked.low().degrees()) - geometry.distanceAt(asked.high().degrees());
      double half = Math.max(LEAST_HALF * handLength, span / 2);
      centreScale = target.pip().isPresent() ? CENTRE_WEIGHT / half : 0;
      reachScale = 1 / (REACH_SCALE * handLength);
    }

    void fill(double[] palm, double[] values, double[][] rows, int row) {
      EdgeGeometry.Reach reach = geometry.reach(palm[0], palm[1], palm[2]);
      double distance = Math.max(LEAST_DISTANCE, reach.distance());
      double outByRoll = geometry.outByRoll(palm[2]);
      double[] byPalm = {
        reach.out() / distance, reach.down() / distance, reach.out() / distance * outByRoll
      };
      values[row] = centreScale * (reach.distance() - centre);
      set(rows[row], byPalm, centreScale);
      double miss = Math.max(0, reach.distance() - far) + Math.min(0, reach.distance() - near);
      values[row + 1] = reachScale * miss;
      set(rows[row + 1], byPalm, miss == 0 ? 0 : reachScale);
      wishes(reach, outByRoll, byPalm, values, rows, row + 2);
    }

    private void wishes(
        EdgeGeometry.Reach reach,
        double outByRoll,
        double[] byPalm,
        double[] values,
        double[][] rows,
        int row) {
      if (target.mcp().isEmpty() && target.dip().isEmpty()) {
        return;
      }
      double distance = Math.max(LEAST_DISTANCE, reach.distance());
      double square = distance * distance;
      double[] slopeByPalm = {
        -reach.down() / square, reach.out() / square, -reach.down() / square * outByRoll
      };
      double rise = geometry.lift(distance) - Math.atan2(reach.down(), reach.out());
      double lift = geometry.liftByDistance(distance);
      double flexion = geometry.flexionByDistance(distance);
      if (target.mcp().isPresent()) {
        double mcp = 90 + Math.toDegrees(rise - geometry.flexion(distance));
        double miss = Math.toRadians(target.mcp().get().miss(mcp));
        values[row] = miss / WISH_SCALE;
        for (int i = 0; i < UNKNOWNS && miss != 0; i++) {
          rows[row][i] = ((lift - flexion) * byPalm[i] - slopeByPalm[i]) / WISH_SCALE;
        }
      }
      if (target.dip().isPresent()) {
        double flat = -Math.toDegrees(rise);
        FlexionRange range = target.dip().get();
        double miss =
            Math.toRadians(
                Math.max(0, flat - range.high().degrees())
                    + Math.min(0, flat + PoseSolver.GREATEST_PITCH - range.low().degrees()));
        values[row + 1] = miss / WISH_SCALE;
        for (int i = 0; i < UNKNOWNS && miss != 0; i++) {
          rows[row + 1][i] = -(lift * byPalm[i] - slopeByPalm[i]) / WISH_SCALE;
        }
      }
    }

    private static void set(double[] row, double[] byPalm, double scale) {
      for (int i = 0; i < UNKNOWNS; i++) {
        row[i] = scale * byPalm[i];
      }
    }
  }
}
