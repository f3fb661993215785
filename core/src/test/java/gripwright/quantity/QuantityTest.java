package gripwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class QuantityTest {

  /**
   * International yard and pound agreement of 1959: the inch is 25.4 mm, the pound 0.45359237 kg.
   */
  @Test
  void inchAndPoundAreExact() {
    assertEquals(25.4, Unit.INCH.toBase(1));
    assertEquals(0.45359237, Unit.POUND.toBase(1));
  }

  /** Standard acceleration of gravity, 9.80665 m/s^2: 3rd CGPM, 1901. */
  @Test
  void aKilogramOfLoadIsStandardGravityInNewtons() {
    assertEquals(9.80665, Load.ofKilograms(1).newtons());
  }

  @Test
  void massAndForceAreNeverTheSame() {
    assertNotEquals(Unit.KILOGRAM.dimension(), Unit.NEWTON.dimension());
    assertNotEquals(Dimension.LOAD_TIME, Dimension.IMPULSE);
  }

  @Test
  void unitsAreFoundByTheirWordAndNothingElse() {
    assertEquals(Optional.of(Unit.NEWTON), Unit.parse("N"));
    assertEquals(Optional.empty(), Unit.parse("n"));
    assertEquals(Optional.of(Unit.WEEK), Unit.parse("week"));
    assertEquals(Optional.empty(), Unit.parse(""), "the s of seconds has no singular");
    assertEquals(List.of(Unit.MILLIMETRE, Unit.CENTIMETRE, Unit.INCH), Unit.of(Dimension.LENGTH));
  }

  @Test
  void dimensionsMultiplyAndDivide() {
    assertEquals(Dimension.MASS, Dimension.LOAD_TIME.dividedBy(Dimension.TIME));
    assertEquals("load-time", Dimension.MASS.times(Dimension.TIME).toString());
    assertEquals("mm^2", Dimension.LENGTH.times(Dimension.LENGTH).toString());
  }

  @Test
  void includedAnglesAre180LessFlexion() {
    assertEquals(60, Angle.ofIncludedDegrees(120).degrees());
    assertEquals(120, Angle.ofDegrees(60).includedDegrees());
    assertThrows(IllegalArgumentException.class, () -> Angle.ofDegrees(Double.NaN));
  }

  @Test
  void numbersHaveNoExponentOrTrailingZeros() {
    assertEquals("81.25", Numbers.plain(81.25, 4));
    assertEquals("1000000", Numbers.plain(1e6, 2));
    assertEquals("0", Numbers.plain(-0.001, 2));
    assertEquals("0.3", Numbers.plain(0.1 + 0.2, 6));
    assertEquals("12 kg", Load.ofKilograms(12).toString());
    assertEquals("-8.5 kg", Load.ofKilograms(-8.5).toString());
  }

  @Test
  void equalLoadsAreEqualWhateverTheSignOfZero() {
    assertEquals(Load.ZERO, Load.ofKilograms(-0.0));
    assertTrue(Load.ofKilograms(2).compareTo(Load.ofKilograms(1)) > 0);
    assertThrows(IllegalArgumentException.class, () -> Load.ofKilograms(Double.POSITIVE_INFINITY));
    assertThrows(IllegalArgumentException.class, () -> Length.ofMillimetres(-1));
  }
}
