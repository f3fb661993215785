package gripwright.export.study;

import gripwright.compare.Arm;
import gripwright.compare.Cohort;
import gripwright.compare.Comparison;
import gripwright.compare.ComparisonResult;
import gripwright.compare.ComparisonResult.ArmResult;
import gripwright.compare.ComparisonResult.PlannedHold;
import gripwright.compare.ComparisonResult.PlannedWeek;
import gripwright.compare.ComparisonResult.Subject;
import gripwright.compare.Spread;
import gripwright.export.json.Provenance;
import gripwright.export.study.PlanFacts.Fact;
import gripwright.export.words.Words;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.plan.Exercise;
import gripwright.protocol.Report;
import gripwright.protocol.Scheme;
import gripwright.quantity.Numbers;
import gripwright.wording.Wording;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Describes the methods of a comparison as Markdown: what was done, in sentences, and for each arm
 * the items that reporting guidelines ask for, or that they are not stated.
 */
public final class ComparisonMethods {

  private final Comparison comparison;
  private final Subject subject;
  private final Provenance provenance;
  private final Words words;
  private final Pseudonyms names;
  private final StringBuilder text = new StringBuilder();

  private ComparisonMethods(
      ComparisonResult result,
      Subject subject,
      Provenance provenance,
      Words words,
      Pseudonyms names) {
    this.comparison = result.comparison();
    this.subject = subject;
    this.provenance = provenance;
    this.words = words;
    this.names = names;
  }

  /**
   * Returns the description of one subject's comparison.
   *
   * @param names how athletes are called; with codes, supervisors are not named either
   */
  public static String of(
      ComparisonResult result,
      Subject subject,
      Provenance provenance,
      Wording wording,
      Pseudonyms names) {
    Words words = new Words(wording);
    return names.hide(new ComparisonMethods(result, subject, provenance, words, names).write());
  }

  private String write() {
    heading(1, words.say("study.methods", "comparison", comparison.name()));
    comparison.title().ifPresent(this::paragraph);
    paragraph(words.say("study.methods-intro", "version", provenance.version()));
    heading(2, words.say("study.files"));
    provenance
        .sources()
        .forEach(
            source ->
                point(words.say("study.file", "file", source.file(), "hash", source.sha256())));
    heading(2, words.say("study.question"));
    paragraph(
        subject.athletes() > 0
            ? words.say("study.for-cohort", "cohort", subject.name(), "size", subject.athletes())
            : words.say("study.for-athlete"));
    paragraph(
        words.say(
            "study.design",
            "arms",
            subject.arms().size(),
            "draws",
            subject.draws(),
            "stream",
            comparison.stream()));
    comparison.notes().forEach(this::paragraph);
    cohort().ifPresent(this::cohort);
    matching();
    heading(2, words.say("study.models"));
    point(words.say("study.model-fatigue"));
    point(words.say("study.model-pulleys"));
    point(words.say("study.model-strength"));
    heading(2, words.say("study.limits"));
    point(words.say("compared.cannot-gain"));
    point(words.say("compared.cannot-between"));
    point(words.say("compared.cannot-pulleys"));
    if (subject.athletes() > 0) {
      point(words.say("compared.cannot-history"));
    }
    subject.arms().forEach(this::arm);
    text.append('\n').append(words.say("methods.unverified")).append('\n');
    return text.toString();
  }

  /** Returns a text on one line; names in backticks stay so. */
  private static String flat(String line) {
    return Methods.flat(line).replace("\\`", "`");
  }

  private void heading(int level, String line) {
    boolean apart = text.isEmpty() || text.toString().endsWith("\n\n");
    text.append(apart ? "" : "\n").append("#".repeat(level)).append(' ');
    text.append(flat(line)).append("\n\n");
  }

  private void paragraph(String line) {
    text.append(flat(line)).append("\n\n");
  }

  private void point(String line) {
    text.append("- ").append(flat(line)).append('\n');
  }

  private Optional<Cohort> cohort() {
    return comparison
        .subjects()
        .accept(
            new Comparison.Subjects.Visitor<>() {
              @Override
              public Optional<Cohort> cohort(Comparison.OfCohort subjects) {
                return Optional.of(subjects.cohort());
              }

              @Override
              public Optional<Cohort> athletes(Comparison.OfAthletes subjects) {
                return Optional.empty();
              }
            });
  }

