package gripwright.expression;

import gripwright.expression.ExpressionCompiler.NumberCode;
import gripwright.expression.ExpressionCompiler.ObjectCode;
import org.jspecify.annotations.Nullable;

/** What came of a collection when it was last gone through, and for which subjects around. */
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
   * @param collection what the result is of
   * @param places of the subjects around that the result depends on
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
