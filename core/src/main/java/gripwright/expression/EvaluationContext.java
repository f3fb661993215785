package gripwright.expression;

import gripwright.finding.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where a rule stands when it is asked: the thing it looks at, and the elements of collections gone
 * into so far.
 *
 * @param kinds what each is, outermost first
 * @param things the things themselves
 * @param readers how their properties are read
 */
public record EvaluationContext(List<Kind> kinds, List<Object> things, PropertyReaders readers) {

  /** Returns the context of a thing that a rule looks at. */
  public static EvaluationContext at(Kind kind, Object thing, PropertyReaders readers) {
    return new EvaluationContext(List.of(kind), List.of(thing), readers);
  }

  private EvaluationContext inside(Kind kind, Object element) {
    List<Kind> moreKinds = new ArrayList<>(kinds);
    moreKinds.add(kind);
    List<Object> more = new ArrayList<>(things);
    more.add(element);
    return new EvaluationContext(moreKinds, more, readers);
  }

  double number(Expression value) {
    return ExpressionCompiler.number(value, this);
  }

  boolean fails(Expression condition) {
    return ExpressionCompiler.truth(condition, this) == ExpressionCompiler.NO;
  }

  /** Finds the comparisons that a broken requirement owes to, in the order written. */
  public List<Shortfall> shortfalls(Expression require) {
    if (require instanceof Expression.And and) {
      List<Shortfall> both = new ArrayList<>();
      for (Expression side : List.of(and.left(), and.right())) {
        if (fails(side)) {
          both.addAll(shortfalls(side));
        }
      }
      return both;
    }
    if (require instanceof Expression.Or or) {
      List<Shortfall> left = shortfalls(or.left());
      return left.isEmpty() ? shortfalls(or.right()) : left;
    }
    if (require instanceof Expression.Compare compare) {
      return List.of(Measured.compared(compare, this));
    }
    if (require instanceof Expression.Between between) {
      return List.of(Measured.between(between, this));
    }
    if (require instanceof Expression.Quantify quantify
        && quantify.quantifier() == Expression.Quantifier.EVERY) {
      return worst(quantify).map(s -> s.shortfalls(quantify.body())).orElse(List.of());
    }
    return List.of();
  }

  /** Returns the standing inside the element that misses by most; the first of those alike. */
  private Optional<EvaluationContext> worst(Expression.Quantify every) {
    Kind kind = ((Type.Many) every.collection().type()).kind();
    Optional<EvaluationContext> worst = Optional.empty();
    double most = -1;
    for (Object element : ExpressionCompiler.things(every.collection(), this)) {
      EvaluationContext inside = inside(kind, element);
      boolean counts =
          every.where().isEmpty()
              || ExpressionCompiler.truth(every.where().get(), inside) == ExpressionCompiler.YES;
      if (counts && inside.fails(every.body())) {
        double excess = Excess.at(every.body(), inside);
        worst = excess > most ? Optional.of(inside) : worst;
        most = Math.max(most, excess);
      }
    }
    return worst;
  }

  /** Returns what the innermost element is called; empty outside of collections. */
  Optional<Message> called() {
    if (things.size() == 1) {
      return Optional.empty();
    }
    return things.get(things.size() - 1) instanceof Named named
        ? Optional.of(named.called())
        : Optional.empty();
  }
}
