package gripwright.schedule;

import gripwright.finding.Clause;
import gripwright.grip.Setup;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/** The estimate of the maximum, as links of a derivation. */
public sealed interface StrengthLink extends Derivation {

  /**
   * A load that was held.
   *
   * @param load total load
   * @param seconds how long
   * @param inForce true if a sensor showed a force in N, which is the weight of the load
   */
  record Held(Load load, double seconds, boolean inForce) {
    /** Creates one of a load. */
    public Held(Load load, double seconds) {
      this(load, seconds, false);
    }
  }

  /**
   * How much a test counts in the estimate of the maximum.
   *
   * @param share of the estimate; may be below 0
   * @param held the hold, if it was a single one
   * @param setup the setup tested
   * @param date the day
   */
  record TestShare(double share, Optional<Held> held, Setup setup, LocalDate date)
      implements StrengthLink {
    @Override
    public String key() {
      return held.map(h -> h.inForce() ? "derivation.test-share-force" : "derivation.test-share")
          .orElse("derivation.test-share-unheld");
    }

    @Override
    public Map<String, Object> arguments() {
      return held.<Map<String, Object>>map(
              h ->
                  Map.of(
                      "newtons",
                      Numbers.plain(h.load().newtons(), 1),
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
   * Tests from before an injury count with a share of their load.
   *
   * @param share of the load
   */
  record BeforeInjury(double share) implements StrengthLink {
    @Override
    public String key() {
      return "derivation.before-injury";
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
   * The part of the lower bound that counts: no more than the last test of the setup showed, or the
   * last one on a deeper edge.
   *
   * @param load that load
   */
  record Believed(Load load) implements StrengthLink {
    @Override
    public String key() {
      return "derivation.believed";
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
   * What counts of the lower bound while loads follow a higher test week by week.
   *
   * @param load what counts
   * @param allowed what the test allows
   * @param rise greatest rise in a week, as a share
   */
  record FollowsTest(Load load, Load allowed, double rise) implements StrengthLink {
    @Override
    public String key() {
      return "derivation.follows-test";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("allowed", allowed, "percent", Numbers.plain(rise * 100, 1));
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
   * The best estimate of the maximum.
   *
   * @param load greatest load held for the reference time
   * @param tested true if the setup itself was tested
   * @param named number of tests listed before
   * @param others number of further tests, with a smaller share
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
   * A load that failed earlier in a recent test is not prescribed for a longer hold.
   *
   * @param failed the load that failed
   * @param without the load without this limit
   * @param days days for which such a test counts, at most
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
