package gripwright.language.check;

import gripwright.compare.Arm;
import gripwright.compare.Cohort;
import gripwright.compare.Comparison;
import gripwright.compare.Comparison.Match;
import gripwright.compare.Comparison.Subjects;
import gripwright.compare.Measure;
import gripwright.compare.Objective;
import gripwright.finding.Listing;
import gripwright.finding.ModelPath;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.resolve.Declared;
import gripwright.language.syntax.CompareItem;
import gripwright.language.syntax.Declaration;
import gripwright.language.syntax.Note;
import gripwright.language.syntax.Report;
import gripwright.language.syntax.Word;
import gripwright.plan.Plan;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Checks a comparison. */
final class CompareCheck {

  private final Declaration.Compare declaration;
  private final Tables tables;
  private final Diagnostics diagnostics;
  private final Amounts amounts;
  private final Once once;
  private final CompareArms arms;
  private final List<Measure> measures = new ArrayList<>();
  private boolean measuresKnown = true;

  private CompareCheck(
      Declared<Declaration.Compare> declared,
      Tables tables,
      Known<Plan> plans,
      List<LocatedFinding> findings) {
    this.declaration = declared.declaration();
    this.tables = tables;
    this.diagnostics =
        new Diagnostics(declared, ModelPath.of("comparison", declaration.name().text()), findings);
    this.amounts = new Amounts(diagnostics);
    this.once = new Once(diagnostics);
    this.arms = new CompareArms(declaration, tables, plans, diagnostics, once);
  }

  /** Returns the comparison; empty if it has a mistake, which is reported. */
  static Optional<Comparison> check(
      Declared<Declaration.Compare> declared,
      Tables tables,
      Known<Plan> plans,
      List<LocatedFinding> findings) {
    return new CompareCheck(declared, tables, plans, findings).check();
  }

  private Optional<Comparison> check() {
    Items items = new Items();
    declaration.items().forEach(item -> item.accept(items));
    diagnostics.markInvalidIf(declaration.damaged());
    List<Arm> all = arms.all();
    once.require(declaration.name(), "comparison", declaration.damaged(), "for", "arm", "measure");
    List<Match> matches = matches(items);
    List<Objective> objectives = objectives(items);
    if (!diagnostics.sound() || items.subjects.isEmpty()) {
      return Optional.empty();
    }
    Comparison.Builder builder =
        Comparison.builder(declaration.name().text(), items.subjects.get())
            .title(AthleteCheck.note(declaration.title()))
            .arms(all)
            .matchEach(items.matchEach.isPresent())
            .measures(measures)
            .objectives(objectives);
    items.perWeek.ifPresent(builder::perWeek);
    items.weeks.ifPresent(builder::weeks);
    items.draws.ifPresent(builder::draws);
    items.stream.ifPresent(builder::stream);
    items.reports.forEach(builder::report);
    matches.forEach(builder::match);
    items.notes.forEach(builder::note);
    return Optional.of(builder.build());
  }

  /** Checks each statement; those about arms and measures are checked once all are known. */
  private final class Items implements CompareItem.Visitor {
    private Optional<Subjects> subjects = Optional.empty();
    private final List<CompareItem.CompareMatch> matches = new ArrayList<>();
    private Optional<CompareItem.MatchEach> matchEach = Optional.empty();
    private Optional<Integer> perWeek = Optional.empty();
    private Optional<Integer> weeks = Optional.empty();
    private Optional<Integer> draws = Optional.empty();
    private Optional<Long> stream = Optional.empty();
    private final List<CompareItem.Preferred> preferred = new ArrayList<>();
    private final List<gripwright.protocol.Report> reports = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    @Override
    public void note(Note note) {
      notes.add(note.text().value());
    }

    @Override
    public void report(Report report) {
      new Reasons(diagnostics).report(report).ifPresent(reports::add);
    }

    @Override
    public void compareFor(CompareItem.CompareFor who) {
      once.first(who, "for");
      subjects = CompareCheck.this.subjects(who);
    }

    @Override
    public void arm(CompareItem.Arm arm) {
      arms.add(arm);
    }

    @Override
    public void compareOn(CompareItem.CompareOn on) {
      arms.add(on);
    }

    @Override
    public void compareBetween(CompareItem.CompareBetween between) {
      arms.add(between);
    }

    @Override
    public void compareMatch(CompareItem.CompareMatch written) {
      matches.add(written);
    }

    @Override
    public void matchEach(CompareItem.MatchEach item) {
      once.first(item, "match each athlete");
      matchEach = Optional.of(item);
    }

    @Override
    public void compareEach(CompareItem.CompareEach each) {
      once.first(each, "each");
      perWeek = amounts.count(each.perWeek(), Slot.PER_WEEK);
    }

    @Override
    public void compareOver(CompareItem.CompareOver over) {
      once.first(over, "over");
      weeks = amounts.weeks(over.time(), Slot.COMPARISON);
    }

