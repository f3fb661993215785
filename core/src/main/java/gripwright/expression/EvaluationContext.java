package gripwright.expression;

import gripwright.finding.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The context of an evaluation: the subject of a rule, and the elements of collections entered so
 * far.
 *
 * @param kinds kind of each, outermost first
 * @param things the things themselves
 * @param evaluation reads their properties and counts the things visited
 */
public record EvaluationContext(List<Kind> kinds, List<Object> things, Evaluation evaluation) {

  /** Returns the context of a rule's subject. */
  public static EvaluationContext at(Kind kind, Object thing, PropertyReaders readers) {
    return at(kind, thing, new Evaluation(readers));
  }

  /** Returns the context of a rule's subject, with a shared evaluation. */
  public static EvaluationContext at(Kind kind, Object thing, Evaluation evaluation) {
    return new EvaluationContext(List.of(kind), List.of(thing), evaluation);
  }

  private EvaluationContext inside(Kind kind, Object element) {
    List<Kind> moreKinds = new ArrayList<>(kinds);
    moreKinds.add(kind);
    List<Object> more = new ArrayList<>(things);
    more.add(element);
    return new EvaluationContext(moreKinds, more, evaluation);
  }

  double number(Expression value) {
    return ExpressionCompiler.number(value, this);
  }

  boolean fails(Expression condition) {
    return ExpressionCompiler.truth(condition, this) == ExpressionCompiler.NO;
  }

  /** Finds the comparisons that make a requirement fail, in the order written. */
  public List<Shortfall> shortfalls(Expression require) {
    return require.accept(new Shortfalls());
  }

  private final class Shortfalls extends ComparisonVisitor<List<Shortfall>> {
    @Override
    public List<Shortfall> and(Condition.And and) {
      List<Shortfall> both = new ArrayList<>();
      for (Expression side : List.of(and.left(), and.right())) {
        if (fails(side)) {
          both.addAll(side.accept(this));
        }
      }
      return both;
    }

    @Override
    public List<Shortfall> or(Condition.Or or) {
      List<Shortfall> left = or.left().accept(this);
      return left.isEmpty() ? or.right().accept(this) : left;
    }

    @Override
    public List<Shortfall> compare(Condition.Compare compare) {
      return List.of(Measured.compared(compare, EvaluationContext.this));
    }

    @Override
    public List<Shortfall> between(Condition.Between between) {
      return List.of(Measured.between(between, EvaluationContext.this));
    }

    @Override
    List<Shortfall> every(Condition.Quantify every) {
      return worst(every).map(s -> s.shortfalls(every.body())).orElse(List.of());
    }

    @Override
    List<Shortfall> nothing() {
      return List.of();
    }
  }

  /**
   * Returns the context of the element that violates a condition most; the first of several equal
   * ones.
   */
  private Optional<EvaluationContext> worst(Condition.Quantify every) {
    List<?> elements = ExpressionCompiler.things(every.collection(), this);
    if (elements.isEmpty()) {
      return Optional.empty();
    }
    Kind kind = ((Type.Many) every.collection().type()).kind();
    EvaluationContext first = inside(kind, elements.get(0));
    Compilation compiler = new Compilation(first.kinds(), evaluation);
    int before = compiler.compiled();
    ExpressionCompiler.TruthCode where = compiler.where(every.where());
    ExpressionCompiler.TruthCode body = compiler.truth(every.body());
    ExpressionCompiler.NumberCode excess = Excess.code(every.body(), compiler, evaluation);
    int weight = compiler.weightSince(before);
    @Nullable Object[] frame = compiler.frame(first);
    @Nullable Object worst = null;
    double most = -1;
    for (Object element : elements) {
      evaluation.take(weight);
      frame[things.size()] = element;
      if (where.at(frame) == ExpressionCompiler.YES && body.at(frame) == ExpressionCompiler.NO) {
        double by = excess.at(frame);
        worst = by > most ? element : worst;
        most = Math.max(most, by);
      }
    }
    return Optional.ofNullable(worst).map(element -> inside(kind, element));
  }

  /** Returns the name of the innermost element; empty outside of collections. */
  Optional<Message> called() {
    if (things.size() == 1) {
      return Optional.empty();
    }
    return things.get(things.size() - 1) instanceof Named named
        ? Optional.of(named.called())
        : Optional.empty();
  }
}
