package gripwright.language;

import gripwright.finding.ReportedFinding;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Thrown when a host requires a result without errors and there are some. The message lists the
 * errors, one a line.
 */
public final class FindingsException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<ReportedFinding> findings;

  FindingsException(List<ReportedFinding> findings) {
    super(
        findings.stream()
            .filter(ReportedFinding::blocks)
            .map(FindingsException::line)
            .collect(Collectors.joining("\n")));
    this.findings = List.copyOf(findings);
  }

  private static String line(ReportedFinding finding) {
    return finding.file()
        + ":"
        + finding.line()
        + ":"
        + finding.column()
        + ": "
        + finding.code()
        + ": "
        + finding.message();
  }

  /** Returns every finding, not only errors; empty after serialization. */
  public List<ReportedFinding> findings() {
    return findings == null ? List.of() : findings;
  }
}
