package gripwright.season;

import gripwright.athlete.Athlete;
import gripwright.budget.Limit;
import gripwright.budget.Meter;
import gripwright.budget.OverBudget;
import gripwright.budget.Stage;
import gripwright.finding.Clause;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.finding.Topic;
import gripwright.history.LogTimeline;
import gripwright.log.Log;
import gripwright.plan.Plan;
import gripwright.plan.PlanSize;
import gripwright.planning.PlanFold;
import gripwright.plausibility.Known;
import gripwright.plausibility.Plausibility;
import gripwright.rule.RuleCheck;
import gripwright.schedule.Schedule;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Compiles a season once, within a budget. Not thread-safe. */
final class SeasonRun {

  /** Topics that are unreliable if a rule set or an athlete was left out because of a mistake. */
  private static final Set<Topic> NEEDS_ALL = Set.of(Topic.UNUSED_WAIVER, Topic.UNKNOWN_NAME);

  private final Season season;
  private final Collection<Plan> chosen;
  private final Meter meter;

  /** The results so far, by name of the plan. */
  private final SortedMap<String, Compiled> compiled = new TreeMap<>();

  private final List<Finding> findings = new ArrayList<>();

  /** The schedules so far, by plan and athlete, chosen or not. */
  private final Map<List<String>, Schedule> schedules = new HashMap<>();

  /** The names of the athletes so far. */
  private final SortedSet<String> seen = new TreeSet<>();

  private long weeksPlanned;
  private long weeks;

  /** The place being compiled, for a finding about the budget. */
  private ModelPath place = ModelPath.ROOT;

  SeasonRun(Season season, Collection<Plan> chosen, Meter meter) {
    this.season = season;
    this.chosen = chosen;
    this.meter = meter;
  }

  CompiledSeason compile() {
    List<Finding> last = new ArrayList<>();
    try {
      meter.look();
      List<Plan> fitting = fitting();
      if (chosen.isEmpty() || !fitting.isEmpty()) {
        season.grips().stream().map(OddGrips::of).forEach(this::keep);
      }
      for (Plan plan : byDate(fitting)) {
        compile(plan);
      }
      if (chosen.size() == season.plans().size()) {
        seen.addAll(season.athletesWithoutPlan());
      }
      for (String athlete : seen) {
        place = ModelPath.of("log", athlete);
        last.addAll(unknownNames(athlete));
        meter.look();
        season.athlete(athlete).map(this::doubts).ifPresent(last::addAll);
      }
    } catch (OverBudget stop) {
      last.add(BudgetFindings.of(stop, place));
    }
    gatherFindings();
    findings.addAll(last);
    return new CompiledSeason(allCompiled(), findings);
  }

  /** The results of one plan for its athletes, and their findings. */
  private record Compiled(List<CompiledPlan> plans, List<Finding> findings) {}

  /** Returns plans by first day, because each depends on those before it. */
  private static List<Plan> byDate(Collection<Plan> plans) {
    return plans.stream()
        .sorted(Comparator.comparing(Plan::from).thenComparing(Plan::name))
        .toList();
  }

  private List<CompiledPlan> allCompiled() {
    return compiled.values().stream().flatMap(c -> c.plans().stream()).toList();
  }

  /** Puts the findings of the plans, by name, before those about the season. */
  private void gatherFindings() {
    compiled.values().forEach(c -> findings.addAll(c.findings()));
  }

  /**
   * Returns the plans within the budget and reports the others: each one too large by itself, and
   * the first that exceeds it together with those before it.
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
        CompiledPlan result = compile(plan, athlete.get());
        schedules.put(List.of(plan.name(), name), result.schedule());
        ofPlan.add(overlap(plan, name).map(result::withFinding).orElse(result));
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
            earlier(plan, athlete),
            season.ruleSets(),
            season.protocols(),
            meter,
            this::weekPlanned);
    keep(
        Clearances.byNobody(plan, athlete).stream()
            .filter(finding -> !findings.contains(finding))
            .toList());
    seen.add(athlete.name());
    return result;
  }

  /**
   * Returns the schedules of the athlete's plans that began before a plan and end shortly before
   * its start or later, by date.
   */
  private List<Schedule> earlier(Plan plan, Athlete athlete) {
    LocalDate since = plan.from().minusWeeks(LogTimeline.WEEKS_BACK);
    return byDate(season.plansFor(athlete.name())).stream()
        .takeWhile(other -> !other.name().equals(plan.name()))
        .filter(other -> !other.to().isBefore(since))
        .flatMap(other -> schedule(other, athlete).stream())
        .toList();
  }

