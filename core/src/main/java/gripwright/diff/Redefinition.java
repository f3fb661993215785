package gripwright.diff;

/**
 * A declaration that was added, removed or changed.
 *
 * @param kind the kind of declaration
 * @param name its name
 * @param state the kind of change
 */
public record Redefinition(Kind kind, String name, State state) {

  /** Kinds of declarations other than plans and logs. */
  public enum Kind {
    /** An athlete. */
    ATHLETE,
    /** A grip. */
    GRIP,
    /** A protocol. */
    PROTOCOL,
    /** A rule set as a whole. */
    RULES,
    /** One rule of a rule set in both editions. */
    RULE,
    /** A cohort. */
    COHORT,
    /** A comparison of protocols. */
    COMPARISON
  }

  /** Kinds of change of a declaration. */
  public enum State {
    /** Added. */
    NEW,
    /** Removed. */
    GONE,
    /** Changed. */
    CHANGED
  }
}
