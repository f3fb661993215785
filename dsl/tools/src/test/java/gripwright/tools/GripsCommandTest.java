package gripwright.tools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.grip.StandardGrips;
import gripwright.schedule.Caution;
import gripwright.wording.Wording;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

final class GripsCommandTest extends CommandLine {

  private static final String ATHLETE =
      """
      athlete NAME {
        born 1994-03-02
        body-mass 61 kg
        trained 18 months
        ability french 7c
        hand { length 175 mm }
        available tue 90 min
        equipment { edges 20 mm }
      }
      """;

  private static final String CLUB =
      """
      language 1
      grip bent "Bent four" {
        fingers index, middle, ring, little
        family four
        index pip 75 deg to 105 deg
      }
      """
          + ATHLETE.replace("NAME", "eir \"Eir \u00C5s\"")
          + """
          log eir {
            2026-12-28 test bent edge 20 mm hold 7 s load 80 kg
            2027-01-03 body-mass 60 kg
          }
          """;

  @BeforeEach
  void write() throws IOException {
    Files.writeString(folder.resolve("club.grip"), CLUB);
    Files.writeString(folder.resolve("two.grip"), CLUB + ATHLETE.replace("NAME", "bera"));
    Files.writeString(folder.resolve("wrong.grip"), CLUB.replace("61 kg", "61 mm"));
    Files.writeString(folder.resolve("torn.grip"), CLUB.replace("hand {", "hand"));
  }

  /** Wrong usage is reported in one sentence, and as a document if requested. */
  private void refuses(String sentence, String... arguments) {
    assertEquals(2, run(arguments), out());
    assertEquals("gripwright: " + sentence + "\nSee `gripwright grips --help`.\n", err());
    assertEquals("", out());
  }

  @Test
  void everyGripIsFittedOnTheDayOfTheLastLogLine() {
    assertEquals(0, run("grips", "club.grip", "--athlete", "eir"), err());
    assertTrue(out().startsWith("GRIPS OF EIR \u00C5S\nSun 3 Jan 2027: age 32, 18 months"), out());
    assertTrue(out().contains("\nedge  20 mm\nload  60 kg on both hands\n"), out());
    assertTrue(out().contains("\nhalf-crimp "), out());
    assertTrue(out().contains("\nbent  "), out());
    String flat = out().replaceAll("\\s+", " ");
    assertTrue(flat.contains("; the athlete has 18 months and IRCRA 21"), out());
    for (Caution caution : Caution.general()) {
      assertTrue(flat.contains(Wording.english().say(caution)), caution.key());
    }
    assertEquals("", err());
  }

  @Test
  void picturesAreWrittenIntoAFolderThatIsCreated() throws IOException {
    assertEquals(0, run("grips", "club.grip", "--athlete", "eir", "--to", "pictures"), err());
    assertEquals((StandardGrips.all().size() + 1) + " pictures written to pictures\n", out());
    String bent = Files.readString(folder.resolve("pictures").resolve("bent.svg"));
    assertTrue(bent.contains(">Bent four, 20 mm<"), bent);
    assertTrue(bent.contains("Eir \u00C5s"), bent);
    // A second run replaces them, and leaves other files alone.
    Files.writeString(folder.resolve("pictures").resolve("notes.txt"), "mine");
    assertEquals(0, run("grips", "club.grip", "--athlete", "eir", "--to", "pictures"), err());
    assertEquals(bent, Files.readString(folder.resolve("pictures").resolve("bent.svg")));
    assertEquals("mine", Files.readString(folder.resolve("pictures").resolve("notes.txt")));
  }

  @Test
  void picturesNeedAFolder() {
    refuses(
        "cannot write into `" + folder.resolve("club.grip") + "`: it is not a folder",
        "grips",
        "club.grip",
        "--athlete",
        "eir",
        "--to",
        "club.grip");
    refuses(
        "--to writes pictures, --as chooses text or JSON: give one of the two",
        "grips",
        "club.grip",
        "--athlete",
        "eir",
        "--to",
        "pictures",
        "--as",
        "text");
    assertFalse(Files.exists(folder.resolve("pictures")));
  }

  @Test
  void edgeLoadAndDayCanBeGiven() {
    assertEquals(
        0,
        run(
            "grips",
            "club.grip",
            "--athlete",
            "eir",
            "--edge",
            "0.5inch",
            "--load",
            "500 N",
            "--on",
            "2026-12-30"),
        err());
    assertTrue(out().contains("\nWed 30 Dec 2026: "), out());
    assertTrue(out().contains("\nedge  12.7 mm\nload  50.99 kg on both hands\n"), out());
    assertEquals(0, run("grips", "club.grip", "--athlete=eir", "--load=500N", "--newtons"), err());
    assertTrue(out().contains("load  50.99 kg on both hands, 250 N on each\n"), out());
    assertEquals(
        0, run("grips", "club.grip", "--athlete=eir", "--edge=15mm", "--load=165lb"), err());
    assertTrue(out().contains("\nedge  15 mm\nload  74.84 kg on both hands"), out());
    assertEquals(0, run("grips", "two.grip", "--athlete", "bera", "--on", "2027-01-04"), err());
    assertTrue(out().contains("\nload  61 kg on both hands"), out());
  }

  @Test
  void theDocumentKeepsItsSchema() throws IOException {
    assertEquals(0, run("grips", "club.grip", "--athlete", "eir", "--as", "json"), err());
    assertKeeps("grips");
    assertTrue(out().contains("\"on\": \"2027-01-03\""), out());
    assertTrue(out().contains("\"totalForceN\": 588.4"), out());
  }

