package gripwright.language.write;

/**
 * An object says something for which the plan language has no words.
 *
 * <p>It has none, among others, for: a name that isn't kebab-case; a text with a line end in it; an
 * log in which a line stands twice; an athlete of an {@code only for} who lacks what everybody else
 * has; one session whose grips are chosen in two ways; a retest on several edges; a hand measured
 * on one side where the other is not, if that side should know nothing; a name that stands for one
 * thing here and another there.
 */
public final class Unwritable extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  /**
   * Returns a refusal.
   *
   * @param what there are no words for
   */
  public Unwritable(String what) {
    super("the plan language can't say: " + what);
  }
}
