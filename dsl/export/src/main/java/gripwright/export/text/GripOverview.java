package gripwright.export.text;

import gripwright.hand.Finger;
import gripwright.hand.Joint;
import gripwright.survey.GripSurvey;
import java.util.ArrayList;
import java.util.List;

/**
 * One line a grip: whether the hand takes it, how its middle joints lie, what a slip does, and
 * whether it is open to the athlete. A name that leaves no room for the rest has a line of its own.
 */
final class GripOverview {

  private static final String LEGEND =
      "Estimated: bend of the middle joints of index, middle, ring and little finger (0 deg is"
          + " straight), roll of the palm, and the slip that loads another finger most. Gate: whether"
          + " the built-in rules leave the grip open, limited or closed.";

  private static final int LONGEST_NAME = 20;
  private static final int TAKEN = 6;
  private static final int ANGLE = 4;
  private static final int SLIP = 22;

  private final GripSurvey survey;
  private final int width;

  GripOverview(GripSurvey survey) {
    this.survey = survey;
    this.width =
        survey.rows().stream()
            .mapToInt(row -> GripWords.name(row).length())
            .filter(length -> length <= LONGEST_NAME)
            .max()
            .orElse(0);
  }

  /** Returns the table of ranges, its names in a column as wide as here. */
  RangeTable ranges() {
    return new RangeTable(survey.rows(), width);
  }

  void add(Page page) {
    page.wrapped("", LEGEND);
    page.gap();
    page.line(line("", "taken", List.of("I", "M", "R", "L"), "roll", "worst slip", "gate", width));
    for (GripSurvey.Row row : survey.rows()) {
      String name = GripWords.name(row);
      if (name.length() > width) {
        page.line(name);
        name = "";
      }
      page.line(line(name, row, width));
    }
  }

  /** Returns the line of a row without its name. */
  static String line(GripSurvey.Row row) {
    return line("", row, 0);
  }

  private static String line(String name, GripSurvey.Row row, int width) {
    return row.fit().reachable()
        ? taken(name, row, width)
        : line(name, "no", List.of("", "", "", ""), "", "", "-", width);
  }

  private static String taken(String name, GripSurvey.Row row, int width) {
    List<String> angles = new ArrayList<>();
    for (Finger finger : Finger.values()) {
      angles.add(
          row.fit()
              .flexion(finger, Joint.PIP)
              .map(angle -> GripWords.degrees(angle.degrees()))
              .orElse("-"));
    }
    return line(
        name,
        RangeTable.taken(row),
        angles,
        GripWords.degrees(row.fit().wristRoll().degrees()),
        ForceTable.worstSlip(row).orElse("-"),
        gate(row),
        width);
  }

  private static String gate(GripSurvey.Row row) {
    return row.limited() ? "limited" : row.open() ? "open" : "closed";
  }

  private static String line(
      String name,
      String taken,
      List<String> angles,
      String roll,
      String slip,
      String gate,
      int width) {
    StringBuilder line =
        new StringBuilder(Page.padRight(name, width))
            .append("  ")
            .append(Page.padRight(taken, TAKEN));
    angles.forEach(angle -> line.append(Page.padLeft(angle, ANGLE)));
    return line.append(Page.padLeft(roll, 6))
        .append("  ")
        .append(Page.padRight(slip, SLIP))
        .append("  ")
        .append(gate)
        .toString();
  }
}
