package gripwright.language.resolve;

import gripwright.finding.Clause;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.finding.Nearest;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.syntax.Declaration;
import gripwright.language.syntax.ParsedFile;
import gripwright.language.syntax.Word;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Collects declarations by kind and name, and reports duplicate names. Not thread-safe. */
final class NameTable {

  private final StandardNames standard;
  private final List<LocatedFinding> findings = new ArrayList<>();
  private final Map<ModelPath, Declared<?>> first = new HashMap<>();

  private final List<Declared<Declaration.Athlete>> athletes = new ArrayList<>();
  private final List<Declared<Declaration.Grip>> grips = new ArrayList<>();
  private final List<Declared<Declaration.Protocol>> protocols = new ArrayList<>();
  private final List<Declared<Declaration.Rules>> ruleSets = new ArrayList<>();
  private final List<Declared<Declaration.Plan>> plans = new ArrayList<>();
  private final List<Declared<Declaration.Cohort>> cohorts = new ArrayList<>();
  private final List<Declared<Declaration.Compare>> comparisons = new ArrayList<>();
  private final List<Declared<Declaration.Log>> logs = new ArrayList<>();

  NameTable(StandardNames standard) {
    this.standard = standard;
  }

  List<LocatedFinding> findings() {
    return findings;
  }

  void add(ParsedFile file) {
    Adding adding = new Adding(file);
    file.declarations().forEach(declaration -> declaration.accept(adding));
  }

  /** Adds a declaration to those of its kind; returns whether it has a name. */
  private final class Adding implements Declaration.Visitor<Boolean> {
    private final ParsedFile file;

    Adding(ParsedFile file) {
      this.file = file;
    }

    @Override
    public Boolean language(Declaration.Language language) {
      return false;
    }

    @Override
    public Boolean use(Declaration.Use use) {
      return false;
    }

    @Override
    public Boolean athlete(Declaration.Athlete athlete) {
      return athletes.add(named(file, athlete, athlete.name(), "athlete"));
    }

    @Override
    public Boolean grip(Declaration.Grip grip) {
      Declared<Declaration.Grip> named = named(file, grip, grip.name(), "grip");
      return grips.add(replacing(named, "grip", grip.replaces(), standard.grips()));
    }

    @Override
    public Boolean protocol(Declaration.Protocol protocol) {
      Declared<Declaration.Protocol> named = named(file, protocol, protocol.name(), "protocol");
      return protocols.add(replacing(named, "protocol", protocol.replaces(), standard.protocols()));
    }

    @Override
    public Boolean plan(Declaration.Plan plan) {
      return plans.add(named(file, plan, plan.name(), "plan"));
    }

    @Override
    public Boolean rules(Declaration.Rules rules) {
      return ruleSets.add(builtIn(named(file, rules, rules.name(), "rule-set")));
    }

    @Override
    public Boolean log(Declaration.Log log) {
      return logs.add(new Declared<>(file, log, log.athlete(), false));
    }

    @Override
    public Boolean cohort(Declaration.Cohort cohort) {
      return cohorts.add(named(file, cohort, cohort.name(), "cohort"));
    }

    @Override
    public Boolean compare(Declaration.Compare compare) {
      return comparisons.add(named(file, compare, compare.name(), "comparison"));
    }
  }

  private <D extends Declaration> Declared<D> named(
      ParsedFile file, D declaration, Word name, String kind) {
    Declared<D> declared = new Declared<>(file, declaration, name, false);
    ModelPath path = ModelPath.of(kind.equals("rule-set") ? "rules" : kind, name.text());
    // Athletes and cohorts share one set of names, since `for` takes both.
    ModelPath key = kind.equals("cohort") ? ModelPath.of("athlete", name.text()) : path;
    Declared<?> other = first.putIfAbsent(key, declared);
    if (other == null) {
      return declared;
    }
    findings.add(
        LocatedFinding.at(
                file.source(),
                declared.span(name),
                Finding.error("name.doubled", path)
                    .with("kind", Clause.of("term.kind-" + kind))
                    .with("name", name.text()))
            .related("first-defined-here", other.file().source(), other.span(other.name())));
    return declared.withWrongName();
  }

  private <D extends Declaration> Declared<D> replacing(
      Declared<D> declared, String kind, boolean replaces, Set<String> catalogue) {
    String name = declared.name().text();
    if (declared.misnamed() || replaces == catalogue.contains(name)) {
      return declared;
    }
    String code = replaces ? "name.replaces-nothing" : "name.replaces";
    Finding finding =
        Finding.error(code, ModelPath.of(kind, name))
            .with("kind", Clause.of("term.kind-" + kind))
            .with("keyword", kind)
            .with("name", name);
    Optional<String> nearest = replaces ? Nearest.to(name, catalogue) : Optional.empty();
    findings.add(
        LocatedFinding.at(
            declared.file().source(),
            declared.span(declared.name()),
            nearest.map(n -> finding.with("suggestion", n)).orElse(finding)));
    return declared.withWrongName();
  }

  private Declared<Declaration.Rules> builtIn(Declared<Declaration.Rules> declared) {
    String name = declared.name().text();
    if (declared.misnamed() || !standard.ruleSets().contains(name)) {
      return declared;
    }
    findings.add(
        LocatedFinding.at(
            declared.file().source(),
            declared.span(declared.name()),
            Finding.error("name.replaces", ModelPath.of("rules", name))
                .with("kind", Clause.of("term.kind-rule-set"))
                .with("keyword", "rules")
                .with("name", name)
                .with("fixed", true)));
    return declared.withWrongName();
  }

  Names names() {
    return new Names(
        sorted(athletes),
        sorted(grips),
        sorted(protocols),
        sorted(ruleSets),
        sorted(plans),
        sorted(cohorts),
        sorted(comparisons),
        sorted(logs));
  }

  private static <D extends Declaration> List<Declared<D>> sorted(List<Declared<D>> list) {
    List<Declared<D>> sorted = new ArrayList<>(list);
    sorted.sort(Comparator.comparing(d -> d.name().text()));
    return sorted;
  }
}
