package gripwright.expression;

import gripwright.expression.Condition.Relation;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Expressions over many subjects of one kind at once: each is worked out for a batch of subjects, a
 * column of values at a time. What several rules have in common is worked out once.
 *
 * <p>The answers are those of {@link ExpressionCompiler}, which also answers what goes through a
 * collection. Not thread-safe.
 */
public final class Columns {

  /** How many subjects are looked at together: few enough that their columns stay in a cache. */
  public static final int SIZE = 512;

  private final Kind kind;
  private final Subjects subjects;
  private final Evaluation evaluation;
  private final Map<ExpressionKey, Column<?>> columns = new HashMap<>();
  private final Map<ExpressionKey, ElementColumns> insides = new HashMap<>();
  private final Kinds kinds = new Kinds();
  private int from;
  private int count;

  public Columns(Kind kind, Subjects subjects, Evaluation evaluation) {
    this.kind = kind;
    this.subjects = subjects;
    this.evaluation = evaluation;
  }

  /** The values of one expression, worked out when they are first asked for in a batch. */
  public abstract sealed class Column<A> {
    private final A values;
    private final Consumer<A> fill;
    private int filled = -1;

    private Column(A values, Consumer<A> fill) {
      this.values = values;
      this.fill = fill;
    }

    /**
     * Returns the values, one for each subject of the batch; what lies behind them means nothing.
     */
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
   * Goes to a batch of subjects.
   *
   * @param first place of the first
   * @param number how many, {@link #SIZE} at most
   */
  public void batch(int first, int number) {
    from = first;
    count = number;
  }

  /** Returns the place of the first subject of the batch. */
  int from() {
    return from;
  }

  /** Returns how many subjects the batch has. */
  int count() {
    return count;
  }

  /** Returns how many subjects there are at most in a batch. */
  private int capacity() {
    return Math.min(SIZE, subjects.size());
  }

  /**
   * Returns the column of a condition: {@link ExpressionCompiler#NO} and so on.
   *
   * @throws IllegalArgumentException if it is not a yes or no
   */
  public Column<byte[]> truth(Expression e) {
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

  private Column<?> column(Expression e) {
    ExpressionKey key = new ExpressionKey(e);
    Column<?> known = columns.get(key);
    if (known == null) {
      evaluation.keep(capacity());
      known = e.accept(kinds);
      columns.put(key, known);
    }
    return known;
  }

  /** Makes the column of each kind of expression. */
  private final class Kinds implements ExpressionVisitor<Column<?>> {
    @Override
    public Column<?> literal(Literal literal) {
      double value = literal.number();
      return new Numbers(out -> Arrays.fill(out, 0, count, value));
    }

    @Override
    public Column<?> truth(Condition.Truth truth) {
      return truthByRow(truth);
    }

    @Override
    public Column<?> subject(Expression.Subject subject) {
      throw new IllegalArgumentException(subject.kind().word() + " has no column");
    }

    @Override
    public Column<?> get(Expression.Get get) {
      return evaluation.access(get).accept(new Reading(get));
    }

    @Override
    public Column<?> has(Condition.Has has) {
      return truthByRow(has);
    }

    @Override
    public Column<?> compare(Condition.Compare compare) {
      return new Truths(compared(compare));
    }

    @Override
    public Column<?> between(Condition.Between between) {
      return new Truths(
          both(
              Columns.this.truth(
                  new Condition.Compare(Relation.AT_LEAST, between.value(), between.low())),
              Columns.this.truth(
                  new Condition.Compare(Relation.AT_MOST, between.value(), between.high())),
              ExpressionCompiler.NO));
    }

    @Override
    public Column<?> is(Condition.Is is) {
      return new Truths(oneOf(is.value(), Set.copyOf(is.words())));
    }

    @Override
    public Column<?> arithmetic(Expression.Arithmetic arithmetic) {
      Column<double[]> left = number(arithmetic.left());
      Column<double[]> right = number(arithmetic.right());
      DoubleBinaryOperator operation = Arithmetic.operation(arithmetic);
      return new Numbers(
          out -> {
            double[] ones = left.values();
            double[] others = right.values();
            for (int i = 0; i < count; i++) {
              out[i] = operation.applyAsDouble(ones[i], others[i]);
            }
          });
    }

    @Override
    public Column<?> negate(Expression.Negate negate) {
      return numberByRow(negate);
    }

    @Override
    public Column<?> and(Condition.And and) {
      return new Truths(
          both(
              Columns.this.truth(and.left()),
              Columns.this.truth(and.right()),
              ExpressionCompiler.NO));
    }

    @Override
    public Column<?> or(Condition.Or or) {
      return new Truths(
          both(
              Columns.this.truth(or.left()),
              Columns.this.truth(or.right()),
              ExpressionCompiler.YES));
    }

    @Override
    public Column<?> not(Condition.Not not) {
      Column<byte[]> operand = Columns.this.truth(not.operand());
      return new Truths(
          out -> {
            byte[] values = operand.values();
            for (int i = 0; i < count; i++) {
              out[i] = (byte) (ExpressionCompiler.YES - values[i]);
            }
          });
    }

    @Override
    public Column<?> summarize(Expression.Summarize summarize) {
      return inside(
              summarize.collection(),
              Stream.concat(summarize.where().stream(), summarize.value().stream()))
          .<Column<?>>map(inside -> new Numbers(inside.summarize(summarize)))
          .orElseGet(() -> numberByRow(summarize));
    }

    @Override
    public Column<?> quantify(Condition.Quantify quantify) {
      return inside(
              quantify.collection(),
              Stream.concat(quantify.where().stream(), Stream.of(quantify.body())))
          .<Column<?>>map(inside -> new Truths(inside.quantify(quantify)))
          .orElseGet(() -> truthByRow(quantify));
    }
  }

  /** Makes the column of a property. */
  private final class Reading implements PropertyReaders.Access.Visitor<Column<?>> {
    private final Expression.Get get;

    Reading(Expression.Get get) {
      this.get = get;
    }

    @Override
    public Column<?> number(PropertyReaders.NumberAccess access) {
      return new Numbers(
          out -> System.arraycopy(subjects.numbers(get, access), from, out, 0, count));
    }

    @Override
    public Column<?> truth(PropertyReaders.TruthAccess access) {
      return new Truths(out -> System.arraycopy(subjects.truths(get, access), from, out, 0, count));
    }

    @Override
    public Column<?> object(PropertyReaders.ObjectAccess access) {
      throw new IllegalArgumentException(get.property() + " has no column");
    }
  }

  private Column<byte[]> truthByRow(Expression e) {
    ExpressionCompiler.Truth code = ExpressionCompiler.truth(e, kind, evaluation);
    @Nullable Object[] frame = code.frame();
    return new Truths(
        out -> {
          for (int i = 0; i < count; i++) {
            out[i] = (byte) code.of(subjects.at(from + i), frame);
          }
        });
  }

  private Column<double[]> numberByRow(Expression e) {
    ExpressionCompiler.Value code = ExpressionCompiler.number(e, kind, evaluation);
    @Nullable Object[] frame = code.frame();
    return new Numbers(
        out -> {
          for (int i = 0; i < count; i++) {
            out[i] = code.of(subjects.at(from + i), frame);
          }
        });
  }

  private Consumer<byte[]> both(Column<byte[]> left, Column<byte[]> right, int decided) {
    return out -> {
      byte[] first = left.values();
      System.arraycopy(first, 0, out, 0, count);
      if (all(first, decided)) {
        return;
      }
      byte[] second = right.values();
      if (decided == ExpressionCompiler.NO) {
        for (int i = 0; i < count; i++) {
          out[i] = first[i] < second[i] ? first[i] : second[i];
        }
      } else {
        for (int i = 0; i < count; i++) {
          out[i] = first[i] > second[i] ? first[i] : second[i];
        }
      }
    };
  }

  private boolean all(byte[] values, int value) {
    for (int i = 0; i < count; i++) {
      if (values[i] != value) {
        return false;
      }
    }
    return true;
  }

  private Consumer<byte[]> compared(Condition.Compare compare) {
    Column<double[]> left = number(compare.left());
    Column<double[]> right = number(compare.right());
    Comparison comparison = Comparison.of(compare.relation());
    return out -> comparison.compare(left.values(), right.values(), out, count);
  }

  private Consumer<byte[]> oneOf(Expression value, Set<String> wanted) {
    return out -> {
      Subjects.Words words = subjects.words(value);
      List<String> known = words.known;
      byte[] answers = new byte[known.size() + 1];
      answers[0] = ExpressionCompiler.UNDECIDED; // no word
      for (int i = 0; i < known.size(); i++) {
        answers[i + 1] =
            (byte) (wanted.contains(known.get(i)) ? ExpressionCompiler.YES : ExpressionCompiler.NO);
      }
      int[] places = words.places;
      for (int i = 0; i < count; i++) {
        out[i] = answers[places[from + i]];
      }
    };
  }

  /**
   * Returns the inside of a collection that is the subjects' own, so that no two share an element,
   * if what is asked speaks of the elements alone.
   */
  private Optional<ElementColumns> inside(Expression collection, Stream<Expression> asked) {
    if (!(collection instanceof Expression.Get get
        && get.of() instanceof Expression.Subject
        && get.type() instanceof Type.Many many
        && evaluation.access(get) instanceof PropertyReaders.ObjectAccess access)) {
      return Optional.empty();
    }
    if (!asked.allMatch(e -> ExpressionCompiler.elementsOnly(e, kind, many.kind()))) {
      return Optional.empty();
    }
    ExpressionKey key = new ExpressionKey(collection);
    ElementColumns known = insides.get(key);
    if (known == null) {
      known = new ElementColumns(this, subjects.elements(get, access), many.kind(), evaluation);
      insides.put(key, known);
    }
    return Optional.of(known);
  }
}
