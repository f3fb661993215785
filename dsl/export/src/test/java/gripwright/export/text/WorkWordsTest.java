package gripwright.export.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.export.words.Words;
import gripwright.protocol.Extent;
import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.wording.Wording;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

final class WorkWordsTest {

  private static final Level HALF = Level.ofMax(50);

  private static Scheme.Hold hold(int seconds) {
    return hold(seconds, Extent.WHOLE);
  }

  private static Scheme.Hold hold(int seconds, Extent extent) {
    return new Scheme.Hold(Duration.ofSeconds(seconds), HALF, extent);
  }

  private static Scheme.Rest rest() {
    return new Scheme.Rest(Duration.ofMinutes(1));
  }

  private static Scheme.Repeat repeat(int times, Scheme.Step... steps) {
    return new Scheme.Repeat(times, Duration.ofMinutes(2), List.of(steps));
  }

  private static Scheme.Repeat upTo(int times, Scheme.Step... steps) {
    return new Scheme.Repeat(times, Duration.ofMinutes(2), List.of(steps), true);
  }

  private static String words(Scheme.Step... steps) {
    return new WorkWords(new Words(Wording.english())).of(new Scheme(List.of(steps)));
  }

  @Test
  void setsOfOneStructureAreNumbers() {
    assertEquals("1 x 10 s", words(hold(10)));
    assertEquals("1 x 2 x 5-10 s", words(hold(5), rest(), hold(10)));
    assertEquals("5 x 10 s", words(repeat(5, hold(10))));
    assertEquals("4 x 6 x 7 s", words(repeat(4, repeat(6, hold(7)))));
    assertEquals("3 x 2 x 5-10 s", words(repeat(3, hold(10), rest(), hold(5))));
  }

  @Test
  void boundsAreUpTo() {
    assertEquals("up to 5 x up to 20 s", words(upTo(5, hold(20, Extent.UP_TO))));
    assertEquals("up to 5 x 20 s", words(upTo(5, hold(20))));
    assertEquals("4 x up to 6 x 7 s", words(repeat(4, upTo(6, hold(7)))));
    assertEquals("1 x to failure (up to 90 s)", words(hold(90, Extent.TO_FAILURE)));
  }

  @Test
  void otherStructuresKeepTheirSteps() {
    assertEquals(
        "2 holds of 7-10 s then 4 x 3 x 7 s",
        words(hold(10), rest(), hold(7), rest(), repeat(4, repeat(3, hold(7)))));
    assertEquals(
        "1 hold to failure (up to 90 s) then 1 hold of 10 s",
        words(hold(90, Extent.TO_FAILURE), rest(), hold(10)));
    assertEquals(
        "4 x (1 hold of 10 s then up to 3 x 7 s)", words(repeat(4, hold(10), upTo(3, hold(7)))));
    assertEquals("2 x 3 x (2 holds of 5 s)", words(repeat(2, repeat(3, hold(5), rest(), hold(5)))));
    assertEquals("2 x 3 x 4 x 5 s", words(repeat(2, repeat(3, repeat(4, hold(5))))));
  }
}
