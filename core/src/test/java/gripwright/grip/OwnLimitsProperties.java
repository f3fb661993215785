package gripwright.grip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.hand.Finger;
import gripwright.hand.FlexionRange;
import gripwright.hand.Hand;
import gripwright.hand.Joint;
import gripwright.hand.JointLimits;
import gripwright.quantity.Angle;
import gripwright.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.statistics.Statistics;

/** Joint limits bound what a hand takes, and nothing else. */
class OwnLimitsProperties {

  private static Hand hand(double length, JointLimits limits) {
    return new Hand(Length.ofMillimetres(length), Optional.empty(), Map.of(), Map.of(), limits);
  }

  private static GripFit fit(Grip grip, double length, double edge, JointLimits limits) {
    return GripFit.of(grip, hand(length, limits), Length.ofMillimetres(edge));
  }

  @Provide
  Arbitrary<Grip> grips() {
    List<Grip> grips = new ArrayList<>(PractisedGrips.all());
    grips.addAll(StandardGrips.all());
    return Arbitraries.of(grips);
  }

  /**
   * A limit of a joint, by how far it lies on either side of the flexion that suits the hand, and
   * how far the joint is stretched at either end, in degrees.
   */
  record Stretch(
      Finger finger, Joint joint, double below, double above, double lower, double higher) {

    /** The limit before or after the stretch; the joint of an idle finger is at 45 deg. */
    FlexionRange range(GripFit free, boolean after) {
      double flexion = free.flexion(finger, joint).map(Angle::degrees).orElse(45.0);
      double low = flexion - below;
      double high = Math.max(low, flexion + above);
      return after
          ? FlexionRange.degrees(low - lower, high + higher)
          : FlexionRange.degrees(low, high);
    }

    boolean possible(GripFit free) {
      return joint.middleOfRange().contains(range(free, false).centre())
          && joint.middleOfRange().contains(range(free, true).centre());
    }
  }

  @Provide
  Arbitrary<List<Stretch>> stretches() {
    return Combinators.combine(
            Arbitraries.of(Finger.class),
            Arbitraries.frequencyOf(
                Tuple.of(4, Arbitraries.of(Joint.PIP)), Tuple.of(1, Arbitraries.of(Joint.class))),
            Arbitraries.doubles().between(-8, 20),
            Arbitraries.doubles().between(-8, 20),
            Arbitraries.doubles().between(0, 30),
            Arbitraries.doubles().between(0, 30))
        .as(Stretch::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(5);
  }

  private static JointLimits limits(GripFit free, List<Stretch> stretches, boolean after) {
    JointLimits limits = JointLimits.UNKNOWN;
    for (Stretch each : stretches) {
      limits = limits.with(each.finger(), each.joint(), each.range(free, after));
    }
    return limits;
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void stretchingAJointNeverTakesAGripAway(
      @ForAll("grips") Grip grip,
      @ForAll("stretches") List<Stretch> stretches,
      @ForAll @DoubleRange(min = 160, max = 215) double length,
      @ForAll @DoubleRange(min = 8, max = 30) double edge) {
    GripFit free = fit(grip, length, edge, JointLimits.UNKNOWN);
    Assume.that(stretches.stream().allMatch(each -> each.possible(free)));
    GripFit before = fit(grip, length, edge, limits(free, stretches, false));
    GripFit after = fit(grip, length, edge, limits(free, stretches, true));
    Statistics.collect(before.reachable(), after.reachable());
    assertTrue(
        !before.reachable() || after.reachable(),
        () -> grip.name() + " " + before.pose() + " but then " + after.misses());
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void aLimitThatThePoseKeepsToChangesNothing(
      @ForAll("grips") Grip grip,
      @ForAll @DoubleRange(min = 160, max = 215) double length,
      @ForAll @DoubleRange(min = 8, max = 30) double edge,
      @ForAll @DoubleRange(min = 0.1, max = 20) double room) {
    GripFit free = fit(grip, length, edge, JointLimits.UNKNOWN);
    JointLimits roomy = JointLimits.UNKNOWN;
    for (Finger finger : grip.fingers().fingers()) {
      double pip = free.flexion(finger, Joint.PIP).orElseThrow().degrees();
      roomy = roomy.with(finger, Joint.PIP, FlexionRange.degrees(pip - room, pip + room));
    }
    GripFit limited = fit(grip, length, edge, roomy);
    if (free.reachable()) {
      assertTrue(limited.reachable(), () -> limited.misses().toString());
      for (Finger finger : grip.fingers().fingers()) {
        assertEquals(
            free.flexion(finger, Joint.PIP).orElseThrow().degrees(),
            limited.flexion(finger, Joint.PIP).orElseThrow().degrees(),
            1);
      }
    }
  }
}
