package gripwright.budget;

import gripwright.budget.Budget.Deadline;
import java.time.Duration;
import java.util.Optional;

/**
 * Counts what one run takes of its budget and stops it by {@link OverBudget}. A run that was
 * stopped is over: whoever catches that takes up no more work with this meter. Not thread-safe.
 */
public final class Meter {

  /** Counted steps between two looks at clock and flags: few enough to stop within milliseconds. */
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

  /** Returns a meter that counts and never stops, for work whose caller bounds it otherwise. */
  public static Meter unbounded() {
    return new Meter(Budget.standard(), false);
  }

  /** Returns what the run may take. */
  public Budget budget() {
    return budget;
  }

  /**
   * Counts what is taken.
   *
   * @throws OverBudget if that is more than is left, or the run was cancelled or is late
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

  /** Gives back what is not kept any more. */
  public void giveBack(Limit limit, long less) {
    used[limit.ordinal()] -= less;
  }

  /** Returns how much was taken so far. */
  public long taken(Limit limit) {
    return used[limit.ordinal()];
  }

  /**
   * Checks the size of one thing, before it is made.
   *
   * @throws OverBudget if it is larger than the limit
   */
  public void require(Limit limit, long size) {
    if (size > most[limit.ordinal()]) {
      throw new OverBudget(new Overrun.TooMuch(limit, size, most[limit.ordinal()]));
    }
  }

  /**
   * Looks at clock and flags.
   *
   * @throws OverBudget if the run was cancelled or is late
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
   * Reports progress, and looks at clock and flags.
   *
   * @throws OverBudget if the run was cancelled or is late
   */
  public void progress(Stage stage, long done, long of) {
    budget.progress().report(stage, done, Math.max(done, of));
    look();
  }
}
