package gripwright.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.grip.Setup;
import gripwright.grip.StandardGrips;
import gripwright.hand.Hands;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PlausibleTestsTest {

  private static final LocalDate DAY = LocalDate.of(2027, 1, 4);
  private static final Load MASS = Load.ofKilograms(60);
  private static final Setup BOTH = Setup.of(StandardGrips.HALF_CRIMP, Length.ofMillimetres(20));

  private static StrengthTest held(Setup setup, LocalDate day, double seconds, double load) {
    return new StrengthTest(
        day,
        setup,
        new StrengthTest.Held(
            Duration.ofMillis(Math.round(seconds * 1000)), Load.ofKilograms(load)));
  }

  private static PlausibleTests among(StrengthTest... tests) {
    return new PlausibleTests(List.of(tests), day -> MASS);
  }

  @Test
  void theLimitRisesWithDepthBetweenTheGivenPoints() {
    Map<Double, Double> two =
        Map.of(5.0, 2.2, 20.0, 2.2, 25.0, 2.3, 30.0, 2.4, 35.0, 2.5, 40.0, 2.6, 90.0, 2.6);
    two.forEach((depth, times) -> assertEquals(times * 60, most(depth, Hands.BOTH), 1e-9));
    Map<Double, Double> one = Map.of(20.0, 1.3, 25.0, 1.35, 30.0, 1.4, 35.0, 1.475, 40.0, 1.55);
    one.forEach((depth, times) -> assertEquals(times * 60, most(depth, Hands.LEFT), 1e-9));
  }

  private static double most(double depth, Hands hands) {
    return PlausibleTests.most(BOTH.withEdge(Length.ofMillimetres(depth)).withHands(hands), MASS)
        .kilograms();
  }

  @Test
  void aTestAtTheLimitCountsAsItIsAndOneAboveAsTheLimit() {
    StrengthTest at = held(BOTH, DAY, 7, 132);
    assertSame(at, among(at).counted(at));
    StrengthTest above = held(BOTH, DAY, 7, 300);
    assertEquals(132, among(above).counted(above).result().greatest().kilograms(), 1e-9);
    Setup lift = new Setup(BOTH.grip(), BOTH.edge(), Hands.RIGHT, true);
    StrengthTest lifted = held(lift, DAY, 7, 100);
    assertEquals(78, among(lifted).counted(lifted).result().greatest().kilograms(), 1e-9);
  }

  @Test
  void everyKindOfResultIsReducedTheSameWay() {
    StrengthTest failure =
        new StrengthTest(
            DAY, BOTH, new StrengthTest.ToFailure(Load.ofKilograms(264), Duration.ofSeconds(7)));
    StrengthTest series =
        new StrengthTest(
            DAY,
            BOTH,
            new StrengthTest.Series(
                Duration.ofSeconds(7),
                Duration.ofSeconds(3),
                List.of(Load.ofKilograms(264), Load.ofKilograms(200))));
    assertEquals(132, among(failure).counted(failure).result().greatest().kilograms(), 1e-9);
    StrengthTest.Series cut = (StrengthTest.Series) among(series).counted(series).result();
    assertEquals(132, cut.means().get(0).kilograms(), 1e-9);
    assertEquals(100, cut.means().get(1).kilograms(), 1e-9);
  }

  @Test
  void aTestWithinTenPerCentOnAnotherDayConfirms() {
    StrengthTest first = held(BOTH, DAY, 7, 140);
    StrengthTest near = held(BOTH, DAY.plusDays(7), 7, 126);
    assertFalse(among(first, near).doubtful(first));
    StrengthTest far = held(BOTH, DAY.plusDays(7), 7, 125.9);
    assertTrue(among(first, far).doubtful(first));
    StrengthTest sameDay = held(BOTH, DAY, 7, 139);
    assertTrue(among(first, sameDay).doubtful(first));
    StrengthTest otherHand = held(BOTH.withHands(Hands.LEFT), DAY.plusDays(7), 7, 139);
    assertTrue(among(first, otherHand).doubtful(first));
  }

  @Test
  void twiceTheLimitIsNeverConfirmed() {
    StrengthTest first = held(BOTH, DAY, 7, 264);
    StrengthTest second = held(BOTH, DAY.plusDays(7), 7, 264);
    assertTrue(among(first, second).doubtful(first));
    assertTrue(among(first, second).impossible(first));
    StrengthTest below = held(BOTH, DAY, 7, 263.9);
    assertFalse(among(below, second).impossible(below));
    assertFalse(among(below, second).doubtful(below));
  }

  @Test
  void shortHoldsCountAsLessAndLongOnesAsMore() {
    StrengthTest brief = held(BOTH, DAY, 2, 132);
    StrengthTest reference = held(BOTH, DAY, 7, 132);
    StrengthTest minute = held(BOTH, DAY, 60, 132);
    PlausibleTests all = among(brief, reference, minute);
    assertTrue(all.share(brief) < all.share(reference));
    assertEquals(1, all.share(reference), 1e-9);
    assertTrue(all.share(minute) > 1.2 && all.share(minute) < 2);
    assertEquals(all.share(held(BOTH, DAY, 1, 132)), all.share(brief), 1e-12);
    // Body mass held for two minutes on 20 mm is what strong climbers do.
    assertTrue(all.share(held(BOTH, DAY, 120, 60)) < 1);
  }

  /**
   * Seven minutes written for seven seconds: the maximum that follows is no more than is likely.
   */
  @Test
  void aDoubtfulLongHoldGivesNoMaximumAboveTheGreatestPlausibleLoad() {
    StrengthTest minutes = held(BOTH, DAY, 420, 78);
    PlausibleTests all = among(minutes);
    assertTrue(all.doubtful(minutes));
    double counted = all.counted(minutes).result().greatest().kilograms();
    double atSeven =
        counted * Math.exp(-FadingForce.allowed(EnduranceLaw.ROHMERT, 420)); // the average fade
    assertEquals(PlausibleTests.most(BOTH, MASS).kilograms(), atSeven, 1e-6);
  }

  @Test
  void bodyMassIsThatOfTheDayOfTheTest() {
    PlausibleTests growing =
        new PlausibleTests(List.of(), day -> Load.ofKilograms(day.isBefore(DAY) ? 40 : 60));
    assertTrue(growing.share(held(BOTH, DAY.minusDays(1), 7, 100)) > 1);
    assertTrue(growing.share(held(BOTH, DAY, 7, 100)) < 1);
  }
}
