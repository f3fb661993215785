package gripwright.rule;

import gripwright.finding.Finding;
import gripwright.plan.CompiledPlan;
import java.util.List;

/** Checks a compiled plan against rules. */
public final class RuleCheck {

  private RuleCheck() {}

  /**
   * Returns what the plan breaks: of the built-in rules, always, and of the rule sets it names.
   * Waivers are applied; a waiver that waives nothing is a finding itself.
   *
   * @param plan dated sessions
   * @param ruleSets all rule sets that are known; the plan names those that apply
   */
  public static List<Finding> check(CompiledPlan plan, List<RuleSet> ruleSets) {
    return List.of();
  }
}
