package gripwright.planning.mix;

import gripwright.schedule.Derivation;
import gripwright.schedule.GripMix;
import gripwright.schedule.GripMix.Blend;
import gripwright.schedule.MixLink;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Explains why a grip has its share of the work, link by link. */
public final class MixLinks {

  private MixLinks() {}

  /**
   * Returns the links.
   *
   * @param mix the chosen mix
   * @param grip one of its grips
   * @param sets its sets
   * @param all sets of the line
   * @param explainedBy the grip of the same line whose links explain the mix; empty if these do
   */
  public static List<Derivation> why(
      GripMix mix, String grip, int sets, int all, Optional<String> explainedBy) {
    Blend best = mix.best();
    double share = best.shares().getOrDefault(grip, 0.0);
    if (explainedBy.isPresent()) {
      return List.of(new MixLink.FurtherShare(grip, share, sets, all, explainedBy.get()));
    }
    List<Derivation> links = new ArrayList<>();
    links.add(new MixLink.Share(grip, share, sets, all, mix.weights()));
    links.add(new MixLink.Match(best));
    links.add(new MixLink.Margin(best, mix.equalMargin()));
    links.add(new MixLink.CarryOver(best));
    links.add(new MixLink.Score(best));
    mix.unproven().ifPresent(unproven -> links.add(new MixLink.Unproven(best, unproven)));
    mix.nextBest().ifPresent(next -> links.add(new MixLink.NextBest(next)));
    mix.limits().forEach(limit -> links.add(new MixLink.LimitCost(limit)));
    return links;
  }
}
