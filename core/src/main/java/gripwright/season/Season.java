package gripwright.season;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.protocol.Protocol;
import gripwright.protocol.StandardProtocols;
import gripwright.rule.RuleCheck;
import gripwright.rule.RuleSet;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Everything that is known of a season: plans, athletes, logs and rule sets. The one way to dated
 * sessions, for plans that were read from text and for plans built in Java. Immutable; compiling is
 * a function of it, and the same season gives the same result.
 */
public final class Season {

  /** Mean nothing where a rule set or an athlete is left out for a mistake in it. */
  private static final Set<String> NEEDS_ALL = Set.of("plan.waiver-unused", "name.unknown");

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
    for (Plan plan : plans) {
      for (String athlete : plan.athletes()) {
        plan.blocks().stream()
            .flatMap(block -> protocols(block, athlete).stream())
            .forEach(protocol -> protocols.put(protocol.name(), protocol));
      }
    }
    return new Season(
        byName("plan", plans, Plan::name),
        byName,
        together(logs, byName),
        byName("rule set", ruleSets, RuleSet::name),
        protocols,
        false);
  }

  private static List<Protocol> protocols(Block block, String athlete) {
    return block.contentFor(athlete).sessions().stream()
        .flatMap(session -> session.contentFor(athlete).exercises().stream())
        .map(Exercise::protocol)
        .toList();
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
      together.merge(log.athlete(), log, Season::both);
    }
    return together;
  }

  private static Log both(Log one, Log other) {
    List<LogEntry> entries = new ArrayList<>(one.entries());
    entries.addAll(other.entries());
    return new Log(one.athlete(), entries);
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
   * Compiles plans for each of their athletes.
   *
   * @throws IllegalArgumentException if the options name a plan that is not there
   */
  public CompiledSeason compile(SeasonOptions options) {
    Collection<Plan> chosen = options.plan().map(this::named).orElse(plans.values());
    List<CompiledPlan> compiled = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    Set<String> seen = new LinkedHashSet<>();
    for (Plan plan : chosen) {
      List<CompiledPlan> ofPlan = new ArrayList<>();
      for (String name : plan.athletes().stream().sorted().toList()) {
        Athlete athlete = athletes.get(name);
        if (athlete == null) {
          unknown(plan, name).ifPresent(findings::add);
          continue;
        }
        Log log = log(name);
        ofPlan.add(
            PlanCompiler.compile(plan, athlete, log, List.copyOf(ruleSets.values()), protocols));
        if (seen.add(name)) {
          findings.addAll(OddTests.likely(athlete, log));
        }
      }
      List<CompiledPlan> together = acrossAthletes(ofPlan);
      compiled.addAll(together);
      boolean allKnown =
          !mistakesLeftOut
              || (ofPlan.size() == plan.athletes().size()
                  && ruleSets.keySet().containsAll(plan.ruleSets()));
      together.stream()
          .flatMap(result -> result.findings().stream())
          .filter(finding -> allKnown || !NEEDS_ALL.contains(finding.code()))
          .forEach(findings::add);
    }
    seen.forEach(athlete -> findings.addAll(unknownNames(athlete, compiled)));
    return new CompiledSeason(compiled, findings);
  }

  private Collection<Plan> named(String name) {
    Plan plan = plans.get(name);
    if (plan == null) {
      throw new IllegalArgumentException(
          "no plan " + name + " among " + String.join(", ", plans.keySet()));
    }
    return List.of(plan);
  }

  private Log log(String athlete) {
    return logs.getOrDefault(athlete, Log.empty(athlete));
  }

  private Optional<Finding> unknown(Plan plan, String athlete) {
    return mistakesLeftOut
        ? Optional.empty()
        : Optional.of(
            Finding.error("name.unknown", plan.path())
                .with("kind", "athlete")
                .with("name", athlete));
  }

  /** Reports logged sessions that no plan has, where no plan has reported them. */
  private List<Finding> unknownNames(String athlete, List<CompiledPlan> compiled) {
    Set<String> reported = new HashSet<>();
    compiled.stream()
        .filter(plan -> plan.athlete().name().equals(athlete))
        .flatMap(plan -> plan.findings().stream())
        .filter(finding -> finding.code().equals("plan.session-unplanned"))
        .forEach(finding -> reported.add(String.valueOf(finding.arguments().get("session"))));
    List<Plan> own = plans.values().stream().filter(p -> p.athletes().contains(athlete)).toList();
    return LoggedNames.unknown(log(athlete), own, reported);
  }

  /**
   * Returns the results of one plan for its several athletes without what only seems wrong with its
   * waivers: one that waives something for any athlete is not unused, and what is wrong with a
   * waiver itself is reported once, with the first athlete.
   */
  static List<CompiledPlan> acrossAthletes(List<CompiledPlan> ofOnePlan) {
    Set<Finding> everywhere = new HashSet<>();
    for (int i = 0; i < ofOnePlan.size(); i++) {
      Set<Finding> here = aboutWaivers(ofOnePlan.get(i));
      if (i == 0) {
        everywhere.addAll(here);
      } else {
        everywhere.retainAll(here);
      }
    }
    List<CompiledPlan> all = new ArrayList<>();
    for (CompiledPlan compiled : ofOnePlan) {
      boolean first = all.isEmpty();
      all.add(
          compiled.withFindings(
              compiled.findings().stream()
                  .filter(f -> !RuleCheck.isAboutWaiver(f) || (first && everywhere.contains(f)))
                  .toList()));
    }
    return all;
  }

  private static Set<Finding> aboutWaivers(CompiledPlan plan) {
    return plan.findings().stream()
        .filter(RuleCheck::isAboutWaiver)
        .collect(Collectors.toUnmodifiableSet());
  }
}
