package gripwright.fatigue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.fatigue.SessionFatigue.Evidence;
import gripwright.fatigue.SessionFatigue.Violation;
import gripwright.fatigue.Work.Kind;
import gripwright.hand.Hands;
import gripwright.quantity.Load;
import gripwright.schedule.PlannedExercise.LoadedStep;
import gripwright.schedule.PlannedExercise.Maximum;
import gripwright.strength.AllOutTest;
import gripwright.strength.CriticalForce;
import gripwright.strength.LoadEstimate;
import gripwright.strength.StrengthTest;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which model judges an exercise, and what it says. MVC is 100 kg by the two pools. */
class HandVerdictTest {

  private static final PoolRates POOLS = PoolRates.SHORT_RESTS;
  private static final Load MAX = Load.ofKilograms(100 * POOLS.ofMvc(1));
  private static final Maximum MAXIMUM = new Maximum(MAX, MAX, MAX);

  /** Giles D et al. 2019 (from memory): critical force 41 % of MVC, 29.7 s of MVC above it. */
  private static final AllOutTest OWN = own(7, 3);

  static AllOutTest own(int work, int rest) {
    return new AllOutTest(
        LocalDate.of(2027, 1, 4),
        new StrengthTest.Series(
            Duration.ofSeconds(work),
            Duration.ofSeconds(rest),
            Collections.nCopies(24, Load.ofKilograms(50))),
        new CriticalForce(
            CriticalForce.Definition.MEAN_OF_LAST_THREE,
            new LoadEstimate(Load.ofKilograms(41), 0.21),
            2970,
            0.13,
            true));
  }

  private static Work sets(int sets, double pause, int times, double work, double rest, double kg) {
    List<LoadedStep> steps = new ArrayList<>();
    for (Bout bout : Drills.sets(sets, pause, times, work, rest, kg)) {
      steps.add(
          new LoadedStep(
              bout.seconds(),
              bout.isHold() ? Optional.of(Load.ofKilograms(kg)) : Optional.empty()));
    }
    return new Work(steps, Hands.BOTH, Optional.of(MAXIMUM), Optional.empty(), Optional.empty());
  }

  private static Work repeaters(int times, double kg) {
    return sets(1, 0, times, 7, 3, kg);
  }

  private static Work tested(Work work, AllOutTest test) {
    return new Work(work.steps(), work.hands(), work.maximum(), work.curve(), Optional.of(test));
  }

  private static List<Violation> violations(Work... works) {
    return new SessionFatigue(List.of(works), 180).violations();
  }

  private static boolean completes(Work work) {
    return new SessionFatigue(List.of(work), 180).completes(0);
  }

  /**
   * Six holds are fewer than climbers manage at any of these loads. The first hold that is doubted
   * is in the range of published repetitions, 5th to 95th percentile: critical force of Giles D et
   * al. 2019 (from memory) with the spread from day to day of McClean ZJ et al. 2023.
   */
  @ParameterizedTest
  @CsvSource({"80, 7.1, 16.6", "70, 8.6, 25.0", "60, 10.3, 48.5"})
  void sevenAndThreeSecondsAgreeWithPublishedRepetitions(double kg, double low, double high) {
    assertEquals(List.of(), violations(repeaters(6, kg)));
    int most = 6;
    while (completes(repeaters(most + 1, kg))) {
      most++;
    }
    assertEquals(List.of(), violations(repeaters(most, kg)));
    Violation violation = violations(repeaters(most + 1, kg)).get(0);
    assertEquals(Evidence.MEAN, violation.evidence());
    assertEquals(most, violation.hold());
    double repetitions = most + violation.carriedSeconds() / 7;
    assertTrue(repetitions >= low && repetitions <= high, repetitions + " repetitions");
  }

  @Test
  void kindsFollowFromHoldsAndRestsAlone() {
    assertEquals(Kind.REPEATERS, sets(4, 180, 6, 7, 3, 60).kind());
    assertEquals(Kind.REPEATERS, sets(1, 0, 6, 10, 10, 60).kind());
    assertEquals(Kind.LONG_RESTS, sets(1, 0, 6, 10, 10.5, 60).kind());
    assertEquals(Kind.LONG_RESTS, sets(1, 0, 1, 7, 3, 60).kind());
    assertEquals(Kind.SHORT_RESTS, sets(1, 0, 6, 10.5, 3, 60).kind());
    assertEquals(Kind.SHORT_RESTS, sets(1, 0, 6, 7, 1.9, 60).kind(), "no rest of 2 s divides it");
    assertEquals(Kind.REPEATERS, sets(1, 0, 6, 7, 2, 60).kind());
    assertEquals(Kind.REPEATERS, repeaters(6, 20).kind(), "whatever the load");
  }

