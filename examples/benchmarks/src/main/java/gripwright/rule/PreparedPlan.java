package gripwright.rule;

import gripwright.rule.view.PlanView;
import gripwright.season.CompiledPlan;
import java.util.List;

/**
 * A compiled plan prepared for rules, so that evaluating the rules can be timed alone. It is in
 * this package because only this package may see the view of rules.
 */
public final class PreparedPlan {

  private final PlanView view;

  /** Prepares a plan. */
  public PreparedPlan(CompiledPlan plan) {
    view = new PlanView(plan.schedule(), plan.timeline());
  }

  /** Returns how many places break any of the rules; the rules are compiled first. */
  public int breaches(List<Rule> rules) {
    return new BreachFinder(view).breaches(rules).size();
  }
}
