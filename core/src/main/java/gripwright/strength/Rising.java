package gripwright.strength;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** Finds the zero of a non-decreasing function. */
final class Rising {

  private static final double ACCURACY = 1e-12;

  /** A value this little below 0 counts as 0. */
  private static final double EDGE = 1e-9;

  private Rising() {}

  /**
   * Returns the argument at which a function is 0: plus infinity if it stays below 0 up to the
   * greatest argument, minus infinity if it is above 0 from the least.
   */
  static double zero(DoubleUnaryOperator function, double least, double greatest) {
    double atGreatest = function.applyAsDouble(greatest);
    if (atGreatest < -EDGE) {
      return Double.POSITIVE_INFINITY;
    }
    if (function.applyAsDouble(least) > 0) {
      return Double.NEGATIVE_INFINITY;
    }
    return atGreatest <= 0
        ? greatest
        : new BracketingNthOrderBrentSolver(ACCURACY, 5)
            .solve(200, function::applyAsDouble, least, greatest);
  }
}
