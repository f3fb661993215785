package gripwright.fatigue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.fatigue.SessionFatigue.Miss;
import gripwright.fatigue.SessionFatigue.Witness;
import gripwright.fatigue.SessionFatigue.Work;
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

/** What a session leaves, against the muscle model asked step by step; loads are in kg. */
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
        steps(holds, seconds, 20, kilograms), hands, Optional.of(MAXIMUM), Optional.empty());
  }

  private static SessionFatigue session(Work... works) {
    return new SessionFatigue(List.of(works), 120);
  }

  /** Returns what a muscle is left with after so many holds, with 20 s between. */
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
    Work unknown = new Work(steps(3, 10, 20, 40), Hands.BOTH, Optional.empty(), Optional.empty());
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
  void ofBothHandsTheOneThatIsLeftWithLessCounts() {
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
    Miss miss = session(work(Hands.BOTH, 2, 600, 40)).misses().get(0);
    assertEquals(Witness.OPTIMISTIC, miss.witness());
    assertEquals(0, miss.exercise());
    assertEquals(0, miss.hold());
    FatigueRates optimistic = MODERATE.optimistic();
    assertEquals(
        new Muscle(optimistic).hold(0.4 / 1.1 * MODERATE.ofMvc(1), 600),
        miss.carriedSeconds(),
        1e-6);
  }

  @Test
  void whatOnlyTheMeanDoesNotFinishIsDoubtful() {
    Miss miss = session(work(Hands.BOTH, 1, 300, 40)).misses().get(0);
    assertEquals(Witness.MEAN, miss.witness());
    assertEquals(
        new Muscle(MODERATE).hold(0.4 * MODERATE.ofMvc(1), 300), miss.carriedSeconds(), 1e-6);
  }

  @Test
  void theHoldThatIsMissedFirstIsNamed() {
    List<LoadedStep> steps = new ArrayList<>(steps(2, 10, 20, 40));
    steps.add(new LoadedStep(20, Optional.empty()));
    steps.add(new LoadedStep(600, Optional.of(load(40))));
    Work work = new Work(steps, Hands.BOTH, Optional.of(MAXIMUM), Optional.empty());
    SessionFatigue session = session(work(Hands.BOTH, 1, 10, 20), work);
    assertEquals(
        List.of("1 2 OPTIMISTIC"),
        session.misses().stream()
            .map(m -> m.exercise() + " " + m.hold() + " " + m.witness())
            .toList());
    assertEquals(true, session.completes(0));
    assertEquals(false, session.completes(1));
    assertEquals(
        true, session.with(1, work.times(0.2)).completes(1), "a fifth of the load for 600 s");
    assertEquals(true, session.with(1, work.at(load(8))).completes(1));
  }

  @Test
  void ofSeveralExercisesOnlyTheFirstMissOfTheModelIsReported() {
    List<Miss> misses =
        session(work(Hands.BOTH, 1, 600, 40), work(Hands.BOTH, 1, 600, 40)).misses();
    assertEquals(1, misses.size());
    assertEquals(0, misses.get(0).exercise());
  }

  private static final Optional<ForceTime> CURVE =
      ForceTime.fit(ForceTime.Form.ROHMERT, List.of(new Effort(7, load(100))));

  private static Work onCurve(double seconds, double kilograms) {
    List<LoadedStep> steps = new ArrayList<>(steps(1, 7, 20, 20));
    steps.add(new LoadedStep(20, Optional.empty()));
    steps.add(new LoadedStep(seconds, Optional.of(load(kilograms))));
    return new Work(steps, Hands.BOTH, Optional.of(MAXIMUM), CURVE);
  }

  @Test
  void aHoldBeyondTheAthletesCurveIsMissedThere() {
    assertEquals(List.of(), session(onCurve(7, 100)).misses(), "just what was held");
    Miss miss =
        session(onCurve(7, 105)).misses().stream()
            .filter(m -> m.witness() == Witness.CURVE)
            .findFirst()
            .orElseThrow();
    assertEquals(1, miss.hold());
    assertEquals(CURVE.orElseThrow().time(load(105)).best(), miss.carriedSeconds(), 1e-9);
    assertEquals(false, session(onCurve(7, 105)).completes(0));
    assertEquals(true, session(onCurve(7, 100)).completes(0));
  }

  @Test
  void ofTwoThatSayAHoldIsMissedTheSurestCounts() {
    Work work = new Work(steps(1, 600, 20, 40), Hands.BOTH, Optional.of(MAXIMUM), CURVE);
    assertEquals(
        List.of(Witness.OPTIMISTIC), session(work).misses().stream().map(Miss::witness).toList());
  }

  @Test
  void heavyHoldsAskTheOtherRatesToo() {
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
