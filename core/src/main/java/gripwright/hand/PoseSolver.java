package gripwright.hand;

import gripwright.quantity.Angle;
import gripwright.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;

/**
 * Finds how a hand lies on an edge.
 *
 * <p>The pads lie on one straight edge; the knuckles lie on the hand's own arc. Where the palm is
 * (distance, height, roll about the forearm's axis) fixes, per finger, the triangle of knuckle,
 * middle and end joint, and so the middle joint's flexion by the law of cosines. The three numbers
 * are found by weighted least squares between the ranges asked for, with bounds: the knuckle stays
 * a tenth of a hand length off the wall and no higher than 0.15 hand lengths above the end joints,
 * the roll stays within its limits. A weak pull to a palm at ease, with the knuckles bent by 45
 * deg, makes the answer unique. The start is that palm, so the same question has the same answer;
 * only where no hand could do what is asked are four more fixed starts tried.
 *
 * <p>Approximations: a finger moves in one plane square to the edge; the metacarpals go on from the
 * forearm, which hangs straight down; the end joint lies a bone's length from the back of the edge
 * or, on a shallower edge, half a bone beyond its middle; and the end bone may tip by up to 45 deg
 * about the pad. The wrist does not tilt towards the little finger. A limit of the hand's middle
 * joints bounds the pose; one of its end joints only how the end bone tips; one of its knuckles
 * nothing, for their flexion is right up to the bend of the wrist.
 *
 * <p>Method: Levenberg-Marquardt on the distances from end joint to knuckle, which are smooth where
 * a finger goes straight and the angle is not; bounds by a sine transform.
 */
public final class PoseSolver {

  /** The farthest that the end bone tips, its tip down, in degrees; the library's own choice. */
  public static final double GREATEST_PITCH = 45;

  private static final FlexionRange STRAIGHT = FlexionRange.degrees(0, 0);
  private static final int EVALUATIONS = 500;
  private static final double TOLERANCE = 1e-13;

  /** A residual that no hand leaves which takes what is asked. */
  private static final double TENSE = 5;

  /** Starts in the sine transform's coordinates, for questions without a good answer. */
  private static final double[][] OTHER_STARTS = {
    {0.7, -0.7, 0}, {-0.7, 0.7, 0}, {0.7, 0.7, 0.5}, {-0.7, -0.7, -0.5}
  };

  private PoseSolver() {}

  /**
   * Finds the pose that comes nearest to what is asked. There is always one: whether it is near
   * enough is for the caller to judge, by {@link FingerPose#pip()} and {@link
   * FingerPose#beyondReach()}.
   *
   * @param shape the hand
   * @param edge depth of the edge, above 0
   * @param targets what is asked of each finger that holds, one to four
   * @param limits how far the palm may roll
   * @throws IllegalArgumentException if there is no target, a finger comes twice, or the edge has
   *     no depth
   */
  public static HandPose solve(
      HandShape shape, Length edge, List<PoseTarget> targets, PalmLimits limits) {
    Objects.requireNonNull(shape, "shape");
    Objects.requireNonNull(edge, "edge");
    Objects.requireNonNull(targets, "targets");
    Objects.requireNonNull(limits, "limits");
    if (targets.isEmpty()
        || targets.stream().map(PoseTarget::finger).distinct().count() != targets.size()) {
      throw new IllegalArgumentException("not one target a finger: " + targets);
    }
    if (!(edge.millimetres() > 0)) {
      throw new IllegalArgumentException("not an edge: " + edge);
    }
    PoseResiduals residuals = new PoseResiduals(shape, edge.millimetres(), targets, limits);
    descend(residuals, residuals.start());
    if (residuals.bestCost() > TENSE) {
      for (double[] start : OTHER_STARTS) {
        descend(residuals, start);
      }
    }
    return pose(shape, edge, targets, residuals);
  }

  private static void descend(PoseResiduals residuals, double[] start) {
    LevenbergMarquardtOptimizer optimizer =
        new LevenbergMarquardtOptimizer()
            .withCostRelativeTolerance(TOLERANCE)
            .withParameterRelativeTolerance(TOLERANCE)
            .withOrthoTolerance(TOLERANCE);
    try {
      optimizer.optimize(
          new LeastSquaresBuilder()
              .model(residuals)
              .start(start)
              .target(new double[residuals.size()])
              .maxEvaluations(EVALUATIONS)
              .maxIterations(EVALUATIONS)
              .build());
    } catch (MathIllegalStateException stalled) {
      // No step helps any more, or too many were tried: the best point stands.
    }
  }

  private static HandPose pose(
      HandShape shape, Length edge, List<PoseTarget> targets, PoseResiduals residuals) {
    double[] palm = residuals.best();
    List<FingerPose> fingers = new ArrayList<>();
    for (Finger finger : Finger.values()) {
      for (PoseTarget target : targets) {
        if (target.finger() == finger) {
          fingers.add(finger(shape, edge.millimetres(), target, palm));
        }
      }
    }
    return new HandPose(
        shape,
        edge,
        new PalmPosition(palm[0], palm[1], Angle.ofDegrees(Math.toDegrees(palm[2]))),
        fingers,
        residuals.bestCost());
  }

  private static FingerPose finger(HandShape shape, double edge, PoseTarget target, double[] palm) {
    EdgeGeometry geometry = new EdgeGeometry(shape, target.finger(), edge);
    EdgeGeometry.Reach reach = geometry.reach(palm[0], palm[1], palm[2]);
    double flexion = Math.toDegrees(geometry.flexion(reach.distance()));
    double slope = Math.toDegrees(Math.atan2(reach.down(), reach.out()));
    double rise = Math.toDegrees(geometry.lift(reach.distance())) - slope;
    FlexionRange wish = target.dip().orElse(STRAIGHT);
    double wished = shape.limits().narrow(target.finger(), Joint.DIP, wish).nearest(0);
    double pitch = Math.max(0, Math.min(GREATEST_PITCH, wished + rise));
    return new FingerPose(
        target.finger(),
        angle(90 - flexion + rise),
        angle(flexion),
        angle(pitch - rise),
        angle(rise),
        angle(pitch),
        reach.distance(),
        Length.ofMillimetres(Math.max(0, reach.distance() - geometry.straight())),
        Length.ofMillimetres(geometry.contact()));
  }

  private static Angle angle(double degrees) {
    return Angle.ofDegrees(Math.max(-180, Math.min(180, degrees)));
  }
}
