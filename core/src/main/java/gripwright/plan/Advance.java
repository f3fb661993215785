package gripwright.plan;

import gripwright.quantity.Length;
import gripwright.quantity.Load;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How an exercise gets harder: one variable at a time.
 *
 * @param first what advances
 * @param then for double progression, what takes a step each time {@code first} reaches its limit,
 *     whereupon {@code first} starts again
 * @param on the one grip it is for; empty means every exercise of the block
 */
public record Advance(Progress first, Optional<Progress> then, Optional<String> on) {

  /**
   * One variable and when it takes a step.
   *
   * @param change what a step changes
   * @param when the weeks or the log entries that earn a step
   */
  public record Progress(Change change, Pace when) {}

  /** What a step changes. */
  public sealed interface Change {}

  /**
   * The load rises by a share of itself, compounding.
   *
   * @param fraction 0.02 is 2 %
   */
  public record LoadByShare(double fraction) implements Change {}

  /**
   * The load rises by a fixed amount.
   *
   * @param step above 0 kg
   */
  public record LoadBy(Load step) implements Change {}

  /**
   * More sets.
   *
   * @param limit the most sets
   * @param step sets a step
   */
  public record SetsTo(int limit, int step) implements Change {}

  /**
   * Longer holds.
   *
   * @param limit the longest hold
   * @param step time a step
   */
  public record HoldTo(Duration limit, Duration step) implements Change {}

  /**
   * A smaller edge.
   *
   * @param limit the smallest edge
   * @param step depth a step
   */
  public record EdgeTo(Length limit, Length step) implements Change {}

  /** When a step is taken. */
  public sealed interface Pace {}

  /**
   * With the calendar.
   *
   * @param weeks trained weeks a step, 1 or more
   */
  public record EveryWeeks(int weeks) implements Pace {}

  /**
   * When the log shows that it was earned.
   *
   * @param doneInFull all sets were done
   * @param effortAtMost effort was no higher, 0 to 10
   * @param painAtMost pain was no higher, 0 to 10
   * @param sessions in so many consecutive sessions, 1 or more
   */
  public record WhenLogged(
      boolean doneInFull, OptionalDouble effortAtMost, OptionalDouble painAtMost, int sessions)
      implements Pace {}

  /** Returns an advance of one variable each week, for every exercise of the block. */
  public static Advance weekly(Change change) {
    return every(1, change);
  }

  /** Returns an advance of one variable every so many weeks, for every exercise of the block. */
  public static Advance every(int weeks, Change change) {
    return new Advance(
        new Progress(change, new EveryWeeks(weeks)), Optional.empty(), Optional.empty());
  }

  /** Returns this advance with a second variable that steps when the first reaches its limit. */
  public Advance then(Change change) {
    return new Advance(first, Optional.of(new Progress(change, first.when())), on);
  }

  /** Returns this advance for one grip only. */
  public Advance on(String grip) {
    return new Advance(first, then, Optional.of(grip));
  }
}
