package gripwright.season;

import gripwright.budget.Limit;
import gripwright.budget.Meter;
import gripwright.finding.Finding;
import gripwright.finding.Listing;
import gripwright.finding.ModelPath;
import gripwright.finding.Nearest;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Finds names of logged sessions that are in no plan of the athlete. Entries outside the days of
 * all plans are ignored, because they may belong to deleted plans.
 */
final class LoggedNames {

  private static final int DATES_SAID = 6;

  private LoggedNames() {}

  /**
   * Returns advice on each unknown name, at its first line, by name.
   *
   * @param plans all plans of the athlete
   * @param reported names that were already reported
   * @param meter counts the names compared
   */
  static List<Finding> unknown(Log log, Collection<Plan> plans, Set<String> reported, Meter meter) {
    Set<String> known = new TreeSet<>();
    for (Plan plan : plans) {
      plan.blocks().stream()
          .flatMap(block -> block.contentFor(log.athlete()).sessions().stream())
          .map(SessionPlan::name)
          .forEach(known::add);
    }
    SortedMap<String, List<Integer>> lines = new TreeMap<>();
    for (int i = 0; i < log.entries().size(); i++) {
      LogEntry entry = log.entries().get(i);
      int line = i;
      name(entry)
          .filter(name -> !known.contains(name) && !reported.contains(name))
          .filter(name -> plans.stream().anyMatch(plan -> lies(entry.date(), plan)))
          .ifPresent(name -> lines.computeIfAbsent(name, n -> new ArrayList<>()).add(line));
    }
    List<Finding> findings = new ArrayList<>();
    List<String> names = known.stream().map(n -> "`" + n + "`").toList();
    lines.forEach(
        (name, of) -> {
          meter.take(Limit.WORK, known.size());
          meter.take(Limit.FINDINGS, Limit.A_FINDING);
          findings.add(finding(log, name, of, known, names));
        });
    return findings;
  }

  private static Finding finding(
      Log log, String name, List<Integer> lines, Set<String> known, List<String> names) {
    List<LocalDate> days = lines.stream().map(i -> log.entries().get(i).date()).toList();
    Listing dates = Listing.first(DATES_SAID, Listing.Style.COMMAS, days);
    Finding finding =
        Finding.advice(
                "log.session-unknown",
                ModelPath.of("log", log.athlete()).then("entry", lines.get(0) + 1))
            .with("session", name)
            .with("dates", dates)
            .with("athlete", log.athlete())
            .with("names", names);
    return Nearest.to(name, known).map(near -> finding.with("suggestion", near)).orElse(finding);
  }

  private static Optional<String> name(LogEntry entry) {
    return entry instanceof LogEntry.OfSession line
        ? Optional.of(line.session())
        : Optional.empty();
  }

  private static boolean lies(LocalDate day, Plan plan) {
    return !day.isBefore(plan.from()) && !day.isAfter(plan.to());
  }
}
