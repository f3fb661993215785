package gripwright.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.finding.Finding;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.log.LogEntry;
import gripwright.log.LogEntry.Pain.Kind;
import gripwright.wording.Wording;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What a stop because of pain covers, and which next steps wait for its end. */
final class PainStopsTest {

  private static final LocalDate DAY = Logs.MONDAY.plusDays(20);
  private static final Setup CRIMP = Logs.setup("half-crimp");
  private static final LogEntry RING = Logs.pain(19, 6, Kind.DULL);

  private static Finding step(Review review, String code) {
    return review.next().stream().filter(s -> s.code().equals(code)).findFirst().orElseThrow();
  }

  @Test
  void painOfAFingerStopsEveryGripThatUsesIt() {
    Review review = Logs.review(DAY, RING, Logs.trained(10, "three-finger-drag", 6, 0));
    PainCourse drag =
        review.pain().stream()
            .filter(course -> course.place() instanceof PainCourse.InGrip)
            .findFirst()
            .orElseThrow();
    assertEquals(PainCourse.Rule.GO_ON, drag.rule(), "by its own scores");
    assertEquals("ring a2 left", review.stops().of(drag.place()).orElseThrow().toString());
    assertEquals(List.of("three-finger-drag"), review.stoppedGrips());
    assertTrue(review.stops().of(Logs.setup("front-two")).isEmpty(), "index and middle");
  }

  @Test
  void painInOtherHandDoesNotStopThisHand() {
    PainStops stops = Logs.review(DAY, RING).stops();
    assertTrue(stops.of(CRIMP.withHands(Hands.LEFT)).isPresent());
    assertTrue(stops.of(CRIMP).isPresent(), "both hands hang together");
    assertFalse(stops.of(CRIMP.withHands(Hands.RIGHT)).isPresent());
  }

  @Test
  void nothingIsStoppedByMildPain() {
    Review review =
        Logs.review(DAY, Logs.pain(19, 2, Kind.DULL), Logs.trained(10, "half-crimp", 6, 0));
    assertTrue(review.stops().isEmpty());
    assertEquals(List.of(), review.stoppedGrips());
  }

  @Test
  void aStopNamesTheFingerWhoseScoresEndIt() {
    String sentence = Wording.english().sentence(step(Logs.review(DAY, RING), "review.stop"));
    assertTrue(sentence.contains("pain of the left ring finger was 2 or less"), sentence);
    assertTrue(sentence.contains("`pain ring left 1`"), sentence);
  }

  @Test
  void aGripThatHurtStopsItsOtherFingersToo() {
    Review review = Logs.review(DAY, RING, Logs.trained(18, "half-crimp", 6, 6));
    String sentence = Wording.english().sentence(step(review, "review.stop"));
    assertTrue(sentence.contains("another finger of half-crimp"), sentence);
    assertTrue(review.stops().of(Logs.setup("front-two")).isPresent());
  }

  @Test
  void testsAndLoadsWaitForTheEndOfAStop() {
    LogEntry[] tests = {
      Logs.test(0, CRIMP, 80), Logs.test(8, CRIMP, 118), Logs.test(16, CRIMP, 82)
    };
    Finding odd = step(Logs.review(DAY, tests[0], tests[1], tests[2]), "review.odd-test");
    assertFalse(odd.arguments().containsKey("stopped"));
    odd = step(Logs.review(DAY, tests[0], tests[1], tests[2], RING), "review.odd-test");
    assertTrue(Wording.english().sentence(odd).contains("only when the stop"), odd.toString());

    Finding retest =
        step(Logs.review(DAY, Logs.trained(10, "half-crimp", 6, 0), RING), "review.first-test");
    assertTrue(Wording.english().sentence(retest).startsWith("when the stop"), retest.toString());
  }

