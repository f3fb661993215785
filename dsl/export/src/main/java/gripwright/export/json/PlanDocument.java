package gripwright.export.json;

import gripwright.finding.ReportedFinding;
import gripwright.season.CompiledPlan;
import java.util.List;

/**
 * A compiled plan and its findings with their sentences.
 *
 * @param plan dated sessions
 * @param findings the findings about this plan, in the order to be written
 */
public record PlanDocument(CompiledPlan plan, List<ReportedFinding> findings) {

  /** Copies the findings. */
  public PlanDocument {
    findings = List.copyOf(findings);
  }
}
