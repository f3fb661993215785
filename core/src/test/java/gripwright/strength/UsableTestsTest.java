package gripwright.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import gripwright.grip.Setup;
import gripwright.grip.StandardGrips;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class UsableTestsTest {

  private static final LocalDate DAY = LocalDate.of(2027, 1, 4);
  private static final Setup BOTH = Setup.of(StandardGrips.HALF_CRIMP, Length.ofMillimetres(20));

  private static final LocalDate SIXTEENTH_BIRTHDAY = LocalDate.of(2026, 1, 4);

  private static StrengthTest held(LocalDate day, double load) {
    return new StrengthTest(
        day, BOTH, new StrengthTest.Held(Duration.ofSeconds(7), Load.ofKilograms(load)));
  }

  private static List<StrengthTest> on(LocalDate day, StrengthTest... tests) {
    return new UsableTests(
            List.of(tests),
            setup -> fail("" + setup),
            date -> Load.ofKilograms(60),
            SIXTEENTH_BIRTHDAY::isAfter)
        .on(day);
  }

  @Test
  void testsCountFromTheirDayOnForTwoYears() {
    StrengthTest test = held(DAY, 90);
    assertEquals(List.of(), on(DAY.minusDays(1), test));
    assertEquals(List.of(test), on(DAY, test));
    assertEquals(List.of(test), on(DAY.plusMonths(24), test));
    assertEquals(List.of(), on(DAY.plusMonths(24).plusDays(1), test));
  }

  @Test
  void aLaterTestConfirmsAnEarlierOneOnlyFromItsDayOn() {
    StrengthTest first = held(DAY, 140);
    StrengthTest second = held(DAY.plusDays(7), 138);
    double counted = on(DAY.plusDays(6), first, second).get(0).result().greatest().kilograms();
    assertEquals(132, counted, 1e-9);
    assertEquals(List.of(first, second), on(DAY.plusDays(7), first, second));
  }

  @Test
  void under16AnImplausibleTestCountsOnlyIfAnotherConfirmsIt() {
    StrengthTest plausible = held(SIXTEENTH_BIRTHDAY.minusDays(9), 132);
    StrengthTest first = held(SIXTEENTH_BIRTHDAY.minusDays(9), 140);
    StrengthTest second = held(SIXTEENTH_BIRTHDAY.minusDays(8), 138);
    LocalDate eve = SIXTEENTH_BIRTHDAY.minusDays(1);
    assertEquals(List.of(plausible), on(eve, plausible));
    assertEquals(List.of(), on(eve, first));
    assertEquals(List.of(first, second), on(eve, first, second));
    assertEquals(1, on(SIXTEENTH_BIRTHDAY, first).size());
  }
}
