package gripwright.season;

import gripwright.athlete.Athlete;
import gripwright.grip.Grip;
import gripwright.log.Log;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.plan.SessionPlan;
import gripwright.protocol.Protocol;
import gripwright.protocol.StandardProtocols;
import gripwright.rule.RuleSet;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A season: plans, athletes, logs and rule sets. Dated sessions are compiled from it, both for
 * plans read from text and for plans built in Java. Immutable; the same season gives the same
 * result.
 */
public final class Season {

  private final SortedMap<String, Plan> plans;
  private final SortedMap<String, Athlete> athletes;
  private final SortedMap<String, Log> logs;
  private final SortedMap<String, RuleSet> ruleSets;
  private final Definitions definitions;
  private final boolean mistakesLeftOut;

  /**
   * Definitions other than plans.
   *
   * @param protocols by name
   * @param grips in the order of their names
   */
  private record Definitions(SortedMap<String, Protocol> protocols, List<Grip> grips) {
    Definitions {
      grips = grips.stream().distinct().sorted(Comparator.comparing(Grip::name)).toList();
    }
  }

  private Season(
      SortedMap<String, Plan> plans,
      SortedMap<String, Athlete> athletes,
      SortedMap<String, Log> logs,
      SortedMap<String, RuleSet> ruleSets,
      Definitions definitions,
      boolean mistakesLeftOut) {
    this.plans = plans;
    this.athletes = athletes;
    this.logs = logs;
    this.ruleSets = ruleSets;
    this.definitions = definitions;
    this.mistakesLeftOut = mistakesLeftOut;
  }

  /**
   * Returns the season of one plan for one athlete, with the built-in rules alone.
   *
   * @throws IllegalArgumentException if the log is not the athlete's
   */
  public static Season of(Plan plan, Athlete athlete, Log log) {
    return of(List.of(plan), List.of(athlete), List.of(log), List.of());
  }

  /**
   * Returns a season. Protocols for unplanned logged work are those of the catalogue and of the
   * plans.
   *
   * @param plans plans, each name once
   * @param athletes athletes, each name once
   * @param logs logs of the athletes; logs of one athlete are merged
   * @param ruleSets rule sets that plans name, each name once; the built-in rules always apply
   * @throws IllegalArgumentException if a name occurs twice, or a log belongs to none of the
   *     athletes
   */
  public static Season of(
      Collection<Plan> plans,
      Collection<Athlete> athletes,
      Collection<Log> logs,
      Collection<RuleSet> ruleSets) {
    SortedMap<String, Athlete> byName = byName("athlete", athletes, Athlete::name);
    SortedMap<String, Protocol> protocols = new TreeMap<>();
    StandardProtocols.all().forEach(protocol -> protocols.put(protocol.name(), protocol));
    List<Grip> grips = new ArrayList<>();
    plans.forEach(plan -> gather(plan, protocols, grips));
    return new Season(
        byName("plan", plans, Plan::name),
        byName,
        together(logs, byName),
        byName("rule set", ruleSets, RuleSet::name),
        new Definitions(protocols, grips),
        false);
  }

  /**
   * Adds the protocols and the grips of a plan. Of several protocols with one name the last counts,
   * so the plan is processed from its end; content shared by athletes is processed once.
   */
  private static void gather(Plan plan, Map<String, Protocol> protocols, List<Grip> grips) {
    Map<String, Protocol> last = new HashMap<>();
    Set<Grip> own = new HashSet<>();
    Set<SessionPlan.Content> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    for (PlannedTest test : reversed(plan.retests())) {
      for (Exercise exercise : reversed(test.exercises())) {
        last.putIfAbsent(exercise.protocol().name(), exercise.protocol());
        own.addAll(exercise.target().grips());
      }
    }
    for (String athlete : reversed(plan.athletes())) {
      for (Block block : reversed(plan.blocks())) {
        for (SessionPlan session : reversed(block.contentFor(athlete).sessions())) {
          SessionPlan.Content content = session.contentFor(athlete);
          if (seen.add(content)) {
            for (Exercise exercise : reversed(content.exercises())) {
              last.putIfAbsent(exercise.protocol().name(), exercise.protocol());
              own.addAll(exercise.target().grips());
            }
          }
        }
      }
    }
    protocols.putAll(last);
    grips.addAll(own);
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
   * Returns this season with other protocols for unplanned logged work.
   *
   * @param all all protocols that a log may name
   */
  public Season withProtocols(Collection<Protocol> all) {
    return with(new Definitions(byName("protocol", all, Protocol::name), definitions.grips()));
  }

  /**
   * Returns this season with more grips to check like those of the plans: grips that are only
   * logged, or defined but not used.
   */
  public Season withGrips(Collection<Grip> more) {
    return with(
        new Definitions(
            definitions.protocols(),
            Stream.concat(definitions.grips().stream(), more.stream()).toList()));
  }

  private Season with(Definitions other) {
    return new Season(plans, athletes, logs, ruleSets, other, mistakesLeftOut);
  }

  /**
   * Returns this season with further logs, for example from a database.
   *
   * @throws IllegalArgumentException if a log belongs to none of the athletes
   */
  public Season withLogs(Collection<Log> more) {
    List<Log> all = new ArrayList<>(logs.values());
    all.addAll(more);
    return new Season(
        plans, athletes, together(all, athletes), ruleSets, definitions, mistakesLeftOut);
  }

  /**
   * Returns this season marked as having declarations left out because of reported mistakes: a
   * missing athlete or rule set is not reported again.
   */
  public Season withMistakesLeftOut() {
    return new Season(plans, athletes, logs, ruleSets, definitions, true);
  }

  /** Compiles every plan for each of its athletes. */
  public CompiledSeason compile() {
    return compile(SeasonOptions.standard());
  }

  /**
   * Compiles plans for each of their athletes, within the budget of the options.
   *
   * <p>The sizes of plans are checked first: a plan that is too large by itself is left out, and so
   * are all plans from the first one on that exceeds the budget together with those before it. If
   * the budget is used up later, or the compile is cancelled, it stops: everything compiled until
   * then is kept, by plan and athlete; the current one and those after it are left out. Each case
   * is one error, so that the season is not usable.
   *
   * @throws IllegalArgumentException if the options name an unknown plan
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

  /** Returns the plans for an athlete. */
  List<Plan> plansFor(String athlete) {
    return plans.values().stream().filter(p -> p.athletes().contains(athlete)).toList();
  }

  Collection<Plan> plans() {
    return plans.values();
  }

  /** Returns the names of athletes without a plan. */
  List<String> athletesWithoutPlan() {
    return athletes.keySet().stream().filter(name -> plansFor(name).isEmpty()).toList();
  }

  Optional<Athlete> athlete(String name) {
    return Optional.ofNullable(athletes.get(name));
  }

  List<RuleSet> ruleSets() {
    return List.copyOf(ruleSets.values());
  }

  /** Returns whether the season has all rule sets of a plan. */
  boolean hasRuleSetsOf(Plan plan) {
    return ruleSets.keySet().containsAll(plan.ruleSets());
  }

  SortedMap<String, Protocol> protocols() {
    return definitions.protocols();
  }

  /** Returns the grips of the plans and other defined grips, in order of names. */
  List<Grip> grips() {
    return definitions.grips();
  }

  /** Returns whether declarations with mistakes were left out. */
  boolean mistakesLeftOut() {
    return mistakesLeftOut;
  }
}
