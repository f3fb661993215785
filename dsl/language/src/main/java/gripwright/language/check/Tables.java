package gripwright.language.check;

import gripwright.athlete.Athlete;
import gripwright.budget.Budget;
import gripwright.budget.Meter;
import gripwright.compare.Cohort;
import gripwright.grip.Grip;
import gripwright.protocol.Protocol;
import gripwright.rule.Rule;
import gripwright.rule.RuleSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The objects that plans, logs and comparisons can refer to.
 *
 * @param athletes athletes
 * @param cohorts cohorts
 * @param grips grips
 * @param protocols protocols
 * @param ruleSets rule sets
 * @param builtInRules names of the rules that apply to every plan
 * @param meter counts work; its budget limits the size of plans
 */
record Tables(
    Known<Athlete> athletes,
    Known<Cohort> cohorts,
    Known<Grip> grips,
    Known<Protocol> protocols,
    Known<RuleSet> ruleSets,
    Set<String> builtInRules,
    Meter meter) {

  /** Returns the budget, which limits the size of plans. */
  Budget budget() {
    return meter.budget();
  }

  /**
   * Returns the names of all rules of a plan: the built-in rules and those of its rule sets. Empty
   * if not all are known, because a rule set has a mistake or is in a file that was not read.
   */
  Optional<Set<String>> rulesOf(List<String> names) {
    Set<String> rules = new TreeSet<>(builtInRules);
    for (String name : names) {
      RuleSet set = ruleSets.made().get(name);
      if (set == null) {
        return Optional.empty();
      }
      set.rules().stream().map(Rule::name).forEach(rules::add);
    }
    return Optional.of(rules);
  }
}
