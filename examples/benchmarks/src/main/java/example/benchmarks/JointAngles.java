package example.benchmarks;

import gripwright.grip.Band;
import gripwright.grip.FingerShares;
import gripwright.grip.Grip;
import gripwright.hand.EdgeGeometry;
import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.FlexionRange;
import gripwright.hand.HandPose;
import gripwright.hand.HandShape;
import gripwright.hand.Joint;
import gripwright.hand.JointNorms;
import gripwright.hand.Segment;
import gripwright.pose.PalmLimits;
import gripwright.pose.PoseSolver;
import gripwright.pose.PoseTarget;
import gripwright.statics.Attitude;
import gripwright.statics.FingerStatics;
import gripwright.statics.TendonModel;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The pose of a hand on an edge in its simplest formulation: the unknowns are the palm's distance,
 * depth, roll and tilt and three angles for each finger; end joints that miss their place add to
 * the cost.
 *
 * <p>If every end joint is in its place, the cost equals the residual of {@link PoseSolver} but for
 * its weak pull to a start and the softness of a straight finger: the same targets with the same
 * weights. So it measures both solutions.
 */
final class JointAngles {

  private static final int PALM = 4;
  private static final int PER_FINGER = 3;

  /** An end joint may be off by so much of a hand's length for one unit of residual: 0.4 mm. */
  private static final double PLACE_SCALE = 0.002;

  private static final double REACH_SCALE = 0.005;
  private static final double PAD_SCALE = 0.05;
  private static final double LEAST_HALF = 0.002;
  private static final double CENTRE_WEIGHT = 1;
  private static final double BALANCE_SCALE = 6;
  private static final double WISH_DEGREES = 10;
  private static final double ROLL_DEGREES = 15;
  private static final double TILT_DEGREES = 15;
  private static final double START_KNUCKLE = 20;
  private static final double START_FLEXION = 45;
  private static final double START_MARGIN = 0.05;

  /** No grip of the catalogue asks for a mean flexion at which shares are others. */
  private static final double OPEN_HAND = 0;

  private final double length;
  private final List<Chain> chains;
  private final double[] shares;
  private final double startDistance;
  private final double startDepth;

  /** A finger: bones and places in mm, and the angles that the grip requires. */
  private record Chain(
      double proximal,
      double middle,
      double endJoint,
      Optional<FlexionRange> pip,
      Optional<FlexionRange> mcp,
      Optional<FlexionRange> dip,
      FingerStatics statics,
      EdgeGeometry geometry) {

    static Chain of(HandShape shape, double edge, Grip grip, Finger finger) {
      double distal = shape.bone(finger, Segment.DISTAL).millimetres();
      return new Chain(
          shape.bone(finger, Segment.PROXIMAL).millimetres(),
          shape.bone(finger, Segment.MIDDLE).millimetres(),
          distal <= edge ? distal : (edge + distal) / 2,
          range(grip.band(finger, Joint.PIP)),
          range(grip.band(finger, Joint.MCP)),
          range(grip.band(finger, Joint.DIP)),
          new FingerStatics(shape, finger, TendonModel.STANDARD),
          new EdgeGeometry(shape, finger, edge));
    }

    private static Optional<FlexionRange> range(Optional<Band> band) {
      return band.map(b -> new FlexionRange(b.low(), b.high()));
    }

    FlexionRange reach() {
      return pip.orElse(JointNorms.AAOS.of(Joint.PIP));
    }

    double distanceAt(double flexion) {
      double cosine = Math.cos(Math.toRadians(Math.max(0, flexion)));
      return Math.sqrt(proximal * proximal + middle * middle + 2 * proximal * middle * cosine);
    }
  }

  JointAngles(HandShape shape, double edge, Grip grip) {
    length = shape.length().millimetres();
    chains = grip.fingers().fingers().stream().map(f -> Chain.of(shape, edge, grip, f)).toList();
    shares =
        FingerShares.of(grip.fingers(), OPEN_HAND).values().stream()
            .mapToDouble(share -> share)
            .toArray();
    Chain middle = Chain.of(shape, edge, grip, Finger.MIDDLE);
    double flexion =
        chains.stream()
            .filter(chain -> chain.pip().isPresent())
            .mapToDouble(chain -> Math.max(0, chain.reach().centre()))
            .average()
            .orElse(START_FLEXION);
    double reach = middle.distanceAt(flexion);
    double lift =
        Math.acos(
            (middle.middle() * middle.middle()
                    + reach * reach
                    - middle.proximal() * middle.proximal())
                / (2 * middle.middle() * reach));
    double slope = Math.toRadians(90 - START_KNUCKLE - flexion) + lift;
    startDistance = within(0, middle.endJoint() + reach * Math.cos(slope));
    startDepth = within(1, reach * Math.sin(slope));
  }

  private double within(int unknown, double value) {
    double least = lower()[unknown];
    double greatest = upper()[unknown];
    double margin = START_MARGIN * (greatest - least);
    return Math.max(least + margin, Math.min(greatest - margin, value));
  }

  int unknowns() {
    return PALM + PER_FINGER * chains.size();
  }

  /** Returns the least value of each unknown: mm for the palm's place, then degrees. */
  double[] lower() {
    double[] lower = new double[unknowns()];
    lower[0] = 0.1 * length;
    lower[1] = -0.15 * length;
    lower[2] = PalmLimits.USUAL.least();
    lower[3] = -PalmLimits.TILT;
    for (int i = PALM; i < lower.length; i += PER_FINGER) {
      lower[i] = -90;
      lower[i + 1] = 0;
      lower[i + 2] = -90;
    }
    return lower;
  }

