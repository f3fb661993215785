package gripwright.finding;

import java.util.Objects;

/**
 * Checks texts that give a reason or name a person, such as why a finding is waived or who cleared
 * an injury. Such a text must be readable: it has a letter or a digit of any script. Spaces of any
 * kind and punctuation are not enough. Stateless.
 */
public final class WrittenReason {

  /** Characters that count as letters but are invisible: the fillers of Hangul. */
  private static final String BLANK_LETTERS = "\u115F\u1160\u3164\uFFA0";

  private WrittenReason() {}

  /** Returns whether a text has a word in it. */
  public static boolean hasWord(String text) {
    return text.codePoints()
        .anyMatch(c -> Character.isLetterOrDigit(c) && BLANK_LETTERS.indexOf(c) < 0);
  }

  /**
   * Returns a text that has a word in it.
   *
   * @param what description of the text, such as {@code a reason}, for the exception
   * @throws IllegalArgumentException if it has no letter and no digit
   */
  public static String check(String text, String what) {
    Objects.requireNonNull(text, what);
    if (!hasWord(text)) {
      throw new IllegalArgumentException(what + " without a word: \"" + text + "\"");
    }
    return text;
  }
}
