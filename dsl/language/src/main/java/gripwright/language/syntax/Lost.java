package gripwright.language.syntax;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The declarations lost to mistakes in headings, so that their uses are not reported as well.
 * Immutable.
 *
 * @param nameless kinds of declarations without a name
 * @param names words where a declaration's keyword is missing, which may be its name
 * @param file true if a {@code use} line lost its keyword or its path
 */
public record Lost(Set<NodeKind> nameless, Set<String> names, boolean file) {

  /** Copies the sets. */
  public Lost {
    nameless = Set.copyOf(nameless);
    names = Set.copyOf(names);
  }

  static Lost from(SyntaxNode root) {
    Set<NodeKind> nameless = EnumSet.noneOf(NodeKind.class);
    Set<String> names = new HashSet<>();
    boolean file = false;
    int depth = 0;
    List<SyntaxElement> parts = root.children();
    for (int i = 0; i < parts.size(); i++) {
      SyntaxElement part = parts.get(i);
      if (part instanceof SyntaxNode node) {
        depth = 0;
        SyntaxNode declaration = declaration(node);
        file |= declaration.kind() == NodeKind.USE && declaration.broken();
        if (declaration.broken() && isNameless(declaration)) {
          nameless.add(declaration.kind());
        }
      } else if (part instanceof SyntaxToken token && token.skipped()) {
        depth += token.text().equals("{") ? 1 : token.text().equals("}") ? -1 : 0;
        file |= depth <= 0 && token.text().endsWith(".grip\"");
        if (depth <= 0 && isWord(token) && opens(parts, i + 1)) {
          names.add(token.text());
        }
      }
    }
    return new Lost(nameless, names, file);
  }

  private static SyntaxNode declaration(SyntaxNode node) {
    return node.kind() == NodeKind.DECLARATION && !node.nodes().isEmpty()
        ? node.nodes().get(0)
        : node;
  }

  private static boolean isNameless(SyntaxNode declaration) {
    if (declaration.nodes().isEmpty()) {
      return false;
    }
    return declaration.nodes().get(0).node(NodeKind.NAME).map(SyntaxNode::broken).orElse(true);
  }

  private static boolean isWord(SyntaxElement part) {
    return part instanceof SyntaxToken token
        && token.skipped()
        && (token.kind() == TokenKind.WORD || token.kind() == TokenKind.KEYWORD);
  }

  /** Returns whether a body begins here, possibly after a title. */
  private static boolean opens(List<SyntaxElement> parts, int from) {
    int at = from;
    while (at < parts.size()
        && parts.get(at) instanceof SyntaxToken token
        && (token.kind() == TokenKind.TEXT || token.text().equals("replaces"))) {
      at++;
    }
    return at < parts.size()
        && parts.get(at) instanceof SyntaxToken token
        && token.text().equals("{");
  }
}
