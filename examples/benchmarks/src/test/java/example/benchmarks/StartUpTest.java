package example.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import example.benchmarks.Program.Measure;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

final class StartUpTest {

  @Test
  void runsAProgramAndTakesTheTime() throws Exception {
    Program empty = StartUp.empty(List.of());
    double[] times = Program.run(List.of(empty), 2, Measure.ELAPSED).get(empty);
    assertEquals(2, times.length);
    assertTrue(0 < times[0] && times[0] <= times[1]);
  }

  @Test
  void refusesToTimeAFailure() throws Exception {
    Program failing = StartUp.empty(List.of("-no-such-flag"));
    assertThrows(
        IllegalStateException.class, () -> Program.run(List.of(failing), 1, Measure.ELAPSED));
  }

  @Test
  void takesTheProcessorTimeFromAShell() throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "no shell here");
    Program empty = StartUp.empty(List.of());
    double[] times = Program.run(List.of(empty), 1, Measure.PROCESSOR).get(empty);
    assertTrue(0 < times[0] && times[0] < 60_000, times[0] + " ms");
    Program failing = StartUp.empty(List.of("-no-such-flag"));
    assertThrows(
        IllegalStateException.class, () -> Program.run(List.of(failing), 1, Measure.PROCESSOR));
  }

  @Test
  void addsUserAndSystemTimeOfChildren() {
    assertEquals(61_530, Program.processorTime("0m9.00s 0m9.00s\n1m1.500s 0m0,030s\n"), 1e-6);
    assertThrows(IllegalStateException.class, () -> Program.processorTime("nothing"));
  }

  @Test
  void findsQuantilesBetweenValues() {
    double[] sorted = {1, 2, 4, 8};
    assertEquals(3, Program.quantile(sorted, 0.5));
    assertEquals(1.75, Program.quantile(sorted, 0.25));
    assertEquals(8, Program.quantile(sorted, 1));
  }

  @Test
  void comparesWithTheFirst() {
    Map<Program, double[]> times = new LinkedHashMap<>();
    times.put(new Program("empty", List.of()), new double[] {40, 40, 40});
    times.put(new Program("check", List.of()), new double[] {90, 100, 110});
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    StartUp.print(times, new PrintStream(bytes, true, StandardCharsets.UTF_8));
    List<String> lines = bytes.toString(StandardCharsets.UTF_8).lines().toList();
    assertEquals("| check | 100 | 95 to 105 | 2.5 |", lines.get(3));
  }
}
