package gripwright.season;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.finding.Severity;
import gripwright.log.Log;
import gripwright.plausibility.Known;
import gripwright.plausibility.Plausibility;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds doubtful lines of a log; one mistake gives one finding. */
public final class Doubts {

  private Doubts() {}

  /**
   * Returns findings about doubtful lines and odd tests of a log; advice on single lines is left
   * out.
   *
   * @param log lines up to the day of interest
   * @param odd advice on odd tests, see {@link OddTests}
   * @throws IllegalArgumentException if the log is not the athlete's
   */
  public static List<Finding> of(
      Athlete athlete, Log log, List<CompiledPlan> plans, List<Finding> odd) {
    Known known =
        new Known(
            athlete,
            log,
            plans.stream().map(CompiledPlan::plan).toList(),
            plans.stream().map(CompiledPlan::schedule).toList());
    return with(
        odd,
        Plausibility.of(known).stream()
            .filter(finding -> finding.severity() != Severity.ADVICE)
            .filter(finding -> finding.place().steps().get(0).kind().equals("log"))
            .toList());
  }

  /** Returns findings with advice on odd tests, except for tests already reported as doubtful. */
  static List<Finding> with(List<Finding> odd, List<Finding> doubts) {
    Set<ModelPath> doubted =
        doubts.stream()
            .filter(finding -> finding.severity() != Severity.ADVICE)
            .map(Finding::place)
            .collect(Collectors.toSet());
    return Stream.concat(
            doubts.stream(), odd.stream().filter(each -> !doubted.contains(each.place())))
        .toList();
  }
}
