package gripwright.plan;

import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.quantity.Range;
import gripwright.quantity.Unit;
import java.time.Duration;
import java.util.Objects;
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
   * Checks the variables.
   *
   * @throws IllegalArgumentException if the second variable is the first again
   */
  public Advance {
    Objects.requireNonNull(first, "first");
    Objects.requireNonNull(then, "then");
    Objects.requireNonNull(on, "on");
    if (then.isPresent() && first.change().variable().equals(then.get().change().variable())) {
      throw new IllegalArgumentException(
          "advance first " + first.change().variable() + " then the same: one or the other");
    }
  }

  /**
   * One variable and the time of its steps.
   *
   * @param change what a step changes
   * @param when the condition for a step, by weeks or by the log
   */
  public record Progress(Change change, Pace when) {
    /** Refuses null. */
    public Progress {
      Objects.requireNonNull(change, "change");
      Objects.requireNonNull(when, "when");
    }
  }

  /** What a step changes. */
  public sealed interface Change {
    /** Returns the variable that takes the step, such as {@code sets}. */
    String variable();

    /** Returns what the visitor returns for this kind. */
    <R> R accept(Change.Visitor<R> visitor);

    /**
     * One method for each kind of step.
     *
     * @param <R> the type of result
     */
    interface Visitor<R> {
      /** Visits a share of the load. */
      R loadByShare(LoadByShare change);

      /** Visits a step of load. */
      R loadBy(LoadBy change);

      /** Visits more sets. */
      R setsTo(SetsTo change);

      /** Visits longer holds. */
      R holdTo(HoldTo change);

      /** Visits a smaller edge. */
      R edgeTo(EdgeTo change);
    }
  }

  /**
   * The load rises by a share of itself, compounding.
   *
   * @param fraction above 0 and up to 1; 0.02 is 2 %
   */
  public record LoadByShare(double fraction) implements Change {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the share is not above 0 and up to 1
     */
    public LoadByShare {
      Range.LOAD_PERCENT.check(fraction);
    }

    @Override
    public <R> R accept(Change.Visitor<R> visitor) {
      return visitor.loadByShare(this);
    }

    @Override
    public String variable() {
      return "load";
    }
  }

  /**
   * The load rises by a fixed amount.
   *
   * @param step above 0 kg and up to 200 kg
   */
  public record LoadBy(Load step) implements Change {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the step is not above 0 kg and up to 200 kg
     */
    public LoadBy {
      Objects.requireNonNull(step, "step");
      Range.LOAD_STEP.check(step);
    }

    @Override
    public <R> R accept(Change.Visitor<R> visitor) {
      return visitor.loadBy(this);
    }

    @Override
    public String variable() {
      return "load";
    }
  }

  /**
   * More sets.
   *
   * @param limit the most sets, 1 to 100
   * @param step sets a step, 1 to 100
   */
  public record SetsTo(int limit, int step) implements Change {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if limit or step is outside 1 to 100
     */
    public SetsTo {
      Range.SETS_LIMIT.check(limit);
      Range.SETS_LIMIT.check(step);
    }

    @Override
    public <R> R accept(Change.Visitor<R> visitor) {
      return visitor.setsTo(this);
    }

    @Override
    public String variable() {
      return "sets";
    }
  }

  /**
   * Longer holds.
   *
   * @param limit the longest hold
   * @param step time a step
   */
  public record HoldTo(Duration limit, Duration step) implements Change {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if limit or step is not above 0 s and up to 3600 s
     */
    public HoldTo {
      Objects.requireNonNull(limit, "limit");
      Objects.requireNonNull(step, "step");
      Range.HOLD.check(limit);
      Range.HOLD.check(step);
    }

    @Override
    public <R> R accept(Change.Visitor<R> visitor) {
      return visitor.holdTo(this);
    }

    @Override
    public String variable() {
      return "hold";
    }
  }

  /**
   * A smaller edge.
   *
   * @param limit the smallest edge
   * @param step depth a step
   */
  public record EdgeTo(Length limit, Length step) implements Change {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the limit is outside 1 to 200 mm, or the step not above 0
     *     mm and up to 100 mm
     */
    public EdgeTo {
      Objects.requireNonNull(limit, "limit");
      Objects.requireNonNull(step, "step");
      Range.EDGE.check(limit);
      Range.EDGE_STEP.check(step);
    }

    @Override
    public <R> R accept(Change.Visitor<R> visitor) {
      return visitor.edgeTo(this);
    }

    @Override
    public String variable() {
      return "edge";
    }
  }

  /** When a step is taken. */
  public sealed interface Pace {
    /** Returns what the visitor returns for this kind. */
    <R> R accept(Pace.Visitor<R> visitor);

    /**
     * One method for each kind of pace.
     *
     * @param <R> the type of result
     */
    interface Visitor<R> {
      /** Visits the calendar. */
      R everyWeeks(EveryWeeks pace);

      /** Visits the log. */
      R whenLogged(WhenLogged pace);
    }
  }

  /**
   * By the calendar.
   *
   * @param weeks trained weeks a step, 1 to 520
   */
  public record EveryWeeks(int weeks) implements Pace {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the weeks are outside 1 to 520
     */
    public EveryWeeks {
      Range.EVERY.checkIn(Unit.WEEK, weeks);
    }

    @Override
    public <R> R accept(Pace.Visitor<R> visitor) {
      return visitor.everyWeeks(this);
    }
  }

  /**
   * When the log shows that it was earned.
   *
   * @param doneInFull all sets were done
   * @param effortAtMost effort was no higher, 0 to 10
   * @param painAtMost pain was no higher, 0 to 10
   * @param sessions number of consecutive sessions, 1 or 2
   */
  public record WhenLogged(
      boolean doneInFull, OptionalDouble effortAtMost, OptionalDouble painAtMost, int sessions)
      implements Pace {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if effort or pain is outside 0 to 10, or sessions outside 1
     *     to 2
     */
    public WhenLogged {
      Objects.requireNonNull(effortAtMost, "effortAtMost");
      Objects.requireNonNull(painAtMost, "painAtMost");
      Range.EFFORT.check(effortAtMost);
      Range.PAIN.check(painAtMost);
      Range.IN_A_ROW.check(sessions);
    }

    @Override
    public <R> R accept(Pace.Visitor<R> visitor) {
      return visitor.whenLogged(this);
    }
  }

  /**
   * Returns a step of load by a share of itself.
   *
   * @param percent above 0 and up to 100
   * @throws IllegalArgumentException if it is outside that range
   */
  public static Change loadByPercent(double percent) {
    return new LoadByShare(percent / 100);
  }

  /** Returns an advance of one variable each week, for every exercise of the block. */
  public static Advance weekly(Change change) {
    return every(1, change);
  }

  /** Returns an advance of one variable every N weeks, for every exercise of the block. */
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
