package gripwright.language.check;

import gripwright.compare.Comparison;
import gripwright.compare.Comparison.Match;
import gripwright.compare.Measure;
import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.resolve.Declared;
import gripwright.language.syntax.CompareItem;
import gripwright.language.syntax.Declaration;
import gripwright.language.syntax.Note;
import gripwright.language.syntax.Word;
import gripwright.protocol.Protocol;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Checks a comparison. */
final class CompareCheck {

  private final Declaration.Compare declaration;
  private final Tables tables;
  private final Diagnostics diagnostics;
  private final Amounts amounts;
  private final Once once;
  private Optional<String> athlete = Optional.empty();
  private Optional<Setup> setup = Optional.empty();
  private final List<Protocol> protocols = new ArrayList<>();
  private boolean allKnown = true;
  private final List<CompareItem.CompareMatch> matches = new ArrayList<>();
  private Optional<Match> match = Optional.empty();
  private int perWeek = 1;
  private int weeks = 1;
  private final List<Measure> measures = new ArrayList<>();

  private CompareCheck(
      Declared<Declaration.Compare> declared, Tables tables, List<LocatedFinding> findings) {
    this.declaration = declared.declaration();
    this.tables = tables;
    this.diagnostics =
        new Diagnostics(declared, ModelPath.of("comparison", declaration.name().text()), findings);
    this.amounts = new Amounts(diagnostics);
    this.once = new Once(diagnostics);
  }

  /** Returns the comparison; empty if it has a mistake, which is reported. */
  static Optional<Comparison> check(
      Declared<Declaration.Compare> declared, Tables tables, List<LocatedFinding> findings) {
    return new CompareCheck(declared, tables, findings).check();
  }

  private Optional<Comparison> check() {
    Items items = new Items();
    declaration.items().forEach(item -> item.accept(items));
    diagnostics.markInvalidIf(declaration.damaged());
    once.require(
        declaration.name(), "comparison", declaration.damaged(), "for", "on", "between", "measure");
    matches.forEach(this::matched);
    if (!diagnostics.sound() || athlete.isEmpty() || setup.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        Comparison.builder(
                declaration.name().text(), athlete.get(), setup.get(), protocols, perWeek, weeks)
            .title(AthleteCheck.note(declaration.title()))
            .match(match)
            .measures(measures)
            .build());
  }

  /** Checks each statement; the quantity to match is checked once all protocols are known. */
  private final class Items implements CompareItem.Visitor {
    @Override
    public void note(Note note) {
      // changes nothing
    }

    @Override
    public void compareFor(CompareItem.CompareFor who) {
      once.first(who, "for");
      tables.athletes().declares(diagnostics, who.athlete());
      athlete = Optional.of(who.athlete().text());
    }

    @Override
    public void compareOn(CompareItem.CompareOn on) {
      once.first(on, "on");
      Optional<Grip> grip = tables.grips().find(diagnostics, on.grip());
      setup =
          SetupCheck.check(diagnostics, on.setup()).flatMap(place -> grip.map(g -> place.with(g)));
    }

    @Override
    public void compareBetween(CompareItem.CompareBetween between) {
      once.first(between, "between");
      diagnostics.distinct(between.protocols(), "protocol");
      if (between.protocols().size() < 2) {
        diagnostics.error(between, "value.compare-two");
      }
      for (Word word : between.protocols()) {
        Optional<Protocol> protocol = tables.protocols().find(diagnostics, word);
        protocol.ifPresent(protocols::add);
        allKnown &= protocol.isPresent();
      }
    }

    @Override
    public void compareMatch(CompareItem.CompareMatch written) {
      matches.add(written);
    }

    @Override
    public void compareEach(CompareItem.CompareEach each) {
      once.first(each, "each");
      perWeek = amounts.count(each.perWeek(), Slot.PER_WEEK).orElse(1);
    }

    @Override
    public void compareOver(CompareItem.CompareOver over) {
      once.first(over, "over");
      weeks = amounts.weeks(over.time(), Slot.COMPARISON).orElse(1);
    }

    @Override
    public void compareMeasure(CompareItem.CompareMeasure measure) {
      once.first(measure, "measure");
      diagnostics.distinct(measure.quantities(), "measure");
      measure.quantities().forEach(word -> measure(word).ifPresent(measures::add));
    }
  }

  private Optional<Measure> measure(Word word) {
    return diagnostics.word(word, "measure", Measure::parse, Diagnostics.words(Measure.values()));
  }

  private void matched(CompareItem.CompareMatch written) {
    once.first(written, "match");
    Optional<Measure> quantity = measure(written.quantity());
    Set<String> shared = new TreeSet<>();
    for (Protocol protocol : protocols) {
      if (shared.isEmpty()) {
        shared.addAll(protocol.parameters().keySet());
      }
      shared.retainAll(protocol.parameters().keySet());
    }
    if (allKnown && !protocols.isEmpty() && !shared.contains(written.by().text())) {
      diagnostics.unknown(written.by(), "shared-parameter", shared);
    }
    match = quantity.map(q -> new Match(q, written.by().text()));
  }
}
