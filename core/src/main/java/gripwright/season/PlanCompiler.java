package gripwright.season;

import gripwright.budget.Limit;
import gripwright.budget.Meter;
import gripwright.finding.Finding;
import gripwright.history.LogTimeline;
import gripwright.planning.PlanFold;
import gripwright.protocol.Protocol;
import gripwright.rule.RuleCheck;
import gripwright.rule.RuleSet;
import gripwright.schedule.Schedule;
import gripwright.schedule.ScheduleSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Turns one plan into dated sessions for one athlete. */
final class PlanCompiler {

  private PlanCompiler() {}

  /**
   * Compiles a plan for one of its athletes and checks the result against the rules. Past days show
   * the logged training, and the days ahead are planned from it; the result lists the changes with
   * their causes.
   *
   * @param timeline the plan, the athlete and the log
   * @param earlier the schedules of the athlete's plans that began before this one
   * @param ruleSets all known rule sets; the plan names those that apply
   * @param protocols protocols by name, for unplanned logged work
   * @param meter counts the work
   * @param planned is run after each planned week
   * @throws gripwright.budget.OverBudget if the budget is exceeded
   */
  static CompiledPlan compile(
      LogTimeline timeline,
      List<Schedule> earlier,
      List<RuleSet> ruleSets,
      Map<String, Protocol> protocols,
      Meter meter,
      Runnable planned) {
    meter.look();
    PlanFold.Planned result = new PlanFold(timeline, earlier, protocols, meter, planned).plan();
    Schedule schedule = result.schedule();
    List<LogChange> changes = List.of();
    if (timeline.coversPlanDays()) {
      long found = meter.taken(Limit.FINDINGS);
      Schedule before =
          new PlanFold(timeline.withoutPlanDays(), earlier, protocols, meter, meter::look)
              .plan()
              .schedule();
      meter.giveBack(Limit.FINDINGS, meter.taken(Limit.FINDINGS) - found);
      changes = new LogReasons(before, schedule, timeline).changes();
      schedule = schedule.besides(before);
    }
    List<Finding> findings = new ArrayList<>(result.findings());
    meter.take(Limit.FINDINGS, (long) Limit.A_FINDING * findings.size());
    List<Finding> broken =
        PastBreaches.downgraded(
            RuleCheck.check(schedule, timeline, earlier, ruleSets, meter), schedule, timeline);
    findings.addAll(
        UnloadedLines.with(broken, result.unloaded(), schedule, timeline, ruleSets, meter));
    ScheduleSize size = ScheduleSize.of(schedule);
    meter.take(Limit.SESSIONS, size.sessions());
    meter.take(Limit.HOLDS, size.holds());
    return CompiledPlan.of(schedule, timeline).withChanges(changes).withFindings(findings);
  }
}
