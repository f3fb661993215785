package gripwright.language.source;

import gripwright.budget.Budget;
import gripwright.budget.Limit;

/**
 * How much of a file is read before it is refused with one finding, so that every text takes only
 * moderate time and memory.
 *
 * @param maxCharacters the longest text, in UTF-16 units
 * @param maxTokens the most words, numbers and signs
 * @param maxNesting how deeply braces and parentheses may be nested, and how many {@code not} or
 *     {@code -} may follow each other
 * @param maxOperators how many operators one expression may have
 * @param maxFindings how many mistakes of one file are reported
 */
public record Limits(
    int maxCharacters, int maxTokens, int maxNesting, int maxOperators, int maxFindings) {

  private static final int STANDARD_FINDINGS = 200;
  private static final int STANDARD_NESTING = (int) Limit.NESTING.standard();
  private static final int STANDARD_OPERATORS = (int) Limit.OPERATORS.standard();

  private static final Limits STANDARD = of(Budget.standard());

  /**
   * Checks the limits.
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

  /**
   * Returns the file limits of a budget, with the standard number of findings. Nesting and
   * operators never exceed the standard limits, since deeper texts would need a deeper stack.
   */
  public static Limits of(Budget budget) {
    return new Limits(
        most(budget, Limit.CHARACTERS),
        most(budget, Limit.TOKENS),
        Math.min(STANDARD_NESTING, most(budget, Limit.NESTING)),
        Math.min(STANDARD_OPERATORS, most(budget, Limit.OPERATORS)),
        STANDARD_FINDINGS);
  }

  private static int most(Budget budget, Limit limit) {
    return (int) Math.min(Integer.MAX_VALUE, budget.most(limit));
  }

  /** Returns the limits of the standard budget, which are far above any real file. */
  public static Limits standard() {
    return STANDARD;
  }
}
