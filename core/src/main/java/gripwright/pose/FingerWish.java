package gripwright.pose;

import gripwright.hand.EdgeGeometry;
import gripwright.hand.FlexionRange;
import gripwright.hand.HandShape;
import gripwright.hand.Joint;
import gripwright.statics.Attitude;
import gripwright.statics.FingerStatics;
import gripwright.statics.TendonModel;

/**
 * What a palm's position leaves to be wished for of one finger, with the derivatives, and what its
 * flexors leave at the knuckle.
 */
final class FingerWish {

  /** Middle of the range, its ends, what is lost of the pad, and the two wishes. */
  static final int ROWS = 5;

  /** Pull to the middle of a range, by half the range. */
  private static final double CENTRE_WEIGHT = 1;

  /** A range is missed by so much of a hand length: about 1 mm, 2 deg at a right angle. */
  private static final double REACH_SCALE = 0.005;

  /** Part of the pad that does not hold, by hand length: 10 mm. */
  private static final double PAD_SCALE = 0.05;

  /** The least half width of a range, as a share of hand length. */
  private static final double LEAST_HALF = 0.002;

  /** Miss of a range of knuckle or end joint, which is only a wish: 10 deg. */
  private static final double WISH_SCALE = Math.toRadians(10);

  /**
   * Over so much of a hand length, 0.2 mm, a finger goes straight for the balance: its angles have
   * no finite slope there, and a search would stop on either side.
   */
  private static final double SOFTNESS = 0.001;

  /** A finger is clearly bent that spans less than so much of its straight length. */
  private static final double BENT = 0.98;

  /** What a reach is divided by at least. */
  private static final double LEAST_DISTANCE = 1e-9;

  private static final FlexionRange STRAIGHT = FlexionRange.degrees(0, 0);

  private final EdgeGeometry geometry;
  private final FingerStatics statics;
  private final PoseTarget target;
  private final double share;
  private final double far;
  private final double near;
  private final double centre;
  private final double centreScale;
  private final double reachScale;
  private final double padScale;
  private final double toSpare;
  private final double softness;
  private final double wishedDip;
  private final double greatestPitch;

  /** A finger of a hand with its share, 0 to 1, of the load. */
  FingerWish(HandShape shape, double edge, PoseTarget target, double share, TendonModel tendons) {
    this.geometry = new EdgeGeometry(shape, target.finger(), edge);
    this.statics = new FingerStatics(shape, target.finger(), tendons);
    this.target = target;
    this.share = share;
    double handLength = shape.length().millimetres();
    FlexionRange range = target.reach(shape.limits());
    far = geometry.distanceAt(range.low().degrees());
    near = geometry.distanceAt(range.high().degrees());
    // A limit bounds and does not pull: the middle is that of what is asked.
    FlexionRange asked = target.pip().orElse(range);
    centre = geometry.distanceAt(asked.centre());
    double span =
        geometry.distanceAt(asked.low().degrees()) - geometry.distanceAt(asked.high().degrees());
    double half = Math.max(LEAST_HALF * handLength, span / 2);
    centreScale = target.pip().isPresent() ? CENTRE_WEIGHT / half : 0;
    reachScale = 1 / (REACH_SCALE * handLength);
    padScale = 1 / (PAD_SCALE * handLength);
    softness = SOFTNESS * handLength;
    toSpare = target.mayBeStraight(shape.limits()) ? geometry.padToSpare() : 0;
    FlexionRange wish = target.dip().orElse(STRAIGHT);
    wishedDip = Math.toRadians(shape.limits().narrow(target.finger(), Joint.DIP, wish).nearest(0));
    greatestPitch = Math.toRadians(target.greatestPitch());
  }

  /** How the finger lies for a palm, in mm and radians, with the derivatives by its position. */
  private final class Lie {
    private final double distance;
    private final double flexion;
    private final double rise;
    private final double[] distanceBy;
    private final double[] slopeBy;

    Lie(double[] palm) {
      EdgeGeometry.Reach reach = geometry.reach(palm[0], palm[1], palm[2], palm[3]);
      distance = Math.max(LEAST_DISTANCE, reach.distance());
      flexion = geometry.flexion(distance);
      rise = geometry.lift(distance) - Math.atan2(reach.down(), reach.out());
      double[] outBy = {1, 0, reach.outByRoll(), reach.outByTilt()};
      double[] downBy = {0, 1, 0, reach.downByTilt()};
      distanceBy = new double[outBy.length];
      slopeBy = new double[outBy.length];
      double square = distance * distance;
      for (int i = 0; i < outBy.length; i++) {
        distanceBy[i] = (reach.out() * outBy[i] + reach.down() * downBy[i]) / distance;
        slopeBy[i] = (reach.out() * downBy[i] - reach.down() * outBy[i]) / square;
      }
    }
  }

