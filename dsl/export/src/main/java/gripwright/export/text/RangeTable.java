package gripwright.export.text;

import gripwright.export.words.Words;
import gripwright.grip.FitSpread;
import gripwright.hand.Finger;
import gripwright.hand.FlexionRange;
import gripwright.hand.Joint;
import gripwright.survey.GripSurvey;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Writes the uncertainty of the angles and of the worst slip, one line a grip. */
final class RangeTable {

  private static final int ANGLES = 8;
  private static final int ROLL = 10;
  private static final int SLIP = 10;
  private static final int TAKEN = 7;

  /**
   * If at least this share of the sampled hands can take a grip, it counts as taken; below that as
   * likely.
   */
  private static final double SURE = 0.95;

  private final List<GripSurvey.Row> rows;
  private final int width;
  private final Words words;
  private final GripWords grips;
  private final SlipWords slips;

  RangeTable(List<GripSurvey.Row> rows, int width, Words words) {
    this.rows = List.copyOf(rows);
    this.width = width;
    this.words = words;
    grips = new GripWords(words);
    slips = new SlipWords(words);
  }

  /** Returns whether the hand can take the grip: yes, likely or no. */
  String taken(GripSurvey.Row row) {
    if (!row.fit().reachable()) {
      return words.say("grips.taken-no");
    }
    return words.say(row.fit().spread().taken() >= SURE ? "grips.taken-yes" : "grips.taken-likely");
  }

  void add(Page page) {
    page.gap();
    page.line(words.say("grips.ranges"));
    page.wrapped("", words.say("grips.ranges-legend"));
    page.gap();
    page.line(
        line(
            "",
            grips.letters(),
            words.say("grips.roll"),
            words.say("grips.slip-heading"),
            words.say("grips.taken")));
    for (GripSurvey.Row row : rows) {
      String name = grips.name(row);
      if (name.length() > width) {
        page.line(name);
        name = "";
      }
      page.line(line(name, row));
    }
  }

  /** Returns the line of a row without its name. */
  String line(GripSurvey.Row row) {
    return line("", row);
  }

  private String line(String name, GripSurvey.Row row) {
    FitSpread spread = row.fit().spread();
    String taken = GripWords.degrees(spread.taken() * 100) + " %";
    if (!row.fit().reachable()) {
      return line(name, Collections.nCopies(Finger.values().length, ""), "", "", taken);
    }
    List<String> angles = new ArrayList<>();
    for (Finger finger : Finger.values()) {
      angles.add(spread.flexion(finger, Joint.PIP).map(r -> low(r) + "-" + high(r)).orElse("-"));
    }
    return line(
        name,
        angles,
        words.range(low(spread.wristRoll()), high(spread.wristRoll())),
        slips.worstRange(row).orElse("-"),
        taken);
  }

  private static String low(FlexionRange range) {
    return GripWords.degrees(range.low().degrees());
  }

  private static String high(FlexionRange range) {
    return GripWords.degrees(range.high().degrees());
  }

  private String line(String name, List<String> angles, String roll, String slip, String taken) {
    StringBuilder line = new StringBuilder(Page.padRight(name, width));
    angles.forEach(angle -> line.append(Page.padLeft(angle, ANGLES)));
    return line.append(Page.padLeft(roll, ROLL))
        .append(Page.padLeft(slip, SLIP))
        .append(Page.padLeft(taken, Math.max(TAKEN, words.say("grips.taken").length() + 2)))
        .toString();
  }
}
