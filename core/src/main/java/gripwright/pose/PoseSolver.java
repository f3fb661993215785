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
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;

/**
 * Finds the pose of a loaded hand on an edge.
 *
 * <p>The pads are on one straight edge and the knuckles on the arc of this hand. The palm's
 * position (distance, height, roll about the forearm's axis, tilt in its own plane) fixes the
 * triangle of knuckle, middle joint and end joint of each finger, and with it the flexion of the
 * middle joint, by the law of cosines. The four unknowns are found by weighted least squares. The
 * residuals are deviations from the target ranges and the moments at the knuckles that flexors and
 * intrinsic muscles do not balance; a hanging body sags until they do. The knuckle stays at least a
 * tenth of a hand length from the wall and at most 0.15 hand lengths above the end joints; roll and
 * tilt stay within their limits. A fixed start and a small weight on the distance from it make the
 * result unique and repeatable. Four more fixed starts are tried only if no pose comes close to the
 * targets.
 *
 * <p>Approximations: each finger moves in one plane square to the edge. The metacarpals continue
 * the line of the forearm, which hangs straight down. The end joint is one end bone from the back
 * of the edge or, on a shallower edge, half an end bone beyond its middle. The end bone may tip by
 * up to 45 deg about the pad, or 10 deg if the end joint is to hyperextend. A straight finger that
 * is too short uses up to 0.3 less of its pad. Limits of the middle joints bound the pose and
 * limits of the end joints bound the tip of the end bone. Limits of the knuckles have no effect,
 * because the model does not know how far the wrist is bent.
 *
 * <p>Method: Levenberg-Marquardt on the distances from end joint to knuckle, which stay smooth
 * where a finger becomes straight, unlike the angles. A sine transform enforces the bounds.
 */
public final class PoseSolver {

  private static final int EVALUATIONS = 500;
  private static final double TOLERANCE = 1e-11;

  /** A higher cost means that the hand can't meet the targets from this start. */
  private static final double HIGH_COST = 5;

  /** Further starts, in coordinates of the sine transform, if the first ones find no good pose. */
  private static final double[][] OTHER_STARTS = {
    {0.7, -0.7, 0, 0.3}, {-0.7, 0.7, 0, 0.3}, {0.7, 0.7, 0.5, 0}, {-0.7, -0.7, -0.5, 0}
  };

  private PoseSolver() {}

  /**
   * Finds the pose closest to the targets. There always is one; the caller decides by {@link
   * FingerPose#pip()} and {@link FingerPose#beyondReach()} whether it is close enough.
   *
   * @param shape the hand
   * @param edge depth of the edge, positive
   * @param targets the targets of the one to four fingers that hold
   * @param limits how far the palm may roll
   * @param tendons moment arms and other parameters of the balance at the knuckles
   * @throws IllegalArgumentException if there is no target, a finger has two, or the edge has no
   *     depth
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
    if (residuals.bestCost() > HIGH_COST) {
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
      optimizer.optimize(residuals.problem(start, EVALUATIONS));
    } catch (MathIllegalStateException stalled) {
      // The search stalled or used up its evaluations; the best point so far is kept.
    }
  }

  private static HandPose pose(HandShape shape, Length edge, PoseResiduals residuals) {
    double[] palm = residuals.best();
    List<FingerPose> fingers = new ArrayList<>();
    Arrays.stream(residuals.fingers())
        .sorted(Comparator.comparing(finger -> finger.target().finger()))
        .forEach(
            finger -> fingers.add(finger(finger.target().finger(), finger.configuration(palm))));
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

  private static FingerPose finger(Finger finger, FingerResiduals.Configuration placed) {
    double flexion = Math.toDegrees(placed.flexion());
    double rise = Math.toDegrees(placed.rise());
    double pitch = Math.toDegrees(placed.pitch());
    return new FingerPose(
        finger,
        angle(90 - flexion + rise),
        angle(flexion),
        angle(pitch - rise),
        angle(rise),
        angle(pitch),
        placed.distance(),
        Length.ofMillimetres(placed.beyond()));
  }

  private static Angle angle(double degrees) {
    return Angle.ofDegrees(Math.max(-180, Math.min(180, degrees)));
  }
}
