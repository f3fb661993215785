package gripwright.tools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import gripwright.schedule.Caution;
import gripwright.wording.Wording;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

final class ReviewCommandTest extends CommandLine {

  private static final String CLUB =
      """
      language 1
      athlete eir "Eir Moe" {
        born 1994-03-02
        body-mass 61 kg
        trained 60 months
        ability french 7c
        hand { length 185 mm }
        available tue 90 min, thu 90 min
        equipment { edges 20 mm added 0.5 kg steps to 60 kg assist 0.5 kg steps to 60 kg }
      }
      athlete liv {
        born 1994-03-02
        body-mass 61 kg
        trained 60 months
        ability french 7c
        hand { length 185 mm }
        available tue 90 min
        equipment { edges 20 mm }
      }
      protocol ones { given sets 4 repeat sets resting 3 min { hold 10 s at 70 % max } }
      plan winter {
        for eir
        from 2027-01-04
        block base 4 weeks {
          session fingers 2 per week {
            do ones on half-crimp edge 20 mm
          }
        }
      }
      """;

  private static final String LOG =
      """
      log eir {
        2026-12-28 test half-crimp edge 20 mm hold 7 s load 80 kg "felt \\"good\\", rested"
        2027-01-05 session fingers "late, and short; \\"meh\\"" {
          ones on half-crimp edge 20 mm: sets 4 of 4, load 53 kg, effort 7, pain 1
        }
        2027-01-08 session fingers {
          ones on half-crimp edge 20 mm: sets 3 of 4, load 53 kg, effort 8, pain 3
        }
        2027-01-10 climbing hard 120 min effort 8 pain 2 "outside"
        2027-01-12 skipped fingers "ill"
        2027-01-13 body-mass 60.5 kg
        2027-01-15 pain ring a2 left 6 "after bouldering"
      }
      """;

  @BeforeEach
  void write() throws IOException {
    Files.writeString(folder.resolve("club.grip"), CLUB + LOG);
    Files.writeString(folder.resolve("none.grip"), CLUB);
    Files.writeString(
        folder.resolve("wrong.grip"), CLUB.replace("body-mass 61 kg", "body-mass 61 mm"));
  }

  private void writeLog(String lines) throws IOException {
    Files.writeString(folder.resolve("own.grip"), CLUB + "log eir {\n" + lines + "}\n");
  }

  @Test
  void theNextStepsHaveTheirReasons() {
    assertEquals(0, run("review", "club.grip", "--athlete", "eir"), err());
    assertTrue(out().startsWith("REVIEW OF EIR MOE\nFri 15 Jan 2027: 7 lines of log, from"), out());
    String flat = out().replaceAll("\\s+", " ");
    assertTrue(
        flat.contains(
            "1. Stop every grip that uses the left ring finger, and see a licensed practitioner: pain"
                + " logged for ring a2 left was 6 of 10 on 2027-01-15, above the limit of 5; the stop"
                + " ends when pain of the left ring finger was 2 or less on two days at least 48 h"
                + " apart (log both, such as `pain ring left 1`), or when an injury of it is written"
                + " and cleared."),
        flat);
    assertTrue(flat.contains("2 of 4 planned sessions trained"), flat);
    assertTrue(flat.contains("planned for Thu 7 Jan, 1 day later"), flat);
    assertTrue(flat.contains("3 of 4 sets"), flat);
    assertTrue(flat.contains("stop: above 5 of 10"), flat);
    for (Caution caution : Caution.general()) {
      assertTrue(flat.contains(Wording.english().say(caution)), caution.key());
    }
    assertTrue(out().lines().allMatch(line -> line.length() <= 80), out());
    assertFalse(out().contains("NaN") || out().contains("Infinity"), out());
    assertEquals("", err());
  }

  @Test
  void theDocumentKeepsItsSchemaAndIsReadBack() throws IOException {
    assertEquals(0, run("review", "club.grip", "--athlete", "eir", "--as", "json"), err());
    assertKeeps("review");
    JsonNode review = new ObjectMapper().readTree(out());
    assertEquals("2027-01-15", review.get("on").asText());
    assertEquals("review.stop", review.at("/next/0/code").asText());
    assertEquals("partly", review.at("/sessions/1/outcome").asText());
    assertEquals("2027-01-07", review.at("/sessions/1/plannedFor").asText());
    assertEquals(960, review.at("/climbing/0/sessionRpeLoad").asDouble());
    double sum = 0;
    for (JsonNode day : review.get("days")) {
      sum += day.get("sessionRpeLoad").asDouble();
    }
    assertEquals(
        sum,
        960
            + review.at("/sessions/0/sessionRpeLoad").asDouble()
            + review.at("/sessions/1/sessionRpeLoad").asDouble(),
        0.01);
    for (String file : List.of("none.grip", "wrong.grip")) {
      run("review", file, "--athlete", "eir", "--as", "json");
      assertKeeps("review");
    }
  }

