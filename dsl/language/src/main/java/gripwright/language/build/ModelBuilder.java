package gripwright.language.build;

import gripwright.finding.ModelPath;
import gripwright.language.check.Checked;
import gripwright.language.check.Checked.CheckedLog;
import gripwright.language.check.Checked.Line;
import gripwright.language.check.Source;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.resolve.Project;
import gripwright.language.syntax.ParsedFile;
import gripwright.log.Log;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Puts together what was checked, and notes where each thing is written. */
public final class ModelBuilder {

  /** Whichever log of an athlete was written or read first, they are merged in one order. */
  private static final Comparator<CheckedLog> BY_CONTENT =
      Comparator.comparing(log -> log.lines().stream().map(Line::entry).toList().toString());

  private ModelBuilder() {}

  /** Returns the model of a project. */
  public static Model build(Project project, Checked checked) {
    List<LocatedFinding> findings = new ArrayList<>(project.findings());
    findings.addAll(checked.findings());
    PlaceBuilder places = new PlaceBuilder();
    places.addAll(project.names(), checked.plans().keySet());
    SortedMap<String, Log> logs = new TreeMap<>();
    merged(checked.logs())
        .forEach(
            (athlete, lines) -> {
              logs.put(athlete, new Log(athlete, lines.stream().map(Line::entry).toList()));
              for (int i = 0; i < lines.size(); i++) {
                Source source = lines.get(i).source();
                places.add(
                    ModelPath.of("log", athlete).then("entry", i + 1),
                    source.file(),
                    source.span());
              }
            });
    return new Model(
        checked.athletes(),
        checked.grips(),
        checked.protocols(),
        checked.ruleSets(),
        checked.plans(),
        checked.comparisons(),
        logs,
        checked.unsettled(),
        places.build(),
        project.files().stream().map(ParsedFile::source).toList(),
        findings);
  }

  /** Returns all lines of each athlete by date; those of one day keep the order of their log. */
  private static Map<String, List<Line>> merged(List<CheckedLog> logs) {
    Map<String, List<CheckedLog>> byAthlete = new TreeMap<>();
    for (CheckedLog log : logs) {
      byAthlete.computeIfAbsent(log.athlete(), name -> new ArrayList<>()).add(log);
    }
    Map<String, List<Line>> merged = new TreeMap<>();
    byAthlete.forEach(
        (athlete, ofAthlete) -> {
          if (ofAthlete.size() > 1) {
            ofAthlete.sort(BY_CONTENT);
          }
          List<Line> lines = new ArrayList<>();
          ofAthlete.forEach(log -> lines.addAll(log.lines()));
          lines.sort(Comparator.comparing(line -> line.entry().date()));
          merged.put(athlete, lines);
        });
    return merged;
  }
}
