package gripwright.language.syntax.internal;

import gripwright.language.source.Span;
import gripwright.language.syntax.NodeKind;
import gripwright.language.syntax.SyntaxElement;
import gripwright.language.syntax.SyntaxNode;
import gripwright.language.syntax.SyntaxToken;
import gripwright.language.syntax.SyntaxTree;
import gripwright.language.syntax.TokenKind;
import gripwright.language.syntax.Trivia;
import gripwright.language.syntax.internal.grammar.GripLexer;
import gripwright.language.syntax.internal.grammar.GripParser;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.RuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.tree.ErrorNode;
import org.antlr.v4.runtime.tree.ParseTree;
import org.antlr.v4.runtime.tree.TerminalNode;
import org.jspecify.annotations.Nullable;

/**
 * Builds the lossless tree from the parser's result and all tokens, in the order of the text. A
 * token that the parser skipped is in the tree too, marked as skipped.
 */
final class TreeBuilder {

  /** Kinds by the number of the grammar's rule, which has the same order. */
  private static final NodeKind[] KINDS = NodeKind.values();

  /** Nodes that are replaced by their child if they have exactly one. */
  private static final Set<NodeKind> THROUGH =
      EnumSet.of(
          NodeKind.DECLARATION,
          NodeKind.ATHLETE_ITEM,
          NodeKind.HAND_ITEM,
          NodeKind.EQUIPMENT_ITEM,
          NodeKind.GRIP_ITEM,
          NodeKind.PROTOCOL_ITEM,
          NodeKind.STEP,
          NodeKind.PLAN_ITEM,
          NodeKind.BLOCK_ITEM,
          NodeKind.SESSION_ITEM,
          NodeKind.RULE_ITEM,
          NodeKind.COMPARE_ITEM,
          NodeKind.EXPR,
          NodeKind.CONJUNCTION,
          NodeKind.NEGATION,
          NodeKind.COMPARISON,
          NodeKind.SUM,
          NodeKind.PRODUCT,
          NodeKind.UNARY,
          NodeKind.PRIMARY);

  private final Scan scan;
  private final List<Trivia> leading = new ArrayList<>();
  private int next;
  private int at;

  TreeBuilder(Scan scan) {
    this.scan = scan;
  }

  /** A node under construction. */
  private static final class Frame {
    private final ParserRuleContext context;
    private final List<SyntaxElement> children = new ArrayList<>();
    private boolean broken;
    private int done;

    Frame(ParserRuleContext context) {
      this.context = context;
      this.broken = context.exception != null;
    }
  }

  /**
   * Returns the tree of the parser's result. Uses its own stack, since the tree can be deeper than
   * the call stack allows.
   */
  SyntaxTree build(ParserRuleContext parsed) {
    Deque<Frame> open = new ArrayDeque<>();
    Frame frame = new Frame(parsed);
    while (true) {
      if (frame.done < frame.context.getChildCount()) {
        ParseTree child = frame.context.getChild(frame.done++);
        if (child instanceof ParserRuleContext inner) {
          takeUntil(firstToken(inner), frame.children);
          open.push(frame);
          frame = new Frame(inner);
        } else if (child instanceof TerminalNode terminal) {
          add(terminal, frame);
        }
      } else if (open.isEmpty()) {
        takeUntil(scan.tokens().size(), frame.children);
        return new SyntaxTree(SyntaxNode.of(NodeKind.FILE, frame.children, 0, frame.broken));
      } else {
        SyntaxNode node = node(frame);
        boolean body = Bodies.of(frame.context.getRuleIndex()) != null;
        frame = open.pop();
        frame.children.add(node);
        frame.broken |= node.broken() && !body;
      }
    }
  }

  /** Adds a token of the parser's tree, unless it was inserted for a missing one. */
  private void add(TerminalNode terminal, Frame frame) {
    Token token = terminal.getSymbol();
    boolean skipped = terminal instanceof ErrorNode;
    frame.broken |= skipped;
    if (token.getTokenIndex() >= next) {
      takeUntil(token.getTokenIndex(), frame.children);
      frame.children.add(take(frame.context, skipped));
    }
  }

  /** Returns a tree of nothing but skipped tokens. */
  SyntaxTree flat() {
    List<SyntaxElement> children = new ArrayList<>();
    takeUntil(scan.tokens().size(), children);
    return new SyntaxTree(SyntaxNode.of(NodeKind.FILE, children, 0, true));
  }