  /** Reports plans of one athlete over the same weeks, at the later one. */
  private Optional<Finding> overlap(Plan plan, String athlete) {
    List<Plan> beside =
        byDate(season.plansFor(athlete)).stream()
            .takeWhile(other -> !other.name().equals(plan.name()))
            .filter(other -> !other.to().isBefore(plan.from()))
            .toList();
    return beside.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Finding.warning("plan.overlap", plan.path().then("for", athlete))
                .with("athlete", athlete)
                .with("plans", beside.stream().map(Plan::name).toList())
                .with("from", plan.from())
                .with(
                    "to",
                    beside.stream()
                        .map(Plan::to)
                        .map(day -> day.isAfter(plan.to()) ? plan.to() : day)
                        .max(Comparator.naturalOrder())
                        .orElseThrow()));
  }

  /**
   * Returns the schedule of a plan; empty if the plan is too large or begins before the athlete's
   * birth.
   */
  private Optional<Schedule> schedule(Plan plan, Athlete athlete) {
    List<String> key = List.of(plan.name(), athlete.name());
    if (!schedules.containsKey(key) && fits(plan) && !plan.from().isBefore(athlete.born())) {
      LogTimeline timeline = LogTimeline.of(plan, athlete, season.log(athlete.name()));
      schedules.put(
          key,
          new PlanFold(timeline, earlier(plan, athlete), season.protocols(), meter, meter::look)
              .plan()
              .schedule());
    }
    return Optional.ofNullable(schedules.get(key));
  }

  private boolean fits(Plan plan) {
    try {
      PlanSize.of(plan).requireWithin(meter);
      return true;
    } catch (OverBudget tooLarge) {
      return false;
    }
  }

  private void weekPlanned() {
    weeksPlanned++;
    meter.progress(Stage.PLANNING, weeksPlanned, weeks);
  }

  private void keep(List<Finding> some) {
    meter.take(Limit.FINDINGS, (Limit.A_FINDING + 1L) * some.size());
    findings.addAll(some);
  }

  /**
   * Keeps the results of a plan. If it was stopped, unused waivers are not reported, because the
   * missing part may use them.
   */
  private void keep(Plan plan, List<CompiledPlan> ofPlan, boolean stopped) {
    List<CompiledPlan> together = acrossAthletes(ofPlan);
    List<Finding> ofAll = new ArrayList<>();
    compiled.put(plan.name(), new Compiled(together, ofAll));
    boolean allKnown =
        !season.mistakesLeftOut()
            || (ofPlan.size() == plan.athletes().size() && season.hasRuleSetsOf(plan));
    together.stream()
        .flatMap(result -> result.findings().stream())
        .filter(f -> allKnown || f.topic().filter(NEEDS_ALL::contains).isEmpty())
        .filter(f -> !stopped || !f.isAbout(Topic.UNUSED_WAIVER))
        .forEach(ofAll::add);
  }

  private Optional<Finding> unknown(Plan plan, String athlete) {
    return season.mistakesLeftOut()
        ? Optional.empty()
        : Optional.of(
            Finding.error("name.unknown", plan.path())
                .about(Topic.UNKNOWN_NAME)
                .with("kind", Clause.of("term.kind-athlete"))
                .with("name", athlete));
  }

  /** Returns findings about implausible data of an athlete, each mistake once. */
  private List<Finding> doubts(Athlete athlete) {
    Log log = season.log(athlete.name());
    List<Schedule> schedules =
        allCompiled().stream()
            .filter(plan -> plan.athlete().name().equals(athlete.name()))
            .map(CompiledPlan::schedule)
            .toList();
    List<Finding> doubts =
        Doubts.with(
            OddTests.likely(athlete, log),
            Plausibility.of(new Known(athlete, log, season.plansFor(athlete.name()), schedules)));
    meter.take(Limit.FINDINGS, (long) Limit.A_FINDING * doubts.size());
    return doubts;
  }

  /** Reports logged sessions that are in no plan and that no plan has reported. */
  private List<Finding> unknownNames(String athlete) {
    Set<String> reported = new HashSet<>();
    allCompiled().stream()
        .filter(plan -> plan.athlete().name().equals(athlete))
        .flatMap(plan -> plan.findings().stream())
        .filter(finding -> finding.isAbout(Topic.UNPLANNED_SESSION))
        .forEach(finding -> reported.add(String.valueOf(finding.arguments().get("session"))));
    return LoggedNames.unknown(season.log(athlete), season.plansFor(athlete), reported, meter);
  }

  /**
   * Returns the results of one plan with its waiver findings merged over all athletes: a waiver
   * that any athlete uses is not unused, and a mistake in a waiver is reported once, with the first
   * athlete.
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
