package gripwright.language.syntax;

/** The lossless tree of a file. */
public final class SyntaxTree {
  private final String text;

  SyntaxTree(String text) {
    this.text = text;
  }

  /** Returns the text the tree was read from, character for character. */
  public String text() {
    return text;
  }
}
