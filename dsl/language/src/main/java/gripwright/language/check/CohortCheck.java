package gripwright.language.check;

import gripwright.compare.Cohort;
import gripwright.compare.Cohort.Correlation;
import gripwright.compare.Cohort.Trait;
import gripwright.compare.Spread;
import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.hand.Sex;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.resolve.Declared;
import gripwright.language.syntax.Amount;
import gripwright.language.syntax.CohortItem;
import gripwright.language.syntax.Declaration;
import gripwright.language.syntax.Note;
import gripwright.language.syntax.Syntax;
import gripwright.language.syntax.Text;
import gripwright.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Checks a cohort. */
final class CohortCheck {

  private final Declaration.Cohort declaration;
  private final Known<Grip> grips;
  private final Diagnostics diagnostics;
  private final Amounts amounts;
  private final Once once;
  private final boolean sourced;

  private CohortCheck(
      Declared<Declaration.Cohort> declared, Known<Grip> grips, List<LocatedFinding> findings) {
    this.declaration = declared.declaration();
    this.grips = grips;
    this.diagnostics =
        new Diagnostics(declared, ModelPath.of("cohort", declaration.name().text()), findings);
    this.amounts = new Amounts(diagnostics);
    this.once = new Once(diagnostics);
    this.sourced = declaration.items().stream().anyMatch(CohortItem.Source.class::isInstance);
  }

  /** Returns the cohort; empty if it has a mistake, which is reported. */
  static Optional<Cohort> check(
      Declared<Declaration.Cohort> declared, Known<Grip> grips, List<LocatedFinding> findings) {
    return new CohortCheck(declared, grips, findings).check();
  }

  private Optional<Cohort> check() {
    Items items = new Items();
    declaration.items().forEach(item -> item.accept(items));
    diagnostics.markInvalidIf(declaration.damaged());
    once.require(declaration.name(), "cohort", declaration.damaged(), "size", "maximum");
    items.reportImpossible();
    if (!diagnostics.sound() || items.size.isEmpty() || items.maximum.isEmpty()) {
      return Optional.empty();
    }
    Cohort.Builder builder =
        Cohort.builder(declaration.name().text(), items.size.get(), items.maximum.get())
            .title(AthleteCheck.note(declaration.title()));
    items.sexes.ifPresent(builder::sexes);
    items.handBySex.ifPresent(builder::handBySex);
    items.mass.ifPresent(builder::bodyMass);
    items.criticalForce.ifPresent(builder::criticalForce);
    items.correlations.forEach(builder::correlation);
    items.sources.forEach(builder::source);
    items.notes.forEach(builder::note);
    return Optional.of(builder.build());
  }

  /** Checks each statement. */
  private final class Items implements CohortItem.Visitor {
    private Optional<Integer> size = Optional.empty();
    private Optional<Cohort.Sexes> sexes = Optional.empty();
    private Optional<String> handBySex = Optional.empty();
    private Optional<Spread> mass = Optional.empty();
    private Optional<Cohort.Maximum> maximum = Optional.empty();
    private Optional<Spread> criticalForce = Optional.empty();
    private final List<Correlation> correlations = new ArrayList<>();
    private final List<String> sources = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private CohortItem.@Nullable Correlate lastCorrelation;

    @Override
    public void note(Note item) {
      notes.add(item.text().value());
    }

    @Override
    public void size(CohortItem.Size item) {
      once.first(item, "size");
      size = amounts.count(item.size(), Slot.COHORT);
    }

    @Override
    public void sexShare(CohortItem.SexShare item) {
      once.first(item, "sex");
      Optional<Sex> sex =
          diagnostics.word(item.sex(), "sex", Sex::parse, Diagnostics.words(Sex.values()));
      Optional<Double> share = amounts.base(item.share(), Slot.SHARE);
      Optional<String> source = cited(item, item.source());
      if (sex.isPresent() && share.isPresent()) {
        double female = sex.get() == Sex.FEMALE ? share.get() : 1 - share.get();
        sexes = Optional.of(new Cohort.Sexes(female, source));
      }
    }

