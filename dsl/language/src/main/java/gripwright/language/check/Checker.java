package gripwright.language.check;

import gripwright.athlete.Athlete;
import gripwright.compare.Comparison;
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
import gripwright.protocol.Protocol;
import gripwright.rule.RuleSet;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Checks every declaration of a project and makes core objects of those that are in order. What
 * others refer to is made first, whatever the order of the text.
 */
public final class Checker {

  private final Names names;
  private final boolean complete;
  private final Set<NodeKind> nameless = EnumSet.noneOf(NodeKind.class);
  private final Set<String> lost = new HashSet<>();
  private final List<LocatedFinding> findings = new ArrayList<>();

  /** How many holds and rests the plans have that were made so far. */
  private long steps;

  /** True once that is more than can be worked with: then no plan is made. */
  private boolean tooMuch;

  private Checker(Project project) {
    this.names = project.names();
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
    return new Checker(project).check(standard);
  }

  private Checked check(Standard standard) {
    Known<Grip> grips = known("grip", NodeKind.GRIP);
    grips.addAll(standard.grips());
    make(grips, names.grips(), d -> GripCheck.check(d, grips, findings));
    Known<Protocol> protocols = known("protocol", NodeKind.PROTOCOL);
    protocols.addAll(standard.protocols());
    make(protocols, names.protocols(), d -> ProtocolCheck.check(d, findings));
    Known<Athlete> athletes = known("athlete", NodeKind.ATHLETE);
    make(athletes, names.athletes(), d -> AthleteCheck.check(d, grips, findings));
    Known<RuleSet> ruleSets = known("rule set", NodeKind.RULES);
    RuleNames ruleNames = new RuleNames(grips::declares, protocols::declares, standard.ruleSets());
    make(ruleSets, names.ruleSets(), d -> ruleSet(d, ruleNames, grips, protocols));
    Tables tables = new Tables(athletes, grips, protocols, ruleSets, standard.rules());
    Known<Plan> plans = known("plan", NodeKind.PLAN);
    make(plans, names.plans(), d -> plan(d, tables));
    if (tooMuch) {
      names.plans().forEach(d -> plans.declare(d.name().text()));
    }
    Known<Comparison> comparisons = known("comparison", NodeKind.COMPARE);
    make(comparisons, names.comparisons(), d -> CompareCheck.check(d, tables, findings));
    List<CheckedLog> logs = new ArrayList<>();
    Set<String> unsettled = new HashSet<>();
    for (Declared<Declaration.Log> log : names.logs()) {
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
    steps += plan.map(Expansion::of).orElse(0L);
    if (steps > Expansion.MOST_IN_PLANS && !tooMuch) {
      tooMuch = true;
      ModelPath place = ModelPath.of("plan", declared.name().text());
      Expansion.reportTogether(
          new Ledger(declared, place, findings), declared.declaration().name(), steps);
    }
    return plan;
  }

  private Optional<RuleSet> ruleSet(
      Declared<Declaration.Rules> declared,
      RuleNames ruleNames,
      Known<Grip> grips,
      Known<Protocol> protocols) {
    // A set whose name was reported does not take the names of its rules as well.
    RuleNames own =
        declared.misnamed()
            ? new RuleNames(grips::declares, protocols::declares, List.of())
            : ruleNames;
    ModelPath place = ModelPath.of("rules", declared.name().text());
    return new RuleSetCheck(own).check(declared, new Ledger(declared, place, findings));
  }

  private static <D extends Declaration, T> void make(
      Known<T> known, List<Declared<D>> declared, Function<Declared<D>, Optional<T>> check) {
    declared.forEach(d -> known.declare(d.name().text()));
    for (Declared<D> each : declared) {
      check.apply(each).ifPresent(object -> known.add(each.name().text(), object));
    }
  }
}
