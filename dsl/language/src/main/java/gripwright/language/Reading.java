package gripwright.language;

import gripwright.athlete.Athlete;
import gripwright.compare.Comparison;
import gripwright.finding.Finding;
import gripwright.finding.ReportedFinding;
import gripwright.grip.Grip;
import gripwright.language.build.LoggedNames;
import gripwright.language.build.Model;
import gripwright.language.check.Source;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.source.SourceFile;
import gripwright.language.source.Span;
import gripwright.log.Log;
import gripwright.plan.CompiledPlan;
import gripwright.plan.Plan;
import gripwright.planning.Planner;
import gripwright.protocol.Protocol;
import gripwright.review.Review;
import gripwright.rule.RuleCheck;
import gripwright.rule.RuleSet;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;

/**
 * What was read: typed objects of what is in order, and findings about what is not. A declaration
 * with an error is missing from the maps, and so is what needs it; everything else is there.
 * Immutable.
 */
public final class Reading {

  /** Mean nothing where a rule set or an athlete is left out for a mistake in it. */
  private static final Set<String> NEEDS_ALL = Set.of("plan.waiver-unused", "name.unknown");

  private final Model model;
  private final boolean fileRead;
  private final ReadOptions options;
  private final Findings findings;

  Reading(Model model, boolean fileRead, ReadOptions options) {
    this.model = model;
    this.fileRead = fileRead;
    this.options = options;
    this.findings = Findings.of(model.findings(), options);
  }

  /** Tells whether the file that was named could be read at all. */
  public boolean fileRead() {
    return fileRead;
  }

  /** Returns what is wrong, by file, line, column and code. */
  public List<ReportedFinding> findings() {
    return findings.reported();
  }

  /** Returns what is wrong, in the same order, with the text it is about. */
  public List<LocatedFinding> located() {
    return findings.located();
  }

  /** Tells whether there is no error, whether shown or left out for want of room. */
  public boolean usable() {
    return findings.usable();
  }

  /**
   * Returns this reading if it is usable.
   *
   * @throws FindingsException if it is not
   */
  public Reading orThrow() {
    if (!usable()) {
      throw new FindingsException(findings());
    }
    return this;
  }

  /** Returns every file that was read; a file comes after those it uses. */
  public List<SourceFile> files() {
    return model.files();
  }

  /** Returns the athletes by name. */
  public SortedMap<String, Athlete> athletes() {
    return model.athletes();
  }

  /** Returns the grips by name, those of the catalogue included. */
  public SortedMap<String, Grip> grips() {
    return model.grips();
  }

  /** Returns the protocols by name, those of the catalogue included. */
  public SortedMap<String, Protocol> protocols() {
    return model.protocols();
  }

  /** Returns the rule sets by name; the built-in rules need no name and are not among them. */
  public SortedMap<String, RuleSet> ruleSets() {
    return model.ruleSets();
  }

  /** Returns the plans by name. */
  public SortedMap<String, Plan> plans() {
    return model.plans();
  }

  /** Returns the comparisons by name. */
  public SortedMap<String, Comparison> comparisons() {
    return model.comparisons();
  }

  /** Returns one log for each athlete that has any, by the athlete's name. */
  public SortedMap<String, Log> logs() {
    return model.logs();
  }

  /** Compiles every plan for each of its athletes. */
  public Compilation compile() {
    return compile(List.copyOf(model.plans().values()));
  }

  /**
   * Compiles one plan for each of its athletes.
   *
   * @param plan name of the plan
   * @throws IllegalArgumentException if there is no plan of this name, or it has an error
   */
  public Compilation compile(String plan) {
    Plan found = model.plans().get(plan);
    if (found == null) {
      throw new IllegalArgumentException(
          "no plan " + plan + " among " + String.join(", ", model.plans().keySet()));
    }
    return compile(List.of(found));
  }

  private Compilation compile(List<Plan> plans) {
    List<RuleSet> ruleSets = List.copyOf(model.ruleSets().values());
    List<CompiledPlan> compiled = new ArrayList<>();
    List<LocatedFinding> all = new ArrayList<>();
    Set<String> athletes = new LinkedHashSet<>();
    for (Plan plan : plans) {
      List<CompiledPlan> ofPlan = new ArrayList<>();
      for (String name : plan.athletes().stream().sorted().toList()) {
        Athlete athlete = model.athletes().get(name);
        if (athlete != null && !model.unsettled().contains(name)) {
          Log log = model.logs().getOrDefault(name, Log.empty(name));
          ofPlan.add(Planner.compile(plan, athlete, log, ruleSets, model.protocols()));
          if (athletes.add(name)) {
            Review.oddTests(athlete, log).forEach(finding -> all.add(located(finding)));
          }
        }
      }
      List<CompiledPlan> together = RuleCheck.acrossAthletes(ofPlan);
      compiled.addAll(together);
      boolean allKnown =
          ofPlan.size() == plan.athletes().size()
              && model.ruleSets().keySet().containsAll(plan.ruleSets());
      together.stream()
          .flatMap(result -> result.findings().stream())
          .filter(finding -> allKnown || !NEEDS_ALL.contains(finding.code()))
          .forEach(finding -> all.add(located(finding)));
    }
    athletes.forEach(athlete -> all.addAll(unknownNames(athlete, compiled)));
    List<LocatedFinding> everything = new ArrayList<>(model.findings());
    everything.addAll(SamePlace.merged(all));
    return new Compilation(compiled, Findings.of(everything, options));
  }

  /** Tells of logged sessions that no plan has, where no plan has told of them. */
  private List<LocatedFinding> unknownNames(String athlete, List<CompiledPlan> compiled) {
    Set<String> told = new HashSet<>();
    compiled.stream()
        .filter(plan -> plan.athlete().name().equals(athlete))
        .flatMap(plan -> plan.findings().stream())
        .filter(finding -> finding.code().equals("plan.session-unplanned"))
        .forEach(finding -> told.add(String.valueOf(finding.arguments().get("session"))));
    List<Plan> plans =
        model.plans().values().stream().filter(p -> p.athletes().contains(athlete)).toList();
    Log log = model.logs().getOrDefault(athlete, Log.empty(athlete));
    return LoggedNames.unknown(log, plans, told).stream().map(this::located).toList();
  }

  /** Returns a finding about this model with the text that its place stands for. */
  public LocatedFinding located(Finding finding) {
    Optional<Source> source = model.places().find(finding.place());
    return source
        .map(s -> LocatedFinding.at(s.file(), s.span(), finding))
        .orElseGet(() -> LocatedFinding.at(model.files().get(0), new Span(0, 0), finding));
  }
}
