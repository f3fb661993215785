package gripwright.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class ForceTimeProperties {

  @Property
  void theInverseFindsTheTimeAgain(@ForAll @DoubleRange(min = 6.01, max = 600) double seconds) {
    assertEquals(seconds, ForceTime.enduranceSeconds(ForceTime.share(seconds)), 1e-6 * seconds);
  }

  @Property
  void longerHoldsNeverAllowMore(
      @ForAll @DoubleRange(min = 2, max = 600) double one,
      @ForAll @DoubleRange(min = 2, max = 600) double other) {
    assertTrue(
        ForceTime.ofReference(Math.max(one, other)) <= ForceTime.ofReference(Math.min(one, other)));
  }

  @Example
  void theReferenceIsSevenSeconds() {
    assertEquals(1, ForceTime.ofReference(7), 1e-12);
    assertEquals(7, ForceTime.secondsAt(1), 1e-9);
  }

  @Example
  void outsideTheRangeNothingIsExtrapolated() {
    assertThrows(IllegalArgumentException.class, () -> ForceTime.share(1.9));
    assertThrows(IllegalArgumentException.class, () -> ForceTime.share(601));
    assertEquals(0, ForceTime.secondsAt(1.2), "above maximal force nothing is held");
    assertEquals(Double.POSITIVE_INFINITY, ForceTime.secondsAt(0.1));
  }
}
