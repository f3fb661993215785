package example.benchmarks;

import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A program that is run as a process of its own, from start to end.
 *
 * @param title what it does, in a few words
 * @param command the program and its arguments
 */
record Program(String title, List<String> command) {

  /**
   * Runs programs in turn, so that other load on the machine affects all of them equally. Their
   * output is discarded.
   *
   * @param rounds how often each is run, 1 or more; one more round before is not counted
   * @return for each program, the milliseconds of its runs
   * @throws IllegalStateException if a program fails
   */
  static Map<Program, double[]> run(List<Program> programs, int rounds)
      throws IOException, InterruptedException {
    Map<Program, List<Double>> times = new LinkedHashMap<>();
    for (int round = 0; round <= rounds; round++) {
      for (Program program : programs) {
        double milliseconds = program.once();
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

  private double once() throws IOException, InterruptedException {
    long start = System.nanoTime();
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(Redirect.DISCARD)
            .redirectError(Redirect.DISCARD)
            .start();
    int exit = process.waitFor();
    double milliseconds = (System.nanoTime() - start) / 1e6;
    if (exit != 0) {
      throw new IllegalStateException(
          "'" + String.join(" ", command) + "' ended with exit code " + exit);
    }
    return milliseconds;
  }

  /** Returns a quantile of sorted values; 0.5 gives the median. */
  static double quantile(double[] sorted, double share) {
    double at = share * (sorted.length - 1);
    int below = (int) Math.floor(at);
    int above = (int) Math.ceil(at);
    return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
  }
}
