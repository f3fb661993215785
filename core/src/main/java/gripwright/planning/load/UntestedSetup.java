package gripwright.planning.load;

import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.grip.Setup;
import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.quantity.Load;
import gripwright.strength.EdgeDepth;
import gripwright.strength.ForceTime;
import gripwright.strength.StrengthTest;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Creates the finding for a setup without a usable test. It names the test that would help. */
final class UntestedSetup {

  private static final double TENTHS = 10;
  private static final double TOLERANCE = 1e-6;

  private UntestedSetup() {}

  /**
   * Returns the finding where no test may be advised: under 16, or with a finger that is not
   * cleared.
   *
   * @param light what is known to be light without a test
   * @return an error with an argument {@code light}, or {@code nothing-light} if no load is
   */
  static Finding withoutTest(Setup setup, Optional<Load> light, ModelPath path) {
    Finding finding = Finding.error("plan.no-test", path).with("setup", setup);
    return light
        .map(most -> finding.with("light", rounded(most)))
        .orElseGet(() -> finding.with("nothing-light", setup.edge()));
  }

  /** Returns a load for a sentence, rounded down to a tenth of a kilogram. */
  static Load rounded(Load load) {
    return Load.ofKilograms(Math.floor(load.kilograms() * TENTHS + TOLERANCE) / TENTHS);
  }

  /**
   * Returns the finding.
   *
   * @param setup the setup without a maximum
   * @param usable the tests that give loads on the day
   * @param later the day of the first test after the session that would give a load
   * @param small what a level of 40 % or less would become, if it would
   * @param path the place of the setup
   * @return an error with the argument {@code later}, if there is such a day; otherwise with one
   *     for what differs from the tests there are: {@code shallow} for an edge at or below 4.3 mm,
   *     {@code tested} if only such an edge was tested, {@code hands}, {@code lift} or {@code
   *     hang}; without tests {@code small}, if there is such a load
   */
  static Finding of(
      Setup setup,
      List<StrengthTest> usable,
      Optional<LocalDate> later,
      Optional<Load> small,
      ModelPath path) {
    Finding finding = Finding.error("plan.no-test", path).with("setup", setup);
    List<Setup> tested =
        usable.stream()
            .filter(test -> test.effort().filter(e -> ForceTime.inRange(e.seconds())).isPresent())
            .map(StrengthTest::setup)
            .toList();
    if (later.isPresent()) {
      return finding.with("later", later.get());
    }
    if (tested.isEmpty()) {
      return small.map(most -> finding.with("small", rounded(most))).orElse(finding);
    }
    if (tested.stream().noneMatch(other -> EdgeDepth.canEstimate(other.edge(), setup.edge()))) {
      return setup.edge().millimetres() <= EdgeDepth.SHALLOWEST_ESTIMATED
          ? finding.with("shallow", setup.edge())
          : finding.with("tested", tested.get(tested.size() - 1).edge());
    }
    List<Setup> sameHands =
        tested.stream().filter(other -> other.hands() == setup.hands()).toList();
    if (sameHands.isEmpty()) {
      return finding.with("hands", setup.hands());
    }
    List<Setup> sameWay =
        sameHands.stream().filter(other -> other.lifting() == setup.lifting()).toList();
    if (sameWay.isEmpty()) {
      return finding.with(setup.lifting() ? "lift" : "hang", setup.hands());
    }
    return setup.edge().millimetres() <= EdgeDepth.SHALLOWEST_ESTIMATED
        ? finding.with("shallow", setup.edge())
        : finding.with("tested", sameWay.get(sameWay.size() - 1).edge());
  }

  /**
   * Returns the day of the first test after a day that would give a load for a setup.
   *
   * @param tests the tests of a log, oldest first
   */
  static Optional<LocalDate> firstAfter(LocalDate day, Setup setup, List<StrengthTest> tests) {
    return tests.stream()
        .filter(test -> test.date().isAfter(day))
        .filter(test -> test.effort().filter(e -> ForceTime.inRange(e.seconds())).isPresent())
        .filter(test -> test.setup().hands() == setup.hands())
        .filter(test -> test.setup().lifting() == setup.lifting())
        .filter(test -> EdgeDepth.canEstimate(test.setup().edge(), setup.edge()))
        .map(StrengthTest::date)
        .findFirst();
  }

  /** Returns what is known to be light, where a smaller share of the maximum would become it. */
  static Optional<Load> small(Dose dose, Optional<Load> light) {
    return light.filter(
        most ->
            dose.ramp().isEmpty()
                && dose.scheme().written().stream()
                    .map(Scheme.Hold::level)
                    .noneMatch(level -> level.byTime() || level instanceof Level.OfTest));
  }

  /** Returns whether a level of a dose is a share of a test. */
  static boolean needsTest(Dose dose) {
    return dose.scheme().written().stream().anyMatch(hold -> hold.level() instanceof Level.OfTest);
  }

  /**
   * Returns whether a dose needs a known maximum: for its ramp, or since a level is above the share
   * that becomes a load known to be light, or no load is known to be light.
   */
  static boolean needsMaximum(Dose dose, Optional<Load> light) {
    double known = light.isPresent() ? Loading.LIGHT_SHARE : 0;
    return dose.ramp().isPresent()
        || dose.scheme().written().stream()
            .map(Scheme.Hold::level)
            .anyMatch(
                level ->
                    level.byTime()
                        || level instanceof Level.OfTest
                        || (level instanceof Level.OfMax share && share.fraction() > known));
  }
}
