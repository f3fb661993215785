package gripwright.tools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The text of {@code compile}: sessions of a week with equal texts are one entry. */
final class EqualSessionsTest extends CommandLine {

  private static final String BOTH = "  Mon 11 Jan + Thu 14 Jan  fingers, 33 min: max-holds";

  private static final String LOGGED =
      """
        %s session fingers%s {
          max-holds on half-crimp edge 20 mm: sets 4 of 4, load 53 kg, effort %s, pain 0
          repeaters on open-four edge 20 mm: sets 2 of 2, load 28 kg, effort 5, pain 0
        }
      """;

  /** Returns the lines of sessions in the first week of a starter project with log lines added. */
  private List<String> firstWeek(String... logged) throws IOException {
    run("new", "start");
    String log = Files.readString(folder.resolve("start/log.grip"));
    Files.writeString(
        folder.resolve("start/log.grip"),
        log.substring(0, log.lastIndexOf('}')) + String.join("", logged) + "}\n");
    assertEquals(0, run("compile", "start/plan.grip"), err());
    String week = out().substring(out().indexOf("WEEK 1"), out().indexOf("WEEK 2"));
    return week.lines().filter(line -> line.contains("fingers,")).toList();
  }

  @Test
  void equalSessionsAreOneEntry() throws IOException {
    assertEquals(List.of(BOTH + ", repeaters"), firstWeek());
    String week = out().substring(out().indexOf("WEEK 1"), out().indexOf("WEEK 2"));
    assertEquals(2, week.lines().filter(line -> line.startsWith("    ")).count(), week);
    assertTrue(out().contains("  Mon 1 Feb + Thu 4 Feb  fingers"), out());
  }

  @Test
  void aLoggedSessionIsNotAPlannedOne() throws IOException {
    List<String> lines = firstWeek(LOGGED.formatted("2027-01-11", "", 7));
    assertEquals(2, lines.size(), out());
    assertTrue(lines.get(0).startsWith("  Mon 11 Jan  fingers, done,"), lines.get(0));
    assertTrue(lines.get(1).startsWith("  Thu 14 Jan  fingers, 33 min"), lines.get(1));
  }

  @Test
  void equalLoggedSessionsAreOneEntry() throws IOException {
    String monday = LOGGED.formatted("2027-01-11", "", 7);
    assertEquals(1, firstWeek(monday, LOGGED.formatted("2027-01-14", "", 7)).size(), out());
  }

  @Test
  void anotherEffortIsAnotherEntry() throws IOException {
    String monday = LOGGED.formatted("2027-01-11", "", 7);
    assertEquals(2, firstWeek(monday, LOGGED.formatted("2027-01-14", "", 6)).size(), out());
  }

  @Test
  void aNoteIsAnotherEntry() throws IOException {
    String monday = LOGGED.formatted("2027-01-11", "", 7);
    String thursday = LOGGED.formatted("2027-01-14", " \"cold hall\"", 7);
    assertEquals(2, firstWeek(monday, thursday).size(), out());
  }

  @Test
  void manyDaysHaveALineOfTheirOwn() throws IOException {
    run("new", "start");
    edit(
        "athletes.grip",
        "mon 60 min, thu 60 min",
        "mon 60 min, tue 60 min, wed 60 min, thu 60 min");
    edit("athletes.grip", "  climbing   sat hard 120 min\n", "");
    edit("plan.grip", "2 per week at least 48 h apart", "4 per week at least 0 h apart");
    edit(
        "plan.grip",
        "      do max-holds with level 75 % max, sets 4 on half-crimp edge 20 mm\n",
        "");
    assertEquals(0, run("compile", "start/plan.grip"), err());
    assertTrue(
        out()
            .contains(
                "  Mon 11 Jan + Tue 12 Jan + Wed 13 Jan + Thu 14 Jan\n"
                    + "    fingers, 20 min: repeaters\n"),
        out());
    assertTrue(out().lines().allMatch(line -> line.length() <= 80), out());
  }

  private void edit(String file, String old, String now) throws IOException {
    String text = Files.readString(folder.resolve("start/" + file));
    assertTrue(text.contains(old), text);
    Files.writeString(folder.resolve("start/" + file), text.replace(old, now));
  }
}
