package gripwright.expression;

import static gripwright.expression.ExpressionCompiler.NO;
import static gripwright.expression.ExpressionCompiler.UNDECIDED;
import static gripwright.expression.ExpressionCompiler.YES;

import gripwright.expression.Condition.Relation;
import gripwright.expression.ExpressionCompiler.Code;
import gripwright.expression.ExpressionCompiler.NumberCode;
import gripwright.expression.ExpressionCompiler.ObjectCode;
import gripwright.expression.ExpressionCompiler.TruthCode;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleBinaryOperator;
import org.jspecify.annotations.Nullable;

/** Expressions being compiled into closures that share one frame. Not thread-safe. */
final class Compilation {

  /** So many expressions take about the time of one step into a collection. */
  private static final int EXPRESSIONS_OF_A_STEP = 16;

  private final List<Kind> subjects = new ArrayList<>();
  private final Evaluation evaluation;
  private final Kinds kinds = new Kinds();
  private int depth;
  private int memos;

  /** How many expressions were compiled so far. */
  private int compiled;

  /** The places spoken of since it was last set. */
  BitSet spoken = new BitSet();

  Compilation(List<Kind> around, Evaluation evaluation) {
    this.evaluation = evaluation;
    around.forEach(kind -> subjects.add(kind));
    depth = around.size();
  }

  /** Returns how many places a frame needs; to be called once all is compiled. */
  int places() {
    return depth + memos;
  }

  /** Returns what was compiled as a value that is ready to be asked for. */
  ExpressionCompiler.Value value(NumberCode code) {
    return new ExpressionCompiler.Value(code, places());
  }

  /** Returns a frame with what stands around; to be called once all is compiled. */
  @Nullable Object[] frame(EvaluationContext at) {
    @Nullable Object[] frame = new Object[places()];
    for (int i = 0; i < at.things().size(); i++) {
      frame[i] = at.things().get(i);
    }
    return frame;
  }

  void enter(Kind kind) {
    subjects.add(kind);
    depth = Math.max(depth, subjects.size());
  }

  void leave() {
    subjects.remove(subjects.size() - 1);
  }

  TruthCode truth(Expression e) {
    if (code(e) instanceof TruthCode truth) {
      return truth;
    }
    throw new IllegalArgumentException(e.type() + " is not a yes or no");
  }

  NumberCode number(Expression e) {
    if (code(e) instanceof NumberCode number) {
      return number;
    }
    throw new IllegalArgumentException(e.type() + " is not a number");
  }

  ObjectCode object(Expression e) {
    if (code(e) instanceof ObjectCode object) {
      return object;
    }
    throw new IllegalArgumentException(e.type() + " is not a thing or a word");
  }

  private Code code(Expression e) {
    compiled++;
    return e.accept(kinds);
  }

  /** Compiles each kind of expression. */
  private final class Kinds implements ExpressionVisitor<Code> {
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
      return Compilation.this.subject(subject);
    }

    @Override
    public Code get(Expression.Get get) {
      ObjectCode of = object(get.of());
      return evaluation.access(get).accept(new Reading(of));
    }

    @Override
    public TruthCode has(Condition.Has has) {
      return Compilation.this.has(has.value());
    }

    @Override
    public TruthCode compare(Condition.Compare compare) {
      return compared(compare.relation(), number(compare.left()), number(compare.right()));
    }

    @Override
    public TruthCode between(Condition.Between between) {
      NumberCode value = number(between.value());
      TruthCode low = compared(Relation.AT_LEAST, value, number(between.low()));
      TruthCode high = compared(Relation.AT_MOST, value, number(between.high()));
      return frame -> Math.min(low.at(frame), high.at(frame));
    }

    @Override
    public TruthCode is(Condition.Is is) {
      return oneOf(object(is.value()), Set.copyOf(is.words()));
    }

    @Override
    public NumberCode arithmetic(Expression.Arithmetic arithmetic) {
      NumberCode left = number(arithmetic.left());
      NumberCode right = number(arithmetic.right());
      DoubleBinaryOperator operation = Arithmetic.operation(arithmetic);
      return frame -> operation.applyAsDouble(left.at(frame), right.at(frame));
    }

    @Override
    public NumberCode negate(Expression.Negate negate) {
      NumberCode operand = number(negate.operand());
      return frame -> -operand.at(frame);
    }

