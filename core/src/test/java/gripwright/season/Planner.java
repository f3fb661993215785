package gripwright.season;

import gripwright.athlete.Athlete;
import gripwright.budget.Meter;
import gripwright.finding.Finding;
import gripwright.history.LogTimeline;
import gripwright.log.Log;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.protocol.Protocol;
import gripwright.protocol.StandardProtocols;
import gripwright.rule.RuleCheck;
import gripwright.rule.RuleSet;
import gripwright.schedule.Schedule;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Compiles one plan for one athlete, without what a whole season adds. */
public final class Planner {

  private Planner() {}

  /** Compiles with the protocols of the plan and of the catalogue. */
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

  /** Returns the breaches of built-in rules in a schedule, as a compiled plan reports them. */
  public static List<Finding> checked(Schedule schedule, LogTimeline timeline) {
    return PastBreaches.downgraded(
        RuleCheck.check(schedule, timeline, List.of()), schedule, timeline);
  }

  /** Compiles with given protocols. */
  public static CompiledPlan compile(
      Plan plan,
      Athlete athlete,
      Log log,
      List<RuleSet> ruleSets,
      Map<String, Protocol> protocols) {
    return PlanCompiler.compile(
        LogTimeline.of(plan, athlete, log),
        List.of(),
        ruleSets,
        protocols,
        Meter.unbounded(),
        () -> {});
  }
}
