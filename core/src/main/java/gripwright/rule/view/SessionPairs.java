package gripwright.rule.view;

import java.util.ArrayList;
import java.util.List;

/**
 * The pairs of sessions within a gap: within a plan, with sessions of plans that ended before it,
 * and with sessions before it that only the log has.
 */
final class SessionPairs {

  /** The number of stored values that a pair of sessions counts as. */
  private static final long VALUES_OF_A_PAIR = 4;

  private final PlanView plan;

  SessionPairs(PlanView plan) {
    this.plan = plan;
  }

  /** Returns all pairs by date, then those with sessions before the plan. */
  List<PairView> within(double reach) {
    List<PairView> all = new ArrayList<>();
    List<SessionView> happenings = plan.happenings();
    for (int i = 0; i < happenings.size(); i++) {
      for (int j = i + 1; j < happenings.size(); j++) {
        plan.evaluation.take(1);
        PairView pair = new PairView(happenings.get(i), happenings.get(j));
        if (pair.gap() > reach) {
          break;
        }
        if (pair.earlier().what != SessionView.What.CLIMBING
            || pair.later().what != SessionView.What.CLIMBING) {
          plan.evaluation.keep(VALUES_OF_A_PAIR);
          all.add(pair);
        }
      }
    }
    all.addAll(pairsAcrossPlans(happenings, reach));
    addPairs(plan.logged.before, happenings, reach, all);
    return all;
  }

  /**
   * Returns the pairs whose earlier session belongs to a plan that ended before this one began.
   * Plans over the same weeks have one finding of their own.
   */
  private List<PairView> pairsAcrossPlans(List<SessionView> happenings, double reach) {
    List<PairView> all = new ArrayList<>();
    for (PlanView other : plan.before) {
      if (other.schedule.plan().to().isBefore(plan.schedule.plan().from())) {
        addPairs(
            other.events.stream().filter(SessionView::isPlanned).toList(), happenings, reach, all);
      }
    }
    return all;
  }

  /** Adds the pairs of a session before this plan with a session or test in it. */
  private void addPairs(
      List<SessionView> earlier, List<SessionView> later, double reach, List<PairView> into) {
    for (SessionView event : later) {
      for (int i = earlier.size() - 1; i >= 0; i--) {
        plan.evaluation.take(1);
        boolean after = earlier.get(i).date.isAfter(event.date); // than a test before the plan
        PairView pair =
            after ? new PairView(event, earlier.get(i)) : new PairView(earlier.get(i), event);
        if (pair.gap() > reach && !after) {
          break;
        }
        if (event.isPlanned() && pair.gap() <= reach) {
          plan.evaluation.keep(VALUES_OF_A_PAIR);
          into.add(pair);
        }
      }
    }
  }
}
