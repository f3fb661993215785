package gripwright.tissue;

import gripwright.grip.GripFit;
import gripwright.hand.Finger;
import gripwright.hand.Joint;
import gripwright.hand.JointNorms;
import gripwright.statics.MomentArms;
import gripwright.statics.Tendon;
import java.util.EnumMap;
import java.util.Map;

/**
 * How far the deep tendons of neighbouring fingers are shifted against each other: an index of
 * exposure for the lumbrical muscles, whose two heads on the ring and little finger's side spring
 * from neighbouring tendons. It is an estimate of a length, not of a load, and no limit is
 * published.
 *
 * <p>The shift between two neighbours is the mean moment arm of their FDP at the middle joint times
 * the difference of its two flexions; the index is the sum over the neighbours. Knuckle and end
 * joint are left out: the model knows them only roughly. Mechanism: Schweizer A 2003 and Lutter C
 * et al. 2018 (from memory).
 *
 * @param millimetres sum of the shifts, 0 or more
 * @param greatest the greatest shift between two neighbours, in mm
 * @param thumbSide the neighbour of the greatest shift on the thumb's side
 * @param littleSide the other one
 */
public record LumbricalIndex(
    double millimetres, double greatest, Finger thumbSide, Finger littleSide) {

  /** What the fingers do that do not hold. */
  public enum Idle {
    /** They lie as their neighbour on the hold does, as idle fingers do by themselves. */
    RELAXED,
    /** They are pulled down into the palm, bent as far as the norm says. */
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
    Map<Finger, Double> flexions = new EnumMap<>(Finger.class);
    fit.pose().fingers().forEach(pose -> flexions.put(pose.finger(), pose.pip().degrees()));
    return of(flexions, arms, idle);
  }

  /**
   * Works out the index of fingers bent as given.
   *
   * @param flexions degrees of the middle joint, for every finger that holds
   * @param arms moment arms
   * @param idle what the other fingers do
   * @throws IllegalArgumentException if no finger holds
   */
  public static LumbricalIndex of(Map<Finger, Double> flexions, MomentArms arms, Idle idle) {
    if (flexions.isEmpty()) {
      throw new IllegalArgumentException("no finger holds");
    }
    double low = JointNorms.AAOS.of(Joint.PIP).high().degrees();
    double sum = 0;
    double greatest = 0;
    Finger thumbSide = Finger.MIDDLE;
    Finger littleSide = Finger.RING;
    Finger[] fingers = Finger.values();
    for (int i = 0; i + 1 < fingers.length; i++) {
      Finger one = fingers[i];
      Finger other = fingers[i + 1];
      boolean both = flexions.containsKey(one) && flexions.containsKey(other);
      boolean none = !flexions.containsKey(one) && !flexions.containsKey(other);
      if (none || (!both && idle == Idle.RELAXED)) {
        continue;
      }
      double arm =
          (arms.arm(one, Joint.PIP, Tendon.FDP) + arms.arm(other, Joint.PIP, Tendon.FDP)) / 2;
      double difference = flexions.getOrDefault(one, low) - flexions.getOrDefault(other, low);
      double shift = arm * Math.toRadians(Math.abs(difference));
      sum += shift;
      if (shift > greatest) {
        greatest = shift;
        thumbSide = one;
        littleSide = other;
      }
    }
    return new LumbricalIndex(sum, greatest, thumbSide, littleSide);
  }
}
