package gripwright.season;

import gripwright.budget.Limit;
import gripwright.budget.OverBudget;
import gripwright.budget.Overrun;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;

/** Creates the finding about a run that was stopped. Stateless. */
public final class BudgetFindings {

  private BudgetFindings() {}

  /**
   * Returns the finding: an error, so that an incomplete result is never taken as complete.
   *
   * @param place the place where the run stopped
   */
  public static Finding of(OverBudget stop, ModelPath place) {
    Finding finding = of(stop.overrun(), place);
    return stop.rule().map(rule -> finding.with("rule", rule)).orElse(finding);
  }

  private static Finding of(Overrun overrun, ModelPath place) {
    return overrun.accept(
        new Overrun.Visitor<Finding>() {
          @Override
          public Finding tooMuch(Overrun.TooMuch much) {
            return Finding.error(code(much.limit()), place)
                .with("found", much.found())
                .with("limit", much.most());
          }

          @Override
          public Finding outOfTime(Overrun.OutOfTime late) {
            return Finding.error("budget.time", place).with("limit", late.time());
          }

          @Override
          public Finding cancelled(Overrun.Cancelled cancelled) {
            return Finding.error("budget.cancelled", place);
          }
        });
  }

  /** Returns the code of a limit, such as {@code budget.weeks}. */
  static String code(Limit limit) {
    return "budget." + limit.word();
  }
}
