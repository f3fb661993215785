package gripwright.language.syntax;

/**
 * Text between tokens, which means nothing but is kept.
 *
 * @param kind what it is
 * @param text the characters
 */
public record Trivia(Kind kind, String text) {

  /** What stands between tokens. */
  public enum Kind {
    /** Blanks, tabs and line ends. */
    WHITE_SPACE,
    /** From {@code #} to the end of the line, without the line end. */
    COMMENT,
    /** A byte order mark. */
    BYTE_ORDER_MARK,
    /** Characters that have no place in a file. */
    ODD
  }
}
