package gripwright.language.write;

/**
 * Thrown when an object can't be expressed in the plan language.
 *
 * <p>This includes: a name that isn't kebab-case; a text with a line end in it; a log with a
 * duplicate line; an athlete of an {@code only for} who lacks what everybody else has; one session
 * whose grips are chosen in two ways; a retest on several edges; a hand measured on one side where
 * the other is not, if that side should have no measures; a name with two different meanings.
 */
public final class Unwritable extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  /**
   * Creates an exception.
   *
   * @param what the thing that can't be expressed
   */
  public Unwritable(String what) {
    super("the plan language can't say: " + what);
  }
}
