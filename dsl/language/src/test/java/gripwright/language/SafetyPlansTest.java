package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.finding.ReportedFinding;
import gripwright.finding.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Plans that a coach would write, each a file: dangerous ones, which say how severe the worst of
 * their findings has to be at least, and sensible ones, which may have no error and no warning but
 * those they allow. False alarms are as much a defect as silence.
 *
 * <p>What is dangerous, and how much, is common practice where no rule names its source.
 */
class SafetyPlansTest {

  private static final Path FOLDER = Path.of("src/test/resources/safety");

  private static Stream<Path> files(String folder) throws IOException {
    return Files.list(FOLDER.resolve(folder)).sorted();
  }

  private static List<ReportedFinding> findings(Path file) {
    return Gripwright.read(file).compile().findings().stream()
        .filter(finding -> finding.waivedBecause() == null)
        .toList();
  }

  /** Returns the words after a mark in the comments of a file. */
  private static Set<String> marked(Path file, String mark) throws IOException {
    String start = "# " + mark + " ";
    return Files.readString(file)
        .lines()
        .filter(line -> line.startsWith(start))
        .flatMap(line -> Stream.of(line.substring(start.length()).split(" ")))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @TestFactory
  Stream<DynamicTest> dangerousPlansAreReported() throws IOException {
    return files("dangerous")
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file.getFileName().toString(),
                    () -> {
                      Severity least =
                          Severity.valueOf(
                              marked(file, "at least").iterator().next().toUpperCase(Locale.ROOT));
                      List<ReportedFinding> findings = findings(file);
                      assertTrue(
                          findings.stream().anyMatch(f -> f.severity().compareTo(least) <= 0),
                          () -> "nothing as severe as " + least + " in " + findings);
                    }));
  }

  @TestFactory
  Stream<DynamicTest> ordinaryTrainingHasNoErrorsOrWarnings() throws IOException {
    return files("sensible")
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file.getFileName().toString(),
                    () -> {
                      Set<String> allowed = marked(file, "allows");
                      assertEquals(
                          List.of(),
                          findings(file).stream()
                              .filter(f -> f.severity() != Severity.ADVICE)
                              .filter(f -> !allowed.contains(f.code()))
                              .map(f -> f.line() + " " + f.code() + " " + f.message())
                              .toList());
                    }));
  }
}