  @Test
  void testsWaitWhilePainKeepsAGripTheSameOrLighter() {
    LogEntry sore = Logs.pain(19, 5, Kind.DULL);
    LogEntry[] tests = {
      Logs.test(0, CRIMP, 80), Logs.test(8, CRIMP, 118), Logs.test(16, CRIMP, 82)
    };
    Finding odd = step(Logs.review(DAY, tests[0], tests[1], tests[2], sore), "review.odd-test");
    assertWaits(odd);
    Finding low =
        step(
            Logs.review(DAY, tests[0], tests[2], Logs.test(17, CRIMP, 45), sore),
            "review.odd-test");
    assertWaits(low);
    assertWaits(
        step(Logs.review(DAY, Logs.test(0, CRIMP, 80), Logs.test(16, CRIMP, 70), sore), FALL));
    assertWaits(
        step(Logs.review(DAY, Logs.trained(10, "half-crimp", 6, 0), sore), "review.first-test"));
    assertWaits(step(Logs.review(DAY, Logs.test(-60, CRIMP, 80), sore), "review.retest"));
  }

  private static final String FALL = "review.weaker";

  private static void assertWaits(Finding step) {
    String sentence = Wording.english().sentence(step);
    assertTrue(sentence.contains("after two sessions with pain of 2 or less"), sentence);
    assertFalse(sentence.contains("test half-crimp edge 20 mm again:"), sentence);
  }

  @Test
  void aGripThatHurtIsNamedWithItsFingerThatIsKeptTheSame() {
    Review review =
        Logs.review(DAY, Logs.trained(18, "half-crimp", 6, 4), Logs.pain(19, 5, Kind.DULL));
    String sentence = Wording.english().sentence(step(review, "review.hold"));
    assertTrue(
        sentence.startsWith(
            "keep every grip that uses the left ring finger or another finger of half-crimp"),
        sentence);
    assertEquals(1, review.next().stream().filter(s -> s.code().equals("review.hold")).count());
  }

  private static LogEntry tooMuch(int day, double kilograms, int sets, double effort) {
    LogEntry.Trained trained = Logs.trained(day, "half-crimp", effort, 0);
    LogEntry.Done done = trained.done().get(0);
    return new LogEntry.Trained(
        trained.date(),
        trained.session(),
        List.of(
            done.toBuilder()
                .sets(OptionalInt.of(sets))
                .load(Optional.of(gripwright.quantity.Load.ofKilograms(kilograms)))
                .effort(OptionalDouble.of(effort))
                .build()),
        Optional.empty());
  }

  @Test
  void anExerciseThatWasTooMuchGoesBackToTheLastLowerLoadDoneInFull() {
    LogEntry[] lines = {
      tooMuch(2, 55, 4, 7), tooMuch(5, 58, 4, 8), tooMuch(9, 62, 2, 9), tooMuch(12, 60, 3, 9)
    };
    String sentence = Wording.english().sentence(step(Logs.review(DAY, lines), "review.lighter"));
    assertTrue(
        sentence.endsWith("go back to 58 kg, which was done in full on 2027-02-06"), sentence);
    String without =
        Wording.english().sentence(step(Logs.review(DAY, lines[2], lines[3]), "review.lighter"));
    assertTrue(without.contains("plan a set less"), without);
    String stopped =
        Wording.english()
            .sentence(
                step(
                    Logs.review(DAY, lines[0], lines[1], lines[2], lines[3], RING),
                    "review.lighter"));
    assertTrue(stopped.startsWith("when the stop because of pain has ended"), stopped);
    assertTrue(stopped.contains("60 % of the maximum or less"), stopped);
  }

  @Test
  void loadsFarFromWhatIsLikelyAreReportedOncePerExercise() {
    Review review =
        Logs.review(DAY, tooMuch(2, 200, 4, 7), tooMuch(5, 230, 4, 7), tooMuch(9, 210, 4, 7));
    List<Finding> far =
        review.findings().stream().filter(f -> f.code().equals("log.load-far")).toList();
    assertEquals(1, far.size(), far.toString());
    assertEquals("log signe / entry 2", far.get(0).place().toString(), "the worst line");
    String sentence = Wording.english().sentence(far.get(0));
    assertTrue(sentence.startsWith("3 logged loads"), sentence);
    assertTrue(sentence.contains("230 kg on 2027-02-06"), sentence);
  }
}