  private void cohort(Cohort cohort) {
    heading(2, words.say("study.cohort"));
    cohort.title().ifPresent(this::paragraph);
    cohort.spreads().forEach((trait, spread) -> point(trait(trait.word(), spread)));
    for (Cohort.Correlation each : cohort.correlations()) {
      point(
          words.say(
              "study.correlation",
              "one",
              each.one().word(),
              "other",
              each.other().word(),
              "value",
              Numbers.plain(each.value(), 2),
              "source",
              each.source().orElse(words.say("study.no-source"))));
    }
    cohort.sources().forEach(this::point);
    cohort.notes().forEach(this::point);
  }

  private String trait(String name, Spread spread) {
    return words.say(
        "study.trait",
        "trait",
        name,
        "median",
        Numbers.plain(spread.median(), 3),
        "spread",
        spread.relative()
            ? words.say(
                "study.spread-relative", "percent", Numbers.plain(spread.deviation() * 100, 2))
            : words.say("study.spread-absolute", "deviation", Numbers.plain(spread.deviation(), 3)),
        "source",
        spread.source().orElse(words.say("study.no-source")));
  }

  private void matching() {
    heading(2, words.say("study.matching"));
    if (subject.matches().isEmpty()) {
      paragraph(words.say("study.no-matching"));
    }
    subject
        .matches()
        .forEach(
            match ->
                point(
                    words.say(
                        "compared.match",
                        "quantity",
                        match.match().quantity().word(),
                        "arm",
                        match.match().arm(),
                        "to",
                        match.match().to(),
                        "by",
                        match.match().by(),
                        "value",
                        (Numbers.plain(match.value(), 3) + " " + match.unit()).strip(),
                        "residual",
                        Numbers.plain(match.residual() * 100, 2) + " %")));
  }

  private void arm(ArmResult result) {
    heading(2, words.say("study.arm", "arm", result.arm().name()));
    Map<Fact, String> values =
        result
            .arm()
            .content()
            .accept(
                new Arm.Content.Visitor<>() {
                  @Override
                  public Map<Fact, String> trained(Arm.Trained content) {
                    return exercise(result, content.exercise());
                  }

                  @Override
                  public Map<Fact, String> planned(Arm.Planned content) {
                    return plan(result, content);
                  }

                  @Override
                  public Map<Fact, String> noTraining(Arm.NoTraining content) {
                    return Map.of();
                  }
                });
    if (values.isEmpty()) {
      paragraph(words.say("study.control"));
      return;
    }
    for (ReportingItem.Guideline guideline : ReportingItem.Guideline.values()) {
      items(guideline, values);
    }
  }

  private void items(ReportingItem.Guideline guideline, Map<Fact, String> values) {
    heading(3, words.of("methods.guideline", guideline));
    row(
        List.of(
            words.say("methods.column-number"),
            words.say("methods.column-item"),
            words.say("study.column-value")));
    text.append("|---|---|---|\n");
    for (ReportingItem item : ReportingItem.of(guideline)) {
      String value = values.getOrDefault(item.fact(), words.say("methods.not-stated"));
      row(List.of(item.number(), words.say(item.key()), value));
    }
  }

  private void row(List<String> cells) {
    for (String cell : cells) {
      text.append("| ").append(flat(cell)).append(' ');
    }
    text.append("|\n");
  }

  private Map<Fact, String> reports(List<Report> of) {
    List<Report> all = new ArrayList<>(of);
    all.addAll(comparison.reports());
    Map<Fact, String> values = new EnumMap<>(Fact.class);
    all.forEach(
        report ->
            values.merge(
                Fact.of(report.item()),
                report.text(),
                (one, other) -> one.equals(other) ? one : one + "; " + other));
    return values;
  }

  private Map<Fact, String> plan(ArmResult result, Arm.Planned content) {
    Map<Fact, String> values = reports(content.plan().reports());
    String plan = content.plan().name();
    values.put(Fact.NAME, content.plan().title().orElse(plan));
    values.put(Fact.EXERCISES, words.say("study.plan-exercise", "plan", plan));
    values.put(Fact.PROGRESSION_RULE, words.say("study.progression-plan", "plan", plan));
    values.put(Fact.PROGRESSION, words.say("study.progression-plan", "plan", plan));
    content
        .plan()
        .supervisedBy()
        .ifPresent(
            who ->
                values.put(
                    Fact.SUPERVISION, names.hiding() ? words.say("methods.supervised") : who));
    shared(result, values);
    return values;
  }

