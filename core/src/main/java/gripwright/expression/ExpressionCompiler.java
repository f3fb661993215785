package gripwright.expression;

import gripwright.expression.Expression.Relation;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleBinaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Turns expressions into closures once, so that evaluating them looks nothing up.
 *
 * <p>A frame has one place for each subject, outermost first: what the rule looks at, then the
 * element of each collection gone into; then one for each result that is kept. Missing numbers are
 * NaN, missing words and things null.
 */
public final class ExpressionCompiler {

  /** What a truth can be, ordered so that {@code and} is the least and {@code or} the greatest. */
  public static final int NO = 0;

  /** Neither yes nor no, since something is missing. */
  static final int UNDECIDED = 1;

  /** See {@link #NO}. */
  public static final int YES = 2;

  /** So many expressions take about the time of one step into a collection. */
  private static final int EXPRESSIONS_OF_A_STEP = 16;

  /** A number, level, grade or date. */
  public interface NumberCode {
    double at(@Nullable Object[] frame);
  }

  /** A truth. */
  public interface TruthCode {
    int at(@Nullable Object[] frame);
  }

  /** A word, a thing or a list of things. */
  public interface ObjectCode {
    @Nullable Object at(@Nullable Object[] frame);
  }

  /**
   * A condition that is ready to be asked.
   *
   * @param code the closure
   * @param depth how many places a frame needs
   */
  public record Truth(TruthCode code, int depth) {
    public int of(Object subject) {
      return of(subject, frame());
    }

    /** Asks with a frame that was used before, so that asking often makes no garbage. */
    public int of(Object subject, @Nullable Object[] frame) {
      frame[0] = subject;
      return code.at(frame);
    }

    public @Nullable Object[] frame() {
      return new Object[depth];
    }
  }

  /**
   * A value that is ready to be asked for.
   *
   * @param code the closure
   * @param depth how many places a frame needs
   */
  public record Value(NumberCode code, int depth) {
    public double of(Object subject) {
      return of(subject, frame());
    }

    /** Asks with a frame that was used before. */
    public double of(Object subject, @Nullable Object[] frame) {
      frame[0] = subject;
      return code.at(frame);
    }

    public @Nullable Object[] frame() {
      return new Object[depth];
    }
  }

  private final List<Kind> subjects = new ArrayList<>();
  private final Evaluation evaluation;
  private int depth;
  private int memos;

  /** How many expressions were compiled so far. */
  private int compiled;

  /** The places spoken of since it was last set. */
  BitSet spoken = new BitSet();

  ExpressionCompiler(List<Kind> around, Evaluation evaluation) {
    this.evaluation = evaluation;
    around.forEach(kind -> subjects.add(kind));
    depth = around.size();
  }

  /**
   * Checks a condition.
   *
   * @throws IllegalArgumentException if it is not a yes or no, or a subject is not what stands
   *     there
   */
  public static void check(Expression condition, Kind root) {
    truth(condition, root, new Evaluation(PropertyReaders.NONE));
  }

  /**
   * Compiles a condition that notes how many elements of collections it goes through.
   *
   * @throws IllegalArgumentException if it is not a yes or no, or a subject is not what stands
   *     there
   */
  public static Truth truth(Expression condition, Kind root, Evaluation evaluation) {
    Checks.truth(condition);
    ExpressionCompiler compiler = new ExpressionCompiler(List.of(root), evaluation);
    TruthCode code = compiler.truth(condition);
    return new Truth(code, compiler.depth + compiler.memos);
  }

  /** Compiles a value with an order, to be read as a number. */
  static Value number(Expression value, Kind root, Evaluation evaluation) {
    ExpressionCompiler compiler = new ExpressionCompiler(List.of(root), evaluation);
    return compiler.value(compiler.number(value));
  }

  /** Returns what was compiled as a value that is ready to be asked for. */
  Value value(NumberCode code) {
    return new Value(code, depth + memos);
  }

  /** Answers a condition where a rule stands: {@link #NO} and so on. */
  static int truth(Expression condition, EvaluationContext at) {
    ExpressionCompiler compiler = new ExpressionCompiler(at.kinds(), at.evaluation());
    return compiler.truth(condition).at(compiler.frame(at));
  }

