package gripwright.rule;

/**
 * How many things were looked at while a plan was checked: a measure of the work that is the same
 * on every machine, so that a test can tell that it grows no faster than the plan. Not thread-safe.
 */
final class Steps {

  private long taken;

  /** Notes that so many things were looked at. */
  void take(long more) {
    taken += more;
  }

  long taken() {
    return taken;
  }
}
