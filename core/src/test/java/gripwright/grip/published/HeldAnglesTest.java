package gripwright.grip.published;

import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.grip.Grip;
import gripwright.grip.GripFit;
import gripwright.grip.PractisedGrips;
import gripwright.grip.StandardGrips;
import gripwright.hand.HandShape;
import gripwright.quantity.Length;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * pose.fischer24.*: flexion of the middle joints while holding, over the fingers, of eleven
 * climbers on holds 23 mm deep: crimp 87 deg (SD 12), half crimp 70 (14), open hand 39 (27).
 * Fischer G, Schneeberger M, Petter SA, Scheibler AG, Wolf P, Calcagni M, Schweizer A, Reissner L
 * 2024, Bioengineering 11(4):370 (abstract). The holds were incut by 25 deg, the model's edge is
 * flat. The crimp was in view when the little finger's band of the full crimp was set, and is no
 * check of the model; half crimp and open hand were not.
 */
class HeldAnglesTest {

  private static final Length DEPTH = Length.ofMillimetres(23);

  static List<HandShape> hands() {
    return PractisedGrips.hands();
  }

  private static void within(Grip grip, HandShape hand, double mean, double spread) {
    double flexion =
        GripFit.of(grip, hand, DEPTH).pose().fingers().stream()
            .mapToDouble(pose -> pose.pip().degrees())
            .average()
            .orElseThrow();
    assertTrue(
        Math.abs(flexion - mean) <= spread, () -> grip.name() + ", " + hand + ": " + flexion);
  }

  @ParameterizedTest
  @MethodSource("hands")
  void middleJointsLieWithinThePublishedSpread(HandShape hand) {
    within(StandardGrips.FULL_CRIMP, hand, 87, 12);
    within(StandardGrips.HALF_CRIMP, hand, 70, 14);
    within(StandardGrips.OPEN_FOUR, hand, 39, 27);
    within(StandardGrips.THREE_FINGER_DRAG, hand, 39, 27);
  }
}
