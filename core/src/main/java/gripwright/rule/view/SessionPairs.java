package gripwright.rule.view;

import java.util.ArrayList;
import java.util.List;

/**
 * The pairs of sessions of a plan within reach of each other, and of its sessions with those of
 * plans that ended before it, and with what was logged before it and no plan has.
 */
final class SessionPairs {

  /** What a pair of sessions counts as among the values that are kept. */
  private static final long VALUES_OF_A_PAIR = 4;

  private final PlanView plan;

  SessionPairs(PlanView plan) {
    this.plan = plan;
  }

  /** Returns all pairs, by date, and then those with what was before the plan. */
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
   * Returns the pairs of which the earlier is part of a plan that ended before this one began: of
   * plans over the same weeks, one finding asks whether both are meant.
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

  /** Adds the pairs of what lies before this plan with what is trained and tested in it. */
  private void addPairs(
      List<SessionView> earlier, List<SessionView> later, double reach, List<PairView> into) {
    for (SessionView event : later) {
      for (int i = earlier.size() - 1; i >= 0; i--) {
        plan.evaluation.take(1);
        PairView pair = new PairView(earlier.get(i), event);
        if (pair.gap() > reach) {
          break;
        }
        if (event.isPlanned()) {
          plan.evaluation.keep(VALUES_OF_A_PAIR);
          into.add(pair);
        }
      }
    }
  }
}
