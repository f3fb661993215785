package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.protocol.Extent;
import gripwright.protocol.Scheme;
import gripwright.review.Review;
import gripwright.review.ReviewedSession;
import gripwright.schedule.DatedSession;
import gripwright.schedule.Happened;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** The meaning of {@code up to}, {@code to-failure} and {@code as warm-up} in compiled plans. */
final class BoundsAndWarmUpsTest {

  private static final String PLAN =
      """
      language 1
      athlete runa "Runa" {
        born       1994-06-01
        body-mass  60 kg
        trained    60 months
        ability    french 7b
        hand       { length 178 mm }
        familiar   half-crimp 60 months
        available  mon 90 min, thu 90 min
        equipment  { edges 20 mm  added 0.5 kg steps to 60 kg  assist 0.5 kg steps to 50 kg }
      }
      protocol tens {
        given  level 70 % max, sets 4
        repeat sets resting 3 min {
          hold 10 s at level
        }
      }
      protocol lasting {
        given  longest 20 s, level 40 % max, sets 5
        repeat up to sets resting 2 min {
          hold up to longest at level
        }
      }
      PROTOCOL
      log runa {
        2027-01-04 test half-crimp edge 20 mm hold 7 s load 80 kg
        LINES
      }
      plan winter {
        for      runa
        from     2027-01-11
        block a 4 weeks {
          ADVANCE
          ease week 4 to 50 % sets
          session s 1 per week {
            DO
          }
        }
      }
      """;

  private static final String WARM_UP =
      "do tens with level 30 % max, sets 2 on half-crimp edge 20 mm as warm-up\n";
  private static final String WORK = "do tens on half-crimp edge 20 mm";
  private static final String LASTING = "do lasting on half-crimp edge 20 mm";

  private static Compilation compilation(
      String protocol, String advance, String exercises, String... lines) {
    return Gripwright.read(
            "plan.grip",
            PLAN.replace("PROTOCOL", protocol)
                .replace("LINES", String.join("\n  ", lines))
                .replace("ADVANCE", advance)
                .replace("DO", exercises))
        .compile();
  }

  private static CompiledPlan plan(String advance, String exercises, String... lines) {
    return compilation("", advance, exercises, lines).plans().get(0);
  }

  private static List<PlannedExercise> exercises(CompiledPlan plan, int number) {
    return plan.sessions().stream().map(s -> s.exercises().get(number)).toList();
  }

  private static List<Double> loads(List<PlannedExercise> exercises) {
    return exercises.stream().map(e -> e.totalLoad().kilograms()).toList();
  }

  private static List<Integer> sets(List<PlannedExercise> exercises) {
    return exercises.stream().map(e -> e.scheme().sets()).toList();
  }

  private static boolean reports(Compilation compilation, String code) {
    return compilation.findings().stream().anyMatch(f -> f.code().equals(code));
  }

  @Test
  void aWarmUpNeitherAdvancesNorIsEased() {
    CompiledPlan plan = plan("advance load 5 % weekly", WARM_UP + WORK);
    List<PlannedExercise> warmUps = exercises(plan, 0);
    assertEquals(1, loads(warmUps).stream().distinct().count(), loads(warmUps).toString());
    assertEquals(List.of(2, 2, 2, 2), sets(warmUps));
    assertTrue(warmUps.stream().allMatch(PlannedExercise::warmUp));
    List<PlannedExercise> work = exercises(plan, 1);
    assertEquals(3, loads(work).stream().distinct().count(), loads(work).toString());
    assertEquals(List.of(4, 4, 4, 2), sets(work));
  }

  @Test
  void aHardWarmUpIsEasedLikeWorkAndReported() {
    String hard = WARM_UP.replace("30 % max", "80 % max");
    Compilation compilation = compilation("", "advance load 5 % weekly", hard + WORK);
    assertTrue(reports(compilation, "plan.warm-up-hard"));
    List<PlannedExercise> warmUps = exercises(compilation.plans().get(0), 0);
    assertEquals(List.of(2, 2, 2, 1), sets(warmUps));
    assertEquals(1, loads(warmUps).stream().distinct().count(), loads(warmUps).toString());
    assertTrue(warmUps.stream().noneMatch(PlannedExercise::warmUp));
  }

  @Test
  void aWarmUpNeedsNoLogLine() {
    CompiledPlan plan =
        plan(
            "advance load 5 % weekly",
            WARM_UP + WORK,
            "2027-01-11 session s { tens on half-crimp edge 20 mm: sets 4 of 4, load 54 kg }");
    DatedSession first = plan.sessions().get(0);
    assertEquals(Happened.Kind.DONE, first.happened().orElseThrow().kind());
    assertEquals(2, first.exercises().size());
    assertEquals(2, first.exercises().get(0).scheme().sets());
    List<Double> loads = loads(exercises(plan, 1));
    assertTrue(loads.get(1) > loads.get(0), loads.toString());
  }

