package gripwright.planning.load;

import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.grip.Setup;
import gripwright.log.Log;
import gripwright.strength.EdgeDepth;
import gripwright.strength.ForceTime;
import gripwright.strength.StrengthTest;
import java.time.LocalDate;
import java.util.List;

/** What to say of a setup that no test tells of: which test would. */
final class UntestedSetup {

  private UntestedSetup() {}

  /**
   * Returns the finding.
   *
   * @param setup the setup without a maximum
   * @param log the tests there are
   * @param day the day; later tests are not known yet
   * @param path where the setup stands
   * @return an error with an argument for what differs from the tests there are: {@code shallow}
   *     for an edge at or below 4.3 mm, {@code tested} if only such an edge was tested, {@code
   *     hands}, {@code lift} or {@code hang}; none of them without tests
   */
  static Finding of(Setup setup, Log log, LocalDate day, ModelPath path) {
    Finding finding = Finding.error("plan.no-test", path).with("setup", setup);
    List<Setup> tested =
        log.tests().stream()
            .filter(test -> !test.date().isAfter(day))
            .filter(test -> test.effort().filter(e -> ForceTime.inRange(e.seconds())).isPresent())
            .map(StrengthTest::setup)
            .toList();
    if (tested.isEmpty()) {
      return finding;
    }
    if (tested.stream().noneMatch(other -> EdgeDepth.reckons(other.edge(), setup.edge()))) {
      return setup.edge().millimetres() <= EdgeDepth.SHALLOWEST_RECKONED
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
    return setup.edge().millimetres() <= EdgeDepth.SHALLOWEST_RECKONED
        ? finding.with("shallow", setup.edge())
        : finding.with("tested", sameWay.get(sameWay.size() - 1).edge());
  }
}
