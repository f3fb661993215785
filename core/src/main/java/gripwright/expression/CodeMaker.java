package gripwright.expression;

import static gripwright.expression.ExpressionCompiler.NO;
import static gripwright.expression.ExpressionCompiler.UNDECIDED;
import static gripwright.expression.ExpressionCompiler.YES;

import gripwright.expression.Condition.Relation;
import gripwright.expression.ExpressionCompiler.Code;
import gripwright.expression.ExpressionCompiler.NumberCode;
import gripwright.expression.ExpressionCompiler.ObjectCode;
import gripwright.expression.ExpressionCompiler.TruthCode;
import java.util.BitSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleBinaryOperator;

/** Compiles each kind of expression to code, in the frame of a compilation. */
final class CodeMaker implements ExpressionVisitor<Code> {

  private final Compilation compiler;
  private final Evaluation evaluation;

  CodeMaker(Compilation compiler, Evaluation evaluation) {
    this.compiler = compiler;
    this.evaluation = evaluation;
  }

  @Override
  public NumberCode literal(Literal literal) {
    double value = literal.number();
    return frame -> value;
  }

  @Override
  public TruthCode truth(Condition.Truth truth) {
    int value = truth.value() ? YES : NO;
    return frame -> value;
  }

  @Override
  public ObjectCode subject(Expression.Subject subject) {
    return compiler.subject(subject);
  }

  @Override
  public Code get(Expression.Get get) {
    ObjectCode of = compiler.object(get.of());
    return evaluation.access(get).accept(new Reading(of));
  }

  @Override
  public TruthCode has(Condition.Has has) {
    Expression value = has.value();
    if (value.type().ordered()) {
      NumberCode number = compiler.number(value);
      return frame -> Double.isNaN(number.at(frame)) ? NO : YES;
    }
    if (value.type() == Type.Plain.TRUTH) {
      TruthCode truth = compiler.truth(value);
      return frame -> truth.at(frame) == UNDECIDED ? NO : YES;
    }
    ObjectCode object = compiler.object(value);
    return frame -> object.at(frame) == null ? NO : YES;
  }

  @Override
  public TruthCode compare(Condition.Compare compare) {
    return compared(
        compare.relation(), compiler.number(compare.left()), compiler.number(compare.right()));
  }

  @Override
  public TruthCode between(Condition.Between between) {
    NumberCode value = compiler.number(between.value());
    TruthCode low = compared(Relation.AT_LEAST, value, compiler.number(between.low()));
    TruthCode high = compared(Relation.AT_MOST, value, compiler.number(between.high()));
    return frame -> Math.min(low.at(frame), high.at(frame));
  }

  @Override
  public TruthCode is(Condition.Is is) {
    return oneOf(compiler.object(is.value()), Set.copyOf(is.words()));
  }

  @Override
  public NumberCode arithmetic(Expression.Arithmetic arithmetic) {
    NumberCode left = compiler.number(arithmetic.left());
    NumberCode right = compiler.number(arithmetic.right());
    DoubleBinaryOperator operation = Arithmetic.operation(arithmetic);
    return frame -> operation.applyAsDouble(left.at(frame), right.at(frame));
  }

  @Override
  public NumberCode negate(Expression.Negate negate) {
    NumberCode operand = compiler.number(negate.operand());
    return frame -> -operand.at(frame);
  }

  @Override
  public TruthCode and(Condition.And and) {
    TruthCode left = compiler.truth(and.left());
    TruthCode right = compiler.truth(and.right());
    return frame -> {
      int first = left.at(frame);
      return first == NO ? NO : Math.min(first, right.at(frame));
    };
  }

  @Override
  public TruthCode or(Condition.Or or) {
    TruthCode left = compiler.truth(or.left());
    TruthCode right = compiler.truth(or.right());
    return frame -> {
      int first = left.at(frame);
      return first == YES ? YES : Math.max(first, right.at(frame));
    };
  }

