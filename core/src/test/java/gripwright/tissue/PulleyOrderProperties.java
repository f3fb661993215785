package gripwright.tissue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.grip.Band;
import gripwright.grip.FingerSet;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.grip.GripFit;
import gripwright.grip.StandardGrips;
import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.Hand;
import gripwright.hand.HandMeasure;
import gripwright.hand.HandShape;
import gripwright.hand.Joint;
import gripwright.hand.Sex;
import gripwright.quantity.Length;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/**
 * The trade's first caution: a crimp loads A2 more than an open grip, and a full crimp no less than
 * a half crimp. For hands from the 5th to the 95th percentile of both sexes, in length and breadth,
 * on edges from 10 to 30 mm, by force on the pad.
 */
class PulleyOrderProperties {

  /**
   * The middle joint of an open grip is bent by no more, but for a grip's tolerance, in degrees.
   */
  private static final double OPEN = 70 + GripFit.BAND_TOLERANCE;

  private static final Set<String> OPEN_GRIPS =
      Set.of(
          "open-four",
          "three-finger-drag",
          "index-single",
          "middle-single",
          "ring-single",
          "little-single");

  @Provide
  Arbitrary<HandShape> hands() {
    return Combinators.combine(
            Arbitraries.of(Sex.class),
            Arbitraries.doubles().between(5, 95),
            Arbitraries.doubles().between(5, 95))
        .as(
            (sex, length, breadth) ->
                HandShape.of(
                    Hand.ofLength(HandMeasure.LENGTH.percentile(sex, length))
                        .withBreadth(HandMeasure.BREADTH.percentile(sex, breadth))));
  }

  @Provide
  Arbitrary<Grip> openGrips() {
    return Arbitraries.of(
        StandardGrips.all().stream().filter(grip -> OPEN_GRIPS.contains(grip.name())).toList());
  }

  /** Unnamed grips whose middle joints are all open and have about the same flexion. */
  @Provide
  Arbitrary<Grip> inventions() {
    return Combinators.combine(
            Arbitraries.integers().between(1, 7),
            Arbitraries.doubles().between(8, 47),
            Arbitraries.doubles().between(-8, 8).list().ofSize(3),
            Arbitraries.doubles().between(5, 15))
        .as(
            (bits, flexion, offsets, width) -> {
              List<Finger> fingers =
                  List.of(Finger.INDEX, Finger.MIDDLE, Finger.RING).stream()
                      .filter(finger -> (bits & 1 << finger.ordinal()) != 0)
                      .toList();
              Grip.Builder builder =
                  Grip.named("invention")
                      .family(fingers.size() == 1 ? GripFamily.SINGLE : GripFamily.SPLIT)
                      .fingers(new FingerSet(bits));
              for (Finger finger : fingers) {
                double low = flexion + offsets.get(finger.ordinal());
                builder.band(finger, Joint.PIP, Band.degrees(low, low + width));
              }
              return builder.build();
            });
  }

  private static double a2(GripFit fit, Finger finger) {
    TissueLoad load = TissueLoad.of(fit, 100);
    return load.force(finger, Pulley.A2) / load.fingertip(finger);
  }

  private static GripFit fit(Grip grip, HandShape hand, double edge) {
    return GripFit.of(grip, hand, Length.ofMillimetres(edge));
  }

  private static void less(GripFit open, GripFit crimp) {
    for (FingerPose pose : open.pose().fingers()) {
      double opened = a2(open, pose.finger());
      double crimped = a2(crimp, pose.finger());
      assertTrue(opened < crimped, () -> pose.finger() + ": " + opened + " in " + open);
    }
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void halfCrimpLoadsA2MoreThanEveryOpenGrip(
      @ForAll("openGrips") Grip grip,
      @ForAll("hands") HandShape hand,
      @ForAll @DoubleRange(min = 10, max = 30) double edge) {
    GripFit open = fit(grip, hand, edge);
    assertTrue(open.reachable(), open::toString);
    open.pose()
        .fingers()
        .forEach(pose -> assertTrue(pose.pip().degrees() <= OPEN, () -> pose.toString()));
    less(open, fit(StandardGrips.HALF_CRIMP, hand, edge));
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void soItDoesThanOpenGripsThatNobodyHasNamed(
      @ForAll("inventions") Grip grip,
      @ForAll("hands") HandShape hand,
      @ForAll @DoubleRange(min = 10, max = 30) double edge) {
    GripFit open = fit(grip, hand, edge);
    Assume.that(open.reachable());
    less(open, fit(StandardGrips.HALF_CRIMP, hand, edge));
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void fullCrimpLoadsA2NoLessThanHalfCrimp(
      @ForAll("hands") HandShape hand, @ForAll @DoubleRange(min = 10, max = 30) double edge) {
    GripFit full = fit(StandardGrips.FULL_CRIMP, hand, edge);
    GripFit half = fit(StandardGrips.HALF_CRIMP, hand, edge);
    for (Finger finger : Finger.values()) {
      double closed = a2(full, finger);
      double bent = a2(half, finger);
      assertTrue(closed >= bent, () -> finger + ": " + closed + " below " + bent);
    }
  }

  /** Every other grip of the catalogue has a middle joint that is bent further. */
  @Property(edgeCases = EdgeCasesMode.NONE, tries = 20)
  void openGripsAreThoseWithoutABentMiddleJoint(
      @ForAll("hands") HandShape hand, @ForAll @DoubleRange(min = 10, max = 30) double edge) {
    Set<String> open =
        StandardGrips.all().stream()
            .filter(
                grip ->
                    fit(grip, hand, edge).pose().fingers().stream()
                        .allMatch(pose -> pose.pip().degrees() <= OPEN))
            .map(Grip::name)
            .collect(Collectors.toSet());
    assertEquals(OPEN_GRIPS, open);
  }
}