  /** Writes the rows of this finger; returns its part of what is left at the knuckles, in mm. */
  double fill(double[] palm, Rows rows, double[] leftBy) {
    Lie lie = new Lie(palm);
    double distance = lie.distance;
    double lost = toSpare > 0 ? Math.max(0, distance - geometry.straight()) : 0;
    boolean giving = lost > 0;
    rows.add(centreScale * (distance - lost - centre), lie.distanceBy, giving ? 0 : centreScale);
    double miss = Math.max(0, distance - toSpare - far) + Math.min(0, distance - near);
    rows.add(reachScale * miss, lie.distanceBy, miss == 0 ? 0 : reachScale);
    rows.add(padScale * lost, lie.distanceBy, giving ? padScale : 0);
    wishes(lie, rows);
    return balance(lie, giving, lost, leftBy);
  }

  private void wishes(Lie lie, Rows rows) {
    if (target.mcp().isEmpty() && target.dip().isEmpty()) {
      rows.skip(2);
      return;
    }
    double lift = geometry.liftByDistance(lie.distance);
    double flexion = geometry.flexionByDistance(lie.distance);
    double[] mcpBy = new double[lie.slopeBy.length];
    double[] riseBy = new double[lie.slopeBy.length];
    for (int i = 0; i < riseBy.length; i++) {
      riseBy[i] = lift * lie.distanceBy[i] - lie.slopeBy[i];
      mcpBy[i] = riseBy[i] - flexion * lie.distanceBy[i];
    }
    double mcp = Math.PI / 2 + lie.rise - lie.flexion;
    double off = target.mcp().map(range -> miss(range, mcp)).orElse(0.0);
    rows.add(off / WISH_SCALE, mcpBy, off == 0 ? 0 : 1 / WISH_SCALE);
    double flat = -lie.rise;
    double bent = target.dip().map(range -> bent(range, flat)).orElse(0.0);
    rows.add(bent / WISH_SCALE, riseBy, bent == 0 ? 0 : -1 / WISH_SCALE);
  }

  /** How far an end joint misses its range that a level end bone bends so much, in radians. */
  private double bent(FlexionRange range, double flat) {
    return Math.max(0, flat - Math.toRadians(range.high().degrees()))
        + Math.min(0, flat + greatestPitch - Math.toRadians(range.low().degrees()));
  }

  private static double miss(FlexionRange range, double radians) {
    return Math.toRadians(range.miss(Math.toDegrees(radians)));
  }

  private double balance(Lie lie, boolean giving, double lost, double[] leftBy) {
    double bent = (geometry.straight() - lie.distance) / softness;
    double soft = Math.max(bent, 0) + Math.log1p(Math.exp(-Math.abs(bent)));
    double distance = geometry.straight() - softness * soft;
    double softBy = 1 / (1 + Math.exp(-bent));
    double lift = geometry.lift(distance);
    double rise = lie.rise + lift - geometry.lift(lie.distance);
    double pitch = pitch(rise);
    double contact = FingerStatics.contact(geometry.endBone(), lost, statics.model());
    FingerStatics.Knuckle knuckle =
        statics.knuckle(new Attitude(geometry.flexion(distance), rise, pitch, contact));
    double tips = pitch > 0 && pitch < greatestPitch ? knuckle.byPitch() : 0;
    double byRise = knuckle.byRise() + tips;
    double byDistance =
        softBy
                * (knuckle.byFlexion() * geometry.flexionByDistance(distance)
                    + byRise * geometry.liftByDistance(distance))
            + (giving ? knuckle.byContact() / 2 : 0);
    for (int i = 0; i < leftBy.length; i++) {
      leftBy[i] += share * (byDistance * lie.distanceBy[i] - byRise * lie.slopeBy[i]);
    }
    return share * knuckle.left();
  }

  /** Returns how far the end bone tips to keep the end joint as wished, in radians. */
  private double pitch(double rise) {
    return Math.max(0, Math.min(greatestPitch, wishedDip + rise));
  }

  /** Tells whether a palm square to the edge leaves the finger clearly bent. */
  boolean bendsAt(double distance, double depth) {
    return geometry.reach(distance, depth, 0, 0).distance() < BENT * geometry.straight();
  }

  /** Returns how a finger lies for a palm, for the pose. */
  Found found(double[] palm) {
    Lie lie = new Lie(palm);
    return new Found(
        lie.flexion,
        lie.rise,
        pitch(lie.rise),
        lie.distance,
        Math.max(0, lie.distance - geometry.straight()));
  }

  /** How a finger lies: angles in radians, lengths in mm. */
  record Found(double flexion, double rise, double pitch, double distance, double beyond) {}

  PoseTarget target() {
    return target;
  }

  /** The rows of a residual vector, filled one after the other. */
  static final class Rows {
    private final double[] values;
    private final double[][] derivatives;
    private int next;

    Rows(int size, int unknowns) {
      values = new double[size];
      derivatives = new double[size][unknowns];
    }

    /** Adds a value whose derivative is a direction times a scale. */
    void add(double value, double[] by, double scale) {
      values[next] = value;
      for (int i = 0; i < by.length; i++) {
        derivatives[next][i] = scale * by[i];
      }
      next++;
    }

    /** Leaves rows at 0. */
    void skip(int rows) {
      next += rows;
    }

    double[] values() {
      return values;
    }

    double[][] derivatives() {
      return derivatives;
    }
  }
}
