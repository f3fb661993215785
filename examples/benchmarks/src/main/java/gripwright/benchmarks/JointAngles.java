package gripwright.benchmarks;

import gripwright.grip.Band;
import gripwright.grip.Grip;
import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.FlexionRange;
import gripwright.hand.HandPose;
import gripwright.hand.HandShape;
import gripwright.hand.Joint;
import gripwright.hand.JointNorms;
import gripwright.hand.PalmLimits;
import gripwright.hand.PoseSolver;
import gripwright.hand.Segment;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The pose of a hand on an edge as anyone would first write it down: the palm's distance, depth and
 * roll and three angles a finger are unknown, and end joints that miss their place cost.
 *
 * <p>Where every end joint is in its place, the cost is the residual of {@link PoseSolver}: the
 * same wishes with the same weights. That makes it a measure for both.
 */
final class JointAngles {

  private static final int PALM = 3;
  private static final int PER_FINGER = 3;

  /** An end joint may be off by so much of a hand's length for one unit of residual: 0.4 mm. */
  private static final double PLACE_SCALE = 0.002;

  private static final double REACH_SCALE = 0.005;
  private static final double LEAST_HALF = 0.002;
  private static final double CENTRE_WEIGHT = 0.3;
  private static final double WISH_DEGREES = 10;
  private static final double ROLL_DEGREES = 15;
  private static final double EASY_FLEXION = 45;
  private static final double START_MARGIN = 0.05;

  private final double length;
  private final List<Chain> chains;
  private final double easyDistance;
  private final double easyDepth;

  /** A finger: bones and places in mm, and what the grip asks of it. */
  private record Chain(
      double proximal,
      double middle,
      double endJoint,
      double across,
      double behind,
      Optional<FlexionRange> pip,
      Optional<FlexionRange> mcp,
      Optional<FlexionRange> dip) {

    static Chain of(HandShape shape, double edge, Grip grip, Finger finger) {
      double distal = shape.bone(finger, Segment.DISTAL).millimetres();
      return new Chain(
          shape.bone(finger, Segment.PROXIMAL).millimetres(),
          shape.bone(finger, Segment.MIDDLE).millimetres(),
          distal <= edge ? distal : (edge + distal) / 2,
          shape.knuckleAcross(finger),
          shape.knuckleAlong(Finger.MIDDLE) - shape.knuckleAlong(finger),
          range(grip.band(finger, Joint.PIP)),
          range(grip.band(finger, Joint.MCP)),
          range(grip.band(finger, Joint.DIP)));
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
    Chain middle = Chain.of(shape, edge, grip, Finger.MIDDLE);
    double flexion =
        chains.stream()
            .filter(chain -> chain.pip().isPresent())
            .mapToDouble(chain -> Math.max(0, chain.reach().centre()))
            .average()
            .orElse(EASY_FLEXION);
    double reach = middle.distanceAt(flexion);
    double lift =
        Math.acos(
            (middle.middle() * middle.middle()
                    + reach * reach
                    - middle.proximal() * middle.proximal())
                / (2 * middle.middle() * reach));
    double slope = Math.toRadians(90 - EASY_FLEXION - flexion) + lift;
    easyDistance = within(0, middle.endJoint() + reach * Math.cos(slope));
    easyDepth = within(1, reach * Math.sin(slope));
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
    return upper;
  }

  /** Returns the palm at ease and every finger bent as the grip asks. */
  double[] start() {
    double[] start = new double[unknowns()];
    start[0] = easyDistance;
    start[1] = easyDepth;
    for (int i = 0; i < chains.size(); i++) {
      start[PALM + PER_FINGER * i] = EASY_FLEXION;
      start[PALM + PER_FINGER * i + 1] = Math.max(0, chains.get(i).reach().centre());
    }
    return start;
  }

  /** Returns the unknowns of a pose that was found otherwise. */
  double[] of(HandPose pose) {
    double[] unknowns = new double[unknowns()];
    unknowns[0] = pose.palm().distance();
    unknowns[1] = pose.palm().depth();
    unknowns[2] = pose.palm().roll().degrees();
    int i = PALM;
    for (FingerPose finger : pose.fingers()) {
      unknowns[i++] = finger.mcp().degrees();
      unknowns[i++] = finger.pip().degrees();
      unknowns[i++] = finger.dip().degrees();
    }
    return unknowns;
  }

  /** Returns half the sum of squares of everything that is not as wished. */
  double cost(double[] unknowns) {
    double cost =
        squares(
            (unknowns[0] - easyDistance) / length,
            (unknowns[1] - easyDepth) / length,
            unknowns[2] / ROLL_DEGREES);
    for (int i = 0; i < chains.size(); i++) {
      int at = PALM + PER_FINGER * i;
      cost += cost(chains.get(i), unknowns, unknowns[at], unknowns[at + 1], unknowns[at + 2]);
    }
    return cost / 2;
  }

  private double cost(Chain chain, double[] palm, double mcp, double pip, double dip) {
    double rise = Math.toRadians(mcp + pip - 90);
    double fall = Math.toRadians(90 - mcp);
    double out = chain.middle() * Math.cos(rise) + chain.proximal() * Math.cos(fall);
    double down = chain.proximal() * Math.sin(fall) - chain.middle() * Math.sin(rise);
    double knuckleOut = palm[0] + chain.across() * Math.sin(Math.toRadians(palm[2]));
    double place = PLACE_SCALE * length;
    double pitch = dip + mcp + pip - 90;
    double far = chain.distanceAt(chain.reach().low().degrees());
    double near = chain.distanceAt(chain.reach().high().degrees());
    double distance = chain.distanceAt(pip);
    double half = Math.max(LEAST_HALF * length, (far - near) / 2);
    double off = distance - chain.distanceAt(chain.reach().centre());
    return squares(
            (knuckleOut - chain.endJoint() - out) / place,
            (palm[1] + chain.behind() - down) / place)
        + squares(
            chain.pip().isPresent() ? CENTRE_WEIGHT * off / half : 0,
            (Math.max(0, distance - far) + Math.min(0, distance - near)) / (REACH_SCALE * length))
        + squares(
            miss(chain.mcp(), mcp),
            miss(chain.dip(), dip),
            FlexionRange.degrees(0, PoseSolver.GREATEST_PITCH).miss(pitch) / WISH_DEGREES);
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
