package example.benchmarks;

import gripwright.grip.Grip;
import gripwright.grip.GripFit;
import gripwright.grip.StandardGrips;
import gripwright.hand.Hand;
import gripwright.hand.HandShape;
import gripwright.quantity.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * All grips of the catalogue on one edge for one hand: our solver, and a derivative-free bounded
 * optimiser over all joint angles and the palm that may stop once it is as good.
 *
 * <p>Not final, since JMH derives a class from it.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class PoseBenchmark {

  /** Tolerance beside our residual: 1 %, plus a small absolute amount where ours is almost zero. */
  private static final double RELATIVE = 1.01;

  private static final double ABSOLUTE = 1e-3;
  private static final int EVALUATIONS = 20_000;

  private static final Length EDGE = Length.ofMillimetres(20);

  private final HandShape shape =
      HandShape.of(Hand.ofLength(Length.ofMillimetres(187)).withBreadth(Length.ofMillimetres(83)));
  private final List<Grip> grips =
      StandardGrips.all().stream().filter(g -> GripFit.of(g, shape, EDGE).reachable()).toList();
  private final double[] ours =
      grips.stream().mapToDouble(g -> GripFit.of(g, shape, EDGE).pose().residual()).toArray();

  /** Returns the grips that this hand can take. */
  List<Grip> grips() {
    return grips;
  }

  HandShape shape() {
    return shape;
  }

  /** Fits every grip. */
  @Benchmark
  public List<GripFit> solve() {
    List<GripFit> fits = new ArrayList<>();
    for (Grip grip : grips) {
      fits.add(GripFit.of(grip, shape, EDGE));
    }
    return fits;
  }

  /** Finds as good a pose for every grip by BOBYQA; returns the residual of each. */
  @Benchmark
  public double[] bobyqa() {
    double[] left = new double[grips.size()];
    for (int i = 0; i < left.length; i++) {
      left[i] = bobyqa(grips.get(i), goal(i));
    }
    return left;
  }

  double goal(int grip) {
    return RELATIVE * ours[grip] + ABSOLUTE;
  }

  private double bobyqa(Grip grip, double goal) {
    JointAngles angles = new JointAngles(shape, EDGE.millimetres(), grip);
    double[] lower = angles.lower();
    double[] upper = angles.upper();
    double[] start = angles.start();
    double[] best = {Double.POSITIVE_INFINITY};
    double[] unit = new double[start.length];
    for (int i = 0; i < unit.length; i++) {
      unit[i] = (start[i] - lower[i]) / (upper[i] - lower[i]);
    }
    try {
      new BOBYQAOptimizer(2 * unit.length + 1, 0.1, 1e-7)
          .optimize(
              new MaxEval(EVALUATIONS),
              GoalType.MINIMIZE,
              new ObjectiveFunction(
                  point -> {
                    double[] unknowns = new double[point.length];
                    for (int i = 0; i < point.length; i++) {
                      unknowns[i] = lower[i] + point[i] * (upper[i] - lower[i]);
                    }
                    double cost = angles.cost(unknowns);
                    best[0] = Math.min(best[0], cost);
                    if (cost <= goal) {
                      throw new GoodEnough();
                    }
                    return cost;
                  }),
              new InitialGuess(unit),
              new SimpleBounds(new double[unit.length], ones(unit.length)));
    } catch (GoodEnough | MathRuntimeException end) {
      // Either as good as ours or out of evaluations: the best so far counts.
    }
    return best[0];
  }

  private static double[] ones(int size) {
    double[] ones = new double[size];
    Arrays.fill(ones, 1);
    return ones;
  }

  /** Ends a search that is good enough. */
  private static final class GoodEnough extends RuntimeException {
    private static final long serialVersionUID = 1;

    GoodEnough() {
      super(null, null, false, false);
    }
  }
}
