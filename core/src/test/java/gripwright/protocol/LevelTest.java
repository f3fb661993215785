package gripwright.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gripwright.quantity.Load;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Levels of holds, and values that can't be levels. */
class LevelTest {

  @Test
  void levelsAreWrittenAsInAPlan() {
    assertEquals("62.5 % max", Level.ofMax(62.5).toString());
    assertEquals("62.5 kg", Level.total(Load.ofKilograms(62.5)).toString());
    assertEquals("body-mass", Level.bodyMass().toString());
    assertEquals("body-mass + 5 kg", Level.bodyMassPlus(Load.ofKilograms(5)).toString());
    assertEquals("body-mass - 5 kg", Level.bodyMassPlus(Load.ofKilograms(-5)).toString());
    assertEquals("reserve 2.5 s", Level.reserve(Duration.ofMillis(2500)).toString());
    assertEquals("effort 7.5", Level.effort(7.5).toString());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.1, 1.001, Double.NaN})
  void aShareOfTheMaximumLiesAboveNothingAndUpToAll(double fraction) {
    assertThrows(IllegalArgumentException.class, () -> new Level.OfMax(fraction));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, 100.1, Double.NaN})
  void aPercentageOfTheMaximumLiesAboveNothingAndUpToAll(double percent) {
    assertThrows(IllegalArgumentException.class, () -> Level.ofMax(percent));
  }

  @Test
  void aFractionInPlaceOfAPercentageIsRefused() {
    assertEquals(
        "0.8 % of the maximum: write 80 for 80 %",
        assertThrows(IllegalArgumentException.class, () -> Level.ofMax(0.8)).getMessage());
    assertEquals(
        "1 % of the maximum: write 100 for 100 %",
        assertThrows(IllegalArgumentException.class, () -> Level.ofMax(1)).getMessage());
    assertEquals("1.5 % max", Level.ofMax(1.5).toString());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, 10.1, Double.NaN})
  void anEffortLiesAboveNothingAndUpToTen(double effort) {
    assertThrows(IllegalArgumentException.class, () -> Level.effort(effort));
  }

  @Test
  void theEndsOfTheRangesAreValid() {
    assertEquals(1, new Level.OfMax(1).fraction());
    assertEquals(10, new Level.Effort(10).outOfTen());
    assertEquals(Duration.ZERO, new Level.Reserve(Duration.ZERO).time());
    assertThrows(IllegalArgumentException.class, () -> Level.reserve(Duration.ofMillis(-1)));
    assertThrows(IllegalArgumentException.class, () -> Level.total(Load.ZERO));
  }
}
