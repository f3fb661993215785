package gripwright.rule;

import gripwright.quantity.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Looks at everything a rule is for and notes where it is broken. */
final class BreachFinder {

  /** How far apart two sessions are still looked at as a pair, if the rule itself says no less. */
  static final int LONGEST_GAP_DAYS = 14;

  private final PlanView plan;
  private final List<Breach> breaches = new ArrayList<>();
  private final Map<String, Integer> ranks = new HashMap<>();

  BreachFinder(PlanView plan) {
    this.plan = plan;
    for (RuleSet set : StandardRules.sets()) {
      set.rules().forEach(rule -> ranks.put(rule.name(), ranks.size()));
    }
  }

  List<Breach> breaches() {
    return breaches;
  }

  /** Notes, of rules that gate exercises, the first that each exercise breaks. */
  void gates(RuleSet gates) {
    Set<Object> failed = new HashSet<>();
    for (Rule gate : gates.rules()) {
      int before = breaches.size();
      rule(gate);
      List<Breach> found = breaches.subList(before, breaches.size());
      found.removeIf(breach -> failed.contains(breach.subject()));
      found.forEach(breach -> failed.add(breach.subject()));
    }
  }

  /** Notes where a rule is broken. */
  void rule(Rule rule) {
    Kind kind = rule.scope().kind();
    Compiler.Truth require = Compiler.truth(rule.require(), kind);
    Optional<Compiler.Truth> when = rule.when().map(w -> Compiler.truth(w, kind));
    switch (rule.scope()) {
      case EXERCISE -> plan.exercises.forEach(e -> look(rule, when, require, e));
      case SESSION -> plan.sessions.forEach(s -> look(rule, when, require, s));
      case DAY -> plan.days.forEach(d -> look(rule, when, require, d));
      case WEEK -> plan.weeks.forEach(w -> look(rule, when, require, w));
      case BLOCK -> plan.blocks.forEach(b -> look(rule, when, require, b));
      case PLAN -> look(rule, when, require, plan);
      case PAIR_OF_SESSIONS -> pairs(rule, when, require);
    }
  }

  /** Goes through the sessions by date; each is paired with those that follow within reach. */
  private void pairs(Rule rule, Optional<Compiler.Truth> when, Compiler.Truth require) {
    double reach = reach(rule.require()).orElse(Unit.DAY.toBase(LONGEST_GAP_DAYS));
    List<SessionView> events = plan.events;
    for (int i = 0; i < events.size(); i++) {
      for (int j = i + 1; j < events.size(); j++) {
        PairView pair = new PairView(events.get(i), events.get(j));
        if (pair.gap() > reach) {
          break;
        }
        boolean planned =
            pair.earlier().what != SessionView.What.CLIMBING
                || pair.later().what != SessionView.What.CLIMBING;
        if (planned) {
          look(rule, when, require, pair);
        }
      }
    }
  }

  /** Returns the gap from which on a requirement holds in any case, in seconds, if it says. */
  private static Optional<Double> reach(Expression require) {
    if (require instanceof Expression.Or or) {
      return reach(or.left()).or(() -> reach(or.right()));
    }
    boolean leastGap =
        require instanceof Expression.Compare compare
            && (compare.relation() == Expression.Relation.AT_LEAST
                || compare.relation() == Expression.Relation.GREATER)
            && compare.left() instanceof Expression.Get get
            && get.of().equals(Expression.subject(Kind.PAIR))
            && get.property().equals("gap");
    return leastGap && ((Expression.Compare) require).right() instanceof Expression.Amount amount
        ? Optional.of(amount.base())
        : Optional.empty();
  }

  private void look(
      Rule rule, Optional<Compiler.Truth> when, Compiler.Truth require, Object subject) {
    if (when.isPresent() && when.get().of(subject) != Compiler.YES) {
      return;
    }
    if (require.of(subject) == Compiler.NO) {
      breaches.add(breach(rule, subject));
    }
  }

  private Breach breach(Rule rule, Object subject) {
    int rank = ranks.getOrDefault(rule.name(), Integer.MAX_VALUE);
    if (subject instanceof ExerciseView exercise) {
      return new Breach(rule, rank, subject, exercise.path(), exercise.session.date);
    }
    if (subject instanceof SessionView session) {
      return new Breach(rule, rank, subject, session.path, session.date);
    }
    if (subject instanceof DayView day) {
      return new Breach(rule, rank, subject, day.path, day.date);
    }
    if (subject instanceof WeekView week) {
      return new Breach(rule, rank, subject, week.path(), week.week.from());
    }
    if (subject instanceof PairView pair) {
      return new Breach(rule, rank, subject, pair.place().path, pair.later().date);
    }
    if (subject instanceof BlockView block) {
      return new Breach(rule, rank, subject, block.path, block.from());
    }
    return new Breach(rule, rank, subject, plan.path, plan.compiled.plan().from());
  }
}
