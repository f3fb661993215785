package gripwright.season;

import gripwright.budget.Limit;
import gripwright.budget.OverBudget;
import gripwright.budget.Overrun;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;

/** The finding that says why a run was stopped. Stateless. */
public final class BudgetFindings {

  private BudgetFindings() {}

  /**
   * Returns the finding: an error, so that what was left undone is never taken for whole.
   *
   * @param place what was being worked on
   */
  public static Finding of(OverBudget stop, ModelPath place) {
    Finding finding = of(stop.overrun(), place);
    return stop.rule().map(rule -> finding.with("rule", rule)).orElse(finding);
  }

  private static Finding of(Overrun overrun, ModelPath place) {
    return overrun.match(
        much ->
            Finding.error(code(much.limit()), place)
                .with("found", much.found())
                .with("limit", much.most()),
        late -> Finding.error("budget.time", place).with("limit", late.time()),
        cancelled -> Finding.error("budget.cancelled", place));
  }

  /** Returns the code of a limit, such as {@code budget.weeks}. */
  static String code(Limit limit) {
    return "budget." + limit.word();
  }
}
