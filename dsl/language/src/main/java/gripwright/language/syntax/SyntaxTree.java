package gripwright.language.syntax;

/**
 * The lossless tree of a file: every character is in it, whether the file makes sense or not.
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
