package gripwright.finding;

/**
 * The topic of a finding, for other code: codes are names for people and tools, and no logic
 * compares codes.
 */
public enum Topic {
  /** An unknown name. */
  UNKNOWN_NAME,
  /** A name with characters that names can't have. */
  MISWRITTEN_NAME,
  /** A waiver without effect. */
  UNUSED_WAIVER,
  /** A waiver of a rule that can't be waived. */
  REFUSED_WAIVER,
  /** A logged session that is not in the plan. */
  UNPLANNED_SESSION,
  /** A planned test without a line in the log. */
  TEST_NOT_LOGGED,
  /** Experience that a rule requires, with its own numbers. */
  EXPERIENCE,
  /** Experience that a grip requires. */
  PREREQUISITES,
  /** An injury that is not cleared. */
  INJURY,
  /** Hard work under 16. */
  YOUTH,
  /** Work under 18 that needs supervision. */
  SUPERVISION,
  /** A line of a practitioner's plan, which is no mistake. */
  REHABILITATION,
  /** A block that begins with more than the weeks before it. */
  JOIN;

  /** Returns whether it is about a waiver itself, which doesn't depend on the athlete. */
  public boolean isWaiver() {
    return this == UNUSED_WAIVER || this == REFUSED_WAIVER;
  }
}
