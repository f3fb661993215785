package gripwright.season;

import gripwright.budget.Budget;
import java.util.Optional;

/**
 * How a season is compiled. Immutable.
 *
 * @param plan the one plan that is compiled; empty for all
 * @param budget how much work it may take
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
