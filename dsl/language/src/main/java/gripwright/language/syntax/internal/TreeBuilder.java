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
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.RuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.tree.ErrorNode;
import org.antlr.v4.runtime.tree.ParseTree;
import org.antlr.v4.runtime.tree.TerminalNode;

/**
 * Makes the lossless tree of what the parser found and of every token, in the order of the text. A
 * token the parser left out is in the tree too, as a skipped one.
 */
final class TreeBuilder {

  private static final NodeKind[] KINDS = kinds();

  /** Nodes that are replaced by what they hold if that is one node and nothing else. */
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

  private static NodeKind[] kinds() {
    NodeKind[] kinds = new NodeKind[GripParser.ruleNames.length];
    for (int rule = 0; rule < kinds.length; rule++) {
      kinds[rule] =
          NodeKind.valueOf(
              GripParser.ruleNames[rule]
                  .replaceAll("_$", "")
                  .replaceAll("([a-z])([A-Z])", "$1_$2")
                  .toUpperCase(Locale.ROOT));
    }
    return kinds;
  }

  /** Returns the tree of what the parser found. */
  SyntaxTree build(ParserRuleContext parsed) {
    List<SyntaxElement> children = new ArrayList<>();
    boolean broken = children(parsed, children);
    takeUntil(scan.tokens().size(), children);
    return new SyntaxTree(SyntaxNode.of(NodeKind.FILE, children, 0, broken));
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

  private SyntaxNode node(ParserRuleContext context) {
    List<SyntaxElement> children = new ArrayList<>();
    boolean broken = children(context, children);
    NodeKind kind = KINDS[context.getRuleIndex()];
    if (kind == NodeKind.HEAD) {
      kind = NodeKind.NAME;
    }
    if (children.size() == 1 && children.get(0) instanceof SyntaxNode only && !broken) {
      if (THROUGH.contains(kind) || (kind == NodeKind.NAME && only.kind() == NodeKind.NAME)) {
        return only;
      }
    }
    return SyntaxNode.of(kind, children, at, broken);
  }

  /** Adds what is in a context; tells whether something is wrong there. */
  private boolean children(ParserRuleContext context, List<SyntaxElement> children) {
    boolean body = Bodies.of(context.getRuleIndex()) != null;
    boolean broken = context.exception != null;
    int count = context.getChildCount();
    for (int i = 0; i < count; i++) {
      ParseTree child = context.getChild(i);
      if (child instanceof ParserRuleContext inner) {
        takeUntil(firstToken(inner), children);
        SyntaxNode node = node(inner);
        children.add(node);
        broken |= node.broken() && Bodies.of(inner.getRuleIndex()) == null;
      } else if (child instanceof TerminalNode terminal) {
        Token token = terminal.getSymbol();
        boolean skipped = terminal instanceof ErrorNode;
        broken |= skipped;
        if (token.getTokenIndex() >= next) {
          takeUntil(token.getTokenIndex(), children);
          children.add(take(context, skipped));
        } else if (body) {
          broken = true;
        }
      }
    }
    return broken;
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
        leading.addAll(trivia(token));
        next++;
      }
    }
  }

  private SyntaxToken take(@org.jspecify.annotations.Nullable RuleContext in, boolean skipped) {
    CommonToken token = scan.tokens().get(next++);
    Span span = scan.span(token);
    at = span.end();
    List<Trivia> before = new ArrayList<>(leading);
    leading.clear();
    List<Trivia> after = new ArrayList<>();
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

  private static TokenKind kind(Token token, @org.jspecify.annotations.Nullable RuleContext in) {
    int rule = in == null ? -1 : in.getRuleIndex();
    TokenKind kind = Vocabulary.kind(token.getType());
    if (rule == GripParser.RULE_unit || kind == TokenKind.UNIT) {
      return rule == GripParser.RULE_unit ? TokenKind.UNIT : TokenKind.WORD;
    }
    boolean name =
        rule == GripParser.RULE_head
            || rule == GripParser.RULE_reserved
            || rule == GripParser.RULE_name;
    return name && kind == TokenKind.KEYWORD ? TokenKind.WORD : kind;
  }

  /** Adds what is on the line of a token to what trails it; tells whether the line goes on. */
  private boolean split(CommonToken hidden, List<Trivia> after) {
    List<Trivia> pieces = trivia(hidden);
    for (Trivia piece : pieces) {
      int lineEnd = piece.kind() == Trivia.Kind.WHITE_SPACE ? lineEnd(piece.text()) : -1;
      if (lineEnd < 0) {
        after.add(piece);
      } else {
        if (lineEnd > 0) {
          after.add(new Trivia(Trivia.Kind.WHITE_SPACE, piece.text().substring(0, lineEnd)));
        }
        leading.add(new Trivia(Trivia.Kind.WHITE_SPACE, piece.text().substring(lineEnd)));
        return false;
      }
    }
    return true;
  }

  private static int lineEnd(String text) {
    int feed = text.indexOf('\n');
    return feed > 0 && text.charAt(feed - 1) == '\r' ? feed - 1 : feed;
  }

  private List<Trivia> trivia(CommonToken token) {
    Trivia.Kind kind =
        switch (token.getType()) {
          case GripLexer.WHITE_SPACE -> Trivia.Kind.WHITE_SPACE;
          case GripLexer.COMMENT -> Trivia.Kind.COMMENT;
          case GripLexer.MARK ->
              token.getStartIndex() == 0 ? Trivia.Kind.BYTE_ORDER_MARK : Trivia.Kind.ODD;
          default -> Trivia.Kind.ODD;
        };
    return List.of(new Trivia(kind, scan.text(token)));
  }
}
