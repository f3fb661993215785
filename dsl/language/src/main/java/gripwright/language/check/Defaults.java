package gripwright.language.check;

import gripwright.language.syntax.Amount;
import gripwright.language.syntax.DefaultItem;
import gripwright.language.syntax.RestBetween;
import gripwright.language.syntax.Syntax;
import gripwright.language.syntax.WarmUp;
import gripwright.language.syntax.Weigh;
import gripwright.plan.Exercise.Weights;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * Defaults of a plan, block or session; the innermost one applies.
 *
 * @param warming duration of the warm-up and what to do in it
 * @param restBetween rest between two exercises
 * @param weights weights for choosing grips
 */
record Defaults(
    Optional<Warming> warming, Optional<Duration> restBetween, Optional<Weights> weights) {

  /** A warm-up: its duration and the words for people. */
  record Warming(Duration time, Optional<String> text) {}

  /** No defaults. */
  static final Defaults NONE = new Defaults(Optional.empty(), Optional.empty(), Optional.empty());

  /** Returns the duration of the warm-up. */
  Optional<Duration> warmUp() {
    return warming.map(Warming::time);
  }

  /** Returns what to do in the warm-up. */
  Optional<String> warmUpText() {
    return warming.flatMap(Warming::text);
  }

  /** Returns the defaults inside a body with these statements. */
  Defaults within(Diagnostics diagnostics, List<? extends Syntax> items) {
    Once once = new Once(diagnostics);
    Defaults inner = this;
    for (Syntax item : items) {
      if (item instanceof DefaultItem written) {
        inner = written.accept(new Written(diagnostics, once, this, inner));
      }
    }
    return inner;
  }

  /**
   * Returns the defaults after one more statement; {@code outer} are those of the enclosing body.
   */
  private record Written(Diagnostics diagnostics, Once once, Defaults outer, Defaults inner)
      implements DefaultItem.Visitor<Defaults> {
    @Override
    public Defaults warmUp(WarmUp item) {
      return once.first(item, "warm-up")
          ? new Defaults(
              time(item.time(), Slot.WARM_UP)
                  .map(time -> new Warming(time, AthleteCheck.note(item.text())))
                  .or(outer::warming),
              inner.restBetween,
              inner.weights)
          : inner;
    }

    @Override
    public Defaults restBetween(RestBetween item) {
      return once.first(item, "rest between exercises")
          ? new Defaults(
              inner.warming,
              time(item.time(), Slot.REST_BETWEEN).or(outer::restBetween),
              inner.weights)
          : inner;
    }

    @Override
    public Defaults weigh(Weigh item) {
      return once.first(item, "weigh")
          ? new Defaults(
              inner.warming,
              inner.restBetween,
              new Shares(diagnostics).weights(item).or(outer::weights))
          : inner;
    }

    private Optional<Duration> time(Amount written, Slot slot) {
      return new Amounts(diagnostics).time(written, slot);
    }
  }
}
