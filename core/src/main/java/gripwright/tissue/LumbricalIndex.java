package gripwright.tissue;

import gripwright.grip.GripFit;
import gripwright.hand.Finger;
import gripwright.hand.Joint;
import gripwright.hand.JointNorms;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * How far the deep tendons of two neighbouring fingers are shifted against each other: an index of
 * exposure for the lumbrical muscles, whose two heads on the ring and little finger's side spring
 * from neighbouring tendons. It is an estimate of a length, not of a load, and no limit is
 * published.
 *
 * <p>The shift is the sum over the joints of the mean moment arm of the two tendons and the
 * difference of the two flexions. Mechanism: Schweizer A 2003 and Lutter C et al. 2018 (from
 * memory).
 *
 * @param millimetres the greatest shift between two neighbours of which one holds, 0 or more
 * @param thumbSide the neighbour on the thumb's side
 * @param littleSide the other one
 */
public record LumbricalIndex(double millimetres, Finger thumbSide, Finger littleSide) {

  /** What the fingers do that do not hold. */
  public enum Idle {
    /** They lie as their neighbour on the hold does, as idle fingers do by themselves. */
    RELAXED,
    /** They are pulled down into the palm, each joint bent as far as the norm says. */
    PULLED_LOW
  }

  /**
   * Works out the index of a fitted grip.
   *
   * @param fit a fitted grip; its nearest pose if the hand does not take it
   * @param arms moment arms
   * @param idle what the other fingers do
   */
  public static LumbricalIndex of(GripFit fit, MomentArms arms, Idle idle) {
    Map<Finger, Map<Joint, Double>> flexions = new EnumMap<>(Finger.class);
    fit.pose()
        .fingers()
        .forEach(
            pose -> {
              Map<Joint, Double> joints = new EnumMap<>(Joint.class);
              for (Joint joint : Joint.values()) {
                joints.put(joint, pose.flexion(joint).degrees());
              }
              flexions.put(pose.finger(), joints);
            });
    return of(flexions, arms, idle);
  }

  /**
   * Works out the index of fingers bent as given.
   *
   * @param flexions degrees by joint, for every finger that holds
   * @param arms moment arms
   * @param idle what the other fingers do
   * @throws IllegalArgumentException if no finger holds or a joint is missing
   */
  public static LumbricalIndex of(
      Map<Finger, Map<Joint, Double>> flexions, MomentArms arms, Idle idle) {
    if (flexions.isEmpty()) {
      throw new IllegalArgumentException("no finger holds");
    }
    LumbricalIndex worst = new LumbricalIndex(0, Finger.MIDDLE, Finger.RING);
    Finger[] fingers = Finger.values();
    for (int i = 0; i + 1 < fingers.length; i++) {
      Optional<Map<Joint, Double>> one = Optional.ofNullable(flexions.get(fingers[i]));
      Optional<Map<Joint, Double>> other = Optional.ofNullable(flexions.get(fingers[i + 1]));
      if (one.isEmpty() && other.isEmpty()) {
        continue;
      }
      if ((one.isEmpty() || other.isEmpty()) && idle == Idle.RELAXED) {
        continue;
      }
      double shift = 0;
      for (Joint joint : Joint.values()) {
        double arm =
            (arms.arm(fingers[i], joint, Tendon.FDP) + arms.arm(fingers[i + 1], joint, Tendon.FDP))
                / 2;
        shift += arm * Math.toRadians(flexion(one, joint) - flexion(other, joint));
      }
      if (Math.abs(shift) > worst.millimetres()) {
        worst = new LumbricalIndex(Math.abs(shift), fingers[i], fingers[i + 1]);
      }
    }
    return worst;
  }

  private static double flexion(Optional<Map<Joint, Double>> finger, Joint joint) {
    if (finger.isEmpty()) {
      return JointNorms.AAOS.of(joint).high().degrees();
    }
    Double flexion = finger.get().get(joint);
    if (flexion == null) {
      throw new IllegalArgumentException("no flexion of " + joint);
    }
    return flexion;
  }
}
