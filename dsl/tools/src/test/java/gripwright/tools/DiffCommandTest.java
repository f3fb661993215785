package gripwright.tools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

final class DiffCommandTest extends CommandLine {

  private static final String ATHLETE =
      """
      language 1
      athlete eir "Eir Moe" {
        born 1994-03-02 body-mass 61 kg trained 60 months ability french 7c
        hand { length 185 mm }
        available tue 90 min, thu 90 min
        equipment { edges 20 mm added 0.5 kg steps to 60 kg assist 0.5 kg steps to 60 kg }
      }
      log eir { 2026-12-28 test half-crimp edge 20 mm hold 7 s load 80 kg }
      """;

  private static final String PLAN =
      """
      language 1
      use "eir.grip"
      plan winter {
        for eir
        from 2027-01-04
        block base 4 weeks {
          session fingers 2 per week {
            do max-holds with level 70 % max, sets 4 on half-crimp edge 20 mm
          }
        }
      }
      """;

  @BeforeEach
  void write() throws IOException {
    both("eir.grip", ATHLETE, ATHLETE);
    both("winter.grip", PLAN, PLAN);
  }

  private void both(String file, String before, String after) throws IOException {
    for (String side : new String[] {"old", "new"}) {
      Path to = folder.resolve(side);
      Files.createDirectories(to);
      Files.writeString(to.resolve(file), side.equals("old") ? before : after);
    }
  }

  private int diff(String... more) {
    String[] all = new String[more.length + 3];
    all[0] = "diff";
    all[1] = "old";
    all[2] = "new";
    System.arraycopy(more, 0, all, 3, more.length);
    return run(all);
  }

  @Test
  void theSameFoldersDoNotDiffer() throws IOException {
    assertEquals(0, diff());
    assertEquals("no change in meaning\n", out());
    assertEquals(0, diff("--as", "json"));
    assertKeeps("diff");
    assertEquals(0, new ObjectMapper().readTree(out()).get("changes").size());
  }

  @Test
  void aChangeThatIsTheSameOnManyDaysIsReportedOnce() throws IOException {
    both("winter.grip", PLAN, PLAN.replace("sets 4", "sets 5"));
    assertEquals(0, diff());
    assertEquals(
        """
        WINTER for Eir Moe
          every fingers session: half-crimp 20 mm, 5 sets instead of 4
        """,
        out());
    assertEquals(0, diff("--as", "json"));
    assertKeeps("diff");
    JsonNode changes = new ObjectMapper().readTree(out()).get("changes");
    assertEquals(8, changes.size());
    assertEquals("sets", changes.get(0).get("measure").asText());
    assertEquals("4", changes.get(0).get("before").asText());
    assertEquals("2027-01-05", changes.get(0).get("date").asText());
  }

  @Test
  void thePlannedLevelsOfAPastSessionAreShown() throws IOException {
    String log =
        ATHLETE.replace(
            "load 80 kg }",
            """
            load 80 kg
              2027-01-05 session fingers {
                max-holds on half-crimp edge 20 mm: sets 4 of 4, load 53 kg, effort 6
              }
              2027-01-07 session fingers {
                max-holds on half-crimp edge 20 mm: sets 4 of 4, load 54.5 kg, effort 6
              }
            }
            """);
    both("eir.grip", log, log);
    both("winter.grip", PLAN, PLAN.replace("70 %", "72 %")); // plans 53 kg, then 54.5 kg
    diff();
    assertTrue(
        out()
            .startsWith(
                """
                WINTER for Eir Moe
                  every fingers session of week 1: half-crimp 20 mm, planned level 72 % instead
                  of 70 %, and what was trained stays
                """),
        out());
    diff("--as", "json");
    JsonNode change = new ObjectMapper().readTree(out()).get("changes").get(0);
    assertEquals("level", change.get("measure").asText());
    assertEquals("70 %", change.get("before").asText());
    assertEquals("72 %", change.get("after").asText());
  }

  @Test
  void aLevelOfAnotherKindIsShownAsWritten() throws IOException {
    both("winter.grip", PLAN, PLAN.replace("70 % max", "54 kg"));
    diff();
    assertEquals(
        """
        WINTER for Eir Moe
          every fingers session: half-crimp 20 mm, level 54 kg instead of 70 %, and the
          load stays
        """,
        out());
    diff("--as", "json");
    JsonNode change = new ObjectMapper().readTree(out()).get("changes").get(0);
    assertEquals("70 %", change.get("before").asText());
    assertEquals("54 kg", change.get("after").asText());
  }

