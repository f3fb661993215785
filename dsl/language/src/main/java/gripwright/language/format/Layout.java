package gripwright.language.format;

import gripwright.language.syntax.NodeKind;
import gripwright.language.syntax.SyntaxElement;
import gripwright.language.syntax.SyntaxNode;
import gripwright.language.syntax.SyntaxToken;
import gripwright.language.syntax.TokenKind;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Puts each statement of a file on lines of its own. A statement is everything directly in a file
 * or between braces, so that new kinds of statements need no change here.
 */
final class Layout {

  private static final int STEP = 2;

  private final Sheet sheet;
  private @Nullable SyntaxToken previous;

  Layout(Sheet sheet) {
    this.sheet = sheet;
  }

  /** Lays out a whole file. */
  void file(SyntaxNode root) {
    statements(root, 0);
  }

  /**
   * Lays out the statements of a file or of a body in braces.
   *
   * @param block the file, or the block with its braces
   * @param indent of its statements, in characters
   */
  private void statements(SyntaxNode block, int indent) {
    // A blank line at the top of a block is removed, except the one before the first rule.
    boolean top = block.kind() != NodeKind.RULES_BODY;
    for (SyntaxElement child : block.children()) {
      SyntaxToken first = firstToken(child);
      if (child instanceof SyntaxToken token && token.text().equals("{")) {
        continue;
      }
      boolean last = child instanceof SyntaxToken;
      before(gap(first), indent, top, last);
      top = false;
      if (child instanceof SyntaxNode statement) {
        statement(statement, block.kind(), indent);
      } else if (first.kind() != TokenKind.END) {
        previous = first;
        sheet.line(indent - STEP, first.text());
      }
    }
  }

  /** Writes the comments before a statement, and one blank line if there were any. */
  private void before(Gap gap, int indent, boolean top, boolean last) {
    gap.trailing().ifPresent(sheet::comment);
    boolean first = top;
    for (Gap.Comment comment : gap.comments()) {
      if (comment.blank() && !first) {
        sheet.blank();
      }
      first = false;
      sheet.line(indent, comment.text());
    }
    if (gap.blank() && !first && !last) {
      sheet.blank();
    }
  }

  private void statement(SyntaxNode statement, NodeKind block, int indent) {
    List<Word> words = new ArrayList<>();
    SyntaxNode body = words(statement, words);
    int column = body == null ? Columns.of(block, statement.kind()) : 0;
    new Filling(sheet, indent, column).put(words);
    if (body != null) {
      statements(body, indent + STEP);
    }
  }

  /**
   * Collects the words of a statement up to and including the opening brace of its block, and
   * returns the block.
   */
  private @Nullable SyntaxNode words(SyntaxNode node, List<Word> words) {
    for (SyntaxElement child : node.children()) {
      if (child instanceof SyntaxToken token) {
        take(token, node.kind(), words);
      } else if (child instanceof SyntaxNode inner) {
        SyntaxToken first = firstToken(inner);
        if (first.text().equals("{")) {
          take(first, inner.kind(), words);
          return inner;
        }
        SyntaxNode body = words(inner, words);
        if (body != null) {
          return body;
        }
      }
    }
    return null;
  }

  private void take(SyntaxToken token, NodeKind in, List<Word> words) {
    words.add(new Word(token, in, gap(token)));
    previous = token;
  }

  private Gap gap(SyntaxToken token) {
    return Gap.between(previous, token);
  }

  private static SyntaxToken firstToken(SyntaxElement element) {
    SyntaxElement first = element;
    while (first instanceof SyntaxNode node) {
      first = node.children().get(0);
    }
    return (SyntaxToken) first;
  }
}
