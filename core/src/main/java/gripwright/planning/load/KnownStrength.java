package gripwright.planning.load;

import gripwright.log.Log;
import gripwright.schedule.Derivation;
import gripwright.schedule.StrengthLink;
import gripwright.strength.LoadEstimate;
import gripwright.strength.StrengthMap;
import gripwright.strength.StrengthTest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Creates the first links of a load's derivation, which say how the maximum is known. */
final class KnownStrength {

  /** Most tests that a derivation names, and the smallest share of the estimate that is named. */
  private static final int MOST_TESTS = 4;

  private static final double LEAST_SHARE = 0.01;

  private KnownStrength() {}

  /**
   * Returns the links.
   *
   * @param hurt tests before this day count only in part
   * @param counts the part of the estimate that counts
   * @param log source of the logged values of reduced tests
   */
  static List<Derivation> why(
      StrengthMap.Estimate estimate,
      Optional<LocalDate> hurt,
      BelievedMaximum.Believed counts,
      Log log) {
    List<Derivation> why = new ArrayList<>();
    int shown = 0;
    boolean lessened = false;
    for (StrengthMap.Weight weight : estimate.basis()) {
      if (shown == MOST_TESTS || Math.abs(weight.share()) < LEAST_SHARE) {
        break;
      }
      boolean early = hurt.filter(weight.test().date()::isBefore).isPresent();
      StrengthTest test = early ? asLogged(weight.test(), log) : weight.test();
      lessened |= early;
      why.add(
          new StrengthLink.TestShare(
              weight.share(),
              test.effort().map(e -> new StrengthLink.Held(e.load(), e.seconds(), test.inForce())),
              test.setup(),
              test.date()));
      shown++;
    }
    if (lessened) {
      why.add(new StrengthLink.BeforeInjury(AfterInjury.SHARE));
    }
    LoadEstimate load = estimate.load();
    why.add(
        new StrengthLink.BestEstimate(
            load.best(), estimate.tested(), shown, estimate.basis().size() - shown));
    why.add(new StrengthLink.UpperBound(load.high()));
    why.add(new StrengthLink.LowerBound(load.low()));
    if (counts.follows().isPresent()) {
      BelievedMaximum.Follows follows = counts.follows().get();
      why.add(
          new StrengthLink.FollowsTest(
              load.low().times(counts.share()), follows.allowed(), follows.rise()));
    } else if (counts.share() < 1) {
      why.add(new StrengthLink.Believed(load.low().times(counts.share())));
    }
    return why;
  }

  private static StrengthTest asLogged(StrengthTest lessened, Log log) {
    return log.tests().stream()
        .filter(test -> test.atShare(AfterInjury.SHARE).equals(lessened))
        .findFirst()
        .orElse(lessened);
  }
}
