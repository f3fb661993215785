package gripwright.language;

import gripwright.athlete.Athlete;
import gripwright.compare.Arm;
import gripwright.compare.Cohort;
import gripwright.compare.Comparison;
import gripwright.finding.Severity;
import gripwright.grip.Grip;
import gripwright.grip.StandardGrips;
import gripwright.language.format.Formatted;
import gripwright.language.format.Formatter;
import gripwright.language.source.SourceFile;
import gripwright.language.write.Unwritable;
import gripwright.language.write.internal.Declarations;
import gripwright.language.write.internal.References;
import gripwright.log.Log;
import gripwright.plan.Plan;
import gripwright.protocol.Protocol;
import gripwright.protocol.StandardProtocols;
import gripwright.rule.RuleSet;
import gripwright.wording.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Writes core objects as a file of the plan language.
 *
 * <pre>{@code
 * String text = new PlanFile().add(athlete).add(log).add(plan).text();
 * }</pre>
 *
 * <p>The text is in canonical layout, and it reads back to objects equal to those added; this is
 * verified before the text is returned. Grips and protocols that a plan, log or comparison uses are
 * written too, unless the catalogue or a used file has them. Loads are written in kilograms and
 * lengths in millimetres, whatever their original units. Comments and notes are not part of core
 * objects and are not written. Not thread-safe.
 */
public final class PlanFile {

  private final List<String> uses = new ArrayList<>();
  private final Map<String, Athlete> athletes = new LinkedHashMap<>();
  private final Map<String, Grip> grips = new LinkedHashMap<>();
  private final Map<String, Protocol> protocols = new LinkedHashMap<>();
  private final Map<String, RuleSet> rules = new LinkedHashMap<>();
  private final Map<String, Log> logs = new LinkedHashMap<>();
  private final Map<String, Plan> plans = new LinkedHashMap<>();
  private final Map<String, Cohort> cohorts = new LinkedHashMap<>();
  private final Map<String, Comparison> comparisons = new LinkedHashMap<>();

  /** Starts an empty file. */
  public PlanFile() {}

  /**
   * Adds a {@code use} line.
   *
   * @param file relative to the file that is written, with {@code /} between folders
   */
  public PlanFile using(String file) {
    uses.add(file);
    return this;
  }

  /** Adds an athlete. */
  public PlanFile add(Athlete athlete) {
    return put("athlete", athletes, athlete.name(), athlete);
  }

  /** Adds a grip. */
  public PlanFile add(Grip grip) {
    return put("grip", grips, grip.name(), grip);
  }

  /** Adds a protocol. */
  public PlanFile add(Protocol protocol) {
    return put("protocol", protocols, protocol.name(), protocol);
  }

  /** Adds rules. */
  public PlanFile add(RuleSet set) {
    return put("rule set", rules, set.name(), set);
  }

  /** Adds the log of an athlete. */
  public PlanFile add(Log log) {
    References.in(log).forEach(this::add);
    return put("log of", logs, log.athlete(), log);
  }

  /** Adds a plan. */
  public PlanFile add(Plan plan) {
    References.grips(plan).forEach(this::add);
    References.protocols(plan).forEach(this::add);
    return put("plan", plans, plan.name(), plan);
  }

  /** Adds a comparison. */
  public PlanFile add(Comparison comparison) {
    comparison.subjects().accept(new SubjectParts());
    comparison.arms().forEach(arm -> arm.content().accept(new ArmParts()));
    return put("comparison", comparisons, comparison.name(), comparison);
  }

  /** Adds a cohort. */
  public PlanFile add(Cohort cohort) {
    add(cohort.maximum().setup().grip());
    return put("cohort", cohorts, cohort.name(), cohort);
  }

  /** Adds the cohort that a comparison is for. */
  private final class SubjectParts implements Comparison.Subjects.Visitor<PlanFile> {
    @Override
    public PlanFile cohort(Comparison.OfCohort subjects) {
      return add(subjects.cohort());
    }

    @Override
    public PlanFile athletes(Comparison.OfAthletes subjects) {
      return PlanFile.this; // added by the caller, like the athletes of a plan
    }
  }

