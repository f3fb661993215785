package gripwright.compare;

import gripwright.budget.Budget;
import java.util.Objects;

/**
 * How a comparison is run. Neither threads nor batches change a result. Immutable.
 *
 * @param threads how many threads work, 1 to 256
 * @param sobol whether Sobol indices are estimated, which takes as many runs as there are
 *     parameters
 * @param budget deadline, cancellation and progress
 */
public record RunOptions(int threads, boolean sobol, Budget budget) {

  private static final int MOST_THREADS = 256;

  /**
   * Checks the number of threads.
   *
   * @throws IllegalArgumentException if it is outside its range
   */
  public RunOptions {
    Objects.requireNonNull(budget, "budget");
    if (threads < 1 || threads > MOST_THREADS) {
      throw new IllegalArgumentException("1 to " + MOST_THREADS + " threads, not " + threads);
    }
  }

  /** Returns one thread, no Sobol indices and the standard budget. */
  public static RunOptions standard() {
    return new RunOptions(1, false, Budget.standard());
  }

  /** Returns these options with another number of threads. */
  public RunOptions threads(int count) {
    return new RunOptions(count, sobol, budget);
  }

  /** Returns these options with or without Sobol indices. */
  public RunOptions sobol(boolean wanted) {
    return new RunOptions(threads, wanted, budget);
  }

  /** Returns these options with another budget. */
  public RunOptions budget(Budget other) {
    return new RunOptions(threads, sobol, other);
  }
}
