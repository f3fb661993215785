package gripwright.expression;

/**
 * What expressions are evaluated with: how properties are read, and a count of how many things were
 * looked at. The count is the same on every machine, so that a test can tell that the work grows no
 * faster than the plan. Not thread-safe.
 */
public final class Evaluation {

  private final PropertyReaders readers;
  private long taken;

  /** Begins to count. */
  public Evaluation(PropertyReaders readers) {
    this.readers = readers;
  }

  /** Returns how a property is read. */
  PropertyReaders.Access access(Expression.Get get) {
    return readers.of(Checks.property(get.of(), get.property()));
  }

  /** Notes that so many things were looked at. */
  public void take(long more) {
    taken += more;
  }

  /** Returns how many things were looked at. */
  public long taken() {
    return taken;
  }
}
