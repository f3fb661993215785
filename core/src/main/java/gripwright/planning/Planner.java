package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.log.Log;
import gripwright.plan.CompiledPlan;
import gripwright.plan.Plan;
import gripwright.rule.RuleCheck;
import gripwright.rule.RuleSet;
import java.util.ArrayList;
import java.util.List;

/** Turns a plan into dated sessions. Stateless; the same input gives the same result. */
public final class Planner {

  private Planner() {}

  /**
   * Compiles a plan for one of its athletes and checks the result against the rules. What was
   * logged since the plan began makes its past what was done, and the days ahead follow from it;
   * what that changed is told with its reasons.
   *
   * @param plan what the coach wrote
   * @param athlete one of the plan's athletes
   * @param log what is known of the athlete; may be empty
   * @param ruleSets all rule sets that are known; the plan names those that apply
   */
  public static CompiledPlan compile(Plan plan, Athlete athlete, Log log, List<RuleSet> ruleSets) {
    CompiledPlan compiled = new PlanRun(plan, athlete, log).compile();
    if (Heard.speaks(log, plan)) {
      CompiledPlan unheard = new PlanRun(plan, athlete, Heard.before(log, plan.from())).compile();
      compiled = compiled.changing(new LogReasons(unheard, compiled).changes());
    }
    List<Finding> findings = new ArrayList<>(compiled.findings());
    findings.addAll(ToldFindings.settled(RuleCheck.check(compiled, ruleSets), compiled));
    return compiled.withFindings(findings);
  }
}
