package gripwright.language.build;

import gripwright.athlete.Athlete;
import gripwright.compare.Cohort;
import gripwright.compare.Comparison;
import gripwright.grip.Grip;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.source.SourceFile;
import gripwright.log.Log;
import gripwright.plan.Plan;
import gripwright.protocol.Protocol;
import gripwright.rule.RuleSet;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Everything a project declares as core objects, with its places in the text. Immutable.
 *
 * @param athletes athletes by name
 * @param grips grips by name, those of the catalogue included
 * @param protocols protocols by name, those of the catalogue included
 * @param ruleSets rule sets by name
 * @param plans plans by name
 * @param cohorts cohorts by name
 * @param comparisons comparisons by name
 * @param logs one log for each athlete that has any, by the athlete's name
 * @param unsettled athletes whose log lacks a test because that line has a mistake
 * @param places places of declarations and statements in the text
 * @param files all files that were read
 * @param findings findings about the text and its declarations
 */
public record Model(
    SortedMap<String, Athlete> athletes,
    SortedMap<String, Grip> grips,
    SortedMap<String, Protocol> protocols,
    SortedMap<String, RuleSet> ruleSets,
    SortedMap<String, Plan> plans,
    SortedMap<String, Cohort> cohorts,
    SortedMap<String, Comparison> comparisons,
    SortedMap<String, Log> logs,
    Set<String> unsettled,
    Places places,
    List<SourceFile> files,
    List<LocatedFinding> findings) {

  /** Copies the maps and lists. */
  public Model {
    athletes = copy(athletes);
    grips = copy(grips);
    protocols = copy(protocols);
    ruleSets = copy(ruleSets);
    plans = copy(plans);
    cohorts = copy(cohorts);
    comparisons = copy(comparisons);
    logs = copy(logs);
    unsettled = Set.copyOf(unsettled);
    files = List.copyOf(files);
    findings = List.copyOf(findings);
  }

  private static <T> SortedMap<String, T> copy(SortedMap<String, T> map) {
    return Collections.unmodifiableSortedMap(new TreeMap<>(map));
  }
}