    @Override
    public void handBySex(CohortItem.HandBySex item) {
      once.first(item, "hand by sex");
      handBySex = Optional.of(cited(item, item.source()).orElse(""));
    }

    @Override
    public void mass(CohortItem.Mass item) {
      once.first(item, "body-mass");
      mass = spread(item.median(), item.spread(), Slot.BODY_MASS, cited(item, item.source()));
    }

    @Override
    public void maximum(CohortItem.Maximum item) {
      once.first(item, "maximum");
      Optional<Spread> load =
          spread(item.median(), item.spread(), Slot.LOAD, cited(item, item.source()));
      Optional<Grip> grip = grips.find(diagnostics, item.grip());
      Optional<SetupCheck.Place> place = SetupCheck.check(diagnostics, item.setup());
      if (load.isPresent() && grip.isPresent() && place.isPresent()) {
        maximum = Optional.of(new Cohort.Maximum(load.get(), place.get().with(grip.get())));
      }
    }

    @Override
    public void criticalForce(CohortItem.CriticalForce item) {
      once.first(item, "critical-force");
      criticalForce =
          spread(item.median(), item.spread(), Slot.CRITICAL_FORCE, cited(item, item.source()));
    }

    @Override
    public void correlate(CohortItem.Correlate item) {
      Optional<Trait> one = trait(item.one());
      Optional<Trait> other = trait(item.other());
      Optional<Double> value = amounts.base(item.value(), Slot.CORRELATION);
      Optional<String> source = cited(item, item.source());
      if (one.isEmpty() || other.isEmpty() || value.isEmpty()) {
        return;
      }
      if (one.get() == other.get()) {
        diagnostics.error(item, "value.correlation", "trait", one.get().word());
        return;
      }
      boolean inOrder = one.get().compareTo(other.get()) < 0;
      String pair =
          (inOrder ? one : other).get().word() + ", " + (inOrder ? other : one).get().word();
      if (once.first(item, "correlation", pair)) {
        correlations.add(new Correlation(one.get(), other.get(), value.get(), source));
        lastCorrelation = item;
      }
    }

    private Optional<Trait> trait(gripwright.language.syntax.Word word) {
      return diagnostics.word(word, "trait", Trait::parse, Diagnostics.words(Trait.values()));
    }

    /** Reports correlations that no persons can have together. */
    void reportImpossible() {
      CohortItem.Correlate last = lastCorrelation;
      if (last != null && !Cohort.possible(correlations)) {
        diagnostics.error(last, "value.correlation");
      }
    }

    @Override
    public void source(CohortItem.Source item) {
      new Reasons(diagnostics).words(item.text(), "source").ifPresent(sources::add);
    }
  }

  /**
   * Returns the source of a line; a line without one gets advice, unless the whole has a source.
   */
  private Optional<String> cited(Syntax item, @Nullable Text text) {
    if (text == null) {
      if (!sourced) {
        diagnostics.advice(item, "compare.source", "cohort", declaration.name().text());
      }
      return Optional.empty();
    }
    return new Reasons(diagnostics).words(text, "source");
  }

  private Optional<Spread> spread(
      Amount median, Amount deviation, Slot slot, Optional<String> source) {
    Optional<Double> centre = amounts.base(median, slot);
    boolean relative = deviation.unit() == Unit.PERCENT || slot == Slot.CRITICAL_FORCE;
    Optional<Double> wide =
        relative ? amounts.base(deviation, Slot.SPREAD) : amounts.base(deviation, Slot.LOAD);
    if (centre.isEmpty() || wide.isEmpty()) {
      return Optional.empty();
    }
    if (!relative && !Spread.possible(centre.get(), wide.get())) {
      diagnostics.error(
          deviation,
          "value.spread",
          "found",
          Amounts.written(deviation),
          "median",
          Amounts.written(median));
      return Optional.empty();
    }
    return Optional.of(new Spread(centre.get(), wide.get(), relative, source));
  }
}
