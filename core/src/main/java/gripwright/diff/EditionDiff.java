package gripwright.diff;

import gripwright.diff.Redefinition.Kind;
import gripwright.diff.Redefinition.State;
import gripwright.finding.ReportedFinding;
import gripwright.grip.Grip;
import gripwright.rule.Rule;
import gripwright.rule.RuleSet;
import gripwright.season.CompiledPlan;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The changes in meaning from one edition to another. White space, comments, the order of
 * declarations, and the file of a declaration do not matter. Immutable.
 */
public final class EditionDiff {

  private static final Pattern FOR_ATHLETE =
      Pattern.compile("(?:^|/ )(?:for|athlete|log) ([^ /]+)");

  /** The components; lists are copied. */
  private record Parts(
      List<Redefinition> definitions,
      List<FactChange> facts,
      List<CompiledPlan> added,
      List<CompiledPlan> dropped,
      List<PlanDiff> plans,
      List<ReportedFinding> findingsNew,
      List<ReportedFinding> findingsGone) {
    Parts {
      definitions = List.copyOf(definitions);
      facts = List.copyOf(facts);
      added = List.copyOf(added);
      dropped = List.copyOf(dropped);
      plans = List.copyOf(plans);
      findingsNew = List.copyOf(findingsNew);
      findingsGone = List.copyOf(findingsGone);
    }
  }

  private final Parts parts;

  private EditionDiff(Parts parts) {
    this.parts = parts;
  }

  /** Returns a builder for differences; there are none unless set. */
  public static Builder builder() {
    return new Builder();
  }

  /** Returns a builder with these components. */
  public Builder toBuilder() {
    return new Builder(parts);
  }

  /** Returns the declarations that were added, removed or changed, by kind and name. */
  public List<Redefinition> definitions() {
    return parts.definitions;
  }

  /** Returns the changed data of athletes, by athlete. */
  public List<FactChange> facts() {
    return parts.facts;
  }

  /** Returns the added plans. */
  public List<CompiledPlan> added() {
    return parts.added;
  }

  /** Returns the removed plans. */
  public List<CompiledPlan> dropped() {
    return parts.dropped;
  }

  /** Returns the changed plans, by name and athlete. */
  public List<PlanDiff> plans() {
    return parts.plans;
  }

  /** Returns the findings of the later edition only. */
  public List<ReportedFinding> findingsNew() {
    return parts.findingsNew;
  }

  /** Returns the findings of the earlier edition only. */
  public List<ReportedFinding> findingsGone() {
    return parts.findingsGone;
  }

  /**
   * Compares two editions. Plans are paired by name and athlete. What is missing from an edition
   * that is not {@linkplain Edition#whole() complete} is not reported as added or removed.
   */
  public static EditionDiff between(Edition before, Edition after) {
    List<Redefinition> definitions = definitions(before, after);
    boolean redefined =
        definitions.stream().anyMatch(d -> d.kind() == Kind.GRIP || d.kind() == Kind.PROTOCOL);
    List<CompiledPlan> added = new ArrayList<>();
    List<CompiledPlan> dropped = new ArrayList<>();
    List<PlanDiff> plans = new ArrayList<>();
    Map<String, List<CompiledPlan>> olds = byName(before);
    Map<String, List<CompiledPlan>> news = byName(after);
    for (String key : both(olds, news)) {
      List<CompiledPlan> was = olds.getOrDefault(key, List.of());
      List<CompiledPlan> is = news.getOrDefault(key, List.of());
      int pairs = Math.min(was.size(), is.size());
      for (int i = 0; i < pairs; i++) {
        PlanDiff diff = PlanDiff.between(was.get(i), is.get(i), redefined);
        if (!diff.isEmpty()) {
          plans.add(diff);
        }
      }
      if (before.whole() && after.whole()) {
        dropped.addAll(was.subList(pairs, was.size()));
        added.addAll(is.subList(pairs, is.size()));
      }
    }
    return new EditionDiff(
        new Parts(
            definitions,
            AthleteFacts.changes(before, after),
            added,
            dropped,
            plans,
            FindingPairs.without(after.findings(), before.findings()),
            FindingPairs.without(before.findings(), after.findings())));
  }

