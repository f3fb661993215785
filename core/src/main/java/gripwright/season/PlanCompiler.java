package gripwright.season;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.history.LogTimeline;
import gripwright.log.Log;
import gripwright.plan.Plan;
import gripwright.planning.PlanFold;
import gripwright.protocol.Protocol;
import gripwright.rule.RuleCheck;
import gripwright.rule.RuleSet;
import gripwright.schedule.Schedule;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Turns one plan into dated sessions for one athlete. */
final class PlanCompiler {

  private PlanCompiler() {}

  /**
   * Compiles a plan for one of its athletes and checks the result against the rules. What was
   * logged since the plan began makes its past what was done, and the days ahead follow from it;
   * the result says what that changed, with reasons.
   *
   * @param plan what the coach wrote
   * @param athlete one of the plan's athletes
   * @param log what is known of the athlete; may be empty
   * @param ruleSets all rule sets that are known; the plan names those that apply
   * @param protocols protocols by name, for logged work that the week's plan does not have
   * @throws IllegalArgumentException if the plan is not for the athlete or the log not the
   *     athlete's
   */
  static CompiledPlan compile(
      Plan plan,
      Athlete athlete,
      Log log,
      List<RuleSet> ruleSets,
      Map<String, Protocol> protocols) {
    plan.requireFor(athlete);
    log.requireOf(athlete);
    LogTimeline timeline = LogTimeline.of(plan, athlete, log);
    PlanFold.Planned planned = new PlanFold(plan, athlete, timeline, protocols).plan();
    Schedule schedule = planned.schedule();
    List<LogChange> changes = List.of();
    if (timeline.coversPlanDays()) {
      Schedule before =
          new PlanFold(plan, athlete, timeline.withoutPlanDays(), protocols).plan().schedule();
      changes = new LogReasons(before, schedule, timeline).changes();
    }
    List<Finding> findings = new ArrayList<>(planned.findings());
    findings.addAll(
        PastBreaches.downgraded(RuleCheck.check(schedule, timeline, ruleSets), schedule, timeline));
    return new CompiledPlan(schedule, timeline, changes, findings);
  }
}
