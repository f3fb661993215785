package gripwright.review;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.log.FeltPain;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.log.LogEntry.Pain.Kind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The cut-offs of the pain-monitoring model at their boundaries: Thomee R 1997, Phys Ther
 * 77(12):1690-1703; Silbernagel KG et al. 2007, Am J Sports Med 35(6):897-906 (2 and 5 of 10, no
 * rise from week to week; from memory).
 */
final class PainCourseTest {

  private static final LocalDate DAY = Logs.MONDAY.plusDays(20);

  private static PainCourse ring(LogEntry... entries) {
    return Logs.review(DAY, entries).pain().stream()
        .filter(course -> course.place() instanceof PainCourse.InFinger)
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "0, DULL, GO_ON, MILD",
    "2, DULL, GO_ON, MILD",
    "2.5, DULL, HOLD, MODERATE",
    "3, DULL, HOLD, MODERATE",
    "5, DULL, HOLD, MODERATE",
    "5.5, DULL, STOP, ABOVE_LIMIT",
    "6, DULL, STOP, ABOVE_LIMIT",
    "10, DULL, STOP, ABOVE_LIMIT",
    "1, SHARP, STOP, SHARP",
    "1, SUDDEN, STOP, SHARP",
  })
  void cutOffs(double score, Kind kind, PainCourse.Rule rule, PainCourse.Because because) {
    PainCourse course = ring(Logs.pain(20, score, kind));
    assertEquals(rule, course.rule());
    assertEquals(because, course.because());
  }

  @Test
  void aModerateScoreHoldsTheNextTwoSessions() {
    LogEntry pain = Logs.pain(10, 4, Kind.DULL);
    LogEntry one = Logs.trained(12, "half-crimp", 6, 0);
    LogEntry two = Logs.trained(14, "half-crimp", 6, 0);
    assertEquals(PainCourse.Rule.HOLD, ring(pain).rule());
    assertEquals(PainCourse.Rule.HOLD, ring(pain, one).rule());
    assertEquals(PainCourse.Rule.GO_ON, ring(pain, one, two).rule());
  }

  @Test
  void strongPainStopsUntilTwoScoresOfTwoOrLess() {
    LogEntry strong = Logs.pain(1, 6, Kind.DULL);
    assertEquals(PainCourse.Rule.STOP, ring(strong).rule());
    assertEquals(PainCourse.Rule.STOP, ring(strong, Logs.pain(8, 1, Kind.DULL)).rule());
    PainCourse ended = ring(strong, Logs.pain(8, 1, Kind.DULL), Logs.pain(10, 2, Kind.DULL));
    assertEquals(PainCourse.Because.MODERATE, ended.because(), "the next two sessions");
    assertEquals(6, ended.worst().value());
  }

  @Test
  void painThatRisesForASecondWeekStops() {
    PainCourse course =
        ring(Logs.pain(1, 0, Kind.DULL), Logs.pain(8, 2, Kind.DULL), Logs.pain(16, 3, Kind.DULL));
    assertEquals(PainCourse.Because.RISING, course.because());
    assertEquals(PainCourse.Rule.STOP, course.rule());
    assertEquals(3, course.worst().value());
    assertEquals(
        PainCourse.Because.MODERATE,
        ring(Logs.pain(8, 2, Kind.DULL), Logs.pain(16, 3, Kind.DULL)).because(),
        "the first rise");
    assertEquals(
        PainCourse.Because.MILD,
        ring(Logs.pain(1, 0, Kind.DULL), Logs.pain(8, 1, Kind.DULL), Logs.pain(16, 2, Kind.DULL))
            .because(),
        "up to 2");
  }

  @Test
  void painOnAnExerciseCountsForItsGrip() {
    Review review = Logs.review(DAY, Logs.trained(20, "half-crimp", 6, 6));
    assertEquals("half-crimp", review.pain().get(0).place().toString());
    assertEquals(PainCourse.Rule.STOP, review.pain().get(0).rule());
    assertEquals("review.stop", review.next().get(0).code());
  }

  @Test
  void theMostSevereComesFirstAndNoStepIsEarned() {
    Review review =
        Logs.review(
            DAY,
            List.of(
                Logs.trained(10, "half-crimp", 6, 0),
                Logs.trained(13, "half-crimp", 6, 0),
                Logs.pain(13, 4, Kind.DULL)));
    assertEquals("review.hold", review.next().get(0).code());
    assertEquals(0, review.next().stream().filter(s -> s.code().equals("review.earned")).count());
    Review without =
        Logs.review(
            DAY, Logs.trained(10, "half-crimp", 6, 0), Logs.trained(13, "half-crimp", 6, 0));
    assertEquals("review.earned", without.next().get(0).code());
  }

  /** The same pain stops a plan for as long as in the review. */
  @Property(tries = 300)
  void reviewAndPlanStopForTheSamePain(
      @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 0, max = 23) Integer> days,
      @ForAll @Size(6) List<@IntRange(min = 0, max = 6) Integer> scores) {
    List<LogEntry> entries = new ArrayList<>();
    for (int i = 0; i < days.size(); i++) {
      entries.add(Logs.pain(days.get(i), scores.get(i), Kind.DULL));
    }
    Log log = new Log("signe", entries);
    for (PainCourse course : Logs.review(DAY, entries).pain()) {
      boolean stops = FeltPain.of(log, List.of()).stream().anyMatch(p -> p.stopsOn(DAY, List.of()));
      assertEquals(stops, course.rule() == PainCourse.Rule.STOP, course.toString());
    }
  }
}
