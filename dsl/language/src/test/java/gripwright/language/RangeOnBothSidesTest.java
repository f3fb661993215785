package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import gripwright.quantity.Numbers;
import gripwright.quantity.Range;
import gripwright.quantity.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every range of the table, in Java and in text: text accepts what a constructor accepts, and what
 * a constructor refuses is a finding, at each bound and next to it.
 */
class RangeOnBothSidesTest {

  /** Bounds of more than one range meet here: a session has no more than 100 exercises. */
  private static final double GREATEST_EXERCISE = Range.EXERCISES.high();

  @TestFactory
  Stream<DynamicTest> javaAndTextAcceptAndRefuseTheSame() {
    return Arrays.stream(Range.values())
        .flatMap(
            range ->
                values(range).stream()
                    .map(
                        base ->
                            DynamicTest.dynamicTest(
                                range + " at " + range.bound(base), () -> compare(range, base))));
  }

  private static void compare(Range range, double base) {
    boolean possible = possible(range, base);
    for (RangedJava java : RangedJava.of(range)) {
      assertEquals(possible, accepts(range, java, base), "Java: " + java.what());
    }
    for (RangedText text : RangedText.of(range)) {
      if (text.canSay(base)) {
        String written = text.with(base);
        Reading reading = Gripwright.read("x.grip", written);
        assertEquals(possible, reading.usable(), () -> reading.findings() + " of\n" + written);
      }
    }
  }

  private static boolean possible(Range range, double base) {
    return range.contains(base) && !(range == Range.EXERCISE && base > GREATEST_EXERCISE);
  }

  private static boolean accepts(Range range, RangedJava java, double base) {
    try {
      java.build(base);
      return true;
    } catch (IllegalArgumentException refused) {
      String message = String.valueOf(refused.getMessage());
      boolean nothing = range.unit().isEmpty() && base == 0; // such as a plan without a block
      assertTrue(message.contains("is outside") || nothing, message);
      return false;
    }
  }

  /** Returns the bounds, their neighbours and the middle, as far as they can be written. */
  private static List<Double> values(Range range) {
    Unit unit = range.unit().orElse(null);
    double step = unit == null ? countStep(range) : unit.toBase(unit == Unit.WEEK ? 1 : 0.01);
    List<Double> values = new ArrayList<>();
    for (double near :
        new double[] {
          range.low() - step,
          range.low(),
          range.low() + step,
          (range.low() + range.high()) / 2,
          range.high() - step,
          range.high(),
          range.high() + step
        }) {
      double shown = unit == null ? near : unit.fromBase(near);
      boolean whole = unit == Unit.WEEK || (unit == null && countStep(range) == 1);
      double rounded = whole ? Math.floor(shown) : Double.parseDouble(Numbers.plain(shown, 4));
      values.add(unit == null ? rounded : unit.toBase(rounded));
    }
    return values;
  }

  private static double countStep(Range range) {
    return EnumSet.of(Range.EFFORT, Range.LEVEL_EFFORT, Range.PAIN, Range.CORRELATION)
            .contains(range)
        ? 0.1
        : 1;
  }

  @Test
  void everyRangeHasAConstructorAndAText() {
    Set<Range> withoutConstructor = EnumSet.noneOf(Range.class);
    Set<Range> withoutText = EnumSet.noneOf(Range.class);
    for (Range range : Range.values()) {
      if (RangedJava.of(range).isEmpty()) {
        withoutConstructor.add(range);
      }
      if (RangedText.of(range).isEmpty()) {
        withoutText.add(range);
      }
    }
    // A band is built from its two ends, however it was written.
    assertEquals(EnumSet.of(Range.ANGLE_WITHIN), withoutConstructor);
    assertEquals(EnumSet.noneOf(Range.class), withoutText);
  }

  @Test
  void nonFiniteNumbersAreRefusedEverywhere() {
    for (Range range : Range.values()) {
      for (double value :
          new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
        assertTrue(!range.contains(value), range::toString);
        for (RangedJava java : RangedJava.of(range)) {
          if (java.takesDoubles()) {
            refuses(java, value);
          }
        }
      }
    }
  }

  private static void refuses(RangedJava java, double value) {
    try {
      java.build(value);
    } catch (IllegalArgumentException refused) {
      return;
    }
    fail(java.what() + " takes " + value);
  }

  @Test
  void amountsThatRoundToZeroAreRefused() {
    for (String text :
        List.of(
            RangedText.plan("hold", "hold 0.0000000001 s at 60 % max"),
            RangedText.plan("block", "0.0000000001 weeks"),
            RangedText.plan("advance", "advance hold to 12 s by 0.0000000001 s weekly"),
            RangedText.plan("available", "0.000000000001 min"))) {
      Reading reading = Gripwright.read("x.grip", text);
      assertEquals(
          List.of("value.time"),
          reading.findings().stream().map(finding -> finding.code()).toList(),
          () -> text);
    }
  }
}
