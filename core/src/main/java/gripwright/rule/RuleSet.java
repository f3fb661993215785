package gripwright.rule;

import java.util.List;
import java.util.Optional;

/**
 * Rules that a plan can name. Immutable.
 *
 * @param name kebab-case, unique in a project
 * @param title for people
 * @param rules in the order written
 */
public record RuleSet(String name, Optional<String> title, List<Rule> rules) {

  /** Copies the rules. */
  public RuleSet {
    rules = List.copyOf(rules);
  }
}
