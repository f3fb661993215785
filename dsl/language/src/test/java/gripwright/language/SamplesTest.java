package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.finding.ReportedFinding;
import gripwright.finding.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The normative sample files. {@code good} compiles, {@code bad} has exactly the findings of its
 * table, and {@code second} is written in the next language: what of it compiles today is listed.
 */
class SamplesTest {

  private static final Path SAMPLES = Path.of("src/test/resources/samples");

  /**
   * Samples of the next language that have an error today. When a construct is added, remove the
   * samples it completes; once the list is empty, they belong to {@code good}.
   */
  private static final List<String> NOT_YET_ACCEPTED =
      List.of(
          "junior.grip",
          "loft.grip",
          "month.grip",
          "return.grip",
          "spring.grip",
          "study.grip",
          "two-a-day.grip");

  private static List<ReportedFinding> findings(Path file) {
    return compile(file).findings();
  }

  private static Compilation compile(Path file) {
    return Gripwright.read(file, ReadOptions.standard().withRoot(SAMPLES)).compile();
  }

  private static List<Path> plans(String folder) throws IOException {
    try (Stream<Path> files = Files.list(SAMPLES.resolve(folder))) {
      return files.filter(file -> file.toString().endsWith(".grip")).sorted().toList();
    }
  }

  @Test
  void goodSamplesHaveNoError() throws IOException {
    List<Path> files = plans("good");
    assertEquals(6, files.size());
    for (Path file : files) {
      Compilation compilation = compile(file);
      assertTrue(compilation.usable(), () -> file + " " + compilation.findings());
    }
  }

  @Test
  void samplesOfTheNextLanguageAreRefusedUntilTheirConstructsExist() throws IOException {
    List<String> refused = new ArrayList<>();
    for (Path file : plans("second")) {
      if (!compile(file).usable()) {
        refused.add(file.getFileName().toString());
      }
    }
    assertEquals(NOT_YET_ACCEPTED, refused);
  }

  @Test
  void winterIsCompiled() {
    Compilation compilation =
        Gripwright.read(
                SAMPLES.resolve("good/winter.grip"), ReadOptions.standard().withRoot(SAMPLES))
            .compile("winter");
    assertEquals(1, compilation.plans().size());
    assertTrue(compilation.plans().get(0).sessions().size() >= 8);
    assertTrue(
        compilation.findings().stream()
            .anyMatch(f -> "split-volume".equals(f.rule()) && f.waivedBecause() != null));
  }

  /**
   * Each row is reported once, at its line, with a code of its kind; and nothing else is reported.
   */
  @Test
  void badSamplesHaveExactlyTheirErrors() throws IOException {
    Map<String, List<String[]>> rows = new TreeMap<>();
    for (String line : Files.readAllLines(SAMPLES.resolve("bad/EXPECTED.tsv"))) {
      String[] cells = line.split("\t", -1);
      if (!cells[0].equals("file")) {
        rows.computeIfAbsent(cells[0], file -> new ArrayList<>()).add(cells);
      }
    }
    assertTrue(rows.size() >= 5);
    rows.forEach(
        (file, expected) -> {
          List<ReportedFinding> found =
              findings(SAMPLES.resolve("bad").resolve(file)).stream()
                  .filter(finding -> finding.severity() == Severity.ERROR)
                  .toList();
          assertEquals(expected.size(), found.size(), () -> file + " " + found);
          for (int i = 0; i < expected.size(); i++) {
            ReportedFinding finding = found.get(i);
            assertEquals("bad/" + file, finding.file());
            assertEquals(Integer.parseInt(expected.get(i)[1]), finding.line());
            assertEquals(Severity.ERROR, finding.severity());
            assertTrue(finding.code().startsWith(expected.get(i)[2]), finding.code());
          }
        });
  }

  @Test
  void theNearestGripIsSuggested() {
    ReportedFinding finding = findings(SAMPLES.resolve("bad/unknown-grip.grip")).get(0);
    assertEquals("did you mean `half-crimp`?", finding.hint());
  }
}