  /** Returns a tree that holds a text as one token. */
  static SyntaxTree unread(String text) {
    Span span = new Span(0, text.length());
    SyntaxToken all = new SyntaxToken(TokenKind.ODD, text, text, span, true, List.of(), List.of());
    return new SyntaxTree(SyntaxNode.of(NodeKind.FILE, List.of(all), 0, true));
  }

  private SyntaxNode node(Frame frame) {
    List<SyntaxElement> children = frame.children;
    NodeKind kind = KINDS[frame.context.getRuleIndex()];
    if (kind == NodeKind.HEAD || kind == NodeKind.RESERVED) {
      kind = NodeKind.NAME;
    }
    if (children.size() == 1 && children.get(0) instanceof SyntaxNode only && !frame.broken) {
      if (THROUGH.contains(kind) || (kind == NodeKind.NAME && only.kind() == NodeKind.NAME)) {
        return only;
      }
    }
    return SyntaxNode.of(kind, children, at, frame.broken);
  }

  private int firstToken(ParserRuleContext context) {
    Token start = context.getStart();
    return context.getChildCount() == 0 || start == null ? next : start.getTokenIndex();
  }

  private void takeUntil(int end, List<SyntaxElement> children) {
    while (next < end) {
      CommonToken token = scan.tokens().get(next);
      if (token.getChannel() == Token.DEFAULT_CHANNEL) {
        children.add(take(null, token.getType() != Token.EOF));
      } else {
        leading.add(trivia(token));
        next++;
      }
    }
  }

  private SyntaxToken take(@Nullable RuleContext in, boolean skipped) {
    CommonToken token = scan.tokens().get(next++);
    Span span = scan.span(token);
    at = span.end();
    List<Trivia> before = List.copyOf(leading);
    leading.clear();
    List<Trivia> after = new ArrayList<>(1);
    boolean sameLine = true;
    while (sameLine && token.getType() != Token.EOF && next < scan.tokens().size()) {
      CommonToken hidden = scan.tokens().get(next);
      if (hidden.getChannel() == Token.DEFAULT_CHANNEL) {
        break;
      }
      next++;
      sameLine = split(hidden, after);
    }
    String text = scan.text(token);
    String spelling = Vocabulary.spelling(token.getType());
    return new SyntaxToken(
        kind(token, in), text, spelling == null ? text : spelling, span, skipped, before, after);
  }

  private static TokenKind kind(Token token, @Nullable RuleContext in) {
    int rule = in == null ? -1 : in.getRuleIndex();
    TokenKind kind = Vocabulary.kind(token.getType());
    if (rule == GripParser.RULE_unit || kind == TokenKind.UNIT) {
      return rule == GripParser.RULE_unit ? TokenKind.UNIT : TokenKind.WORD;
    }
    if (rule == GripParser.RULE_gradeValue && token.getType() == GripLexer.GLUED) {
      return TokenKind.GRADE; // on no scale, which is reported where the scale is known
    }
    boolean name =
        rule == GripParser.RULE_head
            || rule == GripParser.RULE_reserved
            || rule == GripParser.RULE_name;
    return name && kind == TokenKind.KEYWORD ? TokenKind.WORD : kind;
  }

  /**
   * Adds what follows a token on its line to its trailing text; returns whether the line continues.
   */
  private boolean split(CommonToken hidden, List<Trivia> after) {
    Trivia piece = trivia(hidden);
    int lineEnd = piece.kind() == Trivia.Kind.WHITE_SPACE ? lineEnd(piece.text()) : -1;
    if (lineEnd < 0) {
      after.add(piece);
      return true;
    }
    if (lineEnd > 0) {
      after.add(new Trivia(Trivia.Kind.WHITE_SPACE, piece.text().substring(0, lineEnd)));
    }
    leading.add(new Trivia(Trivia.Kind.WHITE_SPACE, piece.text().substring(lineEnd)));
    return false;
  }

  private static int lineEnd(String text) {
    int feed = text.indexOf('\n');
    return feed > 0 && text.charAt(feed - 1) == '\r' ? feed - 1 : feed;
  }

  private Trivia trivia(CommonToken token) {
    String text = scan.text(token);
    Trivia.Kind kind =
        switch (token.getType()) {
          case GripLexer.WHITE_SPACE -> Trivia.Kind.WHITE_SPACE;
          case GripLexer.COMMENT -> Trivia.Kind.COMMENT;
          case GripLexer.MARK ->
              token.getStartIndex() == 0 ? Trivia.Kind.BYTE_ORDER_MARK : Trivia.Kind.ODD;
          default -> Trivia.Kind.ODD;
        };
    return new Trivia(kind, text);
  }
}
