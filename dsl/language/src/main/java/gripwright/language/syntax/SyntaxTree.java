package gripwright.language.syntax;

/**
 * The lossless tree of a file: it contains every character, even if the file has mistakes.
 *
 * @param root the node of the whole file; its last child is the end of the file
 */
public record SyntaxTree(SyntaxNode root) {

  /** Returns the text the tree was read from, character for character. */
  public String text() {
    StringBuilder text = new StringBuilder();
    root.tokens(token -> token.appendTo(text));
    return text.toString();
  }
}
