package gripwright.rule.view;

import gripwright.expression.Kind;
import gripwright.grip.Grip;
import gripwright.rule.Winter;
import gripwright.season.CompiledPlan;

/** What rules see of a compiled plan, for tests of other packages. */
public final class Views {

  private Views() {}

  /** Returns a plan as rules see it. */
  public static PlanView of(Winter winter) {
    return of(winter.compiled());
  }

  /** Returns a plan as rules see it. */
  public static PlanView of(CompiledPlan plan) {
    return new PlanView(plan.schedule(), plan.timeline());
  }

  /** Returns the first thing of a kind in a plan with at least two sessions. */
  public static Object first(PlanView plan, Kind kind) {
    return switch (kind) {
      case EXERCISE -> exercise(plan, 1);
      case SESSION -> plan.sessions.get(0);
      case DAY -> plan.days.get(0);
      case WEEK -> week(plan, 1);
      case BLOCK -> plan.blocks.get(0);
      case PLAN -> plan;
      case PAIR -> new PairView(plan.sessions.get(0), plan.sessions.get(1));
      case ATHLETE -> plan.athlete;
      case GRIP -> grip(plan);
      case FINGER -> week(plan, 1).fingers().get(0);
    };
  }

  private static Grip grip(PlanView plan) {
    return exercise(plan, 1).grip();
  }

  /** Returns a week by its number, from 1. */
  public static WeekView week(PlanView plan, int number) {
    return plan.weeks.get(number - 1);
  }

  /** Returns an exercise by its number in the plan, from 1. */
  public static ExerciseView exercise(PlanView plan, int number) {
    return plan.exercises.get(number - 1);
  }
}
