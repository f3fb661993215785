package gripwright.expression;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Consumer;

/** The elements of the subjects' collections, with columns of their own. */
final class ElementColumns {

  private final Columns outer;
  private final Subjects.Elements elements;
  private final Columns columns;

  /**
   * Enters a collection.
   *
   * @param outer columns of the subjects with the collection
   * @param element the kind of its elements
   */
  ElementColumns(Columns outer, Subjects.Elements elements, Kind element, Evaluation evaluation) {
    this.outer = outer;
    this.elements = elements;
    columns = new Columns(element, elements.things, evaluation);
  }

  private int first(int subject) {
    return elements.starts[outer.from() + subject];
  }

  /** Returns the values of a column for all elements of the batch. */
  private <A> A all(Columns.Column<A> column, A out) {
    int last = first(outer.count());
    for (int at = first(0); at < last; at += Columns.SIZE) {
      int some = Math.min(Columns.SIZE, last - at);
      columns.batch(at, some);
      System.arraycopy(column.values(), 0, out, at - first(0), some);
    }
    return out;
  }

  /** Returns which elements of the batch are included. */
  private byte[] where(Optional<Columns.Column<byte[]>> condition) {
    byte[] out = new byte[first(outer.count()) - first(0)];
    if (condition.isEmpty()) {
      Arrays.fill(out, (byte) ExpressionCompiler.YES);
      return out;
    }
    return all(condition.get(), out);
  }

  /** Returns a function that evaluates a quantified condition for each subject of the batch. */
  Consumer<byte[]> quantify(Condition.Quantify quantify) {
    Optional<Columns.Column<byte[]>> where = quantify.where().map(columns::truth);
    Columns.Column<byte[]> body = columns.truth(quantify.body());
    boolean every = quantify.quantifier() == Condition.Quantifier.EVERY;
    return out -> {
      byte[] counts = where(where);
      byte[] so = all(body, new byte[counts.length]);
      for (int i = 0; i < outer.count(); i++) {
        int result = every ? ExpressionCompiler.YES : ExpressionCompiler.NO;
        for (int at = first(i); at < first(i + 1); at++) {
          int place = at - first(0);
          if (counts[place] == ExpressionCompiler.YES) {
            result = every ? Math.min(result, so[place]) : Math.max(result, so[place]);
          }
        }
        out[i] = (byte) result;
      }
    };
  }

  /** Returns a function that summarizes the elements of each subject of the batch. */
  Consumer<double[]> summarize(Expression.Summarize summarize) {
    Optional<Columns.Column<byte[]>> where = summarize.where().map(columns::truth);
    Optional<Columns.Column<double[]>> value = summarize.value().map(columns::number);
    return out -> {
      byte[] counts = where(where);
      double[] values = new double[counts.length];
      if (value.isPresent()) {
        all(value.get(), values);
      }
      for (int i = 0; i < outer.count(); i++) {
        Tally tally = new Tally();
        for (int at = first(i); at < first(i + 1); at++) {
          int place = at - first(0);
          if (counts[place] == ExpressionCompiler.YES) {
            tally.add(values[place]);
          }
        }
        out[i] = tally.result(summarize.summary());
      }
    };
  }
}
