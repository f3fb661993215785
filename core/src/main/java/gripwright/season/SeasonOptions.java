package gripwright.season;

import java.util.Optional;

/**
 * How a season is compiled. Immutable.
 *
 * @param plan the one plan that is compiled; empty for all
 */
public record SeasonOptions(Optional<String> plan) {

  /** Returns options that compile every plan. */
  public static SeasonOptions standard() {
    return new SeasonOptions(Optional.empty());
  }

  /** Returns these options for one plan. */
  public SeasonOptions only(String name) {
    return new SeasonOptions(Optional.of(name));
  }
}
