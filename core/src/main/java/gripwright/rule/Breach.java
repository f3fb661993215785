package gripwright.rule;

import gripwright.finding.ModelPath;
import gripwright.rule.view.PlanView;
import gripwright.rule.view.Subject;
import java.time.LocalDate;

/**
 * A place where a rule is broken.
 *
 * @param rule the rule
 * @param rank position among the built-in rules; {@link Integer#MAX_VALUE} for any other
 * @param plan the plan it is broken in
 * @param subject the subject of the rule
 */
record Breach(Rule rule, int rank, PlanView plan, Subject subject) {

  /** Returns its place in the model. */
  ModelPath path() {
    return subject.path();
  }

  /** Returns its date. */
  LocalDate date() {
    return subject.date();
  }
}
