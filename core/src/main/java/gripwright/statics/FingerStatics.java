package gripwright.statics;

import gripwright.hand.Finger;
import gripwright.hand.HandShape;
import gripwright.hand.Joint;
import gripwright.hand.Segment;

/**
 * Balance of one finger in its plane, for 1 N upwards on its pad. Immutable.
 *
 * <p>FDP balances the end joint, except for the part of the moment that passive structures carry: a
 * quarter from 10 deg of hyperextension on (Vigouroux L et al. 2006, J Biomech 39(14):2583-2592,
 * for the crimp), and proportionally less below that, which is the library's own choice. FDS
 * balances the rest of the moment at the middle joint, and is 0 if FDP already exceeds it. The rest
 * of the moment at the knuckle needs the intrinsic muscles; a loaded hand yields until they can
 * balance it. Extensors are not modelled.
 */
public final class FingerStatics {

  /** Share of the end joint's moment that passive structures carry in a crimp. */
  static final double PASSIVE_SHARE = 0.25;

  private static final double PASSIVE_FULL = Math.toRadians(10);

  /** Half the thickness of the end joint, per length of the end bone; the library's own choice. */
  private static final double HALF_THICKNESS = 0.35;

  /** Limits of the contact from the end joint, per length of the end bone. */
  private static final double NEAREST = 0.2;

  private static final double FARTHEST = 0.9;

  private final Finger finger;
  private final TendonModel model;
  private final double proximal;
  private final double middle;
  private final double distal;
  private final double dipFdp;
  private final double pipFdp;
  private final double pipFds;
  private final double mcpFdp;
  private final double mcpFds;

  /** Creates the statics of a finger of a hand. */
  public FingerStatics(HandShape shape, Finger finger, TendonModel model) {
    this.finger = finger;
    this.model = model;
    proximal = shape.bone(finger, Segment.PROXIMAL).millimetres();
    middle = shape.bone(finger, Segment.MIDDLE).millimetres();
    distal = shape.bone(finger, Segment.DISTAL).millimetres();
    dipFdp = model.arm(finger, Joint.DIP, Tendon.FDP);
    pipFdp = model.arm(finger, Joint.PIP, Tendon.FDP);
    pipFds = model.arm(finger, Joint.PIP, Tendon.FDS);
    mcpFdp = model.arm(finger, Joint.MCP, Tendon.FDP);
    mcpFds = model.arm(finger, Joint.MCP, Tendon.FDS);
  }

  /** The finger. */
  public Finger finger() {
    return finger;
  }

  /**
   * Tensions of the two flexors, in N for 1 N on the pad.
   *
   * @param fdp of flexor digitorum profundus, 0 or more
   * @param fds of flexor digitorum superficialis, 0 or more
   */
  public record Tensions(double fdp, double fds) {}

  /**
   * The moment at the knuckle that the flexors do not balance, with its derivatives. It is positive
   * if the load extends the knuckle.
   *
   * @param moment in mm for 1 N on the pad
   * @param byFlexion derivative by the middle joint's flexion, in mm per radian
   * @param byRise derivative by the middle bone's slope with a fixed end bone, in mm per radian
   * @param byPitch derivative by the end bone's slope, in mm per radian
   * @param byContact derivative by the place of the contact
   */
  public record Knuckle(
      double moment, double byFlexion, double byRise, double byPitch, double byContact) {}

  /**
   * Returns the distance of a pad's contact from the end joint, in mm.
   *
   * @param distal length of the end bone in mm
   * @param lost length of the pad beyond the lip, in mm; it moves the contact by half of it
   */
  public static double contact(double distal, double lost, TendonModel model) {
    return Math.min(FARTHEST * distal, model.contact() * distal + lost / 2);
  }

  /** Horizontal and vertical distances from the pad's contact to a joint, in mm. */
  private record Lever(double out, double up) {
    double moment(double pull) {
      return out + pull * up;
    }
  }

