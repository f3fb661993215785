package gripwright.history;

import gripwright.plan.TestKind;
import gripwright.strength.StrengthTest;

/** Compares what a planned test asks for with what was measured. */
public final class TestMatch {

  private TestMatch() {}

  /** Returns whether a result is of a kind of test. */
  public static boolean isOf(TestKind kind, StrengthTest.Result result) {
    return kind.accept(
        new TestKind.Visitor<Boolean>() {
          @Override
          public Boolean hold(TestKind.Hold hold) {
            return result instanceof StrengthTest.Held;
          }

          @Override
          public Boolean toFailure(TestKind.ToFailure failure) {
            return result instanceof StrengthTest.ToFailure;
          }

          @Override
          public Boolean series(TestKind.Series series) {
            return result instanceof StrengthTest.Series;
          }
        });
  }
}
