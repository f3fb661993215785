package gripwright.tools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.schedule.Caution;
import gripwright.wording.Wording;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

final class StrengthCommandTest extends CommandLine {

  private static final String ATHLETE =
      """
      athlete NAME {
        born 1994-03-02
        body-mass 61 kg
        trained 60 months
        ability french 7c
        hand { length 185 mm }
        available tue 90 min
        equipment { edges 20 mm, 14 mm }
      }
      """;

  private static final String CLUB = "language 1\n" + ATHLETE.replace("NAME", "eir \"Eir Moe\"");

  private static String series() {
    return IntStream.range(0, 24)
        .mapToObj(i -> String.format(Locale.ROOT, "%.1f", 30 + 45 * Math.exp(-i / 4.0)))
        .collect(Collectors.joining(", "));
  }

  @BeforeEach
  void write() throws IOException {
    Files.writeString(folder.resolve("none.grip"), CLUB);
    Files.writeString(
        folder.resolve("club.grip"),
        CLUB
            + """
            log eir {
              2026-12-28 test half-crimp edge 20 mm hold 7 s load 80 kg
              2027-01-02 test half-crimp edge 20 mm left hand hold 7 s load 42 kg
              2027-01-03 body-mass 60 kg
            }
            """);
    Files.writeString(
        folder.resolve("much.grip"),
        CLUB
            + "log eir {\n"
            + "  2026-12-28 test half-crimp edge 20 mm hold 7 s load 80 kg\n"
            + "  2026-12-29 test half-crimp edge 20 mm to-failure 45 kg lasting 60 s\n"
            + "  2026-12-30 test half-crimp edge 20 mm to-failure 30 kg lasting 200 s\n"
            + "  2027-01-02 test half-crimp edge 20 mm series 24 x 7 s / 3 s mean "
            + series()
            + " kg\n}\n");
    Files.writeString(folder.resolve("wrong.grip"), CLUB.replace("61 kg", "61 mm"));
  }

  @Test
  void everyGripHasALineWithItsInterval() {
    assertEquals(0, run("strength", "club.grip", "--athlete", "eir"), err());
    assertTrue(
        out()
            .startsWith(
                "STRENGTH OF EIR MOE\nSun 3 Jan 2027: 2 tests, the last on Sat 2 Jan 2027\n"),
        out());
    assertTrue(out().contains("\nBOTH HANDS, EDGE 20 mm\n"), out());
    assertTrue(
        out()
            .lines()
            .anyMatch(l -> l.matches("half-crimp +7\\d\\.\\d +80\\.0 +8\\d\\.\\d +1 +-*o-*")),
        out());
    assertTrue(
        out().lines().anyMatch(l -> l.matches("three-finger-drag( +\\d+\\.\\d){3} +- +-*o-*")),
        out());
    assertTrue(out().contains("\nNot tested on 14 mm: use --edge.\n"), out());
    assertTrue(out().contains("\nLEFT HAND, EDGE 20 mm\n"), out());
    assertTrue(out().contains("\nBOTH HANDS, BY TIME\n"), out());
    assertFalse(out().contains("LEFT HAND, BY TIME"), "one test tells nothing of time");
    assertTrue(out().contains("CRITICAL FORCE\nNot known: "), out());
    assertTrue(out().lines().allMatch(line -> line.length() <= 80), out());
    String flat = out().replaceAll("\\s+", " ");
    for (Caution caution : Caution.general()) {
      assertTrue(flat.contains(Wording.english().say(caution)), caution.key());
    }
    assertEquals("", err());
  }

  @Test
  void edgeAndDayCanBeGiven() {
    assertEquals(
        0,
        run("strength", "club.grip", "--athlete=eir", "--edge", "14 mm", "--on", "2026-12-30"),
        err());
    assertTrue(out().contains("\nWed 30 Dec 2026: 1 test, on Mon 28 Dec 2026\n"), out());
    assertTrue(out().contains("\nBOTH HANDS, EDGE 14 mm\n"), out());
    assertFalse(out().contains("EDGE 20 mm"), out());
    assertFalse(out().contains("LEFT HAND"), out());
  }

  @Test
  void withoutATestThereAreNoEstimates() throws IOException {
    assertEquals(0, run("strength", "none.grip", "--athlete", "eir", "--on", "2027-01-03"), err());
    assertTrue(out().contains("here is no test, so strength"), out());
    assertFalse(out().contains("BOTH HANDS"), out());
    run("strength", "none.grip", "--athlete", "eir", "--on", "2027-01-03", "--as", "json");
    assertKeeps("strength");
    assertTrue(out().contains("\"criticalForceKg\": null"), out());
  }

