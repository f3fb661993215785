package gripwright.tools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Athlete;
import gripwright.export.csv.CsvRows;
import gripwright.export.study.Pseudonyms;
import gripwright.language.Gripwright;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

final class CompileFolderTest extends CommandLine {

  private static final Path PLANS = Path.of("../../examples/plans");

  /** An athlete with a test in the log, by name and title. */
  private static final String ATHLETE =
      """
      athlete %1$s "%2$s" {
        born       1990-04-03
        body-mass  60 kg
        trained    80 months
        ability    ircra 20
        hand {
          length   180 mm
        }
        available  mon 2 h, thu 2 h
        equipment {
          edges    20 mm
          added    0.5 kg steps to 40 kg
          assist   0.5 kg steps to 40 kg
        }
      }
      log %1$s {
        2026-12-20 test half-crimp edge 20 mm hold 7 s load 80 kg
      }
      """;

  /** A plan whose names and texts name its athletes in every place that allows it. */
  private static final String NAMING =
      """
      language 1
      use "annika-strand.grip"
      protocol tens-of-annika {
        repeat 3 resting 3 min {
          hold 10 s at 60 % max
        }
        report fidelity "a trainer counts; Strand signs"
      }
      plan winter-of-annika "Annika's winter | with Bo" {
        for annika, bo-lund
        from 2027-01-04
        supervised by "Annika Strand"
        report provider "Bo, and ANNIKA as helper"
        block annika-base 1 weeks {
          session for-bo-lund 1 per week {
            do tens-of-annika on half-crimp edge 20 mm
            only for annika {
              do max-holds with level 55 % max, sets 2 on half-crimp edge 20 mm
                  rehabilitation "plan of Bo Lund"
            }
          }
        }
      }
      """;

