package gripwright.export.picture;

import gripwright.export.words.Words;
import gripwright.grip.GripFit;
import gripwright.hand.Finger;
import gripwright.hand.HandPose;
import gripwright.hand.Joint;
import gripwright.quantity.Numbers;
import gripwright.schedule.Caution;
import gripwright.survey.Gate;
import gripwright.survey.GripSurvey;
import gripwright.wording.Wording;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Draws a grip on an athlete's hand as an SVG picture: the four fingers in side view, each on its
 * own place on the edge, in the pose that the model finds, with the flexion written at every joint.
 * All pictures have the same width in pixels for the length of a hand, so they can be compared.
 *
 * <p>Black, white and gray; readable in print. The words come from a message bundle. The same input
 * gives the same bytes. Stateless and thread-safe.
 */
public final class GripPicture {

  /** Pixels for the length of the hand. */
  private static final double HAND = 290;

  private static final double MARGIN = 16;
  private static final double LEFT_OF_WALL = 20;
  private static final double LABEL_WIDTH = 62;
  private static final double ABOVE = 26;
  private static final double HEAD = 62;
  private static final double LINE = 15;
  private static final double SMALL = 11;

  /** About how wide a letter of the small print is, in pixels. */
  private static final double LETTER = 5.6;

  private GripPicture() {}

  /**
   * Returns the name of the file of a picture, such as {@code half-crimp.svg}, with the hand where
   * the two differ.
   */
  public static String fileName(GripSurvey.Row row) {
    return row.grip().name() + row.side().map(side -> "-" + side.word()).orElse("") + ".svg";
  }

  /**
   * Returns the picture of a grip as an SVG document. A grip that the hand can't take is drawn in
   * the nearest pose, and the picture says so; so it does of a grip that is closed to the athlete
   * or limited.
   *
   * @param survey the survey that has the row
   * @param row a grip on one hand
   * @param wording the words
   */
  public static String of(GripSurvey survey, GripSurvey.Row row, Wording wording) {
    Words words = new Words(wording);
    HandPose pose = row.fit().pose();
    double scale = HAND / pose.shape().length().millimetres();
    Extent extent = Extent.of(pose, scale);
    double panel = LEFT_OF_WALL + extent.right() + LABEL_WIDTH;
    double width = 2 * MARGIN + Finger.values().length * panel;
    int letters = (int) ((width - 2 * MARGIN) / LETTER);
    List<String> warnings = wrapped(warnings(row, words), letters);
    List<String> notes = wrapped(notes(row, words), letters);
    double head = HEAD + warnings.size() * LINE;
    double foot = head + extent.height() + 3 * ABOVE;
    double height = foot + notes.size() * LINE;
    String title =
        row.grip().title().orElse(row.grip().name()) + ", " + words.edge(survey.edge(), row.side());
    Svg svg = new Svg(width, height, title, description(row, words));
    svg.text(MARGIN, 28, "bold", 18, title);
    svg.text(
        MARGIN,
        48,
        "normal",
        12,
        words.say(
            "grips.picture-of",
            "athlete",
            survey.athlete().title(),
            "date",
            words.dayAndYear(survey.day())));
    lines(svg, warnings, "bold", HEAD + 4);
    for (Finger finger : Finger.values()) {
      double left = MARGIN + finger.ordinal() * panel;
      svg.text(left, head + LINE, "bold", 12, heading(pose, finger, words));
      svg.group(left + LEFT_OF_WALL, head + 2 * ABOVE + extent.up());
      new FingerDrawing(svg, pose, scale).draw(pose, finger, -extent.up() - 12, extent.down());
      svg.end();
    }
    lines(svg, notes, "normal", foot);
    return svg.finish();
  }

  private static void lines(Svg svg, List<String> lines, String weight, double down) {
    for (int i = 0; i < lines.size(); i++) {
      svg.text(MARGIN, down + i * LINE, weight, SMALL, lines.get(i));
    }
  }

  private static String heading(HandPose pose, Finger finger, Words words) {
    return pose.finger(finger).isPresent()
        ? words.of(finger)
        : words.say("grips.picture-idle", "finger", finger);
  }

  private static List<String> warnings(GripSurvey.Row row, Words words) {
    List<String> warnings = new ArrayList<>();
    if (!row.fit().reachable()) {
      warnings.add(words.say("grips.picture-not-taken"));
    }
    if (!row.open()) {
      warnings.add(words.say("grips.picture-closed"));
    }
    if (row.limited()) {
      List<String> limits =
          row.limits().stream()
              .filter(Gate::closes)
              .map(limit -> words.written(limit.message()))
              .toList();
      warnings.add(words.say("grips.picture-limited", "limits", words.semicolons(limits)));
    }
    return warnings;
  }

  /** Returns all text below the title, with the warnings first, as a screen reader reads it. */
  private static String description(GripSurvey.Row row, Words words) {
    List<String> sentences = new ArrayList<>(warnings(row, words));
    sentences.addAll(notes(row, words));
    return String.join(" ", sentences);
  }

  private static List<String> notes(GripSurvey.Row row, Words words) {
    GripFit fit = row.fit();
    List<String> notes = new ArrayList<>();
    notes.add(words.say("grips.picture-legend"));
    notes.add(
        words.say(
            fit.pose().shape().bonesEstimated()
                ? "grips.picture-estimated"
                : "grips.picture-measured",
            "length",
            fit.pose().shape().length(),
            "degrees",
            Numbers.plain(fit.spread().largestDeviation(Joint.PIP).degrees(), 0)));
    row.grip()
        .cautions()
        .forEach(caution -> notes.add(words.capital(words.written(caution)) + "."));
    for (Caution caution : Caution.general()) {
      notes.add(words.of(caution));
    }
    return notes;
  }

  private static List<String> wrapped(List<String> sentences, int letters) {
    List<String> lines = new ArrayList<>();
    for (String sentence : sentences) {
      StringBuilder line = new StringBuilder();
      for (String word : sentence.split(" ", -1)) {
        if (line.length() > 0 && line.length() + 1 + word.length() > letters) {
          lines.add(line.toString());
          line.setLength(0);
        }
        line.append(line.length() > 0 ? " " : "").append(word);
      }
      lines.add(line.toString());
    }
    return lines;
  }

  /**
   * How far the drawn fingers reach from the back of the edge, in pixels.
   *
   * @param right to the right
   * @param up upwards
   * @param down downwards, with the palm
   */
  private record Extent(double right, double up, double down) {

    static Extent of(HandPose pose, double scale) {
      double palm = FingerDrawing.palm(pose, scale);
      List<double[]> joints =
          Arrays.stream(Finger.values())
              .flatMap(finger -> FingerDrawing.joints(pose, finger, scale).stream())
              .toList();
      double right = joints.stream().mapToDouble(joint -> joint[0]).max().orElse(0);
      double up = joints.stream().mapToDouble(joint -> -joint[1]).max().orElse(0);
      double down = joints.stream().mapToDouble(joint -> joint[1]).max().orElse(0);
      return new Extent(right + 18, Math.max(up, 0) + 26, Math.max(down, 40) + palm);
    }

    double height() {
      return up + down;
    }
  }
}
