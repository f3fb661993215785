package gripwright.language.check;

import gripwright.expression.Expression;
import gripwright.expression.Kind;
import gripwright.expression.Property;
import gripwright.expression.Type;
import gripwright.finding.Nearest;
import gripwright.language.syntax.Expr;
import gripwright.language.syntax.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Finds the meaning of names in a rule: first among the properties of the innermost subject, then
 * of the enclosing ones. Not thread-safe.
 */
final class ExpressionPaths {

  private final Diagnostics diagnostics;
  private final List<Kind> subjects = new ArrayList<>();

  ExpressionPaths(Diagnostics diagnostics, Kind root) {
    this.diagnostics = diagnostics;
    subjects.add(root);
  }

  void enter(Kind element) {
    subjects.add(element);
  }

  void leave() {
    subjects.remove(subjects.size() - 1);
  }

  Optional<Expression> find(Expr.PathExpr path) {
    Optional<Expression> found = first(path.words().get(0));
    for (Word word : path.words().subList(1, path.words().size())) {
      found = found.flatMap(of -> property(of, word));
    }
    return found;
  }

  /** Returns the meaning of a word, without reporting anything. */
  Optional<Expression> quietly(String word) {
    for (int depth = 0; depth < subjects.size(); depth++) {
      Kind kind = subjects.get(subjects.size() - 1 - depth);
      if (Property.find(kind, word).isPresent()) {
        return Optional.of(Expression.outer(kind, depth).get(word));
      }
      if (kind.word().equals(word)) {
        return Optional.of(Expression.outer(kind, depth));
      }
    }
    return Optional.empty();
  }

  Optional<Expression> first(Word word) {
    Optional<Expression> found = quietly(word.text());
    if (found.isEmpty()) {
      TreeSet<String> known = new TreeSet<>();
      subjects.forEach(kind -> known.addAll(names(kind)));
      unknown(word, subjects.get(subjects.size() - 1), known);
    }
    return found;
  }

  private Optional<Expression> property(Expression of, Word word) {
    if (!(of.type() instanceof Type.One one)) {
      diagnostics.error(
          word,
          of.type() instanceof Type.Many ? "type.several" : "type.no-properties",
          "name",
          word.text(),
          "found",
          of.type().words());
      return Optional.empty();
    }
    if (Property.find(one.kind(), word.text()).isEmpty()) {
      unknown(word, one.kind(), names(one.kind()));
      return Optional.empty();
    }
    return Optional.of(of.get(word.text()));
  }

  private static List<String> names(Kind kind) {
    return Property.of(kind).stream().map(Property::name).toList();
  }

  private void unknown(Word word, Kind owner, Iterable<String> known) {
    List<String> all = new ArrayList<>();
    known.forEach(all::add);
    Optional<String> nearest = Nearest.to(word.text(), all);
    if (nearest.isPresent()) {
      diagnostics.error(
          word,
          "name.property",
          "owner",
          owner.one(),
          "name",
          word.text(),
          "suggestion",
          nearest.get());
    } else {
      diagnostics.error(word, "name.property", "owner", owner.one(), "name", word.text());
    }
  }
}
