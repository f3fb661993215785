package gripwright.expression;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Turns expressions into closures once, so that evaluating them looks nothing up.
 *
 * <p>A frame has one place for each subject, outermost first: what the rule looks at, then the
 * element of each collection gone into; then one for each result that is kept. Missing numbers are
 * NaN, missing words and things null.
 */
public final class ExpressionCompiler {

  private ExpressionCompiler() {}

  /** What a truth can be, ordered so that {@code and} is the least and {@code or} the greatest. */
  public static final int NO = 0;

  /** Neither yes nor no, since something is missing. */
  static final int UNDECIDED = 1;

  /** See {@link #NO}. */
  public static final int YES = 2;

  /** What an expression is compiled to: one of the three below. */
  interface Code {}

  /** A number, level, grade or date. */
  public interface NumberCode extends Code {
    double at(@Nullable Object[] frame);
  }

  /** A truth. */
  public interface TruthCode extends Code {
    int at(@Nullable Object[] frame);
  }

  /** A word, a thing or a list of things. */
  public interface ObjectCode extends Code {
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
    Compilation compiler = new Compilation(List.of(root), evaluation);
    return new Truth(compiler.truth(condition), compiler.places());
  }

  /** Compiles a value with an order, to be read as a number. */
  static Value number(Expression value, Kind root, Evaluation evaluation) {
    Compilation compiler = new Compilation(List.of(root), evaluation);
    return compiler.value(compiler.number(value));
  }

  /** Answers a condition where a rule stands: {@link #NO} and so on. */
  static int truth(Expression condition, EvaluationContext at) {
    Compilation compiler = new Compilation(at.kinds(), at.evaluation());
    return compiler.truth(condition).at(compiler.frame(at));
  }

  /** Works out a value where a rule stands. */
  static double number(Expression value, EvaluationContext at) {
    Compilation compiler = new Compilation(at.kinds(), at.evaluation());
    return compiler.number(value).at(compiler.frame(at));
  }

  /** Returns what a collection holds where a rule stands; nothing if it is missing. */
  static List<?> things(Expression collection, EvaluationContext at) {
    Compilation compiler = new Compilation(at.kinds(), at.evaluation());
    Object things = compiler.object(collection).at(compiler.frame(at));
    return things instanceof List<?> some ? some : List.of();
  }

  /**
   * Tells whether an expression inside a collection speaks of nothing but its elements.
   *
   * @param around what has the collection
   * @param element what the collection holds
   */
  static boolean elementsOnly(Expression e, Kind around, Kind element) {
    Compilation compiler = new Compilation(List.of(around), new Evaluation(PropertyReaders.NONE));
    compiler.enter(element);
    if (e.type() == Type.Plain.TRUTH) {
      compiler.truth(e);
    } else {
      compiler.number(e);
    }
    return !compiler.spoken.get(0);
  }
}