  /** Adds what an arm refers to. */
  private final class ArmParts implements Arm.Content.Visitor<PlanFile> {
    @Override
    public PlanFile trained(Arm.Trained content) {
      content.exercise().target().grips().forEach(PlanFile.this::add);
      return add(content.exercise().protocol());
    }

    @Override
    public PlanFile planned(Arm.Planned content) {
      return add(content.plan());
    }

    @Override
    public PlanFile noTraining(Arm.NoTraining content) {
      return PlanFile.this;
    }
  }

  private <T> PlanFile put(String kind, Map<String, T> all, String name, T value) {
    T other = all.putIfAbsent(name, value);
    if (other != null && !other.equals(value)) {
      throw new Unwritable("two things that are both called " + kind + " `" + name + "`");
    }
    return this;
  }

  /**
   * Returns the text of a file that uses no other.
   *
   * @throws Unwritable if something can't be expressed in the plan language, or refers to something
   *     missing
   */
  public String text() {
    return text("written.grip", ReadOptions.standard());
  }

  /**
   * Returns the text.
   *
   * @param name name of the file, used to find the files that it uses
   * @param options the source of those files
   * @throws Unwritable if something can't be expressed in the plan language, or refers to something
   *     missing
   */
  public String text(String name, ReadOptions options) {
    Formatted formatted =
        Formatter.format(SourceFile.of(name, written(name, options)), options.limits());
    String text =
        formatted
            .text()
            .orElseThrow(
                () ->
                    new Unwritable(
                        formatted.findings().get(0).report(Wording.english()).message()));
    Reading reading = Gripwright.read(name, text, options);
    if (!reading.usable()) {
      throw new Unwritable(
          reading.findings().stream()
              .filter(f -> f.severity() == Severity.ERROR)
              .map(f -> f.message())
              .findFirst()
              .orElse("a file without errors"));
    }
    same("athlete", athletes, reading.athletes());
    same("grip", grips, reading.grips());
    same("protocol", protocols, reading.protocols());
    same("rule set", rules, reading.ruleSets());
    same("log of", logs, reading.logs());
    same("plan", plans, reading.plans());
    same("cohort", cohorts, reading.cohorts());
    same("comparison", comparisons, reading.comparisons());
    return text;
  }

  private static <T> void same(String kind, Map<String, T> wanted, Map<String, T> found) {
    wanted.forEach(
        (name, value) -> {
          if (!value.equals(found.get(name))) {
            throw new Unwritable("all that " + kind + " `" + name + "` is");
          }
        });
  }

  private String written(String name, ReadOptions options) {
    StringBuilder head = new StringBuilder("language 1\n");
    uses.forEach(file -> head.append("use \"").append(file).append("\"\n"));
    Reading known = Gripwright.read(name, head.toString(), options);
    List<String> parts = new ArrayList<>();
    parts.add(head.toString());
    athletes.values().forEach(athlete -> parts.add(Declarations.of(athlete)));
    Set<String> standardGrips = StandardGrips.byName().keySet();
    for (Grip grip : missing(grips, known.grips())) {
      parts.add(Declarations.of(grip, standardGrips.contains(grip.name())));
    }
    Set<String> standardProtocols = StandardProtocols.byName().keySet();
    for (Protocol protocol : missing(protocols, known.protocols())) {
      parts.add(Declarations.of(protocol, standardProtocols.contains(protocol.name())));
    }
    rules.values().forEach(set -> parts.add(Declarations.of(set)));
    logs.values().forEach(log -> parts.add(Declarations.of(log)));
    plans.values().forEach(plan -> parts.add(Declarations.of(plan)));
    cohorts.values().forEach(cohort -> parts.add(Declarations.of(cohort)));
    comparisons.values().forEach(comparison -> parts.add(Declarations.of(comparison)));
    return String.join("\n", parts);
  }

  private static <T> List<T> missing(Map<String, T> wanted, Map<String, T> known) {
    return wanted.entrySet().stream()
        .filter(e -> !e.getValue().equals(known.get(e.getKey())))
        .map(Map.Entry::getValue)
        .toList();
  }
}
