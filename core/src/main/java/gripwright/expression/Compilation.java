package gripwright.expression;

import static gripwright.expression.ExpressionCompiler.YES;

import gripwright.expression.ExpressionCompiler.Code;
import gripwright.expression.ExpressionCompiler.NumberCode;
import gripwright.expression.ExpressionCompiler.ObjectCode;
import gripwright.expression.ExpressionCompiler.TruthCode;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Expressions being compiled into closures that share one frame. Not thread-safe. */
final class Compilation {

  /** Expressions that take about the time of one step into a collection. */
  private static final int EXPRESSIONS_OF_A_STEP = 16;

  private final List<Kind> subjects = new ArrayList<>();
  private final CodeMaker maker;
  private int depth;
  private int memos;

  /** Number of expressions compiled so far. */
  private int compiled;

  /** The places referred to since it was last cleared. */
  BitSet referenced = new BitSet();

  Compilation(List<Kind> around, Evaluation evaluation) {
    this.maker = new CodeMaker(this, evaluation);
    around.forEach(kind -> subjects.add(kind));
    depth = around.size();
  }

  /** Returns the number of places in a frame; call it after everything is compiled. */
  int places() {
    return depth + memos;
  }

  /** Returns compiled code as a value ready for evaluation. */
  ExpressionCompiler.Value value(NumberCode code) {
    return new ExpressionCompiler.Value(code, places());
  }

  /** Returns a frame with the enclosing subjects; call it after everything is compiled. */
  @Nullable Object[] frame(EvaluationContext at) {
    @Nullable Object[] frame = new Object[places()];
    for (int i = 0; i < at.things().size(); i++) {
      frame[i] = at.things().get(i);
    }
    return frame;
  }

  void enter(Kind kind) {
    subjects.add(kind);
    depth = Math.max(depth, subjects.size());
  }

  void leave() {
    subjects.remove(subjects.size() - 1);
  }

  TruthCode truth(Expression e) {
    if (code(e) instanceof TruthCode truth) {
      return truth;
    }
    throw new IllegalArgumentException(e.type() + " is not a yes or no");
  }

  NumberCode number(Expression e) {
    if (code(e) instanceof NumberCode number) {
      return number;
    }
    throw new IllegalArgumentException(e.type() + " is not a number");
  }

  ObjectCode object(Expression e) {
    if (code(e) instanceof ObjectCode object) {
      return object;
    }
    throw new IllegalArgumentException(e.type() + " is not a thing or a word");
  }

  private Code code(Expression e) {
    compiled++;
    return e.accept(maker);
  }

  /** Returns code that takes a subject from its place. */
  ObjectCode subject(Expression.Subject subject) {
    int place = subjects.size() - 1 - subject.depth();
    if (subject.depth() < 0 || place < 0 || subjects.get(place) != subject.kind()) {
      throw new IllegalArgumentException(
          "no " + subject.kind().word() + " at depth " + subject.depth());
    }
    referenced.set(place);
    return frame -> frame[place];
  }

  /** Returns the number of expressions compiled so far. */
  int compiled() {
    return compiled;
  }

  /**
   * Returns the weight of one element of a collection: 1, or more if its expressions are large.
   *
   * @param before value of {@link #compiled} before those expressions were compiled
   */
  int weightSince(int before) {
    return 1 + (compiled - before) / EXPRESSIONS_OF_A_STEP;
  }

  TruthCode where(Optional<Expression> condition) {
    return condition.isPresent() ? truth(condition.get()) : frame -> YES;
  }

  int enterElementOf(Expression collection) {
    enter(((Type.Many) collection.type()).kind());
    return subjects.size() - 1;
  }

  /**
   * Returns code that goes through a collection once and reuses the result while the collection and
   * the enclosing subjects that it refers to are the same. If it refers to the directly enclosing
   * element, nothing can be reused and nothing is kept.
   *
   * @param around the places referred to before the elements were entered
   * @param place the place of the elements
   */
  NumberCode asOnce(BitSet around, int place, ObjectCode collection, NumberCode code) {
    BitSet outside = referenced.get(0, place);
    referenced = (BitSet) outside.clone();
    referenced.or(around);
    if (place > 1 ? outside.get(place - 1) : !outside.isEmpty()) {
      return code;
    }
    int[] places = outside.stream().toArray();
    return Memo.keeping(code, collection, places, ++memos);
  }
}
