package gripwright.compare;

import gripwright.athlete.Athlete;
import gripwright.budget.Meter;
import gripwright.compare.ComparisonResult.Matched;
import gripwright.compare.ComparisonResult.Subject;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.log.Log;
import gripwright.rule.RuleSet;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Runs a comparison. Immutable; the same input gives the same result on any number of threads.
 *
 * <pre>{@code
 * ComparisonResult result =
 *     ComparisonRun.of(comparison, athletes, logs, List.of()).run(RunOptions.standard());
 * }</pre>
 *
 * <p>Three kinds of not knowing are kept apart. The parameters of the models are drawn for the
 * typical athlete, and give intervals. The persons of a cohort are drawn at the published
 * parameters, and give shares of athletes. Other models are run side by side, and never averaged.
 * All arms have the same draws.
 */
public final class ComparisonRun {

  private final Comparison comparison;
  private final Map<String, Athlete> athletes;
  private final Map<String, Log> logs;
  private final List<RuleSet> ruleSets;

  private ComparisonRun(
      Comparison comparison,
      Map<String, Athlete> athletes,
      Map<String, Log> logs,
      List<RuleSet> ruleSets) {
    this.comparison = comparison;
    this.athletes = athletes;
    this.logs = logs;
    this.ruleSets = ruleSets;
  }

  /**
   * Prepares a run.
   *
   * @param athletes those of the comparison, at least; none for a cohort
   * @param logs of the athletes; an athlete without one has an empty log
   * @param ruleSets those that the plans of arms name
   * @throws IllegalArgumentException if an athlete of the comparison is missing
   */
  public static ComparisonRun of(
      Comparison comparison,
      Collection<Athlete> athletes,
      Collection<Log> logs,
      Collection<RuleSet> ruleSets) {
    Objects.requireNonNull(comparison, "comparison");
    Map<String, Athlete> named =
        athletes.stream().collect(Collectors.toMap(Athlete::name, a -> a, (a, b) -> b));
    Map<String, Log> byName =
        logs.stream().collect(Collectors.toMap(Log::athlete, log -> log, Log::and));
    comparison
        .subjects()
        .accept(
            new Comparison.Subjects.Visitor<Void>() {
              @Override
              @SuppressWarnings("NullAway") // a visitor without a result
              public Void cohort(Comparison.OfCohort subjects) {
                return null;
              }

              @Override
              @SuppressWarnings("NullAway") // a visitor without a result
              public Void athletes(Comparison.OfAthletes subjects) {
                if (!named.keySet().containsAll(subjects.names())) {
                  throw new IllegalArgumentException(
                      "an athlete of " + subjects.names() + " is missing");
                }
                return null;
              }
            });
    return new ComparisonRun(comparison, named, byName, List.copyOf(ruleSets));
  }

  private List<People> people(Models models) {
    Philox random = new Philox(comparison.stream());
    return comparison
        .subjects()
        .accept(
            new Comparison.Subjects.Visitor<>() {
              @Override
              public List<People> cohort(Comparison.OfCohort subjects) {
                return List.of(new CohortPeople(subjects.cohort(), random, models));
              }

              @Override
              public List<People> athletes(Comparison.OfAthletes subjects) {
                List<People> all = new ArrayList<>();
                for (String name : subjects.names()) {
                  Athlete athlete = Objects.requireNonNull(athletes.get(name));
                  all.add(
                      new AthletePeople(athlete, logs.getOrDefault(name, Log.empty(name)), models));
                }
                return all;
              }
            });
  }

  /**
   * Returns what is wrong with the arms and matches, without drawing anything: as {@link #run}
   * would find it.
   */
  public List<Finding> check() {
    List<Finding> findings = new ArrayList<>(aboutArms());
    List<Arm> arms = comparison.arms();
    boolean first = true;
    for (People people : people(Models.AS_IN_PLANS)) {
      Solved solved = solve(people, arms, first || comparison.matchEach());
      findings.addAll(solved.findings());
      if (solved.findings().isEmpty() && people instanceof AthletePeople one) {
        findings.addAll(broken(one, solved.arms()));
      }
      arms = solved.arms();
      first = false;
    }
    return List.copyOf(new LinkedHashSet<>(findings));
  }

  /** Returns the rules that arms of one exercise break; a plan has its own findings. */
  private List<Finding> broken(AthletePeople people, List<Arm> arms) {
    ArmRules rules =
        new ArmRules(
            Objects.requireNonNull(athletes.get(people.name())),
            people.log(),
            comparison.perWeek(),
            comparison.weeks());
    List<Finding> broken = new ArrayList<>();
    for (Arm arm : arms) {
      if (arm.content() instanceof Arm.Trained trained) {
        broken.addAll(rules.broken(trained.exercise(), path().then("arm", arm.name())));
      }
    }
    return broken;
  }

  /**
   * Runs the comparison.
   *
   * @throws gripwright.budget.OverBudget if the budget's deadline has passed or it was cancelled
   */
  public ComparisonResult run(RunOptions options) {
    List<Finding> findings = new ArrayList<>(check());
    if (findings.stream().anyMatch(Finding::blocks)) {
      return new ComparisonResult(comparison, List.of(), findings);
    }
    Meter meter = options.budget().meter();
    List<Subject> subjects = new ArrayList<>();
    for (Ready ready : ready()) {
      subjects.add(ready.run().run(ready.matches(), options, meter));
    }
    return new ComparisonResult(comparison, subjects, findings);
  }

