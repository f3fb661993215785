package gripwright.season;

import gripwright.athlete.Athlete;
import gripwright.log.Log;
import gripwright.plan.Block;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.protocol.Protocol;
import gripwright.protocol.StandardProtocols;
import gripwright.rule.RuleSet;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Everything that is known of a season: plans, athletes, logs and rule sets. The one way to dated
 * sessions, for plans that were read from text and for plans built in Java. Immutable; compiling is
 * a function of it, and the same season gives the same result.
 */
public final class Season {

  private final SortedMap<String, Plan> plans;
  private final SortedMap<String, Athlete> athletes;
  private final SortedMap<String, Log> logs;
  private final SortedMap<String, RuleSet> ruleSets;
  private final SortedMap<String, Protocol> protocols;
  private final boolean mistakesLeftOut;

  private Season(
      SortedMap<String, Plan> plans,
      SortedMap<String, Athlete> athletes,
      SortedMap<String, Log> logs,
      SortedMap<String, RuleSet> ruleSets,
      SortedMap<String, Protocol> protocols,
      boolean mistakesLeftOut) {
    this.plans = plans;
    this.athletes = athletes;
    this.logs = logs;
    this.ruleSets = ruleSets;
    this.protocols = protocols;
    this.mistakesLeftOut = mistakesLeftOut;
  }

  /**
   * Returns a season. Protocols for logged work that no week's plan has are those of the catalogue
   * and of the plans.
   *
   * @param plans plans, each name once
   * @param athletes athletes, each name once
   * @param logs what is known of them; logs of one athlete are taken together
   * @param ruleSets rule sets that plans name, each name once; the built-in rules always hold
   * @throws IllegalArgumentException if a name occurs twice, or a log is of none of the athletes
   */
  public static Season of(
      Collection<Plan> plans,
      Collection<Athlete> athletes,
      Collection<Log> logs,
      Collection<RuleSet> ruleSets) {
    SortedMap<String, Athlete> byName = byName("athlete", athletes, Athlete::name);
    SortedMap<String, Protocol> protocols = new TreeMap<>();
    StandardProtocols.all().forEach(protocol -> protocols.put(protocol.name(), protocol));
    plans.forEach(plan -> gather(plan, protocols));
    return new Season(
        byName("plan", plans, Plan::name),
        byName,
        together(logs, byName),
        byName("rule set", ruleSets, RuleSet::name),
        protocols,
        false);
  }

  /**
   * Adds the protocols of a plan. Of several with one name the last counts, so that the plan is
   * gone through from its end; what athletes share is looked at once.
   */
  private static void gather(Plan plan, Map<String, Protocol> protocols) {
    Map<String, Protocol> last = new HashMap<>();
    Set<SessionPlan.Content> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    for (String athlete : reversed(plan.athletes())) {
      for (Block block : reversed(plan.blocks())) {
        for (SessionPlan session : reversed(block.contentFor(athlete).sessions())) {
          SessionPlan.Content content = session.contentFor(athlete);
          if (seen.add(content)) {
            reversed(content.exercises())
                .forEach(e -> last.putIfAbsent(e.protocol().name(), e.protocol()));
          }
        }
      }
    }
    protocols.putAll(last);
  }

  private static <T> List<T> reversed(List<T> list) {
    List<T> reversed = new ArrayList<>(list);
    Collections.reverse(reversed);
    return reversed;
  }

  private static <T> SortedMap<String, T> byName(
      String what, Collection<T> all, Function<T, String> name) {
    SortedMap<String, T> byName = new TreeMap<>();
    for (T each : all) {
      if (byName.put(name.apply(each), each) != null) {
        throw new IllegalArgumentException("two of one name: " + what + " " + name.apply(each));
      }
    }
    return byName;
  }

  private static SortedMap<String, Log> together(
      Collection<Log> logs, SortedMap<String, Athlete> athletes) {
    SortedMap<String, Log> together = new TreeMap<>();
    for (Log log : logs) {
      if (!athletes.containsKey(log.athlete())) {
        throw new IllegalArgumentException(
            "a log of " + log.athlete() + ", who is none of " + athletes.keySet());
      }
      together.merge(log.athlete(), log, Log::and);
    }
    return together;
  }

  /**
   * Returns this season with other protocols for logged work that no week's plan has.
   *
   * @param all all protocols that a log may name
   */
  public Season withProtocols(Collection<Protocol> all) {
    return new Season(
        plans, athletes, logs, ruleSets, byName("protocol", all, Protocol::name), mistakesLeftOut);
  }

  /**
   * Returns this season with more of what is known, such as logs from a database.
   *
   * @throws IllegalArgumentException if a log is of none of the athletes
   */
  public Season withLogs(Collection<Log> more) {
    List<Log> all = new ArrayList<>(logs.values());
    all.addAll(more);
    return new Season(
        plans, athletes, together(all, athletes), ruleSets, protocols, mistakesLeftOut);
  }

  /**
   * Returns this season where declarations with mistakes were left out, which are reported already:
   * an athlete or a rule set that is missing is not reported again.
   */
  public Season withMistakesLeftOut() {
    return new Season(plans, athletes, logs, ruleSets, protocols, true);
  }

  /** Compiles every plan for each of its athletes. */
  public CompiledSeason compile() {
    return compile(SeasonOptions.standard());
  }

  /**
   * Compiles plans for each of their athletes, within the budget of the options.
   *
   * <p>Before anything is planned, the plans are measured: one that is larger than one plan may be
   * is left out, and from the first on that is too much together with those before it, all are.
   * Where the budget is used up later, or the compile is cancelled, it stops: what was compiled
   * until then is kept, plan by plan and athlete by athlete; the one that was being compiled is
   * left out, and so are those after it. Each is one finding, an error, so that the season is not
   * usable.
   *
   * @throws IllegalArgumentException if the options name a plan that is not there
   */
  public CompiledSeason compile(SeasonOptions options) {
    Collection<Plan> chosen = options.plan().map(this::named).orElse(plans.values());
    return new SeasonRun(this, chosen, options.budget().meter()).compile();
  }

  private Collection<Plan> named(String name) {
    Plan plan = plans.get(name);
    if (plan == null) {
      throw new IllegalArgumentException(
          "no plan " + name + " among " + String.join(", ", plans.keySet()));
    }
    return List.of(plan);
  }

  Log log(String athlete) {
    return logs.getOrDefault(athlete, Log.empty(athlete));
  }

  /** Returns the plans that an athlete has a part in. */
  List<Plan> plansFor(String athlete) {
    return plans.values().stream().filter(p -> p.athletes().contains(athlete)).toList();
  }

  Optional<Athlete> athlete(String name) {
    return Optional.ofNullable(athletes.get(name));
  }

  List<RuleSet> ruleSets() {
    return List.copyOf(ruleSets.values());
  }

  /** Tells whether a season has all rule sets of a plan. */
  boolean hasRuleSetsOf(Plan plan) {
    return ruleSets.keySet().containsAll(plan.ruleSets());
  }

  SortedMap<String, Protocol> protocols() {
    return protocols;
  }

  /** Tells whether declarations with mistakes were left out. */
  boolean mistakesLeftOut() {
    return mistakesLeftOut;
  }
}
