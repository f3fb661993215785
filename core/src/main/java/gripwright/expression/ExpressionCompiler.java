package gripwright.expression;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Compiles expressions to closures, so that their evaluation needs no lookups.
 *
 * <p>A frame has one place for each subject, outermost first: the subject of the rule, then the
 * element of each collection entered; then one for each cached result. Missing numbers are NaN,
 * missing words and things null.
 */
public final class ExpressionCompiler {

  private ExpressionCompiler() {}

  /**
   * A truth value; the values are ordered so that {@code and} is the minimum and {@code or} the
   * maximum.
   */
  public static final int NO = 0;

  /** Neither true nor false, because a value is missing. */
  static final int UNDECIDED = 1;

  /** See {@link #NO}. */
  public static final int YES = 2;

  /** The compiled form of an expression: one of the three below. */
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
   * A condition ready for evaluation.
   *
   * @param code the closure
   * @param depth the number of places in a frame
   */
  public record Truth(TruthCode code, int depth) {
    public int of(Object subject) {
      return of(subject, frame());
    }

    /**
     * Evaluates the condition with a reused frame, so that frequent evaluation creates no garbage.
     */
    public int of(Object subject, @Nullable Object[] frame) {
      frame[0] = subject;
      return code.at(frame);
    }

    public @Nullable Object[] frame() {
      return new Object[depth];
    }
  }

  /**
   * A value ready for evaluation.
   *
   * @param code the closure
   * @param depth the number of places in a frame
   */
  public record Value(NumberCode code, int depth) {
    public double of(Object subject) {
      return of(subject, frame());
    }

    /** Evaluates the value with a reused frame. */
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
   * @throws IllegalArgumentException if it is not a condition, or a subject is of another kind than
   *     the one there
   */
  public static void check(Expression condition, Kind root) {
    truth(condition, root, new Evaluation(PropertyReaders.NONE));
  }

  /**
   * Compiles a condition that counts the elements of collections it visits.
   *
   * @throws IllegalArgumentException if it is not a condition, or a subject is of another kind than
   *     the one there
   */
  public static Truth truth(Expression condition, Kind root, Evaluation evaluation) {
    Checks.truth(condition);
    Compilation compiler = new Compilation(List.of(root), evaluation);
    return new Truth(compiler.truth(condition), compiler.places());
  }

  /** Compiles a value of an ordered type, represented as a number. */
  static Value number(Expression value, Kind root, Evaluation evaluation) {
    Compilation compiler = new Compilation(List.of(root), evaluation);
    return compiler.value(compiler.number(value));
  }

  /** Evaluates a condition in a context; returns {@link #NO} and so on. */
  static int truth(Expression condition, EvaluationContext at) {
    Compilation compiler = new Compilation(at.kinds(), at.evaluation());
    return compiler.truth(condition).at(compiler.frame(at));
  }

  /** Evaluates a value in a context. */
  static double number(Expression value, EvaluationContext at) {
    Compilation compiler = new Compilation(at.kinds(), at.evaluation());
    return compiler.number(value).at(compiler.frame(at));
  }

  /** Returns the elements of a collection in a context; empty if it is missing. */
  static List<?> things(Expression collection, EvaluationContext at) {
    Compilation compiler = new Compilation(at.kinds(), at.evaluation());
    Object things = compiler.object(collection).at(compiler.frame(at));
    return things instanceof List<?> some ? some : List.of();
  }

  /**
   * Returns whether an expression inside a collection refers only to its elements.
   *
   * @param around kind of the thing with the collection
   * @param element kind of the elements
   */
  static boolean elementsOnly(Expression e, Kind around, Kind element) {
    Compilation compiler = new Compilation(List.of(around), new Evaluation(PropertyReaders.NONE));
    compiler.enter(element);
    if (e.type() == Type.Plain.TRUTH) {
      compiler.truth(e);
    } else {
      compiler.number(e);
    }
    return !compiler.referenced.get(0);
  }
}
