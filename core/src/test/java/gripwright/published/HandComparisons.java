package gripwright.published;

import gripwright.grip.Grip;
import gripwright.grip.GripFit;
import gripwright.grip.PractisedGrips;
import gripwright.grip.StandardGrips;
import gripwright.hand.Finger;
import gripwright.hand.Hand;
import gripwright.hand.HandMeasure;
import gripwright.hand.HandShape;
import gripwright.hand.Joint;
import gripwright.hand.JointNorms;
import gripwright.hand.Segment;
import gripwright.hand.Sex;
import gripwright.quantity.Length;
import gripwright.statics.Landsmeer;
import gripwright.statics.MomentArms;
import gripwright.statics.Tendon;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;

/** Joints, the size of hands and bones, and moment arms. */
final class HandComparisons {

  private static final double RIGHT_ANGLE = Math.PI / 2;
  private static final HandShape UNIT =
      HandShape.of(Hand.ofLength(Length.ofMillimetres(200)).withBreadth(Length.ofMillimetres(100)));
  private static final HandShape MEDIAN = PractisedGrips.hand(Sex.MALE, 50);
  private static final Map<Segment, String> SEGMENTS =
      Map.of(Segment.PROXIMAL, "pp", Segment.MIDDLE, "mp", Segment.DISTAL, "dp");

  private HandComparisons() {}

  static void into(Comparisons all) {
    joints(all);
    poses(all);
    bones(all);
    for (Sex sex : Sex.values()) {
      measure(all, sex, HandMeasure.LENGTH, "hl");
      measure(all, sex, HandMeasure.BREADTH, "hb");
    }
    populations(all);
    arms(all, "arm.ketchum.", MomentArms.KETCHUM_1978, Finger.values());
    arms(all, "arm.an83.", MomentArms.AN_1983, Finger.INDEX);
    all.order("arm.order.flexor", HandComparisons::leastStepOfArms);
    excursions(all);
  }

  private static void joints(Comparisons all) {
    for (Joint joint : Joint.values()) {
      String name = joint.name().toLowerCase(Locale.ROOT);
      all.constant("rom.aaos." + name + ".flex", () -> flexion(JointNorms.AAOS, joint));
      all.constant("rom.aaos." + name + ".ext", () -> extension(JointNorms.AAOS, joint));
      all.constant("rom.ama." + name + ".flex", () -> flexion(JointNorms.AMA, joint));
      all.model("rom.ref." + name + ".flex", () -> flexion(JointNorms.AAOS, joint));
    }
    all.constant("rom.ama.mcp.ext", () -> extension(JointNorms.AMA, Joint.MCP));
    all.model("rom.ref.mcp.hyperext", () -> extension(JointNorms.AAOS, Joint.MCP));
    JointNorms ama = JointNorms.AMA;
    all.arithmetic(
        "rom.tam.finger",
        () ->
            JointNorms.totalActiveMotion(ama.of(Joint.MCP), ama.of(Joint.PIP), ama.of(Joint.DIP)));
  }

  private static double flexion(JointNorms norms, Joint joint) {
    return norms.of(joint).high().degrees();
  }

  private static double extension(JointNorms norms, Joint joint) {
    return 0 - norms.of(joint).low().degrees();
  }

  /** The little finger's band of the full crimp was set with the published crimp in view. */
  private static void poses(Comparisons all) {
    all.inView(
        "pose.fischer24.crimp",
        "the little finger's band in the catalogue's full crimp",
        () -> meanFlexion(StandardGrips.FULL_CRIMP));
    all.model("pose.fischer24.halfcrimp", () -> meanFlexion(StandardGrips.HALF_CRIMP));
    all.model("pose.fischer24.open", () -> meanFlexion(StandardGrips.OPEN_FOUR));
  }

  private static double meanFlexion(Grip grip) {
    return GripFit.of(grip, MEDIAN, Length.ofMillimetres(23)).pose().fingers().stream()
        .mapToDouble(finger -> finger.pip().degrees())
        .average()
        .orElseThrow();
  }

  private static void bones(Comparisons all) {
    HandShape of193 = HandShape.of(Hand.ofLength(Length.ofMillimetres(193)));
    for (Finger finger : Finger.values()) {
      SEGMENTS.forEach(
          (segment, letters) -> {
            String bone = finger + "." + letters;
            all.constant(
                "anthro.buchholz." + bone, () -> UNIT.bone(finger, segment).millimetres() / 200);
            all.arithmetic(
                "anthro.derived.hl193." + bone, () -> of193.bone(finger, segment).millimetres());
          });
      String knuckle = "anthro.buchholz." + finger + ".mcp.";
      all.constant(knuckle + "axial", () -> UNIT.knuckleAlong(finger) / 200);
      all.constant(knuckle + "radioulnar", () -> UNIT.knuckleAcross(finger) / 100);
      all.model(
          "anthro.buchholz." + finger + ".mc",
          () ->
              Math.hypot(MEDIAN.knuckleAlong(finger), MEDIAN.knuckleAcross(finger))
                  / MEDIAN.length().millimetres());
    }
  }

