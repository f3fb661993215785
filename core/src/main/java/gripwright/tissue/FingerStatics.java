package gripwright.tissue;

import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.HandShape;
import gripwright.hand.Joint;
import gripwright.hand.Segment;

/**
 * Equilibrium of one finger in its plane, for 1 N upwards on its pad.
 *
 * <p>Passive structures take a quarter of the end joint's moment once it is bent backwards by 10
 * deg and more (Vigouroux L et al. 2006, J Biomech 39(14):2583-2592, for the crimp), in proportion
 * below that. The contact lies a level distance from the end joint; on an end bone that is tipped
 * it is lower by that distance times the tangent of the tip's angle. FDP balances the rest at the
 * end joint; FDS balances what FDP leaves at the middle joint, and is 0 where FDP does more than
 * enough.
 */
final class FingerStatics {

  static final double PASSIVE_SHARE = 0.25;

  private static final double PASSIVE_FULL = Math.toRadians(10);

  /** Half the thickness of the end joint by the end bone's length; the library's own choice. */
  private static final double HALF_THICKNESS = 0.35;

  /** How near to the end joint and how near to the tip the contact may lie, by the end bone. */
  private static final double NEAREST = 0.2;

  private static final double FARTHEST = 0.9;

  private final Finger finger;
  private final double distal;
  private final double middle;
  private final double proximal;
  private final double contact;
  private final double pitch;
  private final double pip;
  private final double dip;
  private final double rise;
  private final TissueModel model;

  FingerStatics(HandShape shape, FingerPose pose, TissueModel model) {
    this.finger = pose.finger();
    this.distal = shape.bone(finger, Segment.DISTAL).millimetres();
    this.middle = shape.bone(finger, Segment.MIDDLE).millimetres();
    this.proximal = shape.bone(finger, Segment.PROXIMAL).millimetres();
    this.contact = pose.contact().millimetres();
    this.pitch = Math.toRadians(pose.pitch().degrees());
    this.pip = Math.toRadians(pose.pip().degrees());
    this.dip = Math.toRadians(pose.dip().degrees());
    this.rise = Math.toRadians(pose.rise().degrees());
    this.model = model;
  }

  Finger finger() {
    return finger;
  }

  /** Forces in N for 1 N on the pad. */
  record Forces(double fdp, double fds, double a2, double a4) {}

  /** Level and upright distances from the pad's contact to a joint, in mm. */
  private record Lever(double out, double up) {
    double moment(double pull) {
      return out + pull * up;
    }
  }

  private Lever lever(Joint joint, double contactOut, double riseNow, double pipNow) {
    double out = contactOut;
    double up = HALF_THICKNESS * distal + contactOut * Math.tan(pitch);
    if (joint != Joint.DIP) {
      out += middle * Math.cos(riseNow);
      up += middle * Math.sin(riseNow);
    }
    if (joint == Joint.MCP) {
      out += proximal * Math.cos(pipNow - riseNow);
      up -= proximal * Math.sin(pipNow - riseNow);
    }
    return new Lever(out, up);
  }

  /** Returns the moment that straightens a joint, in mm for 1 N on the pad. */
  double moment(Joint joint) {
    return lever(joint, contact, rise, pip).moment(model.horizontalPull());
  }

  Forces forces(Variation draw) {
    double contactOut =
        Math.max(
            NEAREST * distal,
            Math.min(FARTHEST * distal * Math.cos(pitch), contact + draw.contact() * distal));
    double riseNow = rise + draw.rise();
    double pipNow = Math.max(0, pip + draw.pipAngle());
    double dipNow = dip - draw.rise();
    double pull = model.horizontalPull() + draw.pull();
    double dipMoment = Math.max(0, lever(Joint.DIP, contactOut, riseNow, pipNow).moment(pull));
    double pipMoment = Math.max(0, lever(Joint.PIP, contactOut, riseNow, pipNow).moment(pull));
    MomentArms arms = model.arms();
    double passive = Math.max(0, Math.min(1, PASSIVE_SHARE + draw.passive()));
    double backwards = Math.max(0, Math.min(1, -dipNow / PASSIVE_FULL));
    double fdp =
        (1 - passive * backwards)
            * dipMoment
            / (arms.arm(finger, Joint.DIP, Tendon.FDP) * draw.dipArm());
    double left = pipMoment - fdp * arms.arm(finger, Joint.PIP, Tendon.FDP) * draw.pipFdpArm();
    double fds = Math.max(0, left / (arms.arm(finger, Joint.PIP, Tendon.FDS) * draw.pipFdsArm()));
    Sheath sheath = model.sheath();
    double turnA2 = share(sheath.a2OfPip(), draw) * pipNow;
    double turnA4 = share(sheath.a4OfPip(), draw) * pipNow + sheath.a4OfDip() * Math.max(0, dipNow);
    double a4 = sheath.pulleyForce(fdp, turnA4);
    double a2 = sheath.pulleyForce(fdp * sheath.pass(turnA4) + fds, turnA2);
    return new Forces(fdp, fds, a2, a4);
  }

  private static double share(double nominal, Variation draw) {
    return Math.max(0, Math.min(1, nominal + draw.turn()));
  }
}
