package gripwright.export.text;

import gripwright.export.words.Words;
import gripwright.hand.Finger;
import gripwright.hand.Joint;
import gripwright.survey.GripSurvey;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Writes one line a grip: whether the hand can take it, the angles of its middle joints, the effect
 * of a slip, and whether it is open to the athlete. A long name has a line of its own.
 */
final class GripOverview {

  private static final int LONGEST_NAME = 20;
  private static final int TAKEN = 6;
  private static final int ANGLE = 4;
  private static final int ROLL = 6;
  private static final int SLIP = 22;

  private final GripSurvey survey;
  private final Words words;
  private final GripWords grips;
  private final SlipWords slips;
  private final RangeTable ranges;
  private final int width;
  private final int taken;
  private final int slip;

  GripOverview(GripSurvey survey, Words words) {
    this.survey = survey;
    this.words = words;
    grips = new GripWords(words);
    slips = new SlipWords(words);
    this.width =
        survey.rows().stream()
            .mapToInt(row -> grips.name(row).length())
            .filter(length -> length <= LONGEST_NAME)
            .max()
            .orElse(0);
    ranges = new RangeTable(survey.rows(), width, words);
    taken =
        Stream.of("grips.taken", "grips.taken-yes", "grips.taken-likely", "grips.taken-no")
            .mapToInt(key -> words.say(key).length())
            .reduce(TAKEN, Math::max);
    slip =
        Stream.concat(
                Stream.of(words.say("grips.worst-slip")),
                survey.rows().stream().flatMap(row -> slips.worst(row).stream()))
            .mapToInt(String::length)
            .reduce(SLIP, Math::max);
  }

  /** Returns the table of uncertainties, with a name column of the same width. */
  RangeTable ranges() {
    return ranges;
  }

  void add(Page page) {
    page.wrapped("", words.say("grips.overview-legend"));
    page.gap();
    page.line(
        line(
            "",
            width,
            new Cells(
                words.say("grips.taken"),
                grips.letters(),
                words.say("grips.roll"),
                words.say("grips.worst-slip"),
                words.say("grips.gate"))));
    for (GripSurvey.Row row : survey.rows()) {
      String name = grips.name(row);
      if (name.length() > width) {
        page.line(name);
        name = "";
      }
      page.line(line(name, row, width));
    }
  }

  /** Returns the line of a row without its name. */
  String line(GripSurvey.Row row) {
    return line("", row, 0);
  }

  private String line(String name, GripSurvey.Row row, int width) {
    return line(
        name,
        width,
        row.fit().reachable()
            ? taken(row)
            : new Cells(words.say("grips.taken-no"), List.of("", "", "", ""), "", "", "-"));
  }

  /** The cells of one grip's line. */
  private record Cells(String taken, List<String> angles, String roll, String worst, String gate) {}

  private Cells taken(GripSurvey.Row row) {
    List<String> angles = new ArrayList<>();
    for (Finger finger : Finger.values()) {
      angles.add(
          row.fit()
              .flexion(finger, Joint.PIP)
              .map(angle -> GripWords.degrees(angle.degrees()))
              .orElse("-"));
    }
    return new Cells(
        ranges.taken(row),
        angles,
        GripWords.degrees(row.fit().wristRoll().degrees()),
        slips.worst(row).orElse("-"),
        gate(row));
  }

  private String gate(GripSurvey.Row row) {
    return words.say(
        row.limited()
            ? "grips.gate-limited"
            : row.open() ? "grips.gate-open" : "grips.gate-closed");
  }

  private String line(String name, int width, Cells cells) {
    StringBuilder line =
        new StringBuilder(Page.padRight(name, width))
            .append("  ")
            .append(Page.padRight(cells.taken(), taken));
    cells.angles().forEach(angle -> line.append(Page.padLeft(angle, ANGLE)));
    return line.append(Page.padLeft(cells.roll(), ROLL))
        .append("  ")
        .append(Page.padRight(cells.worst(), slip))
        .append("  ")
        .append(cells.gate())
        .toString();
  }
}
