package gripwright.language.check;

import gripwright.athlete.Athlete;
import gripwright.compare.Cohort;
import gripwright.compare.Comparison;
import gripwright.grip.Grip;
import gripwright.language.finding.LocatedFinding;
import gripwright.log.LogEntry;
import gripwright.plan.Plan;
import gripwright.protocol.Protocol;
import gripwright.rule.RuleSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;

/**
 * The valid declarations of a project as core objects by name, and the findings about the others.
 *
 * @param athletes athletes
 * @param grips grips, those of the catalogue included
 * @param protocols protocols, those of the catalogue included
 * @param ruleSets rule sets
 * @param plans plans
 * @param cohorts cohorts
 * @param comparisons comparisons
 * @param logs every log, line by line
 * @param unsettled athletes whose log lacks a test because that line has a mistake, so that their
 *     plans would get misleading findings
 * @param findings findings about declarations
 */
public record Checked(
    SortedMap<String, Athlete> athletes,
    SortedMap<String, Grip> grips,
    SortedMap<String, Protocol> protocols,
    SortedMap<String, RuleSet> ruleSets,
    SortedMap<String, Plan> plans,
    SortedMap<String, Cohort> cohorts,
    SortedMap<String, Comparison> comparisons,
    List<CheckedLog> logs,
    Set<String> unsettled,
    List<LocatedFinding> findings) {

  /**
   * One log declaration.
   *
   * @param athlete name of the athlete
   * @param lines its valid lines
   */
  public record CheckedLog(String athlete, List<Line> lines) {
    /** Copies the lines. */
    public CheckedLog {
      lines = List.copyOf(lines);
    }
  }

  /**
   * A line of a log.
   *
   * @param entry its content
   * @param source where it is written
   */
  public record Line(LogEntry entry, Source source) {}

  /** Copies the lists. */
  public Checked {
    logs = List.copyOf(logs);
    unsettled = Set.copyOf(unsettled);
    findings = List.copyOf(findings);
  }
}
