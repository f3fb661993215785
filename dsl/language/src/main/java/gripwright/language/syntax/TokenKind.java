package gripwright.language.syntax;

/** The kinds of tokens. */
public enum TokenKind {
  /** A word with a meaning at its place, such as {@code plan}. */
  KEYWORD,
  /** A name, or any other word. */
  WORD,
  /** A unit, including {@code %} after a number. */
  UNIT,
  /** A number without a unit. */
  NUMBER,
  /** A number and the letters attached to it, such as {@code 7s}. */
  GLUED,
  /** A day. */
  DATE,
  /** A grade that is not just a number, such as {@code 7c+}. */
  GRADE,
  /** A text with its quotes. */
  TEXT,
  /** A brace, comma or other sign. */
  SIGN,
  /** Characters that form no token. */
  ODD,
  /** The end of the file: no text, but white space and comments may precede it. */
  END
}