  @Test
  void shortRestsNeverLeaveMoreThanThreeCompartments() {
    for (double kg : List.of(30.0, 55.0, 75.0, 90.0)) {
      Work work = sets(3, 120, 6, 7, 3, kg);
      HandFatigue hand = new HandFatigue(List.of(work), 0, gripwright.hand.Side.LEFT);
      double left = new SessionFatigue(List.of(work), 0).reserves().get(0).orElseThrow().mean();
      double pools = hand.run(POOLS, HandFatigue.End.MEAN, Double.MAX_VALUE).reserve(0);
      double compartments =
          hand.run(hand.valid(), HandFatigue.End.MEAN, Double.MAX_VALUE).reserve(0);
      assertTrue(left <= pools + 1e-12 && left <= compartments + 1e-12);
      assertTrue(left >= Math.min(pools, compartments) - 0.1);
    }
  }

  /** Two pools are never certain; three compartments are, unless the model in charge disagrees. */
  @Test
  void onlyThreeCompartmentsMakeRepeatersCertainlyImpossible() {
    Work work = sets(1, 0, 100, 10, 2, 75);
    assertEquals(Evidence.OPTIMISTIC, violations(work).get(0).evidence());
    assertEquals(
        Evidence.OPTIMISTIC,
        violations(tested(work, own(10, 2))).get(0).evidence(),
        "both miss it");
    assertEquals(
        List.of(), violations(tested(sets(1, 0, 100, 10, 2, 41), own(10, 2))), "the series allows");
    assertEquals(Evidence.MEAN, violations(repeaters(40, 80)).get(0).evidence());
  }

  @ParameterizedTest
  @CsvSource({"80, 10", "70, 14", "60, 22"})
  void theOwnAllOutSeriesIsUsedFirst(double kg, int completed) {
    Violation violation = violations(tested(repeaters(completed + 2, kg), OWN)).get(0);
    assertEquals(Evidence.ALL_OUT, violation.evidence());
    assertEquals(completed, violation.hold());
    double repetitions = 4.25 / (kg / 100 - 0.41);
    assertEquals(repetitions, violation.hold() + violation.carriedSeconds() / 7, 0.05);
    assertTrue(completes(tested(repeaters(completed, kg), OWN)));
    assertFalse(completes(tested(repeaters(completed + 1, kg), OWN)));
  }

  @Test
  void atCriticalForceTheSeriesHasNoEnd() {
    assertEquals(List.of(), violations(tested(repeaters(200, 41), OWN)));
    assertFalse(completes(repeaters(200, 41)), "by the two pools it has");
  }

  /** The test is one of fresh fingers with its own rests; otherwise both must allow it. */
  @Test
  void whereTheSeriesDoesNotCoverTheExerciseTwoPoolsJudgeToo() {
    assertEquals(List.of(), violations(tested(repeaters(10, 79), OWN)));
    assertFalse(completes(tested(sets(1, 0, 10, 7, 2.5, 79), OWN)), "a shorter rest");
    assertFalse(completes(tested(repeaters(10, 79), own(6, 3))), "a longer hold");
    assertFalse(completes(tested(repeaters(9, 81), OWN)), "more than 80 % of MVC");
    SessionFatigue later =
        new SessionFatigue(List.of(repeaters(1, 30), tested(repeaters(10, 79), OWN)), 180);
    assertFalse(later.completes(1), "after other work");
  }

  /** A series of better days must not silence the doubt. */
  @Test
  void aSeriesOfAStrongerAthleteDoesNotJudgeAlone() {
    AllOutTest strongest =
        new AllOutTest(
            OWN.date(),
            new StrengthTest.Series(
                Duration.ofSeconds(7),
                Duration.ofSeconds(3),
                Collections.nCopies(24, Load.ofKilograms(MAX.kilograms() / 0.94))),
            OWN.critical());
    assertFalse(completes(tested(repeaters(10, 79), strongest)), "stronger holds than today's");
    CriticalForce high =
        new CriticalForce(
            CriticalForce.Definition.MEAN_OF_LAST_THREE,
            new LoadEstimate(Load.ofKilograms(0.81 * MAX.kilograms()), 0.21),
            2970,
            0.13,
            true);
    assertFalse(
        completes(tested(repeaters(10, 79), new AllOutTest(OWN.date(), OWN.series(), high))),
        "critical force near the maximum");
  }

  /** 6 holds at 75 kg use 1428 kg s; with 180 s more than the series' rest, exp(-0.3) is left. */
  @Test
  void onlyRestsLongerThanThoseOfTheSeriesRestoreImpulse() {
    double deficit = 1428 * Math.exp(-0.3);
    deficit = (deficit + 1428) * Math.exp(-0.3);
    double then = (2970 - deficit) / (7 * 34);
    assertEquals(List.of(), violations(tested(sets(2, 183, 6, 7, 3, 75), OWN)));
    Violation violation = violations(tested(sets(3, 183, 6, 7, 3, 75), OWN)).get(0);
    assertEquals(12 + then, violation.hold() + violation.carriedSeconds() / 7, 1e-9);
    assertFalse(completes(tested(sets(1, 0, 13, 7, 3, 75), OWN)), "its own rests restore nothing");
  }
}
