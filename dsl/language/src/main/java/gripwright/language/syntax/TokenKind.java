package gripwright.language.syntax;

/** What a token of the tree is. */
public enum TokenKind {
  /** A word that means something where it stands, such as {@code plan}. */
  KEYWORD,
  /** A name, or any other word. */
  WORD,
  /** A unit, {@code %} among them where it follows a number. */
  UNIT,
  /** A number without a unit. */
  NUMBER,
  /** A number and what is written against it, such as {@code 7s}. */
  GLUED,
  /** A day. */
  DATE,
  /** A grade that is more than a number, such as {@code 7c+}. */
  GRADE,
  /** A text with its quotes. */
  TEXT,
  /** A brace, comma or other sign. */
  SIGN,
  /** Something that could not be read at all. */
  ODD,
  /** The end of the file: no text, but white space and comments may stand before it. */
  END
}
