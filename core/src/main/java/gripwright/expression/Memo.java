package gripwright.expression;

import gripwright.expression.ExpressionCompiler.NumberCode;
import gripwright.expression.ExpressionCompiler.ObjectCode;
import org.jspecify.annotations.Nullable;

/** The last result for a collection, and the enclosing subjects that it belongs to. */
final class Memo {

  private final @Nullable Object things;
  private final @Nullable Object[] around;
  private final double result;

  private Memo(@Nullable Object things, @Nullable Object[] around, double result) {
    this.things = things;
    this.around = around;
    this.result = result;
  }

  /**
   * Returns code that keeps its last result in the frame.
   *
   * @param collection the collection of the result
   * @param places places of the enclosing subjects that the result depends on
   * @param fromEnd place of the memo, counted from the end of the frame
   */
  static NumberCode keeping(NumberCode code, ObjectCode collection, int[] places, int fromEnd) {
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
}
