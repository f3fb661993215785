package gripwright.language.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.quantity.Unit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class SlotTest {

  /** A limit is no help as an example: nobody has a hand of 280 mm. */
  @ParameterizedTest
  @EnumSource
  void theExampleIsInsideTheLimits(Slot slot) {
    String example = slot.example();
    double number = Double.parseDouble(example.split(" ", -1)[0]);
    Unit unit = slot.unit();
    assertTrue(slot.allows(unit == null ? number : unit.toBase(number)), example);
    assertFalse(example.equals(slot.low()) || example.equals(slot.high()), example);
  }

  @ParameterizedTest
  @CsvSource({"HAND_LENGTH, 180 mm", "HAND_BREADTH, 80 mm", "EDGE, 20 mm", "HOLD, 10 s"})
  void theExampleIsUsual(Slot slot, String example) {
    assertEquals(example, slot.example());
  }
}
