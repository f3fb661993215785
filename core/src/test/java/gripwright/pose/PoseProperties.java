package gripwright.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.hand.EdgeGeometry;
import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.FlexionRange;
import gripwright.hand.Hand;
import gripwright.hand.HandPose;
import gripwright.hand.HandPose.Point;
import gripwright.hand.HandShape;
import gripwright.hand.Joint;
import gripwright.hand.Side;
import gripwright.quantity.Length;
import gripwright.statics.TendonModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class PoseProperties {

  private static HandShape hand(double length) {
    return HandShape.of(Hand.ofLength(Length.ofMillimetres(length)));
  }

  private static HandPose solve(HandShape shape, double edge, List<PoseTarget> targets) {
    return PoseSolver.solve(
        shape, Length.ofMillimetres(edge), targets, PalmLimits.USUAL, TendonModel.STANDARD);
  }

  private static PoseResiduals residuals(HandShape shape, List<PoseTarget> targets) {
    return new PoseResiduals(shape, 20, targets, PalmLimits.USUAL, TendonModel.STANDARD);
  }

  /**
   * Returns whether a hand can take the grip. Where none can, two compromises may be as good as
   * each other, and rounding or a tenth of a millimetre decides.
   */
  private static boolean isPossible(HandPose pose) {
    return pose.residual() < 5;
  }

  /** Compatible ranges of flexion: similar for all fingers, less for the little finger. */
  @Provide
  Arbitrary<List<PoseTarget>> targets() {
    return Combinators.combine(
            Arbitraries.integers().between(1, 15),
            Arbitraries.doubles().between(30, 100),
            Arbitraries.doubles().between(-8, 8).list().ofSize(4),
            Arbitraries.doubles().between(8, 20))
        .as(
            (fingers, flexion, offsets, half) -> {
              List<PoseTarget> targets = new ArrayList<>();
              for (Finger finger : Finger.values()) {
                if ((fingers & 1 << finger.ordinal()) != 0) {
                  double centre = flexion + offsets.get(finger.ordinal());
                  targets.add(
                      finger == Finger.LITTLE
                          ? PoseTarget.free(finger)
                          : PoseTarget.pip(
                              finger, FlexionRange.degrees(centre - half, centre + half)));
                }
              }
              return targets;
            });
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void scalingHandEdgeAndMomentArmsLeavesTheAngles(
      @ForAll("targets") List<PoseTarget> targets,
      @ForAll @DoubleRange(min = 160, max = 215) double length,
      @ForAll @DoubleRange(min = 0.5, max = 2) double factor) {
    HandPose small = solve(hand(length), 20, targets);
    HandPose large =
        PoseSolver.solve(
            hand(length).times(factor),
            Length.ofMillimetres(20 * factor),
            targets,
            PalmLimits.USUAL,
            TendonModel.STANDARD.times(factor));
    Assume.that(isPossible(small) && isPossible(large));
    for (int i = 0; i < small.fingers().size(); i++) {
      FingerPose one = small.fingers().get(i);
      FingerPose other = large.fingers().get(i);
      for (Joint joint : Joint.values()) {
        assertEquals(one.flexion(joint).degrees(), other.flexion(joint).degrees(), 0.1);
      }
      assertEquals(one.reach() * factor, other.reach(), 1e-2 * factor * length / 200);
    }
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void anglesAreContinuousInHandLength(
      @ForAll("targets") List<PoseTarget> targets,
      @ForAll @DoubleRange(min = 160, max = 215) double length,
      @ForAll @DoubleRange(min = 8, max = 30) double edge) {
    HandPose one = solve(hand(length), edge, targets);
    HandPose next = solve(hand(length + 0.1), edge, targets);
    Assume.that(isPossible(one) && isPossible(next));
    for (int i = 0; i < one.fingers().size(); i++) {
      double flexion = one.fingers().get(i).pip().degrees();
      double later = next.fingers().get(i).pip().degrees();
      // The angle has an infinite slope where a joint becomes straight.
      if (Math.min(flexion, later) > 5) {
        assertEquals(flexion, later, 2, one.fingers().get(i).finger().word());
      }
    }
  }

  /** Measured in space, from the joint centres of a left and a right hand. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void mirrorHandsHaveTheSameAngles(
      @ForAll("targets") List<PoseTarget> targets,
      @ForAll @DoubleRange(min = 160, max = 215) double length) {
    HandPose pose = solve(hand(length), 20, targets);
    for (FingerPose finger : pose.fingers()) {
      List<Point> left = pose.points(finger.finger(), Side.LEFT);
      List<Point> right = pose.points(finger.finger(), Side.RIGHT);
      assertEquals(between(left), between(right), 1e-9);
      if (finger.beyondReach().millimetres() == 0) {
        assertEquals(finger.pip().degrees(), between(right), 1e-4);
        assertKnuckle(pose, finger, left.get(0));
      }
      assertEquals(-left.get(0).right(), right.get(0).right(), 1e-12);
    }
  }

  /** The chain of bones must end at the knuckle given by the palm. */
  private static void assertKnuckle(HandPose pose, FingerPose finger, Point knuckle) {
    HandShape shape = pose.shape();
    double roll = Math.toRadians(pose.palm().roll().degrees());
    double tilt = Math.toRadians(pose.palm().tilt().degrees());
    double behind = shape.knuckleAlong(Finger.MIDDLE) - shape.knuckleAlong(finger.finger());
    double across = shape.knuckleAcross(finger.finger());
    double down = pose.palm().depth() + behind * Math.cos(tilt) + across * Math.sin(tilt);
    double sideways = across * Math.cos(tilt) - behind * Math.sin(tilt);
    double out = pose.palm().distance() + sideways * Math.sin(roll);
    assertEquals(-down, knuckle.up(), 1e-6);
    assertEquals(out, knuckle.out(), 1e-6);
  }

  /** Flexion of the middle joint between two bones, in degrees. */
  private static double between(List<Point> points) {
    Point a = points.get(0);
    Point b = points.get(1);
    Point c = points.get(2);
    double dot =
        (b.right() - a.right()) * (c.right() - b.right())
            + (b.out() - a.out()) * (c.out() - b.out())
            + (b.up() - a.up()) * (c.up() - b.up());
    return Math.toDegrees(Math.acos(dot / (distance(a, b) * distance(b, c))));
  }

  private static double distance(Point a, Point b) {
    return Math.sqrt(
        Math.pow(a.right() - b.right(), 2)
            + Math.pow(a.out() - b.out(), 2)
            + Math.pow(a.up() - b.up(), 2));
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void samePoseForTheSameTargets(
      @ForAll("targets") List<PoseTarget> targets,
      @ForAll @DoubleRange(min = 160, max = 215) double length) {
    assertEquals(solve(hand(length), 20, targets).palm(), solve(hand(length), 20, targets).palm());
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void noOtherPalmPositionIsBetter(
      @ForAll("targets") List<PoseTarget> targets,
      @ForAll @DoubleRange(min = 160, max = 215) double length,
      @ForAll @DoubleRange(min = -1.4, max = 1.4) double distance,
      @ForAll @DoubleRange(min = -1.4, max = 1.4) double depth,
      @ForAll @DoubleRange(min = -1.4, max = 1.4) double roll,
      @ForAll @DoubleRange(min = -1.4, max = 1.4) double tilt) {
    PoseResiduals residuals = residuals(hand(length), targets);
    residuals.evaluate(new double[] {distance, depth, roll, tilt});
    double elsewhere = residuals.bestCost();
    double found = solve(hand(length), 20, targets).residual();
    assertTrue(found <= elsewhere + 1e-9, found + " > " + elsewhere);
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void derivativesMatchFiniteDifferences(
      @ForAll("targets") List<PoseTarget> bands,
      @ForAll @DoubleRange(min = -0.7, max = 0.7) double distance,
      @ForAll @DoubleRange(min = -0.7, max = 0.7) double depth,
      @ForAll @DoubleRange(min = -0.7, max = 0.7) double roll,
      @ForAll @DoubleRange(min = -0.7, max = 0.7) double tilt) {
    List<PoseTarget> targets =
        bands.stream()
            .map(
                band ->
                    new PoseTarget(
                        band.finger(),
                        band.pip(),
                        Optional.of(FlexionRange.degrees(-60, -50)),
                        Optional.of(FlexionRange.degrees(120, 130)),
                        1 + band.finger().ordinal()))
            .toList();
    PoseResiduals residuals = residuals(hand(190), targets);
    double[] point = {distance, depth, roll, tilt};
    var value = residuals.evaluate(point);
    double step = 1e-6;
    for (int i = 0; i < 4; i++) {
      double[] before = point.clone();
      double[] after = point.clone();
      before[i] -= step;
      after[i] += step;
      double[] low = residuals.evaluate(before).getResiduals().toArray();
      double[] high = residuals.evaluate(after).getResiduals().toArray();
      for (int row = 0; row < low.length; row++) {
        double slope = (high[row] - low[row]) / (2 * step);
        double exact = -value.getJacobian().getEntry(row, i); // residuals are negative
        // Straight fingers and the ends of ranges have a kink; elsewhere the slopes agree.
        boolean kink =
            Math.abs(high[row] - 2 * value.getResiduals().getEntry(row) + low[row]) > 1e-8
                || nearlyStraight(residuals, point, targets);
        assertTrue(
            kink || Math.abs(slope - exact) < 1e-4 * Math.max(1, Math.abs(exact)),
            row + ": " + slope + " or " + exact);
      }
    }
  }

  private static boolean nearlyStraight(
      PoseResiduals residuals, double[] point, List<PoseTarget> targets) {
    double[] palm = residuals.position(point);
    return targets.stream()
        .anyMatch(
            target -> {
              EdgeGeometry geometry = new EdgeGeometry(hand(190), target.finger(), 20);
              double reach = geometry.reach(palm[0], palm[1], palm[2], palm[3]).distance();
              double flexion = geometry.flexion(reach);
              return flexion < 0.05
                  || flexion > Math.PI - 0.05
                  || geometry.lift(reach) < 0.05
                  || geometry.lift(reach) > Math.PI - 0.05;
            });
  }
}
