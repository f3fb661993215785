package gripwright.rule;

import gripwright.budget.Limit;
import gripwright.budget.Meter;
import gripwright.expression.Evaluation;
import gripwright.expression.ExpressionCompiler;
import gripwright.expression.Kind;
import gripwright.expression.Scope;
import gripwright.expression.Subjects;
import gripwright.finding.Clause;
import gripwright.finding.Finding;
import gripwright.finding.Severity;
import gripwright.finding.Topic;
import gripwright.history.LogTimeline;
import gripwright.plan.Plan;
import gripwright.rule.view.PlanView;
import gripwright.rule.view.Readers;
import gripwright.rule.view.Subject;
import gripwright.schedule.Schedule;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Checks a compiled plan against rules. Stateless; the same input gives the same findings. */
public final class RuleCheck {

  private RuleCheck() {}

  /**
   * Returns the breaches of the built-in rules, which always apply, and of the rule sets that the
   * plan names.
   *
   * <p>A rule that one line of the plan breaks many times is one finding that lists the places. One
   * breach never hides another: a waiver covers only the rule that it names. Places covered by a
   * waiver form a separate finding with the reason; a waiver that waives nothing is {@code
   * plan.waiver-unused}, and one of a rule that is never waived is {@code plan.waiver-refused}. The
   * numbers of a finding are those of the place with the largest violation, which its argument
   * {@code worst} names if that is not the first. The order of rule sets doesn't matter. Findings
   * are in order of their first date. The work is not limited; use {@link #check(Schedule,
   * LogTimeline, List, List, Meter)} for a limit.
   *
   * @param schedule dated sessions
   * @param timeline what is known of the athlete
   * @param ruleSets all rule sets that are known; the plan names those that apply
   */
  public static List<Finding> check(
      Schedule schedule, LogTimeline timeline, List<RuleSet> ruleSets) {
    return check(schedule, timeline, List.of(), ruleSets, Meter.unbounded());
  }

  /**
   * Returns the breaches of a plan next to other plans of the athlete, within a budget.
   *
   * @param before the result of the athlete's plans that began before this one
   * @param meter counts work
   * @throws gripwright.budget.OverBudget if that is more than the budget allows; it names the rule
   * @see #check(Schedule, LogTimeline, List)
   */
  public static List<Finding> check(
      Schedule schedule,
      LogTimeline timeline,
      List<Schedule> before,
      List<RuleSet> ruleSets,
      Meter meter) {
    return check(new PlanView(schedule, timeline, before, meter), ruleSets);
  }

  /** Checks a plan; its {@link PlanView#evaluation} has the count of work afterwards. */
  static List<Finding> check(PlanView view, List<RuleSet> ruleSets) {
    long kept = view.meter.taken(Limit.VALUES);
    Plan plan = view.schedule.plan();
    List<RuleSet> named = named(plan, ruleSets);
    List<Finding> findings = new ArrayList<>(wrongNames(plan, named));
    BreachFinder finder = new BreachFinder(view);
    List<Rule> rules = new ArrayList<>();
    StandardRules.sets().forEach(set -> rules.addAll(set.rules()));
    named.forEach(set -> rules.addAll(set.rules()));
    WaiverBook waivers = new WaiverBook(plan);
    Worst worst = new Worst();
    for (BreachGroup group : BreachGroup.of(finder.breaches(rules))) {
      findings.addAll(group.findings(waivers, worst));
    }
    Set<String> refused = new HashSet<>();
    neverWaived(named).forEach(rule -> refused.add(rule.name()));
    List<Finding> aboutWaivers = waivers.findings(refused);
    view.meter.take(Limit.FINDINGS, (long) Limit.A_FINDING * aboutWaivers.size());
    findings.addAll(aboutWaivers);
    view.meter.giveBack(Limit.VALUES, view.meter.taken(Limit.VALUES) - kept);
    return List.copyOf(findings);
  }

  /**
   * Returns the first built-in rule that stops an exercise of a plan: one whose breach is an error
   * that no waiver of the plan covers. It is the rule of the first such finding of {@link #check}.
   *
   * @param schedule dated sessions with one exercise among them
   * @param timeline what is known of the athlete
   * @return its name, or empty if no rule stops the exercise
   * @throws IllegalArgumentException unless there is exactly one exercise
   */
  public static Optional<String> stopping(Schedule schedule, LogTimeline timeline) {
    return stopping(schedule, timeline, WaiverIndex.of(schedule.plan()));
  }

