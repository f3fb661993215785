package gripwright.pose;

import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.HandPose;
import gripwright.hand.HandShape;
import gripwright.hand.PalmPosition;
import gripwright.quantity.Angle;
import gripwright.quantity.Length;
import gripwright.statics.TendonModel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;

/**
 * Finds how a loaded hand lies on an edge.
 *
 * <p>The pads lie on one straight edge; the knuckles lie on the hand's own arc. Where the palm is
 * (distance, height, roll about the forearm's axis, tilt in its own plane) fixes, per finger, the
 * triangle of knuckle, middle and end joint, and so the middle joint's flexion by the law of
 * cosines. The four numbers are found by weighted least squares between the ranges asked for and
 * the balance of moments at the knuckles under the load: a body that hangs gives way until flexors
 * and intrinsic muscles hold it. Bounds: the knuckle stays a tenth of a hand length off the wall
 * and no higher than 0.15 hand lengths above the end joints, roll and tilt stay within their
 * limits. The start is fixed, and a weak pull to it makes the answer unique, so the same question
 * has the same answer; only where no hand could do what is asked are four more fixed starts tried.
 *
 * <p>Approximations: a finger moves in one plane square to the edge; the metacarpals go on from the
 * forearm, which hangs straight down; the end joint lies a bone's length from the back of the edge
 * or, on a shallower edge, half a bone beyond its middle; the end bone may tip by up to 45 deg
 * about the pad, by 10 deg where the end joint is to be bent backwards; a straight finger that is
 * too short holds with up to 0.3 less of its pad. A limit of the hand's middle joints bounds the
 * pose; one of its end joints only how the end bone tips; one of its knuckles nothing, for their
 * flexion is right up to the bend of the wrist.
 *
 * <p>Method: Levenberg-Marquardt on the distances from end joint to knuckle, which are smooth where
 * a finger goes straight and the angle is not; bounds by a sine transform.
 */
public final class PoseSolver {

  private static final int EVALUATIONS = 500;
  private static final double TOLERANCE = 1e-11;

  /** A residual that no hand leaves which takes what is asked. */
  private static final double TENSE = 5;

  /** Starts in the sine transform's coordinates, for questions without a good answer. */
  private static final double[][] OTHER_STARTS = {
    {0.7, -0.7, 0, 0.3}, {-0.7, 0.7, 0, 0.3}, {0.7, 0.7, 0.5, 0}, {-0.7, -0.7, -0.5, 0}
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
   * @param tendons moment arms and the like, by which the flexors hold the knuckles
   * @throws IllegalArgumentException if there is no target, a finger comes twice, or the edge has
   *     no depth
   */
  public static HandPose solve(
      HandShape shape,
      Length edge,
      List<PoseTarget> targets,
      PalmLimits limits,
      TendonModel tendons) {
    Objects.requireNonNull(shape, "shape");
    Objects.requireNonNull(edge, "edge");
    Objects.requireNonNull(targets, "targets");
    Objects.requireNonNull(limits, "limits");
    Objects.requireNonNull(tendons, "tendons");
    if (targets.isEmpty()
        || targets.stream().map(PoseTarget::finger).distinct().count() != targets.size()) {
      throw new IllegalArgumentException("not one target a finger: " + targets);
    }
    if (!(edge.millimetres() > 0)) {
      throw new IllegalArgumentException("not an edge: " + edge);
    }
    PoseResiduals residuals =
        new PoseResiduals(shape, edge.millimetres(), targets, limits, tendons);
    residuals.starts().forEach(start -> descend(residuals, start));
    if (residuals.bestCost() > TENSE) {
      for (double[] start : OTHER_STARTS) {
        descend(residuals, start);
      }
    }
    return pose(shape, edge, residuals);
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

  private static HandPose pose(HandShape shape, Length edge, PoseResiduals residuals) {
    double[] palm = residuals.best();
    List<FingerPose> fingers = new ArrayList<>();
    Arrays.stream(residuals.wishes())
        .sorted(Comparator.comparing(wish -> wish.target().finger()))
        .forEach(wish -> fingers.add(finger(wish.target().finger(), wish.found(palm))));
    return new HandPose(
        shape,
        edge,
        new PalmPosition(
            palm[0],
            palm[1],
            Angle.ofDegrees(Math.toDegrees(palm[2])),
            Angle.ofDegrees(Math.toDegrees(palm[3]))),
        fingers,
        residuals.bestCost());
  }

  private static FingerPose finger(Finger finger, FingerWish.Found found) {
    double flexion = Math.toDegrees(found.flexion());
    double rise = Math.toDegrees(found.rise());
    double pitch = Math.toDegrees(found.pitch());
    return new FingerPose(
        finger,
        angle(90 - flexion + rise),
        angle(flexion),
        angle(pitch - rise),
        angle(rise),
        angle(pitch),
        found.distance(),
        Length.ofMillimetres(found.beyond()));
  }

  private static Angle angle(double degrees) {
    return Angle.ofDegrees(Math.max(-180, Math.min(180, degrees)));
  }
}
