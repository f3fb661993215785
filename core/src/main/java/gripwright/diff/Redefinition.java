package gripwright.diff;

/**
 * A declaration that is new, gone or another.
 *
 * @param kind what is declared
 * @param name its name
 * @param state what became of it
 */
public record Redefinition(Kind kind, String name, State state) {

  /** What can be declared beside plans and logs. */
  public enum Kind {
    /** An athlete. */
    ATHLETE,
    /** A grip. */
    GRIP,
    /** A protocol. */
    PROTOCOL,
    /** A rule set as a whole. */
    RULES,
    /** One rule of a rule set that is there before and after. */
    RULE,
    /** A comparison of protocols. */
    COMPARISON
  }

  /** What became of a declaration. */
  public enum State {
    /** It was not there. */
    NEW,
    /** It is not there any more. */
    GONE,
    /** It says something else. */
    CHANGED
  }
}
