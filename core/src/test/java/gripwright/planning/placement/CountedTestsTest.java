package gripwright.planning.placement;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.grip.PractisedGrips;
import gripwright.grip.Setup;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.plan.TestCount;
import gripwright.plan.TestKind;
import gripwright.plan.TestTime;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.strength.StrengthTest;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class CountedTestsTest {

  private static final LocalDate FROM = LocalDate.of(2027, 1, 11);
  private static final Setup SETUP = Setup.of(PractisedGrips.HALF_CRIMP, Length.ofMillimetres(20));
  private static final Duration SEVEN = Duration.ofSeconds(7);

  private static Plan plan(TestCount count) {
    return Plan.named("dense")
        .athlete("ida")
        .from(FROM)
        .block(Block.named("pause", 2).content(Block.noTraining()).build())
        .retest(
            PlannedTest.of(List.of(SETUP), new TestKind.Hold(SEVEN))
                .time(new TestTime.Before())
                .time(new TestTime.After())
                .attempts(3, Duration.ofMinutes(5))
                .counts(count)
                .build())
        .build();
  }

  private static Log log(LocalDate day, double... kilograms) {
    Log log = Log.empty("ida");
    for (double each : kilograms) {
      log = log.with(StrengthTest.held(day, SETUP, SEVEN, Load.ofKilograms(each)));
    }
    return log;
  }

  private static List<Double> loads(Log log) {
    return log.of(LogEntry.Tested.class).stream()
        .map(line -> line.test().result().greatest().kilograms())
        .toList();
  }

  @Test
  void meanOfTheAttemptsOfADayCounts() {
    Log log = log(FROM.minusDays(5), 90, 96, 93);
    assertEquals(List.of(93.0), loads(CountedTests.of(plan(TestCount.MEAN), log)));
  }

  @Test
  void bestAttemptCounts() {
    Log log = log(FROM.plusDays(14), 90, 96, 93);
    assertEquals(List.of(96.0), loads(CountedTests.of(plan(TestCount.BEST), log)));
  }

  @Test
  void linesFarFromTheTestCountEach() {
    Log log = log(FROM.plusDays(4), 90, 96, 93);
    assertEquals(List.of(90.0, 93.0, 96.0), loads(CountedTests.of(plan(TestCount.BEST), log)));
  }

  @Test
  void holdsOfDifferentTimesCountEach() {
    Log log =
        log(FROM.minusDays(5), 90)
            .with(
                StrengthTest.held(
                    FROM.minusDays(5), SETUP, Duration.ofSeconds(10), Load.ofKilograms(80)));
    assertEquals(2, loads(CountedTests.of(plan(TestCount.MEAN), log)).size());
  }
}
