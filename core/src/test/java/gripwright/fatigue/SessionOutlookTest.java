package gripwright.fatigue;

import static gripwright.planning.Skarvdal.DRAG;
import static gripwright.planning.Skarvdal.EDGE;
import static gripwright.planning.Skarvdal.HALF_CRIMP;
import static gripwright.planning.Skarvdal.HOLDS;
import static gripwright.planning.Skarvdal.MONDAY;
import static gripwright.planning.Skarvdal.SERIES;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.finding.Clause;
import gripwright.finding.Finding;
import gripwright.finding.Severity;
import gripwright.hand.Hands;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.planning.Skarvdal;
import gripwright.protocol.Argument;
import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.quantity.Load;
import gripwright.schedule.Derivation;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import gripwright.season.Planner;
import gripwright.wording.Words;
import java.time.DayOfWeek;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Findings about holds that can't be completed, and the capacity left after sessions. */
class SessionOutlookTest {

  private static Exercise series(double percent, int sets) {
    return Exercise.of(SERIES, HALF_CRIMP, EDGE).with("level", level(percent)).with("sets", sets);
  }

  private static Exercise holds(double seconds, double percent, int sets) {
    return Exercise.of(HOLDS, HALF_CRIMP, EDGE)
        .with("work", Duration.ofMillis((long) (seconds * 1000)))
        .with("level", level(percent))
        .with("sets", sets);
  }

  private static Argument level(double percent) {
    return Argument.of(Level.ofMax(percent));
  }

  private static Exercise withHands(Exercise exercise, Hands hands, double kilograms) {
    Exercise loaded = exercise.with("level", Level.total(Load.ofKilograms(kilograms)));
    return loaded.toBuilder().hands(hands).lifting(false).rehabilitation(Optional.empty()).build();
  }

  private static CompiledPlan compile(Block block) {
    Plan plan = Plan.named("spring").athlete("ylva").from(MONDAY).block(block).build();
    return Planner.compile(
        plan,
        Skarvdal.ylva()
            .available(DayOfWeek.TUESDAY, Duration.ofHours(4))
            .available(DayOfWeek.THURSDAY, Duration.ofHours(4))
            .build(),
        Skarvdal.tested(),
        List.of());
  }

  private static CompiledPlan compile(Exercise... exercises) {
    return compile(
        Block.named("base", 1).session(SessionPlan.of("strength", 1, exercises)).build());
  }

  private static List<Finding> reported(CompiledPlan plan) {
    return plan.findings().stream().filter(f -> f.code().startsWith("plan.hold-")).toList();
  }

  private static List<PlannedExercise> first(CompiledPlan plan) {
    return plan.sessions().get(0).exercises();
  }

  private static double reserve(PlannedExercise exercise) {
    return exercise.endReserve().orElseThrow().mean();
  }

  @Test
  void aSeriesThatTheMeanMissesIsDoubtfulAndTheHintedLevelIsNot() {
    List<Finding> reported = reported(compile(series(85, 5)));
    assertEquals(1, reported.size());
    Finding finding = reported.get(0);
    assertEquals("plan.hold-doubtful", finding.code());
    assertEquals(Severity.WARNING, finding.severity());
    assertTrue(finding.place().toString().endsWith("/ exercise 1"));
    Scheme.HoldPlace hold = (Scheme.HoldPlace) finding.arguments().get("hold");
    assertEquals(5, hold.sets());
    assertEquals(6, hold.repetitions());
    assertTrue((double) finding.arguments().get("carried") < 7);
    int percent = (int) ((Clause) finding.arguments().get("level")).arguments().get("percent");
    assertTrue(percent > 60 && percent < 85, () -> "level " + percent);
    assertEquals(List.of(), reported(compile(series(percent, 5))));
    assertEquals(
        1, reported(compile(series(percent + 4, 5))).size()); // 3 % may be lost in rounding
  }

