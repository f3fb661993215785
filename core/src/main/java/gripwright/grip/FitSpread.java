package gripwright.grip;

import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.FlexionRange;
import gripwright.hand.HandPose;
import gripwright.hand.HandVariation;
import gripwright.hand.Joint;
import gripwright.quantity.Angle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * How far a fit may be otherwise because the hand is not known better: the grip fitted to {@value
 * #DRAWS} hands drawn around what was measured, by {@link HandVariation}. Ranges hold 90 % of the
 * draws, from the 5th to the 95th percentile, and always the fit itself; a hand that does not take
 * the grip counts with its nearest pose. What the model leaves out, and where in a band an athlete
 * hangs, comes on top: a single finger, which can be bent as its band says whatever its bones, has
 * next to no range. The same fit gives the same numbers. Immutable.
 */
public final class FitSpread {

  /** How many hands are drawn. */
  public static final int DRAWS = 100;

  /** The stream of random numbers that the hands are drawn from. */
  public static final long STREAM = 1992;

  private static final double LOW = 0.05;
  private static final double HIGH = 0.95;

  private final GripFit fit;
  private final List<HandPose> poses;
  private final double taken;

  private FitSpread(GripFit fit, List<HandPose> poses, double taken) {
    this.fit = fit;
    this.poses = List.copyOf(poses);
    this.taken = taken;
  }

  /** Draws the hands and fits the grip to each. {@link GripFit#spread()} does so once. */
  static FitSpread of(GripFit fit) {
    List<HandPose> poses = new ArrayList<>();
    int taken = 0;
    for (int i = 0; i < DRAWS; i++) {
      HandPose pose =
          GripFit.solve(
              fit.grip(),
              HandVariation.draw(fit.pose().shape(), STREAM, i),
              fit.pose().edge(),
              fit.tendons());
      poses.add(pose);
      taken += GripFit.takes(fit.grip(), pose) ? 1 : 0;
    }
    return new FitSpread(fit, poses, taken / (double) DRAWS);
  }

  /** Returns the poses of the hands drawn, in the order of the draws, each with its hand. */
  public List<HandPose> poses() {
    return poses;
  }

  /** Returns which share of the hands drawn takes the grip on the edge, 0 to 1. */
  public double taken() {
    return taken;
  }

  /** Returns the range of a joint's flexion; empty if the finger does not hold. */
  public Optional<FlexionRange> flexion(Finger finger, Joint joint) {
    return fit.flexion(finger, joint)
        .map(
            angle ->
                range(
                    angle.degrees(),
                    poses.stream()
                        .flatMap(pose -> pose.finger(finger).stream())
                        .mapToDouble(drawn -> drawn.flexion(joint).degrees())
                        .toArray()));
  }

  /**
   * Returns how far a range of a joint extends from the fit at most, over the fingers that hold.
   */
  public Angle largestDeviation(Joint joint) {
    double largest = 0;
    for (FingerPose finger : fit.pose().fingers()) {
      double angle = finger.flexion(joint).degrees();
      FlexionRange range = flexion(finger.finger(), joint).orElseThrow();
      largest =
          Math.max(
              largest, Math.max(range.high().degrees() - angle, angle - range.low().degrees()));
    }
    return Angle.ofDegrees(largest);
  }

  /** Returns the range of the palm's roll about the forearm's axis. */
  public FlexionRange wristRoll() {
    return range(
        fit.wristRoll().degrees(),
        poses.stream().mapToDouble(pose -> pose.palm().roll().degrees()).toArray());
  }

  private static FlexionRange range(double value, double[] drawn) {
    Arrays.sort(drawn);
    double low = drawn[(int) Math.floor(LOW * (drawn.length - 1))];
    double high = drawn[(int) Math.ceil(HIGH * (drawn.length - 1))];
    return new FlexionRange(
        Angle.ofDegrees(Math.min(value, low)), Angle.ofDegrees(Math.max(value, high)));
  }
}