  @Test
  void aReviewCountsAWarmUpWithoutALineAndFewerSetsOfABound() {
    Reading reading =
        Gripwright.read(
            "plan.grip",
            PLAN.replace("PROTOCOL", "")
                .replace(
                    "LINES",
                    "2027-01-11 session s { lasting on half-crimp edge 20 mm: sets 3 of 5 }")
                .replace("ADVANCE", "")
                .replace("DO", WARM_UP + LASTING));
    Review review =
        Review.of(
            Objects.requireNonNull(reading.athletes().get("runa")),
            Objects.requireNonNull(reading.logs().get("runa")),
            reading.compile().plans(),
            reading.protocols(),
            LocalDate.of(2027, 1, 12));
    ReviewedSession session = review.sessions().get(0);
    assertEquals(ReviewedSession.Outcome.DONE, session.outcome());
    assertEquals(
        List.of(20.0, 60.0), session.work().stream().map(ReviewedSession.Work::seconds).toList());
    assertEquals(80, review.exposure().weeks().get(0).grips().get(0).seconds());
  }

  @Test
  void aHardWarmUpNeedsItsLogLine() {
    CompiledPlan plan =
        plan(
            "advance load 5 % weekly",
            WARM_UP.replace("30 % max", "80 % max") + WORK,
            "2027-01-11 session s { tens on half-crimp edge 20 mm: sets 2 of 2, load 64 kg }");
    assertEquals(Happened.Kind.IN_PART, plan.sessions().get(0).happened().orElseThrow().kind());
  }

  @Test
  void aSkippedSessionHasNoWarmUp() {
    CompiledPlan plan = plan("", WARM_UP + WORK, "2027-01-11 session s { }");
    assertTrue(plan.sessions().stream().allMatch(s -> s.happened().isEmpty()));
  }

  @Test
  void fewerSetsThanABoundAreNoMiss() {
    CompiledPlan plan =
        plan(
            "advance load 5 % weekly",
            LASTING,
            "2027-01-11 session s { lasting on half-crimp edge 20 mm: sets 3 of 5, load 32 kg }");
    assertEquals(Happened.Kind.DONE, plan.sessions().get(0).happened().orElseThrow().kind());
    List<Double> loads = loads(exercises(plan, 0));
    assertTrue(loads.get(1) > loads.get(0), loads.toString());
  }

  @Test
  void fewerSetsThanPlannedAreStillAMissWithoutABound() {
    CompiledPlan plan =
        plan(
            "advance load 5 % weekly",
            WORK,
            "2027-01-11 session s { tens on half-crimp edge 20 mm: sets 3 of 4, load 54 kg }");
    assertEquals(Happened.Kind.IN_PART, plan.sessions().get(0).happened().orElseThrow().kind());
    List<Double> loads = loads(exercises(plan, 0));
    assertEquals(loads.get(0), loads.get(1));
  }

  @Test
  void doneInFullStillMeansTheBound() {
    String advance = "advance load 5 % when done in full";
    String line = "2027-01-11 session s { lasting on half-crimp edge 20 mm: sets %s of 5 }";
    List<Double> less = loads(exercises(plan(advance, LASTING, line.formatted(3)), 0));
    List<Double> full = loads(exercises(plan(advance, LASTING, line.formatted(5)), 0));
    assertEquals(less.get(0), less.get(1));
    assertTrue(full.get(1) > full.get(0), full.toString());
  }

  @Test
  void lessThanHalfOfABoundTwiceRunningPreventsAStep() {
    String line = " session s { lasting on half-crimp edge 20 mm: sets %s of 5, effort 6 }";
    List<Double> twice =
        loads(
            exercises(
                plan(
                    "advance load 5 % weekly",
                    LASTING, "2027-01-11" + line.formatted(2), "2027-01-18" + line.formatted(2)),
                0));
    List<Double> once =
        loads(
            exercises(
                plan(
                    "advance load 5 % weekly",
                    LASTING, "2027-01-11" + line.formatted(3), "2027-01-18" + line.formatted(2)),
                0));
    assertEquals(twice.get(1), twice.get(2));
    assertTrue(once.get(2) > once.get(1), once.toString());
  }

  @Test
  void lessThanHalfOfABoundTwiceRunningEarnsNoStep() {
    String advance = "advance load 5 % when effort at most 7 twice";
    String line = " session s { lasting on half-crimp edge 20 mm: sets %s of 5, effort 6 }";
    List<Double> less =
        loads(
            exercises(
                plan(
                    advance,
                    LASTING,
                    "2027-01-11" + line.formatted(2),
                    "2027-01-18" + line.formatted(2)),
                0));
    List<Double> half =
        loads(
            exercises(
                plan(
                    advance,
                    LASTING,
                    "2027-01-11" + line.formatted(3),
                    "2027-01-18" + line.formatted(2)),
                0));
    assertEquals(less.get(1), less.get(2));
    assertTrue(half.get(2) > half.get(1), half.toString());
  }

