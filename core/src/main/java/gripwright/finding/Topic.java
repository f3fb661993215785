package gripwright.finding;

/**
 * What a finding is about, where other code has to know: a code is a name for people and tools, and
 * nothing is decided by comparing codes.
 */
public enum Topic {
  /** A name that nothing known has. */
  UNKNOWN_NAME,
  /** A name that is not written as names are. */
  MISWRITTEN_NAME,
  /** A waiver that waives nothing. */
  UNUSED_WAIVER,
  /** A waiver of a rule that can't be waived. */
  REFUSED_WAIVER,
  /** A logged session that the plan does not have. */
  UNPLANNED_SESSION,
  /** A planned test that has no line in the log. */
  TEST_NOT_LOGGED,
  /** Experience that a rule asks for, with numbers of its own. */
  EXPERIENCE,
  /** Experience that a grip asks for. */
  PREREQUISITES,
  /** An injury that is not cleared. */
  INJURY;

  /** Tells whether it is a waiver itself, whatever athlete the plan is for. */
  public boolean isWaiver() {
    return this == UNUSED_WAIVER || this == REFUSED_WAIVER;
  }
}
