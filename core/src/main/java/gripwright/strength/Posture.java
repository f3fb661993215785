package gripwright.strength;

import gripwright.grip.FingerSet;
import gripwright.grip.FingerShares;
import gripwright.grip.GripFit;
import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.quantity.Angle;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;

/**
 * Which fingers hold and how far their middle joints are bent, in the order of the hand. Immutable.
 *
 * @param flexions flexion of the middle joint by finger; one to four fingers
 */
public record Posture(Map<Finger, Angle> flexions) {

  /** The weight of each finger: its share of a whole-hand grip. */
  private static final double[] WEIGHTS = weights();

  /**
   * Copies the flexions.
   *
   * @throws IllegalArgumentException if no finger holds
   */
  public Posture {
    Objects.requireNonNull(flexions, "flexions");
    if (flexions.isEmpty()) {
      throw new IllegalArgumentException("no finger holds");
    }
    flexions = Collections.unmodifiableMap(new EnumMap<>(flexions));
  }

  /**
   * Returns the posture of a grip on the hands in use: the mean if two hands differ.
   *
   * @param fits the same grip on each hand in use, in the nearest pose if a hand can't take it
   * @throws IllegalArgumentException if there is no fit
   */
  public static Posture of(Collection<GripFit> fits) {
    Map<Finger, Angle> flexions = new EnumMap<>(Finger.class);
    for (GripFit fit : fits) {
      for (FingerPose finger : fit.pose().fingers()) {
        flexions.merge(
            finger.finger(),
            Angle.ofDegrees(finger.pip().degrees() / fits.size()),
            (one, other) -> Angle.ofDegrees(one.degrees() + other.degrees()));
      }
    }
    return new Posture(flexions);
  }

  /** Returns the fingers that hold. */
  public FingerSet fingers() {
    return FingerSet.of(flexions.keySet());
  }

  /** Returns the mean flexion in degrees, weighted by each finger's share of the force. */
  public double meanFlexion() {
    double sum = 0;
    double weight = 0;
    for (Map.Entry<Finger, Angle> entry : flexions.entrySet()) {
      double share = weight(entry.getKey());
      sum += share * entry.getValue().degrees();
      weight += share;
    }
    return sum / weight;
  }

  /**
   * Returns the similarity of two postures: over the fingers that both use, the sum of each weight
   * times the falloff of the difference in flexion, divided by the root of the product of both
   * total weights. As the product of two roots it is symmetric, 1 for a posture with itself, 0
   * without a common finger, and positive semi-definite for every falloff that is.
   *
   * @param falloff of the difference in degrees, 0 or more; 1 at 0
   */
  double likeness(Posture other, DoubleUnaryOperator falloff) {
    double common = 0;
    double own = 0;
    double others = 0;
    for (Finger finger : Finger.values()) {
      Angle here = flexions.get(finger);
      Angle there = other.flexions.get(finger);
      own += here == null ? 0 : weight(finger);
      others += there == null ? 0 : weight(finger);
      if (here != null && there != null) {
        common +=
            weight(finger) * falloff.applyAsDouble(Math.abs(here.degrees() - there.degrees()));
      }
    }
    return Math.min(1, common / Math.sqrt(own * others));
  }

  private static double weight(Finger finger) {
    return WEIGHTS[finger.ordinal()];
  }

  private static double[] weights() {
    double[] weights = new double[Finger.values().length];
    FingerShares.of(FingerSet.FOUR, 0)
        .forEach((finger, share) -> weights[finger.ordinal()] = share);
    return weights;
  }
}
