package gripwright.tissue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.grip.FingerLoss;
import gripwright.grip.FingerSet;
import gripwright.grip.FingerShares;
import gripwright.grip.Grip;
import gripwright.grip.GripFit;
import gripwright.grip.PractisedGrips;
import gripwright.grip.StandardGrips;
import gripwright.hand.Finger;
import gripwright.hand.Hand;
import gripwright.hand.HandShape;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
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
  void aSlipKeepsForceAndIfTheArmStaysTheMoment(
      @ForAll @Size(4) List<@DoubleRange(min = 0, max = 200) Double> forces,
      @ForAll @IntRange(min = 3, max = 15) int bits,
      @ForAll Finger leaving,
      @ForAll Slip.View view,
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
    Slip slip = Slip.of(view, hand, before, OPEN, leaving);
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
    Slip slip = Slip.of(Slip.View.MOMENT_KEPT, hand, before, OPEN, leaving);
    if (slip.momentKept()) {
      noBetterNearby(hand, slip, step);
    }
    Slip swung = Slip.of(Slip.View.ARM_SWINGS, hand, before, OPEN, leaving);
    for (Finger from : swung.after().keySet()) {
      for (Finger to : swung.after().keySet()) {
        Map<Finger, Double> other = new EnumMap<>(swung.after());
        other.merge(from, -step, Double::sum);
        other.merge(to, step, Double::sum);
        assertTrue(cost(swung, swung.after()) <= cost(swung, other) + 1e-6);
      }
    }
    if (slip.momentKept()) {
      assertTrue(
          cost(swung, swung.after()) <= cost(slip, slip.after()) + 1e-6,
          "a moment to keep is one more condition");
    }
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void ofTwoViewsTheWorseForEachFingerCounts(
      @ForAll("grips") Grip grip,
      @ForAll @DoubleRange(min = 160, max = 215) double length,
      @ForAll @DoubleRange(min = 8, max = 30) double edge) {
    for (SlipViews slip : TissueLoad.of(fit(grip, length, edge), 400).slips()) {
      for (Finger finger : slip.remaining()) {
        double kept = slip.momentKept().ratio(finger);
        double swung = slip.armSwings().ratio(finger);
        assertEquals(Math.max(kept, swung), slip.ratio(finger));
        assertTrue(swung >= 1, "a swinging arm relieves no finger");
      }
    }
  }

  /** Numbers relative to the own hang need no newtons: only the load's part of body mass counts. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void relativeToTheOwnHangOnlyThePartOfBodyMassCounts(
      @ForAll("grips") Grip grip,
      @ForAll("models") TissueModel model,
      @ForAll @DoubleRange(min = 160, max = 215) double length,
      @ForAll @DoubleRange(min = 8, max = 30) double edge,
      @ForAll @DoubleRange(min = 40, max = 110) double bodyMass,
      @ForAll @DoubleRange(min = 0.2, max = 2) double part) {
    GripFit own = fit(OwnHang.SETUP.grip(), length, 20);
    GripFit held = fit(grip, length, edge);
    OwnHang hang = OwnHang.of(own, Load.ofKilograms(bodyMass), model);
    double perHand = Load.ofKilograms(bodyMass).newtons() / 2;
    OwnHang ofOther = OwnHang.of(own, Load.ofKilograms(60), model);
    double otherPerHand = Load.ofKilograms(60).newtons() / 2;
    List<RelativeLoad> relative = hang.relative(TissueLoad.of(held, part * perHand, model));
    List<RelativeLoad> other = ofOther.relative(TissueLoad.of(held, part * otherPerHand, model));
    for (int i = 0; i < relative.size(); i++) {
      same(other.get(i).fdp(), relative.get(i).fdp());
      same(other.get(i).fds(), relative.get(i).fds());
      for (Pulley pulley : Pulley.values()) {
        same(other.get(i).of(pulley), relative.get(i).of(pulley));
        assertEquals(
            relative.get(i).of(pulley).value(),
            hang.relative(
                TissueLoad.of(held, part * perHand, model), relative.get(i).finger(), pulley),
            1e-9 * (1 + relative.get(i).of(pulley).value()));
      }
    }
  }

  /** The own hang itself is 1 without an interval, whatever arms, sheath and draws are assumed. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void theOwnHangIsOneInEveryModel(
      @ForAll("models") TissueModel model,
      @ForAll @DoubleRange(min = 160, max = 215) double length,
      @ForAll @DoubleRange(min = 40, max = 110) double bodyMass) {
    GripFit own = fit(OwnHang.SETUP.grip(), length, 20);
    OwnHang hang = OwnHang.of(own, Load.ofKilograms(bodyMass), model);
    TissueLoad load = TissueLoad.of(own, Load.ofKilograms(bodyMass).newtons() / 2, model);
    for (RelativeLoad relative : hang.relative(load)) {
      for (Pulley pulley : Pulley.values()) {
        if (hang.loads(relative.finger(), pulley)) {
          same(new Estimate(1, 1, 1), relative.of(pulley));
        }
      }
    }
    assertTrue(hang.taken());
    assertTrue(hang.loads(Finger.MIDDLE, Pulley.A2) && hang.loads(Finger.MIDDLE, Pulley.A4));
    assertFalse(hang.loads(Finger.LITTLE, Pulley.A2));
  }

  /** The paired draws cancel what both sides have in common. */
  @Example
  void aRelativeNumberIsKnownBetterThanAForce() {
    GripFit own = fit(OwnHang.SETUP.grip(), 193, 20);
    TissueLoad frontThree = TissueLoad.of(fit(StandardGrips.FRONT_THREE, 193, 20), 343);
    OwnHang hang = OwnHang.of(own, Load.ofKilograms(70), TissueModel.STANDARD);
    Estimate force = frontThree.finger(Finger.MIDDLE).orElseThrow().a2();
    Estimate relative = hang.relative(frontThree).get(1).a2();
    assertTrue(spread(relative) < spread(force) / 2, relative + " and " + force);
    assertThrows(
        IllegalArgumentException.class,
        () -> hang.relative(TissueLoad.of(own, 1, TissueModel.STANDARD.withStream(3))));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            OwnHang.of(
                fit(StandardGrips.FRONT_THREE, 193, 20),
                Load.ofKilograms(70),
                TissueModel.STANDARD));
  }

  private static double spread(Estimate estimate) {
    return Math.log(estimate.high() / estimate.low());
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
              Slip.of(
                  Slip.View.ARM_SWINGS,
                  shape,
                  Map.of(Finger.INDEX, 10.0, Finger.MIDDLE, force),
                  OPEN,
                  Finger.INDEX));
    }
    assertThrows(IllegalArgumentException.class, () -> new Estimate(1, 5, 3));
    assertThrows(IllegalArgumentException.class, () -> new Estimate(Double.NaN, 0, 3));
  }
}
