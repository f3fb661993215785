package gripwright.expression;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;

/**
 * Evaluates expressions for many subjects of one kind at once: for a batch of subjects, one column
 * of values at a time. Expressions that several rules share are evaluated once.
 *
 * <p>The results are those of {@link ExpressionCompiler}, which also evaluates expressions over
 * collections. Not thread-safe.
 */
public final class Columns {

  /** Subjects of a batch: few enough that their columns stay in the processor's cache. */
  public static final int SIZE = 512;

  private final Subjects subjects;
  private final Evaluation evaluation;
  private final Map<ExpressionKey, Column<?>> columns = new HashMap<>();
  private final ColumnMaker maker;
  private ExpressionKeys keys = ExpressionKeys.none();
  private int from;
  private int count;

  public Columns(Kind kind, Subjects subjects, Evaluation evaluation) {
    this.subjects = subjects;
    this.evaluation = evaluation;
    this.maker = new ColumnMaker(this, kind, subjects, evaluation);
  }

  /** The values of one expression, evaluated at their first use in a batch. */
  public abstract sealed class Column<A> {
    private final A values;
    private final Consumer<A> fill;
    private int filled = -1;

    private Column(A values, Consumer<A> fill) {
      this.values = values;
      this.fill = fill;
    }

    /** Returns the values, one for each subject of the batch; further elements have no meaning. */
    public A values() {
      if (filled != from) {
        filled = from;
        evaluation.take(count);
        fill.accept(values);
      }
      return values;
    }
  }

  /** A column of conditions. */
  private final class Truths extends Column<byte[]> {
    Truths(Consumer<byte[]> fill) {
      super(new byte[capacity()], fill);
    }
  }

  /** A column of numbers. */
  private final class Numbers extends Column<double[]> {
    Numbers(Consumer<double[]> fill) {
      super(new double[capacity()], fill);
    }
  }

  /**
   * Moves to a batch of subjects.
   *
   * @param first position of the first
   * @param number number of subjects, {@link #SIZE} at most
   */
  public void batch(int first, int number) {
    from = first;
    count = number;
  }

  /** Returns the position of the first subject of the batch. */
  int from() {
    return from;
  }

  /** Returns the number of subjects of the batch. */
  int count() {
    return count;
  }

  /** Returns the largest number of subjects of a batch. */
  private int capacity() {
    return Math.min(SIZE, subjects.size());
  }

  /**
   * Returns the column of a condition: {@link ExpressionCompiler#NO} and so on.
   *
   * @param e the condition
   * @param known the keys of its parts
   * @throws IllegalArgumentException if it is not a condition
   */
  public Column<byte[]> truth(Expression e, ExpressionKeys known) {
    keys = known;
    return truth(e);
  }

  /** Returns the column of a condition. */
  Column<byte[]> truth(Expression e) {
    if (column(e) instanceof Truths truths) {
      return truths;
    }
    throw new IllegalArgumentException(e.type() + " is not a yes or no");
  }

  Column<double[]> number(Expression e) {
    if (column(e) instanceof Numbers numbers) {
      return numbers;
    }
    throw new IllegalArgumentException(e.type() + " is not a number");
  }

  /** Returns a column of conditions. */
  Column<byte[]> truths(Consumer<byte[]> fill) {
    return new Truths(fill);
  }

  /** Returns a column of numbers. */
  Column<double[]> numbers(Consumer<double[]> fill) {
    return new Numbers(fill);
  }

  /** Returns the key of an expression, or of a part of it, whose column is being made. */
  ExpressionKey key(Expression e) {
    return keys.of(e);
  }

  private Column<?> column(Expression e) {
    ExpressionKey key = key(e);
    Column<?> known = columns.get(key);
    if (known == null) {
      evaluation.keep(capacity());
      known = e.accept(maker);
      columns.put(key, known);
    }
    return known;
  }
}
