package gripwright.rule;

import gripwright.rule.view.PlanView;
import gripwright.season.CompiledPlan;
import java.util.List;

/**
 * A compiled plan as rules see it, made ready, so that asking the rules can be timed alone. It
 * stands in this package since nothing else may see what rules see.
 */
public final class PreparedPlan {

  private final PlanView view;

  /** Makes a plan ready. */
  public PreparedPlan(CompiledPlan plan) {
    view = new PlanView(plan.schedule(), plan.timeline());
  }

  /** Returns how many places break any of the rules; the rules are compiled first. */
  public int breaches(List<Rule> rules) {
    return new BreachFinder(view).breaches(List.of(), rules).size();
  }
}