    @Override
    public TruthCode and(Condition.And and) {
      TruthCode left = Compilation.this.truth(and.left());
      TruthCode right = Compilation.this.truth(and.right());
      return frame -> {
        int first = left.at(frame);
        return first == NO ? NO : Math.min(first, right.at(frame));
      };
    }

    @Override
    public TruthCode or(Condition.Or or) {
      TruthCode left = Compilation.this.truth(or.left());
      TruthCode right = Compilation.this.truth(or.right());
      return frame -> {
        int first = left.at(frame);
        return first == YES ? YES : Math.max(first, right.at(frame));
      };
    }

    @Override
    public TruthCode not(Condition.Not not) {
      TruthCode operand = Compilation.this.truth(not.operand());
      return frame -> YES - operand.at(frame);
    }

    @Override
    public NumberCode summarize(Expression.Summarize summarize) {
      return Compilation.this.summarize(summarize);
    }

    @Override
    public TruthCode quantify(Condition.Quantify quantify) {
      return Compilation.this.quantify(quantify);
    }
  }

  /**
   * Compiles the reading of a property.
   *
   * @param of the thing that has it
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

  private ObjectCode subject(Expression.Subject subject) {
    int place = subjects.size() - 1 - subject.outward();
    if (subject.outward() < 0 || place < 0 || subjects.get(place) != subject.kind()) {
      throw new IllegalArgumentException(
          "no " + subject.kind().word() + " stands " + subject.outward() + " outward here");
    }
    spoken.set(place);
    return frame -> frame[place];
  }

  /** Returns how many expressions were compiled so far. */
  int compiled() {
    return compiled;
  }

  /**
   * Returns what one element of a collection counts as: 1, and more where much is asked of it.
   *
   * @param before what {@link #compiled} was before that was compiled
   */
  int weightSince(int before) {
    return 1 + (compiled - before) / EXPRESSIONS_OF_A_STEP;
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

  private TruthCode has(Expression value) {
    if (value.type().ordered()) {
      NumberCode number = number(value);
      return frame -> Double.isNaN(number.at(frame)) ? NO : YES;
    }
    if (value.type() == Type.Plain.TRUTH) {
      TruthCode truth = truth(value);
      return frame -> truth.at(frame) == UNDECIDED ? NO : YES;
    }
    ObjectCode object = object(value);
    return frame -> object.at(frame) == null ? NO : YES;
  }

  private TruthCode quantify(Condition.Quantify quantify) {
    ObjectCode collection = object(quantify.collection());
    BitSet around = spoken;
    spoken = new BitSet();
    int place = enterElementOf(quantify.collection());
    int before = compiled;
    TruthCode where = where(quantify.where());
    TruthCode body = truth(quantify.body());
    int weight = weightSince(before);
    leave();
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
    NumberCode number = asOnce(around, place, collection, code::at);
    return frame -> (int) number.at(frame);
  }

  TruthCode where(Optional<Expression> condition) {
    return condition.isPresent() ? truth(condition.get()) : frame -> YES;
  }

  int enterElementOf(Expression collection) {
    enter(((Type.Many) collection.type()).kind());
    return subjects.size() - 1;
  }

  private NumberCode summarize(Expression.Summarize summarize) {
    ObjectCode collection = object(summarize.collection());
    BitSet around = spoken;
    spoken = new BitSet();
    int place = enterElementOf(summarize.collection());
    int before = compiled;
    TruthCode where = where(summarize.where());
    NumberCode value = summarize.value().isPresent() ? number(summarize.value().get()) : f -> 1;
    int weight = weightSince(before);
    leave();
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
    return asOnce(around, place, collection, code);
  }

  /**
   * Returns code that goes through a collection once, not again for each subject that shares it: as
   * long as the collection and the subjects around it that it speaks of are the same. Where it
   * speaks of the element right around it, that is never so, and nothing is kept.
   *
   * @param around the places spoken of before the elements were entered
   * @param place of the elements
   */
  NumberCode asOnce(BitSet around, int place, ObjectCode collection, NumberCode code) {
    BitSet outside = spoken.get(0, place);
    spoken = (BitSet) outside.clone();
    spoken.or(around);
    if (place > 1 ? outside.get(place - 1) : !outside.isEmpty()) {
      return code;
    }
    int[] places = outside.stream().toArray();
    return Memo.keeping(code, collection, places, ++memos);
  }
}