  @Test
  void aBoundBeyondWhatCanBeHeldIsHardAndToFailureAndFailsNothing() {
    String protocol = "protocol p { hold up to 240 s at 60 % max }";
    Compilation bound = compilation(protocol, "", "do p on half-crimp edge 20 mm");
    PlannedExercise exercise = exercises(bound.plans().get(0), 0).get(0);
    assertTrue(exercise.hard());
    assertTrue(exercise.isToFailure());
    assertFalse(reports(bound, "plan.hold-fails") || reports(bound, "plan.hold-doubtful"));
    Compilation plain =
        compilation(protocol.replace("up to ", ""), "", "do p on half-crimp edge 20 mm");
    assertTrue(reports(plain, "plan.hold-fails") || reports(plain, "plan.hold-doubtful"));
  }

  @Test
  void aBoundThatCanBeHeldIsNotToFailure() {
    PlannedExercise exercise = exercises(plan("", LASTING), 0).get(0);
    assertFalse(exercise.hard());
    assertFalse(exercise.isToFailure());
  }

  @Test
  void repeatsUpToANumberGoToFailureIfTheEstimateSaysSo() {
    String protocol = "protocol p { repeat up to 60 resting 3 s { hold 7 s at 75 % max } }";
    Compilation bound = compilation(protocol, "", "do p on half-crimp edge 20 mm");
    assertTrue(exercises(bound.plans().get(0), 0).get(0).isToFailure());
    assertFalse(reports(bound, "plan.hold-fails") || reports(bound, "plan.hold-doubtful"));
  }

  @Test
  void theFirstRepeatIsNotLeftOut() {
    String protocol = "protocol p { repeat up to 3 resting 3 min { hold 60 s at 90 % max } }";
    Compilation compilation = compilation(protocol, "", "do p on half-crimp edge 20 mm");
    assertTrue(
        reports(compilation, "plan.hold-fails") || reports(compilation, "plan.hold-doubtful"));
  }

  @Test
  void theFingersLetGoAtTheEndOfWhatTheyCanHold() {
    String protocol =
        """
        protocol p {
          hold up to 3600 s at 75 % max
          rest 30 s
          hold 5 s at 60 % max
        }
        """;
    Compilation compilation = compilation(protocol, "", "do p on half-crimp edge 20 mm");
    assertTrue(exercises(compilation.plans().get(0), 0).get(0).isToFailure());
    assertFalse(
        reports(compilation, "plan.hold-fails") || reports(compilation, "plan.hold-doubtful"));
  }

  @Test
  void anAllOutSeriesMissesNoBound() {
    String series =
        "2027-01-05 test half-crimp edge 20 mm series 24 x 7 s / 3 s mean 66, 62, 58, 54, 51, 48,"
            + " 46, 44, 43, 42, 41, 40, 39.5, 39, 38.5, 38, 38, 38, 38, 38, 38, 38, 38, 38 kg";
    String protocol = "protocol p { repeat 30 resting 3 s { hold up to 7 s at 72 % max } }";
    Compilation bound = compilation(protocol, "", "do p on half-crimp edge 20 mm", series);
    assertFalse(reports(bound, "plan.hold-doubtful"));
    assertTrue(exercises(bound.plans().get(0), 0).get(0).isToFailure());
    Compilation plain =
        compilation(protocol.replace("up to ", ""), "", "do p on half-crimp edge 20 mm", series);
    assertTrue(reports(plain, "plan.hold-doubtful"));
  }

  @Test
  void writtenToFailureIsAlwaysHard() {
    String protocol = "protocol p { hold to-failure up to 5 s at 10 kg }";
    PlannedExercise exercise =
        exercises(compilation(protocol, "", "do p on half-crimp edge 20 mm").plans().get(0), 0)
            .get(0);
    assertTrue(exercise.hard());
    assertTrue(exercise.isToFailure());
  }

  @Test
  void advanceAndEaseMoveTheBound() {
    List<Scheme> schemes =
        exercises(plan("advance hold to 30 s by 2 s weekly", LASTING), 0).stream()
            .map(PlannedExercise::scheme)
            .toList();
    assertEquals(
        List.of(20L, 22L, 24L, 24L),
        schemes.stream().map(s -> s.written().get(0).time().toSeconds()).toList());
    assertEquals(List.of(5, 5, 5, 2), schemes.stream().map(Scheme::sets).toList());
    assertTrue(schemes.stream().allMatch(Scheme::setsUpTo));
    assertTrue(schemes.stream().allMatch(s -> s.written().get(0).extent() == Extent.UP_TO));
  }
}
