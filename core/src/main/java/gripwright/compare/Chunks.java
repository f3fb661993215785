package gripwright.compare;

import gripwright.budget.Meter;
import gripwright.budget.Stage;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Divides numbered work into chunks of a fixed size and takes their results in order, so that the
 * number of threads changes no result.
 */
final class Chunks {

  /** How many draws or athletes a chunk has. */
  static final int SIZE = 4_096;

  private Chunks() {}

  /**
   * A part of the work.
   *
   * @param from first number
   * @param to one more than the last number
   */
  record Chunk(int from, int to) {}

  /**
   * What is to be done.
   *
   * @param threads how many threads
   * @param worker makes a worker, which is used by one thread at a time
   * @param taken receives the results in the order of the chunks, on the calling thread
   */
  record Work<T>(int threads, Supplier<Function<Chunk, T>> worker, Consumer<T> taken) {}

  /**
   * Works.
   *
   * @param count how many numbers
   * @throws gripwright.budget.OverBudget if the work is cancelled or out of time
   */
  static <T> void run(int count, Work<T> work, Meter meter) {
    List<Chunk> chunks = of(count);
    if (work.threads() == 1 || chunks.size() == 1) {
      Function<Chunk, T> only = work.worker().get();
      for (Chunk chunk : chunks) {
        meter.progress(Stage.COMPARING, chunk.from(), count);
        work.taken().accept(only.apply(chunk));
      }
      meter.progress(Stage.COMPARING, count, count);
      return;
    }
    ExecutorService pool = Executors.newFixedThreadPool(work.threads());
    try {
      parallel(chunks, count, work, pool, meter);
    } finally {
      pool.shutdownNow();
    }
  }

  /** Returns the chunks of this many numbers, in order. */
  static List<Chunk> of(int count) {
    List<Chunk> chunks = new ArrayList<>();
    for (int from = 0; from < count; from += SIZE) {
      chunks.add(new Chunk(from, Math.min(count, from + SIZE)));
    }
    return chunks;
  }

  /** Never has more chunks under way than twice the threads, so that memory stays bounded. */
  private static <T> void parallel(
      List<Chunk> chunks, int count, Work<T> work, ExecutorService pool, Meter meter) {
    Deque<Future<T>> pending = new ArrayDeque<>();
    int next = 0;
    for (Chunk chunk : chunks) {
      while (next < chunks.size() && pending.size() < 2 * work.threads()) {
        Chunk further = chunks.get(next++);
        Callable<T> call = () -> work.worker().get().apply(further);
        pending.add(pool.submit(call));
      }
      meter.progress(Stage.COMPARING, chunk.from(), count);
      work.taken().accept(result(pending.remove(), meter));
    }
    meter.progress(Stage.COMPARING, count, count);
  }

  private static <T> T result(Future<T> future, Meter meter) {
    try {
      return future.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      meter.look();
      throw new IllegalStateException("interrupted while waiting", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw new IllegalStateException(e.getCause());
    }
  }
}
