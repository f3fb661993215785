package example.benchmarks;

import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * A program that is run as a process of its own, from start to end.
 *
 * @param title what it does, in a few words
 * @param command the program and its arguments
 */
record Program(String title, List<String> command) {

  /** What is measured of a run, in milliseconds. */
  enum Measure {
    /** From start to end. Depends on what else the machine does. */
    ELAPSED,

    /** Of the program and its system calls, on all cores; in steps of a hundredth of a second. */
    PROCESSOR
  }

  /**
   * Runs the command in its arguments without its output, then prints the times of its children.
   */
  private static final List<String> TIMED =
      List.of("/bin/sh", "-c", "\"$@\" >/dev/null 2>&1; exit=$?; times; exit $exit", "sh");

  private static final Pattern TIME = Pattern.compile("(\\d+)m(\\d+)[.,](\\d+)s");

  /**
   * Runs programs in turn, so that other load on the machine affects all of them equally. Their
   * output is discarded.
   *
   * @param rounds how often each is run, 1 or more; one more round before is not counted
   * @return for each program, the milliseconds of its runs, sorted
   * @throws IllegalStateException if a program fails
   */
  static Map<Program, double[]> run(List<Program> programs, int rounds, Measure measure)
      throws IOException, InterruptedException {
    Map<Program, List<Double>> times = new LinkedHashMap<>();
    for (int round = 0; round <= rounds; round++) {
      for (Program program : programs) {
        double milliseconds =
            measure == Measure.ELAPSED ? program.elapsed() : program.processorTime();
        if (round > 0) {
          times.computeIfAbsent(program, p -> new ArrayList<>()).add(milliseconds);
        }
      }
    }
    Map<Program, double[]> sorted = new LinkedHashMap<>();
    times.forEach(
        (program, each) ->
            sorted.put(program, each.stream().mapToDouble(t -> t).sorted().toArray()));
    return sorted;
  }

  private double elapsed() throws IOException, InterruptedException {
    long start = System.nanoTime();
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(Redirect.DISCARD)
            .redirectError(Redirect.DISCARD)
            .start();
    int exit = process.waitFor();
    double milliseconds = (System.nanoTime() - start) / 1e6;
    requireSuccess(exit);
    return milliseconds;
  }

  private double processorTime() throws IOException, InterruptedException {
    List<String> timed = new ArrayList<>(TIMED);
    timed.addAll(command);
    Process process = new ProcessBuilder(timed).redirectError(Redirect.DISCARD).start();
    String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    requireSuccess(process.waitFor());
    return processorTime(printed);
  }

  /**
   * Returns the milliseconds that the children of a shell took.
   *
   * @param printed what the shell's {@code times} prints: user and system time of the shell in one
   *     line, of its children in the next
   */
  static double processorTime(String printed) {
    List<Double> times =
        TIME.matcher(printed)
            .results()
            .map(
                time ->
                    Integer.parseInt(time.group(1)) * 60_000
                        + Double.parseDouble(time.group(2) + "." + time.group(3)) * 1000)
            .toList();
    if (times.size() != 4) {
      throw new IllegalStateException("not the output of 'times': " + printed);
    }
    return times.get(2) + times.get(3);
  }

  private void requireSuccess(int exit) {
    if (exit != 0) {
      throw new IllegalStateException(
          "'" + String.join(" ", command) + "' ended with exit code " + exit);
    }
  }

  /** Returns a quantile of sorted values; 0.5 gives the median. */
  static double quantile(double[] sorted, double share) {
    double at = share * (sorted.length - 1);
    int below = (int) Math.floor(at);
    int above = (int) Math.ceil(at);
    return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
  }
}
