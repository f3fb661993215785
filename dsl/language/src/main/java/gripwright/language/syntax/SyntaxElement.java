package gripwright.language.syntax;

import gripwright.language.source.Span;

/** A node or a token of the tree. */
public sealed interface SyntaxElement permits SyntaxNode, SyntaxToken {

  /**
   * Returns where it is, from its first token to its last, without surrounding white space and
   * comments.
   */
  Span span();
}
