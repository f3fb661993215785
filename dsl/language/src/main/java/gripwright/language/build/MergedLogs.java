package gripwright.language.build;

import gripwright.finding.Clause;
import gripwright.finding.Finding;
import gripwright.finding.Message;
import gripwright.finding.ModelPath;
import gripwright.language.check.Checked.CheckedLog;
import gripwright.language.check.Checked.Line;
import gripwright.language.finding.LocatedFinding;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The lines of all logs of an athlete as one log, and the findings about duplicates and
 * contradictions.
 *
 * <p>Which file a line is in and in which order lines are written does not matter. A duplicate line
 * counts once. Two body masses of one day, two sessions of one name on one day, and a session that
 * was both skipped and trained are reported and kept, since only the coach knows what happened.
 * Several tests, climbing and pain lines on one day don't contradict each other.
 */
final class MergedLogs {

  private static final Comparator<Line> AS_WRITTEN =
      Comparator.comparing((Line line) -> line.source().file().name())
          .thenComparing(line -> line.source().span().start());

  private MergedLogs() {}

  /** Returns the lines of each athlete in the order of a log. */
  static Map<String, List<Line>> of(List<CheckedLog> logs, List<LocatedFinding> findings) {
    Map<String, List<Line>> byAthlete = new TreeMap<>();
    for (CheckedLog log : logs) {
      byAthlete.computeIfAbsent(log.athlete(), name -> new ArrayList<>()).addAll(log.lines());
    }
    Map<String, List<Line>> merged = new TreeMap<>();
    byAthlete.forEach(
        (athlete, lines) ->
            merged.put(athlete, Log.inOrder(once(athlete, lines, findings), Line::entry)));
    return merged;
  }

  private static List<Line> once(String athlete, List<Line> lines, List<LocatedFinding> findings) {
    Map<LocalDate, List<Line>> byDay = new HashMap<>();
    Map<List<Object>, Line> taken = new HashMap<>();
    List<Line> kept = new ArrayList<>();
    for (Line line : lines.stream().sorted(AS_WRITTEN).toList()) {
      List<Line> ofDay = byDay.computeIfAbsent(line.entry().date(), day -> new ArrayList<>());
      Optional<Line> same =
          ofDay.stream().filter(other -> other.entry().equals(line.entry())).findFirst();
      if (same.isPresent()) {
        findings.add(located(line, same.get(), warning("log.repeated", athlete)));
        continue;
      }
      ofDay.add(line);
      kept.add(line);
      Optional<List<Object>> claim = claim(line.entry());
      Line other = claim.map(c -> taken.putIfAbsent(c, line)).orElse(null);
      if (other != null) {
        Finding conflict =
            warning("log.conflict", athlete)
                .with("kind", claim.orElseThrow().get(0))
                .with("date", line.entry().date());
        findings.add(
            located(
                line,
                other,
                line.entry() instanceof LogEntry.BodyMass
                    ? conflict.with("body-mass", "")
                    : conflict));
      }
    }
    return kept;
  }

  private static Finding warning(String code, String athlete) {
    return Finding.warning(code, ModelPath.of("log", athlete)).with("athlete", athlete);
  }

  private static LocatedFinding located(Line line, Line first, Finding finding) {
    return LocatedFinding.at(line.source().file(), line.source().span(), finding)
        .related("first-written-here", first.source().file(), first.source().span());
  }

  /** Returns the key of what only one line of a log may state, with its day. */
  private static Optional<List<Object>> claim(LogEntry entry) {
    if (entry instanceof LogEntry.BodyMass) {
      return Optional.of(List.of(Clause.of("term.body-mass"), entry.date()));
    }
    if (entry instanceof LogEntry.OfSession line) {
      return Optional.of(List.of(session(line.session()), entry.date()));
    }
    return Optional.empty();
  }

  private static Message session(String name) {
    return Clause.of("term.session", "name", name);
  }
}
