package example.benchmarks;

import gripwright.rule.PreparedPlan;
import gripwright.season.CompiledPlan;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntSupplier;

/**
 * Runs the rules of {@link RuleBenchmark} in turn, round after round in one JVM, and measures
 * processor time, which is less affected by a busy machine than elapsed time. Garbage collector
 * threads are not included.
 *
 * <p>Arguments: number of sessions and number of rounds; the first half of the rounds is warm-up.
 */
public final class RuleRace {

  private RuleRace() {}

  /** Prints the medians in milliseconds. */
  public static void main(String[] arguments) {
    int sessions = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 100_000;
    int rounds = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 40;
    Map<String, List<Double>> times = run(sessions, rounds);
    double rules = median(times.getOrDefault("rules", List.of()));
    times.forEach(
        (name, all) ->
            System.out.print(
                String.format(
                    Locale.ROOT,
                    "%-8s %10.2f ms, fastest %10.2f, ratio to rules %8.1f%n",
                    name,
                    median(all),
                    Collections.min(all),
                    median(all) / rules)));
  }

  private static Map<String, List<Double>> run(int sessions, int rounds) {
    CompiledPlan plan = TrainingYears.ofSessions(sessions, OurRules.CLUB);
    PreparedPlan prepared = new PreparedPlan(plan);
    RuleFacts facts = RuleFacts.of(plan);
    List<CelRules.Variables> variables = CelRules.variables(facts);
    OurRules ours = new OurRules();
    CelRules cel = new CelRules();
    DroolsRules drools = new DroolsRules();
    Map<String, IntSupplier> all = new LinkedHashMap<>();
    all.put("rules", () -> ours.breaches(prepared));
    all.put("drools", () -> drools.check(facts).size());
    all.put("cel", () -> cel.check(variables).size());
    all.put("check", () -> ours.check(plan).size());
    Map<String, List<Double>> times = new LinkedHashMap<>();
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    for (int round = 0; round < rounds; round++) {
      for (Map.Entry<String, IntSupplier> one : all.entrySet()) {
        long before = threads.getCurrentThreadCpuTime();
        int found = one.getValue().getAsInt();
        double milliseconds = (threads.getCurrentThreadCpuTime() - before) / 1e6;
        if (found == 0) {
          throw new IllegalStateException(one.getKey() + " found nothing");
        }
        if (round >= rounds / 2) {
          times.computeIfAbsent(one.getKey(), n -> new ArrayList<>()).add(milliseconds);
        }
      }
    }
    return times;
  }

  private static double median(List<Double> values) {
    List<Double> sorted = values.stream().sorted().toList();
    return sorted.get(sorted.size() / 2);
  }
}
