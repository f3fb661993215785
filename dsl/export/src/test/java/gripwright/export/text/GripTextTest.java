package gripwright.export.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.export.Hands;
import gripwright.export.words.Words;
import gripwright.schedule.Caution;
import gripwright.survey.GripSurvey;
import gripwright.survey.ModelCaveat;
import gripwright.wording.Wording;
import java.util.Locale;
import java.util.TimeZone;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

final class GripTextTest {

  private static String flat(GripSurvey survey) {
    return GripText.of(survey, Wording.english()).replaceAll("\\s+", " ");
  }

  /** What a coach reads first fits a screen, and nothing is wider than one. */
  private static String caveat(ModelCaveat caveat) {
    return new Words(Wording.english()).of("grips.caveat", caveat);
  }

  @Test
  void theTableFitsAScreen() {
    for (GripSurvey survey : new GripSurvey[] {Hands.alike(), Hands.different()}) {
      String text = GripText.of(survey, Wording.english());
      String table = text.substring(0, text.indexOf("\n\n", text.indexOf("worst slip")));
      assertTrue(table.lines().count() <= 24, table);
      text.lines()
          .forEach(
              line -> {
                assertTrue(line.length() <= 80, line);
                assertEquals(line.stripTrailing(), line);
              });
    }
  }

  @Test
  void edgeLoadAndHandAreStated() {
    String text = GripText.of(Hands.alike(), Wording.english());
    assertTrue(text.startsWith("GRIPS OF SUNNIVA OF SKARVDAL\nMon 11 Jan 2027: age 30, "), text);
    assertTrue(text.contains("\nedge  20 mm\n"), text);
    assertTrue(text.contains("\nload  68.5 kg on both hands\n"), text);
    assertTrue(text.contains("breadth and bones estimated from length"), text);
  }

  @Test
  void aGripHasOneLineWithItsAngles() {
    Pattern line =
        Pattern.compile(
            "\nhalf-crimp +yes +[0-9]+ +[0-9]+ +[0-9]+ +[0-9]+ +-?[0-9]+  "
                + "[a-z]+ off: [a-z]+ x[0-9.]+ +open\n");
    assertTrue(
        line.matcher(GripText.of(Hands.alike(), Wording.english())).find(),
        GripText.of(Hands.alike(), Wording.english()));
  }

  @Test
  void aClosedGripSaysWhatIsMissing() {
    assertTrue(
        flat(Hands.different())
            .contains(
                "front-three left, front-three right, a-name-far-too-long-for-a-column: a split grip"
                    + " before 24 months of finger training and IRCRA 18 (french 7a+); the athlete has"
                    + " 18 months"),
        flat(Hands.different()));
    assertTrue(
        flat(Hands.alike()).contains("12 months with half-crimp (has none)"), flat(Hands.alike()));
  }

  @Test
  void aGripOutOfReachHasItsReason() {
    assertTrue(
        flat(Hands.different())
            .contains(
                "half-crimp left, front-three left: index moves from 0 to 40 deg, the grip needs 75 to 105"),
        flat(Hands.different()));
    assertTrue(
        flat(Hands.different()).contains("joints that were measured: index pip 0 to 40 deg"));
    assertTrue(
        flat(Hands.alike()).contains("straight-four: index too short by"), flat(Hands.alike()));
  }

  @Test
  void youthIsReportedForEveryGrip() {
    assertTrue(
        flat(Hands.different())
            .contains("every grip: a reminder, since the athlete is 16 or 17: train fingers"),
        flat(Hands.different()));
  }

  /** A grip is not called open if most training on it stays closed. */
  @Test
  void underSixteenNoGripIsJustOpen() {
    String text = flat(Hands.ofAge(15));
    assertTrue(text.contains("every grip: under 16 no finger training is intensive"), text);
    assertTrue(text.contains("every open grip: added load for an athlete under 16"), text);
    assertFalse(
        Pattern.compile("[0-9] +open\n")
            .matcher(GripText.of(Hands.ofAge(15), Wording.english()))
            .find());
    assertFalse(flat(Hands.ofAge(16)).contains("under 16 no finger training is intensive"));
  }

  /** Hands that differ by less than a printed digit have one line. */
  @Test
  void handsThatPrintTheSameHaveOneLine() {
    String text = GripText.of(Hands.nearlyAlike(), Wording.english());
    assertTrue(text.contains("\nleft  182 mm long") && text.contains("\nright 182 mm long"), text);
    assertTrue(text.contains("\nhalf-crimp "), text);
    assertFalse(text.contains("half-crimp left"), text);
  }