  @Test
  void withoutALogNoDayIsNeeded() throws IOException {
    assertEquals(0, run("strength", "none.grip", "--athlete", "eir"), err());
    assertTrue(out().startsWith("STRENGTH OF EIR MOE\nThere is no test, so strength"), out());
    assertEquals(0, run("strength", "none.grip", "--athlete", "eir", "--as", "json"), err());
    assertKeeps("strength");
    assertTrue(out().contains("\"on\": null"), out());
  }

  @Test
  void aShallowEdgeNeedsItsOwnTest() throws IOException {
    assertEquals(0, run("strength", "club.grip", "--athlete", "eir", "--edge", "4mm"), err());
    assertTrue(
        out()
            .replaceAll("\\s+", " ")
            .contains(
                "BOTH HANDS, EDGE 4 mm At or below 4.3 mm nothing is estimated from a deeper"
                    + " edge; test on this edge."),
        out());
    assertFalse(out().contains("Greatest total load"), out());
    assertFalse(out().contains("BY TIME"), out());
    run("strength", "club.grip", "--athlete", "eir", "--edge", "4mm", "--as", "json");
    assertKeeps("strength");
    assertTrue(out().contains("\"unreckoned\": ["), out());
  }

  @Test
  void unusableTestsAreCounted() throws IOException {
    Files.writeString(
        folder.resolve("odd.grip"),
        CLUB
            + "log eir {\n"
            + "  2026-12-28 test half-crimp edge 20 mm hold 7 s load 80 kg\n"
            + "  2026-12-29 test half-crimp edge 20 mm to-failure 20 kg lasting 11 min\n}\n");
    assertEquals(0, run("strength", "odd.grip", "--athlete", "eir"), err());
    assertTrue(
        out()
            .contains(
                ": 1 test, on Mon 28 Dec 2026\n1 further test is not used: longer than 10 min\n"),
        out());
    run("strength", "odd.grip", "--athlete", "eir", "--as", "json");
    assertKeeps("strength");
    assertTrue(out().contains("\"reason\": \"too-long\""), out());
  }

  @Test
  void criticalForceIsShownWithItsDefinition() {
    assertEquals(0, run("strength", "much.grip", "--athlete", "eir"), err());
    String flat = out().replaceAll("\\s+", " ");
    assertTrue(
        flat.contains(
            "(kg times s): mean of the last three holds of an all-out series, half-crimp"),
        flat);
    assertTrue(
        flat.contains("(kg times s): load by time of unbroken holds, half-crimp edge 20 mm"), flat);
    assertTrue(flat.contains("CRITICAL FORCE Both hands: "), flat);
    assertTrue(flat.contains(", Tue 29 Dec 2026 to Wed 30 Dec 2026"), flat);
    assertTrue(out().contains("  power law"), out());
    assertTrue(out().lines().allMatch(line -> line.length() <= 80), out());
  }

  @Test
  void theDocumentKeepsItsSchema() throws IOException {
    for (String file : List.of("club.grip", "much.grip")) {
      assertEquals(0, run("strength", file, "--athlete", "eir", "--as", "json"), err());
      assertKeeps("strength");
      assertTrue(out().contains("\"referenceHoldSeconds\": 7"), out());
      assertTrue(out().contains("\"edgeMm\": 14"), "edges that are owned");
    }
    assertTrue(out().contains("\"criticalForceDefinition\": \"holds-to-failure\""), out());
    assertTrue(out().contains("\"criticalForceHands\": \"both\""), out());
    assertTrue(out().contains("\"criticalForceDate\": \"2026-12-30\""), out());
  }

  @Test
  void wrongUsageIsReportedInOneSentence() throws IOException {
    assertEquals(2, run("strength"));
    assertEquals(
        "gripwright: strength needs a file: gripwright strength FILE --athlete NAME\n"
            + "See `gripwright strength --help`.\n",
        err());
    assertEquals(2, run("strength", "club.grip", "--athlete", "eri"));
    assertTrue(err().contains("did you mean `eir`?"), err());
    assertEquals(2, run("strength", "club.grip", "--as", "json"));
    assertKeeps("strength");
    assertEquals(0, run("strength", "--help"));
    assertTrue(out().startsWith("gripwright strength FILE --athlete NAME"), out());
  }

  @Test
  void aFileWithErrorsGivesItsFindings() throws IOException {
    assertEquals(1, run("strength", "wrong.grip", "--athlete", "eir"));
    assertEquals("", out());
    assertTrue(err().startsWith("error: "), err());
    assertEquals(1, run("strength", "wrong.grip", "--athlete", "eir", "--as", "json"));
    assertKeeps("strength");
    assertKeeps("findings");
  }
}
