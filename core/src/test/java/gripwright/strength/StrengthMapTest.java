package gripwright.strength;

import static gripwright.strength.Trials.DAY;
import static gripwright.strength.Trials.grip;
import static gripwright.strength.Trials.held;
import static gripwright.strength.Trials.map;
import static gripwright.strength.Trials.on;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.grip.FingerLoss;
import gripwright.grip.FingerSet;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.strength.StrengthMap.Estimate;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StrengthMapTest {

  private static final Grip FOUR = grip(0b1111, 90);

  private static Estimate estimate(Setup setup, StrengthTest... tests) {
    return map(tests).maximum(setup).orElseThrow();
  }

  private static double best(Setup setup, StrengthTest... tests) {
    return estimate(setup, tests).load().best().kilograms();
  }

  @Test
  void aSevenSecondTestIsItsOwnBestEstimate() {
    Estimate estimate = estimate(on(FOUR, 20), held(on(FOUR, 20), 7, 80, DAY));
    assertEquals(80, estimate.load().best().kilograms(), 1e-9);
    assertTrue(estimate.tested());
    assertEquals(
        80 * Math.exp(-0.8416212335729143 * 0.028), estimate.load().low().kilograms(), 1e-9);
  }

  @Test
  void aLongerHoldImpliesAGreaterMaximum() {
    assertTrue(best(on(FOUR, 20), held(on(FOUR, 20), 15, 80, DAY)) > 80);
  }

  @Test
  void oldTestsAndOtherSetupsWidenTheInterval() {
    StrengthTest fresh = held(on(FOUR, 20), 7, 80, DAY);
    double now = estimate(on(FOUR, 20), fresh).load().spread();
    double old =
        estimate(on(FOUR, 20), held(on(FOUR, 20), 7, 80, DAY.minusMonths(12))).load().spread();
    double otherEdge = estimate(on(FOUR, 14), fresh).load().spread();
    double otherPosture = estimate(on(grip(0b1111, 30), 20), fresh).load().spread();
    assertTrue(now < old && now < otherEdge && otherEdge < otherPosture);
    assertFalse(estimate(on(FOUR, 14), fresh).tested());
  }

  @Test
  void aTestCountsLessForLessSimilarSetups() {
    StrengthTest fresh = held(on(FOUR, 20), 7, 80, DAY);
    double last = 0;
    for (Setup setup :
        List.of(
            on(FOUR, 20),
            on(grip(0b0111, 90), 20),
            on(grip(0b0011, 90), 20),
            on(grip(0b0001, 90), 20))) {
      double spread = estimate(setup, fresh).load().spread();
      assertTrue(spread > last, setup + ": " + spread);
      last = spread;
    }
  }

  @Test
  void aSecondTestNarrowsTheIntervalAndOfTwoTheNewerCountsForMore() {
    StrengthTest one = held(on(FOUR, 20), 7, 80, DAY);
    StrengthTest two = held(on(FOUR, 20), 7, 90, DAY.minusDays(200));
    Estimate both = estimate(on(FOUR, 20), two, one);
    assertTrue(both.load().spread() < estimate(on(FOUR, 20), one).load().spread());
    assertTrue(both.load().best().kilograms() < Math.sqrt(80 * 90));
    assertEquals(one, both.basis().get(0).test());
  }

  @Test
  void testsOfOneAgeShareTheUnknownChangeSince() {
    List<StrengthTest> old = new ArrayList<>();
    for (int i = 0; i < 50; i++) {
      old.add(held(on(FOUR, 20), 7, 80, DAY.minusDays(365)));
    }
    double drift = StrengthMap.DRIFT_PER_ROOT_MONTH * Math.sqrt(12);
    double spread = map(old).maximum(on(FOUR, 20)).orElseThrow().load().spread();
    assertTrue(spread > 0.99 * drift, "a year is not measured away: " + spread);
  }

  @Test
  void anUntestedGripInTheSamePostureStartsLighter() {
    Setup twin =
        on(Grip.named("twin-15-90").family(FOUR.family()).fingers(FOUR.fingers()).build(), 20);
    StrengthTest test = held(on(FOUR, 20), 7, 80, DAY);
    assertEquals(80, best(twin, test), 1e-9);
    double tested = estimate(on(FOUR, 20), test).load().low().kilograms();
    assertTrue(estimate(twin, test).load().low().kilograms() < 0.96 * tested);
  }

  @Test
  void aStrongOtherGripCountsForThisOneToo() {
    Setup three = on(grip(0b0111, 90), 20);
    Setup two = on(grip(0b0011, 90), 20);
    StrengthTest four = held(on(FOUR, 20), 7, 80, DAY);
    double expected = best(three, four);
    assertTrue(best(two, four, held(three, 7, 1.1 * expected, DAY)) > best(two, four));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14})
  void aFingerLessNeverMeansMore(int bits) {
    StrengthTest test = held(on(FOUR, 20), 7, 80, DAY);
    double some = best(on(grip(bits, 90), 20), test);
    double share = 0;
    for (int finger = 0; finger < 4; finger++) {
      share += (bits & 1 << finger) == 0 ? 0 : new double[] {0.25, 0.35, 0.25, 0.14}[finger];
      int less = bits & ~(1 << finger);
      if (less != 0 && less != bits) {
        assertTrue(best(on(grip(less, 90), 20), test) < some);
      }
    }
    assertTrue(some < 80 * share / 0.99, "a finger's loss costs more than its share");
  }

  /** Both published views lie one spread from the mean between them. */
  @ParameterizedTest
  @ValueSource(ints = {0b0001, 0b0011, 0b0111, 0b1110})
  void theViewsOfLostFingersLieOneSpreadAway(int bits) {
    Place place = Place.of(on(grip(bits, 90), 20), Trials::posture);
    for (FingerLoss view : List.of(FingerLoss.EXCLUSION, FingerLoss.FORCE_DEFICIT)) {
      double off = Math.log(view.capacity(new FingerSet(bits))) - place.expected();
      assertEquals(Math.abs(place.lossDoubt()), Math.abs(off), 1e-12);
    }
  }

  /**
   * However strong other fingers are, an untested single finger is prescribed from less than the
   * second lowest of the views.
   */
  @ParameterizedTest
  @ValueSource(ints = {0b0001, 0b0010, 0b0100, 0b1000})
  void noSingleFingerIsPrescribedFromAHigherViewBeforeItsTest(int bits) {
    List<StrengthTest> strong = new ArrayList<>();
    strong.add(held(on(FOUR, 20), 7, 80, DAY));
    for (int some = 1; some < 15; some++) {
      if (some != bits) {
        double load = 80 * FingerLoss.FORCE_DEFICIT.capacity(new FingerSet(some));
        strong.add(held(on(grip(some, 90), 20), 7, load, DAY));
      }
    }
    Setup single = on(grip(bits, 90), 20);
    double four = map(strong).maximum(on(FOUR, 20)).orElseThrow().load().best().kilograms();
    LoadEstimate before = map(strong).maximum(single).orElseThrow().load();
    double higher = four * FingerLoss.GRIP_WEIGHTS.capacity(new FingerSet(bits));
    assertTrue(before.low().kilograms() < 0.5 * higher, before + ", the view is " + higher);
    strong.add(held(single, 7, higher, DAY));
    double tested = map(strong).maximum(single).orElseThrow().load().low().kilograms();
    assertTrue(tested > 0.9 * higher, "it follows its own test: " + tested);
  }

  /** By hand: one test on 20 mm, an edge of another depth in the same grip. */
  @ParameterizedTest
  @ValueSource(doubles = {5, 6, 8, 10, 15})
  void anEdgeBelowTenMillimetresHasASpreadOfItsOwn(double edge) {
    double depth = Math.log(edge / 20);
    double shallow = edge < 10 ? 0.25 * Math.log(10 / edge) : 0;
    double variance =
        0.028 * 0.028
            + 2 * 0.15 * 0.15 * (1 - Math.exp(-depth * depth / 2))
            + 0.08 * 0.08 * depth * depth
            + shallow * shallow;
    LoadEstimate load = estimate(on(FOUR, edge), held(on(FOUR, 20), 7, 80, DAY)).load();
    assertEquals(Math.sqrt(variance), load.spread(), 0.001);
  }

  @Test
  void oneHandAndLiftingHaveSeparateMaps() {
    StrengthMap map = map(held(on(FOUR, 20), 7, 80, DAY));
    assertEquals(Optional.empty(), map.maximum(on(FOUR, 20).withHands(Hands.LEFT)));
    assertEquals(
        Optional.empty(), map.maximum(new Setup(FOUR, Length.ofMillimetres(20), Hands.BOTH, true)));
    StrengthMap left = map(held(on(FOUR, 20).withHands(Hands.LEFT), 7, 40, DAY));
    assertEquals(Optional.empty(), left.curve(on(FOUR, 20).withHands(Hands.RIGHT)));
  }

  @Test
  void veryShallowEdgesAreNotEstimatedFromOthers() {
    StrengthMap map = map(held(on(FOUR, 20), 7, 80, DAY), held(on(FOUR, 4), 7, 30, DAY));
    assertEquals(Optional.empty(), map.maximum(on(FOUR, 4.3)));
    assertEquals(30, map.maximum(on(FOUR, 4)).orElseThrow().load().best().kilograms(), 1e-9);
    assertEquals(80, map.maximum(on(FOUR, 20)).orElseThrow().load().best().kilograms(), 1e-9);
    assertTrue(map.maximum(on(FOUR, 6)).isPresent());
  }

  @Test
  void aFutureOrVeryShortTestIsIgnored() {
    assertEquals(
        Optional.empty(), map(held(on(FOUR, 20), 7, 80, DAY.plusDays(1))).maximum(on(FOUR, 20)));
    assertEquals(Optional.empty(), map(held(on(FOUR, 20), 1, 80, DAY)).maximum(on(FOUR, 20)));
  }

  @Test
  void ofASeriesTheBestMeanCounts() {
    StrengthTest series =
        new StrengthTest(
            DAY,
            on(FOUR, 20),
            new StrengthTest.Series(
                Duration.ofSeconds(7),
                Duration.ofSeconds(3),
                List.of(Load.ofKilograms(70), Load.ofKilograms(80), Load.ofKilograms(60))));
    assertEquals(80, best(on(FOUR, 20), series), 1e-9);
  }

  @Test
  void holdsOfTwoTimesDetermineThisAthletesFade() {
    StrengthTest maximal = held(on(FOUR, 20), 7, 80, DAY);
    double known = 60 / (80 * EnduranceLaw.ROHMERT.share(45) / EnduranceLaw.ROHMERT.share(7));
    assertTrue(known > 1.1, "fades less than most");
    StrengthMap map = map(maximal, held(on(FOUR, 20), 45, 60, DAY));
    Setup other = on(grip(0b1111, 30), 15);
    double reserve = ratio(map, other) / ratio(map(maximal), other);
    assertTrue(reserve > 1.1, "and so on other grips: " + reserve);
  }

  private static double ratio(StrengthMap map, Setup setup) {
    ForceTime curve = map.curve(setup).orElseThrow();
    return curve.load(60).best().kilograms() / curve.load(7).best().kilograms();
  }

  @Test
  void ofVeryManyTestsTheNewestCount() {
    List<StrengthTest> tests = new ArrayList<>();
    for (int i = 0; i <= StrengthMap.MOST_TESTS; i++) {
      tests.add(held(on(FOUR, 20), 7, 80, DAY.minusDays(i)));
    }
    assertEquals(
        StrengthMap.MOST_TESTS, map(tests).maximum(on(FOUR, 20)).orElseThrow().basis().size());
  }
}