  /** Returns whether nothing changed in meaning. */
  public boolean isEmpty() {
    return parts.definitions.isEmpty()
        && parts.facts.isEmpty()
        && parts.added.isEmpty()
        && parts.dropped.isEmpty()
        && parts.plans.isEmpty()
        && parts.findingsNew.isEmpty()
        && parts.findingsGone.isEmpty();
  }

  /** Returns the part of this about one plan, including its athletes and findings. */
  public EditionDiff ofPlan(String name) {
    String place = "plan " + name;
    Set<String> athletes = new HashSet<>();
    Stream.of(parts.added, parts.dropped, parts.plans.stream().map(PlanDiff::after).toList())
        .flatMap(List::stream)
        .filter(p -> p.plan().name().equals(name))
        .forEach(p -> athletes.addAll(p.plan().athletes()));
    return only(
        fact -> athletes.contains(fact.athlete()),
        plan -> plan.plan().name().equals(name),
        finding -> {
          String at = Objects.requireNonNullElse(finding.place(), "");
          return at.equals(place) || at.startsWith(place + " /");
        });
  }

  /** Returns the part of this about one athlete, including findings without an athlete. */
  public EditionDiff ofAthlete(String name) {
    return only(
        fact -> fact.athlete().equals(name),
        plan -> plan.athlete().name().equals(name),
        finding ->
            FOR_ATHLETE
                .matcher(Objects.requireNonNullElse(finding.place(), ""))
                .results()
                .allMatch(of -> of.group(1).equals(name)));
  }

  private EditionDiff only(
      Predicate<FactChange> ofFact,
      Predicate<CompiledPlan> ofPlan,
      Predicate<ReportedFinding> ofFinding) {
    return new EditionDiff(
        new Parts(
            parts.definitions,
            parts.facts.stream().filter(ofFact).toList(),
            parts.added.stream().filter(ofPlan).toList(),
            parts.dropped.stream().filter(ofPlan).toList(),
            parts.plans.stream().filter(p -> ofPlan.test(p.after())).toList(),
            parts.findingsNew.stream().filter(ofFinding).toList(),
            parts.findingsGone.stream().filter(ofFinding).toList()));
  }

  private static SortedMap<String, List<CompiledPlan>> byName(Edition edition) {
    SortedMap<String, List<CompiledPlan>> byName = new TreeMap<>();
    edition
        .plans()
        .forEach(
            p ->
                byName
                    .computeIfAbsent(
                        p.plan().name() + " " + p.athlete().name(), k -> new ArrayList<>())
                    .add(p));
    return byName;
  }

  private static SortedSet<String> both(Map<String, ?> one, Map<String, ?> other) {
    SortedSet<String> names = new TreeSet<>(one.keySet());
    names.addAll(other.keySet());
    return names;
  }

  private static List<Redefinition> definitions(Edition before, Edition after) {
    boolean whole = before.whole() && after.whole();
    List<Redefinition> all = new ArrayList<>();
    all.addAll(compared(Kind.ATHLETE, before.athletes(), after.athletes(), whole, a -> a.name()));
    all.addAll(compared(Kind.GRIP, before.grips(), after.grips(), whole, EditionDiff::meaning));
    all.addAll(compared(Kind.PROTOCOL, before.protocols(), after.protocols(), whole, p -> p));
    all.addAll(rules(before, after, whole));
    all.addAll(compared(Kind.COHORT, before.cohorts(), after.cohorts(), whole, c -> c));
    all.addAll(compared(Kind.COMPARISON, before.comparisons(), after.comparisons(), whole, c -> c));
    return all;
  }

  /**
   * Returns a grip's data without the written order of cautions and bands, which doesn't matter.
   */
  private static Object meaning(Grip grip) {
    return List.of(
        grip.title(),
        grip.family(),
        grip.fingers(),
        grip.bands(),
        grip.needs(),
        Set.copyOf(grip.cautions()));
  }

