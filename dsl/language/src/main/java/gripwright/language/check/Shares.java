package gripwright.language.check;

import gripwright.language.syntax.Share;
import gripwright.language.syntax.Syntax;
import gripwright.language.syntax.Weigh;
import gripwright.plan.Exercise.Weights;
import gripwright.quantity.Numbers;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Checks shares that must add up to 100 %. */
final class Shares {

  private static final double TOLERANCE = 5e-8;
  private static final List<String> WEIGHTS = List.of("match", "margin", "carry-over");

  private final Diagnostics diagnostics;

  Shares(Diagnostics diagnostics) {
    this.diagnostics = diagnostics;
  }

  /** Returns fractions by name; empty if one is wrong or they do not add to 100 %. */
  Optional<Map<String, Double>> whole(Syntax item, List<Share> shares, String what, String kind) {
    Map<String, Double> fractions = new LinkedHashMap<>();
    Once once = new Once(diagnostics);
    boolean sound = true;
    double sum = 0;
    for (Share share : shares) {
      Optional<Double> fraction = new Amounts(diagnostics).base(share.percent(), Slot.SHARE);
      boolean first = once.first(share.name(), kind, share.name().text());
      if (fraction.isEmpty() || !first) {
        sound = false;
        continue;
      }
      sum += share.percent().value();
      fractions.put(share.name().text(), share.percent().value() / 100);
    }
    if (sound && Math.abs(sum - 100) > TOLERANCE) {
      diagnostics.error(item, "value.sum", "what", what, "sum", Numbers.plain(sum, 4));
      sound = false;
    }
    return sound ? Optional.of(fractions) : Optional.empty();
  }

  /** Returns the weights of a choice of grips. */
  Optional<Weights> weights(Weigh weigh) {
    boolean known = true;
    for (Share share : weigh.weights()) {
      if (!WEIGHTS.contains(share.name().text())) {
        diagnostics.unknown(share.name(), "weight", WEIGHTS);
        known = false;
      }
    }
    Optional<Map<String, Double>> fractions = whole(weigh, weigh.weights(), "weigh", "weight");
    return !known
        ? Optional.empty()
        : fractions.map(
            f ->
                new Weights(
                    f.getOrDefault("match", 0.0),
                    f.getOrDefault("margin", 0.0),
                    f.getOrDefault("carry-over", 0.0)));
  }
}
