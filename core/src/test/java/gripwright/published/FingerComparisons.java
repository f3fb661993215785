package gripwright.published;

import gripwright.grip.FingerLoss;
import gripwright.grip.FingerSet;
import gripwright.grip.FingerShares;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.quantity.Angle;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.strength.EdgeDepth;
import gripwright.strength.Posture;
import gripwright.strength.StrengthMap;
import gripwright.strength.StrengthTest;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** How fingers share a load, what fewer of them hold, and the depth of the edge. */
final class FingerComparisons {

  private static final Length EDGE = Length.ofMillimetres(20);
  private static final LocalDate DAY = LocalDate.of(2027, 3, 1);

  /** The published shares of a gripped cylinder sum to 99. */
  private static final double SUM_OF_CYLINDER = 99;

  private static final List<Length> DEPTHS =
      List.of(
          Length.ofMillimetres(10),
          Length.ofMillimetres(20),
          Length.ofMillimetres(30),
          Length.ofMillimetres(40));
  private static final double[] FLEXIONS = {10, 30, 60, 90};

  private FingerComparisons() {}

  static void into(Comparisons all) {
    shares(all);
    losses(all);
    depth(all);
  }

  private static void shares(Comparisons all) {
    for (Finger finger : Finger.values()) {
      all.constant("share.macdermid." + finger, () -> SUM_OF_CYLINDER * share(finger, 90));
      all.constant("share.li98." + finger, () -> 100 * share(finger, 110));
      all.model("share.liwrist." + finger, () -> 100 * share(finger, 90));
    }
    all.orderInView(
        "share.fuss.closedcrimp",
        "which shares a closed crimp has, of those that are published",
        () ->
            Math.min(
                share(Finger.INDEX, 110) / share(Finger.MIDDLE, 110),
                Math.min(
                    share(Finger.MIDDLE, 110) / share(Finger.RING, 110),
                    share(Finger.RING, 110) / share(Finger.LITTLE, 110))));
    all.order(
        "share.fuss.open",
        () ->
            Math.min(
                share(Finger.MIDDLE, 40) / share(Finger.INDEX, 40),
                share(Finger.RING, 40) / share(Finger.LITTLE, 40)));
  }

  private static double share(Finger finger, double flexion) {
    return FingerShares.of(FingerSet.FOUR, flexion).getOrDefault(finger, 0.0);
  }

  /** The best estimate blends two views, of which one was fitted to the losses of Methot. */
  private static void losses(Comparisons all) {
    all.model("drop.methot.little", () -> loss(Finger.LITTLE));
    all.model("drop.methot.ringlittle", () -> loss(Finger.RING, Finger.LITTLE));
    all.model("share.sixgrip.index", () -> loss(Finger.INDEX));
    all.model("share.sixgrip.middle", () -> loss(Finger.MIDDLE));
    all.model("share.sixgrip.ringlittle", () -> loss(Finger.RING, Finger.LITTLE));
    all.constant("deficit.danion.exponent", () -> FingerLoss.DEFICIT_EXPONENT);
    for (int fingers = 1; fingers <= 4; fingers++) {
      int count = fingers;
      all.arithmetic("deficit.danion.n" + fingers, () -> FingerLoss.gain(count));
    }
  }

  private static FingerSet without(Finger... gone) {
    int bits = FingerSet.FOUR.bits();
    for (Finger finger : gone) {
      bits &= ~(1 << finger.ordinal());
    }
    return new FingerSet(bits);
  }

  /** What an untested grip of fewer fingers holds less, in per cent, by one test of four. */
  private static double loss(Finger... gone) {
    Grip some = Grip.named("some").family(GripFamily.SPLIT).fingers(without(gone)).build();
    Grip four = Grip.named("four").family(GripFamily.FOUR).fingers(FingerSet.FOUR).build();
    StrengthTest test =
        new StrengthTest(
            DAY,
            Setup.of(four, EDGE),
            new StrengthTest.Held(Duration.ofSeconds(7), Load.ofKilograms(100)));
    return 100
        - StrengthMap.of(List.of(test), setup -> bent(setup.grip().fingers(), 90), DAY)
            .maximum(Setup.of(some, EDGE))
            .orElseThrow()
            .load()
            .best()
            .kilograms();
  }

  private static Posture bent(FingerSet fingers, double degrees) {
    Map<Finger, Angle> flexions = new TreeMap<>();
    fingers.fingers().forEach(finger -> flexions.put(finger, Angle.ofDegrees(degrees)));
    return new Posture(flexions);
  }

  private static void depth(Comparisons all) {
    all.rule("depth.amca.monotone", FingerComparisons::risesWithDepth);
    all.model("depth.amca.maxmin", FingerComparisons::greatestByLeast);
    all.rule(
        "depth.bourne.r.shallow_deep",
        () ->
            !EdgeDepth.canEstimate(Length.ofMillimetres(2.8), Length.ofMillimetres(12.5))
                && !EdgeDepth.canEstimate(Length.ofMillimetres(12.5), Length.ofMillimetres(4.3)));
    Length rung = Length.ofMillimetres(23);
    all.orderInView(
        "grip.ciss25.order",
        "the depth of 20 mm at which the curves of all grips meet",
        () -> onEdge(rung, 30) / onEdge(rung, 90));
  }

  /** Load on an edge by that on 20 mm. */
  private static double onEdge(Length edge, double flexion) {
    return EdgeDepth.factor(EDGE, edge, bent(FingerSet.FOUR, flexion));
  }

  private static boolean risesWithDepth() {
    for (double flexion : FLEXIONS) {
      for (int i = 1; i < DEPTHS.size(); i++) {
        if (onEdge(DEPTHS.get(i), flexion) <= onEdge(DEPTHS.get(i - 1), flexion)) {
          return false;
        }
      }
    }
    return onEdge(DEPTHS.get(3), 10) != onEdge(DEPTHS.get(3), 90);
  }

  private static double greatestByLeast() {
    double greatest = 0;
    double least = Double.POSITIVE_INFINITY;
    for (double flexion : FLEXIONS) {
      for (Length depth : DEPTHS) {
        greatest = Math.max(greatest, onEdge(depth, flexion));
        least = Math.min(least, onEdge(depth, flexion));
      }
    }
    return greatest / least;
  }
}