  /** Works out a value where a rule stands. */
  static double number(Expression value, EvaluationContext at) {
    ExpressionCompiler compiler = new ExpressionCompiler(at.kinds(), at.evaluation());
    return compiler.number(value).at(compiler.frame(at));
  }

  /** Returns what a collection holds where a rule stands; nothing if it is missing. */
  static List<?> things(Expression collection, EvaluationContext at) {
    ExpressionCompiler compiler = new ExpressionCompiler(at.kinds(), at.evaluation());
    Object things = compiler.object(collection).at(compiler.frame(at));
    return things instanceof List<?> some ? some : List.of();
  }

  /** Returns a frame with what stands around; to be called once all is compiled. */
  public @Nullable Object[] frame(EvaluationContext at) {
    @Nullable Object[] frame = new Object[depth + memos];
    for (int i = 0; i < at.things().size(); i++) {
      frame[i] = at.things().get(i);
    }
    return frame;
  }

  /**
   * Tells whether an expression inside a collection speaks of nothing but its elements.
   *
   * @param around what has the collection
   * @param element what the collection holds
   */
  static boolean elementsOnly(Expression e, Kind around, Kind element) {
    ExpressionCompiler compiler =
        new ExpressionCompiler(List.of(around), new Evaluation(PropertyReaders.NONE));
    compiler.enter(element);
    if (e.type() == Type.Plain.TRUTH) {
      compiler.truth(e);
    } else {
      compiler.number(e);
    }
    return !compiler.spoken.get(0);
  }

  private void enter(Kind kind) {
    subjects.add(kind);
    depth = Math.max(depth, subjects.size());
  }

  void leave() {
    subjects.remove(subjects.size() - 1);
  }

