package gripwright.rule;

import gripwright.expression.Evaluation;
import gripwright.expression.Excess;
import gripwright.expression.ExpressionCompiler;
import java.util.IdentityHashMap;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds the place with the largest violation of a rule. One instance serves all findings of a plan.
 * Not thread-safe.
 */
final class Worst {

  private final IdentityHashMap<Rule, Prepared> prepared = new IdentityHashMap<>();

  /** A rule's excess and a frame that keeps results shared by all places. */
  private static final class Prepared {
    private final ExpressionCompiler.Value excess;
    private final @Nullable Object[] frame;

    Prepared(Rule rule, Evaluation evaluation) {
      excess = Excess.of(rule.require(), rule.scope().kind(), evaluation);
      frame = excess.frame();
    }

    double of(Breach breach) {
      return excess.of(breach.subject(), frame);
    }
  }

  /**
   * Returns the place with the largest violation; the first of several equal ones.
   *
   * @param breaches of one rule, at least one
   */
  Breach of(List<Breach> breaches) {
    Breach worst = breaches.get(0);
    if (breaches.size() > 1) {
      double most = -1;
      for (Breach breach : breaches) {
        double excess = excess(breach);
        if (excess > most) {
          most = excess;
          worst = breach;
        }
      }
    }
    return worst;
  }

  private double excess(Breach breach) {
    return prepared
        .computeIfAbsent(breach.rule(), r -> new Prepared(r, breach.plan().evaluation))
        .of(breach);
  }
}
