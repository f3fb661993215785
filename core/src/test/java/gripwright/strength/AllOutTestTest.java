package gripwright.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.grip.Setup;
import gripwright.quantity.Load;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Which all-out series serves for a plan. */
class AllOutTestTest {

  private static final LocalDate DAY = Trials.DAY;
  private static final Setup SETUP = Trials.on(Trials.grip(15, 90), 20);

  /** Loads that fall by a time constant to a level, in kg. */
  private static StrengthTest series(LocalDate day, Setup setup, int holds, double pace) {
    return new StrengthTest(
        day,
        setup,
        new StrengthTest.Series(
            Duration.ofSeconds(7),
            Duration.ofSeconds(3),
            IntStream.range(0, holds)
                .mapToObj(i -> Load.ofKilograms(40 + 60 * Math.exp(-i / pace)))
                .toList()));
  }

  private static Optional<AllOutTest> found(Setup setup, StrengthTest... tests) {
    return StrengthMap.of(List.of(tests), Trials::posture, DAY).allOut(setup);
  }

  /** A series from a known level and decay gives the level within 1 %, the impulse within 2 %. */
  @Test
  void criticalForceAndImpulseComeFromTheSeries() {
    AllOutTest test = found(SETUP, series(DAY, SETUP, 24, 3)).orElseThrow();
    assertEquals(7, test.workSeconds());
    assertEquals(3, test.restSeconds());
    double force = test.critical().force().best().kilograms();
    assertEquals(40, force, 0.01 * 40, "within 1 % of the level");
    double whole = 7 * 60 / (1 - Math.exp(-1 / 3.0));
    assertEquals(whole, test.critical().impulseKgS(), 0.02 * whole);
  }

  @Test
  void theNewestOfTheVerySetupServes() {
    StrengthTest older = series(DAY.minusDays(60), SETUP, 24, 3);
    StrengthTest newer = series(DAY.minusDays(30), SETUP, 24, 4);
    StrengthTest later = series(DAY.plusDays(1), SETUP, 24, 5);
    assertEquals(
        Optional.of(newer.date()), found(SETUP, newer, older, later).map(AllOutTest::date));
    assertEquals(Optional.empty(), found(Trials.on(Trials.grip(15, 90), 18), newer));
    assertEquals(Optional.empty(), found(Trials.on(Trials.grip(15, 40), 20), newer));
  }

  @Test
  void whatIsOldShortOrStillFallingDoesNotServe() {
    assertEquals(true, found(SETUP, series(DAY.minusDays(84), SETUP, 24, 4)).isPresent());
    assertEquals(Optional.empty(), found(SETUP, series(DAY.minusDays(85), SETUP, 24, 4)));
    assertEquals(Optional.empty(), found(SETUP, series(DAY, SETUP, 17, 4)), "under 3 min");
    assertEquals(Optional.empty(), found(SETUP, series(DAY, SETUP, 24, 12)), "still falling");
    assertEquals(
        Optional.empty(),
        found(
            SETUP,
            new StrengthTest(
                DAY, SETUP, new StrengthTest.Held(Duration.ofSeconds(7), Load.ofKilograms(100)))));
  }
}