  private static <T> List<Redefinition> compared(
      Kind kind,
      SortedMap<String, Set<T>> before,
      SortedMap<String, Set<T>> after,
      boolean whole,
      Function<? super T, Object> meaning) {
    List<Redefinition> found = new ArrayList<>();
    for (String name : both(before, after)) {
      Set<Object> was = new HashSet<>();
      before.getOrDefault(name, Set.of()).forEach(d -> was.add(meaning.apply(d)));
      Set<Object> is = new HashSet<>();
      after.getOrDefault(name, Set.of()).forEach(d -> is.add(meaning.apply(d)));
      State state = was.isEmpty() ? State.NEW : is.isEmpty() ? State.GONE : State.CHANGED;
      if (!was.equals(is) && (whole || state == State.CHANGED)) {
        found.add(new Redefinition(kind, name, state));
      }
    }
    return found;
  }

  /** Returns the changes of rules; for a rule set in both editions, each rule is listed. */
  private static List<Redefinition> rules(Edition before, Edition after, boolean whole) {
    List<Redefinition> found = new ArrayList<>();
    for (Redefinition set :
        compared(
            Kind.RULES,
            before.ruleSets(),
            after.ruleSets(),
            whole,
            rules -> List.of(rules.title(), Set.copyOf(rules.rules())))) {
      List<Redefinition> each =
          set.state() == State.CHANGED
              ? compared(
                  Kind.RULE,
                  byRule(before.ruleSets().getOrDefault(set.name(), Set.of())),
                  byRule(after.ruleSets().getOrDefault(set.name(), Set.of())),
                  whole,
                  rule -> rule)
              : List.of();
      found.addAll(each.isEmpty() ? List.of(set) : each);
    }
    return found;
  }

  private static SortedMap<String, Set<Rule>> byRule(Set<RuleSet> sets) {
    Map<String, Set<Rule>> rules = new LinkedHashMap<>();
    sets.forEach(
        set ->
            set.rules().forEach(r -> rules.computeIfAbsent(r.name(), k -> new HashSet<>()).add(r)));
    return new TreeMap<>(rules);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof EditionDiff that && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return "EditionDiff" + parts.toString().substring("Parts".length());
  }

  /** Collects the components. Not thread-safe. */
  public static final class Builder {
    private List<Redefinition> definitions = List.of();
    private List<FactChange> facts = List.of();
    private List<CompiledPlan> added = List.of();
    private List<CompiledPlan> dropped = List.of();
    private List<PlanDiff> plans = List.of();
    private List<ReportedFinding> findingsNew = List.of();
    private List<ReportedFinding> findingsGone = List.of();

    private Builder() {}

    private Builder(Parts copied) {
      definitions = copied.definitions;
      facts = copied.facts;
      added = copied.added;
      dropped = copied.dropped;
      plans = copied.plans;
      findingsNew = copied.findingsNew;
      findingsGone = copied.findingsGone;
    }

    /** Sets the declarations that were added, removed or changed, by kind and name. */
    public Builder definitions(List<Redefinition> value) {
      Objects.requireNonNull(value, "value");
      definitions = List.copyOf(value);
      return this;
    }

    /** Sets the changed data of athletes, by athlete. */
    public Builder facts(List<FactChange> value) {
      Objects.requireNonNull(value, "value");
      facts = List.copyOf(value);
      return this;
    }

    /** Sets the added plans. */
    public Builder added(List<CompiledPlan> value) {
      Objects.requireNonNull(value, "value");
      added = List.copyOf(value);
      return this;
    }

    /** Sets the removed plans. */
    public Builder dropped(List<CompiledPlan> value) {
      Objects.requireNonNull(value, "value");
      dropped = List.copyOf(value);
      return this;
    }

    /** Sets the changed plans, by name and athlete. */
    public Builder plans(List<PlanDiff> value) {
      Objects.requireNonNull(value, "value");
      plans = List.copyOf(value);
      return this;
    }

    /** Sets the findings of the later edition only. */
    public Builder findingsNew(List<ReportedFinding> value) {
      Objects.requireNonNull(value, "value");
      findingsNew = List.copyOf(value);
      return this;
    }

    /** Sets the findings of the earlier edition only. */
    public Builder findingsGone(List<ReportedFinding> value) {
      Objects.requireNonNull(value, "value");
      findingsGone = List.copyOf(value);
      return this;
    }

    /** Returns the differences. */
    public EditionDiff build() {
      return new EditionDiff(
          new Parts(definitions, facts, added, dropped, plans, findingsNew, findingsGone));
    }
  }
}
