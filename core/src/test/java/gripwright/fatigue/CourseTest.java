package gripwright.fatigue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CourseTest {

  private static final FatigueRates RATES = FatigueRates.HAND_2012;

  @Test
  void freshFingersHaveAllTheirCapacity() {
    assertEquals(1, Course.of(RATES, List.of()).endReserve());
    assertEquals(1, Course.of(RATES, List.of(Bout.rest(60))).endReserve());
  }

  @Test
  void namesTheFirstHoldThatCannotBeCompleted() {
    Course course = Course.of(RATES, Drills.repeated(8, 7, 3, 0.8));
    assertEquals(OptionalInt.of(4), course.firstMissed());
    Course.Hold missed = course.holds().get(4);
    assertFalse(missed.completed());
    assertTrue(missed.carriedSeconds() > 0 && missed.carriedSeconds() < 7);
    assertTrue(course.holds().get(3).completed());
    assertTrue(missed.capacityLeft() < 0.8, "it goes on with what is left");
  }

  @Test
  void aLoadAboveTheMaximumIsNotCarriedAtAll() {
    Course course = Course.of(RATES, List.of(Bout.hold(5, 1.05)));
    assertEquals(0, course.holds().get(0).carriedSeconds());
  }

  @Test
  void aMaximumHeldForSevenSecondsCanBeHeldForSevenSeconds() {
    for (FatigueRates rates : FatigueRates.all()) {
      assertTrue(
          Course.of(rates, List.of(Bout.hold(7, rates.ofMvc(1)))).holds().get(0).completed());
      assertFalse(
          Course.of(rates, List.of(Bout.hold(7.1, rates.ofMvc(1)))).holds().get(0).completed());
    }
  }

  @Test
  void readsSchemesInTheOrderTheyHappen() {
    Scheme scheme =
        new Scheme(
            List.of(
                new Scheme.Repeat(
                    2,
                    Duration.ofMinutes(3),
                    List.of(
                        new Scheme.Repeat(
                            2,
                            Duration.ofSeconds(3),
                            List.of(new Scheme.Hold(Duration.ofSeconds(7), Level.ofMax(60))))))));
    List<Bout> bouts = Bout.of(scheme, level -> RATES.ofMvc(((Level.OfMax) level).fraction()));
    double load = 0.6 * RATES.greatestLoad(7);
    assertEquals(
        List.of(
            Bout.hold(7, load),
            Bout.rest(3),
            Bout.hold(7, load),
            Bout.rest(180),
            Bout.hold(7, load),
            Bout.rest(3),
            Bout.hold(7, load)),
        bouts);
    assertTrue(Course.of(RATES, bouts).holds().stream().allMatch(Course.Hold::completed));
  }

  @Test
  void certainOnlyWhereTheOptimisticEndFailsInTheRangeOfTheSet() {
    Optional<Forecast.Shortfall> certain =
        Forecast.of(RATES, Drills.repeated(2, 400, 60, 0.5)).shortfall();
    assertEquals(0, certain.orElseThrow().hold());
    assertTrue(certain.orElseThrow().certain());
    Forecast.Shortfall doubtful =
        Forecast.of(RATES, Drills.repeated(2, 120, 300, 0.5)).shortfall().orElseThrow();
    assertEquals(0, doubtful.hold());
    assertEquals(105.5, doubtful.seconds(), 0.5);
    assertFalse(doubtful.certain());
    assertEquals(
        Optional.empty(), Forecast.of(RATES, Drills.repeated(2, 60, 300, 0.5)).shortfall());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.61, 0.7, 0.9, 1, 1.2})
  void neverCertainAboveSixtyPercentWithASetThatIsNotFittedThere(double load) {
    for (FatigueRates rates : FatigueRates.all()) {
      if (rates.to() <= 0.6) {
        Forecast.Shortfall missed =
            Forecast.of(rates, Drills.repeated(40, 60, 3, load)).shortfall().orElseThrow();
        assertFalse(missed.certain());
      }
    }
  }

  @Test
  void aHeavierEarlierHoldMakesItUncertain() {
    List<Bout> bouts = new ArrayList<>(List.of(Bout.hold(5, 0.8), Bout.rest(180)));
    bouts.addAll(Drills.repeated(1, 400, 60, 0.5));
    assertFalse(Forecast.of(RATES, bouts).shortfall().orElseThrow().certain());
  }

  @Test
  void theSetIsChosenByTheHeaviestHold() {
    assertEquals(FatigueRates.HAND_2012, FatigueRates.forHeaviest(0.6));
    assertEquals(FatigueRates.FINGERS_INTENSE, FatigueRates.forHeaviest(0.61));
  }

  @Test
  void oneMuscleCanSimulateManySessions() {
    Muscle muscle = new Muscle(RATES);
    muscle.hold(0.5, 60);
    double first = muscle.reserve();
    muscle.rest(17);
    muscle.freshen();
    assertEquals(1, muscle.resting());
    muscle.hold(0.5, 60);
    assertEquals(first, muscle.reserve());
  }

  /**
   * After a maximal effort and a second of rest, capacity passes a load for a moment on the way up,
   * before the newly activated fibres fatigue. Both changes lie inside the hold.
   */
  @Test
  void aMomentOfCapacityWithinAHoldIsDetected() {
    Muscle whole = spentAndRested();
    Muscle parts = spentAndRested();
    double load = whole.capacity() + 1e-5;
    assertEquals(0, whole.hold(load, 1));
    boolean carried = false;
    for (int i = 0; i < 1000; i++) {
      carried |= parts.hold(load, 0.001) > 0;
    }
    assertTrue(carried, "capacity passes the load");
    assertTrue(parts.capacity() < load, "and falls below it again");
    assertEquals(parts.active(), whole.active(), 1e-11);
    assertEquals(parts.fatigued(), whole.fatigued(), 1e-11);
  }

  private static Muscle spentAndRested() {
    Muscle muscle = new Muscle(RATES);
    muscle.hold(1, 1000);
    muscle.rest(1);
    return muscle;
  }

  @Test
  void invalidValuesAreRefused() {
    Muscle muscle = new Muscle(RATES);
    assertThrows(IllegalArgumentException.class, () -> muscle.hold(0, 5));
    assertThrows(IllegalArgumentException.class, () -> muscle.hold(0.5, -1));
    assertThrows(IllegalArgumentException.class, () -> muscle.hold(Double.NaN, 5));
    assertThrows(IllegalArgumentException.class, () -> muscle.rest(Double.POSITIVE_INFINITY));
    assertThrows(IllegalArgumentException.class, () -> Bout.hold(5, -0.1));
    assertThrows(IllegalArgumentException.class, () -> RATES.withFatigue(0));
    assertThrows(IllegalArgumentException.class, () -> RATES.withRestMultiplier(0.5));
    assertThrows(IllegalArgumentException.class, () -> RATES.sustainableLoad(0));
    assertThrows(IllegalArgumentException.class, () -> RATES.greatestLoad(-1));
    assertThrows(IllegalArgumentException.class, () -> RATES.enduranceSeconds(0));
  }
}
