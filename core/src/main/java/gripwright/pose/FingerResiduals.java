package gripwright.pose;

import gripwright.hand.EdgeGeometry;
import gripwright.hand.FlexionRange;
import gripwright.hand.HandShape;
import gripwright.hand.Joint;
import gripwright.statics.Attitude;
import gripwright.statics.FingerStatics;
import gripwright.statics.TendonModel;

/**
 * The residuals of one finger for a position of the palm and the moment at its knuckle that its
 * flexors do not balance, both with their derivatives.
 */
final class FingerResiduals {

  /** Rows per finger: middle of the range, ends of the range, lost pad, knuckle, end joint. */
  static final int ROWS = 5;

  /** Weight of the middle of a range, per half range. */
  private static final double CENTRE_WEIGHT = 1;

  /**
   * A deviation from the range that costs 1, per hand length: about 1 mm, or 2 deg at a right
   * angle.
   */
  private static final double REACH_SCALE = 0.005;

  /** A length of unused pad that costs 1, per hand length: about 10 mm. */
  private static final double PAD_SCALE = 0.05;

  /** Minimum half width of a range, per hand length. */
  private static final double LEAST_HALF = 0.002;

  /** A deviation of the knuckle or end joint from its preferred range that costs 1: 10 deg. */
  private static final double PREFERENCE_SCALE = Math.toRadians(10);

  /**
   * The balance is smoothed over this share of hand length (0.2 mm) near a straight finger, because
   * the angles have an infinite slope there and would stop the search.
   */
  private static final double SOFTNESS = 0.001;

  /** A finger is clearly bent if it spans less than this share of its straight length. */
  private static final double BENT = 0.98;

  /** Lower bound of a reach, to avoid division by zero. */
  private static final double LEAST_DISTANCE = 1e-9;

  private static final FlexionRange STRAIGHT = FlexionRange.degrees(0, 0);

  private final EdgeGeometry geometry;
  private final FingerStatics statics;
  private final PoseTarget target;
  private final double share;
  private final double longest;
  private final double shortest;
  private final double centre;
  private final double centreScale;
  private final double reachScale;
  private final double padScale;
  private final double toSpare;
  private final double softness;
  private final double preferredDip;
  private final double greatestPitch;

  /** Creates the residuals of a finger that carries a share, 0 to 1, of the load. */
  FingerResiduals(
      HandShape shape, double edge, PoseTarget target, double share, TendonModel tendons) {
    this.geometry = new EdgeGeometry(shape, target.finger(), edge);
    this.statics = new FingerStatics(shape, target.finger(), tendons);
    this.target = target;
    this.share = share;
    double handLength = shape.length().millimetres();
    FlexionRange range = target.reach(shape.limits());
    longest = geometry.distanceAt(range.low().degrees());
    shortest = geometry.distanceAt(range.high().degrees());
    // Without a target range, the finger is only bounded, not drawn to a middle.
    FlexionRange wanted = target.pip().orElse(range);
    centre = geometry.distanceAt(wanted.centre());
    double span =
        geometry.distanceAt(wanted.low().degrees()) - geometry.distanceAt(wanted.high().degrees());
    double half = Math.max(LEAST_HALF * handLength, span / 2);
    centreScale = target.pip().isPresent() ? CENTRE_WEIGHT / half : 0;
    reachScale = 1 / (REACH_SCALE * handLength);
    padScale = 1 / (PAD_SCALE * handLength);
    softness = SOFTNESS * handLength;
    toSpare = target.mayBeStraight(shape.limits()) ? geometry.padToSpare() : 0;
    FlexionRange preferred = target.dip().orElse(STRAIGHT);
    preferredDip =
        Math.toRadians(shape.limits().narrow(target.finger(), Joint.DIP, preferred).nearest(0));
    greatestPitch = Math.toRadians(target.greatestPitch());
  }

  /** Lengths in mm and angles in radians for a palm position, with their derivatives by it. */
  private final class Placement {
    private final double distance;
    private final double flexion;
    private final double lift;
    private final double rise;
    private final double[] distanceBy;
    private final double[] slopeBy;