  private static void measure(Comparisons all, Sex sex, HandMeasure measure, String letters) {
    String id = "anthro.ansur2." + sex + "." + letters + ".";
    for (int percentile : new int[] {5, 50, 95}) {
      all.constant(id + "p" + percentile, () -> percentile(measure, sex, percentile));
    }
    all.model(id + "mean", () -> mean(measure, sex));
    all.model(
        id + "sd", () -> (percentile(measure, sex, 84.134) - percentile(measure, sex, 15.866)) / 2);
  }

  private static double percentile(HandMeasure measure, Sex sex, double percentile) {
    return measure.percentile(sex, percentile).millimetres();
  }

  /** The mean of the percentiles from 1 to 99 in steps of a tenth. */
  private static double mean(HandMeasure measure, Sex sex) {
    double sum = 0;
    int count = 0;
    for (int tenths = 10; tenths <= 990; tenths++) {
      sum += percentile(measure, sex, tenths / 10.0);
      count++;
    }
    return sum / count;
  }

  private static void populations(Comparisons all) {
    all.model("anthro.ansur1.male.hl", () -> mean(HandMeasure.LENGTH, Sex.MALE));
    all.model("anthro.ansur1.female.hl", () -> mean(HandMeasure.LENGTH, Sex.FEMALE));
    all.models(
        "anthro.nasa.usmale.hl",
        () ->
            Arrays.stream(new double[] {5, 50, 95})
                .map(each -> percentile(HandMeasure.LENGTH, Sex.MALE, each))
                .toArray());
    all.model(
        "anthro.din33402.sexdiff.hand",
        () ->
            percentile(HandMeasure.LENGTH, Sex.MALE, 50)
                - percentile(HandMeasure.LENGTH, Sex.FEMALE, 50));
  }

  private static void arms(Comparisons all, String id, MomentArms arms, Finger... fingers) {
    for (Finger finger : fingers) {
      for (Joint joint : Joint.values()) {
        for (Tendon tendon : Tendon.values()) {
          if (joint != Joint.DIP || tendon == Tendon.FDP) {
            all.constant(
                (id + finger + "." + joint + "." + tendon).toLowerCase(Locale.ROOT),
                () -> arms.arm(finger, joint, tendon));
          }
        }
      }
    }
  }

  /** The least ratio of FDP's arm at a joint to that at the next one, of Ketchum's fingers. */
  private static double leastStepOfArms() {
    double least = Double.POSITIVE_INFINITY;
    for (Finger finger : Finger.values()) {
      double mcp = MomentArms.KETCHUM_1978.arm(finger, Joint.MCP, Tendon.FDP);
      double pip = MomentArms.KETCHUM_1978.arm(finger, Joint.PIP, Tendon.FDP);
      double dip = MomentArms.KETCHUM_1978.arm(finger, Joint.DIP, Tendon.FDP);
      least = Math.min(least, Math.min(mcp / pip, pip / dip));
    }
    return least;
  }

  private static void excursions(Comparisons all) {
    all.arithmetic("excursion.derived.ketchum.index.fdp", () -> bent(MomentArms.KETCHUM_1978));
    all.arithmetic("excursion.derived.an83.index.fdp", () -> bent(MomentArms.AN_1983));
    all.arithmetic("excursion.landsmeer1", () -> Landsmeer.onBone(10, RIGHT_ANGLE));
    all.arithmetic("excursion.landsmeer2", () -> Landsmeer.inSling(10, RIGHT_ANGLE));
    all.arithmetic("excursion.landsmeer3.90", () -> Landsmeer.inSheath(4, 6, RIGHT_ANGLE));
    all.arithmetic("excursion.landsmeer3.60", () -> Landsmeer.inSheath(4, 6, Math.PI / 3));
  }

  private static double bent(MomentArms arms) {
    double sum = 0;
    for (Map.Entry<Joint, Integer> each :
        Map.of(Joint.MCP, 90, Joint.PIP, 100, Joint.DIP, 70).entrySet()) {
      double arm = arms.arm(Finger.INDEX, each.getKey(), Tendon.FDP);
      sum += Landsmeer.onBone(arm, Math.toRadians(each.getValue()));
    }
    return sum;
  }
}
