package gripwright.fatigue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.fatigue.SessionFatigue.Evidence;
import gripwright.fatigue.SessionFatigue.Violation;
import gripwright.hand.Hands;
import gripwright.quantity.Load;
import gripwright.schedule.PlannedExercise.EndReserve;
import gripwright.schedule.PlannedExercise.LoadedStep;
import gripwright.schedule.PlannedExercise.Maximum;
import gripwright.strength.Effort;
import gripwright.strength.ForceTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * The capacity left after a session, compared with the muscle model step by step; loads are in kg.
 */
class SessionFatigueTest {

  /** The best estimate is 100 kg, so that a load is a percentage. */
  private static final Maximum MAXIMUM = new Maximum(load(90), load(100), load(110));

  private static final FatigueRates MODERATE = FatigueRates.HAND_2012;

  private static Load load(double kilograms) {
    return Load.ofKilograms(kilograms);
  }

  private static List<LoadedStep> steps(int holds, double seconds, double rest, double kilograms) {
    List<LoadedStep> steps = new ArrayList<>();
    for (int i = 0; i < holds; i++) {
      if (i > 0) {
        steps.add(new LoadedStep(rest, Optional.empty()));
      }
      steps.add(new LoadedStep(seconds, Optional.of(load(kilograms))));
    }
    return steps;
  }

  private static Work work(Hands hands, int holds, double seconds, double kilograms) {
    return new Work(
        steps(holds, seconds, 20, kilograms),
        hands,
        Optional.of(MAXIMUM),
        Optional.empty(),
        Optional.empty());
  }

  private static SessionFatigue session(Work... works) {
    return new SessionFatigue(List.of(works), 120);
  }

  /** Returns the capacity of a muscle after this many holds, with 20 s between. */
  private static Muscle after(Muscle muscle, FatigueRates rates, int holds, double share) {
    for (int i = 0; i < holds; i++) {
      if (i > 0) {
        muscle.rest(20);
      }
      muscle.hold(share * rates.ofMvc(1), 10);
    }
    return muscle;
  }

  private static double reserve(FatigueRates rates, int holds, double share) {
    return after(new Muscle(rates), rates, holds, share).reserve();
  }

  @Test
  void theIntervalComesFromTheRatesAndFromTheMaximum() {
    EndReserve reserve = session(work(Hands.BOTH, 4, 10, 40)).reserves().get(0).orElseThrow();
    assertEquals(reserve(MODERATE, 4, 0.4), reserve.mean(), 1e-9);
    assertEquals(
        after(new Muscle(MODERATE.pessimistic()), MODERATE, 4, 0.4 / 0.9).reserve(),
        reserve.low(),
        1e-9);
    assertEquals(
        after(new Muscle(MODERATE.optimistic()), MODERATE, 4, 0.4 / 1.1).reserve(),
        reserve.high(),
        1e-9);
    assertTrue(reserve.low() < reserve.mean() && reserve.mean() < reserve.high());
  }

  @Test
  void theRestBetweenTwoExercisesIsRest() {
    EndReserve second =
        session(work(Hands.BOTH, 4, 10, 40), work(Hands.BOTH, 2, 10, 30))
            .reserves()
            .get(1)
            .orElseThrow();
    Muscle muscle = after(new Muscle(MODERATE), MODERATE, 4, 0.4);
    muscle.rest(120);
    assertEquals(after(muscle, MODERATE, 2, 0.3).reserve(), second.mean(), 1e-9);
  }

  @Test
  void anExerciseOfUnknownMaximumIsARest() {
    Work unknown =
        new Work(
            steps(3, 10, 20, 40), Hands.BOTH, Optional.empty(), Optional.empty(), Optional.empty());
    List<Optional<EndReserve>> reserves =
        session(work(Hands.BOTH, 4, 10, 40), unknown, work(Hands.BOTH, 1, 10, 40)).reserves();
    assertEquals(Optional.empty(), reserves.get(1));
    Muscle muscle = after(new Muscle(MODERATE), MODERATE, 4, 0.4);
    muscle.rest(120 + 70 + 120);
    assertEquals(
        after(muscle, MODERATE, 1, 0.4).reserve(), reserves.get(2).orElseThrow().mean(), 1e-9);
  }

  @Test
  void oneHandRestsWhileTheOtherHolds() {
    List<Optional<EndReserve>> reserves =
        session(
                work(Hands.LEFT, 4, 10, 40),
                work(Hands.RIGHT, 4, 10, 40),
                work(Hands.LEFT, 1, 10, 40))
            .reserves();
    assertEquals(reserve(MODERATE, 4, 0.4), reserves.get(0).orElseThrow().mean(), 1e-9);
    assertEquals(reserve(MODERATE, 4, 0.4), reserves.get(1).orElseThrow().mean(), 1e-9);
    Muscle left = after(new Muscle(MODERATE), MODERATE, 4, 0.4);
    left.rest(120 + 100 + 120);
    assertEquals(
        after(left, MODERATE, 1, 0.4).reserve(), reserves.get(2).orElseThrow().mean(), 1e-9);
  }