  @BeforeEach
  void copyExamples() throws IOException {
    try (Stream<Path> files = Files.list(PLANS)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, folder.resolve(file.getFileName().toString()));
      }
    }
  }

  private Map<String, String> written(String name) {
    Map<String, String> texts = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder.resolve(name))) {
      for (Path file : files.toList()) {
        texts.put(file.getFileName().toString(), Files.readString(file));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return texts;
  }

  private List<List<String>> rows(String folderName, String table) {
    return CsvRows.of(written(folderName).get(table)).orElseThrow();
  }

  private static int column(List<List<String>> rows, String name) {
    return rows.get(0).indexOf(name);
  }

  private static double sum(List<List<String>> rows, String name) {
    int column = column(rows, name);
    return rows.stream().skip(1).mapToDouble(row -> Double.parseDouble(row.get(column))).sum();
  }

  @Test
  void theTablesAgreeWithEachOther() {
    assertEquals(0, run("compile", "season.grip", "--to", "out"), err());
    assertEquals("5 files written to out\n", out());
    assertEquals(
        List.of(
            "datapackage.json",
            "holds.csv",
            "manifest.json",
            "methods.md",
            "sessions.csv",
            "weeks.csv"),
        List.copyOf(written("out").keySet()));
    List<List<String>> sessions = rows("out", "sessions.csv");
    List<List<String>> holds = rows("out", "holds.csv");
    List<List<String>> weeks = rows("out", "weeks.csv");
    assertEquals(sum(sessions, "timeUnderLoadSeconds"), sum(holds, "seconds"), 1e-6);
    assertEquals(sum(sessions, "timeUnderLoadSeconds"), sum(weeks, "timeUnderLoadSeconds"), 1e-6);
    assertEquals(sum(sessions, "loadTimeKgS"), sum(weeks, "loadTimeKgS"), 0.1);
    assertEquals(sessions.size() - 1, sum(weeks, "sessions"), 0);
    int load = column(holds, "totalLoadKg");
    int seconds = column(holds, "seconds");
    double loadTime =
        holds.stream()
            .skip(1)
            .mapToDouble(
                row -> Double.parseDouble(row.get(load)) * Double.parseDouble(row.get(seconds)))
            .sum();
    assertEquals(sum(sessions, "loadTimeKgS"), loadTime, 1);
  }

  @Test
  void onePlanAlone() {
    assertEquals(0, run("compile", "season.grip", "--plan", "pockets", "--to", "out"), err());
    List<List<String>> sessions = rows("out", "sessions.csv");
    int plan = column(sessions, "plan");
    assertEquals(
        List.of("pockets"), sessions.stream().skip(1).map(r -> r.get(plan)).distinct().toList());
    assertTrue(written("out").get("methods.md").startsWith("# Methods: pockets"));
  }

  @Test
  void theSameInputGivesTheSameBytes() throws IOException {
    assertEquals(0, run("compile", "season.grip", "--to", "one", "--codes", "key.csv"), err());
    String key = Files.readString(folder.resolve("key.csv"));
    assertEquals(0, run("compile", "season.grip", "--to", "two", "--codes", "key.csv"), err());
    assertEquals(written("one"), written("two"));
    assertEquals(0, run("compile", "season.grip", "--to", "one", "--codes", "key.csv"), err());
    assertEquals(written("two"), written("one"));
    assertEquals(key, Files.readString(folder.resolve("key.csv")));
  }

  @Test
  void aChangedFileIsRefused() throws IOException {
    assertEquals(0, run("compile", "first-weeks.grip", "--to", "out"), err());
    Files.writeString(folder.resolve("out/methods.md"), "my own text");
    Map<String, String> before = written("out");
    assertEquals(2, run("compile", "first-weeks.grip", "--to", "out"));
    assertTrue(err().contains("methods.md` was changed after it was written"), err());
    assertEquals(before, written("out"));
  }

  @Test
  void aFileWithErrorsWritesNothing() throws IOException {
    Files.writeString(folder.resolve("bad.grip"), "language 1\nplan x { for nobody }\n");
    assertEquals(1, run("compile", "bad.grip", "--to", "out", "--codes", "key.csv"));
    assertFalse(Files.exists(folder.resolve("out")));
    assertFalse(Files.exists(folder.resolve("key.csv")));
  }

  @Test
  void optionsThatDoNotFitAreRefused() {
    assertEquals(2, run("compile", "season.grip", "--codes", "key.csv"));
    assertTrue(err().contains("--codes needs --to"), err());
    assertEquals(2, run("compile", "season.grip", "--to", "out", "--as", "text"));
    assertEquals(2, run("compile", "season.grip", "--to", "out", "--output", "x.txt"));
    assertFalse(Files.exists(folder.resolve("out")));
  }

  /** Asserts that no name of an athlete and no day of birth stands anywhere in a folder. */
  private void assertNamesNobody(String name, Map<String, Athlete> athletes) {
    written(name)
        .forEach(
            (file, text) -> {
              for (Athlete athlete : athletes.values()) {
                assertFalse(text.contains(athlete.born().toString()), file);
                for (String word : Pseudonyms.namesOf(athlete)) {
                  Pattern pattern =
                      Pattern.compile(
                          "(?<![\\p{L}\\p{N}])" + Pattern.quote(word) + "(?![\\p{L}\\p{N}])",
                          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
                  assertFalse(pattern.matcher(text).find(), () -> word + " in " + file);
                }
              }
            });
  }

  @Test
  void withCodesNobodyIsNamed() throws IOException {
    for (String file : List.of("season", "one-season", "first-weeks", "reviewed", "second-week")) {
      String to = "out-" + file;
      assertEquals(0, run("compile", file + ".grip", "--to", to, "--codes", file + ".csv"), err());
      assertNamesNobody(to, Gripwright.read(folder.resolve(file + ".grip")).athletes());
    }
  }

  private void writeNaming() throws IOException {
    Files.writeString(
        folder.resolve("annika-strand.grip"),
        "language 1\n"
            + ATHLETE.formatted("annika", "Annika Strand")
            + ATHLETE.formatted("bo-lund", "Bo Lund"));
    Files.writeString(folder.resolve("naming.grip"), NAMING);
  }

  @Test
  void methodsQuoteReportsWithTheirLines() throws IOException {
    writeNaming();
    assertEquals(0, run("compile", "naming.grip", "--to", "out"), err());
    String methods = written("out").get("methods.md");
    assertTrue(methods.startsWith("# Methods: Annika's winter \\| with Bo\n"), methods);
    for (String line :
        List.of(
            "instruct | Bo, and ANNIKA as helper | naming.grip:13 |",
            "how delivered | supervised by Annika Strand | naming.grip:12 |",
            "fidelity is measured | a trainer counts; Strand signs | naming.grip:7 |",
            "| 6 | motivation strategies | not stated |  |",
            "1. tens-of-annika on half-crimp, edge 20 mm, both hands: 3 sets, 1 hold per set,"
                + " 10 s per hold, 3 min rest between sets, at 60 % max\n")) {
      assertTrue(methods.contains(line), methods);
    }
    assertEquals(
        19 + 12 + 13, methods.lines().filter(l -> l.matches("\\| [0-9]+[ab]? .*")).count());
  }

  @Test
  void aNameInAnotherNameOrTextIsReplaced() throws IOException {
    writeNaming();
    Files.writeString(folder.resolve("key.csv"), "athlete,code\nannika,P-01\nbo-lund,P-02\n");
    assertEquals(0, run("compile", "naming.grip", "--to", "out", "--codes", "key.csv"), err());
    assertNamesNobody("out", Gripwright.read(folder.resolve("naming.grip")).athletes());
    String methods = written("out").get("methods.md");
    assertTrue(methods.contains("| P-02, and P-01 as helper | naming.grip:13 |"), methods);
    assertTrue(written("out").get("datapackage.json").contains("\"P-01-"), "names of files");
  }

  @Test
  void theKeyLiesOutsideTheFolder() throws IOException {
    assertEquals(2, run("compile", "first-weeks.grip", "--to", "out", "--codes", "out/key.csv"));
    assertTrue(err().contains("lies in the folder of the outputs"), err());
    assertFalse(Files.exists(folder.resolve("out")));
    Files.createDirectory(folder.resolve("real"));
    Files.createSymbolicLink(folder.resolve("link"), folder.resolve("real"));
    assertEquals(2, run("compile", "first-weeks.grip", "--to", "real", "--codes", "link/key.csv"));
    assertEquals(
        2, run("compile", "first-weeks.grip", "--to", "link", "--codes", "other/../real/key.csv"));
    assertEquals(Map.of(), written("real"));
  }

  @Test
  void aKeyWithMistakesIsRefused() throws IOException {
    writeNaming();
    Map<String, String> mistakes =
        Map.of(
            "athlete,code\nannika,A\n", "has no code for bo-lund; add a line `bo-lund,CODE`",
            "name,code\nannika,A\n", "the first of which is `athlete,code`",
            "athlete,code\nannika,A\nbo-lund,a\n", "twice: `bo-lund,a`",
            "athlete,code\nannika,A\nannika,B\n", "twice: `annika,B`",
            "athlete,code\nannika,Lund\n", "nobody's name, not `Lund`",
            "athlete,code\nannika\n", "in each line, not `annika`",
            "athlete,code\nannika,\"A|B\"\n", "not `A|B`",
            "", "needs CSV lines");
    for (Map.Entry<String, String> mistake : mistakes.entrySet()) {
      Files.writeString(folder.resolve("key.csv"), mistake.getKey());
      assertEquals(2, run("compile", "naming.grip", "--to", "out", "--codes", "key.csv"));
      assertTrue(err().contains(mistake.getValue()), err());
      assertFalse(Files.exists(folder.resolve("out")));
    }
  }

  @Test
  void aRefusedFolderLeavesNoKey() throws IOException {
    Files.createDirectory(folder.resolve("out"));
    Files.writeString(folder.resolve("out/notes.txt"), "mine");
    assertEquals(2, run("compile", "first-weeks.grip", "--to", "out", "--codes", "key.csv"));
    assertFalse(Files.exists(folder.resolve("key.csv")));
  }
}
