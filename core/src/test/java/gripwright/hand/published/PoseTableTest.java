package gripwright.hand.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.ModelPage;
import gripwright.grip.Grip;
import gripwright.grip.GripFit;
import gripwright.grip.PractisedGrips;
import gripwright.grip.StandardGrips;
import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.Hand;
import gripwright.hand.HandPose;
import gripwright.hand.HandShape;
import gripwright.hand.Joint;
import gripwright.hand.Segment;
import gripwright.hand.Sex;
import gripwright.hand.Side;
import gripwright.quantity.Length;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** The table of poses in docs/models/hand.md. */
class PoseTableTest {

  @Test
  void poses() throws IOException {
    StringBuilder table = new StringBuilder();
    table.append("| grip | hand | index | middle | ring | little | roll | tilt | taken |\n");
    table.append("|---|---|---|---|---|---|---|---|---|\n");
    List<Grip> grips = new ArrayList<>(StandardGrips.all());
    grips.addAll(PractisedGrips.all());
    grips.add(PractisedGrips.BACK_THREE_MIDDLE_OPEN);
    grips.add(PractisedGrips.STRAIGHT_FOUR);
    for (Grip grip : grips) {
      row(table, grip, Sex.FEMALE, 5);
      row(table, grip, Sex.FEMALE, 50);
      row(table, grip, Sex.MALE, 50);
      row(table, grip, Sex.MALE, 95);
    }
    ModelPage.check("hand.md", "poses", table.toString());
  }

  @Test
  void spreads() throws IOException {
    Hand length = Hand.ofLength(Length.ofMillimetres(180));
    HandShape usual = HandShape.of(length);
    Hand measured = length;
    for (Finger finger : Finger.values()) {
      for (Segment segment : Segment.values()) {
        measured = measured.withBone(finger, segment, usual.bone(finger, segment));
      }
    }
    StringBuilder table = new StringBuilder();
    table.append("| grip | bones | index | middle | ring | little | taken |\n");
    table.append("|---|---|---|---|---|---|---|\n");
    for (Grip grip :
        List.of(
            StandardGrips.HALF_CRIMP,
            StandardGrips.FULL_CRIMP,
            StandardGrips.OPEN_FOUR,
            StandardGrips.THREE_FINGER_DRAG,
            StandardGrips.INDEX_SINGLE)) {
      spread(table, grip, "estimated", usual);
      spread(table, grip, "measured", HandShape.of(measured));
    }
    ModelPage.check("hand.md", "spread", table.toString());
  }

  private static void spread(StringBuilder table, Grip grip, String bones, HandShape hand) {
    GripFit fit = GripFit.of(grip, hand, PractisedGrips.EDGE);
    table.append("| ").append(grip.name()).append(" | ").append(bones).append(" |");
    for (Finger finger : Finger.values()) {
      String cell =
          fit.spread()
              .flexion(finger, Joint.PIP)
              .map(
                  range ->
                      String.format(
                          Locale.ROOT,
                          " %d (%d to %d) |",
                          Math.round(fit.flexion(finger, Joint.PIP).orElseThrow().degrees()),
                          Math.round(range.low().degrees()),
                          Math.round(range.high().degrees())))
              .orElse(" |");
      table.append(cell);
    }
    table.append(String.format(Locale.ROOT, " %.0f %% |%n", 100 * fit.spread().taken()));
  }

  /**
   * Median hand, half crimp: end joints lie on one level, tips do not where end bones are tipped by
   * different angles. The little finger's stays level.
   */
  @Test
  void tipsAreNotLevel() {
    HandShape hand = PractisedGrips.hand(Sex.MALE, 50);
    HandPose pose = GripFit.of(StandardGrips.HALF_CRIMP, hand, PractisedGrips.EDGE).pose();
    List<Long> tips =
        List.of(Finger.values()).stream()
            .map(finger -> Math.round(pose.points(finger, Side.RIGHT).get(3).up()))
            .toList();
    assertEquals(List.of(-5L, -9L, -2L, 0L), tips);
  }

  private static void row(StringBuilder table, Grip grip, Sex sex, double percentile) {
    GripFit fit = GripFit.of(grip, PractisedGrips.hand(sex, percentile), PractisedGrips.EDGE);
    table.append(
        String.format(
            Locale.ROOT,
            "| %s | %s, %.0f %% (%.0f mm) |",
            grip.name(),
            sex,
            percentile,
            fit.pose().shape().length().millimetres()));
    for (Finger finger : Finger.values()) {
      String cell = fit.pose().finger(finger).map(PoseTableTest::angles).orElse("");
      table.append(' ').append(cell).append(cell.isEmpty() ? "|" : " |");
    }
    table.append(
        String.format(
            Locale.ROOT,
            " %d | %d | %s |%n",
            Math.round(fit.wristRoll().degrees()),
            Math.round(fit.pose().palm().tilt().degrees()),
            fit.reachable() ? "yes" : "no"));
  }

  private static String angles(FingerPose pose) {
    return String.format(
        Locale.ROOT,
        "%d/%d/%d",
        Math.round(pose.flexion(Joint.MCP).degrees()),
        Math.round(pose.flexion(Joint.PIP).degrees()),
        Math.round(pose.flexion(Joint.DIP).degrees()));
  }
}
