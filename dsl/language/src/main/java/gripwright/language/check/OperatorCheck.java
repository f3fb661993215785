package gripwright.language.check;

import gripwright.expression.Condition;
import gripwright.expression.Condition.Relation;
import gripwright.expression.Expression;
import gripwright.expression.Expression.Operation;
import gripwright.expression.Type;
import gripwright.finding.Message;
import gripwright.language.syntax.Amount;
import gripwright.language.syntax.DateText;
import gripwright.language.syntax.Expr;
import gripwright.language.syntax.Text;
import java.util.Optional;
import java.util.function.Function;

/**
 * Builds an expression of two values and the operator between them, and checks that they are
 * compatible.
 */
final class OperatorCheck {

  /** Returns whether a value is a literal, so that a mistake can be shown there. */
  private static final Expr.Visitor<Boolean> LITERAL =
      new Expr.Visitor<>() {
        @Override
        public Boolean amount(Amount value) {
          return true;
        }

        @Override
        public Boolean dateText(DateText value) {
          return true;
        }

        @Override
        public Boolean text(Text value) {
          return false;
        }

        @Override
        public Boolean percentOfMax(Expr.PercentOfMax value) {
          return true;
        }

        @Override
        public Boolean reserveLevel(Expr.ReserveLevel value) {
          return false;
        }

        @Override
        public Boolean effortLevel(Expr.EffortLevel value) {
          return false;
        }

        @Override
        public Boolean gradeLiteral(Expr.GradeLiteral value) {
          return true;
        }

        @Override
        public Boolean pathExpr(Expr.PathExpr value) {
          return false;
        }

        @Override
        public Boolean calculation(Expr.Calculation value) {
          return false;
        }
      };

  private final ExpressionCheck expressions;
  private final Diagnostics diagnostics;
  private final ExpressionText text;

  OperatorCheck(ExpressionCheck expressions, Diagnostics diagnostics, ExpressionText text) {
    this.expressions = expressions;
    this.diagnostics = diagnostics;
    this.text = text;
  }

  /** Returns the expression of both values; empty if there is a mistake, which is reported. */
  Optional<Expression> check(Expr.Binary binary) {
    return switch (binary.operator()) {
      case OR -> both(binary, expressions::truth).map(b -> b.left().or(b.right()));
      case AND -> both(binary, expressions::truth).map(b -> b.left().and(b.right()));
      case LESS -> compare(binary, Relation.LESS);
      case AT_MOST -> compare(binary, Relation.AT_MOST);
      case GREATER -> compare(binary, Relation.GREATER);
      case AT_LEAST -> compare(binary, Relation.AT_LEAST);
      case EQUAL -> compare(binary, Relation.EQUAL);
      case NOT_EQUAL -> compare(binary, Relation.NOT_EQUAL);
      case PLUS -> arithmetic(binary, Operation.PLUS, Terms.of("added"));
      case MINUS -> arithmetic(binary, Operation.MINUS, Terms.of("subtracted"));
      case TIMES -> arithmetic(binary, Operation.TIMES, Terms.of("multiplied"));
      case DIVIDE -> arithmetic(binary, Operation.DIVIDED_BY, Terms.of("divided"));
    };
  }

  private record Sides(Expression left, Expression right) {}

  private Optional<Sides> both(Expr.Binary binary, Function<Expr, Optional<Expression>> read) {
    Optional<Expression> left = read.apply(binary.left());
    Optional<Expression> right = read.apply(binary.right());
    return left.flatMap(one -> right.map(other -> new Sides(one, other)));
  }

  private Optional<Expression> compare(Expr.Binary binary, Relation relation) {
    Optional<Expression> left = expressions.value(binary.left());
    if (left.isPresent() && ExpressionWords.takesWords(left.get())) {
      diagnostics.error(
          binary,
          "type.word-compared",
          "text",
          text.of(binary.left()),
          "found",
          left.get().type().words(),
          "sign",
          relation.symbol());
      return Optional.empty();
    }
    Optional<Expression> right = expressions.value(binary.right());
    if (left.isEmpty() || right.isEmpty()) {
      return Optional.empty();
    }
    return comparable(binary, binary.left(), left.get(), binary.right(), right.get())
        ? Optional.of(new Condition.Compare(relation, left.get(), right.get()))
        : Optional.empty();
  }

  /** Returns whether two values can be compared; reports it if they can't. */
  boolean comparable(Expr whole, Expr left, Expression one, Expr right, Expression other) {
    boolean fits = one.type().comparesWith(other.type());
    if (!fits) {
      mismatch(whole, left, one, right, other, Terms.of("compared"));
    }
    return fits;
  }

  /** Reports two incompatible values, at the literal if one of them is a literal. */
  private void mismatch(
      Expr whole, Expr left, Expression one, Expr right, Expression other, Message deed) {
    Expr at = isLiteral(right) ? right : isLiteral(left) ? left : whole;
    boolean units = one.type() instanceof Type.Quantity && other.type() instanceof Type.Quantity;
    diagnostics.error(
        at,
        units ? "unit.sides" : "type.sides",
        "left",
        text.of(left),
        "leftType",
        one.type().words(),
        "right",
        text.of(right),
        "rightType",
        other.type().words(),
        "deed",
        deed);
  }

  private static boolean isLiteral(Expr expr) {
    return expr.accept(LITERAL);
  }

  private Optional<Expression> arithmetic(Expr.Binary binary, Operation operation, Message deed) {
    Optional<Sides> sides = both(binary, expressions::value);
    if (sides.isEmpty()) {
      return Optional.empty();
    }
    Expression left = sides.get().left();
    Expression right = sides.get().right();
    if (operation == Operation.DIVIDED_BY
        && binary.right() instanceof Amount amount
        && amount.value() == 0) {
      diagnostics.error(binary.right(), "value.divisor", "text", text.of(binary));
      return Optional.empty();
    }
    Optional<Type> type =
        switch (operation) {
          case PLUS -> left.type().plus(right.type());
          case MINUS -> left.type().minus(right.type());
          case TIMES -> left.type().times(right.type());
          case DIVIDED_BY -> left.type().dividedBy(right.type());
        };
    if (type.isEmpty()) {
      mismatch(binary, binary.left(), left, binary.right(), right, deed);
      return Optional.empty();
    }
    return Optional.of(new Expression.Arithmetic(operation, left, right));
  }
}
