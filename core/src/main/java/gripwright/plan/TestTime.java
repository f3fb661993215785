package gripwright.plan;

import gripwright.quantity.Range;
import gripwright.quantity.Unit;

/**
 * When a planned test is due. Weeks are those of the plan, numbered from 1; the seven days before
 * its first day are week 0, and those after its last of N weeks are week N + 1.
 *
 * @since 1.0.0
 */
public sealed interface TestTime {

  /**
   * Returns whether the test is due in a week.
   *
   * @param week number of the week, 0 or above
   * @param weeks number of weeks of the plan, N
   */
  boolean isDueIn(int week, int weeks);

  /** Returns the last week after the plan in which it may be due, N plus this; 0 if none. */
  default int weeksAfter() {
    return 0;
  }

  /** Returns what the visitor returns for this kind. */
  <R> R accept(Visitor<R> visitor);

  /**
   * One method for each kind of time.
   *
   * @param <R> the type of result
   */
  interface Visitor<R> {
    /** Visits regular tests. */
    R every(Every time);

    /** Visits a test in a week of the plan. */
    R inWeek(InWeek time);

    /** Visits a test in the week before the plan. */
    R before(Before time);

    /** Visits a test in the week after the plan. */
    R after(After time);

    /** Visits a test some weeks after the plan. */
    R later(Later time);
  }

  /**
   * Every so many weeks of the plan.
   *
   * @param weeks 1 to 520
   */
  record Every(int weeks) implements TestTime {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the weeks are outside 1 to 520
     */
    public Every {
      Range.RETEST.checkIn(Unit.WEEK, weeks);
    }

    @Override
    public boolean isDueIn(int week, int all) {
      return week >= 1 && week <= all && week % weeks == 0;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.every(this);
    }
  }

  /**
   * In one week of the plan.
   *
   * @param week its number, 1 or above and at most the weeks of the plan
   */
  record InWeek(int week) implements TestTime {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the week is outside its range
     */
    public InWeek {
      Range.WEEK.check(week);
    }

    @Override
    public boolean isDueIn(int number, int all) {
      return week == number && number <= all;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.inWeek(this);
    }
  }

  /** In the seven days before the first week. */
  record Before() implements TestTime {
    @Override
    public boolean isDueIn(int week, int weeks) {
      return week == 0;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.before(this);
    }
  }

  /** In the seven days after the last week. */
  record After() implements TestTime {
    @Override
    public boolean isDueIn(int week, int weeks) {
      return week == weeks + 1;
    }

    @Override
    public int weeksAfter() {
      return 1;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.after(this);
    }
  }

  /**
   * In the seven days that begin some weeks after the last day of the plan. A test at such a time
   * has one after the last week too.
   *
   * @param weeks 1 to 520
   */
  record Later(int weeks) implements TestTime {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if the weeks are outside 1 to 520
     */
    public Later {
      Range.RETEST.checkIn(Unit.WEEK, weeks);
    }

    @Override
    public boolean isDueIn(int week, int all) {
      return week == all + 1 + weeks;
    }

    @Override
    public int weeksAfter() {
      return 1 + weeks;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.later(this);
    }
  }
}
