package gripwright.rule;

import gripwright.quantity.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

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
    Look look = new Look(rule);
    switch (rule.scope()) {
      case EXERCISE -> plan.exercises.forEach(look::at);
      case SESSION -> plan.sessions.forEach(look::at);
      case DAY -> plan.days.forEach(look::at);
      case WEEK -> plan.weeks.forEach(look::at);
      case BLOCK -> plan.blocks.forEach(look::at);
      case PLAN -> look.at(plan);
      case PAIR_OF_SESSIONS -> pairs(look);
    }
  }

  /** Goes through the sessions by date; each is paired with those that follow within reach. */
  private void pairs(Look look) {
    double reach = reach(look.rule.require()).orElse(Unit.DAY.toBase(LONGEST_GAP_DAYS));
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
          look.at(pair);
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

  /** A rule that is ready to be asked of one thing after the other. */
  private final class Look {
    private final Rule rule;
    private final Optional<Compiler.Truth> when;
    private final Compiler.Truth require;
    private final @Nullable Object[] whenFrame;
    private final @Nullable Object[] requireFrame;

    Look(Rule rule) {
      Kind kind = rule.scope().kind();
      this.rule = rule;
      when = rule.when().map(condition -> Compiler.truth(condition, kind));
      require = Compiler.truth(rule.require(), kind);
      whenFrame = when.map(Compiler.Truth::frame).orElseGet(() -> new Object[0]);
      requireFrame = require.frame();
    }

    void at(Object subject) {
      if (when.isPresent() && when.get().of(subject, whenFrame) != Compiler.YES) {
        return;
      }
      if (require.of(subject, requireFrame) == Compiler.NO) {
        breaches.add(breach(rule, subject));
      }
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
