package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

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
 * The normative sample files, where they are: beside the project, or where the system property
 * {@code gripwright.samples} says.
 */
class SamplesTest {

  private static Path samples() {
    Path beside = Path.of("../../../shared/samples");
    Path folder = Path.of(System.getProperty("gripwright.samples", beside.toString()));
    assumeTrue(
        Files.isDirectory(folder),
        "no samples at " + folder + ": set -Dgripwright.samples=FOLDER to run this test");
    return folder;
  }

  private static List<ReportedFinding> findings(Path samples, Path file) {
    return Gripwright.read(file, ReadOptions.standard().withRoot(samples)).compile().findings();
  }

  @Test
  void goodSamplesHaveNoError() throws IOException {
    Path samples = samples();
    try (Stream<Path> files = Files.list(samples.resolve("good"))) {
      for (Path file : files.sorted().toList()) {
        Compilation compilation =
            Gripwright.read(file, ReadOptions.standard().withRoot(samples)).compile();
        assertTrue(compilation.usable(), () -> file + " " + compilation.findings());
      }
    }
  }

  @Test
  void winterIsCompiled() {
    Path samples = samples();
    Compilation compilation =
        Gripwright.read(
                samples.resolve("good/winter.grip"), ReadOptions.standard().withRoot(samples))
            .compile("winter");
    assertEquals(1, compilation.plans().size());
    assertTrue(compilation.plans().get(0).sessions().size() >= 8);
    assertTrue(
        compilation.findings().stream()
            .anyMatch(f -> "split-volume".equals(f.rule()) && f.waivedBecause() != null));
  }

  /** Each row is told once, at its line, with a code of its kind; and nothing else is told. */
  @Test
  void badSamplesHaveExactlyTheirFindings() throws IOException {
    Path samples = samples();
    Map<String, List<String[]>> rows = new TreeMap<>();
    for (String line : Files.readAllLines(samples.resolve("bad/EXPECTED.tsv"))) {
      String[] cells = line.split("\t", -1);
      if (!cells[0].equals("file")) {
        rows.computeIfAbsent(cells[0], file -> new ArrayList<>()).add(cells);
      }
    }
    assertTrue(rows.size() >= 5);
    rows.forEach(
        (file, expected) -> {
          List<ReportedFinding> found = findings(samples, samples.resolve("bad").resolve(file));
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
  void theNearestGripIsOffered() {
    Path samples = samples();
    ReportedFinding finding = findings(samples, samples.resolve("bad/unknown-grip.grip")).get(0);
    assertEquals("did you mean `half-crimp`?", finding.hint());
  }
}