  @Test
  void anAthleteIsNeeded() {
    refuses("grips needs an athlete: add --athlete eir", "grips", "club.grip");
    refuses(
        "grips needs an athlete: add --athlete NAME; two.grip has bera, eir", "grips", "two.grip");
    refuses(
        "there is no athlete `eri` in club.grip; did you mean `eir`?",
        "grips",
        "club.grip",
        "--athlete",
        "eri");
    refuses(
        "there is no athlete `sigrun` in two.grip; it has bera, eir",
        "grips",
        "two.grip",
        "--athlete",
        "sigrun");
  }

  @Test
  void aDayIsNeeded() {
    refuses(
        "nothing is logged for `bera`, so the day is not known: add --on DATE, such as --on"
            + " 2027-01-31",
        "grips",
        "two.grip",
        "--athlete",
        "bera");
    for (String day : List.of("tomorrow", "3.1.2027", "2027-02-30", "1066-10-14")) {
      refuses(
          "--on needs a day such as 2027-01-31, not `" + day + "`",
          "grips",
          "club.grip",
          "--athlete",
          "eir",
          "--on",
          day);
    }
    refuses(
        "--on 1990-01-01 is before `eir` was born, on 1994-03-02",
        "grips",
        "club.grip",
        "--athlete",
        "eir",
        "--on",
        "1990-01-01");
  }

  @Test
  void anEdgeIsALength() {
    refusesEdge("--edge 20 has no unit: write --edge 20mm", "20");
    refusesEdge(
        "--edge is the depth of an edge, in mm, cm or inch, not a mass such as `20kg`", "20kg");
    refusesEdge("--edge is the depth of an edge, in mm, cm or inch, not `20 m`", "20 m");
    refusesEdge(
        "--edge is the depth of an edge, in mm, cm or inch, not `20mn`; did you mean `mm`?",
        "20mn");
    refusesEdge("--edge is an edge from 1 to 200 mm deep, not 0mm", "0mm");
    refusesEdge("--edge is an edge from 1 to 200 mm deep, not -15 mm", "-15 mm");
    refusesEdge("--edge is an edge from 1 to 200 mm deep, not 2000 mm", "2000 mm");
    refusesEdge("--edge needs a number with its unit, such as 20mm, not `deep`", "deep");
    refusesEdge("--edge needs a number with its unit, such as 20mm, not ``", "");
  }

  /** A separate unit belongs to the number before it. */
  @Test
  void anEdgeNeedsNoQuotes() {
    assertEquals(0, run("grips", "club.grip", "--athlete", "eir", "--edge", "15mm"));
    String glued = out();
    assertEquals(0, run("grips", "--edge", "15", "mm", "club.grip", "--athlete", "eir"));
    assertEquals(glued, out());
    assertEquals(0, run("grips", "club.grip", "--athlete", "eir", "--edge=15", "mm"));
    assertEquals(glued, out());
    refuses(
        "--edge is the depth of an edge, in mm, cm or inch, not a mass such as `20 kg`",
        "grips",
        "club.grip",
        "--athlete",
        "eir",
        "--edge",
        "20",
        "kg");
  }

  @Test
  void anOptionIsGivenOnce() {
    refuses(
        "--athlete is given twice; give it once",
        "grips",
        "club.grip",
        "--athlete",
        "eir",
        "--athlete",
        "odd");
  }

  private void refusesEdge(String sentence, String edge) {
    refuses(sentence, "grips", "club.grip", "--athlete", "eir", "--edge", edge);
  }

  @Test
  void aLoadIsAMassOrAForce() {
    refusesLoad("--load 75 has no unit: write --load 75kg", "75");
    refusesLoad(
        "--load is what both hands hold together, in kg, lb or N, not a length such as `75 mm`",
        "75 mm");
    refusesLoad(
        "--load is what both hands hold together, above 0 and up to 1000 kg, not 0 kg", "0 kg");
    refusesLoad(
        "--load is what both hands hold together, above 0 and up to 1000 kg, not -5kg", "-5kg");
    refusesLoad(
        "--load is what both hands hold together, above 0 and up to 1000 kg, not 20000N", "20000N");
  }

  private void refusesLoad(String sentence, String load) {
    refuses(sentence, "grips", "club.grip", "--athlete", "eir", "--load", load);
  }

  @Test
  void filesAreReadFirst() throws IOException {
    refuses("grips needs a file: gripwright grips FILE --athlete NAME", "grips");
    refuses("grips takes one file, not 2", "grips", "club.grip", "two.grip", "--athlete", "eir");
    assertEquals(2, run("grips", "none.grip"));
    assertTrue(err().contains("there is no file `none.grip`"), err());
    assertEquals(2, run("grips", "club.grip", "--as", "json"));
    assertKeeps("grips");
    assertKeeps("findings");
  }

  @Test
  void aFileWithErrorsGivesItsFindings() throws IOException {
    for (String file : List.of("wrong.grip", "torn.grip")) {
      assertEquals(1, run("grips", file, "--athlete", "eir"));
      assertEquals("", out());
      assertTrue(err().startsWith("error: "), err());
      assertEquals(1, run("grips", file, "--athlete", "eir", "--as", "json"));
      assertKeeps("grips");
      assertKeeps("findings");
      assertFalse(out().contains("\"grips\""), out());
    }
  }
}
