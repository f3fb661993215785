package example.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Runs each benchmark once. */
final class ReadBenchmarkTest {

  private final ReadBenchmark benchmark = new ReadBenchmark();

  @BeforeEach
  void write() {
    benchmark.write();
  }

  @Test
  void readsAndCompiles() {
    assertEquals(12, benchmark.readAndCompile().plans().size());
  }

  @Test
  void reads() {
    assertTrue(benchmark.read().usable());
  }

  @Test
  void parses() {
    assertTrue(benchmark.parse().findings().isEmpty());
  }

  @Test
  void antlrAndWeFindTheSameDeclarations() {
    assertEquals(
        benchmark.parse().declarations().size(), benchmark.bareAntlr().getChildCount() - 1);
  }

  @Test
  void jacksonReadsAsManyDeclarations() throws Exception {
    int declarations = benchmark.parse().declarations().size();
    assertEquals(declarations, benchmark.jacksonJson().size());
    assertEquals(declarations, benchmark.jacksonYaml().size());
  }
}
