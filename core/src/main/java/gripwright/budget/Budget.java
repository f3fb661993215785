package gripwright.budget;

import java.time.Duration;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;

/**
 * How much work reading and compiling may take. A host passes one budget to both; each reading and
 * each compile is a run of its own, with counts and a deadline of its own. Immutable; thread-safe
 * if the host's functions are.
 *
 * <pre>{@code
 * Budget budget =
 *     Budget.standard()
 *         .with(Limit.WEEKS, 104)
 *         .withDeadline(Duration.ofSeconds(5), System::nanoTime)
 *         .withCancellation(request::isCancelled);
 * }</pre>
 *
 * <p>Exceeding it ends the run with one error of the {@code budget.} family, so that an incomplete
 * result is never taken as complete. All limits but deadline and cancellation are counts: the same
 * input gives the same result on every machine. Interrupting the thread stops a run too, and the
 * thread stays interrupted.
 *
 * @see Limit
 */
public final class Budget {

  private static final Budget STANDARD =
      new Budget(Map.of(), Optional.empty(), () -> false, Progress.NONE);

  private final Map<Limit, Long> most;
  private final Optional<Deadline> deadline;
  private final BooleanSupplier cancelled;
  private final Progress progress;

  /**
   * The time a run may take.
   *
   * @param time time from its beginning
   * @param nanoTime the host's monotonic clock
   */
  record Deadline(Duration time, LongSupplier nanoTime) {}

  private Budget(
      Map<Limit, Long> most,
      Optional<Deadline> deadline,
      BooleanSupplier cancelled,
      Progress progress) {
    Map<Limit, Long> copy = new EnumMap<>(Limit.class);
    copy.putAll(most);
    this.most = Collections.unmodifiableMap(copy);
    this.deadline = deadline;
    this.cancelled = cancelled;
    this.progress = progress;
  }

  /**
   * Returns the default budget: without a deadline, and cancelled only by interrupting the thread.
   */
  public static Budget standard() {
    return STANDARD;
  }

  /**
   * Returns this budget with another limit.
   *
   * @param most the most that is allowed, 1 or more
   * @throws IllegalArgumentException if it is less than 1
   */
  public Budget with(Limit limit, long most) {
    if (most < 1) {
      throw new IllegalArgumentException("a limit is at least 1: " + limit + " " + most);
    }
    Map<Limit, Long> more = new EnumMap<>(Limit.class);
    more.putAll(this.most);
    more.put(limit, most);
    return new Budget(more, deadline, cancelled, progress);
  }

  /**
   * Returns this budget with a deadline for each run.
   *
   * @param time how long a run may take, from its beginning
   * @param nanoTime a monotonic clock in nanoseconds, such as {@code System::nanoTime}
   * @throws IllegalArgumentException if the time is negative
   */
  public Budget withDeadline(Duration time, LongSupplier nanoTime) {
    if (time.isNegative()) {
      throw new IllegalArgumentException("not a time to work: " + time);
    }
    return new Budget(
        most,
        Optional.of(new Deadline(time, Objects.requireNonNull(nanoTime, "nanoTime"))),
        cancelled,
        progress);
  }

  /**
   * Returns this budget with a flag that cancels.
   *
   * @param flag returns true once no result is wanted any more; called often, on the thread that
   *     does the work
   */
  public Budget withCancellation(BooleanSupplier flag) {
    return new Budget(most, deadline, Objects.requireNonNull(flag, "flag"), progress);
  }

  /** Returns this budget with a listener that is informed of progress. */
  public Budget withProgress(Progress listener) {
    return new Budget(most, deadline, cancelled, Objects.requireNonNull(listener, "listener"));
  }

  /** Returns the most that is allowed. */
  public long most(Limit limit) {
    return most.getOrDefault(limit, limit.standard());
  }

  /** Starts a run: counts are 0, and the deadline counts from now. */
  public Meter meter() {
    return new Meter(this, true);
  }

  Optional<Deadline> deadline() {
    return deadline;
  }

  boolean isCancelled() {
    return cancelled.getAsBoolean();
  }

  Progress progress() {
    return progress;
  }
}
