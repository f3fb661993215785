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
import java.util.HashSet;
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
          NodeKind.TEST_ITEM,
          NodeKind.RULE_ITEM,
          NodeKind.COHORT_ITEM,
          NodeKind.COMPARE_ITEM,
          NodeKind.EXPR,
          NodeKind.CONJUNCTION,
          NodeKind.NEGATION,
          NodeKind.COMPARISON,
          NodeKind.SUM,
          NodeKind.PRODUCT,
          NodeKind.UNARY,
          NodeKind.PRIMARY);

  /** White space shorter than this is shared by all its places. */
  private static final int SHARED_LENGTH = 16;

  private final Scan scan;
  private final List<Trivia> leading = new ArrayList<>();
  private final List<Trivia> trailing = new ArrayList<>();
  private final List<SyntaxElement> elements = new ArrayList<>();
  private final Set<Integer> grades = new HashSet<>();
  private final Set<Integer> skips = new HashSet<>();
  private final @Nullable WhiteSpace[] shared = new WhiteSpace[SHARED_LENGTH];
  private int next;
  private int at;

  TreeBuilder(Scan scan) {
    this.scan = scan;
  }

  /** A piece of white space, and a list with only that piece. */
  private record WhiteSpace(Trivia piece, List<Trivia> alone) {}

  /** A node under construction. */
  private static final class Frame {
    private final ParserRuleContext context;
    private final int from;
    private boolean broken;
    private int done;

    /** Starts a node whose first child is the next element. */
    Frame(ParserRuleContext context, int from) {
      this.context = context;
      this.from = from;
      this.broken = context.exception != null;
    }
  }

  /**
   * Returns the tree of the parser's result. Uses its own stack, since the tree can be deeper than
   * the call stack allows.
   */
  SyntaxTree build(ParserRuleContext parsed) {
    Deque<Frame> open = new ArrayDeque<>();
    Frame frame = new Frame(parsed, 0);
    while (true) {
      if (frame.done < frame.context.getChildCount()) {
        ParseTree child = frame.context.getChild(frame.done++);
        if (child instanceof ParserRuleContext inner) {
          takeUntil(firstToken(inner));
          open.push(frame);
          frame = new Frame(inner, elements.size());
        } else if (child instanceof TerminalNode terminal) {
          add(terminal, frame);
        }
      } else if (open.isEmpty()) {
        takeUntil(scan.tokens().size());
        return new SyntaxTree(SyntaxNode.of(NodeKind.FILE, elements, 0, frame.broken));
      } else {
        SyntaxNode node = node(frame);
        boolean body = Bodies.of(frame.context.getRuleIndex()) != null;
        frame = open.pop();
        elements.add(node);
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
      takeUntil(token.getTokenIndex());
      elements.add(take(frame.context, skipped));
    }
  }

  /** Returns a tree of nothing but skipped tokens. */
  SyntaxTree flat() {
    takeUntil(scan.tokens().size());
    return new SyntaxTree(SyntaxNode.of(NodeKind.FILE, elements, 0, true));
  }

  /** Returns a tree that holds a text as one token. */
  static SyntaxTree unread(String text) {
    Span span = new Span(0, text.length());
    SyntaxToken all = new SyntaxToken(TokenKind.ODD, text, text, span, true, List.of(), List.of());
    return new SyntaxTree(SyntaxNode.of(NodeKind.FILE, List.of(all), 0, true));
  }

  /** Returns the start offsets of the grade tokens. */
  Set<Integer> grades() {
    return grades;
  }

  /** Returns the start offsets of the skipped tokens. */
  Set<Integer> skipped() {
    return skips;
  }

  /** Removes a node's children from the stack and returns the node; the caller adds it. */
  private SyntaxNode node(Frame frame) {
    List<SyntaxElement> children = elements.subList(frame.from, elements.size());
    SyntaxNode node = node(frame, children);
    children.clear();
    return node;
  }

  private SyntaxNode node(Frame frame, List<SyntaxElement> children) {
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

  private void takeUntil(int end) {
    while (next < end) {
      CommonToken token = scan.tokens().get(next);
      if (token.getChannel() == Token.DEFAULT_CHANNEL) {
        elements.add(take(null, token.getType() != Token.EOF));
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
    List<Trivia> before = taken(leading);
    boolean sameLine = true;
    while (sameLine && token.getType() != Token.EOF && next < scan.tokens().size()) {
      CommonToken hidden = scan.tokens().get(next);
      if (hidden.getChannel() == Token.DEFAULT_CHANNEL) {
        break;
      }
      next++;
      sameLine = split(hidden);
    }
    String spelling = Vocabulary.spelling(token.getType());
    String text = spelling != null && scan.isText(token, spelling) ? spelling : scan.text(token);
    TokenKind kind = kind(token, in);
    if (kind == TokenKind.GRADE) {
      grades.add(span.start());
    }
    if (skipped) {
      skips.add(span.start());
    }
    return new SyntaxToken(
        kind, text, spelling == null ? text : spelling, span, skipped, before, taken(trailing));
  }

  /** Returns the collected trivia and clears the list. */
  private List<Trivia> taken(List<Trivia> collected) {
    if (collected.isEmpty()) {
      return List.of();
    }
    Trivia first = collected.get(0);
    int length = first.text().length();
    WhiteSpace known = collected.size() == 1 && length < SHARED_LENGTH ? shared[length] : null;
    List<Trivia> taken =
        known != null && known.piece().equals(first) ? known.alone() : List.copyOf(collected);
    collected.clear();
    return taken;
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
  private boolean split(CommonToken hidden) {
    Trivia piece = trivia(hidden);
    int lineEnd = piece.kind() == Trivia.Kind.WHITE_SPACE ? lineEnd(piece.text()) : -1;
    if (lineEnd < 0) {
      trailing.add(piece);
      return true;
    }
    if (lineEnd == 0) {
      leading.add(piece);
      return false;
    }
    trailing.add(new Trivia(Trivia.Kind.WHITE_SPACE, piece.text().substring(0, lineEnd)));
    leading.add(new Trivia(Trivia.Kind.WHITE_SPACE, piece.text().substring(lineEnd)));
    return false;
  }

  private static int lineEnd(String text) {
    int feed = text.indexOf('\n');
    return feed > 0 && text.charAt(feed - 1) == '\r' ? feed - 1 : feed;
  }

  private Trivia trivia(CommonToken token) {
    if (token.getType() == GripLexer.WHITE_SPACE) {
      return whiteSpace(token);
    }
    String text = scan.text(token);
    Trivia.Kind kind =
        switch (token.getType()) {
          case GripLexer.COMMENT -> Trivia.Kind.COMMENT;
          case GripLexer.MARK ->
              token.getStartIndex() == 0 ? Trivia.Kind.BYTE_ORDER_MARK : Trivia.Kind.ODD;
          default -> Trivia.Kind.ODD;
        };
    return new Trivia(kind, text);
  }

  private Trivia whiteSpace(CommonToken token) {
    int length = scan.end(token) - scan.start(token);
    WhiteSpace last = length < SHARED_LENGTH ? shared[length] : null;
    if (last != null && scan.isText(token, last.piece().text())) {
      return last.piece();
    }
    Trivia piece = new Trivia(Trivia.Kind.WHITE_SPACE, scan.text(token));
    if (length < SHARED_LENGTH) {
      shared[length] = new WhiteSpace(piece, List.of(piece));
    }
    return piece;
  }
}
