package gripwright.strength;

import gripwright.quantity.Load;
import java.util.Optional;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/**
 * Fits an exponential to the falling loads of an all-out series by least squares. For each time
 * constant, height and asymptote follow from a linear fit; the time constant is found by search.
 */
final class AllOutDecay {

  /** Time constants tried, in seconds of work and rest: a third of a hold to a whole series. */
  private static final double FASTEST = 3;

  private static final double SLOWEST = 240;
  private static final double ACCURACY = 1e-10;
  private static final int TRIES = 500;

  private final double[] loads;
  private final double cycle;

  private record Line(double asymptote, double height, double squares) {}

  private AllOutDecay(StrengthTest.Series series) {
    this.loads = series.means().stream().mapToDouble(Load::kilograms).toArray();
    this.cycle = (series.work().toNanos() + series.rest().toNanos()) / 1e9;
  }

  /** Returns the asymptote in kg; empty if the loads don't fall, or too slowly for an estimate. */
  static Optional<Double> asymptote(StrengthTest.Series series) {
    if (series.means().size() < 3) {
      return Optional.empty();
    }
    AllOutDecay decay = new AllOutDecay(series);
    double found =
        new BrentOptimizer(ACCURACY, ACCURACY)
            .optimize(
                new UnivariateObjectiveFunction(seconds -> decay.line(seconds).squares()),
                GoalType.MINIMIZE,
                new SearchInterval(FASTEST, SLOWEST),
                new MaxEval(TRIES))
            .getPoint();
    Line line = decay.line(found);
    return line.asymptote() > 0 && line.height() > 0 && found < SLOWEST * 0.99
        ? Optional.of(line.asymptote())
        : Optional.empty();
  }

  private Line line(double seconds) {
    int n = loads.length;
    double sumX = 0;
    double sumY = 0;
    double sumXx = 0;
    double sumXy = 0;
    for (int i = 0; i < n; i++) {
      double x = Math.exp(-i * cycle / seconds);
      sumX += x;
      sumY += loads[i];
      sumXx += x * x;
      sumXy += x * loads[i];
    }
    double height = (n * sumXy - sumX * sumY) / (n * sumXx - sumX * sumX);
    double asymptote = (sumY - height * sumX) / n;
    double squares = 0;
    for (int i = 0; i < n; i++) {
      double off = loads[i] - asymptote - height * Math.exp(-i * cycle / seconds);
      squares += off * off;
    }
    return new Line(asymptote, height, squares);
  }
}
