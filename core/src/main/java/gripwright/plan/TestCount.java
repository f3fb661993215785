package gripwright.plan;

import java.util.Locale;

/**
 * Which of the attempts of a planned test count for the strength of an athlete.
 *
 * @since 1.0.0
 */
public enum TestCount {
  /** The best attempt. */
  BEST,
  /** The mean of all attempts. */
  MEAN;

  private final String word = name().toLowerCase(Locale.ROOT);

  /** Returns the word of the language: {@code best} or {@code mean}. */
  public String word() {
    return word;
  }
}
