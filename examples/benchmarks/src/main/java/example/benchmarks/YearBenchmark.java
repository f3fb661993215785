package example.benchmarks;

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
 * Compiles a plan of 52 weeks for one athlete, from typed objects to dated sessions, loads and
 * rules.
 *
 * <p>Not final, since JMH derives a class from it.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class YearBenchmark {

  /**
   * {@code obvious}: days on which nothing affects the next week; {@code crowded}: every day is
   * open but short, so that several weeks have to be planned together.
   */
  @Param({"obvious", "crowded"})
  String calendar = "obvious";

  private Reading reading = Gripwright.read("empty.grip", "language 1\n");

  /** Reads the text. */
  @Setup
  public void read() {
    reading = Gripwright.read("year.grip", text(calendar.equals("crowded")));
  }

  /** Compiles the plan. */
  @Benchmark
  public Compilation year() {
    return reading.compile();
  }

  /** Writes a year of four blocks of 13 weeks; the sessions are hard, light and light. */
  static String text(boolean crowded) {
    StringBuilder text =
        new StringBuilder(
            """
            language 1
            athlete solveig-dahl {
              born       1998-05-11
              body-mass  61 kg
              trained    40 months
              ability    french 7b+
              hand       { length 178 mm }
              available  %s
              equipment  { edges 20 mm  added 1 kg steps to 40 kg  assist 1 kg steps to 40 kg }
              away       2027-03-22 to 2027-03-28
              away       2027-07-05 to 2027-07-11
            }
            log solveig-dahl {
              2027-01-02 test half-crimp edge 20 mm hold 7 s load 88 kg
            }
            protocol tens {
              given level 84 %% max
              repeat 4 resting 3 min { hold 10 s at level }
            }
            plan year {
              for   solveig-dahl
              from  2027-01-04
            """
                .formatted(
                    crowded
                        ? "mon 60 min, tue 60 min, wed 60 min, thu 60 min, fri 60 min, sat 60 min,"
                            + " sun 60 min"
                        : "tue 90 min, thu 90 min, sat 90 min"));
    for (int block = 1; block <= 4; block++) {
      text.append("  block part-").append(block).append(" 13 weeks {\n");
      text.append(session("strong", crowded ? 3 : 2, "84 % max", "half-crimp"));
      text.append(session("steady", crowded ? 2 : 1, "60 % max", "open-four"));
      if (crowded) {
        text.append(session("tired", 2, "55 % max", "half-crimp"));
      }
      text.append("    ease week 13 to 60 % sets\n  }\n");
    }
    return text.append("  retest half-crimp edge 20 mm hold 7 s every 6 weeks\n}\n").toString();
  }

  private static String session(String name, int perWeek, String level, String grip) {
    return "    session "
        + name
        + " "
        + perWeek
        + " per week at least 48 h apart {\n      do tens with level "
        + level
        + " on "
        + grip
        + " edge 20 mm\n    }\n";
  }
}
