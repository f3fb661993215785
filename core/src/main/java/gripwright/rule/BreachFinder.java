package gripwright.rule;

import gripwright.budget.Limit;
import gripwright.budget.OverBudget;
import gripwright.expression.Columns;
import gripwright.expression.Condition;
import gripwright.expression.Expression;
import gripwright.expression.ExpressionCompiler;
import gripwright.expression.Kind;
import gripwright.expression.Literal;
import gripwright.expression.Scope;
import gripwright.expression.Subjects;
import gripwright.quantity.Unit;
import gripwright.rule.view.PlanView;
import gripwright.rule.view.Subject;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Checks all subjects of rules and records where a rule is broken. */
final class BreachFinder {

  /**
   * Largest gap in days between two sessions of a pair, if the rule itself doesn't set a smaller
   * one.
   */
  static final int LONGEST_GAP_DAYS = 14;

  private final PlanView plan;
  private final Map<String, Integer> ranks = new HashMap<>();

  BreachFinder(PlanView plan) {
    this.plan = plan;
    for (RuleSet set : StandardRules.sets()) {
      set.rules().forEach(rule -> ranks.put(rule.name(), ranks.size()));
    }
  }

  /** Returns every place where a rule is broken, in the order of the rules. */
  List<Breach> breaches(List<Rule> rules) {
    List<Look> looks = new ArrayList<>();
    Map<Subjects, Columns> columns = new HashMap<>();
    rules.forEach(rule -> looks.add(named(rule, () -> look(rule, columns))));
    columns.forEach(
        (subjects, some) ->
            ask(subjects, some, looks.stream().filter(l -> l.columns == some).toList()));
    List<Breach> breaches =
        new ArrayList<>(looks.stream().mapToInt(look -> look.breaches.size()).sum());
    looks.forEach(look -> breaches.addAll(look.breaches));
    return breaches;
  }

  private Look look(Rule rule, Map<Subjects, Columns> columns) {
    Subjects subjects =
        switch (rule.scope()) {
          case PAIR_OF_SESSIONS -> plan.pairs(reachOf(rule));
          case EXERCISE ->
              ranks.containsKey(rule.name()) || rule.readsTests()
                  ? plan.exercisesAndTests()
                  : plan.subjects(Scope.EXERCISE);
          default -> plan.subjects(rule.scope());
        };
    return new Look(
        rule,
        ranks.getOrDefault(rule.name(), Integer.MAX_VALUE),
        columns.computeIfAbsent(
            subjects, s -> new Columns(rule.scope().kind(), s, plan.evaluation)));
  }

  /** Does work for a rule, and adds the rule's name if the budget is exceeded. */
  private static <T> T named(Rule rule, Supplier<T> work) {
    try {
      return work.get();
    } catch (OverBudget stop) {
      throw stop.in(rule.name());
    }
  }

  private void ask(Subjects subjects, Columns columns, List<Look> looks) {
    for (int at = 0; at < subjects.size(); at += Columns.SIZE) {
      int from = at;
      int count = Math.min(Columns.SIZE, subjects.size() - from);
      columns.batch(from, count);
      for (Look look : looks) {
        named(look.rule, () -> ask(look, subjects, from, count));
      }
    }
  }

  /** Returns the number of places where the rule is broken. */
  private int ask(Look look, Subjects subjects, int from, int count) {
    byte @Nullable [] when = look.when.map(Columns.Column::values).orElse(null);
    if (when != null && none(when, count)) {
      return 0;
    }
    int before = look.breaches.size();
    byte[] require = look.require.values();
    for (int i = 0; i < count; i++) {
      if (require[i] == ExpressionCompiler.NO
          && (when == null || when[i] == ExpressionCompiler.YES)) {
        plan.meter.take(Limit.FINDINGS, 1);
        look.breaches.add(new Breach(look.rule, look.rank, plan, (Subject) subjects.at(from + i)));
      }
    }
    return look.breaches.size() - before;
  }

  private static boolean none(byte[] when, int count) {
    for (int i = 0; i < count; i++) {
      if (when[i] == ExpressionCompiler.YES) {
        return false;
      }
    }
    return true;
  }

  private static double reachOf(Rule rule) {
    return reach(rule.require()).orElse(Unit.DAY.toBase(LONGEST_GAP_DAYS));
  }

  /** Returns the gap in seconds from which on a requirement is always met, if it has one. */
  private static Optional<Double> reach(Expression require) {
    if (require instanceof Condition.Or or) {
      return reach(or.left()).or(() -> reach(or.right()));
    }
    boolean leastGap =
        require instanceof Condition.Compare compare
            && (compare.relation() == Condition.Relation.AT_LEAST
                || compare.relation() == Condition.Relation.GREATER)
            && compare.left() instanceof Expression.Get get
            && get.of().equals(Expression.subject(Kind.PAIR))
            && get.property().equals("gap");
    return leastGap && ((Condition.Compare) require).right() instanceof Literal.Amount amount
        ? Optional.of(amount.number())
        : Optional.empty();
  }

  /** A rule ready for evaluation, and the places where it is broken. */
  private static final class Look {
    private final Rule rule;
    private final int rank;
    private final Columns columns;
    private final Optional<Columns.Column<byte[]>> when;
    private final Columns.Column<byte[]> require;
    private final List<Breach> breaches = new ArrayList<>();

    Look(Rule rule, int rank, Columns columns) {
      this.rule = rule;
      this.rank = rank;
      this.columns = columns;
      when = rule.when().map(condition -> columns.truth(condition, rule.keys()));
      require = columns.truth(rule.require(), rule.keys());
    }
  }
}
