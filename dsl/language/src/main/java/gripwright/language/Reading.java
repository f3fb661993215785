package gripwright.language;

import gripwright.athlete.Athlete;
import gripwright.compare.Cohort;
import gripwright.compare.Comparison;
import gripwright.compare.ComparisonRun;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.finding.ReportedFinding;
import gripwright.grip.Grip;
import gripwright.language.build.Model;
import gripwright.language.check.Source;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.source.SourceFile;
import gripwright.language.source.Span;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Plan;
import gripwright.protocol.Protocol;
import gripwright.rule.RuleSet;
import gripwright.season.CompiledSeason;
import gripwright.season.Season;
import gripwright.season.SeasonOptions;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The result of reading: typed objects of valid declarations, and findings. A declaration with an
 * error, and everything that depends on it, is missing from the maps. Immutable.
 */
public final class Reading {

  private final Model model;
  private final boolean fileRead;
  private final ReadOptions options;
  private final Findings findings;

  /** Logs from outside the text, by athlete. */
  private final SortedMap<String, Log> otherLogs;

  Reading(Model model, boolean fileRead, ReadOptions options) {
    this(model, fileRead, options, new TreeMap<>());
  }

  private Reading(
      Model model, boolean fileRead, ReadOptions options, SortedMap<String, Log> otherLogs) {
    this.model = model;
    this.fileRead = fileRead;
    this.options = options;
    this.findings = Findings.of(model.findings(), options);
    this.otherLogs = otherLogs;
  }

  /**
   * Returns this reading with more logs of its athletes, for example from a database. Their entries
   * count like those of the text; a finding about one of them is placed at the beginning of the
   * main file.
   *
   * @param more logs of athletes that were read; several logs of one athlete are merged
   * @throws IllegalArgumentException if a log belongs to none of the athletes
   */
  public Reading withLogs(Collection<Log> more) {
    SortedMap<String, Log> all = new TreeMap<>(otherLogs);
    for (Log log : more) {
      if (!model.athletes().containsKey(log.athlete())) {
        throw new IllegalArgumentException(
            "a log of " + log.athlete() + ", who is none of " + model.athletes().keySet());
      }
      all.merge(log.athlete(), log, Log::and);
    }
    return new Reading(model, fileRead, options, all);
  }

  /** Returns whether the main file could be read. */
  public boolean fileRead() {
    return fileRead;
  }

  /** Returns the findings by file, line, column and code. */
  public List<ReportedFinding> findings() {
    return findings.reported();
  }

  /** Returns the findings in the same order, with their places in the text. */
  public List<LocatedFinding> located() {
    return findings.located();
  }

  /** Returns whether there is no error, not even one left out because of the limit. */
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

  /** Returns the rule sets by name; the built-in rules are not among them. */
  public SortedMap<String, RuleSet> ruleSets() {
    return model.ruleSets();
  }

  /** Returns the plans by name. */
  public SortedMap<String, Plan> plans() {
    return model.plans();
  }

  /** Returns the cohorts by name. */
  public SortedMap<String, Cohort> cohorts() {
    return model.cohorts();
  }

  /** Returns the comparisons by name. */
  public SortedMap<String, Comparison> comparisons() {
    return model.comparisons();
  }

  /** Returns one log for each athlete that has any, by the athlete's name. */
  public SortedMap<String, Log> logs() {
    SortedMap<String, Log> all = new TreeMap<>(model.logs());
    otherLogs.forEach((name, log) -> all.merge(name, log, Log::and));
    return Collections.unmodifiableSortedMap(all);
  }

  /**
   * Compiles every plan for each of its athletes, within the budget of the reading's options;
   * exceeding it gives a finding, see {@link Season#compile(SeasonOptions)}.
   */
  public Compilation compile() {
    return compile(options());
  }

  /**
   * Compiles one plan for each of its athletes. A plan for a cohort gives the finding {@code
   * plan.for-cohort}, since it has no dates and loads of a person; {@link #compile()} leaves it
   * out.
   *
   * @param plan name of the plan
   * @throws IllegalArgumentException if there is no plan of this name, or it has an error
   */
  public Compilation compile(String plan) {
    return compile(options().only(plan));
  }

  private SeasonOptions options() {
    return SeasonOptions.standard().withBudget(options.budget());
  }

