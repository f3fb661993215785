package gripwright.planning.mix;

import gripwright.plan.Exercise;
import gripwright.quantity.Numbers;
import gripwright.schedule.GripMix;
import gripwright.schedule.GripMix.Blend;
import gripwright.schedule.GripMix.Limit;
import gripwright.schedule.PlannedExercise.Derivation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Why a grip has its share of the work, link by link. */
public final class MixWords {

  private static final double PERCENT = 100;

  private MixWords() {}

  /**
   * Returns the links.
   *
   * @param mix what was chosen
   * @param grip one of its grips
   * @param sets what it gets of all sets
   * @param all sets of the line
   * @param toldWith the grip of the same line whose links tell of the mix; empty if these shall
   */
  public static List<Derivation> why(
      GripMix mix, String grip, int sets, int all, Optional<String> toldWith) {
    Blend best = mix.best();
    List<Derivation> links = new ArrayList<>();
    if (toldWith.isPresent()) {
      links.add(
          link(
              "share of work",
              best.shares().getOrDefault(grip, 0.0) * PERCENT,
              "%",
              sets + " of " + all + " sets; why, see " + toldWith.get()));
      return links;
    }
    links.add(
        link(
            "share of work",
            best.shares().getOrDefault(grip, 0.0) * PERCENT,
            "%",
            sets + " of " + all + " sets; " + weights(mix.weights())));
    links.add(
        link(
            "match",
            best.match() * PERCENT,
            "%",
            "of the demand is trained directly by " + shares(best)));
    links.add(
        link(
            "margin",
            best.margin(),
            "",
            "capacity by load of the most loaded pulley in the worst slip: a rough estimate, to compare"
                + " mixes by"));
    links.add(
        link(
            "carry-over",
            best.carryOver() * PERCENT,
            "%",
            "of the work counts for the demand; extrapolated from other joints"));
    links.add(link("score", best.score(), "", "match, margin and carry-over, weighted; at most 1"));
    mix.nextBest()
        .ifPresent(
            next -> links.add(link("next best score", next.score(), "", "with " + shares(next))));
    for (Limit limit : mix.limits()) {
      links.add(
          link(
              "a limit costs",
              limit.cost(),
              "",
              limit.grip() + ": " + reason(limit) + ", or the score would be so much higher"));
    }
    return links;
  }

  private static String reason(Limit limit) {
    return switch (limit.kind()) {
      case GATE -> "the rule " + limit.reason() + " stands against it";
      case LOAD -> "no load can be given" + (limit.reason().isEmpty() ? "" : ", " + limit.reason());
      case NOT_NAMED, HAND -> limit.reason();
    };
  }

  private static String weights(Exercise.Weights weights) {
    return "match counts "
        + percent(weights.match())
        + ", margin "
        + percent(weights.margin())
        + ", carry-over "
        + percent(weights.carryOver());
  }

  private static String shares(Blend blend) {
    return blend.shares().entrySet().stream()
        .map(share -> share.getKey() + " " + percent(share.getValue()))
        .collect(Collectors.joining(", "));
  }

  private static String percent(double share) {
    return Numbers.plain(share * PERCENT, 0) + " %";
  }

  private static Derivation link(String step, double value, String unit, String from) {
    return new Derivation(step, value, unit, from);
  }
}
