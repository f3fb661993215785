package gripwright.work;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Collection;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Counts work instead of time, so that a busy machine changes nothing. One step is a call of a
 * method, another round of a loop, an element of a list that is searched or moved, or 64 bytes
 * taken from memory. Only what {@link CountedWork} has prepared is counted; inside the Java library
 * only lists and memory are.
 *
 * <p>Work above the limit is stopped where it is, so an endless loop ends too. One thread at a
 * time.
 */
public final class Work {

  private static final int BYTES = 64;
  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  private static long steps;
  private static long limit = Long.MAX_VALUE;

  private Work() {}

  /** What was asked for took more steps than it may. */
  public static final class TooMuch extends Error {
    private static final long serialVersionUID = 1;

    TooMuch(long limit) {
      super("takes more than " + limit + " steps");
    }
  }

  /**
   * Returns what a piece of work gives.
   *
   * @param most the steps it may take
   * @throws TooMuch if it takes more
   */
  public static <T> T atMost(long most, Supplier<T> work) {
    long bytes = THREADS.getCurrentThreadAllocatedBytes();
    steps = 0;
    limit = most;
    try {
      T result = work.get();
      if (steps == 0) {
        throw new IllegalStateException("nothing is counted here: mark the test with @CountedWork");
      }
      steps += (THREADS.getCurrentThreadAllocatedBytes() - bytes) / BYTES;
      if (steps > most) {
        throw new TooMuch(most);
      }
      return result;
    } finally {
      limit = Long.MAX_VALUE;
    }
  }

  /** Returns the steps of the last piece of work. */
  public static long taken() {
    return steps;
  }

  /** Called by prepared code on entering a method and before it goes back in a loop. */
  public static void step() {
    if (++steps > limit) {
      throw new TooMuch(limit);
    }
  }

  /** Called by prepared code before a list is searched or its elements are moved. */
  public static void all(Object elements) {
    if (elements instanceof Collection<?> list && !(elements instanceof Set<?>)) {
      steps += list.size();
      step();
    }
  }
}
