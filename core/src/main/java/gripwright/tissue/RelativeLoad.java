package gripwright.tissue;

import gripwright.hand.Finger;

/**
 * What one finger's tissue carries, relative to {@link OwnHang}: 1 is what the same tendon or
 * pulley of the same finger carries there.
 *
 * @param finger which
 * @param fdp tension of flexor digitorum profundus
 * @param fds tension of flexor digitorum superficialis
 * @param a2 force on the second annular pulley
 * @param a4 force on the fourth annular pulley
 */
public record RelativeLoad(Finger finger, Estimate fdp, Estimate fds, Estimate a2, Estimate a4) {

  /** Returns what a pulley carries. */
  public Estimate of(Pulley pulley) {
    return pulley == Pulley.A2 ? a2 : a4;
  }
}
