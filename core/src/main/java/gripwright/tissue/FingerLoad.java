package gripwright.tissue;

import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.HandShape;
import gripwright.hand.Joint;
import java.util.Arrays;

/**
 * Estimated load on one finger's tissue. Forces in N; all of them go in proportion to the load
 * held.
 *
 * @param finger which
 * @param share of the grip's force, 0 to 1; known for a finger that holds alone
 * @param fingertip force upwards on the pad
 * @param dipMoment moment that straightens the end joint, in N m, at the published means
 * @param pipMoment the same at the middle joint
 * @param mcpMoment the same at the knuckle; what balances it there is not resolved
 * @param fdp tension of flexor digitorum profundus
 * @param fds tension of flexor digitorum superficialis
 * @param a2 force on the second annular pulley
 * @param a4 force on the fourth annular pulley
 * @param a2Utilization force on A2 by its breaking load in cadavers; the estimate is rough
 * @param a4Utilization the same for A4
 */
public record FingerLoad(
    Finger finger,
    Estimate share,
    Estimate fingertip,
    double dipMoment,
    double pipMoment,
    double mcpMoment,
    Estimate fdp,
    Estimate fds,
    Estimate a2,
    Estimate a4,
    Estimate a2Utilization,
    Estimate a4Utilization) {

  private static final double MILLIMETRES_PER_METRE = 1000;

  /**
   * Estimates the load on one finger that holds alone in a pose.
   *
   * @param shape the hand
   * @param pose how the finger lies
   * @param newtons on its pad, 0 or more
   * @param model named parameters
   * @throws IllegalArgumentException if the load is negative or not finite
   */
  public static FingerLoad of(HandShape shape, FingerPose pose, double newtons, TissueModel model) {
    if (!(newtons >= 0 && Double.isFinite(newtons))) {
      throw new IllegalArgumentException("not a load on a finger: " + newtons + " N");
    }
    double[] shares = new double[Variation.DRAWS];
    Arrays.fill(shares, 1);
    FingerPulleys pulleys = new FingerPulleys(shape, pose, model);
    Variation[] draws = Variation.draws(model.stream());
    FingerDraws drawn = FingerDraws.of(new FingerPulleys[] {pulleys}, newtons, shares, draws);
    return of(pulleys, 1, newtons, shares, drawn, draws);
  }

  /**
   * Estimates the load on a finger with a share of a load on the hand.
   *
   * @param pulleys the finger as it was fitted
   * @param share its share
   * @param newtons on the whole hand
   * @param shares its share in each draw
   * @param drawn its forces in each draw
   */
  static FingerLoad of(
      FingerPulleys pulleys,
      double share,
      double newtons,
      double[] shares,
      FingerDraws drawn,
      Variation[] draws) {
    FingerPulleys.Forces means = pulleys.forces(Variation.NONE);
    double fingertip = share * newtons;
    double lever = fingertip / MILLIMETRES_PER_METRE;
    return new FingerLoad(
        pulleys.finger(),
        Estimate.of(share, shares),
        Estimate.of(fingertip, drawn.fingertip()),
        pulleys.moment(Joint.DIP) * lever,
        pulleys.moment(Joint.PIP) * lever,
        pulleys.moment(Joint.MCP) * lever,
        Estimate.of(means.fdp() * fingertip, drawn.fdp()),
        Estimate.of(means.fds() * fingertip, drawn.fds()),
        Estimate.of(means.a2() * fingertip, drawn.a2()),
        Estimate.of(means.a4() * fingertip, drawn.a4()),
        Estimate.of(
            means.a2() * fingertip / Pulley.A2.breakingNewtons(), drawn.use(Pulley.A2, draws)),
        Estimate.of(
            means.a4() * fingertip / Pulley.A4.breakingNewtons(), drawn.use(Pulley.A4, draws)));
  }

  /** Returns FDP by FDS tension, at the published means; infinite where FDS has nothing to do. */
  public double fdpToFds() {
    return fds.value() == 0 ? Double.POSITIVE_INFINITY : fdp.value() / fds.value();
  }

  /** Returns the estimated force on a pulley. */
  public Estimate force(Pulley pulley) {
    return pulley == Pulley.A2 ? a2 : a4;
  }

  /** Returns the estimated force on a pulley by its breaking load in cadavers. */
  public Estimate use(Pulley pulley) {
    return pulley == Pulley.A2 ? a2Utilization : a4Utilization;
  }

  /** Returns this finger's load multiplied by a number, 0 or more; the share stays. */
  public FingerLoad times(double factor) {
    return new FingerLoad(
        finger,
        share,
        fingertip.times(factor),
        dipMoment * factor,
        pipMoment * factor,
        mcpMoment * factor,
        fdp.times(factor),
        fds.times(factor),
        a2.times(factor),
        a4.times(factor),
        a2Utilization.times(factor),
        a4Utilization.times(factor));
  }
}
