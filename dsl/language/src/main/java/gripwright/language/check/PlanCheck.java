package gripwright.language.check;

import gripwright.athlete.Athlete;
import gripwright.budget.Limit;
import gripwright.finding.Message;
import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.resolve.Declared;
import gripwright.language.syntax.DateText;
import gripwright.language.syntax.Declaration;
import gripwright.language.syntax.DefaultItem;
import gripwright.language.syntax.Note;
import gripwright.language.syntax.PlanItem;
import gripwright.language.syntax.Report;
import gripwright.language.syntax.Share;
import gripwright.language.syntax.Supervised;
import gripwright.language.syntax.Text;
import gripwright.language.syntax.Word;
import gripwright.plan.Block;
import gripwright.plan.Plan;
import gripwright.plan.PlanSize;
import gripwright.plan.PlannedTest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Checks a plan. */
final class PlanCheck {

  private final Declaration.Plan declaration;
  private final Tables tables;
  private final Diagnostics diagnostics;
  private final Amounts amounts;
  private final Once once;
  private final Plan.Builder builder;
  private final Set<String> athletes = new TreeSet<>();
  private boolean athletesKnown;
  private final List<String> ruleSets = new ArrayList<>();
  private final List<PlanItem.BlockItem> blockItems;
  private final List<Block> blocks = new ArrayList<>();
  private final List<PlannedTest> retests = new ArrayList<>();
  private final List<Runnable> afterBlocks = new ArrayList<>();
  private @Nullable WaiverCheck waivers;

  private PlanCheck(
      Declared<Declaration.Plan> declared, Tables tables, List<LocatedFinding> findings) {
    this.declaration = declared.declaration();
    this.tables = tables;
    String name = declaration.name().text();
    this.diagnostics = new Diagnostics(declared, ModelPath.of("plan", name), findings);
    this.amounts = new Amounts(diagnostics);
    this.once = new Once(diagnostics);
    this.builder = Plan.named(name);
    this.blockItems =
        declaration.items().stream()
            .filter(PlanItem.BlockItem.class::isInstance)
            .map(PlanItem.BlockItem.class::cast)
            .toList();
  }

  /** Returns the plan; empty if it has a mistake, which is reported. */
  static Optional<Plan> check(
      Declared<Declaration.Plan> declared, Tables tables, List<LocatedFinding> findings) {
    return new PlanCheck(declared, tables, findings).check();
  }

  private Optional<Plan> check() {
    Text title = declaration.title();
    if (title != null) {
      builder.title(title.value());
    }
    diagnostics.markInvalidIf(declaration.damaged());
    Optional<DateText> from = from();
    Items items = new Items(from);
    declaration.items().forEach(item -> item.accept(items));
    Defaults defaults = Defaults.NONE.within(diagnostics, declaration.items());
    defaults.warmUp().ifPresent(builder::warmUp);
    builder.warmUpText(defaults.warmUpText());
    defaults.restBetween().ifPresent(builder::restBetween);
    defaults.weights().ifPresent(builder::weights);
    new Reasons(diagnostics).supervisor(items.supervised).ifPresent(builder::supervisedBy);
    PlanScope scope = scope();
    for (PlanItem.BlockItem block :
        tooManyAthletes() ? List.<PlanItem.BlockItem>of() : blockItems) {
      once.first(block.name(), "block", block.name().text());
      new BlockCheck(scope, Defaults.NONE).check(block).ifPresent(blocks::add);
    }
    afterBlocks.forEach(Runnable::run);
    requireParts();
    extent();
    if (!diagnostics.sound()) {
      return Optional.empty();
    }
    blocks.forEach(builder::block);
    return Optional.of(builder.build());
  }

  private PlanScope scope() {
    return new PlanScope(
        diagnostics,
        tables.grips(),
        tables.protocols(),
        athletes,
        athletesKnown,
        PlanPlaces.of(tables, athletes, athletesKnown),
        tables.budget());
  }

  private Optional<DateText> from() {
    Optional<DateText> from = Optional.empty();
    for (PlanItem item : declaration.items()) {
      if (item instanceof PlanItem.FromItem first && once.first(first, "from")) {
        from = Optional.of(first.date());
        amounts.date(first.date()).ifPresent(builder::from);
      }
    }
    return from;
  }

  /** Checks each statement; blocks, and statements that depend on them, are checked last. */
  private final class Items implements PlanItem.Visitor {
    private final Optional<DateText> from;
    private final List<Supervised> supervised = new ArrayList<>();

    Items(Optional<DateText> from) {
      this.from = from;
    }

    @Override
    public void note(Note note) {
      builder.note(note.text().value());
    }

    @Override
    public void defaultItem(DefaultItem item) {
      // read together with the others of its kind
    }

    @Override
    public void report(Report item) {
      new Reasons(diagnostics).report(item).ifPresent(builder::report);
    }

    @Override
    public void supervised(Supervised item) {
      supervised.add(item);
    }

    @Override
    public void forItem(PlanItem.ForItem list) {
      if (once.first(list, "for")) {
        athletesKnown = true;
        list.athletes().forEach(word -> athlete(word, from));
      }
    }

    @Override
    public void fromItem(PlanItem.FromItem item) {
      // read first, since the others are compared with it
    }

    @Override
    public void towards(PlanItem.Towards towards) {
      once.first(towards, "towards");
      Optional<LocalDate> day = amounts.date(towards.date());
      from.ifPresent(
          f ->
              amounts.inOrder(
                  f, Terms.of("date-first-day"), towards.date(), Terms.of("date-goal")));
      day.ifPresent(d -> builder.towards(new Plan.Goal(d, AthleteCheck.note(towards.goal()))));
    }

