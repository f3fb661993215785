package gripwright.schedule;

import gripwright.finding.Listing;
import gripwright.plan.Exercise;
import gripwright.quantity.Numbers;
import java.util.Map;
import java.util.TreeMap;

/** Why a grip has its share of the work, as links of a derivation. */
public sealed interface MixLink extends Derivation {

  private static String percent(double share) {
    return Numbers.plain(share * 100, 0) + " %";
  }

  private static Listing shares(GripMix.Blend blend) {
    return Listing.of(
        Listing.Style.COMMAS,
        blend.shares().entrySet().stream()
            .map(share -> share.getKey() + " " + percent(share.getValue()))
            .toList());
  }

  /**
   * The share of a grip in the work of its line.
   *
   * @param grip its name
   * @param share of the work
   * @param sets its sets
   * @param of all sets of the line
   * @param weights weights of the score
   */
  record Share(String grip, double share, int sets, int of, Exercise.Weights weights)
      implements MixLink {
    @Override
    public String key() {
      return "derivation.mix-share";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of(
          "sets", sets,
          "of", of,
          "match", percent(weights.match()),
          "margin", percent(weights.margin()),
          "carry-over", percent(weights.carryOver()));
    }

    @Override
    public double value() {
      return share * 100;
    }

    @Override
    public String unit() {
      return "%";
    }
  }

  /**
   * The share of a further grip, explained by the first one.
   *
   * @param grip its name
   * @param share of the work
   * @param sets its sets
   * @param of all sets of the line
   * @param first the grip whose links explain the mix
   */
  record FurtherShare(String grip, double share, int sets, int of, String first)
      implements MixLink {
    @Override
    public String key() {
      return "derivation.mix-share-further";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("sets", sets, "of", of, "first", first);
    }

    @Override
    public double value() {
      return share * 100;
    }

    @Override
    public String unit() {
      return "%";
    }
  }

  /**
   * How much of the demand is trained directly.
   *
   * @param mix the mix
   */
  record Match(GripMix.Blend mix) implements MixLink {
    @Override
    public String key() {
      return "derivation.mix-match";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("shares", shares(mix));
    }

    @Override
    public double value() {
      return mix.match() * 100;
    }

    @Override
    public String unit() {
      return "%";
    }
  }

  /**
   * The capacity of the most loaded pulley divided by its load.
   *
   * @param mix the mix
   * @param equal margin from which mixes count as equal
   */
  record Margin(GripMix.Blend mix, double equal) implements MixLink {
    @Override
    public String key() {
      return "derivation.mix-margin";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("equal", Numbers.plain(equal, 2));
    }

    @Override
    public double value() {
      return mix.margin();
    }

    @Override
    public String unit() {
      return "";
    }
  }

  /**
   * Why grips take part that are neither tested nor in the demand.
   *
   * @param mix the mix
   * @param unproven those grips
   */
  record Unproven(GripMix.Blend mix, GripMix.Unproven unproven) implements MixLink {
    @Override
    public String key() {
      return unproven.without().isPresent()
          ? "derivation.mix-unproven"
          : "derivation.mix-unproven-alone";
    }

    @Override
    public Map<String, Object> arguments() {
      Map<String, Object> arguments = new TreeMap<>();
      arguments.put("grips", Listing.of(Listing.Style.COMMAS, unproven.grips()));
      unproven
          .without()
          .ifPresent(
              without -> {
                arguments.put("match", percent(without.match()));
                arguments.put("margin", Numbers.plain(without.margin(), 2));
                arguments.put("carry-over", percent(without.carryOver()));
              });
      return arguments;
    }

    @Override
    public double value() {
      return unproven.without().map(without -> mix.score() - without.score()).orElse(mix.score());
    }

    @Override
    public String unit() {
      return "";
    }
  }

  /**
   * How much of the work transfers to the demand.
   *
   * @param mix the mix
   */
  record CarryOver(GripMix.Blend mix) implements MixLink {
    @Override
    public String key() {
      return "derivation.mix-carry-over";
    }

    @Override
    public double value() {
      return mix.carryOver() * 100;
    }

    @Override
    public String unit() {
      return "%";
    }
  }

  /**
   * The score of all three.
   *
   * @param mix the mix
   */
  record Score(GripMix.Blend mix) implements MixLink {
    @Override
    public String key() {
      return "derivation.mix-score";
    }

    @Override
    public double value() {
      return mix.score();
    }

    @Override
    public String unit() {
      return "";
    }
  }

  /**
   * The best mix of another set of grips.
   *
   * @param mix that mix
   */
  record NextBest(GripMix.Blend mix) implements MixLink {
    @Override
    public String key() {
      return "derivation.mix-next-best";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("shares", shares(mix));
    }

    @Override
    public double value() {
      return mix.score();
    }

    @Override
    public String unit() {
      return "";
    }
  }

  /**
   * The cost of a limit.
   *
   * @param limit the limit
   */
  record LimitCost(GripMix.Limit limit) implements MixLink {
    @Override
    public String key() {
      return "derivation.mix-limit";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("grip", limit.grip(), "reason", limit.reason());
    }

    @Override
    public double value() {
      return limit.cost();
    }

    @Override
    public String unit() {
      return "";
    }
  }
}
