package gripwright.plan;

import gripwright.budget.Budget;
import gripwright.budget.Limit;
import gripwright.budget.Meter;
import gripwright.protocol.Scheme;
import gripwright.quantity.Range;
import java.util.List;

/**
 * The largest possible size of a plan, calculated without writing it out and compared with the
 * budget before any work is done. Larger numbers than {@link Scheme#ENDLESS} are given as that.
 *
 * <p>Holds and rests measure memory. A planned exercise takes memory besides its holds, so it
 * counts as at least {@link #AN_EXERCISE} holds, and the parts of a calendar count too.
 *
 * @param weeks weeks of all blocks
 * @param athletes number of athletes
 * @param weekly sessions of the fullest week
 * @param exercise holds and rests of the largest exercise
 * @param sessions dated sessions for all athletes
 * @param holds holds and rests of all weeks for all athletes
 */
public record PlanSize(
    long weeks, long athletes, long weekly, long exercise, long sessions, long holds) {

  /** The least count of an exercise. */
  public static final long AN_EXERCISE = 40;

  /** The count of a dated session besides its exercises. */
  public static final long A_SESSION = 10;

  /** The count of a week besides its sessions. */
  public static final long A_WEEK = 10;

  /** The count of each setup of a dated test. */
  public static final long A_TEST = 10;

  /** The count of an athlete of a plan besides the weeks. */
  public static final long AN_ATHLETE = 100;

  private static final PlanSize NOTHING = new PlanSize(0, 0, 0, 0, 0, 0);

  /** Returns the size of a plan. */
  public static PlanSize of(Plan plan) {
    return of(plan.athletes().size(), plan.blocks(), plan.retests());
  }

  /**
   * Returns the size of a plan that is not built yet.
   *
   * @param athletes number of athletes
   */
  public static PlanSize of(int athletes, List<Block> blocks, List<PlannedTest> retests) {
    long weeks = 0;
    PlanSize all = NOTHING;
    for (Block block : blocks) {
      weeks += block.weeks();
      all = all.plus(of(block));
    }
    long tests = 0;
    for (PlannedTest retest : retests) {
      PlanSize warmUps = of(retest.exercises());
      all = all.most(new PlanSize(0, 0, 0, warmUps.exercise, 0, 0));
      long one = sum(A_TEST * Math.max(1, retest.setups().size()), warmUps.holds);
      tests = sum(tests, times(retest.dates(weeks), one));
    }
    return new PlanSize(
        weeks,
        athletes,
        all.weekly,
        all.exercise,
        times(athletes, all.sessions),
        times(athletes, sum(AN_ATHLETE, sum(tests, all.holds))));
  }

  /**
   * Returns the most that a budget allows for a plan; never more than the types allow.
   *
   * @param limit a limit of plans
   */
  public static long most(Budget budget, Limit limit) {
    double type =
        switch (limit) {
          case WEEKS -> Range.PLAN_WEEKS.high();
          case ATHLETES -> Range.ATHLETES.high();
          case EXERCISE -> Range.STEPS.high();
          default -> Scheme.ENDLESS;
        };
    return Math.min(budget.most(limit), (long) type);
  }

  private static PlanSize of(Block block) {
    PlanSize week = of(block.content());
    for (Block.Content content : block.only().values()) {
      week = week.most(of(content));
    }
    return new PlanSize(
        0,
        0,
        week.sessions,
        week.exercise,
        times(block.weeks(), week.sessions),
        times(block.weeks(), sum(A_WEEK, week.holds)));
  }

  private static PlanSize of(Block.Content content) {
    PlanSize week = NOTHING;
    for (SessionPlan session : content.sessions()) {
      PlanSize one = of(session.content());
      for (SessionPlan.Content own : session.only().values()) {
        one = one.most(of(own));
      }
      week =
          week.plus(
              new PlanSize(
                  0,
                  0,
                  0,
                  one.exercise,
                  session.perWeek(),
                  times(session.perWeek(), sum(A_SESSION, one.holds))));
    }
    return week;
  }

  private static PlanSize of(SessionPlan.Content content) {
    return of(content.exercises());
  }

  private static PlanSize of(List<Exercise> exercises) {
    long largest = 0;
    long holds = 0;
    for (Exercise exercise : exercises) {
      long size = exercise.protocol().size(exercise.with());
      largest = Math.max(largest, size);
      holds = sum(holds, times(exercise.sides().size(), Math.max(AN_EXERCISE, size)));
    }
    return new PlanSize(0, 0, 0, largest, 1, holds);
  }

  private PlanSize plus(PlanSize other) {
    return new PlanSize(
        0,
        0,
        Math.max(weekly, other.weekly),
        Math.max(exercise, other.exercise),
        sum(sessions, other.sessions),
        sum(holds, other.holds));
  }

  private PlanSize most(PlanSize other) {
    return new PlanSize(
        0,
        0,
        Math.max(weekly, other.weekly),
        Math.max(exercise, other.exercise),
        Math.max(sessions, other.sessions),
        Math.max(holds, other.holds));
  }

  private static long sum(long one, long other) {
    return Math.min(Scheme.ENDLESS, one + other);
  }

  private static long times(long times, long one) {
    return one > 0 && times > Scheme.ENDLESS / one ? Scheme.ENDLESS : times * one;
  }

  /**
   * Checks the size of one plan against the budget.
   *
   * @throws gripwright.budget.OverBudget if it has more
   */
  public void requireWithin(Meter meter) {
    meter.require(Limit.WEEKS, weeks);
    meter.require(Limit.ATHLETES, athletes);
    meter.require(Limit.WEEKLY, weekly);
    meter.require(Limit.EXERCISE, exercise);
  }
}
