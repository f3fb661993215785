package gripwright.budget;

import java.util.Optional;

/**
 * Stops a run whose budget is used up. Thrown while work is counted, and caught where the run
 * begins and turned into a finding: callers of a reading or a compile never see it.
 */
public final class OverBudget extends RuntimeException {

  private static final long serialVersionUID = 1;

  private final transient Overrun overrun;
  private final transient Optional<String> rule;

  OverBudget(Overrun overrun) {
    this(overrun, Optional.empty());
  }

  private OverBudget(Overrun overrun, Optional<String> rule) {
    super(overrun.toString(), null, false, false); // no stack trace: not a programming error
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

  /**
   * Returns this with the name of the rule that was being applied; a name that is already known is
   * kept.
   */
  public OverBudget in(String name) {
    return rule.isPresent() ? this : new OverBudget(overrun, Optional.of(name));
  }
}