  @Test
  void causesComeFirst() throws IOException {
    both("eir.grip", ATHLETE, ATHLETE.replace("load 80 kg", "load 84 kg"));
    diff();
    assertTrue(
        out()
            .startsWith(
                """
                ATHLETE DATA CHANGED
                  eir, tests: half-crimp edge 20 mm: 84 kg for 7 s on 2026-12-28 instead of
                  half-crimp edge 20 mm: 80 kg for 7 s on 2026-12-28

                WINTER for Eir Moe
                  every fingers session: half-crimp 20 mm, load\
                """),
        out());
  }

  @Test
  void aSideWithErrorsIsNamedAndTheRestCompared() throws IOException {
    both("winter.grip", PLAN, PLAN.replace("sets 4", "sets 5"));
    both("spring.grip", "", PLAN.replace("winter", "spring").replace("half-crimp", "half-crmp"));
    Files.writeString(folder.resolve("old/spring.grip"), PLAN.replace("winter", "spring"));
    assertEquals(1, diff());
    assertTrue(
        err().startsWith("errors in NEW, `new`; the parts that need them are not compared:"),
        err());
    assertTrue(err().contains("name.unknown"), err());
    assertTrue(out().contains("5 sets instead of 4"), out());
    assertFalse(out().contains("REMOVED PLANS"), out());
    assertEquals(1, diff("--as", "json"));
    assertKeeps("diff");
    assertEquals(1, new ObjectMapper().readTree(out()).get("findings").size());
  }

  @Test
  void onePlanOrAthleteCanBeChosen() throws IOException {
    both("winter.grip", PLAN, PLAN.replace("sets 4", "sets 5"));
    String spring = PLAN.replace("winter", "spring");
    both("spring.grip", spring, spring.replace("4 weeks", "3 weeks"));
    diff("--plan", "spring");
    assertTrue(out().contains("block base has 3 weeks instead of 4"), out());
    assertFalse(out().contains("WINTER"), out());
    diff("--athlete", "eir");
    assertTrue(out().contains("WINTER") && out().contains("SPRING"), out());
    assertEquals(2, diff("--plan", "sprung"));
    assertTrue(err().contains("did you mean `spring`?"), err());
    assertEquals(2, diff("--athlete", "liv"));
    assertTrue(err().contains("there is no plan for `liv` on either side"), err());
  }

  @Test
  void addedAndRemovedPlansAndDefinitionsAreNamed() throws IOException {
    both("spring.grip", "language 1\n", PLAN.replace("winter", "spring"));
    diff();
    assertTrue(out().startsWith("NEW PLANS\n  spring for Eir Moe, Mon 4 Jan 2027 to "), out());
    assertEquals(0, run("diff", "new", "old"));
    assertTrue(out().startsWith("REMOVED PLANS\n  spring for Eir Moe"), out());
    both(
        "spring.grip",
        "language 1\n",
        "language 1\ngrip two-and-two { fingers index, middle family split }\n");
    diff();
    assertEquals("DEFINITIONS CHANGED\n  grip two-and-two is new\n", out());
  }

  @Test
  void twoFilesAreComparedWithTheFilesTheyUse() throws IOException {
    both("eir.grip", ATHLETE, ATHLETE.replace("61 kg", "60 kg"));
    assertEquals(0, run("diff", "old/winter.grip", "new/winter.grip"));
    assertTrue(
        out().startsWith("ATHLETE DATA CHANGED\n  eir, body mass: 60 kg instead of 61 kg\n"),
        out());
  }

  @Test
  void wrongUsageIsReported() throws IOException {
    assertEquals(2, run("diff", "old"));
    assertTrue(err().contains("diff needs two files or folders"), err());
    assertEquals(2, run("diff", "old", "nowhere.grip", "--as", "json"));
    assertKeeps("diff");
    Files.createDirectories(folder.resolve("bare"));
    assertEquals(2, run("diff", "old", "bare"));
    assertTrue(err().contains("cannot compare `bare`: there is no plan file in it"), err());
  }

  @Test
  void aFileOfAFolderThatCantBeReadIsAFindingAndALinkIsLeftOut() throws IOException {
    Path old = Files.createDirectory(folder.resolve("was"));
    Path now = Files.createDirectory(folder.resolve("is"));
    Files.writeString(old.resolve("a.grip"), "language 1\n");
    Files.writeString(now.resolve("a.grip"), "language 1\n");
    Files.write(now.resolve("b.grip"), new byte[] {'#', (byte) 0xE5, '\n'});
    assertEquals(1, run("diff", "was", "is"), out() + err());
    assertTrue(err().contains("(syntax.encoding)\n"), err());
    Files.delete(now.resolve("b.grip"));
    Files.createSymbolicLink(now.resolve("b.grip"), Path.of("../../elsewhere.grip"));
    Files.createSymbolicLink(now.resolve("c.grip"), Path.of("../was/a.grip"));
    assertEquals(0, run("diff", "was", "is"), out() + err());
  }
}
