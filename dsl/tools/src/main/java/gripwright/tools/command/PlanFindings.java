package gripwright.tools.command;

import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.finding.ReportedFinding;
import gripwright.language.finding.LocatedFinding;
import gripwright.season.CompiledPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Assigns the findings of a run to plans, and finds their place in the text. */
final class PlanFindings {

  private final List<LocatedFinding> all;

  PlanFindings(List<LocatedFinding> all) {
    this.all = all;
  }

  /** Returns the findings about a plan of one athlete. */
  static List<LocatedFinding> of(List<LocatedFinding> all, CompiledPlan plan) {
    return all.stream().filter(f -> isAbout(f, plan)).toList();
  }

  static ReportedFinding report(LocatedFinding finding) {
    return finding.report(Console.wording());
  }

  /** Returns whether a finding is about a plan, and not about another athlete's part of it. */
  static boolean isAbout(LocatedFinding located, CompiledPlan plan) {
    Finding finding = located.finding();
    if (!plan.plan().path().contains(finding.place())) {
      return false;
    }
    List<ModelPath> places = new ArrayList<>(finding.places());
    places.add(finding.place());
    List<String> athletes =
        places.stream()
            .flatMap(p -> p.steps().stream())
            .filter(s -> s.kind().equals("for"))
            .map(ModelPath.Step::name)
            .toList();
    return athletes.isEmpty() || athletes.contains(plan.athlete().name());
  }

  /** Returns file and line of a plan's finding, if it has a place in the text. */
  Optional<String> source(Finding finding) {
    return all.stream()
        .filter(f -> f.finding().equals(finding))
        .findFirst()
        .or(() -> all.stream().filter(f -> isSame(f.finding(), finding)).findFirst())
        .map(f -> new LocatedFinding(finding, f.file(), f.span(), List.of()))
        .map(PlanFindings::report)
        .map(reported -> reported.file() + ":" + reported.line());
  }

  private static boolean isSame(Finding one, Finding other) {
    return one.code().equals(other.code())
        && (one.place().equals(other.place()) || one.places().contains(other.place()));
  }
}
