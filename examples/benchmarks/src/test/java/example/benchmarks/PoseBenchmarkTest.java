package example.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.grip.GripFit;
import org.junit.jupiter.api.Test;

/** Both solve the same problem, and the other solver gets results as good. */
final class PoseBenchmarkTest {

  /** What our weak pull to a start and the softness of a straight finger make of a cost. */
  private static final double SOFT = 0.02;

  private final PoseBenchmark benchmark = new PoseBenchmark();

  @Test
  void theCostOfOurPosesIsTheirResidual() {
    for (GripFit fit : benchmark.solve()) {
      JointAngles angles = new JointAngles(benchmark.shape(), fit.edge().millimetres(), fit.grip());
      assertEquals(
          fit.pose().residual(), angles.cost(angles.of(fit.pose())), SOFT, fit.grip().name());
    }
  }

  @Test
  void theOtherSolverIsAsGoodForEveryGrip() {
    double[] left = benchmark.bobyqa();
    for (int i = 0; i < left.length; i++) {
      assertTrue(left[i] <= benchmark.goal(i), benchmark.grips().get(i).name());
    }
  }
}
