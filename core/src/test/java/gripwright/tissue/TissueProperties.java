package gripwright.tissue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.grip.FingerLoss;
import gripwright.grip.FingerSet;
import gripwright.grip.FingerShares;
import gripwright.grip.Grip;
import gripwright.grip.GripFit;
import gripwright.grip.PractisedGrips;
import gripwright.hand.Finger;
import gripwright.hand.Hand;
import gripwright.hand.HandShape;
import gripwright.quantity.Length;
import gripwright.statics.TendonModel;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

class TissueProperties {

  private static final Map<Finger, Double> OPEN = FingerShares.of(FingerSet.FOUR, 0);

  @Provide
  Arbitrary<Grip> grips() {
    return Arbitraries.of(PractisedGrips.all());
  }

  @Provide
  Arbitrary<TissueModel> models() {
    return Arbitraries.of(
        TissueModel.STANDARD,
        TissueModel.STANDARD.with(TendonModel.AN),
        TissueModel.STANDARD.with(Sheath.THIRDS.withFriction(0.05)),
        TissueModel.STANDARD.withHorizontalPull(0.2).withStream(7));
  }

  private static GripFit fit(Grip grip, double length, double edge) {
    return GripFit.of(grip, PractisedGrips.ofLength(length), Length.ofMillimetres(edge));
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void theFingersTogetherHoldTheLoadAndNothingPushes(
      @ForAll("grips") Grip grip,
      @ForAll("models") TissueModel model,
      @ForAll @DoubleRange(min = 160, max = 215) double length,
      @ForAll @DoubleRange(min = 8, max = 35) double edge,
      @ForAll @DoubleRange(min = 0, max = 1000) double newtons) {
    TissueLoad load = TissueLoad.of(fit(grip, length, edge), newtons, model);
    double force = 0;
    double share = 0;
    for (FingerLoad finger : load.fingers()) {
      force += finger.fingertip().value();
      share += finger.share().value();
      for (Estimate estimate :
          List.of(
              finger.share(),
              finger.fingertip(),
              finger.fdp(),
              finger.fds(),
              finger.a2(),
              finger.a4(),
              finger.a2Utilization(),
              finger.a4Utilization())) {
        assertTrue(
            0 <= estimate.low()
                && estimate.low() <= estimate.value()
                && estimate.value() <= estimate.high(),
            estimate.toString());
      }
    }
    assertEquals(newtons, force, 1e-9 * Math.max(1, newtons));
    assertEquals(1, share, 1e-12);
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void everythingGoesInProportionToTheLoad(
      @ForAll("grips") Grip grip,
      @ForAll("models") TissueModel model,
      @ForAll @DoubleRange(min = 160, max = 215) double length,
      @ForAll @DoubleRange(min = 1, max = 500) double newtons,
      @ForAll @DoubleRange(min = 0.1, max = 3) double factor) {
    GripFit fit = fit(grip, length, 20);
    List<FingerLoad> less = TissueLoad.of(fit, newtons, model).fingers();
    List<FingerLoad> more = TissueLoad.of(fit, newtons * factor, model).fingers();
    for (int i = 0; i < less.size(); i++) {
      same(less.get(i).fdp().times(factor), more.get(i).fdp());
      same(less.get(i).fds().times(factor), more.get(i).fds());
      same(less.get(i).a2().times(factor), more.get(i).a2());
      same(less.get(i).a4().times(factor), more.get(i).a4());
      same(less.get(i).a4Utilization().times(factor), more.get(i).a4Utilization());
    }
  }

  private static void same(Estimate expected, Estimate actual) {
    double tolerance = 1e-9 * Math.max(1, expected.high());
    assertEquals(expected.value(), actual.value(), tolerance);
    assertEquals(expected.low(), actual.low(), tolerance);
    assertEquals(expected.high(), actual.high(), tolerance);
  }

  @Property
  void takingAFingerOffNeverRaisesCapacity(
      @ForAll FingerLoss view, @ForAll @IntRange(min = 1, max = 15) int bits, @ForAll Finger gone) {
    int left = bits & ~(1 << gone.ordinal());
    if (left != 0) {
      double before = view.capacity(new FingerSet(bits));
      double after = view.capacity(new FingerSet(left));
      assertTrue(after <= before && before <= 1, after + " of " + before);
    }
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void aSlipKeepsForceAndMoment(
      @ForAll @Size(4) List<@DoubleRange(min = 0, max = 200) Double> forces,
      @ForAll @IntRange(min = 3, max = 15) int bits,
      @ForAll Finger leaving,
      @ForAll @DoubleRange(min = 160, max = 215) double length) {
    Map<Finger, Double> before = new EnumMap<>(Finger.class);
    for (Finger finger : Finger.values()) {
      if ((bits & 1 << finger.ordinal()) != 0) {
        before.put(finger, forces.get(finger.ordinal()));
      }
    }
    if (before.size() < 2 || !before.containsKey(leaving)) {
      return;
    }
    HandShape hand = PractisedGrips.ofLength(length);
    Slip slip = Slip.of(hand, before, OPEN, leaving);
    double total = before.values().stream().mapToDouble(f -> f).sum();
    double later = slip.after().values().stream().mapToDouble(f -> f).sum();
    assertEquals(total, later, 1e-6);
    slip.after().values().forEach(force -> assertTrue(force >= 0));
    if (slip.momentKept()) {
      assertEquals(moment(hand, before), moment(hand, slip.after()), 1e-4);
    }
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void aSlipChangesAsLittleAsItCan(
      @ForAll @Size(4) List<@IntRange(min = 0, max = 200) Integer> forces,
      @ForAll Finger leaving,
      @ForAll @DoubleRange(min = 160, max = 215) double length,
      @ForAll @DoubleRange(min = -1, max = 1) double step) {
    Map<Finger, Double> before = new EnumMap<>(Finger.class);
    for (Finger finger : Finger.values()) {
      before.put(finger, (double) forces.get(finger.ordinal()));
    }
    HandShape hand = PractisedGrips.ofLength(length);
    Slip slip = Slip.of(hand, before, OPEN, leaving);
    if (slip.momentKept()) {
      noBetterNearby(hand, slip, step);
    }
  }

  private static double moment(HandShape hand, Map<Finger, Double> forces) {
    return forces.entrySet().stream()
        .mapToDouble(force -> force.getValue() * hand.knuckleAcross(force.getKey()))
        .sum();
  }

  /** With three fingers there is one way to shift load at the same force and moment. */
  private static void noBetterNearby(HandShape hand, Slip slip, double step) {
    List<Finger> rest = List.copyOf(slip.after().keySet());
    if (rest.size() < 3) {
      return;
    }
    double a = hand.knuckleAcross(rest.get(0));
    double b = hand.knuckleAcross(rest.get(1));
    double c = hand.knuckleAcross(rest.get(2));
    double[] shift = {(b - c) * step / 20, (c - a) * step / 20, (a - b) * step / 20};
    Map<Finger, Double> other = new EnumMap<>(Finger.class);
    for (int i = 0; i < 3; i++) {
      double force = slip.after().get(rest.get(i)) + shift[i];
      if (force < 0) {
        return;
      }
      other.put(rest.get(i), force);
    }
    assertTrue(cost(slip, slip.after()) <= cost(slip, other) + 1e-6);
  }

  private static double cost(Slip slip, Map<Finger, Double> after) {
    return after.entrySet().stream()
        .mapToDouble(
            force -> {
              double change = force.getValue() - slip.before().get(force.getKey());
              return change * change / OPEN.get(force.getKey());
            })
        .sum();
  }

  @Example
  void whatIsNoForceOrEstimateIsRefused() {
    HandShape shape = HandShape.of(Hand.ofLength(Length.ofMillimetres(180)));
    for (double force : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThrows(
          IllegalArgumentException.class,
          () ->
              Slip.of(shape, Map.of(Finger.INDEX, 10.0, Finger.MIDDLE, force), OPEN, Finger.INDEX));
    }
    assertThrows(IllegalArgumentException.class, () -> new Estimate(1, 5, 3));
    assertThrows(IllegalArgumentException.class, () -> new Estimate(Double.NaN, 0, 3));
  }
}
