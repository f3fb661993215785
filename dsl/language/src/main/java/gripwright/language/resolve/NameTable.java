package gripwright.language.resolve;

import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.finding.Nearest;
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

/** Gathers declarations by kind and name, and tells names that are taken. Not thread-safe. */
final class NameTable {

  private final Set<String> standardGrips;
  private final Set<String> standardProtocols;
  private final List<LocatedFinding> findings = new ArrayList<>();
  private final Map<ModelPath, Declared<?>> first = new HashMap<>();

  private final List<Declared<Declaration.Athlete>> athletes = new ArrayList<>();
  private final List<Declared<Declaration.Grip>> grips = new ArrayList<>();
  private final List<Declared<Declaration.Protocol>> protocols = new ArrayList<>();
  private final List<Declared<Declaration.Rules>> ruleSets = new ArrayList<>();
  private final List<Declared<Declaration.Plan>> plans = new ArrayList<>();
  private final List<Declared<Declaration.Compare>> comparisons = new ArrayList<>();
  private final List<Declared<Declaration.Log>> logs = new ArrayList<>();

  NameTable(Set<String> standardGrips, Set<String> standardProtocols) {
    this.standardGrips = standardGrips;
    this.standardProtocols = standardProtocols;
  }

  List<LocatedFinding> findings() {
    return findings;
  }

  void add(ParsedFile file) {
    for (Declaration declaration : file.declarations()) {
      if (declaration instanceof Declaration.Athlete athlete) {
        athletes.add(named(file, athlete, athlete.name(), "athlete"));
      } else if (declaration instanceof Declaration.Grip grip) {
        grips.add(
            replacing(
                named(file, grip, grip.name(), "grip"), "grip", grip.replaces(), standardGrips));
      } else if (declaration instanceof Declaration.Protocol protocol) {
        protocols.add(
            replacing(
                named(file, protocol, protocol.name(), "protocol"),
                "protocol",
                protocol.replaces(),
                standardProtocols));
      } else if (declaration instanceof Declaration.Rules rules) {
        ruleSets.add(named(file, rules, rules.name(), "rules"));
      } else if (declaration instanceof Declaration.Plan plan) {
        plans.add(named(file, plan, plan.name(), "plan"));
      } else if (declaration instanceof Declaration.Compare compare) {
        comparisons.add(named(file, compare, compare.name(), "comparison"));
      } else if (declaration instanceof Declaration.Log log) {
        logs.add(new Declared<>(file, log, log.athlete(), false));
      }
    }
  }

  private <D extends Declaration> Declared<D> named(
      ParsedFile file, D declaration, Word name, String kind) {
    Declared<D> declared = new Declared<>(file, declaration, name, false);
    ModelPath path = ModelPath.of(kind, name.text());
    Declared<?> other = first.putIfAbsent(path, declared);
    if (other == null) {
      return declared;
    }
    findings.add(
        LocatedFinding.at(
                file.source(),
                declared.span(name),
                Finding.error("name.doubled", path).with("kind", kind).with("name", name.text()))
            .related("first-defined-here", other.file().source(), other.span(other.name())));
    return declared.withWrongName();
  }

  private <D extends Declaration> Declared<D> replacing(
      Declared<D> declared, String kind, boolean replaces, Set<String> standard) {
    String name = declared.name().text();
    if (declared.misnamed() || replaces == standard.contains(name)) {
      return declared;
    }
    String code = replaces ? "name.replaces-nothing" : "name.replaces";
    Finding finding =
        Finding.error(code, ModelPath.of(kind, name)).with("kind", kind).with("name", name);
    Optional<String> nearest = replaces ? Nearest.to(name, standard) : Optional.empty();
    findings.add(
        LocatedFinding.at(
            declared.file().source(),
            declared.span(declared.name()),
            nearest.map(n -> finding.with("suggestion", n)).orElse(finding)));
    return declared.withWrongName();
  }

  Names names() {
    return new Names(
        sorted(athletes),
        sorted(grips),
        sorted(protocols),
        sorted(ruleSets),
        sorted(plans),
        sorted(comparisons),
        sorted(logs));
  }

  private static <D extends Declaration> List<Declared<D>> sorted(List<Declared<D>> list) {
    List<Declared<D>> sorted = new ArrayList<>(list);
    sorted.sort(Comparator.comparing(d -> d.name().text()));
    return sorted;
  }
}
