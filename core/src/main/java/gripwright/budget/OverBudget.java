package gripwright.budget;

import java.util.Optional;

/**
 * Stops a run whose budget is used up. Thrown where work is counted and caught where a run begins,
 * which makes a finding of it: no caller of a reading or a compile sees it.
 */
public final class OverBudget extends RuntimeException {

  private static final long serialVersionUID = 1;

  private final transient Overrun overrun;
  private final transient Optional<String> rule;

  OverBudget(Overrun overrun) {
    this(overrun, Optional.empty());
  }

  private OverBudget(Overrun overrun, Optional<String> rule) {
    super(overrun.toString(), null, false, false); // no stack trace: it is no mistake
    this.overrun = overrun;
    this.rule = rule;
  }

  /** Returns why the run was stopped. */
  public Overrun overrun() {
    return overrun;
  }

  /** Returns the name of the rule that was being applied, if one was. */
  public Optional<String> rule() {
    return rule;
  }

  /** Returns this with the name of the rule that was being applied; one that is known stays. */
  public OverBudget in(String name) {
    return rule.isPresent() ? this : new OverBudget(overrun, Optional.of(name));
  }
}