  /**
   * Returns the run in parts, which may be evaluated in any order and on any machine.
   *
   * @since 1.0
   */
  public ComparisonParts parts() {
    List<Finding> findings = check();
    return new ComparisonParts(
        comparison, findings, findings.stream().anyMatch(Finding::blocks) ? List.of() : ready());
  }

  /** The run for a subject, and how its arms were matched. */
  record Ready(SubjectRun run, List<Matched> matches) {}

  private List<Ready> ready() {
    List<Ready> ready = new ArrayList<>();
    List<Arm> arms = comparison.arms();
    List<Matched> matches = List.of();
    boolean first = true;
    List<People> all = people(Models.AS_IN_PLANS);
    for (int i = 0; i < all.size(); i++) {
      People people = all.get(i);
      Solved solved = solve(people, arms, first || comparison.matchEach());
      arms = comparison.matchEach() ? comparison.arms() : solved.arms();
      matches = first || comparison.matchEach() ? solved.matches() : matches;
      first = false;
      int which = i;
      ready.add(
          new Ready(
              new SubjectRun(
                  comparison,
                  people,
                  solved.programs(),
                  solved.arms(),
                  other -> people(other).get(which)),
              matches));
    }
    return ready;
  }

  /** Arms after matching, and what is wrong with them. */
  private record Solved(
      Programs programs, List<Arm> arms, List<Matched> matches, List<Finding> findings) {}

  private ModelPath path() {
    return ModelPath.of("comparison", comparison.name());
  }

  private Solved solve(People people, List<Arm> arms, boolean matching) {
    Programs programs = new Programs(people, comparison.perWeek(), comparison.weeks(), ruleSets);
    boolean sound = true;
    for (Arm arm : arms) {
      sound &= programs.of(arm, path().then("arm", arm.name())).isPresent();
    }
    if (!sound) {
      return new Solved(programs, arms, List.of(), programs.findings());
    }
    Map<String, Arm> now = new TreeMap<>();
    arms.forEach(arm -> now.put(arm.name(), arm));
    List<Matched> matched = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    if (matching) {
      People.Prepared prepared = people.prepare(programs.setups(), false);
      Matching solver = new Matching(programs, FatigueScenario.AS_IN_PLANS, prepared.reference());
      for (int i = 0; i < comparison.matches().size(); i++) {
        Comparison.Match match = comparison.matches().get(i);
        Arm to = Objects.requireNonNull(now.get(match.to()));
        Arm changed = Objects.requireNonNull(now.get(match.arm()));
        Matching.Result result =
            solver.solve(
                match, changed, solver.quantity(match.quantity(), to), path().then("match", i + 1));
        now.put(match.arm(), result.arm());
        result.matched().ifPresent(matched::add);
        findings.addAll(result.findings());
      }
    }
    List<Arm> solved =
        arms.stream().map(arm -> Objects.requireNonNull(now.get(arm.name()))).toList();
    return new Solved(programs, solved, matched, findings);
  }

  /**
   * Returns what doesn't depend on people: arms that do the same, correlations that are not given.
   */
  private List<Finding> aboutArms() {
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < comparison.arms().size(); i++) {
      Arm arm = comparison.arms().get(i);
      Optional<Arm> same =
          comparison.arms().subList(0, i).stream()
              .filter(other -> other.content().equals(arm.content()))
              .findFirst();
      same.ifPresent(
          other ->
              findings.add(
                  Finding.advice("compare.arms-alike", path().then("arm", arm.name()))
                      .with("arm", arm.name())
                      .with("other", other.name())));
    }
    comparison
        .subjects()
        .accept(
            new Comparison.Subjects.Visitor<Optional<Finding>>() {
              @Override
              public Optional<Finding> cohort(Comparison.OfCohort subjects) {
                return uncorrelated(subjects.cohort());
              }

              @Override
              public Optional<Finding> athletes(Comparison.OfAthletes subjects) {
                return Optional.empty();
              }
            })
        .ifPresent(findings::add);
    return findings;
  }

  private static Optional<Finding> uncorrelated(Cohort cohort) {
    Set<Set<Cohort.Trait>> given =
        cohort.correlations().stream()
            .map(each -> Set.of(each.one(), each.other()))
            .collect(Collectors.toSet());
    List<Cohort.Trait> spread =
        cohort.spreads().entrySet().stream()
            .filter(each -> each.getValue().deviation() > 0)
            .map(Map.Entry::getKey)
            .toList();
    Set<String> missing = new TreeSet<>();
    for (int i = 0; i < spread.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (!given.contains(Set.of(spread.get(i), spread.get(j)))) {
          missing.add("`" + spread.get(j).word() + ", " + spread.get(i).word() + "`");
        }
      }
    }
    return missing.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Finding.warning("compare.uncorrelated", ModelPath.of("cohort", cohort.name()))
                .with("cohort", cohort.name())
                .with(
                    "pairs",
                    gripwright.finding.Listing.of(
                        gripwright.finding.Listing.Style.COMMAS, List.copyOf(missing))));
  }
}