  @Test
  void csvIsReadBack() throws IOException {
    assertEquals(0, run("review", "club.grip", "--athlete", "eir", "--as", "csv"), err());
    assertTrue(out().lines().count() > 7);
    assertEquals(out().split("\r\n", -1).length - 1, out().lines().count(), "lines end in CR LF");
    List<Map<String, String>> rows;
    try (var read =
        new CsvMapper()
            .readerForMapOf(String.class)
            .with(CsvSchema.emptySchema().withHeader())
            .<Map<String, String>>readValues(out())) {
      rows = read.readAll();
    }
    assertEquals(
        List.of(
            "test", "exercise", "exercise", "climbing", "session", "body-mass", "session", "pain"),
        rows.stream().map(row -> row.get("kind")).toList());
    assertEquals("felt \"good\", rested", rows.get(0).get("note"));
    assertEquals("late, and short; \"meh\"", rows.get(1).get("note"));
    assertEquals("53", rows.get(1).get("loadKg"));
    assertEquals("3", rows.get(2).get("sets"));
    assertEquals("skipped", rows.get(4).get("outcome"));
    assertEquals("60.5", rows.get(5).get("loadKg"));
    assertEquals("unlogged", rows.get(6).get("outcome"));
    assertEquals("ring a2 left", rows.get(7).get("where"));
    double minutes = Double.parseDouble(Objects.requireNonNull(rows.get(1).get("minutes")));
    assertEquals(
        7 * minutes,
        Double.parseDouble(Objects.requireNonNull(rows.get(1).get("sessionRpeLoad"))),
        1e-6);
  }

  @Test
  void anEmptyLogATestAloneAndASkippedSessionAreReviewed() throws IOException {
    assertEquals(0, run("review", "none.grip", "--athlete", "eir"), err());
    assertTrue(out().startsWith("REVIEW OF EIR MOE\nNothing is logged\n\nNEXT\n1. "), out());
    assertFalse(out().contains("LOAD"), out());
    assertEquals(0, run("review", "none.grip", "--athlete", "eir", "--as", "csv"), err());
    assertEquals(1, out().lines().count());
    assertEquals(0, run("review", "none.grip", "--athlete", "eir", "--on", "2027-02-01"), err());
    assertTrue(out().contains("Mon 1 Feb 2027: nothing is logged"), out());
    for (String line :
        List.of(
            "2026-12-28 test half-crimp edge 20 mm hold 7 s load 80 kg\n",
            "2027-01-05 skipped fingers\n",
            "2027-01-05 pain ring 0\n",
            "2027-01-05 session fingers { }\n",
            "2027-01-05 session other { ones on half-crimp edge 20 mm: sets 0 }\n")) {
      writeLog(line);
      assertEquals(0, run("review", "own.grip", "--athlete", "eir"), line + err());
      assertTrue(out().contains("NEXT\n1. "), line + out());
      assertFalse(out().contains("NaN") || out().contains("Infinity"), line + out());
      run("review", "own.grip", "--athlete", "eir", "--as", "json");
      assertKeeps("review");
    }
  }

  @Test
  void moreLoadThanPlannedIsNotAsPlannedAndEarnsNothing() throws IOException {
    String line =
        "2027-01-%s session fingers { ones on half-crimp edge 20 mm: sets 4 of 4, load %s kg,"
            + " effort 6, pain 0 }\n";
    String test = "2026-12-28 test half-crimp edge 20 mm hold 7 s load 80 kg\n";
    writeLog(test + line.formatted("05", 53) + line.formatted("07", 53));
    assertEquals(0, run("review", "own.grip", "--athlete", "eir"), err());
    assertTrue(out().contains("2 of them as planned"), out());
    assertTrue(out().contains("Take the next step of ones"), out());
    writeLog(test + line.formatted("05", 66) + line.formatted("07", 66));
    assertEquals(0, run("review", "own.grip", "--athlete", "eir"), err());
    assertTrue(out().contains("0 of them as planned"), out());
    assertTrue(out().contains("trained, with more load than planned"), out());
    assertTrue(out().contains("Go back to the planned load of ones"), out());
    assertFalse(out().contains("next step of ones"), out());
  }