    @Override
    public void draws(CompareItem.Draws item) {
      once.first(item, "draws");
      draws = amounts.count(item.draws(), Slot.DRAWS);
      stream = amounts.wholeNumber(item.stream(), Slot.STREAM);
    }

    @Override
    public void compareMeasure(CompareItem.CompareMeasure measure) {
      once.first(measure, "measure");
      Once names = new Once(diagnostics);
      for (Word word : measure.quantities()) {
        Optional<Measure> found = measure(word);
        measuresKnown &= found.isPresent();
        found.filter(m -> names.first(word, "measure", m.word())).ifPresent(measures::add);
      }
    }

    @Override
    public void objectives(CompareItem.Objectives objectives) {
      once.first(objectives, "prefer");
      preferred.addAll(objectives.preferred());
    }
  }

  private Optional<Subjects> subjects(CompareItem.CompareFor who) {
    List<String> athletes = new ArrayList<>();
    Once names = new Once(diagnostics);
    for (Word word : who.names()) {
      if (tables.cohorts().names().contains(word.text())) {
        if (who.names().size() > 1) {
          diagnostics.error(word, "value.compare-for", "cohort", word.text());
          return Optional.empty();
        }
        Optional<Cohort> cohort = tables.cohorts().find(diagnostics, word);
        return cohort.map(Comparison.OfCohort::new);
      }
      if (tables.athletes().declaresOr(diagnostics, word, tables.cohorts())
          && names.first(word, "athlete", word.text())) {
        athletes.add(word.text());
      }
    }
    return athletes.isEmpty() ? Optional.empty() : Optional.of(new Comparison.OfAthletes(athletes));
  }

  private Optional<Measure> measure(Word word) {
    return diagnostics.word(word, "measure", Measure::parse, Diagnostics.words(Measure.values()));
  }

  private List<Match> matches(Items items) {
    Map<String, Word> changed = new LinkedHashMap<>();
    List<Match> matches = new ArrayList<>();
    for (CompareItem.CompareMatch written : items.matches) {
      match(written, changed).ifPresent(matches::add);
    }
    for (Match match : matches) {
      Word other = changed.get(match.to());
      if (other != null) {
        diagnostics.error(other, "value.match", "chain", match.to());
      }
    }
    if (items.matchEach.isPresent() && items.matches.isEmpty() && !declaration.damaged()) {
      diagnostics.error(items.matchEach.get(), "value.match", "each", "athlete");
    }
    return matches;
  }

  private Optional<Match> match(CompareItem.CompareMatch written, Map<String, Word> changed) {
    Optional<Measure> quantity = measure(written.quantity());
    if (quantity.isPresent() && !quantity.get().matches()) {
      diagnostics.error(
          written.quantity(),
          "value.match",
          "quantity",
          quantity.get().word(),
          "possible",
          Listing.of(
              Listing.Style.OR,
              Arrays.stream(Measure.values())
                  .filter(Measure::matches)
                  .map(m -> "`" + m.word() + "`")
                  .toList()));
      return Optional.empty();
    }
    Optional<CompareArms.Pair> pair = arms.pair(written);
    OptionalDouble within = OptionalDouble.empty();
    if (written.within() != null) {
      Optional<Double> share = amounts.base(written.within(), Slot.WITHIN);
      if (share.isEmpty()) {
        return Optional.empty();
      }
      within = OptionalDouble.of(share.get());
    }
    if (quantity.isEmpty() || pair.isEmpty()) {
      return Optional.empty();
    }
    String arm = pair.get().arm();
    if (!once.first(written, "matched-arm", arm)) {
      return Optional.empty();
    }
    changed.put(arm, written.quantity());
    return Optional.of(
        new Match(quantity.get(), arm, pair.get().to(), written.by().text(), within));
  }

  private List<Objective> objectives(Items items) {
    List<Objective> objectives = new ArrayList<>();
    Set<Measure> seen = new HashSet<>();
    for (CompareItem.Preferred preferred : items.preferred) {
      Optional<Measure> measure = measure(preferred.measure());
      if (measure.isEmpty()) {
        continue;
      }
      if (!measures.contains(measure.get())) {
        if (measuresKnown && !declaration.damaged()) {
          diagnostics.error(
              preferred.measure(),
              "value.objective",
              "measure",
              measure.get().word(),
              "measured",
              Listing.of(
                  Listing.Style.COMMAS, measures.stream().map(m -> "`" + m.word() + "`").toList()));
        }
      } else if (seen.add(measure.get())) {
        objectives.add(new Objective(preferred.more(), measure.get()));
      } else {
        once.first(preferred.measure(), "measure", measure.get().word());
        diagnostics.error(
            preferred.measure(),
            "value.doubled",
            "kind",
            Terms.kind("measure"),
            "name",
            measure.get().word());
      }
    }
    return objectives;
  }
}
