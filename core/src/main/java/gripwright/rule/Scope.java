package gripwright.rule;

/** What a rule looks at, one after the other. */
public enum Scope {
  /** Each exercise of each session. */
  EXERCISE,
  /** Each session. */
  SESSION,
  /** Each day with a session, test or climbing. */
  DAY,
  /** Each week of the plan. */
  WEEK,
  /** Each block. */
  BLOCK,
  /** The plan as a whole. */
  PLAN,
  /** Each two sessions, the earlier and the later. */
  PAIR_OF_SESSIONS
}