  private Lever lever(Joint joint, Attitude at) {
    double out = at.contact() * Math.cos(at.pitch());
    double up = HALF_THICKNESS * distal + at.contact() * Math.sin(at.pitch());
    if (joint != Joint.DIP) {
      out += middle * Math.cos(at.rise());
      up += middle * Math.sin(at.rise());
    }
    if (joint == Joint.MCP) {
      out += proximal * Math.cos(at.flexion() - at.rise());
      up -= proximal * Math.sin(at.flexion() - at.rise());
    }
    return new Lever(out, up);
  }

  /**
   * Returns the moment that extends a joint, in mm for 1 N on the pad.
   *
   * @param pull horizontal force of the edge towards the wall, per upward force; -1 to 1
   */
  public double moment(Joint joint, Attitude at, double pull) {
    return lever(joint, at).moment(pull);
  }

  /** Returns the attitude changed by the deviations of a draw. */
  public Attitude drawn(Attitude at, StaticsDraw draw) {
    double contact = at.contact() + draw.contact() * distal;
    return new Attitude(
        Math.max(0, at.flexion() + draw.pip()),
        at.rise() + draw.rise(),
        at.pitch(),
        Math.max(NEAREST * distal, Math.min(FARTHEST * distal, contact)));
  }

  /**
   * Returns the tensions for the mean parameters.
   *
   * @param pull horizontal force of the edge towards the wall, per upward force; -1 to 1
   */
  public Tensions tensions(Attitude at, double pull) {
    return tensions(at, pull, StaticsDraw.NONE);
  }

  /** Returns the tensions for the parameters of a draw; the attitude must be {@link #drawn} too. */
  public Tensions tensions(Attitude at, double pull, StaticsDraw draw) {
    double drawnPull = pull + draw.pull();
    double dipMoment = Math.max(0, lever(Joint.DIP, at).moment(drawnPull));
    double pipMoment = Math.max(0, lever(Joint.PIP, at).moment(drawnPull));
    double passive = Math.max(0, Math.min(1, PASSIVE_SHARE + draw.passive()));
    double fdp = (1 - passive * backwards(at)) * dipMoment / (dipFdp * draw.dipArm());
    double left = pipMoment - fdp * pipFdp * draw.pipFdpArm();
    return new Tensions(fdp, Math.max(0, left / (pipFds * draw.pipFdsArm())));
  }

  /** Hyperextension of the end joint, from 0 to 1 at 10 deg. */
  private static double backwards(Attitude at) {
    return Math.max(0, Math.min(1, -at.dip() / PASSIVE_FULL));
  }

  /** Returns the unbalanced moment at the knuckle in a static hang. */
  public Knuckle knuckle(Attitude at) {
    double cosine = Math.cos(at.pitch());
    double sine = Math.sin(at.pitch());
    double back = backwards(at);
    double taken = 1 - PASSIVE_SHARE * back;
    double takenByDip = back > 0 && back < 1 ? PASSIVE_SHARE / PASSIVE_FULL : 0;
    double dip = at.contact() * cosine;
    double fdp = taken * dip / dipFdp;
    double fdpByContact = taken * cosine / dipFdp;
    double fdpByPitch = (takenByDip * dip - taken * at.contact() * sine) / dipFdp;
    double fdpByRise = -takenByDip * dip / dipFdp;
    double fds = (dip + middle * Math.cos(at.rise()) - fdp * pipFdp) / pipFds;
    double pulls = fds > 0 ? 1 / pipFds : 0;
    double fdsByContact = pulls * (cosine - pipFdp * fdpByContact);
    double fdsByPitch = pulls * (-at.contact() * sine - pipFdp * fdpByPitch);
    double fdsByRise = pulls * (-middle * Math.sin(at.rise()) - pipFdp * fdpByRise);
    double fall = at.flexion() - at.rise();
    double turn = proximal * Math.sin(fall);
    return new Knuckle(
        lever(Joint.MCP, at).out() - mcpFdp * fdp - mcpFds * Math.max(0, fds),
        -turn,
        turn - middle * Math.sin(at.rise()) - mcpFdp * fdpByRise - mcpFds * fdsByRise,
        -at.contact() * sine - mcpFdp * fdpByPitch - mcpFds * fdsByPitch,
        cosine - mcpFdp * fdpByContact - mcpFds * fdsByContact);
  }

  /** The parameters. */
  public TendonModel model() {
    return model;
  }
}
