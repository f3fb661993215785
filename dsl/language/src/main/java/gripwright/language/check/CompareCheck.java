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
  private final Ledger ledger;
  private final Amounts amounts;
  private final Once once;
  private Optional<String> athlete = Optional.empty();
  private Optional<Setup> setup = Optional.empty();
  private final List<Protocol> protocols = new ArrayList<>();
  private boolean allKnown = true;
  private Optional<Match> match = Optional.empty();
  private int perWeek = 1;
  private int weeks = 1;
  private final List<Measure> measures = new ArrayList<>();

  private CompareCheck(
      Declared<Declaration.Compare> declared, Tables tables, List<LocatedFinding> findings) {
    this.declaration = declared.declaration();
    this.tables = tables;
    this.ledger =
        new Ledger(declared, ModelPath.of("comparison", declaration.name().text()), findings);
    this.amounts = new Amounts(ledger);
    this.once = new Once(ledger);
  }

  /** Returns the comparison, or nothing and findings. */
  static Optional<Comparison> check(
      Declared<Declaration.Compare> declared, Tables tables, List<LocatedFinding> findings) {
    return new CompareCheck(declared, tables, findings).check();
  }

  private Optional<Comparison> check() {
    declaration.items().forEach(this::item);
    ledger.spoilIf(declaration.damaged());
    once.require(
        declaration.name(), "comparison", declaration.damaged(), "for", "on", "between", "measure");
    declaration.items().forEach(this::matched);
    if (!ledger.sound() || athlete.isEmpty() || setup.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Comparison(
            declaration.name().text(),
            AthleteCheck.note(declaration.title()),
            athlete.get(),
            setup.get(),
            protocols,
            match,
            perWeek,
            weeks,
            measures));
  }

  private void item(CompareItem item) {
    if (item instanceof CompareItem.CompareFor who) {
      once.first(who, "for");
      tables.athletes().declares(ledger, who.athlete());
      athlete = Optional.of(who.athlete().text());
    } else if (item instanceof CompareItem.CompareOn on) {
      once.first(on, "on");
      Optional<Grip> grip = tables.grips().find(ledger, on.grip());
      setup = SetupCheck.check(ledger, on.setup()).flatMap(place -> grip.map(g -> place.with(g)));
    } else if (item instanceof CompareItem.CompareBetween between) {
      once.first(between, "between");
      between(between);
    } else if (item instanceof CompareItem.CompareEach each) {
      once.first(each, "each");
      perWeek = amounts.count(each.perWeek(), Slot.PER_WEEK).orElse(1);
    } else if (item instanceof CompareItem.CompareOver over) {
      once.first(over, "over");
      weeks = amounts.weeks(over.time(), Slot.COMPARISON).orElse(1);
    } else if (item instanceof CompareItem.CompareMeasure measure) {
      once.first(measure, "measure");
      ledger.distinct(measure.quantities(), "measure");
      measure.quantities().forEach(word -> measure(word).ifPresent(measures::add));
    }
  }

  private Optional<Measure> measure(Word word) {
    return ledger.word(word, "measure", Measure::parse, Ledger.words(Measure.values()));
  }

  private void between(CompareItem.CompareBetween between) {
    ledger.distinct(between.protocols(), "protocol");
    if (between.protocols().size() < 2) {
      ledger.error(between, "value.compare-two");
    }
    for (Word word : between.protocols()) {
      Optional<Protocol> protocol = tables.protocols().find(ledger, word);
      protocol.ifPresent(protocols::add);
      allKnown &= protocol.isPresent();
    }
  }

  private void matched(CompareItem item) {
    if (!(item instanceof CompareItem.CompareMatch written)) {
      return;
    }
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
      ledger.unknown(written.by(), "shared-parameter", shared);
    }
    match = quantity.map(q -> new Match(q, written.by().text()));
  }
}
