package gripwright.season;

import gripwright.finding.Finding;
import java.util.List;

/**
 * A compiled season: dated sessions for every athlete of every plan, and the findings about them.
 * Immutable.
 *
 * @param plans by name of the plan, then of the athlete
 * @param findings all findings: those of the plans, and those about logs
 */
public record CompiledSeason(List<CompiledPlan> plans, List<Finding> findings) {

  /** Copies the lists. */
  public CompiledSeason {
    plans = List.copyOf(plans);
    findings = List.copyOf(findings);
  }

  /** Returns whether the sessions may be used, which no error prevents. */
  public boolean usable() {
    return findings.stream().noneMatch(Finding::blocks);
  }

  /**
   * Returns the result of a plan for an athlete.
   *
   * @throws IllegalArgumentException if there is no such plan for this athlete
   */
  public CompiledPlan plan(String plan, String athlete) {
    return plans.stream()
        .filter(p -> p.plan().name().equals(plan) && p.athlete().name().equals(athlete))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no plan " + plan + " for " + athlete));
  }
}