  private Map<Fact, String> exercise(ArmResult result, Exercise exercise) {
    Map<Fact, String> values = reports(exercise.protocol().reports());
    Setup setup = exercise.setup(exercise.target().grips().get(0));
    Scheme scheme = exercise.scheme();
    values.put(Fact.NAME, exercise.protocol().title().orElse(exercise.protocol().name()));
    exercise.protocol().aim().ifPresent(aim -> values.put(Fact.WHY, aim));
    String hands = words.say("study.hands-" + setup.hands().word());
    values.put(
        Fact.EQUIPMENT,
        words.say(
            "study.equipment",
            "edge",
            setup.edge(),
            "way",
            words.say(setup.lifting() ? "study.lifting" : "study.hanging", "hands", hands)));
    values.put(
        Fact.EXERCISES,
        words.say(
            "study.exercise",
            "protocol",
            exercise.protocol().name(),
            "setup",
            setup,
            "scheme",
            scheme(scheme)));
    values.put(Fact.PROGRESSION_RULE, words.say("study.progression-none"));
    values.put(Fact.PROGRESSION, words.say("study.progression-none"));
    List<String> levels =
        scheme.written().stream().map(hold -> words.of(hold.level())).distinct().toList();
    values.put(Fact.STARTING_LEVEL, words.say("study.start", "level", words.commas(levels)));
    values.put(Fact.SETS, Integer.toString(scheme.sets()));
    values.put(Fact.REPETITIONS, Integer.toString(scheme.repetitionsPerSet()));
    values.put(Fact.REST_BETWEEN_SETS, rest(result, scheme.repetitionsPerSet()));
    values.put(Fact.REST_BETWEEN_HOLDS, scheme.repetitionsPerSet() > 1 ? rest(result, 1) : "-");
    values.put(
        Fact.CONTRACTION,
        words.say(
            "study.isometric",
            "seconds",
            words.commas(
                result.schedule().stream()
                    .map(hold -> Numbers.plain(hold.seconds(), 1))
                    .distinct()
                    .toList())));
    values.put(
        Fact.FAILURE, words.say(scheme.hasBound() ? "study.failure-bound" : "study.failure-no"));
    values.put(
        Fact.FORM,
        words.say(
            "study.anatomy",
            "fingers",
            words.commas(setup.grip().fingers().fingers().stream().map(Finger::word).toList()),
            "grip",
            setup.grip().name()));
    shared(result, values);
    return values;
  }

  /** Returns the rest after a hold of a session. */
  private static String rest(ArmResult result, int hold) {
    return result.schedule().stream()
        .filter(each -> each.number() == hold && each.restSeconds() > 0)
        .map(each -> Numbers.plain(each.restSeconds(), 1) + " s")
        .findFirst()
        .orElse("-");
  }

  private String scheme(Scheme scheme) {
    List<String> parts = new ArrayList<>();
    parts.add(words.count("methods.sets", scheme.sets()));
    parts.add(words.count("methods.holds", scheme.repetitionsPerSet()));
    return words.commas(parts);
  }

  private void shared(ArmResult result, Map<Fact, String> values) {
    double tension = result.weeks().stream().mapToDouble(PlannedWeek::timeUnderLoadSeconds).sum();
    values.put(
        Fact.DOSE,
        words.say(
            "study.dosage",
            "holds",
            words.count("compared.holds", result.holds()),
            "sessions",
            words.count("compared.sessions", result.sessions()),
            "weeks",
            words.count("compared.weeks", result.weeks().size()),
            "tension",
            Numbers.plain(tension, 0)));
    values.put(Fact.TIME_UNDER_TENSION, Numbers.plain(tension, 0) + " s");
    values.put(Fact.PERIOD, words.count("compared.weeks", result.weeks().size()));
    List<String> frequencies =
        result.weeks().stream().map(week -> Integer.toString(week.sessions())).distinct().toList();
    values.put(
        Fact.FREQUENCY, words.say("study.frequency", "count", String.join(" / ", frequencies)));
    values.put(Fact.RECOVERY, words.say("study.recovery"));
    values.put(Fact.RANGE_OF_MOTION, words.say("study.range-none"));
    values.put(Fact.TAILORED, words.say(subject.athletes() > 0 ? "study.generic" : "study.own"));
    double share = result.schedule().stream().mapToDouble(PlannedHold::share).max().orElse(0);
    values.put(
        Fact.LEVELS,
        words.say(
            "study.load",
            "load",
            Numbers.plain(result.heaviest().orElse(0), 1),
            "percent",
            Numbers.plain(share * 100, 1)));
  }
}
