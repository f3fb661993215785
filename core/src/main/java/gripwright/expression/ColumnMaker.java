package gripwright.expression;

import gripwright.expression.Columns.Column;
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

/** Creates the column of each kind of expression, for the current batch of some columns. */
final class ColumnMaker implements ExpressionVisitor<Column<?>> {

  private final Columns columns;
  private final Kind kind;
  private final Subjects subjects;
  private final Evaluation evaluation;
  private final Map<ExpressionKey, ElementColumns> insides = new HashMap<>();

  ColumnMaker(Columns columns, Kind kind, Subjects subjects, Evaluation evaluation) {
    this.columns = columns;
    this.kind = kind;
    this.subjects = subjects;
    this.evaluation = evaluation;
  }

  @Override
  public Column<?> literal(Literal literal) {
    double value = literal.number();
    return columns.numbers(out -> Arrays.fill(out, 0, columns.count(), value));
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
    return columns.truths(compared(compare));
  }

  @Override
  public Column<?> between(Condition.Between between) {
    return columns.truths(
        both(
            columns.truth(new Condition.Compare(Relation.AT_LEAST, between.value(), between.low())),
            columns.truth(new Condition.Compare(Relation.AT_MOST, between.value(), between.high())),
            ExpressionCompiler.NO));
  }

  @Override
  public Column<?> is(Condition.Is is) {
    return columns.truths(oneOf(is.value(), Set.copyOf(is.words())));
  }

  @Override
  public Column<?> arithmetic(Expression.Arithmetic arithmetic) {
    Column<double[]> left = columns.number(arithmetic.left());
    Column<double[]> right = columns.number(arithmetic.right());
    DoubleBinaryOperator operation = Arithmetic.operation(arithmetic);
    return columns.numbers(
        out -> {
          double[] ones = left.values();
          double[] others = right.values();
          int count = columns.count();
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
    return columns.truths(
        both(columns.truth(and.left()), columns.truth(and.right()), ExpressionCompiler.NO));
  }

  @Override
  public Column<?> or(Condition.Or or) {
    return columns.truths(
        both(columns.truth(or.left()), columns.truth(or.right()), ExpressionCompiler.YES));
  }

  @Override
  public Column<?> not(Condition.Not not) {
    Column<byte[]> operand = columns.truth(not.operand());
    return columns.truths(
        out -> {
          byte[] values = operand.values();
          int count = columns.count();
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
        .<Column<?>>map(inside -> columns.numbers(inside.summarize(summarize)))
        .orElseGet(() -> numberByRow(summarize));
  }

  @Override
  public Column<?> quantify(Condition.Quantify quantify) {
    return inside(
            quantify.collection(),
            Stream.concat(quantify.where().stream(), Stream.of(quantify.body())))
        .<Column<?>>map(inside -> columns.truths(inside.quantify(quantify)))
        .orElseGet(() -> truthByRow(quantify));
  }

  /** Creates the column of a property. */
  private final class Reading implements PropertyReaders.Access.Visitor<Column<?>> {
    private final Expression.Get get;
    private final ExpressionKey key;

    Reading(Expression.Get get) {
      this.get = get;
      this.key = columns.key(get);
    }

    @Override
    public Column<?> number(PropertyReaders.NumberAccess access) {
      return columns.numbers(
          out ->
              System.arraycopy(
                  subjects.numbers(key, get, access), columns.from(), out, 0, columns.count()));
    }

    @Override
    public Column<?> truth(PropertyReaders.TruthAccess access) {
      return columns.truths(
          out ->
              System.arraycopy(
                  subjects.truths(key, get, access), columns.from(), out, 0, columns.count()));
    }

    @Override
    public Column<?> object(PropertyReaders.ObjectAccess access) {
      throw new IllegalArgumentException(get.property() + " has no column");
    }
  }

  private Column<byte[]> truthByRow(Expression e) {
    ExpressionCompiler.Truth code = ExpressionCompiler.truth(e, kind, evaluation);
    @Nullable Object[] frame = code.frame();
    return columns.truths(
        out -> {
          int count = columns.count();
          int from = columns.from();
          for (int i = 0; i < count; i++) {
            out[i] = (byte) code.of(subjects.at(from + i), frame);
          }
        });
  }

  private Column<double[]> numberByRow(Expression e) {
    ExpressionCompiler.Value code = ExpressionCompiler.number(e, kind, evaluation);
    @Nullable Object[] frame = code.frame();
    return columns.numbers(
        out -> {
          int count = columns.count();
          int from = columns.from();
          for (int i = 0; i < count; i++) {
            out[i] = code.of(subjects.at(from + i), frame);
          }
        });
  }

  private Consumer<byte[]> both(Column<byte[]> left, Column<byte[]> right, int decided) {
    return out -> {
      int count = columns.count();
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
    int count = columns.count();
    for (int i = 0; i < count; i++) {
      if (values[i] != value) {
        return false;
      }
    }
    return true;
  }

  private Consumer<byte[]> compared(Condition.Compare compare) {
    Column<double[]> left = columns.number(compare.left());
    Column<double[]> right = columns.number(compare.right());
    Comparison comparison = Comparison.of(compare.relation());
    return out -> comparison.compare(left.values(), right.values(), out, columns.count());
  }

  private Consumer<byte[]> oneOf(Expression value, Set<String> wanted) {
    ExpressionKey key = columns.key(value);
    return out -> {
      Subjects.Words words = subjects.words(key, value);
      List<String> known = words.known;
      byte[] answers = new byte[known.size() + 1];
      answers[0] = ExpressionCompiler.UNDECIDED; // no word
      for (int i = 0; i < known.size(); i++) {
        answers[i + 1] =
            (byte) (wanted.contains(known.get(i)) ? ExpressionCompiler.YES : ExpressionCompiler.NO);
      }
      int[] places = words.places;
      int count = columns.count();
      int from = columns.from();
      for (int i = 0; i < count; i++) {
        out[i] = answers[places[from + i]];
      }
    };
  }

  /**
   * Returns columns for the elements of a collection, if no two subjects share an element and the
   * expressions refer to the elements alone.
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
    ExpressionKey key = columns.key(collection);
    ElementColumns known = insides.get(key);
    if (known == null) {
      known = new ElementColumns(columns, subjects.elements(get, access), many.kind(), evaluation);
      insides.put(key, known);
    }
    return Optional.of(known);
  }
}
