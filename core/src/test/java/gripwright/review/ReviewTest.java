package gripwright.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.log.LogEntry;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class ReviewTest {

  private static final LocalDate DAY = Logs.MONDAY.plusDays(27);
  private static final Setup CRIMP = Logs.setup("half-crimp");

  @Test
  void aTypingMistakeIsMarkedAndLeftOut() {
    Review review =
        Logs.review(
            DAY, Logs.test(0, CRIMP, 80), Logs.test(13, CRIMP, 118), Logs.test(26, CRIMP, 82));
    Progress progress = review.progress().get(0);
    assertEquals(
        List.of(false, true, false),
        progress.points().stream().map(p -> p.odd().isPresent()).toList());
    assertEquals(2, progress.sinceFirst().orElseThrow().change(), 1e-9);
    assertEquals("log.test-outlier", review.findings().get(0).code());
    assertEquals("log signe / entry 2", review.findings().get(0).place().toString());
    assertEquals("review.odd-test", review.next().get(0).code());
  }

  @Test
  void ofTwoThatContradictEachOtherTheLaterIsMarked() {
    Review review = Logs.review(DAY, Logs.test(0, CRIMP, 80), Logs.test(13, CRIMP, 120));
    assertEquals(
        List.of(false, true),
        review.progress().get(0).points().stream().map(p -> p.odd().isPresent()).toList());
  }

  @Test
  void changeIsDistinguishedFromNoise() {
    Progress.Change within = change(80, 86);
    assertEquals(Progress.Verdict.WITHIN_NOISE, within.verdict());
    assertEquals(2.7719 * 0.028 * 83, within.detectable(), 0.01);
    assertEquals(Progress.Verdict.HIGHER, change(80, 87).verdict());
    assertEquals(Progress.Verdict.LOWER, change(87, 80).verdict());
  }

  private static Progress.Change change(double from, double to) {
    return Logs.review(DAY, Logs.test(0, CRIMP, from), Logs.test(20, CRIMP, to))
        .progress()
        .get(0)
        .sinceLast()
        .orElseThrow();
  }

  @Test
  void threeTestsHaveATrend() {
    Review review =
        Logs.review(
            DAY, Logs.test(0, CRIMP, 80), Logs.test(10, CRIMP, 81), Logs.test(20, CRIMP, 82));
    assertEquals(3.04375, review.progress().get(0).trend().orElseThrow(), 1e-6);
  }

  @Test
  void handsAreComparedOnlyIfBothWereTestedRecently() {
    LogEntry left = Logs.test(0, CRIMP.withHands(Hands.LEFT), 40);
    SideDifference noise =
        Logs.review(DAY, left, Logs.test(1, CRIMP.withHands(Hands.RIGHT), 42)).sides().get(0);
    assertFalse(noise.beyondNoise());
    assertEquals(100 * 2 / 41.0, noise.percent(), 1e-9);
    assertTrue(
        Logs.review(DAY, left, Logs.test(1, CRIMP.withHands(Hands.RIGHT), 44))
            .sides()
            .get(0)
            .beyondNoise());
    LocalDate later = DAY.plusDays(10);
    assertEquals(
        List.of(),
        Logs.review(later, left, Logs.test(29, CRIMP.withHands(Hands.RIGHT), 48)).sides());
  }

  @Test
  void aSessionThatWasNotPlannedIsCalculatedFromItsProtocol() {
    Review review = Logs.review(DAY, Logs.trained(1, "half-crimp", 7, 0));
    ReviewedSession session = review.sessions().get(0);
    assertEquals(ReviewedSession.Outcome.UNPLANNED, session.outcome());
    assertTrue(session.minutes() > 12);
    assertEquals(7 * session.minutes(), session.load().orElseThrow(), 1e-9);
    assertEquals(session.load().orElseThrow(), review.load().weeks().get(0).load(), 1e-9);
    assertEquals(
        60 * 9.80665 * session.work().get(0).seconds(),
        session.work().get(0).impulse().orElseThrow(),
        1e-6);
  }

  @Test
  void anEmptyLogASkippedSessionAndATestAloneHaveANextStep() {
    assertEquals("review.begin", Logs.review(DAY).next().get(0).code());
    assertEquals("review.begin", Review.unlogged(Logs.athlete()).next().get(0).code());
    Review skipped =
        Logs.review(DAY, new LogEntry.Skipped(Logs.MONDAY, "fingers", Optional.empty()));
    assertEquals("review.first-test", skipped.next().get(0).code());
    assertEquals(List.of(), skipped.load().days());
    assertEquals("review.go-on", Logs.review(DAY, Logs.test(0, CRIMP, 80)).next().get(0).code());
  }
}
