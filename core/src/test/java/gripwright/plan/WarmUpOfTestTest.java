package gripwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gripwright.grip.Setup;
import gripwright.grip.StandardGrips;
import gripwright.protocol.StandardProtocols;
import gripwright.quantity.Length;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is written before a planned test. */
class WarmUpOfTestTest {

  private static final Length EDGE = Length.ofMillimetres(20);
  private static final Exercise WORK =
      Exercise.of(StandardProtocols.MAX_HOLDS, StandardGrips.HALF_CRIMP, EDGE);

  private static PlannedTest.Builder test() {
    return PlannedTest.of(
            List.of(Setup.of(StandardGrips.HALF_CRIMP, EDGE)),
            new TestKind.Hold(Duration.ofSeconds(7)))
        .time(new TestTime.Every(4));
  }

  @Test
  void anExerciseIsAWarmUp() {
    PlannedTest test = test().exercise(WORK.asWarmUp()).build();
    assertEquals(List.of(WORK.asWarmUp()), test.exercises());
    assertFalse(test.isPlain());
    PlannedTest.Builder work = test().exercise(WORK);
    assertThrows(IllegalArgumentException.class, work::build);
  }

  @Test
  void aTextNeedsTheTimeOfTheWarmUp() {
    PlannedTest.Builder text = test().warmUpText(Optional.of("skip"));
    assertThrows(IllegalArgumentException.class, text::build);
    PlannedTest test = text.warmUp(Duration.ofMinutes(15)).build();
    assertEquals(Optional.of("skip"), test.warmUpText());
    assertEquals(test, test.toBuilder().build());
  }
}