  @Test
  void withoutTestsTheShareOfFewerFingersIsShown() {
    String text = flat(Hands.different());
    assertTrue(text.contains("% of what four fingers hold, by two published views"), text);
    assertTrue(text.contains("angle ranges for this hand: index "), text);
  }

  /** A load printed for a grip that is closed reads as permission. */
  @Test
  void onlyOpenGripsSayWhatTheyHold() {
    String text = flat(Hands.tested());
    String tested = part(text, "HALF-CRIMP share", "FULL-CRIMP");
    assertTrue(tested.contains("by its tests: a maximum, not a training load"), tested);
    assertFalse(tested.contains("estimated from tests"), tested);
    String other = part(text, "THREE-FINGER-DRAG share", "FRONT-THREE");
    assertTrue(
        other.contains("estimated from tests of other grips or edges to hold about "), other);
    assertTrue(other.contains("not a training load; the stated load is above it"), other);
    String closed = part(text, "MIDDLE-SINGLE closed", "* Angles");
    assertFalse(closed.contains(" hold"), closed);
  }

  private static String part(String text, String from, String to) {
    int start = text.indexOf(from);
    return text.substring(start, text.indexOf(to, start + from.length()));
  }

  @Test
  void caveatsAndCautionsAreAtTheEnd() {
    String text = flat(Hands.alike());
    int last = text.indexOf("LITTLE-SINGLE");
    for (ModelCaveat reservation : Hands.alike().reservations()) {
      assertTrue(text.lastIndexOf(caveat(reservation)) > last, reservation.name());
    }
    for (Caution caution : Caution.general()) {
      int at = text.indexOf(Wording.english().say(caution));
      assertTrue(at > last, caution.key());
      last = at;
    }
    assertEquals(
        text.indexOf(caveat(ModelCaveat.TISSUE)), text.lastIndexOf(caveat(ModelCaveat.TISSUE)));
  }

  /** Newtons are supported by no source: text has them on request only, with their interval. */
  @Test
  void forcesAreTimesTheOwnHangUnlessNewtonsAreWanted() {
    String text = flat(Hands.alike());
    assertTrue(
        text.contains("in a half-crimp on 20 mm with body mass (68.5 kg) on both hands"), text);
    assertFalse(Pattern.compile("\\bN\\b|newtons?\\b(?!, to compare)").matcher(text).find(), text);
    assertTrue(text.contains("HALF-CRIMP share FDP FDS A2 A4 index 25 % 1 (1-1) 1 (1-1)"), text);
    String drag = text.substring(text.indexOf("THREE-FINGER-DRAG"), text.indexOf("FRONT-THREE"));
    assertTrue(
        Pattern.compile("index 29 % [^)]*\\) [^)]*\\) 0\\.[0-9]+ \\(0").matcher(drag).find(), drag);
    String newtons = GripText.withNewtons(Hands.alike(), Wording.english()).replaceAll("\\s+", " ");
    assertTrue(newtons.contains("68.5 kg on both hands, 336 N on each"), newtons);
    assertTrue(
        Pattern.compile("index 25 %( [0-9]+ \\([0-9]+-[0-9]+\\)){4}").matcher(newtons).find(),
        newtons);
  }

  @Test
  void aSlipIsShownByBothViews() {
    String text = flat(Hands.alike());
    assertTrue(
        Pattern.compile(
                "slips, moment kept: index off: [a-z]+ x[0-9.]+[^A-Z]*"
                    + "slips, arm swings: index off: [a-z]+ x[0-9.]+")
            .matcher(text)
            .find(),
        text);
    assertTrue(text.contains("it is the worse for the finger"), text);
  }

  /** A half crimp has the little finger straight, so nothing is given relative to its pulleys. */
  @Test
  void theLittleFingersPulleysAreNeverTheHighest() {
    String text = flat(Hands.alike());
    assertTrue(text.contains("highest: ring A2") || text.contains("highest: ring A4"), text);
    assertFalse(text.contains("highest: little"), text);
  }

  @Test
  void nothingIsPromised() {
    Pattern promise = Pattern.compile("\\b(safe|protect|prevent)", Pattern.CASE_INSENSITIVE);
    for (GripSurvey survey : new GripSurvey[] {Hands.alike(), Hands.different()}) {
      String text = GripText.of(survey, Wording.english());
      assertFalse(promise.matcher(text).find());
      assertTrue(text.contains("estimate"));
    }
  }

  @Test
  void theSameInEveryLocaleAndTimeZone() {
    String here = GripText.of(Hands.alike(), Wording.english());
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(new Locale("tr", "TR"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
      assertEquals(here, GripText.of(Hands.alike(), Wording.english()));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }
}
