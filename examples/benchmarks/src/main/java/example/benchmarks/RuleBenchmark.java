package example.benchmarks;

import gripwright.finding.Finding;
import gripwright.rule.PreparedPlan;
import gripwright.season.CompiledPlan;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Twenty rules over many sessions: ours, and two general-purpose rule languages with the same rules
 * over the same plan. Each gets the facts in its preferred form, prepared beforehand.
 *
 * <p>Not final, since JMH derives a class from it.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx6g")
@Warmup(iterations = 5, time = 3)
@Measurement(iterations = 5, time = 3)
public class RuleBenchmark {

  private final OurRules ours = new OurRules();

  /** How many sessions the plan has, of two lines each. */
  @Param({"10000", "100000"})
  int sessions = 10_000;

  private CompiledPlan plan = TrainingYears.ofSessions(1, OurRules.CLUB);
  private PreparedPlan prepared = new PreparedPlan(plan);
  private RuleFacts facts = RuleFacts.of(plan);

  /** Creates the plan and the input of our rules and of Drools. */
  @Setup
  public void write() {
    plan = TrainingYears.ofSessions(sessions, OurRules.CLUB);
    prepared = new PreparedPlan(plan);
    facts = RuleFacts.of(plan);
  }

  /** The rules for CEL, and the plan as variables for its programs. */
  @State(Scope.Benchmark)
  public static class Cel {
    private final CelRules rules = new CelRules();
    private List<CelRules.Variables> variables = List.of();

    /** Makes the variables. */
    @Setup
    public void write(RuleBenchmark benchmark) {
      variables = CelRules.variables(benchmark.facts);
    }
  }

  /** The rules for Drools. */
  @State(Scope.Benchmark)
  public static class Drools {
    private final DroolsRules rules = new DroolsRules();
  }

  /** Our rules, compiling them included; returns how many places break one. */
  @Benchmark
  public int rules() {
    return ours.breaches(prepared);
  }

  /** Runs the whole check of a compiled plan: sums, built-in rules, these rules, findings. */
  @Benchmark
  public List<Finding> check() {
    return ours.check(plan);
  }

  /** The same rules in CEL. */
  @Benchmark
  public int cel(Cel cel) {
    return cel.rules.check(cel.variables).size();
  }

  /** The same rules in Drools, in a session that keeps no state. */
  @Benchmark
  public int drools(Drools drools) {
    return drools.rules.check(facts).size();
  }
}