  TruthCode truth(Expression e) {
    compiled++;
    if (e instanceof Expression.Truth truth) {
      int value = truth.value() ? YES : NO;
      return frame -> value;
    }
    if (e instanceof Expression.And and) {
      TruthCode left = truth(and.left());
      TruthCode right = truth(and.right());
      return frame -> {
        int first = left.at(frame);
        return first == NO ? NO : Math.min(first, right.at(frame));
      };
    }
    if (e instanceof Expression.Or or) {
      TruthCode left = truth(or.left());
      TruthCode right = truth(or.right());
      return frame -> {
        int first = left.at(frame);
        return first == YES ? YES : Math.max(first, right.at(frame));
      };
    }
    if (e instanceof Expression.Not not) {
      TruthCode operand = truth(not.operand());
      return frame -> YES - operand.at(frame);
    }
    if (e instanceof Expression.Compare compare) {
      return compare(compare.relation(), number(compare.left()), number(compare.right()));
    }
    if (e instanceof Expression.Between between) {
      NumberCode value = number(between.value());
      TruthCode low = compare(Relation.AT_LEAST, value, number(between.low()));
      TruthCode high = compare(Relation.AT_MOST, value, number(between.high()));
      return frame -> Math.min(low.at(frame), high.at(frame));
    }
    if (e instanceof Expression.Is is) {
      return is(object(is.value()), Set.copyOf(is.words()));
    }
    if (e instanceof Expression.Has has) {
      return has(has.value());
    }
    if (e instanceof Expression.Quantify quantify) {
      return quantify(quantify);
    }
    if (e instanceof Expression.Get get
        && evaluation.access(get) instanceof PropertyReaders.TruthAccess access) {
      ObjectCode of = object(get.of());
      return frame -> {
        Object thing = of.at(frame);
        return thing == null ? UNDECIDED : access.read().test(thing) ? YES : NO;
      };
    }
    throw new IllegalArgumentException(e.type() + " is not a yes or no");
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

  private static TruthCode compare(Relation relation, NumberCode left, NumberCode right) {
    return frame -> {
      double one = left.at(frame);
      double other = right.at(frame);
      if (Double.isNaN(one) || Double.isNaN(other)) {
        return UNDECIDED;
      }
      return Arithmetic.holds(relation, Arithmetic.order(one, other)) ? YES : NO;
    };
  }

  private static TruthCode is(ObjectCode value, Set<String> words) {
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

  private TruthCode quantify(Expression.Quantify quantify) {
    ObjectCode collection = object(quantify.collection());
    BitSet around = spoken;
    spoken = new BitSet();
    int place = enterElementOf(quantify.collection());
    int before = compiled;
    TruthCode where = where(quantify.where());
    TruthCode body = truth(quantify.body());
    int weight = weightSince(before);
    leave();
    boolean every = quantify.quantifier() == Expression.Quantifier.EVERY;
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

  NumberCode number(Expression e) {
    compiled++;
    if (e instanceof Expression.Amount amount) {
      double value = amount.base();
      return frame -> value;
    }
    if (e instanceof Expression.PercentOfMax level) {
      double value = level.percent() / 100;
      return frame -> value;
    }
    if (e instanceof Expression.Grade grade) {
      double value = grade.ability().ircra();
      return frame -> value;
    }
    if (e instanceof Expression.Date date) {
      double value = date.day().toEpochDay();
      return frame -> value;
    }
    if (e instanceof Expression.Negate negate) {
      NumberCode operand = number(negate.operand());
      return frame -> -operand.at(frame);
    }
    if (e instanceof Expression.Arithmetic arithmetic) {
      return arithmetic(arithmetic);
    }
    if (e instanceof Expression.Summarize summarize) {
      return summarize(summarize);
    }
    if (e instanceof Expression.Get get
        && evaluation.access(get) instanceof PropertyReaders.NumberAccess access) {
      ObjectCode of = object(get.of());
      return frame -> {
        Object thing = of.at(frame);
        return thing == null ? Double.NaN : access.read().applyAsDouble(thing);
      };
    }
    throw new IllegalArgumentException(e.type() + " is not a number");
  }

  private NumberCode arithmetic(Expression.Arithmetic arithmetic) {
    NumberCode left = number(arithmetic.left());
    NumberCode right = number(arithmetic.right());
    DoubleBinaryOperator operation = Arithmetic.operation(arithmetic);
    return frame -> operation.applyAsDouble(left.at(frame), right.at(frame));
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

  /** What came of a collection when it was last gone through, and for which subjects around. */
  private static final class Memo {
    private final @Nullable Object things;
    private final @Nullable Object[] around;
    private final double result;

    Memo(@Nullable Object things, @Nullable Object[] around, double result) {
      this.things = things;
      this.around = around;
      this.result = result;
    }
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
    int fromEnd = ++memos;
    return frame -> {
      Object things = collection.at(frame);
      Memo last = (Memo) frame[frame.length - fromEnd];
      if (last == null || last.things != things || !same(last.around, places, frame)) {
        @Nullable Object[] now = new Object[places.length];
        for (int i = 0; i < places.length; i++) {
          now[i] = frame[places[i]];
        }
        last = new Memo(things, now, code.at(frame));
        frame[frame.length - fromEnd] = last;
      }
      return last.result;
    };
  }

  private static boolean same(@Nullable Object[] around, int[] places, @Nullable Object[] frame) {
    for (int i = 0; i < places.length; i++) {
      if (around[i] != frame[places[i]]) {
        return false;
      }
    }
    return true;
  }

  ObjectCode object(Expression e) {
    compiled++;
    if (e instanceof Expression.Subject subject) {
      int place = subjects.size() - 1 - subject.outward();
      if (subject.outward() < 0 || place < 0 || subjects.get(place) != subject.kind()) {
        throw new IllegalArgumentException(
            "no " + subject.kind().word() + " stands " + subject.outward() + " outward here");
      }
      spoken.set(place);
      return frame -> frame[place];
    }
    if (e instanceof Expression.Get get
        && evaluation.access(get) instanceof PropertyReaders.ObjectAccess access) {
      ObjectCode of = object(get.of());
      return frame -> {
        Object thing = of.at(frame);
        return thing == null ? null : access.read().apply(thing);
      };
    }
    throw new IllegalArgumentException(e.type() + " is not a thing or a word");
  }
}
