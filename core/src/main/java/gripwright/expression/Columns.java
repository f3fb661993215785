package gripwright.expression;

import gripwright.expression.Expression.Relation;
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
  private final Map<ExpressionKey, Column<double[]>> numbers = new HashMap<>();
  private final Map<ExpressionKey, Column<byte[]>> truths = new HashMap<>();
  private final Map<ExpressionKey, Inside> insides = new HashMap<>();
  private int from;
  private int count;

  public Columns(Kind kind, Subjects subjects, Evaluation evaluation) {
    this.kind = kind;
    this.subjects = subjects;
    this.evaluation = evaluation;
  }

  /** The values of one expression, worked out when they are first asked for in a batch. */
  public final class Column<A> {
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

  /** Returns how many subjects there are at most in a batch. */
  private int capacity() {
    return Math.min(SIZE, subjects.size());
  }

  /** Returns the column of a condition: {@link ExpressionCompiler#NO} and so on. */
  public Column<byte[]> truth(Expression e) {
    ExpressionKey key = new ExpressionKey(e);
    Column<byte[]> known = truths.get(key);
    if (known == null) {
      evaluation.keep(capacity());
      known = new Column<>(new byte[capacity()], truthFill(e));
      truths.put(key, known);
    }
    return known;
  }

  private Consumer<byte[]> truthFill(Expression e) {
    if (e instanceof Expression.And and) {
      return both(truth(and.left()), truth(and.right()), ExpressionCompiler.NO);
    }
    if (e instanceof Expression.Or or) {
      return both(truth(or.left()), truth(or.right()), ExpressionCompiler.YES);
    }
    if (e instanceof Expression.Not not) {
      Column<byte[]> operand = truth(not.operand());
      return out -> {
        byte[] values = operand.values();
        for (int i = 0; i < count; i++) {
          out[i] = (byte) (ExpressionCompiler.YES - values[i]);
        }
      };
    }
    if (e instanceof Expression.Compare compare) {
      return compare(compare);
    }
    if (e instanceof Expression.Between between) {
      return both(
          truth(new Expression.Compare(Relation.AT_LEAST, between.value(), between.low())),
          truth(new Expression.Compare(Relation.AT_MOST, between.value(), between.high())),
          ExpressionCompiler.NO);
    }
    if (e instanceof Expression.Is is) {
      return is(is.value(), Set.copyOf(is.words()));
    }
    if (e instanceof Expression.Get get
        && evaluation.access(get) instanceof PropertyReaders.TruthAccess access) {
      return out -> System.arraycopy(subjects.truths(get, access), from, out, 0, count);
    }
    if (e instanceof Expression.Quantify quantify) {
      Optional<Consumer<byte[]>> rows = quantify(quantify);
      if (rows.isPresent()) {
        return rows.get();
      }
    }
    ExpressionCompiler.Truth code = ExpressionCompiler.truth(e, kind, evaluation);
    @Nullable Object[] frame = code.frame();
    return out -> {
      for (int i = 0; i < count; i++) {
        out[i] = (byte) code.of(subjects.at(from + i), frame);
      }
    };
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

  private Consumer<byte[]> compare(Expression.Compare compare) {
    Column<double[]> left = number(compare.left());
    Column<double[]> right = number(compare.right());
    byte less = answer(compare.relation(), -1);
    byte same = answer(compare.relation(), 0);
    byte more = answer(compare.relation(), 1);
    return out -> {
      double[] ones = left.values();
      double[] others = right.values();
      for (int i = 0; i < count; i++) {
        double one = ones[i];
        double other = others[i];
        double by = one - other;
        if (Math.abs(by) > Arithmetic.TOLERANCE * (1 + Math.abs(one) + Math.abs(other))) {
          out[i] = by < 0 ? less : more; // far more than the tolerance apart, as nearly always
        } else if (one == other) {
          out[i] = same;
        } else if (Double.isNaN(one) || Double.isNaN(other)) {
          out[i] = ExpressionCompiler.UNDECIDED;
        } else {
          int order = Arithmetic.order(one, other);
          out[i] = order == 0 ? same : order < 0 ? less : more;
        }
      }
    };
  }

  private static byte answer(Relation relation, int order) {
    return (byte)
        (Arithmetic.holds(relation, order) ? ExpressionCompiler.YES : ExpressionCompiler.NO);
  }

  private Consumer<byte[]> is(Expression value, Set<String> wanted) {
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

  private Column<double[]> number(Expression e) {
    ExpressionKey key = new ExpressionKey(e);
    Column<double[]> known = numbers.get(key);
    if (known == null) {
      evaluation.keep(capacity());
      known = new Column<>(new double[capacity()], numberFill(e));
      numbers.put(key, known);
    }
    return known;
  }

  private Consumer<double[]> numberFill(Expression e) {
    if (e instanceof Expression.Get get
        && evaluation.access(get) instanceof PropertyReaders.NumberAccess access) {
      return out -> System.arraycopy(subjects.numbers(get, access), from, out, 0, count);
    }
    if (e instanceof Expression.Arithmetic arithmetic) {
      Column<double[]> left = number(arithmetic.left());
      Column<double[]> right = number(arithmetic.right());
      DoubleBinaryOperator operation = Arithmetic.operation(arithmetic);
      return out -> {
        double[] ones = left.values();
        double[] others = right.values();
        for (int i = 0; i < count; i++) {
          out[i] = operation.applyAsDouble(ones[i], others[i]);
        }
      };
    }
    if (e instanceof Expression.Summarize summarize) {
      Optional<Consumer<double[]>> rows = summarize(summarize);
      if (rows.isPresent()) {
        return rows.get();
      }
    }
    ExpressionCompiler.Value code = ExpressionCompiler.number(e, kind, evaluation);
    @Nullable Object[] frame = code.frame();
    if (written(e)) {
      return out -> Arrays.fill(out, 0, count, code.of(kind, frame));
    }
    return out -> {
      for (int i = 0; i < count; i++) {
        out[i] = code.of(subjects.at(from + i), frame);
      }
    };
  }

  private static boolean written(Expression e) {
    return e instanceof Expression.Amount
        || e instanceof Expression.PercentOfMax
        || e instanceof Expression.Grade
        || e instanceof Expression.Date;
  }

  /** The elements of what the subjects themselves have, with columns of their own. */
  private final class Inside {
    private final Subjects.Elements elements;
    private final Columns columns;

    Inside(Expression.Get collection, PropertyReaders.ObjectAccess access, Kind element) {
      elements = subjects.elements(collection, access);
      columns = new Columns(element, elements.things, evaluation);
    }

    int first(int subject) {
      return elements.starts[from + subject];
    }

    /** Returns the values of a column for all elements of the batch. */
    <A> A all(Column<A> column, A out) {
      int last = first(count);
      for (int at = first(0); at < last; at += SIZE) {
        int some = Math.min(SIZE, last - at);
        columns.batch(at, some);
        System.arraycopy(column.values(), 0, out, at - first(0), some);
      }
      return out;
    }

    /** Returns which elements of the batch count. */
    byte[] where(Optional<Column<byte[]>> condition) {
      byte[] out = new byte[first(count) - first(0)];
      if (condition.isEmpty()) {
        Arrays.fill(out, (byte) ExpressionCompiler.YES);
        return out;
      }
      return all(condition.get(), out);
    }
  }

  /**
   * Returns the inside of a collection that is the subjects' own, so that no two share an element,
   * if what is asked speaks of the elements alone.
   */
  private Optional<Inside> inside(Expression collection, Stream<Expression> asked) {
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
    Inside known = insides.get(key);
    if (known == null) {
      known = new Inside(get, access, many.kind());
      insides.put(key, known);
    }
    return Optional.of(known);
  }

  private Optional<Consumer<byte[]>> quantify(Expression.Quantify quantify) {
    return inside(
            quantify.collection(),
            Stream.concat(quantify.where().stream(), Stream.of(quantify.body())))
        .map(
            inside -> {
              Optional<Column<byte[]>> where = quantify.where().map(inside.columns::truth);
              Column<byte[]> body = inside.columns.truth(quantify.body());
              boolean every = quantify.quantifier() == Expression.Quantifier.EVERY;
              return out -> {
                byte[] counts = inside.where(where);
                byte[] so = inside.all(body, new byte[counts.length]);
                for (int i = 0; i < count; i++) {
                  int result = every ? ExpressionCompiler.YES : ExpressionCompiler.NO;
                  for (int at = inside.first(i); at < inside.first(i + 1); at++) {
                    int place = at - inside.first(0);
                    if (counts[place] == ExpressionCompiler.YES) {
                      result = every ? Math.min(result, so[place]) : Math.max(result, so[place]);
                    }
                  }
                  out[i] = (byte) result;
                }
              };
            });
  }

  private Optional<Consumer<double[]>> summarize(Expression.Summarize summarize) {
    return inside(
            summarize.collection(),
            Stream.concat(summarize.where().stream(), summarize.value().stream()))
        .map(
            inside -> {
              Optional<Column<byte[]>> where = summarize.where().map(inside.columns::truth);
              Optional<Column<double[]>> value = summarize.value().map(inside.columns::number);
              return out -> {
                byte[] counts = inside.where(where);
                double[] values = new double[counts.length];
                if (value.isPresent()) {
                  inside.all(value.get(), values);
                }
                for (int i = 0; i < count; i++) {
                  Tally tally = new Tally();
                  for (int at = inside.first(i); at < inside.first(i + 1); at++) {
                    int place = at - inside.first(0);
                    if (counts[place] == ExpressionCompiler.YES) {
                      tally.add(values[place]);
                    }
                  }
                  out[i] = tally.result(summarize.summary());
                }
              };
            });
  }
}
