package gripwright.language.build;

import gripwright.finding.ModelPath;
import gripwright.language.check.Checked;
import gripwright.language.check.Checked.Line;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.resolve.Project;
import gripwright.language.syntax.ParsedFile;
import gripwright.log.Log;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Assembles the model from checked declarations and records where each is written. */
public final class ModelBuilder {

  private ModelBuilder() {}

  /** Returns the model of a project. */
  public static Model build(Project project, Checked checked) {
    List<LocatedFinding> findings = new ArrayList<>(project.findings());
    findings.addAll(checked.findings());
    PlaceBuilder places = new PlaceBuilder();
    places.addAll(project.names(), checked.plans().keySet());
    SortedMap<String, Log> logs = new TreeMap<>();
    MergedLogs.of(checked.logs(), findings)
        .forEach(
            (athlete, lines) -> {
              logs.put(athlete, new Log(athlete, lines.stream().map(Line::entry).toList()));
              for (int i = 0; i < lines.size(); i++) {
                places.add(
                    ModelPath.of("log", athlete).then("entry", i + 1),
                    lines.get(i).source().file(),
                    lines.get(i).source().span());
              }
            });
    return new Model(
        checked.athletes(),
        checked.grips(),
        checked.protocols(),
        checked.ruleSets(),
        checked.plans(),
        checked.cohorts(),
        checked.comparisons(),
        logs,
        checked.unsettled(),
        places.build(),
        project.files().stream().map(ParsedFile::source).toList(),
        findings);
  }
}
