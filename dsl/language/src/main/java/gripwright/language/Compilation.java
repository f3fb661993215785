package gripwright.language;

import gripwright.finding.ReportedFinding;
import gripwright.language.finding.LocatedFinding;
import gripwright.season.CompiledPlan;
import java.util.List;

/**
 * What came of compiling plans: dated sessions, and everything there is to say about the text, the
 * plans and the rules they keep or break. Immutable.
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
   * its declaration, or needs something that has, is left out.
   */
  public List<CompiledPlan> plans() {
    return plans;
  }

  /** Returns what is wrong, by file, line, column and code. */
  public List<ReportedFinding> findings() {
    return findings.reported();
  }

  /** Returns what is wrong, in the same order, with the text it is about. */
  public List<LocatedFinding> located() {
    return findings.located();
  }

  /** Tells whether the sessions may be used: there is no error that nobody waived. */
  public boolean usable() {
    return findings.usable();
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