  @Test
  void theHoldNamedIsTheFirstOfThePlanThatFails() {
    Finding finding = reported(compile(series(85, 5))).get(0);
    Scheme.HoldPlace hold = (Scheme.HoldPlace) finding.arguments().get("hold");
    assertTrue(hold.set() > 1);
    assertEquals(List.of(), reported(compile(series(85, hold.set() - 1))));
    assertEquals(1, reported(compile(series(85, hold.set()))).size());
  }

  @Test
  void anErrorOnlyWhereEvenTheOptimisticEndFails() {
    CompiledPlan plan = compile(holds(400, 50, 3));
    List<Finding> reported = reported(plan);
    assertEquals(List.of("plan.hold-fails"), reported.stream().map(Finding::code).toList());
    assertTrue(reported.get(0).blocks());
    assertFalse(plan.usable());
  }

  /** No set of rates was fitted there. */
  @ParameterizedTest
  @CsvSource({"95, 60", "100, 400", "90, 400"})
  void nothingIsCertainAboveEightyPerCentOfMvc(double percent, double seconds) {
    List<Finding> reported = reported(compile(holds(seconds, percent, 2)));
    assertEquals(List.of("plan.hold-doubtful"), reported.stream().map(Finding::code).toList());
  }

  /** Common practice, and near or beyond what the rates were fitted to. */
  @ParameterizedTest
  @CsvSource({"10, 84, 5", "10, 88, 5", "10, 95, 5", "7, 100, 5", "5, 100, 8", "7, 90, 6"})
  void nearMaximalHoldsWithLongRestsAreNotDoubted(double seconds, double percent, int sets) {
    assertEquals(List.of(), reported(compile(holds(seconds, percent, sets))));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 3, 8})
  void aReserveOrAnEffortLeavesWhatItSays(int seconds) {
    Exercise exercise = holds(10, 50, 5).with("level", Level.reserve(Duration.ofSeconds(seconds)));
    assertEquals(List.of(), reported(compile(exercise)));
    assertEquals(
        List.of(), reported(compile(holds(10, 50, 5).with("level", Level.effort(10 - seconds)))));
  }

  @Test
  void aHoldBeyondTheAthletesOwnCurveIsDoubtful() {
    Finding finding = reported(compile(holds(30, 90, 1))).get(0);
    assertEquals("plan.hold-doubtful", finding.code());
    assertTrue(finding.arguments().containsKey("curve"));
    double carried = (double) finding.arguments().get("carried");
    assertTrue(carried >= 10 && carried < 25, carried + " s");
    assertEquals(new Scheme.HoldPlace(1, 1, 1, 1), finding.arguments().get("hold"));
  }

  @Test
  void oneLineHasOneFindingForAllWeeks() {
    Block block =
        Block.named("base", 3).session(SessionPlan.of("strength", 2, series(85, 5))).build();
    List<Finding> reported = reported(compile(block));
    assertEquals(1, reported.size());
    assertEquals(6, reported.get(0).places().size());
  }

  @Test
  void whatIsCertainInALaterWeekIsNotReportedAsDoubtfulToo() {
    Block block =
        Block.named("base", 6)
            .session(SessionPlan.of("strength", 1, holds(160, 50, 2)))
            .advance(
                Advance.weekly(new Advance.HoldTo(Duration.ofSeconds(400), Duration.ofSeconds(60))))
            .build();
    List<Finding> reported = reported(compile(block));
    assertEquals(List.of("plan.hold-fails"), reported.stream().map(Finding::code).toList());
  }

  @Test
  void aLoadInKilogramsIsReportedWithTheNeededReduction() {
    Exercise heavy = series(85, 5).with("level", Level.total(Load.ofKilograms(78)));
    Finding finding = reported(compile(heavy)).get(0);
    String less = (String) finding.arguments().get("less");
    double percent = Double.parseDouble(less.substring(0, less.indexOf(' ')));
    assertTrue(percent > 1 && percent < 25, less);
    double lighter = 78 * (1 - percent / 100);
    assertEquals(
        List.of(),
        reported(
            compile(
                series(85, 5).with("level", Argument.of(Level.total(Load.ofKilograms(lighter)))))));
  }

  @Test
  void everyExerciseHasItsRemainingCapacity() {
    List<PlannedExercise> both = first(compile(holds(10, 84, 5), series(55, 3)));
    List<PlannedExercise> alone = first(compile(series(55, 3)));
    assertTrue(reserve(both.get(1)) < reserve(alone.get(0)), "what came before counts");
    for (PlannedExercise exercise : both) {
      PlannedExercise.EndReserve reserve = exercise.endReserve().orElseThrow();
      assertTrue(reserve.low() < reserve.mean() && reserve.mean() < reserve.high());
      Derivation last = exercise.why().get(exercise.why().size() - 1);
      assertEquals("capacity left, estimate", Words.step(last));
      assertEquals(Math.rint(reserve.mean() * 100), last.value());
      assertTrue(
          Words.say(last).contains(Math.round(reserve.low() * 100) + " to "), Words.say(last));
    }
  }

  @Test
  void theRestBetweenExercisesCounts() {
    SessionPlan session = SessionPlan.of("strength", 1, holds(60, 50, 2), holds(10, 50, 1));
    SessionPlan hurried =
        SessionPlan.builder(
                session.name(),
                1,
                new SessionPlan.Content(
                    session.content().exercises(),
                    Optional.empty(),
                    Optional.of(Duration.ofSeconds(20))))
            .gap(session.gap())
            .build();
    double usual = reserve(first(compile(Block.named("base", 1).session(session).build())).get(1));
    double shorter =
        reserve(first(compile(Block.named("base", 1).session(hurried).build())).get(1));
    assertTrue(shorter < usual - 0.001, usual + " " + shorter);
  }

  @Test
  void whatEndsWithAlmostNothingLeftIsHard() {
    // Half an hour without a break at a quarter of the maximum: unusual, but light throughout.
    PlannedExercise exercise = first(compile(holds(1800, 26, 1))).get(0);
    assertTrue(reserve(exercise) < PlannedExercise.EndReserve.LITTLE);
    assertTrue(exercise.hard());
    assertFalse(first(compile(holds(30, 26, 1))).get(0).hard());
  }

  /** There is no one-handed test, so nothing is reported, and the exercise counts as a rest. */
  @Test
  void withoutAMaximumNothingIsReported() {
    Exercise unknown = withHands(series(55, 3), Hands.LEFT, 60);
    CompiledPlan plan = compile(unknown, Exercise.of(SERIES, DRAG, EDGE));
    assertEquals(Optional.empty(), first(plan).get(0).endReserve());
    assertTrue(
        first(plan).get(0).why().stream()
            .noneMatch(w -> Words.step(w).startsWith("capacity left")));
    assertEquals(
        reserve(first(compile(Exercise.of(SERIES, DRAG, EDGE))).get(0)),
        reserve(first(plan).get(1)),
        1e-9);
    assertEquals(List.of(), reported(plan));
  }

  @Test
  void ofSeveralWeeksTheOneThatCarriesLeastIsReported() {
    Block.Builder growing =
        Block.named("base", 3)
            .session(SessionPlan.of("strength", 1, series(80, 5)))
            .advance(Advance.weekly(Advance.loadByPercent(4)));
    List<Finding> reported = reported(compile(growing.build()));
    assertEquals(1, reported.size());
    Finding last = reported(compile(series(80 * 1.04 * 1.04, 5))).get(0);
    assertEquals(last.arguments().get("hold"), reported.get(0).arguments().get("hold"));
    assertEquals(last.arguments().get("carried"), reported.get(0).arguments().get("carried"));
    Finding first = reported(compile(series(80, 5))).get(0);
    assertTrue(
        !first.arguments().get("hold").equals(last.arguments().get("hold"))
            || !first.arguments().get("carried").equals(last.arguments().get("carried")));
    assertTrue(reported.get(0).places().size() > 1);
  }
}
