package gripwright.language.check;

import gripwright.language.syntax.RestBetween;
import gripwright.language.syntax.Syntax;
import gripwright.language.syntax.WarmUp;
import gripwright.language.syntax.Weigh;
import gripwright.plan.Exercise.Weights;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * What a plan, block or session says for all that is in it; what is written further in counts.
 *
 * @param warmUp how long the warm-up is
 * @param restBetween rest between two exercises
 * @param weights what counts how much when grips are chosen
 */
record Defaults(
    Optional<Duration> warmUp, Optional<Duration> restBetween, Optional<Weights> weights) {

  /** Nothing is said. */
  static final Defaults NONE = new Defaults(Optional.empty(), Optional.empty(), Optional.empty());

  /** Returns what holds inside a body with these statements. */
  Defaults within(Ledger ledger, List<? extends Syntax> items) {
    Once once = new Once(ledger);
    Amounts amounts = new Amounts(ledger);
    Defaults inner = this;
    for (Syntax item : items) {
      if (item instanceof WarmUp warm && once.first(warm, "warm-up")) {
        inner =
            new Defaults(
                amounts.time(warm.time(), Slot.WARM_UP).or(this::warmUp),
                inner.restBetween,
                inner.weights);
      } else if (item instanceof RestBetween rest && once.first(rest, "rest between exercises")) {
        inner =
            new Defaults(
                inner.warmUp,
                amounts.time(rest.time(), Slot.REST_BETWEEN).or(this::restBetween),
                inner.weights);
      } else if (item instanceof Weigh weigh && once.first(weigh, "weigh")) {
        inner =
            new Defaults(
                inner.warmUp,
                inner.restBetween,
                new Shares(ledger).weights(weigh).or(this::weights));
      }
    }
    return inner;
  }
}
