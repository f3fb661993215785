package gripwright.export.text;

import gripwright.grip.FitSpread;
import gripwright.hand.Finger;
import gripwright.hand.FlexionRange;
import gripwright.hand.Joint;
import gripwright.survey.GripSurvey;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** How far the angles and the worst slip of each grip may be otherwise, one line a grip. */
final class RangeTable {

  private static final String LEGEND =
      "The hand is known only so well: bones estimated from length are good to 8 %. Of hands that"
          + " may be this one, 90 % lie in these ranges (angles, roll, worst slip), and so many take"
          + " the grip. Where in its band a joint is held comes on top, above all for single fingers.";

  private static final int ANGLES = 8;
  private static final int ROLL = 10;
  private static final int SLIP = 10;
  private static final int TAKEN = 7;

  /** From this share of the hands on a grip counts as taken; below it is likely to be. */
  private static final double SURE = 0.95;

  private final List<GripSurvey.Row> rows;
  private final int width;

  RangeTable(List<GripSurvey.Row> rows, int width) {
    this.rows = List.copyOf(rows);
    this.width = width;
  }

  /** Returns whether the hand takes the grip: yes, likely or no. */
  static String taken(GripSurvey.Row row) {
    if (!row.fit().reachable()) {
      return "no";
    }
    return row.fit().spread().taken() >= SURE ? "yes" : "likely";
  }

  void add(Page page) {
    page.gap();
    page.line("HOW FAR IT MAY BE OTHERWISE");
    page.wrapped("", LEGEND);
    page.gap();
    page.line(line("", List.of("I", "M", "R", "L"), "roll", "slip", "taken"));
    for (GripSurvey.Row row : rows) {
      String name = GripWords.name(row);
      if (name.length() > width) {
        page.line(name);
        name = "";
      }
      page.line(line(name, row));
    }
  }

  /** Returns the line of a row without its name. */
  static String line(GripSurvey.Row row) {
    return new RangeTable(List.of(row), 0).line("", row);
  }

  private String line(String name, GripSurvey.Row row) {
    FitSpread spread = row.fit().spread();
    String taken = GripWords.degrees(spread.taken() * 100) + " %";
    if (!row.fit().reachable()) {
      return line(name, Collections.nCopies(Finger.values().length, ""), "", "", taken);
    }
    List<String> angles = new ArrayList<>();
    for (Finger finger : Finger.values()) {
      angles.add(spread.flexion(finger, Joint.PIP).map(r -> range(r, "-")).orElse("-"));
    }
    return line(
        name,
        angles,
        range(spread.wristRoll(), " to "),
        ForceTable.worstSlipRange(row).orElse("-"),
        taken);
  }

  private static String range(FlexionRange range, String between) {
    return GripWords.degrees(range.low().degrees())
        + between
        + GripWords.degrees(range.high().degrees());
  }

  private String line(String name, List<String> angles, String roll, String slip, String taken) {
    StringBuilder line = new StringBuilder(Page.padRight(name, width));
    angles.forEach(angle -> line.append(Page.padLeft(angle, ANGLES)));
    return line.append(Page.padLeft(roll, ROLL))
        .append(Page.padLeft(slip, SLIP))
        .append(Page.padLeft(taken, TAKEN))
        .toString();
  }
}
