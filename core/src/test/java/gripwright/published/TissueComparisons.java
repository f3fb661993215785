package gripwright.published;

import gripwright.grip.Grip;
import gripwright.grip.GripFit;
import gripwright.grip.PractisedGrips;
import gripwright.grip.StandardGrips;
import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.HandShape;
import gripwright.hand.Sex;
import gripwright.tissue.FingerLoad;
import gripwright.tissue.Pulley;
import gripwright.tissue.Sheath;
import gripwright.tissue.TissueModel;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Tendons and pulleys of the middle finger, unless said otherwise, of the median man's hand on 20
 * mm by the standard set. A crimp is the catalogue's half crimp. Slope has PIP 20 and DIP 50 deg
 * and the cadavers' crimp PIP 90 and DIP -10 deg (pose.cad.crimp.pip, pose.cad.slope.pip,
 * pose.cad.slope.dip).
 */
final class TissueComparisons {

  private static final double NEWTONS = 100;
  private static final double NEWTONS_OF_70_KG = 70 * 9.80665;
  private static final HandShape HAND = PractisedGrips.hand(Sex.MALE, 50);

  private TissueComparisons() {}

  static void into(Comparisons all) {
    ratios(all);
    cadavers(all);
    pulleys(all);
    for (Finger finger : List.of(Finger.INDEX, Finger.MIDDLE, Finger.RING)) {
      all.order(
          "order.a2.half_over_drag." + finger,
          () -> least(StandardGrips.HALF_CRIMP, StandardGrips.THREE_FINGER_DRAG, finger));
    }
    all.order(
        "order.a2.full_over_half",
        () -> least(StandardGrips.FULL_CRIMP, StandardGrips.HALF_CRIMP, Finger.MIDDLE));
  }

  private static void ratios(Comparisons all) {
    all.model("tendon.vig06.ratio.crimp", () -> crimp().fdpToFds());
    all.model("tendon.vig06.ratio.slope", () -> slope().fdpToFds());
    all.model("pulley.vig06.a2.crimp_over_slope", () -> a2(crimp()) / a2(slope()));
    all.inView(
        "pulley.vig06.a4.crimp_over_slope",
        "A4's share of the turn of the end joint, 0.15",
        () -> crimp().a4().value() / slope().a4().value());
    all.constant(
        "tendon.vig06.dip.passive",
        () -> 1 - level(90, -15).fdp().value() / level(90, 0).fdp().value());
    all.model("pulley.schw01.a2_over_tip.crimp", () -> a2(crimp()) / NEWTONS);
    all.order("grip.sh11.depthrule", () -> slope().fdpToFds());
    all.model("pulley.bollen90.a2", () -> a2(crimp()) / NEWTONS * NEWTONS_OF_70_KG);
  }

  /** A2 by FDP is that of FDP alone, by which the cadavers were loaded. */
  private static void cadavers(Comparisons all) {
    all.inView(
        "pulley.sch09.a2_over_fdp.crimp",
        "A2's shares of the turns of knuckle and middle joint, 0.45 and 0.43",
        () -> a2ByFdpAlone(90, -10));
    all.inView(
        "pulley.sch09.a2_over_fdp.slope",
        "A2's shares of the turns of knuckle and middle joint, 0.45 and 0.43",
        () -> a2ByFdpAlone(20, 50));
    all.model("pulley.sch09.a2.crimp_over_slope", () -> a2(crimp()) / a2(slope()));
    all.model("pulley.sch09.fdp_over_tip.crimp", () -> crimp().fdp().value() / NEWTONS);
    all.model("pulley.sch09.fdp_over_tip.slope", () -> slope().fdp().value() / NEWTONS);
    all.model("pulley.sch09.a2_over_tip.crimp", () -> a2(crimp()) / NEWTONS);
    all.model("pulley.sch09.a2_over_tip.slope", () -> a2(slope()) / NEWTONS);
    all.order(
        "pulley.marco98.a4first",
        () -> level(90, -10).use(Pulley.A4).value() / level(90, -10).use(Pulley.A2).value());
  }

  private static void pulleys(Comparisons all) {
    all.constant("pulley.lin90.a2.break", Pulley.A2::breakingNewtons);
    all.order(
        "pulley.lin90.order", () -> Pulley.A2.breakingNewtons() / Pulley.A4.breakingNewtons());
    all.arithmetic("pulley.identity.60deg", () -> Sheath.EVEN.pulleyForce(1, Math.PI / 3));
    all.arithmetic("pulley.identity.90deg", () -> Sheath.EVEN.pulleyForce(1, Math.PI / 2));
  }

  private static FingerLoad crimp() {
    return solved(StandardGrips.HALF_CRIMP, Finger.MIDDLE, HAND);
  }

  private static FingerLoad slope() {
    return level(20, 50);
  }

  private static FingerLoad level(double pip, double dip) {
    FingerPose pose = FingerPose.level(HAND, Finger.MIDDLE, pip, dip);
    return FingerLoad.of(HAND, pose, NEWTONS, TissueModel.STANDARD);
  }

  private static FingerLoad solved(Grip grip, Finger finger, HandShape hand) {
    GripFit fit = GripFit.of(grip, hand, PractisedGrips.EDGE);
    FingerPose pose = fit.pose().finger(finger).orElseThrow();
    return FingerLoad.of(hand, pose, NEWTONS, TissueModel.STANDARD);
  }

  private static double a2(FingerLoad load) {
    return load.a2().value();
  }

  private static double a2ByFdpAlone(double pip, double dip) {
    Sheath sheath = TissueModel.STANDARD.sheath();
    double turn = sheath.turnOfA2(Math.toRadians(90 - pip - dip), Math.toRadians(pip));
    return sheath.pulleyForce(1, turn);
  }

  /** The least over hands from the 5th to the 95th percentile of both sexes. */
  private static double least(Grip one, Grip other, Finger finger) {
    ToDoubleFunction<HandShape> ratio =
        hand -> a2(solved(one, finger, hand)) / a2(solved(other, finger, hand));
    return PractisedGrips.hands().stream().mapToDouble(ratio).min().orElseThrow();
  }
}
