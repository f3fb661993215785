package gripwright.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.grip.FingerSet;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StrengthModelTest {

  private static final LocalDate DAY = LocalDate.of(2027, 3, 1);
  private static final Grip FOUR = grip(0b1111);

  private static Grip grip(int bits) {
    FingerSet fingers = new FingerSet(bits);
    GripFamily family =
        fingers.count() == 4
            ? GripFamily.FOUR
            : fingers.count() == 1 ? GripFamily.SINGLE : GripFamily.SPLIT;
    return Grip.named("grip-" + bits).family(family).fingers(fingers).build();
  }

  private static Setup on(Grip grip, double edge) {
    return Setup.of(grip, Length.ofMillimetres(edge));
  }

  private static StrengthTest held(Setup setup, double seconds, double kilograms, LocalDate day) {
    return new StrengthTest(
        day,
        setup,
        new StrengthTest.Held(
            Duration.ofMillis(Math.round(seconds * 1000)), Load.ofKilograms(kilograms)));
  }

  private static StrengthModel.Estimate estimate(Setup setup, StrengthTest... tests) {
    return StrengthModel.of(List.of(tests)).maximum(setup, DAY).orElseThrow();
  }

  @Test
  void aSevenSecondTestIsItsOwnBestEstimate() {
    StrengthModel.Estimate estimate = estimate(on(FOUR, 20), held(on(FOUR, 20), 7, 80, DAY));
    assertEquals(80, estimate.mean().kilograms(), 1e-9);
    assertTrue(estimate.tested());
    assertEquals(80 * Math.exp(-0.8416212335729143 * 0.056), estimate.low().kilograms(), 1e-9);
  }

  @Test
  void aLongerHoldTellsOfAGreaterMaximum() {
    assertTrue(estimate(on(FOUR, 20), held(on(FOUR, 20), 15, 80, DAY)).mean().kilograms() > 80);
  }

  @Test
  void oldTestsAndOtherSetupsWidenTheInterval() {
    StrengthTest fresh = held(on(FOUR, 20), 7, 80, DAY);
    double now = width(estimate(on(FOUR, 20), fresh));
    double old = width(estimate(on(FOUR, 20), held(on(FOUR, 20), 7, 80, DAY.minusMonths(12))));
    double otherEdge = width(estimate(on(FOUR, 14), fresh));
    double otherGrip = width(estimate(on(grip(0b0111), 20), fresh));
    assertTrue(now < old && now < otherEdge && otherEdge < otherGrip);
  }

  private static double width(StrengthModel.Estimate estimate) {
    return Math.log(estimate.high().kilograms() / estimate.low().kilograms());
  }

  @Test
  void aSecondTestNarrowsTheInterval() {
    StrengthTest one = held(on(FOUR, 20), 7, 80, DAY);
    StrengthTest two = held(on(FOUR, 20), 7, 82, DAY.minusDays(3));
    assertTrue(width(estimate(on(FOUR, 20), one, two)) < width(estimate(on(FOUR, 20), one)));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14})
  void aFingerLessNeverMeansMore(int bits) {
    StrengthTest test = held(on(FOUR, 20), 7, 80, DAY);
    double all = 80;
    double some = estimate(on(grip(bits), 20), test).mean().kilograms();
    assertTrue(some < all);
    for (int finger = 0; finger < 4; finger++) {
      int less = bits & ~(1 << finger);
      if (less != 0 && less != bits) {
        assertTrue(estimate(on(grip(less), 20), test).mean().kilograms() < some);
      }
    }
  }

  @Test
  void oneHandAndLiftingHaveMaximaOfTheirOwn() {
    StrengthModel model = StrengthModel.of(List.of(held(on(FOUR, 20), 7, 80, DAY)));
    assertEquals(Optional.empty(), model.maximum(on(FOUR, 20).withHands(Hands.LEFT), DAY));
    assertEquals(
        Optional.empty(),
        model.maximum(new Setup(FOUR, Length.ofMillimetres(20), Hands.BOTH, true), DAY));
  }

  @Test
  void veryShallowEdgesAreNotReckonedFromDeepOnes() {
    StrengthModel model = StrengthModel.of(List.of(held(on(FOUR, 20), 7, 80, DAY)));
    assertEquals(Optional.empty(), model.maximum(on(FOUR, 4.3), DAY));
    assertTrue(model.maximum(on(FOUR, 6), DAY).isPresent());
  }

  @Test
  void aTestOfTomorrowIsNotKnownToday() {
    StrengthModel model = StrengthModel.of(List.of(held(on(FOUR, 20), 7, 80, DAY.plusDays(1))));
    assertEquals(Optional.empty(), model.maximum(on(FOUR, 20), DAY));
  }

  @Test
  void anEstimateOfAnotherSetupSaysSo() {
    assertFalse(estimate(on(FOUR, 14), held(on(FOUR, 20), 7, 80, DAY)).tested());
  }
}
