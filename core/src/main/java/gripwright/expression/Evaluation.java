package gripwright.expression;

import gripwright.budget.Limit;
import gripwright.budget.Meter;

/**
 * What expressions are evaluated with: how properties are read, and a count of how many things were
 * looked at. The count is the same on every machine, so that a test can tell that the work grows no
 * faster than the plan. Not thread-safe.
 */
public final class Evaluation {

  private final PropertyReaders readers;
  private final Meter meter;
  private long taken;

  /** Begins to count, without a bound. */
  public Evaluation(PropertyReaders readers) {
    this(readers, Meter.unbounded());
  }

  /**
   * Begins to count.
   *
   * @param meter counts too, and stops when the budget is used up
   */
  public Evaluation(PropertyReaders readers, Meter meter) {
    this.readers = readers;
    this.meter = meter;
  }

  /** Returns how a property is read. */
  PropertyReaders.Access access(Expression.Get get) {
    return readers.of(Checks.property(get.of(), get.property()));
  }

  /**
   * Notes that so many things were looked at.
   *
   * @throws gripwright.budget.OverBudget if that is more than the budget allows
   */
  public void take(long more) {
    taken += more;
    meter.take(Limit.WORK, more);
  }

  /**
   * Notes that so many values are kept until all is looked at.
   *
   * @throws gripwright.budget.OverBudget if that is more than the budget allows
   */
  public void keep(long values) {
    meter.take(Limit.VALUES, values);
  }

  /** Returns how many things were looked at. */
  public long taken() {
    return taken;
  }
}
