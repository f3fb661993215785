package gripwright.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.grip.StandardGrips;
import gripwright.hand.Hands;
import gripwright.plan.Exercise;
import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.protocol.StandardProtocols;
import gripwright.quantity.Length;
import java.time.Duration;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Alternating hands: how long they take, and what they are made of. */
class HandsInTurnTest {

  private static final Duration BETWEEN = Duration.ofMinutes(3);

  private static Scheme scheme(int sets, long hold, long rest) {
    return new Scheme(
        List.of(
            new Scheme.Repeat(
                sets,
                Duration.ofSeconds(rest),
                List.of(new Scheme.Hold(Duration.ofSeconds(hold), Level.ofMax(70))))));
  }

  private static long seconds(Scheme scheme) {
    return HandsInTurn.time(List.of(scheme), List.of(scheme), BETWEEN).toSeconds();
  }

  @Test
  void oneHandWorksInTheRestOfTheOther() {
    assertEquals(3 * 10 + 2 * 120 + 10, seconds(scheme(3, 10, 120)), "right ends 10 s later");
    assertEquals(2 * 3 * 10, seconds(scheme(3, 10, 10)), "no rest is left over");
    assertEquals(2 * 3 * 10, seconds(scheme(3, 10, 0)), "the other's set is longer than the rest");
    assertEquals(2 * 10, seconds(scheme(1, 10, 120)));
  }

  @Property
  void neitherHandRestsLessThanWritten(
      @ForAll @IntRange(min = 1, max = 30) int sets,
      @ForAll @IntRange(min = 1, max = 60) int hold,
      @ForAll @IntRange(min = 0, max = 300) int rest) {
    Scheme scheme = scheme(sets, hold, rest);
    long time = seconds(scheme);
    assertTrue(time >= scheme.duration().toSeconds() + hold, "left alone, and a set of the right");
    assertTrue(time >= 2L * sets * hold, "never both at once");
    assertEquals(Math.max(scheme.duration().toSeconds() + hold, 2L * sets * hold), time);
  }

  @Test
  void alternatingHandsAreTwoExercises() {
    Exercise line =
        Exercise.of(StandardProtocols.MAX_HOLDS, StandardGrips.HALF_CRIMP, Length.ofMillimetres(20))
            .alternatingHands();
    assertTrue(line.alternating());
    assertEquals(
        List.of(Hands.LEFT, Hands.RIGHT), line.sides().stream().map(Exercise::hands).toList());
    assertEquals(line, line.toBuilder().build());
    assertFalse(line.toBuilder().alternating(false).build().alternating());
    Exercise.Builder one = line.toBuilder().hands(Hands.LEFT);
    assertThrows(IllegalArgumentException.class, one::build);
  }
}
