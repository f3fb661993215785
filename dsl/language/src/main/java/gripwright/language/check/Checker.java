package gripwright.language.check;

import gripwright.athlete.Athlete;
import gripwright.budget.Limit;
import gripwright.budget.Meter;
import gripwright.budget.Stage;
import gripwright.compare.Cohort;
import gripwright.compare.Comparison;
import gripwright.finding.Message;
import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.language.check.Checked.CheckedLog;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.resolve.Declared;
import gripwright.language.resolve.Names;
import gripwright.language.resolve.Project;
import gripwright.language.syntax.Declaration;
import gripwright.language.syntax.NodeKind;
import gripwright.language.syntax.ParsedFile;
import gripwright.plan.Plan;
import gripwright.plan.PlanSize;
import gripwright.protocol.Protocol;
import gripwright.rule.RuleSet;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Checks every declaration of a project and builds core objects of the valid ones. Declarations
 * that others refer to are built first, whatever the order of the text.
 */
public final class Checker {

  private final Names names;
  private final boolean complete;
  private final Set<NodeKind> nameless = EnumSet.noneOf(NodeKind.class);
  private final Set<String> lost = new HashSet<>();
  private final List<LocatedFinding> findings = new ArrayList<>();

  private static final PlanSize NOTHING = new PlanSize(0, 0, 0, 0, 0, 0);

  /** Holds and rests of the plans built so far. */
  private long steps;

  /** Sessions of the plans built so far. */
  private long sessions;

  /** True once that exceeds the budget: then no plan is built. */
  private boolean tooMuch;

  private final Meter meter;
  private final long declarations;
  private long checked;

  private Checker(Project project, Meter meter) {
    this.meter = meter;
    this.names = project.names();
    this.declarations =
        Stream.of(
                names.athletes(),
                names.grips(),
                names.protocols(),
                names.ruleSets(),
                names.plans(),
                names.cohorts(),
                names.comparisons(),
                names.logs())
            .mapToLong(List::size)
            .sum();
    this.complete = project.complete() && project.files().stream().noneMatch(f -> f.lost().file());
    for (ParsedFile file : project.files()) {
      nameless.addAll(file.lost().nameless());
      lost.addAll(file.lost().names());
    }
  }

  /**
   * Checks a project.
   *
   * @param project what was read and declared
   * @param standard the catalogue
   */
  public static Checked check(Project project, Standard standard) {
    return check(project, standard, Meter.unbounded());
  }

  /**
   * Checks a project within a budget.
   *
   * @param project the files read and their declarations
   * @param standard the catalogue
   * @param meter stops a check that is cancelled or out of time
   * @throws gripwright.budget.OverBudget if it does
   */
  public static Checked check(Project project, Standard standard, Meter meter) {
    return new Checker(project, meter).check(standard);
  }

  private Checked check(Standard standard) {
    Known<Grip> grips = known("grip", NodeKind.GRIP);
    grips.addAll(standard.grips());
    make(grips, names.grips(), d -> GripCheck.check(d, grips, findings));
    Known<Protocol> protocols = known("protocol", NodeKind.PROTOCOL);
    protocols.addAll(standard.protocols());
    make(protocols, names.protocols(), d -> ProtocolCheck.check(d, findings, meter.budget()));
    Known<Athlete> athletes = known("athlete", NodeKind.ATHLETE);
    make(athletes, names.athletes(), d -> AthleteCheck.check(d, grips, findings));
    Known<Cohort> cohorts = known("cohort", NodeKind.COHORT);
    make(cohorts, names.cohorts(), d -> CohortCheck.check(d, grips, findings));
    Known<RuleSet> ruleSets = known("rule-set", NodeKind.RULES);
    RuleNames ruleNames = new RuleNames(grips::declares, protocols::declares, standard.ruleSets());
    make(ruleSets, names.ruleSets(), d -> ruleSet(d, ruleNames, grips, protocols));
    Tables tables =
        new Tables(athletes, cohorts, grips, protocols, ruleSets, standard.rules(), meter);
    Known<Plan> plans = known("plan", NodeKind.PLAN);
    make(plans, names.plans(), d -> plan(d, tables));
    if (tooMuch) {
      names.plans().forEach(d -> plans.declare(d.name().text()));
    }
    Known<Comparison> comparisons = known("comparison", NodeKind.COMPARE);
    make(comparisons, names.comparisons(), d -> CompareCheck.check(d, tables, plans, findings));
    List<CheckedLog> logs = new ArrayList<>();
    Set<String> unsettled = new HashSet<>();
    for (Declared<Declaration.Log> log : names.logs()) {
      next();
      Optional<LogCheck.Result> result = LogCheck.check(log, tables, findings);
      result.map(LogCheck.Result::log).ifPresent(logs::add);
      result.filter(r -> !r.settled()).ifPresent(r -> unsettled.add(r.log().athlete()));
    }
    return new Checked(
        athletes.made(),
        grips.made(),
        protocols.made(),
        ruleSets.made(),
        plans.made(),
        cohorts.made(),
        comparisons.made(),
        logs,
        unsettled,
        findings);
  }

  private <T> Known<T> known(String kind, NodeKind node) {
    return new Known<>(kind, complete && !nameless.contains(node), lost);
  }

  private Optional<Plan> plan(Declared<Declaration.Plan> declared, Tables tables) {
    Optional<Plan> plan = PlanCheck.check(declared, tables, findings);
    PlanSize size = plan.map(PlanSize::of).orElse(NOTHING);
    sessions += size.sessions();
    steps += size.holds();
    tooMuch(declared, Terms.of("many-holds-and-rests"), steps, Limit.HOLDS);
    tooMuch(declared, Terms.of("many-sessions"), sessions, Limit.SESSIONS);
    return plan;
  }

  /** Reports once that the plans of a project together exceed the budget. */
  private void tooMuch(Declared<Declaration.Plan> declared, Message what, long found, Limit limit) {
    long most = meter.budget().most(limit);
    if (found <= most || tooMuch) {
      return;
    }
    tooMuch = true;
    ModelPath place = ModelPath.of("plan", declared.name().text());
    new Diagnostics(declared, place, findings)
        .error(
            declared.declaration().name(),
            "value.too-many",
            "what",
            Terms.of("of-all-plans", "what", what),
            "found",
            found,
            "limit",
            most);
  }

  private void next() {
    meter.progress(Stage.CHECKING, ++checked, declarations);
  }

  private Optional<RuleSet> ruleSet(
      Declared<Declaration.Rules> declared,
      RuleNames ruleNames,
      Known<Grip> grips,
      Known<Protocol> protocols) {
    // A set whose name was reported doesn't reserve the names of its rules.
    RuleNames own =
        declared.misnamed()
            ? new RuleNames(grips::declares, protocols::declares, List.of())
            : ruleNames;
    ModelPath place = ModelPath.of("rules", declared.name().text());
    return new RuleSetCheck(own).check(declared, new Diagnostics(declared, place, findings));
  }

  private <D extends Declaration, T> void make(
      Known<T> known, List<Declared<D>> declared, Function<Declared<D>, Optional<T>> check) {
    declared.forEach(d -> known.declare(d.name().text()));
    for (Declared<D> each : declared) {
      next();
      check.apply(each).ifPresent(object -> known.add(each.name().text(), object));
    }
  }
}
