package gripwright.expression;

import gripwright.expression.ExpressionCompiler.NumberCode;
import gripwright.expression.ExpressionCompiler.ObjectCode;
import gripwright.expression.ExpressionCompiler.TruthCode;
import java.util.BitSet;
import java.util.List;

/**
 * The excess over a limit as a share of the limit, such as 0.2 for 72 s with a maximum of 60 s. Of
 * several comparisons or elements, the largest violation counts. 0 if no number is compared, or one
 * is missing; infinite if the limit is 0.
 */
public final class Excess {

  private final Compilation compiler;
  private final Evaluation evaluation;
  private final Kinds kinds = new Kinds();

  private Excess(Compilation compiler, Evaluation evaluation) {
    this.compiler = compiler;
    this.evaluation = evaluation;
  }

  /**
   * Compiles the excess of a requirement.
   *
   * @param root kind of the rule's subject
   * @param evaluation counts the elements of collections visited
   */
  public static ExpressionCompiler.Value of(Expression require, Kind root, Evaluation evaluation) {
    Compilation compiler = new Compilation(List.of(root), evaluation);
    return compiler.value(new Excess(compiler, evaluation).code(require));
  }

  /** Calculates the excess in a context. */
  static double at(Expression require, EvaluationContext at) {
    Compilation compiler = new Compilation(at.kinds(), at.evaluation());
    NumberCode code = new Excess(compiler, at.evaluation()).code(require);
    return code.at(compiler.frame(at));
  }

  /** Compiles the excess as part of a larger compilation. */
  static NumberCode code(Expression require, Compilation compiler, Evaluation evaluation) {
    return new Excess(compiler, evaluation).code(require);
  }

  private NumberCode code(Expression require) {
    return require.accept(kinds);
  }

  private final class Kinds extends ComparisonVisitor<NumberCode> {
    @Override
    public NumberCode and(Condition.And and) {
      NumberCode left = ifBroken(and.left());
      NumberCode right = ifBroken(and.right());
      return frame -> Math.max(left.at(frame), right.at(frame));
    }

    @Override
    public NumberCode or(Condition.Or or) {
      NumberCode left = code(or.left());
      NumberCode right = code(or.right());
      return frame -> Math.max(left.at(frame), right.at(frame));
    }

    @Override
    public NumberCode compare(Condition.Compare compare) {
      NumberCode was = compiler.number(compare.left());
      NumberCode limit = compiler.number(compare.right());
      return frame -> share(was.at(frame), limit.at(frame));
    }

    @Override
    public NumberCode between(Condition.Between between) {
      NumberCode value = compiler.number(between.value());
      NumberCode low = compiler.number(between.low());
      NumberCode high = compiler.number(between.high());
      return frame -> {
        double was = value.at(frame);
        return share(was, was < low.at(frame) ? low.at(frame) : high.at(frame));
      };
    }

    @Override
    NumberCode every(Condition.Quantify every) {
      return throughAll(every);
    }

    @Override
    NumberCode nothing() {
      return frame -> 0;
    }
  }

  private NumberCode ifBroken(Expression side) {
    TruthCode holds = compiler.truth(side);
    NumberCode excess = code(side);
    return frame -> holds.at(frame) == ExpressionCompiler.NO ? excess.at(frame) : 0;
  }

  private static double share(double was, double limit) {
    double by = Math.abs(was - limit);
    return by > 0 ? by / Math.abs(limit) : 0;
  }

  private NumberCode throughAll(Condition.Quantify every) {
    ObjectCode collection = compiler.object(every.collection());
    BitSet around = compiler.referenced;
    compiler.referenced = new BitSet();
    int place = compiler.enterElementOf(every.collection());
    int before = compiler.compiled();
    TruthCode where = compiler.where(every.where());
    NumberCode body = ifBroken(every.body());
    int weight = compiler.weightSince(before);
    compiler.leave();
    NumberCode code =
        frame -> {
          double most = 0;
          if (collection.at(frame) instanceof List<?> things) {
            for (Object thing : things) {
              evaluation.take(weight);
              frame[place] = thing;
              if (where.at(frame) == ExpressionCompiler.YES) {
                most = Math.max(most, body.at(frame));
              }
            }
          }
          return most;
        };
    return compiler.asOnce(around, place, collection, code);
  }
}
