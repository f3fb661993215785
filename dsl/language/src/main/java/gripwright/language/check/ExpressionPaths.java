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
 * Finds what names in a rule stand for: first among the properties of the innermost thing, then of
 * what stands around it. Not thread-safe.
 */
final class ExpressionPaths {

  private final Ledger ledger;
  private final List<Kind> subjects = new ArrayList<>();

  ExpressionPaths(Ledger ledger, Kind root) {
    this.ledger = ledger;
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

  /** Returns what one word stands for, without reporting anything. */
  Optional<Expression> quietly(String word) {
    for (int outward = 0; outward < subjects.size(); outward++) {
      Kind kind = subjects.get(subjects.size() - 1 - outward);
      if (Property.find(kind, word).isPresent()) {
        return Optional.of(Expression.outer(kind, outward).get(word));
      }
      if (kind.word().equals(word)) {
        return Optional.of(Expression.outer(kind, outward));
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
      ledger.error(
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
      ledger.error(
          word,
          "name.property",
          "owner",
          owner.one(),
          "name",
          word.text(),
          "suggestion",
          nearest.get());
    } else {
      ledger.error(word, "name.property", "owner", owner.one(), "name", word.text());
    }
  }
}
