package gripwright.language.build;

import gripwright.language.check.Checked;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.resolve.Project;
import gripwright.language.syntax.ParsedFile;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** Puts together what was checked, and notes where each thing is written. */
public final class ModelBuilder {

  private ModelBuilder() {}

  /** Returns the model of a project. */
  public static Model build(Project project, Checked checked) {
    List<LocatedFinding> findings = new ArrayList<>(project.findings());
    findings.addAll(checked.findings());
    return new Model(
        checked.athletes(),
        checked.grips(),
        checked.protocols(),
        checked.ruleSets(),
        checked.plans(),
        checked.comparisons(),
        new TreeMap<>(),
        checked.unsettled(),
        new Places(Places.none()),
        project.files().stream().map(ParsedFile::source).toList(),
        findings);
  }
}
