package gripwright.language.syntax;

import gripwright.language.source.Span;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A part of the tree with its children. A chain of nodes with one child each is replaced by its
 * innermost node: {@code 7 s} in an expression is a number, not a sum of one product of one number.
 * Immutable.
 */
public final class SyntaxNode implements SyntaxElement {

  private final NodeKind kind;
  private final SyntaxElement[] children;
  private final Span span;
  private final boolean broken;

  private SyntaxNode(NodeKind kind, SyntaxElement[] children, Span span, boolean broken) {
    this.kind = kind;
    this.children = children;
    this.span = span;
    this.broken = broken;
  }

  /**
   * Returns a node.
   *
   * @param kind its kind
   * @param children its children, in the order of the text
   * @param at its place if it has no children
   * @param broken whether something directly in it was missing or misplaced
   */
  public static SyntaxNode of(
      NodeKind kind, List<? extends SyntaxElement> children, int at, boolean broken) {
    SyntaxElement[] copy = children.toArray(new SyntaxElement[0]);
    Span span =
        copy.length == 0
            ? new Span(at, 0)
            : Span.between(copy[0].span().start(), copy[copy.length - 1].span().end());
    return new SyntaxNode(kind, copy, span, broken);
  }

  /** Returns the kind of node. */
  public NodeKind kind() {
    return kind;
  }

  /** Returns its children, in the order of the text. */
  public List<SyntaxElement> children() {
    return Collections.unmodifiableList(Arrays.asList(children));
  }

  @Override
  public Span span() {
    return span;
  }

  /**
   * Returns whether something directly in this node was missing or misplaced, and reported.
   * Mistakes inside the braces of a block count for the statements there, not for the block.
   */
  public boolean broken() {
    return broken;
  }

  /** Returns the nodes directly in this one. */
  public List<SyntaxNode> nodes() {
    List<SyntaxNode> found = new ArrayList<>(children.length);
    for (SyntaxElement child : children) {
      if (child instanceof SyntaxNode node) {
        found.add(node);
      }
    }
    return found;
  }

  /** Returns the nodes of a kind directly in this one. */
  public List<SyntaxNode> nodes(NodeKind wanted) {
    List<SyntaxNode> found = new ArrayList<>(children.length);
    for (SyntaxElement child : children) {
      if (child instanceof SyntaxNode node && node.kind == wanted) {
        found.add(node);
      }
    }
    return found;
  }

  /** Returns the first node of a kind directly in this one. */
  public Optional<SyntaxNode> node(NodeKind wanted) {
    for (SyntaxElement child : children) {
      if (child instanceof SyntaxNode node && node.kind == wanted) {
        return Optional.of(node);
      }
    }
    return Optional.empty();
  }

  /** Returns a node directly in this one by its position among them, from 0. */
  public Optional<SyntaxNode> node(int index) {
    int left = index;
    for (SyntaxElement child : children) {
      if (child instanceof SyntaxNode node && left-- == 0) {
        return Optional.of(node);
      }
    }
    return Optional.empty();
  }

  /** Returns the first child if it is a token. */
  public Optional<SyntaxToken> firstToken() {
    return children.length > 0 && children[0] instanceof SyntaxToken token
        ? Optional.of(token)
        : Optional.empty();
  }

  /** Returns whether a keyword or sign is directly in this node. */
  public boolean has(String keyword) {
    for (SyntaxElement child : children) {
      if (child instanceof SyntaxToken token
          && !token.skipped()
          && token.readAs().equals(keyword)) {
        return true;
      }
    }
    return false;
  }

  /** Passes every token in this node to a consumer, in the order of the text. */
  public void tokens(Consumer<? super SyntaxToken> consumer) {
    Deque<SyntaxElement> pending = new ArrayDeque<>();
    pending.push(this);
    while (!pending.isEmpty()) {
      SyntaxElement next = pending.pop();
      if (next instanceof SyntaxToken token) {
        consumer.accept(token);
      } else if (next instanceof SyntaxNode node) {
        for (int i = node.children.length - 1; i >= 0; i--) {
          pending.push(node.children[i]);
        }
      }
    }
  }
}
