package gripwright.rule;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Rules that a plan can name. Immutable.
 *
 * @param name kebab-case, unique in a project
 * @param title for people
 * @param rules in the order written
 */
public record RuleSet(String name, Optional<String> title, List<Rule> rules) {

  /**
   * Copies the rules.
   *
   * @throws IllegalArgumentException if two rules have one name
   */
  public RuleSet {
    rules = List.copyOf(rules);
    Set<String> names = new HashSet<>();
    for (Rule rule : rules) {
      if (!names.add(rule.name())) {
        throw new IllegalArgumentException("rules " + name + ": two are called " + rule.name());
      }
    }
  }

  /** Returns a set of these rules, without a title. */
  public static RuleSet of(String name, Rule... rules) {
    return new RuleSet(name, Optional.empty(), List.of(rules));
  }
}
