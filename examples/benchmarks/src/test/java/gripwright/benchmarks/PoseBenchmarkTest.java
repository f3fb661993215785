package gripwright.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.grip.GripFit;
import org.junit.jupiter.api.Test;

/** Both solve the same question, and the other one gets as far. */
final class PoseBenchmarkTest {

  private final PoseBenchmark benchmark = new PoseBenchmark();

  @Test
  void theCostOfOurPosesIsTheirResidual() {
    for (GripFit fit : benchmark.solve()) {
      JointAngles angles = new JointAngles(benchmark.shape(), fit.edge().millimetres(), fit.grip());
      assertEquals(
          fit.pose().residual(), angles.cost(angles.of(fit.pose())), 1e-6, fit.grip().name());
    }
  }

  @Test
  void theOtherOneGetsAsFarForEveryGrip() {
    double[] left = benchmark.bobyqa();
    for (int i = 0; i < left.length; i++) {
      assertTrue(left[i] <= benchmark.goal(i), benchmark.grips().get(i).name());
    }
  }
}
