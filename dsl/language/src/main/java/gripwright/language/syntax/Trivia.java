package gripwright.language.syntax;

/**
 * Text between tokens, which has no meaning but is kept.
 *
 * @param kind its kind
 * @param text the characters
 */
public record Trivia(Kind kind, String text) {

  /** Kinds of text between tokens. */
  public enum Kind {
    /** Blanks, tabs and line ends. */
    WHITE_SPACE,
    /** From {@code #} to the end of the line, without the line end. */
    COMMENT,
    /** A byte order mark. */
    BYTE_ORDER_MARK,
    /** Characters that are not allowed in a file. */
    ODD
  }
}
