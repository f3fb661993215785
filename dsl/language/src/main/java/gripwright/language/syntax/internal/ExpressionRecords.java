package gripwright.language.syntax.internal;

import static gripwright.language.syntax.internal.Parts.in;
import static gripwright.language.syntax.internal.Parts.list;

import gripwright.language.source.Span;
import gripwright.language.syntax.Amount;
import gripwright.language.syntax.Expr;
import gripwright.language.syntax.NodeKind;
import gripwright.language.syntax.Parameter;
import gripwright.language.syntax.SyntaxElement;
import gripwright.language.syntax.SyntaxNode;
import gripwright.language.syntax.SyntaxToken;
import gripwright.language.syntax.TokenKind;
import gripwright.language.syntax.Word;
import gripwright.quantity.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads literals and calculations. Chains are folded to the left in a loop. */
final class ExpressionRecords {

  private static final Map<String, Expr.Operator> OPERATORS = operators();

  private final Parts parts;
  private final Mistakes mistakes;
  private final int maxOperators;

  ExpressionRecords(Parts parts, Mistakes mistakes, int maxOperators) {
    this.parts = parts;
    this.mistakes = mistakes;
    this.maxOperators = maxOperators;
  }

  private static Map<String, Expr.Operator> operators() {
    Map<String, Expr.Operator> operators = new HashMap<>();
    for (Expr.Operator operator : Expr.Operator.values()) {
      operators.put(operator.symbol(), operator);
    }
    return Map.copyOf(operators);
  }

  Parameter parameter(SyntaxNode node) {
    return new Parameter(parts.id(node), parts.word(in(node, 0)), expression(in(node, 1)));
  }

  List<Parameter> parameters(SyntaxNode node) {
    return list(node.nodes(NodeKind.PARAMETER), this::parameter);
  }

  /** Reads a whole expression, unless it is too long. */
  Expr expression(SyntaxNode node) {
    List<SyntaxToken> operators = new ArrayList<>();
    node.tokens(
        token -> {
          if (operators.size() <= maxOperators && isOperator(token)) {
            operators.add(token);
          }
        });
    if (operators.size() > maxOperators) {
      mistakes.add(
          operators.get(maxOperators).span(),
          Mistakes.error("syntax.too-long").with("most", maxOperators));
      throw new Parts.Incomplete();
    }
    return expr(node);
  }

  private static boolean isOperator(SyntaxToken token) {
    return token.kind() != TokenKind.WORD && OPERATORS.containsKey(token.readAs());
  }

  private Expr expr(SyntaxNode node) {
    return switch (node.kind()) {
      case EXPR, CONJUNCTION, SUM, PRODUCT -> chain(node);
      case NEGATION -> new Expr.Not(parts.id(node), expr(in(node, 0)));
      case COMPARISON -> comparison(node);
      case UNARY -> negated(node);
      case NUMBER -> number(node);
      case RESERVE ->
          new Expr.ReserveLevel(parts.id(node), parts.amount(in(node, NodeKind.PLAIN_AMOUNT)));
      case EXERTION ->
          new Expr.EffortLevel(parts.id(node), parts.amount(in(node, NodeKind.PLAIN_AMOUNT)));
      case GRADE_LITERAL ->
          new Expr.GradeLiteral(parts.id(node), parts.word(in(node, 0)), parts.word(in(node, 1)));
      case DATE -> parts.date(node);
      case TEXT -> parts.text(node);
      case HAS -> new Expr.Has(parts.id(node), parts.word(node, NodeKind.NAME));
      case AGGREGATE ->
          new Expr.Aggregate(
              parts.id(node), function(node), expr(in(node, 0)), path(in(node, 1)), where(node));
      case COUNT ->
          new Expr.Aggregate(
              parts.id(node), function(node), null, path(in(node, NodeKind.PATH)), where(node));
      case QUANTIFIER -> quantifier(node);
      case PATH -> path(node);
      case GROUP -> expr(in(node, 0));
      default -> throw new Parts.Incomplete();
    };
  }

  private Expr chain(SyntaxNode node) {
    Expr left = null;
    Span span = node.span();
    Expr.Operator operator = Expr.Operator.OR;
    for (SyntaxElement child : node.children()) {
      if (child instanceof SyntaxToken token) {
        operator = operator(token);
      } else if (child instanceof SyntaxNode term) {
        if (left == null) {
          left = expr(term);
        } else {
          int id = parts.id(Span.between(span.start(), term.span().end()));
          left = new Expr.Binary(id, operator, left, expr(term));
        }
      }
    }
    if (left == null) {
      throw new Parts.Incomplete();
    }
    return left;
  }

  private static Expr.Operator operator(SyntaxToken token) {
    Expr.Operator operator = OPERATORS.get(token.readAs());
    if (operator == null) {
      throw new Parts.Incomplete();
    }
    return operator;
  }

  private Expr comparison(SyntaxNode node) {
    int id = parts.id(node);
    Expr subject = expr(in(node, 0));
    SyntaxNode test = in(node, 1);
    return switch (test.kind()) {
      case RELATION -> new Expr.Binary(id, operator(Parts.token(test)), subject, expr(in(node, 2)));
      case IS_TEST -> new Expr.Is(id, subject, test.has("not"), parts.word(test, NodeKind.NAME));
      case IN_TEST -> new Expr.In(id, subject, test.has("not"), list(test.nodes(), this::expr));
      case BETWEEN_TEST -> new Expr.BetweenExpr(id, subject, expr(in(test, 0)), expr(in(test, 1)));
      default -> throw new Parts.Incomplete();
    };
  }

  private Expr negated(SyntaxNode node) {
    SyntaxNode operand = in(node, 0);
    if (operand.kind() == NodeKind.NUMBER && operand.node(NodeKind.OF_WHAT).isEmpty()) {
      double value = Parts.number(operand);
      return new Amount(parts.id(node), value == 0 ? 0 : -value, unit(operand));
    }
    return new Expr.Negate(parts.id(node), expr(operand));
  }

  private Expr number(SyntaxNode node) {
    double value = Parts.number(node);
    Unit unit = unit(node);
    Optional<SyntaxNode> of = node.node(NodeKind.OF_WHAT);
    if (of.isEmpty()) {
      return new Amount(parts.id(node), value, unit);
    }
    if (unit != Unit.PERCENT) {
      throw new Parts.Incomplete();
    }
    return of.get().has("max")
        ? new Expr.PercentOfMax(parts.id(node), value)
        : new Expr.PercentOf(parts.id(node), value, expr(in(of.get(), 0)));
  }

  private static @Nullable Unit unit(SyntaxNode number) {
    return number.has("%") ? Unit.PERCENT : Parts.unit(number);
  }

  private Expr quantifier(SyntaxNode node) {
    int id = parts.id(node);
    Word function = function(node);
    Expr.PathExpr collection = path(in(node, NodeKind.PATH));
    Expr where = where(node);
    SyntaxNode body = Parts.after(node, ":");
    return new Expr.Quantifier(id, function, collection, where, body == null ? null : expr(body));
  }

  private Word function(SyntaxNode node) {
    SyntaxToken token = Parts.token(node);
    return new Word(parts.id(token), token.readAs());
  }

  private @Nullable Expr where(SyntaxNode node) {
    return node.node(NodeKind.WHERE).map(w -> expr(in(w, 0))).orElse(null);
  }

  private Expr.PathExpr path(SyntaxNode node) {
    return new Expr.PathExpr(parts.id(node), list(node.nodes(NodeKind.NAME), parts::word));
  }
}
