package example.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Runs each benchmark once, and all give the same result. */
final class SessionBenchmarkTest {

  private static SessionBenchmark session(String name) {
    SessionBenchmark benchmark = new SessionBenchmark();
    benchmark.session = name;
    benchmark.write();
    return benchmark;
  }

  @ParameterizedTest
  @ValueSource(strings = {"repeaters", "hour", "maximal"})
  void closedFormAndIntegratorAgree(String name) {
    SessionBenchmark benchmark = session(name);
    double fatigued = benchmark.closedForm();
    assertEquals(benchmark.dormandPrince(), fatigued, 1e-8);
    assertEquals(1 - fatigued, benchmark.course().endReserve(), 1e-3);
  }

  /** A million sessions on a thread take no more memory than one. */
  @Test
  void aMillionSessionsInConstantMemory() {
    SessionBenchmark benchmark = session("repeaters");
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    double sum = benchmark.closedForm();
    long before = threads.getCurrentThreadAllocatedBytes();
    for (int i = 1; i < 1_000_000; i++) {
      sum += benchmark.closedForm();
    }
    long bytes = threads.getCurrentThreadAllocatedBytes() - before;
    assertEquals(1_000_000 * benchmark.closedForm(), sum, 1e-3);
    assertTrue(bytes < 100_000, () -> bytes + " bytes");
  }
}