  @Test
  void theHandWithLessCapacityCounts() {
    EndReserve both =
        session(work(Hands.LEFT, 4, 10, 40), work(Hands.BOTH, 2, 10, 30))
            .reserves()
            .get(1)
            .orElseThrow();
    Muscle left = after(new Muscle(MODERATE), MODERATE, 4, 0.4);
    left.rest(120);
    assertEquals(after(left, MODERATE, 2, 0.3).reserve(), both.mean(), 1e-9);
  }

  @Test
  void aLongHoldFailsWhereTheMuscleDoes() {
    Violation violation = session(work(Hands.BOTH, 2, 600, 40)).violations().get(0);
    assertEquals(Evidence.OPTIMISTIC, violation.evidence());
    assertEquals(0, violation.exercise());
    assertEquals(0, violation.hold());
    FatigueRates optimistic = MODERATE.optimistic();
    assertEquals(
        new Muscle(optimistic).hold(0.4 / 1.1 * MODERATE.ofMvc(1), 600),
        violation.carriedSeconds(),
        1e-6);
  }

  @Test
  void aHoldThatOnlyTheMeanMissesIsDoubtful() {
    Violation violation = session(work(Hands.BOTH, 1, 300, 40)).violations().get(0);
    assertEquals(Evidence.MEAN, violation.evidence());
    assertEquals(
        new Muscle(MODERATE).hold(0.4 * MODERATE.ofMvc(1), 300), violation.carriedSeconds(), 1e-6);
  }

  @Test
  void theHoldThatIsMissedFirstIsNamed() {
    List<LoadedStep> steps = new ArrayList<>(steps(2, 10, 20, 40));
    steps.add(new LoadedStep(20, Optional.empty()));
    steps.add(new LoadedStep(600, Optional.of(load(40))));
    Work work =
        new Work(steps, Hands.BOTH, Optional.of(MAXIMUM), Optional.empty(), Optional.empty());
    SessionFatigue session = session(work(Hands.BOTH, 1, 10, 20), work);
    assertEquals(
        List.of("1 2 OPTIMISTIC"),
        session.violations().stream()
            .map(m -> m.exercise() + " " + m.hold() + " " + m.evidence())
            .toList());
    assertEquals(true, session.completes(0));
    assertEquals(false, session.completes(1));
    assertEquals(
        true, session.with(1, work.times(0.2)).completes(1), "a fifth of the load for 600 s");
    assertEquals(true, session.with(1, work.at(load(8))).completes(1));
  }

  @Test
  void ofSeveralExercisesOnlyTheFirstMissOfTheModelIsReported() {
    List<Violation> violations =
        session(work(Hands.BOTH, 1, 600, 40), work(Hands.BOTH, 1, 600, 40)).violations();
    assertEquals(1, violations.size());
    assertEquals(0, violations.get(0).exercise());
  }

  private static final Optional<ForceTime> CURVE =
      ForceTime.fit(ForceTime.Form.ROHMERT, List.of(new Effort(7, load(100))));

  private static Work onCurve(double seconds, double kilograms) {
    List<LoadedStep> steps = new ArrayList<>(steps(1, 7, 20, 20));
    steps.add(new LoadedStep(20, Optional.empty()));
    steps.add(new LoadedStep(seconds, Optional.of(load(kilograms))));
    return new Work(steps, Hands.BOTH, Optional.of(MAXIMUM), CURVE, Optional.empty());
  }

  @Test
  void aHoldBeyondTheAthletesCurveIsMissedThere() {
    assertEquals(List.of(), session(onCurve(7, 100)).violations(), "just what was held");
    Violation violation =
        session(onCurve(7, 105)).violations().stream()
            .filter(m -> m.evidence() == Evidence.CURVE)
            .findFirst()
            .orElseThrow();
    assertEquals(1, violation.hold());
    assertEquals(CURVE.orElseThrow().time(load(105)).best(), violation.carriedSeconds(), 1e-9);
    assertEquals(false, session(onCurve(7, 105)).completes(0));
    assertEquals(true, session(onCurve(7, 100)).completes(0));
  }

  @Test
  void theStrongestEvidenceOfAMissedHoldCounts() {
    Work work =
        new Work(steps(1, 600, 20, 40), Hands.BOTH, Optional.of(MAXIMUM), CURVE, Optional.empty());
    assertEquals(
        List.of(Evidence.OPTIMISTIC),
        session(work).violations().stream().map(Violation::evidence).toList());
  }

  @Test
  void heavyHoldsUseTheOtherRatesToo() {
    EndReserve heavy = session(work(Hands.BOTH, 6, 10, 85)).reserves().get(0).orElseThrow();
    FatigueRates intense = FatigueRates.forHeaviest(MODERATE.ofMvc(0.85));
    assertTrue(!intense.equals(MODERATE));
    double cap = MODERATE.to();
    Muscle moderate = new Muscle(MODERATE);
    for (int i = 0; i < 6; i++) {
      if (i > 0) {
        moderate.rest(20);
      }
      moderate.hold(Math.min(cap, 0.85 * MODERATE.ofMvc(1)), 10);
    }
    assertEquals(Math.min(moderate.reserve(), reserve(intense, 6, 0.85)), heavy.mean(), 1e-9);
  }
}
