package gripwright.language.write.internal;

import gripwright.athlete.Athlete;
import gripwright.compare.Cohort;
import gripwright.compare.Comparison;
import gripwright.grip.Grip;
import gripwright.language.write.Unwritable;
import gripwright.log.Log;
import gripwright.plan.Plan;
import gripwright.protocol.Protocol;
import gripwright.rule.RuleSet;

/**
 * Declarations of core objects, one text each, in no particular layout. Each method throws {@link
 * Unwritable} if something can't be expressed; some cases show only when the text is read back.
 */
public final class Declarations {

  private Declarations() {}

  /** Returns the declaration of an athlete. */
  public static String of(Athlete athlete) {
    return AthleteLines.of(athlete);
  }

  /**
   * Returns the declaration of a grip.
   *
   * @param replaces whether the catalogue has one of its name
   */
  public static String of(Grip grip, boolean replaces) {
    return CatalogueLines.of(grip, replaces);
  }

  /**
   * Returns the declaration of a protocol.
   *
   * @param replaces whether the catalogue has one of its name
   */
  public static String of(Protocol protocol, boolean replaces) {
    return CatalogueLines.of(protocol, replaces);
  }

  /** Returns the declaration of rules. */
  public static String of(RuleSet rules) {
    return RuleLines.of(rules);
  }

  /** Returns the declaration of a log. */
  public static String of(Log log) {
    return LogLines.of(log);
  }

  /** Returns the declaration of a plan. */
  public static String of(Plan plan) {
    return PlanLines.of(plan);
  }

  /** Returns the declaration of a cohort. */
  public static String of(Cohort cohort) {
    return CompareLines.of(cohort);
  }

  /** Returns the declaration of a comparison. */
  public static String of(Comparison comparison) {
    return CompareLines.of(comparison);
  }
}
