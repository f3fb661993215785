package gripwright.language.syntax;

import gripwright.language.source.Span;

/** A node or a token of the tree. */
public sealed interface SyntaxElement permits SyntaxNode, SyntaxToken {

  /** Returns where it stands, from its first token to its last, without what is around them. */
  Span span();
}