  static Optional<String> stopping(Schedule schedule, LogTimeline timeline, WaiverIndex waivers) {
    PlanView view = new PlanView(schedule, timeline);
    Subjects exercises = view.subjects(Scope.EXERCISE);
    if (exercises.size() != 1) {
      throw new IllegalArgumentException("not one exercise: " + exercises.size());
    }
    Subject exercise = (Subject) exercises.at(0);
    return StandardRules.sets().stream()
        .flatMap(set -> broken(set, exercise))
        .filter(rule -> rule.severity() == Severity.ERROR)
        .filter(rule -> waivers.covering(new Breach(rule, 0, view, exercise)).isEmpty())
        .map(Rule::name)
        .findFirst();
  }

  private static Stream<Rule> broken(RuleSet set, Object exercise) {
    return set.rules().stream()
        .filter(rule -> rule.scope() == Scope.EXERCISE && isBroken(rule, exercise));
  }

  private static boolean isBroken(Rule rule, Object exercise) {
    boolean asked =
        rule.when().isEmpty()
            || ExpressionCompiler.truth(
                        rule.when().get(), Kind.EXERCISE, new Evaluation(Readers.ALL))
                    .of(exercise)
                == ExpressionCompiler.YES;
    return asked
        && ExpressionCompiler.truth(rule.require(), Kind.EXERCISE, new Evaluation(Readers.ALL))
                .of(exercise)
            == ExpressionCompiler.NO;
  }

  /**
   * Returns the names of all rules that apply to a plan, including built-in ones, in alphabetical
   * order: those that a waiver can name.
   *
   * @param plan the plan
   * @param ruleSets all rule sets that are known
   */
  public static List<String> names(Plan plan, List<RuleSet> ruleSets) {
    Set<String> names = new TreeSet<>();
    StandardRules.sets().forEach(set -> set.rules().forEach(rule -> names.add(rule.name())));
    named(plan, ruleSets).forEach(set -> set.rules().forEach(rule -> names.add(rule.name())));
    return List.copyOf(names);
  }

  /** Returns whether a finding is about a waiver itself, which doesn't depend on the athlete. */
  public static boolean isAboutWaiver(Finding finding) {
    return finding.topic().filter(Topic::isWaiver).isPresent();
  }

  private static List<RuleSet> named(Plan plan, List<RuleSet> ruleSets) {
    return plan.ruleSets().stream()
        .distinct()
        .map(name -> ruleSets.stream().filter(s -> s.name().equals(name)).findFirst())
        .flatMap(Optional::stream)
        .toList();
  }

  private static List<Rule> neverWaived(List<RuleSet> named) {
    List<RuleSet> all = new ArrayList<>(StandardRules.sets());
    all.addAll(named);
    return all.stream().flatMap(s -> s.rules().stream()).filter(Rule::neverWaived).toList();
  }

  /** Reports wrong names in a plan built in Java; those of a text were checked before. */
  private static List<Finding> wrongNames(Plan plan, List<RuleSet> named) {
    List<Finding> findings = new ArrayList<>();
    Set<String> known = new HashSet<>();
    named.forEach(set -> known.add(set.name()));
    for (String name : new TreeSet<>(plan.ruleSets())) {
      if (!known.contains(name)) {
        findings.add(
            Finding.error("name.unknown", plan.path())
                .about(Topic.UNKNOWN_NAME)
                .with("kind", Clause.of("term.kind-rules"))
                .with("name", name));
      }
    }
    Set<String> names = new HashSet<>();
    Set<String> twice = new TreeSet<>();
    StandardRules.sets().forEach(set -> set.rules().forEach(rule -> names.add(rule.name())));
    for (RuleSet set : named) {
      set.rules().stream().map(Rule::name).filter(n -> !names.add(n)).forEach(twice::add);
    }
    for (String name : twice) {
      findings.add(
          Finding.error("name.doubled", plan.path())
              .with("kind", Clause.of("term.kind-rule"))
              .with("name", name));
    }
    return findings;
  }
}
