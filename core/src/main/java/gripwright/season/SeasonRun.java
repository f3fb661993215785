package gripwright.season;

import gripwright.athlete.Athlete;
import gripwright.budget.Limit;
import gripwright.budget.Meter;
import gripwright.budget.OverBudget;
import gripwright.budget.Stage;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.history.LogTimeline;
import gripwright.log.Log;
import gripwright.plan.Plan;
import gripwright.plan.PlanSize;
import gripwright.rule.RuleCheck;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Compiles a season once, within a budget. Not thread-safe. */
final class SeasonRun {

  /** Mean nothing where a rule set or an athlete is left out for a mistake in it. */
  private static final Set<String> NEEDS_ALL = Set.of(RuleCheck.WAIVER_UNUSED, "name.unknown");

  private final Season season;
  private final Collection<Plan> chosen;
  private final Meter meter;
  private final List<CompiledPlan> compiled = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  /** The athletes so far, in order. */
  private final Set<String> seen = new LinkedHashSet<>();

  private long weeksPlanned;
  private long weeks;

  /** What is being worked on. */
  private ModelPath place = ModelPath.ROOT;

  SeasonRun(Season season, Collection<Plan> chosen, Meter meter) {
    this.season = season;
    this.chosen = chosen;
    this.meter = meter;
  }

  CompiledSeason compile() {
    try {
      meter.look();
      for (Plan plan : fitting()) {
        compile(plan);
      }
      for (String athlete : seen) {
        place = ModelPath.of("log", athlete);
        findings.addAll(unknownNames(athlete));
      }
    } catch (OverBudget stop) {
      findings.add(BudgetFindings.of(stop, place));
    }
    return new CompiledSeason(compiled, findings);
  }

  /**
   * Returns the plans that the budget has room for, and reports which it has not: one that is too
   * large by itself, or the first that is too much together with those before it.
   */
  private List<Plan> fitting() {
    List<Plan> fitting = new ArrayList<>();
    long sessions = 0;
    long holds = 0;
    for (Plan plan : chosen) {
      PlanSize size = PlanSize.of(plan);
      try {
        size.requireWithin(meter);
      } catch (OverBudget tooLarge) {
        findings.add(BudgetFindings.of(tooLarge, plan.path()));
        continue;
      }
      sessions += size.sessions();
      holds += size.holds();
      try {
        meter.require(Limit.SESSIONS, sessions);
        meter.require(Limit.HOLDS, holds);
      } catch (OverBudget together) {
        findings.add(BudgetFindings.of(together, plan.path()));
        break;
      }
      weeks += size.weeks() * size.athletes();
      fitting.add(plan);
    }
    return fitting;
  }

  private void compile(Plan plan) {
    List<CompiledPlan> ofPlan = new ArrayList<>();
    try {
      for (String name : plan.athletes().stream().sorted().toList()) {
        place = plan.path().then("for", name);
        Optional<Athlete> athlete = season.athlete(name);
        if (athlete.isEmpty()) {
          unknown(plan, name).ifPresent(findings::add);
          weeksPlanned += plan.weeks();
          continue;
        }
        ofPlan.add(compile(plan, athlete.get()));
      }
    } catch (OverBudget stop) {
      keep(plan, ofPlan, true);
      throw stop;
    }
    keep(plan, ofPlan, false);
  }

  private CompiledPlan compile(Plan plan, Athlete athlete) {
    Log log = season.log(athlete.name());
    CompiledPlan result =
        PlanCompiler.compile(
            LogTimeline.of(plan, athlete, log),
            season.ruleSets(),
            season.protocols(),
            meter,
            this::weekPlanned);
    if (seen.add(athlete.name())) {
      findings.addAll(OddTests.likely(athlete, log));
    }
    return result;
  }

  private void weekPlanned() {
    weeksPlanned++;
    meter.progress(Stage.PLANNING, weeksPlanned, weeks);
  }

  /** Keeps what came of a plan; where it is not all, an unused waiver may be one that is used. */
  private void keep(Plan plan, List<CompiledPlan> ofPlan, boolean stopped) {
    List<CompiledPlan> together = acrossAthletes(ofPlan);
    compiled.addAll(together);
    boolean allKnown =
        !season.mistakesLeftOut()
            || (ofPlan.size() == plan.athletes().size() && season.hasRuleSetsOf(plan));
    together.stream()
        .flatMap(result -> result.findings().stream())
        .filter(f -> allKnown || !NEEDS_ALL.contains(f.code()))
        .filter(f -> !stopped || !f.code().equals(RuleCheck.WAIVER_UNUSED))
        .forEach(findings::add);
  }

  private Optional<Finding> unknown(Plan plan, String athlete) {
    return season.mistakesLeftOut()
        ? Optional.empty()
        : Optional.of(
            Finding.error("name.unknown", plan.path())
                .with("kind", "athlete")
                .with("name", athlete));
  }

  /** Reports logged sessions that no plan has, where no plan has reported them. */
  private List<Finding> unknownNames(String athlete) {
    Set<String> reported = new HashSet<>();
    compiled.stream()
        .filter(plan -> plan.athlete().name().equals(athlete))
        .flatMap(plan -> plan.findings().stream())
        .filter(finding -> finding.code().equals("plan.session-unplanned"))
        .forEach(finding -> reported.add(String.valueOf(finding.arguments().get("session"))));
    return LoggedNames.unknown(season.log(athlete), season.plansFor(athlete), reported, meter);
  }

  /**
   * Returns the results of one plan for its several athletes without what only seems wrong with its
   * waivers: one that waives something for any athlete is not unused, and what is wrong with a
   * waiver itself is reported once, with the first athlete.
   */
  static List<CompiledPlan> acrossAthletes(List<CompiledPlan> ofOnePlan) {
    Set<Finding> everywhere = new HashSet<>();
    for (int i = 0; i < ofOnePlan.size(); i++) {
      Set<Finding> here = aboutWaivers(ofOnePlan.get(i));
      if (i == 0) {
        everywhere.addAll(here);
      } else {
        everywhere.retainAll(here);
      }
    }
    List<CompiledPlan> all = new ArrayList<>();
    for (CompiledPlan compiled : ofOnePlan) {
      boolean first = all.isEmpty();
      all.add(
          compiled.withFindings(
              compiled.findings().stream()
                  .filter(f -> !RuleCheck.isAboutWaiver(f) || (first && everywhere.contains(f)))
                  .toList()));
    }
    return all;
  }

  private static Set<Finding> aboutWaivers(CompiledPlan plan) {
    return plan.findings().stream()
        .filter(RuleCheck::isAboutWaiver)
        .collect(Collectors.toUnmodifiableSet());
  }
}
