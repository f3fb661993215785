package gripwright.language;

import gripwright.finding.Finding;
import gripwright.finding.ReportedFinding;
import gripwright.language.finding.LocatedFinding;
import gripwright.season.CompiledPlan;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The result of compiling plans: dated sessions, and the findings about the text, the plans and
 * their rules. Immutable.
 */
public final class Compilation {

  private final List<CompiledPlan> plans;
  private final Findings findings;

  Compilation(List<CompiledPlan> plans, Findings findings) {
    this.plans = List.copyOf(plans);
    this.findings = findings;
  }

  /**
   * Returns the compiled plans, by name and within a plan by athlete; a plan that has an error in
   * its declaration, or depends on one that has, is left out.
   */
  public List<CompiledPlan> plans() {
    return plans;
  }

  /** Returns the findings by file, line, column and code. */
  public List<ReportedFinding> findings() {
    return findings.reported();
  }

  /** Returns the findings in the same order, with their places in the text. */
  public List<LocatedFinding> located() {
    return findings.located();
  }

  /** Returns whether the sessions may be used: there is no unwaived error. */
  public boolean usable() {
    return findings.usable();
  }

  /**
   * Returns the plans whose sessions may be used although others may not, because every error is
   * about other athletes. Empty if an error is not about an athlete, such as a plan, a file or a
   * definition.
   */
  public List<CompiledPlan> usablePlans() {
    Set<String> stopped = new HashSet<>();
    for (Finding finding : findings.blocking()) {
      if (finding.athletes().isEmpty()) {
        return List.of();
      }
      stopped.addAll(finding.athletes());
    }
    return plans.stream().filter(p -> !stopped.contains(p.athlete().name())).toList();
  }

  /**
   * Returns this result if it is usable.
   *
   * @throws FindingsException if it is not
   */
  public Compilation orThrow() {
    if (!usable()) {
      throw new FindingsException(findings());
    }
    return this;
  }
}
