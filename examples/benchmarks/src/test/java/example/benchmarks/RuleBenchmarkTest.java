package example.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** The three rule languages give the same results for the same plan. */
final class RuleBenchmarkTest {

  @Test
  void allFindTheSameBreaches() {
    RuleBenchmark benchmark = new RuleBenchmark();
    benchmark.sessions = 1_000;
    benchmark.write();
    RuleFacts facts = RuleFacts.of(TrainingYears.ofSessions(1_000, OurRules.CLUB));
    Map<String, Integer> ours =
        new OurRules().breaches(TrainingYears.ofSessions(1_000, OurRules.CLUB));
    assertEquals(20, ours.size());
    assertTrue(ours.values().stream().allMatch(count -> count > 0), ours::toString);
    assertEquals(ours, new CelRules().check(CelRules.variables(facts)).byRule());
    assertEquals(ours, new DroolsRules().check(facts).byRule());
    assertEquals(ours.values().stream().mapToInt(i -> i).sum(), benchmark.rules());
  }
}