  /**
   * Checks everything: compiles every plan, and checks the comparisons that the main file itself
   * has as running them would, without drawing anything. Comparisons of files that it uses are
   * checked where those are read as main files.
   */
  public Compilation check() {
    return compile(options(), comparisonFindings());
  }

  private List<LocatedFinding> comparisonFindings() {
    List<LocatedFinding> found = new ArrayList<>();
    if (usable() && !comparisons().isEmpty()) {
      SourceFile main = model.files().get(model.files().size() - 1);
      for (Comparison comparison : comparisons().values()) {
        Finding here = Finding.advice("compare", ModelPath.of("comparison", comparison.name()));
        if (located(here).file().equals(main)) {
          run(comparison).check().forEach(finding -> found.add(located(finding)));
        }
      }
    }
    return found.stream().distinct().toList();
  }

  private Compilation compile(SeasonOptions how) {
    return compile(how, List.of());
  }

  private Compilation compile(SeasonOptions how, List<LocatedFinding> more) {
    CompiledSeason compiled = season().compile(how);
    List<LocatedFinding> everything = new ArrayList<>(model.findings());
    everything.addAll(more);
    how.plan().flatMap(this::forCohort).map(this::located).ifPresent(everything::add);
    everything.addAll(SamePlace.merged(compiled.findings().stream().map(this::located).toList()));
    return new Compilation(compiled.plans(), Findings.of(everything, options));
  }

  /**
   * Prepares the run of a comparison.
   *
   * @param comparison one of {@link #comparisons}
   */
  public ComparisonRun run(Comparison comparison) {
    return ComparisonRun.of(comparison, athletes().values(), logs().values(), ruleSets().values());
  }

  private Optional<Finding> forCohort(String plan) {
    return Optional.ofNullable(plans().get(plan)).stream()
        .flatMap(found -> found.athletes().stream())
        .filter(athlete -> cohorts().containsKey(athlete))
        .map(
            cohort ->
                Finding.error("plan.for-cohort", ModelPath.of("plan", plan))
                    .with("plan", plan)
                    .with("cohort", cohort))
        .findFirst();
  }

  /**
   * Returns the season of all valid declarations. A plan is included even if one of its athletes is
   * not; nothing is compiled for that athlete.
   */
  public Season season() {
    List<Athlete> athletes =
        model.athletes().values().stream()
            .filter(athlete -> !model.unsettled().contains(athlete.name()))
            .toList();
    Set<String> names = athletes.stream().map(Athlete::name).collect(Collectors.toSet());
    return Season.of(
            model.plans().values(),
            athletes,
            logs().values().stream().filter(log -> names.contains(log.athlete())).toList(),
            model.ruleSets().values())
        .withProtocols(model.protocols().values())
        .withGrips(model.grips().values())
        .withMistakesLeftOut();
  }

  /** Returns a finding about this model with its place in the text. */
  public LocatedFinding located(Finding finding) {
    Optional<Source> source = inText(finding.place()).flatMap(model.places()::find);
    return source
        .map(s -> LocatedFinding.at(s.file(), s.span(), finding))
        .orElseGet(() -> LocatedFinding.at(model.files().get(0), new Span(0, 0), finding));
  }

  /**
   * Returns the file and line where a part of this model is written, or else the part that contains
   * it, as in {@code plans/season.grip:12}; empty if it is not in the text.
   *
   * @since 1.0
   */
  public Optional<String> lineOf(ModelPath place) {
    return inText(place)
        .flatMap(model.places()::find)
        .map(s -> s.file().name() + ":" + s.file().line(s.span().start()));
  }

  /** Returns a place with its numbering in the text alone; empty if it is in a log from outside. */
  private Optional<ModelPath> inText(ModelPath place) {
    List<ModelPath.Step> steps = place.steps();
    if (steps.size() < 2
        || !steps.get(0).kind().equals("log")
        || !steps.get(1).kind().equals("entry")
        || !otherLogs.containsKey(steps.get(0).name())) {
      return Optional.of(place);
    }
    String athlete = steps.get(0).name();
    int entry = Integer.parseInt(steps.get(1).name()) - 1;
    LogEntry line = logs().getOrDefault(athlete, Log.empty(athlete)).entries().get(entry);
    int written = model.logs().getOrDefault(athlete, Log.empty(athlete)).entries().indexOf(line);
    return written < 0
        ? Optional.empty()
        : Optional.of(ModelPath.of("log", athlete).then("entry", written + 1));
  }
}
