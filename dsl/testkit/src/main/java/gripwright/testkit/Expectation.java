package gripwright.testkit;

import gripwright.finding.ReportedFinding;
import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Expected findings as lines of a file: place, severity, code, and whether the finding is waived.
 */
final class Expectation {

  /**
   * One finding.
   *
   * @param text the line as it is written
   * @param message the finding's sentence; empty if the line was read from a file
   */
  private record Line(String text, String message) {}

  private final List<Line> lines;

  private Expectation(List<Line> lines) {
    this.lines = lines;
  }

  /** Returns the findings in the order of the text; those of the main file come first. */
  static Expectation of(List<ReportedFinding> findings, String self) {
    List<ReportedFinding> sorted = new ArrayList<>(findings);
    sorted.sort(
        Comparator.comparing((ReportedFinding f) -> file(f, self))
            .thenComparing(ReportedFinding::line)
            .thenComparing(ReportedFinding::column)
            .thenComparing(ReportedFinding::code));
    return new Expectation(sorted.stream().map(f -> new Line(line(f, self), f.message())).toList());
  }

  private static String file(ReportedFinding finding, String self) {
    String file = finding.file() == null ? self : finding.file();
    return file.equals(self) ? "" : file + ":";
  }

  private static String line(ReportedFinding finding, String self) {
    return file(finding, self)
        + finding.line()
        + ":"
        + finding.column()
        + " "
        + finding.severity().word()
        + " "
        + finding.code()
        + (finding.waivedBecause() == null ? "" : " waived");
  }

  /** Reads an expectation; empty lines and comments are ignored. */
  static Expectation read(Path file) throws IOException {
    return new Expectation(
        Files.readAllLines(file).stream()
            .map(l -> l.replaceFirst("#.*", "").strip().replaceAll("\\s+", " "))
            .filter(l -> !l.isEmpty())
            .map(l -> new Line(l, ""))
            .toList());
  }

  /** Returns unexpected findings and expected findings that are missing. */
  List<String> differences(Expectation expected) {
    List<String> missing = new ArrayList<>(expected.lines.stream().map(Line::text).toList());
    List<String> differences = new ArrayList<>();
    for (Line line : lines) {
      if (!missing.remove(line.text())) {
        differences.add("  not listed: " + line.text() + "  (" + line.message() + ")");
      }
    }
    missing.forEach(line -> differences.add("  not found:  " + line));
    return differences;
  }

  /** Returns the lines as written to a file. */
  String text() {
    StringBuilder text = new StringBuilder();
    lines.forEach(line -> text.append(line.text()).append('\n'));
    return text.toString();
  }

  /** Rewrites a file atomically; the comments at its beginning are kept. */
  void writeTo(Path file) throws IOException {
    StringBuilder text = new StringBuilder();
    if (Files.exists(file)) {
      for (String line : Files.readAllLines(file)) {
        if (!line.startsWith("#")) {
          break;
        }
        text.append(line).append('\n');
      }
    }
    Path half = file.resolveSibling("." + file.getFileName() + ".half");
    try {
      Files.writeString(half, text.append(text()));
      try {
        Files.move(half, file, StandardCopyOption.ATOMIC_MOVE);
      } catch (AtomicMoveNotSupportedException e) {
        Files.move(half, file, StandardCopyOption.REPLACE_EXISTING);
      }
    } finally {
      Files.deleteIfExists(half);
    }
  }
}
