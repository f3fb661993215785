package gripwright.export.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.export.Season;
import gripwright.grip.GripFit;
import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.FlexionRange;
import gripwright.hand.Hand;
import gripwright.hand.Joint;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.schedule.Caution;
import gripwright.schedule.Derivation;
import gripwright.schedule.LoadLink;
import gripwright.schedule.PlannedExercise.EndReserve;
import gripwright.season.CompiledPlan;
import gripwright.wording.Wording;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

final class SeasonTextTest {

  private static final Path GOLDEN = Path.of("src/test/resources/gripwright/export/text");

  private static String text(CompiledPlan plan) {
    return SeasonText.of(plan, Wording.english(), finding -> Optional.of("club/thaw.grip:12"));
  }

  /** Compares with a file; {@code -Dgripwright.bless=true} rewrites it for review in a diff. */
  private static void assertGolden(String name, String text) throws IOException {
    Path file = GOLDEN.resolve(name);
    if (Boolean.getBoolean("gripwright.bless")) {
      Files.writeString(file, text);
    }
    assertEquals(Files.readString(file), text);
  }

  @Test
  void aSeason() throws IOException {
    assertGolden("thaw.txt", text(Season.thaw()));
  }

  @Test
  void aPlanWithoutSessions() throws IOException {
    assertGolden("pause.txt", text(Season.empty()));
  }

  /** Angles as computed, to a whole degree; a row for each hand only where they differ. */
  @Test
  void theHandIsBeforeTheWeeks() {
    String alike = text(Season.thaw());
    GripFit fit = GripFit.of(Season.HALF, Season.SUNNIVA.left(), Length.ofMillimetres(20));
    StringBuilder row = new StringBuilder("  half-crimp        20 mm");
    for (FingerPose finger : fit.pose().fingers()) {
      String angle = Long.toString(Math.round(finger.pip().degrees()));
      row.append("  ").append(finger.finger().word()).append(Page.padLeft(angle, 4));
    }
    assertEquals(1, alike.lines().filter(line -> line.equals(row.toString())).count(), alike);
    assertTrue(alike.indexOf("HAND: ") < alike.indexOf("WEEK 1"), alike);
    assertTrue(alike.replaceAll("\\s+", " ").contains("HAND: estimated flexion"), alike);
    assertFalse(text(Season.empty()).contains("HAND"), "no grip, no hand");
    List<String> unlike =
        text(Season.thaw(Season.unlike()))
            .lines()
            .filter(line -> line.contains("  index "))
            .toList();
    assertEquals(6, unlike.size(), unlike.toString());
    assertTrue(unlike.get(0).startsWith("  half-crimp        20 mm left  "), unlike.get(0));
    assertTrue(unlike.get(1).startsWith("  half-crimp        20 mm right "), unlike.get(1));
    assertNotEquals(
        unlike.get(0).substring(unlike.get(0).indexOf("ring")),
        unlike.get(1).substring(unlike.get(1).indexOf("ring")));
  }

  /** A stiff end joint changes nothing that is printed, so one row is enough. */
  @Test
  void handsWithTheSameAnglesHaveOneRow() {
    Hand stiff =
        Season.SUNNIVA
            .left()
            .withLimit(Finger.MIDDLE, Joint.DIP, FlexionRange.degrees(0, 10))
            .withLimit(Finger.RING, Joint.DIP, FlexionRange.degrees(0, 10));
    String text = text(Season.thaw(Season.withLeft(stiff)));
    assertEquals(handRows(text(Season.thaw())), handRows(text));
  }

  private static List<String> handRows(String text) {
    return text.lines().filter(line -> line.contains("  index ")).toList();
  }

  /** The capacity left after an exercise is shown if it is low, with both ends of the interval. */
  @Test
  void lowRemainingCapacityIsShown() {
    Derivation link = new LoadLink.Total(Load.ofKilograms(12));
    String tired =
        text(
            Season.thaw(
                Season.SUNNIVA,
                exercise -> exercise.leaving(new EndReserve(0.124, 0.036, 0.307), link, true)));
    String line = "      at the end 12 % of fresh strength is left, an estimate (4 to 31 %)";
    assertTrue(tired.lines().anyMatch(line::equals), tired);
    assertFalse(text(Season.thaw()).contains("of fresh strength"));
    assertFalse(
        text(Season.thaw(
                Season.SUNNIVA,
                exercise -> exercise.leaving(new EndReserve(0.15, 0.03, 0.3), link, false)))
            .contains("of fresh strength"));
  }

  @Test
  void everyWeekFitsAScreen() {
    for (String week : text(Season.thaw()).split("\n\n")) {
      assertTrue(week.lines().count() <= 24, week);
    }
    text(Season.thaw())
        .lines()
        .forEach(
            line -> {
              assertTrue(line.length() <= 80, line);
              assertEquals(line.stripTrailing(), line);
            });
  }

  @Test
  void theCautionsAreAtTheEnd() {
    String text = text(Season.empty()).replaceAll("\\s+", " ");
    int last = text.indexOf("nothing planned");
    for (Caution caution : Caution.general()) {
      int at = text.indexOf(Wording.english().say(caution));
      assertTrue(at > last, caution.key());
      last = at;
    }
  }

  @Test
  void nothingIsPromised() {
    Pattern promise = Pattern.compile("\\b(safe|protect|prevent)", Pattern.CASE_INSENSITIVE);
    assertFalse(promise.matcher(text(Season.thaw())).find());
  }

  @Test
  void theSameInEveryLocaleAndTimeZone() {
    String here = text(Season.thaw());
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(new Locale("tr", "TR"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
      assertEquals(here, text(Season.thaw()));
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertEquals(here, text(Season.thaw()));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void aTitleCannotControlTheTerminal() {
    assertEquals("a\uFFFD[31mb c", Page.clean("a\u001B[31mb\tc"));
    assertEquals("\uFFFDcba", Page.clean("\u202Ecba"));
  }
}
