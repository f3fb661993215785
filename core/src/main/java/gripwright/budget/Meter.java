package gripwright.budget;

import gripwright.budget.Budget.Deadline;
import java.time.Duration;
import java.util.Optional;

/**
 * Counts the work of one run and stops it by throwing {@link OverBudget}. A stopped run is over:
 * code that catches the exception must not continue with this meter. Not thread-safe.
 */
public final class Meter {

  /**
   * Counted steps between two checks of deadline and cancellation: few enough to stop within
   * milliseconds.
   */
  private static final long STEPS_BETWEEN_LOOKS = 1024;

  private final Budget budget;
  private final boolean stops;
  private final long[] most = new long[Limit.values().length];
  private final long[] used = new long[Limit.values().length];
  private final long begun;
  private long steps;

  Meter(Budget budget, boolean stops) {
    this.budget = budget;
    this.stops = stops;
    for (Limit limit : Limit.values()) {
      most[limit.ordinal()] = stops ? budget.most(limit) : Long.MAX_VALUE;
    }
    begun = stops ? budget.deadline().map(d -> d.nanoTime().getAsLong()).orElse(0L) : 0;
  }

  /**
   * Returns a meter that counts without a limit, for work that the caller bounds in another way.
   */
  public static Meter unbounded() {
    return new Meter(Budget.standard(), false);
  }

  /** Returns the budget of the run. */
  public Budget budget() {
    return budget;
  }

  /**
   * Counts work.
   *
   * @throws OverBudget if that exceeds the budget, or the run was cancelled or is out of time
   */
  public void take(Limit limit, long more) {
    int i = limit.ordinal();
    long now = used[i] + more;
    if (now < 0) {
      now = Long.MAX_VALUE;
    }
    used[i] = now;
    if (now > most[i]) {
      throw new OverBudget(new Overrun.TooMuch(limit, now, most[i]));
    }
    steps += more;
    if (steps >= STEPS_BETWEEN_LOOKS || steps < 0) {
      look();
    }
  }

  /** Reduces the count by what is no longer kept. */
  public void giveBack(Limit limit, long less) {
    used[limit.ordinal()] -= less;
  }

  /** Returns the count so far. */
  public long taken(Limit limit) {
    return used[limit.ordinal()];
  }

  /**
   * Checks the size of one thing, before it is built.
   *
   * @throws OverBudget if it is larger than the limit
   */
  public void require(Limit limit, long size) {
    if (size > most[limit.ordinal()]) {
      throw new OverBudget(new Overrun.TooMuch(limit, size, most[limit.ordinal()]));
    }
  }

  /**
   * Checks deadline and cancellation.
   *
   * @throws OverBudget if the run was cancelled or is out of time
   */
  public void look() {
    steps = 0;
    if (!stops) {
      return;
    }
    if (Thread.currentThread().isInterrupted()) { // leaves the thread interrupted
      throw new OverBudget(new Overrun.Cancelled(true));
    }
    if (budget.isCancelled()) {
      throw new OverBudget(new Overrun.Cancelled(false));
    }
    Optional<Deadline> deadline = budget.deadline();
    if (deadline.isPresent()
        && Duration.ofNanos(deadline.get().nanoTime().getAsLong() - begun)
                .compareTo(deadline.get().time())
            > 0) {
      throw new OverBudget(new Overrun.OutOfTime(deadline.get().time()));
    }
  }

  /**
   * Reports progress, and checks deadline and cancellation.
   *
   * @throws OverBudget if the run was cancelled or is out of time
   */
  public void progress(Stage stage, long done, long of) {
    budget.progress().report(stage, done, Math.max(done, of));
    look();
  }
}
