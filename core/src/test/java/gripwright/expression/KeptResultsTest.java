package gripwright.expression;

import static gripwright.expression.Expression.number;
import static gripwright.expression.Expression.outer;
import static gripwright.expression.Expression.subject;
import static gripwright.rule.Winter.FRONT_TWO;
import static gripwright.rule.Winter.HALF_CRIMP;
import static gripwright.rule.Winter.line;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.rule.Winter;
import gripwright.rule.view.PlanView;
import gripwright.rule.view.Readers;
import gripwright.rule.view.Views;
import java.util.function.DoubleBinaryOperator;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A cached result equals the calculated one, whatever it refers to. */
class KeptResultsTest {

  private static final Expression ALL = subject(Kind.EXERCISE).get("plan").get("exercises");
  private static final PlanView PLAN =
      Views.of(
          new Winter()
              .session(0, line(HALF_CRIMP, 50), line(FRONT_TWO, 80))
              .session(2, line(HALF_CRIMP, 70), line(FRONT_TWO, 60))
              .session(4, line(HALF_CRIMP, 65)));
  private static final double[] LOADS =
      PLAN.schedule.sessions().stream()
          .flatMap(s -> s.exercises().stream())
          .mapToDouble(e -> e.loadIndex())
          .toArray();

  private static Expression load(int depth) {
    return outer(Kind.EXERCISE, depth).get("load");
  }

  /** Returns how many loads are at most another. */
  private static double atMost(double load) {
    double count = 0;
    for (double each : LOADS) {
      count += each <= load + 1e-9 ? 1 : 0;
    }
    return count;
  }

  /** Returns the work, and checks the value for each exercise with one frame for all of them. */
  private static long check(Expression value, DoubleBinaryOperator ofRootAndMiddle) {
    Evaluation evaluation = new Evaluation(Readers.ALL);
    ExpressionCompiler.Value code = ExpressionCompiler.number(value, Kind.EXERCISE, evaluation);
    @Nullable Object[] frame = code.frame();
    for (int round = 0; round < 2; round++) {
      for (int i = 0; i < LOADS.length; i++) {
        double sum = 0;
        for (double middle : LOADS) {
          sum += ofRootAndMiddle.applyAsDouble(LOADS[i], middle);
        }
        assertEquals(sum, code.of(Views.exercise(PLAN, i + 1), frame), 1e-9);
      }
    }
    return evaluation.taken();
  }

  private static Expression sum(Expression value) {
    return ALL.summarize(Expression.Summary.SUM, value);
  }

  @Test
  void ofTheOutermostSubject() {
    long work = check(sum(ALL.countWhere(load(0).atMost(load(2)))), (root, middle) -> atMost(root));
    int n = LOADS.length;
    assertEquals(2 * n * (n + n), work, "once for each, not once for each and each");
  }

  @Test
  void ofTheDirectlyEnclosingElement() {
    check(sum(ALL.countWhere(load(0).atMost(load(1)))), (root, middle) -> atMost(middle));
  }

  @Test
  void ofBoth() {
    check(
        sum(ALL.countWhere(load(0).atMost(load(1)).and(load(0).atMost(load(2))))),
        (root, middle) -> atMost(Math.min(root, middle)));
  }

  @Test
  void ofNeither() {
    long work = check(sum(ALL.countWhere(load(0).atMost(load(0)))), (r, m) -> LOADS.length);
    assertTrue(work <= 2 * LOADS.length, work + " steps");
  }

  @Test
  void ofAnElementInTheMiddle() {
    check(
        sum(sum(ALL.countWhere(load(0).atMost(load(2))))),
        (root, middle) -> LOADS.length * atMost(middle));
  }

  @Test
  void ofTheOutermostThroughTwoCollections() {
    check(
        sum(sum(ALL.countWhere(load(0).atMost(load(3))))),
        (root, middle) -> LOADS.length * atMost(root));
  }

  @Test
  void ofASubjectReferredToBeforeAnotherCollection() {
    Expression before = load(0).atMost(load(1)).and(ALL.count().atLeast(number(1)));
    check(ALL.countWhere(before).times(number(LOADS.length)), (root, middle) -> atMost(root));
    Expression inTheMiddle = load(0).atMost(load(2)).and(ALL.count().atLeast(number(1)));
    check(sum(ALL.countWhere(inTheMiddle)), (root, middle) -> atMost(root));
  }

  @Test
  void largeExpressionsPerElementCountForMore() {
    Expression much = load(0).atMost(load(1));
    for (int i = 0; i < 40; i++) {
      much = much.and(load(0).atMost(load(1).plus(number(i).times(load(1)))));
    }
    long some = check(sum(ALL.countWhere(load(0).atMost(load(1)))), (r, m) -> atMost(m));
    long more = check(sum(ALL.countWhere(much)), (r, m) -> atMost(m));
    assertTrue(more > 5 * some, more + " after " + some);
  }
}
