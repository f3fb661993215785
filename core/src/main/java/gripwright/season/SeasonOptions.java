package gripwright.season;

import gripwright.budget.Budget;
import java.util.Optional;

/**
 * Options for compiling a season. Immutable.
 *
 * @param plan the only plan to compile; empty for all
 * @param budget limits of the work
 */
public record SeasonOptions(Optional<String> plan, Budget budget) {

  /** Returns options that compile every plan within the standard budget. */
  public static SeasonOptions standard() {
    return new SeasonOptions(Optional.empty(), Budget.standard());
  }

  /** Returns these options for one plan. */
  public SeasonOptions only(String name) {
    return new SeasonOptions(Optional.of(name), budget);
  }

  /** Returns these options with another budget. */
  public SeasonOptions withBudget(Budget other) {
    return new SeasonOptions(plan, other);
  }
}
