package example.benchmarks;

import gripwright.compare.ComparisonResult;
import gripwright.compare.ComparisonRun;
import gripwright.compare.RunOptions;
import gripwright.language.Compilation;
import gripwright.language.Gripwright;
import gripwright.language.Reading;
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
 * Compares ten arms of twelve weeks for a cohort, in one thread, beside a compile of one plan of
 * twelve weeks for one athlete.
 *
 * <p>Not final, since JMH derives a class from it.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = "-Xmx256m")
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
public class CohortBenchmark {

  /** Arms of the comparison. */
  static final int ARMS = 10;

  /** Persons of the cohort. */
  @Param({"1000", "10000"})
  int persons = 1_000;

  private Reading reading = Gripwright.read("empty.grip", "language 1\n");
  private Reading plan = reading;

  /** Reads the texts. */
  @Setup
  public void read() {
    reading = Gripwright.read("cohort.grip", text(persons));
    plan = Gripwright.read("plan.grip", planText());
  }

  /** Runs the comparison. */
  @Benchmark
  public ComparisonResult cohort() {
    ComparisonRun run = reading.run(reading.comparisons().values().iterator().next());
    return run.run(RunOptions.standard());
  }

  /** Compiles one arm for one athlete. */
  @Benchmark
  public Compilation plan() {
    return plan.compile();
  }

  private static final String PROTOCOL =
      """
      language 1
      protocol tens {
        given sets 4, level 70 % max
        repeat sets resting 3 min { hold 10 s at level }
      }
      """;

  /** Writes ten arms, each with another edge or number of sets. */
  static String text(int persons) {
    StringBuilder text = new StringBuilder(PROTOCOL);
    text.append(
        """
        cohort adults {
          size           %d
          sex            female 50 %%
          hand by sex "published measures"
          body-mass      66 kg spread 14 %%
          maximum        100 kg spread 15 %% on half-crimp edge 20 mm
          critical-force 41 %% max spread 28 %%
          correlate      body-mass, maximum 0.5
          correlate      body-mass, critical-force 0
          correlate      maximum, critical-force 0
        }
        compare ten {
          for     adults
          each    2 per week
          over    12 weeks
          draws   100 stream 1
          measure time-under-load, load-time, impulse, end-reserve, completed, a2-exposure, a4-exposure
        """
            .formatted(persons));
    for (int arm = 0; arm < ARMS; arm++) {
      text.append(
          "  arm a%d do tens with sets %d on half-crimp edge %d mm\n"
              .formatted(arm, 3 + arm, 15 + arm));
    }
    return text.append("}\n").toString();
  }

  private static String planText() {
    return PROTOCOL
        + """
        athlete one {
          born       1998-05-11
          body-mass  61 kg
          trained    40 months
          ability    french 7b+
          hand       { length 178 mm }
          available  tue 90 min, thu 90 min, sat 90 min
          equipment  { edges 20 mm  added 1 kg steps to 40 kg  assist 1 kg steps to 40 kg }
        }
        log one { 2027-01-02 test half-crimp edge 20 mm hold 7 s load 88 kg }
        plan arm {
          for  one
          from 2027-01-04
          block all 12 weeks {
            session holds 2 per week { do tens on half-crimp edge 20 mm }
          }
        }
        """;
  }
}