    Placement(double[] palm) {
      EdgeGeometry.Reach reach = geometry.reach(palm[0], palm[1], palm[2], palm[3]);
      distance = Math.max(LEAST_DISTANCE, reach.distance());
      flexion = geometry.flexion(distance);
      lift = geometry.lift(distance);
      rise = lift - Math.atan2(reach.down(), reach.out());
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

  /** Fills the rows of this finger and returns its part of the unbalanced knuckle moment, in mm. */
  double fill(double[] palm, Rows rows, double[] momentBy) {
    Placement placement = new Placement(palm);
    double distance = placement.distance;
    double padLoss = toSpare > 0 ? Math.max(0, distance - geometry.straight()) : 0;
    boolean overreaching = padLoss > 0;
    rows.add(
        centreScale * (distance - padLoss - centre),
        placement.distanceBy,
        overreaching ? 0 : centreScale);
    double deviation = Math.max(0, distance - toSpare - longest) + Math.min(0, distance - shortest);
    rows.add(reachScale * deviation, placement.distanceBy, deviation == 0 ? 0 : reachScale);
    rows.add(padScale * padLoss, placement.distanceBy, overreaching ? padScale : 0);
    preferences(placement, rows);
    return balance(placement, overreaching, padLoss, momentBy);
  }

  private void preferences(Placement placement, Rows rows) {
    if (target.mcp().isEmpty() && target.dip().isEmpty()) {
      rows.skip(2);
      return;
    }
    double lift = geometry.liftByDistance(placement.distance, placement.lift);
    double flexion = geometry.flexionByDistance(placement.distance, placement.flexion);
    double[] mcpBy = new double[placement.slopeBy.length];
    double[] riseBy = new double[placement.slopeBy.length];
    for (int i = 0; i < riseBy.length; i++) {
      riseBy[i] = lift * placement.distanceBy[i] - placement.slopeBy[i];
      mcpBy[i] = riseBy[i] - flexion * placement.distanceBy[i];
    }
    double mcp = Math.PI / 2 + placement.rise - placement.flexion;
    double off = target.mcp().map(range -> deviation(range, mcp)).orElse(0.0);
    rows.add(off / PREFERENCE_SCALE, mcpBy, off == 0 ? 0 : 1 / PREFERENCE_SCALE);
    double flat = -placement.rise;
    double bent = target.dip().map(range -> bent(range, flat)).orElse(0.0);
    rows.add(bent / PREFERENCE_SCALE, riseBy, bent == 0 ? 0 : -1 / PREFERENCE_SCALE);
  }

  /**
   * Deviation of the end joint from its range, in radians, if a level end bone bends it by {@code
   * flat}.
   */
  private double bent(FlexionRange range, double flat) {
    return Math.max(0, flat - Math.toRadians(range.high().degrees()))
        + Math.min(0, flat + greatestPitch - Math.toRadians(range.low().degrees()));
  }

  private static double deviation(FlexionRange range, double radians) {
    return Math.toRadians(range.miss(Math.toDegrees(radians)));
  }

  private double balance(
      Placement placement, boolean overreaching, double padLoss, double[] momentBy) {
    double bent = (geometry.straight() - placement.distance) / softness;
    double soft = Math.max(bent, 0) + Math.log1p(Math.exp(-Math.abs(bent)));
    double distance = geometry.straight() - softness * soft;
    double softBy = 1 / (1 + Math.exp(-bent));
    double lift = geometry.lift(distance);
    double flexion = geometry.flexion(distance);
    double rise = placement.rise + lift - placement.lift;
    double pitch = pitch(rise);
    double contact = FingerStatics.contact(geometry.endBone(), padLoss, statics.model());
    FingerStatics.Knuckle knuckle = statics.knuckle(new Attitude(flexion, rise, pitch, contact));
    double byTip = pitch > 0 && pitch < greatestPitch ? knuckle.byPitch() : 0;
    double byRise = knuckle.byRise() + byTip;
    double byDistance =
        softBy
                * (knuckle.byFlexion() * geometry.flexionByDistance(distance, flexion)
                    + byRise * geometry.liftByDistance(distance, lift))
            + (overreaching ? knuckle.byContact() / 2 : 0);
    for (int i = 0; i < momentBy.length; i++) {
      momentBy[i] += share * (byDistance * placement.distanceBy[i] - byRise * placement.slopeBy[i]);
    }
    return share * knuckle.moment();
  }

  /**
   * Returns the tip of the end bone that keeps the end joint closest to its preference, in radians.
   */
  private double pitch(double rise) {
    return Math.max(0, Math.min(greatestPitch, preferredDip + rise));
  }

  /** Returns whether the finger is clearly bent when the palm is square to the edge. */
  boolean bendsAt(double distance, double depth) {
    return geometry.reach(distance, depth, 0, 0).distance() < BENT * geometry.straight();
  }

  Configuration configuration(double[] palm) {
    Placement placement = new Placement(palm);
    return new Configuration(
        placement.flexion,
        placement.rise,
        pitch(placement.rise),
        placement.distance,
        Math.max(0, placement.distance - geometry.straight()));
  }

  /** Joint angles in radians and lengths in mm. */
  record Configuration(double flexion, double rise, double pitch, double distance, double beyond) {}

  PoseTarget target() {
    return target;
  }

  /** A residual vector and its Jacobian, filled row by row. */
  static final class Rows {
    private final double[] values;
    private final double[][] derivatives;
    private int next;

    Rows(int size, int unknowns) {
      values = new double[size];
      derivatives = new double[size][unknowns];
    }

    /** Adds a residual whose derivatives are {@code by}, each times a scale. */
    void add(double value, double[] by, double scale) {
      values[next] = value;
      for (int i = 0; i < by.length; i++) {
        derivatives[next][i] = scale * by[i];
      }
      next++;
    }

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
