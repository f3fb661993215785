package gripwright.rule;

import gripwright.expression.Evaluation;
import gripwright.expression.Excess;
import gripwright.expression.ExpressionCompiler;
import java.util.IdentityHashMap;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds among several places the one where a rule is broken by most. One serves all findings of a
 * plan. Not thread-safe.
 */
final class Worst {

  private final IdentityHashMap<Rule, Asked> asked = new IdentityHashMap<>();

  /** A rule's excess and the frame that keeps what was reckoned once for all places. */
  private static final class Asked {
    private final ExpressionCompiler.Value excess;
    private final @Nullable Object[] frame;

    Asked(Rule rule, Evaluation evaluation) {
      excess = Excess.of(rule.require(), rule.scope().kind(), evaluation);
      frame = excess.frame();
    }

    double of(Breach breach) {
      return excess.of(breach.subject(), frame);
    }
  }

  /**
   * Returns the place that misses the limit by most; the first if several miss by as much.
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
    return asked
        .computeIfAbsent(breach.rule(), r -> new Asked(r, breach.plan().evaluation))
        .of(breach);
  }
}
