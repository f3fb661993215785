package gripwright.diff;

import gripwright.athlete.Athlete;
import gripwright.compare.Cohort;
import gripwright.compare.Comparison;
import gripwright.finding.ReportedFinding;
import gripwright.grip.Grip;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.protocol.Protocol;
import gripwright.rule.RuleSet;
import gripwright.season.CompiledPlan;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * One state of a coach's plans, to be compared with another by {@link EditionDiff}: declarations,
 * compiled plans and findings. Immutable.
 *
 * <p>Duplicates count once. Several things of one name and kind from unrelated files are kept side
 * by side.
 */
public final class Edition {

  private final SortedMap<String, Set<Athlete>> athletes;
  private final SortedMap<String, Set<LogEntry>> logs;
  private final SortedMap<String, Set<Grip>> grips;
  private final SortedMap<String, Set<Protocol>> protocols;
  private final SortedMap<String, Set<RuleSet>> ruleSets;
  private final SortedMap<String, Set<Cohort>> cohorts;
  private final SortedMap<String, Set<Comparison>> comparisons;
  private final List<CompiledPlan> plans;
  private final List<ReportedFinding> findings;
  private final boolean whole;

  private Edition(Builder from) {
    athletes = from.athletes;
    logs = from.logs;
    grips = from.grips;
    protocols = from.protocols;
    ruleSets = from.ruleSets;
    cohorts = from.cohorts;
    comparisons = from.comparisons;
    plans = List.copyOf(from.plans);
    findings = List.copyOf(from.findings);
    whole = from.whole;
  }

  /** Returns the compiled plans, in the order they were added. */
  public List<CompiledPlan> plans() {
    return plans;
  }

  /** Returns the findings, in the order added. */
  public List<ReportedFinding> findings() {
    return findings;
  }

  /** Returns whether the edition is complete, with nothing missing because of a mistake. */
  public boolean whole() {
    return whole;
  }

  SortedMap<String, Set<Athlete>> athletes() {
    return athletes;
  }

  SortedMap<String, Set<LogEntry>> logs() {
    return logs;
  }

  SortedMap<String, Set<Grip>> grips() {
    return grips;
  }

  SortedMap<String, Set<Protocol>> protocols() {
    return protocols;
  }

  SortedMap<String, Set<RuleSet>> ruleSets() {
    return ruleSets;
  }

  SortedMap<String, Set<Cohort>> cohorts() {
    return cohorts;
  }

  SortedMap<String, Set<Comparison>> comparisons() {
    return comparisons;
  }

  /** Returns a builder for an edition without content. */
  public static Builder builder() {
    return new Builder();
  }

  /** Collects the parts of an edition. Not thread-safe; build once. */
  public static final class Builder {
    private final SortedMap<String, Set<Athlete>> athletes = new TreeMap<>();
    private final SortedMap<String, Set<LogEntry>> logs = new TreeMap<>();
    private final SortedMap<String, Set<Grip>> grips = new TreeMap<>();
    private final SortedMap<String, Set<Protocol>> protocols = new TreeMap<>();
    private final SortedMap<String, Set<RuleSet>> ruleSets = new TreeMap<>();
    private final SortedMap<String, Set<Cohort>> cohorts = new TreeMap<>();
    private final SortedMap<String, Set<Comparison>> comparisons = new TreeMap<>();
    private final List<CompiledPlan> plans = new ArrayList<>();
    private final Set<ReportedFinding> findings = new LinkedHashSet<>();
    private boolean whole = true;

    private Builder() {}

    private static <T> void add(SortedMap<String, Set<T>> all, String name, T one) {
      all.computeIfAbsent(name, k -> new LinkedHashSet<>()).add(one);
    }

    /** Adds an athlete. */
    public Builder athlete(Athlete athlete) {
      add(athletes, athlete.name(), athlete);
      return this;
    }

    /** Adds the lines of a log. */
    public Builder log(Log log) {
      log.entries().forEach(entry -> add(logs, log.athlete(), entry));
      return this;
    }

    /** Adds a grip. */
    public Builder grip(Grip grip) {
      add(grips, grip.name(), grip);
      return this;
    }

    /** Adds a protocol. */
    public Builder protocol(Protocol protocol) {
      add(protocols, protocol.name(), protocol);
      return this;
    }

    /** Adds a rule set. */
    public Builder rules(RuleSet rules) {
      add(ruleSets, rules.name(), rules);
      return this;
    }

    /** Adds a cohort. */
    public Builder cohort(Cohort cohort) {
      add(cohorts, cohort.name(), cohort);
      return this;
    }

    /** Adds a comparison. */
    public Builder comparison(Comparison comparison) {
      add(comparisons, comparison.name(), comparison);
      return this;
    }

    /** Adds a compiled plan. */
    public Builder plan(CompiledPlan plan) {
      plans.add(plan);
      return this;
    }

    /** Adds a finding with its sentences. */
    public Builder finding(ReportedFinding finding) {
      findings.add(finding);
      return this;
    }

    /**
     * Marks the edition as incomplete because of a mistake; missing things are not reported as
     * removed.
     */
    public Builder incomplete() {
      whole = false;
      return this;
    }

    /** Returns the edition. */
    public Edition build() {
      return new Edition(this);
    }
  }
}
