package example.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.finding.Severity;
import gripwright.season.CompiledPlan;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The measured year is a full year of training. */
final class YearBenchmarkTest {

  @Test
  void bothYearsAreFullOfSessions() {
    for (String calendar : new String[] {"obvious", "crowded"}) {
      YearBenchmark benchmark = new YearBenchmark();
      benchmark.calendar = calendar;
      benchmark.read();
      assertEquals(
          List.of(),
          benchmark.year().findings().stream()
              .filter(f -> f.severity() == Severity.ERROR)
              .map(f -> f.line() + ": " + f.message())
              .toList());
      CompiledPlan plan = benchmark.year().plans().get(0);
      assertEquals(52, plan.weeks().size());
      assertTrue(plan.sessions().size() > 140, calendar + " " + plan.sessions().size());
      assertFalse(plan.retests().isEmpty());
    }
  }
}
