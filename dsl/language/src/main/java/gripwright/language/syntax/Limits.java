package gripwright.language.syntax;

/**
 * How much of a file is read before it is refused with one finding, so that no text, however
 * strange, costs more than moderate time and memory.
 *
 * @param maxCharacters the longest text, in UTF-16 units
 * @param maxTokens the most words, numbers and signs
 * @param maxNesting how deep braces and parentheses may stand in each other, and how many {@code
 *     not} or {@code -} may follow each other
 * @param maxOperators how many operators one expression may have
 * @param maxFindings how many mistakes of one file are told
 */
public record Limits(
    int maxCharacters, int maxTokens, int maxNesting, int maxOperators, int maxFindings) {

  private static final Limits STANDARD = new Limits(4 << 20, 1_000_000, 200, 500, 200);

  /**
   * Checks that every limit leaves room for something.
   *
   * @throws IllegalArgumentException if a limit is less than 1
   */
  public Limits {
    if (maxCharacters < 1
        || maxTokens < 1
        || maxNesting < 1
        || maxOperators < 1
        || maxFindings < 1) {
      throw new IllegalArgumentException("a limit is at least 1");
    }
  }

  /** Returns limits that no sensible file comes near. */
  public static Limits standard() {
    return STANDARD;
  }
}
