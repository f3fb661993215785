package gripwright.planning.load;

import gripwright.athlete.Athlete;
import gripwright.athlete.Injury;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.grip.Setup;
import gripwright.hand.Structure;
import gripwright.strength.StrengthTest;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;

/**
 * How tests from before an injury count once the finger is cleared: at 70 % for 12 weeks, and to
 * the end of a plan that began in them, so that no load jumps within a plan. Both are our own
 * numbers. A cleared injury of the skin doesn't count.
 */
final class AfterInjury {

  /** Share of its load that such a test counts with. */
  static final double SHARE = 0.7;

  /**
   * Greatest weekly rise of the maximum, equal to the rise of levels that the built-in rules allow.
   */
  static final double RISE = 0.05;

  private static final int WEEKS = 12;

  private AfterInjury() {}

  /**
   * Returns the day before which tests of a setup count only in part; empty if they count in full.
   */
  static Optional<LocalDate> testsBefore(
      Athlete athlete, Setup setup, LocalDate day, LocalDate planFrom) {
    if (athlete.injuries().isEmpty()) {
      return Optional.empty();
    }
    return athlete.injuries().stream()
        .filter(injury -> injury.structure() != Structure.SKIN)
        .filter(injury -> setup.grip().fingers().has(injury.finger()))
        .filter(injury -> injury.side().map(setup.hands().sides()::contains).orElse(true))
        .filter(
            injury ->
                injury
                    .cleared()
                    .filter(on -> !day.isBefore(on) && planFrom.isBefore(on.plusWeeks(WEEKS)))
                    .isPresent())
        .map(Injury::from)
        .max(Comparator.naturalOrder());
  }

  static Finding finding(Setup setup, StrengthTest test, ModelPath path) {
    return Finding.warning("plan.test-before-injury", path)
        .with("setup", setup)
        .with("date", test.date())
        .with("share", Math.round(SHARE * 100));
  }
}