    @Override
    public void taperItem(PlanItem.TaperItem taper) {
      boolean first = once.first(taper, "taper");
      Optional<Integer> weeks = amounts.weeks(taper.length(), Slot.TAPER);
      Optional<Double> share = amounts.base(taper.share(), Slot.EASE);
      boolean towards = declaration.items().stream().anyMatch(PlanItem.Towards.class::isInstance);
      if (!towards && !declaration.damaged()) {
        diagnostics.error(
            taper,
            "value.missing",
            "kind",
            Terms.kind("plan"),
            "name",
            declaration.name().text(),
            "missing",
            "`towards`");
      } else if (first && weeks.isPresent() && share.isPresent()) {
        builder.taper(weeks.get(), share.get());
      }
    }

    @Override
    public void demand(PlanItem.Demand demand) {
      once.first(demand, "demand");
      boolean known = true;
      for (Share share : demand.shares()) {
        known &= tables.grips().find(diagnostics, share.name()).isPresent();
      }
      Optional<Map<String, Double>> fractions =
          new Shares(diagnostics).whole(demand, demand.shares(), "demand", "grip");
      if (known && fractions.isPresent()) {
        Map<String, Grip> grips = tables.grips().made();
        fractions
            .get()
            .forEach(
                (name, fraction) -> {
                  Grip grip = grips.get(name);
                  if (grip != null) {
                    builder.demand(grip, fraction);
                  }
                });
      }
    }

    @Override
    public void rulesItem(PlanItem.RulesItem rules) {
      rules.names().forEach(PlanCheck.this::ruleSet);
    }

    @Override
    public void blockItem(PlanItem.BlockItem block) {
      // read when all athletes are known
    }

    @Override
    public void retestItem(PlanItem.RetestItem retest) {
      afterBlocks.add(() -> tests().regular(retest).ifPresent(this::add));
    }

    @Override
    public void testItem(PlanItem.TestItem test) {
      afterBlocks.add(() -> tests().check(test, weeks()).ifPresent(this::add));
    }

    private PlannedTestCheck tests() {
      return new PlannedTestCheck(scope());
    }

    private void add(PlannedTest test) {
      retests.add(test);
      builder.retest(test);
    }

    /** Returns the weeks of the plan; empty if those of a block are not known. */
    private Optional<Integer> weeks() {
      return blocks.size() == blockItems.size() && !declaration.damaged()
          ? Optional.of(blocks.stream().mapToInt(Block::weeks).sum())
          : Optional.empty();
    }

    @Override
    public void waiveItem(PlanItem.WaiveItem waive) {
      afterBlocks.add(() -> waivers().check(waive).ifPresent(builder::waive));
    }

    @Override
    public void weeklyRise(PlanItem.WeeklyRise rise) {
      once.first(rise, "weekly-rise");
      amounts.base(rise.atMost(), Slot.WEEKLY_RISE).ifPresent(builder::weeklyRise);
    }
  }

  private void athlete(Word word, Optional<DateText> from) {
    boolean cohort = tables.cohorts().names().contains(word.text());
    boolean known = cohort || tables.athletes().declaresOr(diagnostics, word, tables.cohorts());
    athletesKnown &= known;
    if (!once.first(word, "athlete", word.text()) || !known) {
      return;
    }
    athletes.add(word.text());
    builder.athlete(word.text());
    Athlete athlete = tables.athletes().made().get(word.text());
    if (athlete != null && from.isPresent() && from.get().value().isBefore(athlete.born())) {
      diagnostics.error(
          word,
          "value.date-order",
          "date",
          from.get().value(),
          "what",
          Terms.of("date-first-day"),
          "other",
          athlete.born(),
          "otherWhat",
          Terms.of("date-of-birth-of", "athlete", word.text()));
    }
  }

  private void ruleSet(Word word) {
    boolean known = tables.ruleSets().declares(diagnostics, word);
    ruleSets.add(word.text());
    if (once.first(word, "rule-set", word.text()) && known) {
      builder.rules(word.text());
    }
  }

  /** Returns the check of waivers, which runs once all rule sets of the plan are known. */
  private WaiverCheck waivers() {
    WaiverCheck known = waivers;
    if (known == null) {
      known =
          new WaiverCheck(diagnostics, blockItems, rules(), Damage.in(declaration, tables.meter()));
      waivers = known;
    }
    return known;
  }

  /** Returns the rules that a waiver can name; empty if some of them may be missing. */
  private Optional<Set<String>> rules() {
    return declaration.damaged() && ruleSets.isEmpty()
        ? Optional.empty()
        : tables.rulesOf(ruleSets);
  }

  private void requireParts() {
    if (!blockItems.isEmpty()) {
      once.seen(declaration, "block");
    }
    once.require(declaration.name(), "plan", declaration.damaged(), "for", "from", "block");
  }

  private boolean tooManyAthletes() {
    return athletes.size() > PlanSize.most(tables.budget(), Limit.ATHLETES);
  }

  private void extent() {
    PlanSize size = PlanSize.of(athletes.size(), blocks, retests);
    bound(Terms.of("many-athletes"), size.athletes(), Limit.ATHLETES);
    bound(Terms.of("many-weeks"), size.weeks(), Limit.WEEKS);
    bound(Terms.of("many-sessions-of-a-week"), size.weekly(), Limit.WEEKLY);
    if (diagnostics.sound()) {
      bound(Terms.of("many-holds-and-rests"), size.holds(), Limit.HOLDS);
    }
    if (diagnostics.sound()) {
      bound(Terms.of("many-sessions"), size.sessions(), Limit.SESSIONS);
    }
  }

  private void bound(Message what, long found, Limit limit) {
    long most = PlanSize.most(tables.budget(), limit);
    if (found > most) {
      diagnostics.error(
          declaration.name(), "value.too-many", "what", what, "found", found, "limit", most);
    }
  }
}