  /** Returns the greatest value of each unknown. */
  double[] upper() {
    double[] upper = new double[unknowns()];
    Arrays.fill(upper, 150);
    upper[0] = 0.6 * length;
    upper[1] = 0.5 * length;
    upper[2] = PalmLimits.USUAL.greatest();
    upper[3] = PalmLimits.TILT;
    return upper;
  }

  /** Returns a palm under load with every finger bent as the grip requires. */
  double[] start() {
    double[] start = new double[unknowns()];
    start[0] = startDistance;
    start[1] = startDepth;
    for (int i = 0; i < chains.size(); i++) {
      start[PALM + PER_FINGER * i] = START_KNUCKLE;
      start[PALM + PER_FINGER * i + 1] = Math.max(0, chains.get(i).reach().centre());
    }
    return start;
  }

  /** Returns the unknowns of a pose from another solver. */
  double[] of(HandPose pose) {
    double[] unknowns = new double[unknowns()];
    unknowns[0] = pose.palm().distance();
    unknowns[1] = pose.palm().depth();
    unknowns[2] = pose.palm().roll().degrees();
    unknowns[3] = pose.palm().tilt().degrees();
    int i = PALM;
    for (FingerPose finger : pose.fingers()) {
      unknowns[i++] = finger.mcp().degrees();
      unknowns[i++] = finger.pip().degrees();
      unknowns[i++] = finger.dip().degrees();
    }
    return unknowns;
  }

  /** Returns half the sum of squared deviations from the targets. */
  double cost(double[] unknowns) {
    double cost = squares(unknowns[2] / ROLL_DEGREES, unknowns[3] / TILT_DEGREES);
    double left = 0;
    for (int i = 0; i < chains.size(); i++) {
      int at = PALM + PER_FINGER * i;
      Chain chain = chains.get(i);
      double mcp = unknowns[at];
      double pip = unknowns[at + 1];
      double dip = unknowns[at + 2];
      cost += cost(chain, unknowns, mcp, pip, dip);
      left += shares[i] * moment(chain, unknowns, mcp, pip, dip);
    }
    return (cost + squares(left / BALANCE_SCALE)) / 2;
  }

  /** How far the palm's place leaves the end joint from where the angles put it, in mm. */
  private static double off(Chain chain, double[] palm, double mcp, double pip) {
    double rise = Math.toRadians(mcp + pip - 90);
    double fall = Math.toRadians(90 - mcp);
    EdgeGeometry.Reach reach =
        chain.geometry().reach(palm[0], palm[1], Math.toRadians(palm[2]), Math.toRadians(palm[3]));
    return Math.hypot(
        reach.out() - chain.middle() * Math.cos(rise) - chain.proximal() * Math.cos(fall),
        reach.down() - chain.proximal() * Math.sin(fall) + chain.middle() * Math.sin(rise));
  }

  /** What of being off is part of the pad that does not hold, in mm. */
  private static double lost(Chain chain, double off) {
    return chain.reach().low().degrees() <= 0 ? Math.min(off, chain.geometry().padToSpare()) : 0;
  }

  private static double moment(Chain chain, double[] palm, double mcp, double pip, double dip) {
    double rise = Math.toRadians(mcp + pip - 90);
    double lost = lost(chain, off(chain, palm, mcp, pip));
    double contact = FingerStatics.contact(chain.geometry().endBone(), lost, TendonModel.STANDARD);
    return chain
        .statics()
        .knuckle(new Attitude(Math.toRadians(pip), rise, Math.toRadians(dip) + rise, contact))
        .moment();
  }

  private double cost(Chain chain, double[] palm, double mcp, double pip, double dip) {
    double off = off(chain, palm, mcp, pip);
    double lost = lost(chain, off);
    double pitch = dip + mcp + pip - 90;
    double far = chain.distanceAt(chain.reach().low().degrees());
    double near = chain.distanceAt(chain.reach().high().degrees());
    double distance = chain.distanceAt(pip);
    double half = Math.max(LEAST_HALF * length, (far - near) / 2);
    double beside = distance - chain.distanceAt(chain.reach().centre());
    double steepest =
        chain.dip().isPresent() && chain.dip().get().high().degrees() < 0
            ? PoseTarget.FLAT_PITCH
            : PoseTarget.GREATEST_PITCH;
    return squares((off - lost) / (PLACE_SCALE * length), lost / (PAD_SCALE * length))
        + squares(
            chain.pip().isPresent() ? CENTRE_WEIGHT * beside / half : 0,
            (Math.max(0, distance - far) + Math.min(0, distance - near)) / (REACH_SCALE * length))
        + squares(
            miss(chain.mcp(), mcp),
            miss(chain.dip(), dip),
            FlexionRange.degrees(0, steepest).miss(pitch) / WISH_DEGREES);
  }

  private static double miss(Optional<FlexionRange> wish, double flexion) {
    return wish.map(range -> range.miss(flexion)).orElse(0.0) / WISH_DEGREES;
  }

  private static double squares(double... values) {
    double sum = 0;
    for (double value : values) {
      sum += value * value;
    }
    return sum;
  }
}
