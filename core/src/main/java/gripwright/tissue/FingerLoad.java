package gripwright.tissue;

import gripwright.hand.Finger;

/**
 * Estimated load on one finger's tissue. Forces in N; all of them go in proportion to the load
 * held.
 *
 * @param finger which
 * @param share of the grip's force, 0 to 1
 * @param fingertip force upwards on the pad
 * @param dipMoment moment that straightens the end joint, in N m, at the published means
 * @param pipMoment the same at the middle joint
 * @param mcpMoment the same at the knuckle; what balances it there is not resolved
 * @param fdp tension of flexor digitorum profundus
 * @param fds tension of flexor digitorum superficialis
 * @param a2 force on the second annular pulley
 * @param a4 force on the fourth annular pulley
 * @param a2Use force on A2 by its breaking load in cadavers; the estimate is rough
 * @param a4Use the same for A4
 */
public record FingerLoad(
    Finger finger,
    double share,
    Estimate fingertip,
    double dipMoment,
    double pipMoment,
    double mcpMoment,
    Estimate fdp,
    Estimate fds,
    Estimate a2,
    Estimate a4,
    Estimate a2Use,
    Estimate a4Use) {

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
    return pulley == Pulley.A2 ? a2Use : a4Use;
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
        a2Use.times(factor),
        a4Use.times(factor));
  }
}
