package gripwright.protocol;

import java.util.List;

/**
 * Counts steps as if they were written out.
 *
 * @param hold count of a hold
 * @param rest count of a rest
 * @param between count of the rest after each repeat
 */
record StepCount(long hold, long rest, long between) implements Scheme.Step.Visitor<Long> {

  /** Returns the count, {@link Scheme#ENDLESS} at most. */
  static long of(List<Scheme.Step> steps, long hold, long rest, long between) {
    return new StepCount(hold, rest, between).of(steps);
  }

  private long of(List<Scheme.Step> steps) {
    long count = 0;
    for (Scheme.Step step : steps) {
      count = Math.min(Scheme.ENDLESS, count + step.accept(this));
    }
    return count;
  }

  @Override
  public Long repeat(Scheme.Repeat repeat) {
    return times(repeat.times(), of(repeat.steps()) + between);
  }

  /** Returns the product of a number of times and a count, {@link Scheme#ENDLESS} at most. */
  static long times(long times, long once) {
    return once > Scheme.ENDLESS / times ? Scheme.ENDLESS : once * times;
  }

  @Override
  public Long hold(Scheme.Hold step) {
    return hold;
  }

  @Override
  public Long rest(Scheme.Rest step) {
    return rest;
  }
}
