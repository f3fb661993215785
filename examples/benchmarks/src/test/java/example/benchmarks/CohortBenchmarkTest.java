package example.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.compare.ComparisonResult;
import org.junit.jupiter.api.Test;

final class CohortBenchmarkTest {

  @Test
  void allArmsAreCompared() {
    CohortBenchmark benchmark = new CohortBenchmark();
    benchmark.read();
    ComparisonResult result = benchmark.cohort();
    assertTrue(result.usable(), () -> result.findings().toString());
    assertEquals(CohortBenchmark.ARMS, result.subjects().get(0).arms().size());
  }

  @Test
  void thePlanHasTwoSessionsAWeek() {
    CohortBenchmark benchmark = new CohortBenchmark();
    benchmark.read();
    assertEquals(24, benchmark.plan().plans().get(0).sessions().size());
  }
}
