package gripwright.rule;

import gripwright.finding.ModelPath;
import java.time.LocalDate;

/**
 * A place where a rule is broken.
 *
 * @param rule the rule
 * @param rank position among the built-in rules; {@link Integer#MAX_VALUE} for any other
 * @param subject what was looked at
 * @param path where it stands
 * @param date when it is
 */
record Breach(Rule rule, int rank, Object subject, ModelPath path, LocalDate date) {}
