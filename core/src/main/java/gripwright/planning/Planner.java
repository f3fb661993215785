package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.log.Log;
import gripwright.plan.Block;
import gripwright.plan.CompiledPlan;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.protocol.Protocol;
import gripwright.protocol.StandardProtocols;
import gripwright.rule.RuleCheck;
import gripwright.rule.RuleSet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Turns a plan into dated sessions. Stateless; the same input gives the same result. */
public final class Planner {

  private Planner() {}

  /**
   * Compiles a plan for one of its athletes as {@link #compile(Plan, Athlete, Log, List, Map)}
   * does; protocols that are known are those of the plan and of the catalogue.
   *
   * @param plan what the coach wrote
   * @param athlete one of the plan's athletes
   * @param log what is known of the athlete; may be empty
   * @param ruleSets all rule sets that are known; the plan names those that apply
   * @throws IllegalArgumentException if the plan is not for the athlete or the log not the
   *     athlete's
   */
  public static CompiledPlan compile(Plan plan, Athlete athlete, Log log, List<RuleSet> ruleSets) {
    Map<String, Protocol> protocols = new HashMap<>();
    StandardProtocols.all().forEach(protocol -> protocols.put(protocol.name(), protocol));
    for (Block block : plan.blocks()) {
      block.contentFor(athlete.name()).sessions().stream()
          .flatMap(session -> session.contentFor(athlete.name()).exercises().stream())
          .map(Exercise::protocol)
          .forEach(protocol -> protocols.put(protocol.name(), protocol));
    }
    return compile(plan, athlete, log, ruleSets, protocols);
  }

  /**
   * Compiles a plan for one of its athletes and checks the result against the rules. What was
   * logged since the plan began makes its past what was done, and the days ahead follow from it;
   * what that changed is told with its reasons.
   *
   * @param plan what the coach wrote
   * @param athlete one of the plan's athletes
   * @param log what is known of the athlete; may be empty
   * @param ruleSets all rule sets that are known; the plan names those that apply
   * @param protocols protocols by name, for logged work that the week's plan does not have
   * @throws IllegalArgumentException if the plan is not for the athlete or the log not the
   *     athlete's
   */
  public static CompiledPlan compile(
      Plan plan,
      Athlete athlete,
      Log log,
      List<RuleSet> ruleSets,
      Map<String, Protocol> protocols) {
    plan.requireFor(athlete);
    log.requireOf(athlete);
    CompiledPlan compiled = new PlanRun(plan, athlete, log, protocols).compile();
    if (Heard.speaks(log, plan)) {
      CompiledPlan unheard =
          new PlanRun(plan, athlete, Heard.before(log, plan.from()), protocols).compile();
      compiled = compiled.changing(new LogReasons(unheard, compiled).changes());
    }
    List<Finding> findings = new ArrayList<>(compiled.findings());
    findings.addAll(ToldFindings.settled(RuleCheck.check(compiled, ruleSets), compiled));
    return compiled.withFindings(findings);
  }
}
