package gripwright.schedule;

import gripwright.finding.Clause;
import gripwright.grip.Setup;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/** What is known of the maximum, as links of a derivation. */
public sealed interface StrengthLink extends Derivation {

  /**
   * A load that was held.
   *
   * @param load total load
   * @param seconds how long
   */
  record Held(Load load, double seconds) {}

  /**
   * How much a test counts in the estimate of the maximum.
   *
   * @param share of the estimate; may be below 0
   * @param held what was held, if it is one hold
   * @param setup what was tested
   * @param date when
   */
  record TestShare(double share, Optional<Held> held, Setup setup, LocalDate date)
      implements StrengthLink {
    @Override
    public String key() {
      return held.isPresent() ? "derivation.test-share" : "derivation.test-share-unheld";
    }

    @Override
    public Map<String, Object> arguments() {
      return held.<Map<String, Object>>map(
              h ->
                  Map.of(
                      "load",
                      h.load(),
                      "seconds",
                      Numbers.plain(h.seconds(), 1),
                      "setup",
                      setup,
                      "date",
                      date))
          .orElseGet(() -> Map.of("setup", setup, "date", date));
    }

    @Override
    public double value() {
      return Math.rint(share * 100);
    }

    @Override
    public String unit() {
      return "%";
    }
  }

  /**
   * The best estimate of the maximum.
   *
   * @param load greatest load held for the reference time
   * @param tested true if the setup itself was tested
   * @param named how many tests are named before
   * @param others how many more count, with less weight
   */
  record BestEstimate(Load load, boolean tested, int named, int others) implements StrengthLink {
    @Override
    public String key() {
      return tested ? "derivation.maximum-tested" : "derivation.maximum-modelled";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of(
          "tests",
          new Clause(
              "derivation.tests-"
                  + (named == 1 ? "one" : "many")
                  + (others == 0 ? "" : "-and-others"),
              Map.of("count", others)));
    }

    @Override
    public double value() {
      return load.kilograms();
    }

    @Override
    public String unit() {
      return "kg";
    }
  }

  /**
   * The upper bound of the maximum.
   *
   * @param load 80th percentile of the estimate
   */
  record UpperBound(Load load) implements StrengthLink {
    @Override
    public String key() {
      return "derivation.maximum-upper";
    }

    @Override
    public double value() {
      return load.kilograms();
    }

    @Override
    public String unit() {
      return "kg";
    }
  }

  /**
   * The lower bound of the maximum, which levels are shares of.
   *
   * @param load 20th percentile of the estimate
   */
  record LowerBound(Load load) implements StrengthLink {
    @Override
    public String key() {
      return "derivation.maximum-lower";
    }

    @Override
    public double value() {
      return load.kilograms();
    }

    @Override
    public String unit() {
      return "kg";
    }
  }

  /**
   * A load that failed sooner in a recent test is not prescribed for longer.
   *
   * @param failed the load that failed
   * @param without what would be prescribed without it
   * @param days how long ago such a test counts, at most
   */
  record FailedBefore(Load failed, Load without, int days) implements StrengthLink {
    @Override
    public String key() {
      return "derivation.failed-before";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("days", days, "load", without);
    }

    @Override
    public double value() {
      return failed.kilograms();
    }

    @Override
    public String unit() {
      return "kg";
    }
  }
}
