package gripwright.hand.published;

import gripwright.ModelPage;
import gripwright.grip.Grip;
import gripwright.grip.GripFit;
import gripwright.grip.PractisedGrips;
import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.Joint;
import gripwright.hand.Sex;
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
    table.append("| grip | hand | index | middle | ring | little | roll | taken |\n");
    table.append("|---|---|---|---|---|---|---|---|\n");
    List<Grip> grips = new ArrayList<>(PractisedGrips.all());
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
            " %d | %s |%n",
            Math.round(fit.wristRoll().degrees()),
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