  @Override
  public TruthCode not(Condition.Not not) {
    TruthCode operand = compiler.truth(not.operand());
    return frame -> YES - operand.at(frame);
  }

  @Override
  public NumberCode summarize(Expression.Summarize summarize) {
    ObjectCode collection = compiler.object(summarize.collection());
    BitSet around = compiler.referenced;
    compiler.referenced = new BitSet();
    int place = compiler.enterElementOf(summarize.collection());
    int before = compiler.compiled();
    TruthCode where = compiler.where(summarize.where());
    NumberCode value =
        summarize.value().isPresent() ? compiler.number(summarize.value().get()) : f -> 1;
    int weight = compiler.weightSince(before);
    compiler.leave();
    Expression.Summary summary = summarize.summary();
    NumberCode code =
        frame -> {
          if (!(collection.at(frame) instanceof List<?> things)) {
            return Double.NaN;
          }
          Tally tally = new Tally();
          for (Object thing : things) {
            evaluation.take(weight);
            frame[place] = thing;
            if (where.at(frame) == YES) {
              tally.add(value.at(frame));
            }
          }
          return tally.result(summary);
        };
    return compiler.asOnce(around, place, collection, code);
  }

  @Override
  public TruthCode quantify(Condition.Quantify quantify) {
    ObjectCode collection = compiler.object(quantify.collection());
    BitSet around = compiler.referenced;
    compiler.referenced = new BitSet();
    int place = compiler.enterElementOf(quantify.collection());
    int before = compiler.compiled();
    TruthCode where = compiler.where(quantify.where());
    TruthCode body = compiler.truth(quantify.body());
    int weight = compiler.weightSince(before);
    compiler.leave();
    boolean every = quantify.quantifier() == Condition.Quantifier.EVERY;
    int decided = every ? NO : YES;
    TruthCode code =
        frame -> {
          if (!(collection.at(frame) instanceof List<?> things)) {
            return UNDECIDED;
          }
          int result = YES - decided;
          for (Object thing : things) {
            evaluation.take(weight);
            frame[place] = thing;
            if (where.at(frame) == YES) {
              int one = body.at(frame);
              if (one == decided) {
                return decided;
              }
              result = one == UNDECIDED ? UNDECIDED : result;
            }
          }
          return result;
        };
    NumberCode number = compiler.asOnce(around, place, collection, code::at);
    return frame -> (int) number.at(frame);
  }

  /**
   * Compiles the reading of a property.
   *
   * @param of code for the thing that has it
   */
  private record Reading(ObjectCode of) implements PropertyReaders.Access.Visitor<Code> {
    @Override
    public NumberCode number(PropertyReaders.NumberAccess access) {
      return frame -> {
        Object thing = of.at(frame);
        return thing == null ? Double.NaN : access.read().applyAsDouble(thing);
      };
    }

    @Override
    public TruthCode truth(PropertyReaders.TruthAccess access) {
      return frame -> {
        Object thing = of.at(frame);
        return thing == null ? UNDECIDED : access.read().test(thing) ? YES : NO;
      };
    }

    @Override
    public ObjectCode object(PropertyReaders.ObjectAccess access) {
      return frame -> {
        Object thing = of.at(frame);
        return thing == null ? null : access.read().apply(thing);
      };
    }
  }

  private static TruthCode compared(Relation relation, NumberCode left, NumberCode right) {
    return frame -> {
      double one = left.at(frame);
      double other = right.at(frame);
      if (Double.isNaN(one) || Double.isNaN(other)) {
        return UNDECIDED;
      }
      return Arithmetic.holds(relation, Arithmetic.order(one, other)) ? YES : NO;
    };
  }

  private static TruthCode oneOf(ObjectCode value, Set<String> words) {
    return frame -> {
      Object word = value.at(frame);
      return word == null ? UNDECIDED : words.contains(word.toString()) ? YES : NO;
    };
  }
}
