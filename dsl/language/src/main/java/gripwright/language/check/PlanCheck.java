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
import gripwright.language.syntax.PlanItem;
import gripwright.language.syntax.Share;
import gripwright.language.syntax.Text;
import gripwright.language.syntax.Word;
import gripwright.plan.Block;
import gripwright.plan.Plan;
import gripwright.plan.PlanSize;
import java.time.Duration;
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
  private final Ledger ledger;
  private final Amounts amounts;
  private final Once once;
  private final Plan.Builder builder;
  private final Set<String> athletes = new TreeSet<>();
  private boolean athletesKnown;
  private final List<String> ruleSets = new ArrayList<>();
  private final List<PlanItem.BlockItem> blockItems;
  private final List<Block> blocks = new ArrayList<>();
  private final List<Plan.Retest> retests = new ArrayList<>();
  private @Nullable WaiverCheck waivers;

  private PlanCheck(
      Declared<Declaration.Plan> declared, Tables tables, List<LocatedFinding> findings) {
    this.declaration = declared.declaration();
    this.tables = tables;
    String name = declaration.name().text();
    this.ledger = new Ledger(declared, ModelPath.of("plan", name), findings);
    this.amounts = new Amounts(ledger);
    this.once = new Once(ledger);
    this.builder = Plan.named(name);
    this.blockItems =
        declaration.items().stream()
            .filter(PlanItem.BlockItem.class::isInstance)
            .map(PlanItem.BlockItem.class::cast)
            .toList();
  }

  /** Returns the plan, or nothing and findings. */
  static Optional<Plan> check(
      Declared<Declaration.Plan> declared, Tables tables, List<LocatedFinding> findings) {
    return new PlanCheck(declared, tables, findings).check();
  }

  private Optional<Plan> check() {
    Text title = declaration.title();
    if (title != null) {
      builder.title(title.value());
    }
    ledger.spoilIf(declaration.damaged());
    Optional<DateText> from = from();
    declaration.items().forEach(item -> header(item, from));
    Defaults defaults = Defaults.NONE.within(ledger, declaration.items());
    defaults.warmUp().ifPresent(builder::warmUp);
    defaults.restBetween().ifPresent(builder::restBetween);
    defaults.weights().ifPresent(builder::weights);
    PlanScope scope =
        new PlanScope(
            ledger, tables.grips(), tables.protocols(), athletes, athletesKnown, tables.budget());
    for (PlanItem.BlockItem block :
        tooManyAthletes() ? List.<PlanItem.BlockItem>of() : blockItems) {
      once.first(block.name(), "block", block.name().text());
      new BlockCheck(scope, Defaults.NONE).check(block).ifPresent(blocks::add);
    }
    declaration.items().forEach(this::footer);
    requireParts();
    extent();
    if (!ledger.sound()) {
      return Optional.empty();
    }
    blocks.forEach(builder::block);
    return Optional.of(builder.build());
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

  private void header(PlanItem item, Optional<DateText> from) {
    if (item instanceof PlanItem.ForItem list) {
      if (once.first(list, "for")) {
        athletesKnown = true;
        list.athletes().forEach(word -> athlete(word, from));
      }
    } else if (item instanceof PlanItem.Towards towards) {
      once.first(towards, "towards");
      Optional<LocalDate> day = amounts.date(towards.date());
      from.ifPresent(
          f ->
              amounts.inOrder(
                  f, Terms.of("date-first-day"), towards.date(), Terms.of("date-goal")));
      day.ifPresent(d -> builder.towards(new Plan.Goal(d, AthleteCheck.note(towards.goal()))));
    } else if (item instanceof PlanItem.TaperItem taper) {
      taper(taper);
    } else if (item instanceof PlanItem.Demand demand) {
      once.first(demand, "demand");
      demand(demand);
    } else if (item instanceof PlanItem.RulesItem rules) {
      rules.names().forEach(this::ruleSet);
    } else if (item instanceof PlanItem.WeeklyRise rise) {
      once.first(rise, "weekly-rise");
      amounts.base(rise.atMost(), Slot.WEEKLY_RISE).ifPresent(builder::weeklyRise);
    }
  }

  private void taper(PlanItem.TaperItem taper) {
    boolean first = once.first(taper, "taper");
    Optional<Integer> weeks = amounts.weeks(taper.length(), Slot.TAPER);
    Optional<Double> share = amounts.base(taper.share(), Slot.EASE);
    boolean towards = declaration.items().stream().anyMatch(PlanItem.Towards.class::isInstance);
    if (!towards && !declaration.damaged()) {
      ledger.error(
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

  private void athlete(Word word, Optional<DateText> from) {
    boolean known = tables.athletes().declares(ledger, word);
    athletesKnown &= known;
    if (!once.first(word, "athlete", word.text()) || !known) {
      return;
    }
    athletes.add(word.text());
    builder.athlete(word.text());
    Athlete athlete = tables.athletes().made().get(word.text());
    if (athlete != null && from.isPresent() && from.get().value().isBefore(athlete.born())) {
      ledger.error(
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
    boolean known = tables.ruleSets().declares(ledger, word);
    ruleSets.add(word.text());
    if (once.first(word, "rule-set", word.text()) && known) {
      builder.rules(word.text());
    }
  }

  private void demand(PlanItem.Demand demand) {
    boolean known = true;
    for (Share share : demand.shares()) {
      known &= tables.grips().find(ledger, share.name()).isPresent();
    }
    Optional<Map<String, Double>> fractions =
        new Shares(ledger).whole(demand, demand.shares(), "demand", "grip");
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

  private void footer(PlanItem item) {
    if (item instanceof PlanItem.RetestItem retest) {
      retest(retest);
    } else if (item instanceof PlanItem.WaiveItem waive) {
      waivers().check(waive).ifPresent(builder::waive);
    }
  }

  /** Returns the check of waivers, which is made when all rule sets of the plan are known. */
  private WaiverCheck waivers() {
    WaiverCheck known = waivers;
    if (known == null) {
      known = new WaiverCheck(ledger, blockItems, rules(), Damage.in(declaration, tables.meter()));
      waivers = known;
    }
    return known;
  }

  /** Returns the rules that a waiver can name; nothing if some of them may be missing. */
  private Optional<Set<String>> rules() {
    return declaration.damaged() && ruleSets.isEmpty()
        ? Optional.empty()
        : tables.rulesOf(ruleSets);
  }

  private void retest(PlanItem.RetestItem retest) {
    Optional<SetupCheck.Place> place = SetupCheck.check(ledger, retest.setup());
    Optional<Duration> hold = amounts.time(retest.hold(), Slot.HOLD);
    Optional<Integer> every = amounts.weeks(retest.every(), Slot.RETEST);
    ledger.distinct(retest.grips(), "grip");
    List<gripwright.grip.Setup> setups = new ArrayList<>();
    for (Word word : retest.grips()) {
      Optional<Grip> grip = tables.grips().find(ledger, word);
      if (grip.isPresent() && place.isPresent()) {
        setups.add(place.get().with(grip.get()));
      }
    }
    if (ledger.sound() && hold.isPresent() && every.isPresent() && !setups.isEmpty()) {
      Plan.Retest made = new Plan.Retest(setups, hold.get(), every.get());
      retests.add(made);
      builder.retest(made);
    }
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
    if (ledger.sound()) {
      bound(Terms.of("many-holds-and-rests"), size.holds(), Limit.HOLDS);
    }
    if (ledger.sound()) {
      bound(Terms.of("many-sessions"), size.sessions(), Limit.SESSIONS);
    }
  }

  private void bound(Message what, long found, Limit limit) {
    long most = PlanSize.most(tables.budget(), limit);
    if (found > most) {
      ledger.error(
          declaration.name(), "value.too-many", "what", what, "found", found, "limit", most);
    }
  }
}
