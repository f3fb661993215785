package gripwright.season;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.grip.GripFit;
import gripwright.grip.Setup;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.strength.OutlierTests;
import gripwright.strength.Posture;
import gripwright.strength.StrengthTest;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Tests that the athlete's other tests contradict. */
public final class OddTests {

  private OddTests() {}

  /**
   * Returns advice on each odd test, oldest first; the place is the entry of the log. Only logs
   * with two tests of one setup and hold time that differ by more than a fifth are searched, which
   * saves time for most logs; a review searches all.
   *
   * @throws IllegalArgumentException if the log is not the athlete's
   */
  public static List<Finding> likely(Athlete athlete, Log log) {
    log.requireOf(athlete);
    return OutlierTests.likely(log.tests())
        ? among(athlete, log.tests()).stream().map(each -> finding(each, log)).toList()
        : List.of();
  }

  /** Returns the odd ones among tests, oldest first. */
  public static List<OutlierTests.Odd> among(Athlete athlete, List<StrengthTest> tests) {
    return new OutlierTests(postures(athlete))
        .among(tests).stream().filter(odd -> !isExpected(athlete, odd, tests)).toList();
  }

  /**
   * Returns whether an injury of a finger in use explains an odd test: a lower one while the injury
   * is open or within a year of its clearance, or a higher one before it.
   */
  private static boolean isExpected(
      Athlete athlete, OutlierTests.Odd odd, List<StrengthTest> tests) {
    Setup setup = odd.test().setup();
    LocalDate day = odd.test().date();
    return athlete.injuries().stream()
        .filter(injury -> injury.structure() != Structure.SKIN)
        .filter(injury -> setup.grip().fingers().has(injury.finger()))
        .filter(injury -> injury.side().map(setup.hands().sides()::contains).orElse(true))
        .anyMatch(
            injury ->
                odd.deviations() < 0
                    ? injury.isNear(day)
                    : day.isBefore(injury.from())
                        && tests.stream().anyMatch(other -> injury.isNear(other.date())));
  }

  private static Function<Setup, Posture> postures(Athlete athlete) {
    Map<String, Posture> known = new HashMap<>();
    return setup ->
        known.computeIfAbsent(
            setup.toString(),
            name ->
                Posture.of(
                    setup.hands().sides().stream()
                        .map(side -> fit(athlete, setup, side))
                        .toList()));
  }

  private static GripFit fit(Athlete athlete, Setup setup, Side side) {
    return GripFit.of(setup.grip(), athlete.shape(side), setup.edge());
  }

  /** Returns the advice on a test. */
  public static Finding finding(OutlierTests.Odd odd, Log log) {
    int entry = 0;
    for (int i = 0; i < log.entries().size(); i++) {
      if (log.entries().get(i) instanceof LogEntry.Tested tested
          && tested.test().equals(odd.test())) {
        entry = i + 1;
      }
    }
    Finding finding =
        Finding.advice("log.test-outlier", ModelPath.of("log", log.athlete()).then("entry", entry));
    return (odd.deviations() < 0 ? finding.with("low", "") : finding)
        .with("setup", odd.test().setup())
        .with("date", odd.test().date())
        .with("load", rounded(odd.test().effort().orElseThrow().load()))
        .with("expected", rounded(odd.expected().best()));
  }

  private static String rounded(Load load) {
    return Numbers.plain(load.kilograms(), 1) + " kg";
  }
}
