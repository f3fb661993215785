package gripwright.compare.worked;

import static gripwright.compare.Studies.compared;
import static gripwright.compare.Studies.p1;
import static gripwright.compare.Studies.p2;
import static gripwright.compare.Studies.run;
import static gripwright.compare.Studies.subject;
import static gripwright.compare.Studies.value;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.compare.Comparison;
import gripwright.compare.Comparison.Match;
import gripwright.compare.ComparisonResult;
import gripwright.compare.ComparisonResult.Difference;
import gripwright.compare.ComparisonResult.Verdict;
import gripwright.compare.Measure;
import gripwright.finding.Finding;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * Checks of comparisons that can be done by hand; arithmetic unless a source is named. P1 is five
 * holds of 10 s at 80 % with 180 s of rest, P2 three sets of six holds of 7 s with 3 s of rest at
 * 60 %, with 180 s between sets; the maximum is 100 kg and nothing is rounded.
 */
class ComparisonChecksTest {

  private static final Measure[] SIMPLE = {
    Measure.TIME_UNDER_LOAD, Measure.LOAD_TIME, Measure.IMPULSE, Measure.MINUTES, Measure.DENSITY
  };

  @Test
  void anArmAgainstItselfDiffersByExactlyNothing() {
    ComparisonResult.Subject subject = subject(compared(p2(), p2(), Measure.values()).build());
    for (Difference difference : subject.differences()) {
      if (difference.measure() != Measure.FIRST_FAILURE) {
        assertEquals(0, difference.low90(), difference::toString);
        assertEquals(0, difference.high90(), difference::toString);
        assertEquals(0, difference.median(), difference::toString);
      }
      assertEquals(0.5, difference.greater(), difference::toString);
      assertEquals(OptionalDouble.of(0.5), difference.ofAthletes(), difference::toString);
      assertEquals(Verdict.EQUAL, difference.verdict(), difference::toString);
    }
  }

  @Test
  void measuresOfBothProtocols() {
    ComparisonResult.Subject subject = subject(compared(p1(), p2(), SIMPLE).build());
    assertEquals(50, value(subject, 0, Measure.TIME_UNDER_LOAD), 1e-9);
    assertEquals(4000, value(subject, 0, Measure.LOAD_TIME), 1e-9);
    assertEquals(39_226.6, value(subject, 0, Measure.IMPULSE), 0.05);
    assertEquals(770 / 60.0, value(subject, 0, Measure.MINUTES), 1e-9);
    assertEquals(0.06494, value(subject, 0, Measure.DENSITY), 5e-6);
    assertEquals(126, value(subject, 1, Measure.TIME_UNDER_LOAD), 1e-9);
    assertEquals(7560, value(subject, 1, Measure.LOAD_TIME), 1e-9);
    assertEquals(74_138.3, value(subject, 1, Measure.IMPULSE), 0.05);
    assertEquals(531 / 60.0, value(subject, 1, Measure.MINUTES), 1e-9);
    assertEquals(0.23729, value(subject, 1, Measure.DENSITY), 5e-6);
    Difference loadTime = subject.differences().get(1);
    assertEquals(1 / 1.89, Math.exp(loadTime.best()), 1e-12);
    assertEquals(loadTime.low90(), loadTime.high90());
  }

  private static Comparison matched(Match match) {
    return compared(p1(), p2(), SIMPLE).match(match).build();
  }

  @Test
  void matchingBySetsLeavesAResidual() {
    Match by = new Match(Measure.LOAD_TIME, "a", "b", "sets", OptionalDouble.empty());
    ComparisonResult.Subject subject = subject(matched(by));
    assertEquals(9, subject.matches().get(0).value());
    assertEquals(-0.0476, subject.matches().get(0).residual(), 5e-5);
    assertEquals(7200, value(subject, 0, Measure.LOAD_TIME), 1e-9);
    Match close = new Match(Measure.LOAD_TIME, "a", "b", "sets", OptionalDouble.of(0.02));
    Finding finding =
        run(matched(close)).findings().stream()
            .filter(each -> each.code().equals("compare.match-residual"))
            .findFirst()
            .orElseThrow();
    assertEquals(9, finding.arguments().get("low"));
    assertEquals("-4.76 %", finding.arguments().get("lowResidual"));
    assertEquals(10, finding.arguments().get("high"));
    assertEquals("5.82 %", finding.arguments().get("highResidual"));
  }

  @Test
  void matchingByHoldAndByLevelIsExact() {
    Match hold = new Match(Measure.LOAD_TIME, "a", "b", "hold", OptionalDouble.empty());
    assertEquals(18.9, subject(matched(hold)).matches().get(0).value(), 1e-6);
    Match level = new Match(Measure.LOAD_TIME, "b", "a", "level", OptionalDouble.of(0.001));
    ComparisonResult.Subject subject = subject(matched(level));
    assertEquals(31.746, subject.matches().get(0).value(), 5e-4);
    assertEquals("% max", subject.matches().get(0).unit());
    assertEquals(4000, value(subject, 1, Measure.LOAD_TIME), 1e-4);
  }

  @Test
  void equalTimeOnOneGripLoadsPulleysInProportion() {
    var heavy = p1().with("level", gripwright.protocol.Level.ofMax(80));
    var light = p1().with("level", gripwright.protocol.Level.ofMax(60));
    ComparisonResult.Subject subject =
        subject(
            compared(
                    heavy,
                    light,
                    Measure.A2_EXPOSURE,
                    Measure.A4_EXPOSURE,
                    Measure.PEAK_A2_LOAD,
                    Measure.PEAK_A4_LOAD)
                .build());
    for (Difference difference : subject.differences()) {
      assertEquals(4.0 / 3, Math.exp(difference.best()), 1e-12, difference::toString);
      assertEquals(difference.low90(), difference.high90(), 1e-12, difference::toString);
      assertEquals(4.0 / 3, Math.exp(difference.low90()), 1e-3, difference::toString);
      assertEquals(OptionalDouble.of(1), difference.ofAthletes(), difference::toString);
    }
    assertTrue(value(subject, 0, Measure.A2_EXPOSURE) > 0);
  }

  @Test
  void impulseAboveACriticalForceOf40Kilograms() {
    ComparisonResult.Subject subject =
        subject(compared(p1(), p2(), Measure.IMPULSE_ABOVE_CF).build());
    assertEquals(2000 * 9.80665, value(subject, 0, Measure.IMPULSE_ABOVE_CF), 1e-6);
    assertEquals(2520 * 9.80665, value(subject, 1, Measure.IMPULSE_ABOVE_CF), 1e-6);
  }
}