  @Test
  void anOddTestIsReportedAtItsLine() throws IOException {
    writeLog(
        """
        2026-12-28 test half-crimp edge 20 mm hold 7 s load 80 kg
        2026-12-30 test half-crimp edge 20 mm hold 7 s load 180 lb
        2027-01-02 test half-crimp edge 20 mm hold 7 s load 130 kg
        """);
    assertEquals(0, run("review", "own.grip", "--athlete", "eir"), err());
    assertTrue(err().contains("(log.test-outlier)\n"), err());
    assertTrue(err().contains("2027-01-02 test half-crimp"), err());
    assertTrue(out().contains("left out here, kept in the log"), out());
    run("review", "own.grip", "--athlete", "eir", "--as", "json");
    assertKeeps("review");
    assertTrue(out().contains("\"code\": \"log.test-outlier\""), out());
  }

  @Test
  void anImplausibleTestIsReportedOnce() throws IOException {
    writeLog(
        """
        2026-12-28 test half-crimp edge 20 mm hold 7 s load 80 kg
        2026-12-30 test half-crimp edge 20 mm hold 7 s load 180 lb
        2027-01-02 test half-crimp edge 20 mm hold 7 s load 180 kg
        """);
    assertEquals(0, run("review", "own.grip", "--athlete", "eir"), err());
    assertTrue(err().contains("(log.test-high)\n"), err());
    assertFalse(err().contains("log.test-outlier"), err());
  }

  private static String withoutSources(String json) {
    return json.replaceAll("(?s)\"sources\": \\[.*?\\]", "");
  }

  @Test
  void splittingTheLogOverFilesAndReversingItChangesNothing() throws IOException {
    run("review", "club.grip", "--athlete", "eir", "--as", "json");
    String whole = withoutSources(out());
    String[] lines = LOG.strip().split("\n  (?=20)", -1);
    StringBuilder first = new StringBuilder("language 1\nuse \"names.grip\"\nlog eir {\n");
    StringBuilder second = new StringBuilder("language 1\nuse \"names.grip\"\nlog eir {\n");
    for (int i = lines.length - 1; i > 0; i--) {
      String line = i == lines.length - 1 ? lines[i].replaceFirst("\n}$", "") : lines[i];
      (i % 2 == 0 ? first : second).append("  ").append(line).append('\n');
    }
    Files.writeString(folder.resolve("names.grip"), CLUB);
    Files.writeString(folder.resolve("one.grip"), first + "}\n");
    Files.writeString(folder.resolve("two.grip"), second + "}\n");
    Files.writeString(
        folder.resolve("all.grip"),
        "language 1\nuse \"two.grip\"\nuse \"one.grip\"\nuse \"names.grip\"\n");
    assertEquals(0, run("review", "all.grip", "--athlete", "eir", "--as", "json"), err());
    assertEquals(whole, withoutSources(out()));
  }

  @Test
  void wrongUsageIsReportedInOneSentence() {
    assertEquals(2, run("review", "club.grip"));
    assertTrue(
        err().contains("review needs an athlete: add --athlete NAME; club.grip has eir, liv"));
    assertEquals(2, run("review", "club.grip", "--athlete", "eir", "--plan", "wintr"));
    assertTrue(err().contains("no plan `wintr` for `eir`; did you mean `winter`?"), err());
    assertEquals(2, run("review", "club.grip", "--athlete", "eir", "--as", "cvs"));
    assertTrue(err().contains("--as is text, json or csv, not `cvs`; did you mean `csv`?"), err());
    assertEquals(2, run("strength", "club.grip", "--athlete", "eir", "--as", "csv"));
    assertTrue(err().contains("--as is text or json, not `csv`"), err());
    assertEquals(2, run("review", "no.grip", "--athlete", "eir"));
    assertEquals(1, run("review", "wrong.grip", "--athlete", "eir"));
    assertEquals("", out());
    assertTrue(err().contains("error: "), err());
  }

  @Test
  void anUnknownExerciseAffectsNothingElse() throws IOException {
    String known = "ones on half-crimp edge 20 mm: sets 4, load 53 kg, effort 7";
    writeLog(
        "2027-01-05 session fingers {\n" + known + "\ntwos on half-crimp edge 20 mm: sets 4\n}\n");
    assertEquals(1, run("review", "own.grip", "--athlete", "eir"));
    assertTrue(err().contains("error: unknown protocol `twos`"), err());
    assertEquals(1, err().split("error: ", -1).length - 1, err());
  }

  @Test
  void theExampleIsReviewed() throws IOException {
    Path plans = Path.of("../../examples/plans").toAbsolutePath();
    assertEquals(0, run("review", plans.resolve("reviewed.grip").toString(), "--athlete", "signe"));
    assertTrue(out().contains("NEXT\n1. Stop every grip that uses the left ring finger"), out());
  }
}
