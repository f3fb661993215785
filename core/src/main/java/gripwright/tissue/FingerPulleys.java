package gripwright.tissue;

import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.HandShape;
import gripwright.hand.Joint;
import gripwright.statics.Attitude;
import gripwright.statics.FingerStatics;

/** Tendons and pulleys of one finger in a pose, for 1 N upwards on its pad. */
final class FingerPulleys {

  private final FingerStatics statics;
  private final Attitude attitude;
  private final TissueModel model;

  FingerPulleys(HandShape shape, FingerPose pose, TissueModel model) {
    this.statics = new FingerStatics(shape, pose.finger(), model.tendons());
    this.attitude = Attitude.of(shape, pose, model.tendons());
    this.model = model;
  }

  Finger finger() {
    return statics.finger();
  }

  /** Forces in N for 1 N on the pad. */
  record Forces(double fdp, double fds, double a2, double a4) {}

  /** Returns the moment that straightens a joint, in mm for 1 N on the pad. */
  double moment(Joint joint) {
    return statics.moment(joint, attitude, model.horizontalPull());
  }

  Forces forces(Variation draw) {
    Attitude at = statics.drawn(attitude, draw.statics());
    FingerStatics.Tensions tensions = statics.tensions(at, model.horizontalPull(), draw.statics());
    Sheath sheath = model.sheath();
    double mcp = Math.PI / 2 - at.flexion() + at.rise();
    double dip = at.pitch() - at.rise();
    double turnA2 = sheath.turnOfA2(mcp, at.flexion()) + draw.turn() * at.flexion();
    double turnA4 = sheath.turnOfA4(at.flexion(), dip) + draw.turn() * at.flexion();
    double a4 = sheath.pulleyForce(tensions.fdp(), turnA4);
    double a2 = sheath.pulleyForce(tensions.fdp() * sheath.pass(turnA4) + tensions.fds(), turnA2);
    return new Forces(tensions.fdp(), tensions.fds(), a2, a4);
  }
}
