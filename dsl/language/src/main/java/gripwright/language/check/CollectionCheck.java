package gripwright.language.check;

import gripwright.expression.Condition;
import gripwright.expression.Condition.Quantifier;
import gripwright.expression.Expression;
import gripwright.expression.Expression.Summary;
import gripwright.expression.Type;
import gripwright.language.syntax.Expr;
import gripwright.language.syntax.Word;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Builds expressions over collections. */
final class CollectionCheck {

  private final ExpressionCheck expressions;
  private final Diagnostics diagnostics;
  private final ExpressionText text;
  private final ExpressionPaths paths;

  CollectionCheck(
      ExpressionCheck expressions,
      Diagnostics diagnostics,
      ExpressionText text,
      ExpressionPaths paths) {
    this.expressions = expressions;
    this.diagnostics = diagnostics;
    this.text = text;
    this.paths = paths;
  }

  /** Returns a summary of several values; empty if there is a mistake, which is reported. */
  Optional<Expression> aggregate(Expr.Aggregate aggregate) {
    Optional<Summary> summary = summary(aggregate.function());
    Optional<Expression> collection = collection(aggregate.collection());
    if (summary.isEmpty() || collection.isEmpty()) {
      return Optional.empty();
    }
    paths.enter(((Type.Many) collection.get().type()).kind());
    Expr each = aggregate.value();
    Optional<Expression> value = each == null ? Optional.empty() : summed(summary.get(), each);
    Optional<Expression> where =
        aggregate.where() == null ? Optional.empty() : expressions.truth(aggregate.where());
    paths.leave();
    return value.isPresent() == (each != null) && where.isPresent() == (aggregate.where() != null)
        ? Optional.of(new Expression.Summarize(summary.get(), collection.get(), value, where))
        : Optional.empty();
  }

  /**
   * Returns a condition on every or any element; empty if there is a mistake, which is reported.
   */
  Optional<Expression> quantifier(Expr.Quantifier quantifier) {
    Optional<Expression> collection = collection(quantifier.collection());
    if (collection.isEmpty()) {
      return collection;
    }
    boolean every = quantifier.function().text().equals("every");
    paths.enter(((Type.Many) collection.get().type()).kind());
    Optional<Expression> where =
        quantifier.where() == null ? Optional.empty() : expressions.truth(quantifier.where());
    Optional<Expression> body =
        quantifier.body() == null
            ? Optional.of(new Condition.Truth(true))
            : expressions.truth(quantifier.body());
    paths.leave();
    if (every && quantifier.body() == null) {
      diagnostics.error(quantifier, "value.every-what", "text", text.of(quantifier));
      return Optional.empty();
    }
    return body.isPresent() && where.isPresent() == (quantifier.where() != null)
        ? Optional.of(
            new Condition.Quantify(
                every ? Quantifier.EVERY : Quantifier.ANY, collection.get(), where, body.get()))
        : Optional.empty();
  }

  private Optional<Expression> collection(Expr.PathExpr path) {
    Optional<Expression> found = paths.find(path);
    return found.isPresent() && !(found.get().type() instanceof Type.Many)
        ? expressions.wanted(path, found.get(), Terms.of("several-things"))
        : found;
  }

  private Optional<Summary> summary(Word function) {
    List<String> known =
        Arrays.stream(Summary.values()).map(s -> s.name().toLowerCase(Locale.ROOT)).toList();
    return diagnostics.word(
        function,
        "way-to-sum-up",
        word ->
            known.contains(word)
                ? Optional.of(Summary.values()[known.indexOf(word)])
                : Optional.empty(),
        known);
  }

  private Optional<Expression> summed(Summary summary, Expr expr) {
    Optional<Expression> found = expressions.value(expr);
    if (found.isEmpty()) {
      return found;
    }
    Type type = found.get().type();
    boolean fits =
        switch (summary) {
          case SUM, COUNT -> type instanceof Type.Quantity;
          case MEAN -> type instanceof Type.Quantity || type == Type.Plain.LEVEL;
          case LARGEST, SMALLEST -> type.ordered();
        };
    return fits ? found : expressions.wanted(expr, found.get(), Terms.of("number"));
  }
}
