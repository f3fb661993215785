package gripwright.expression;

import gripwright.budget.Limit;
import gripwright.budget.Meter;

/**
 * The state of an evaluation: readers of properties, and a count of the things visited. The count
 * is the same on every machine, so that a test can show that the work grows no faster than the
 * plan. Not thread-safe.
 */
public final class Evaluation {

  private final PropertyReaders readers;
  private final Meter meter;
  private long taken;

  /** Starts an evaluation without a limit. */
  public Evaluation(PropertyReaders readers) {
    this(readers, Meter.unbounded());
  }

  /**
   * Starts an evaluation.
   *
   * @param meter also counts, and stops when the budget is used up
   */
  public Evaluation(PropertyReaders readers, Meter meter) {
    this.readers = readers;
    this.meter = meter;
  }

  /** Returns the access to a property. */
  PropertyReaders.Access access(Expression.Get get) {
    return readers.of(Checks.property(get.of(), get.property()));
  }

  /**
   * Counts things that were visited.
   *
   * @throws gripwright.budget.OverBudget if that is more than the budget allows
   */
  public void take(long more) {
    taken += more;
    meter.take(Limit.WORK, more);
  }

  /**
   * Counts values that are kept until the end.
   *
   * @throws gripwright.budget.OverBudget if that is more than the budget allows
   */
  public void keep(long values) {
    meter.take(Limit.VALUES, values);
  }

  /** Returns the number of things visited. */
  public long taken() {
    return taken;
  }
}
