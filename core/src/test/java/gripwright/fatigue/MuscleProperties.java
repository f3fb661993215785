package gripwright.fatigue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class MuscleProperties {

  private static final double ROUNDING = 1e-12;

  /** Holds and rests of 1 s to 5 min, as plans have them; every other one a rest, some of 0 s. */
  @Provide
  Arbitrary<List<Bout>> sessions() {
    Arbitrary<Bout> holds =
        Combinators.combine(
                Arbitraries.doubles().between(1, 120),
                Arbitraries.oneOf(
                    Arbitraries.of(0.1, 0.5, 0.8, 1.0), Arbitraries.doubles().between(0.05, 1.1)))
            .as(Bout::hold);
    Arbitrary<Bout> rests =
        Arbitraries.oneOf(
            Arbitraries.just(Bout.rest(0)), Arbitraries.doubles().between(1, 300).map(Bout::rest));
    return Combinators.combine(holds, rests)
        .as((hold, rest) -> List.of(hold, rest))
        .list()
        .ofMinSize(1)
        .ofMaxSize(12)
        .map(pairs -> pairs.stream().flatMap(List::stream).toList())
        .withoutEdgeCases();
  }

  /** Named sets, and others in the neighbourhood. */
  @Provide
  Arbitrary<FatigueRates> rates() {
    Arbitrary<FatigueRates> made =
        Combinators.combine(
                Arbitraries.doubles().between(0.001, 0.05).ofScale(5),
                Arbitraries.doubles().between(0.00005, 0.01).ofScale(5),
                Arbitraries.doubles().between(1, 40))
            .as((f, r, rest) -> new FatigueRates("made", f, r, rest, 2, 0, 1, "made"));
    return Arbitraries.oneOf(Arbitraries.of(FatigueRates.all()), made).withoutEdgeCases();
  }

  private static void spend(Muscle muscle, Bout bout) {
    if (bout.isHold()) {
      muscle.hold(bout.ofMvc(), bout.seconds());
    } else {
      muscle.rest(bout.seconds());
    }
  }

  private static Muscle after(FatigueRates rates, List<Bout> bouts) {
    Muscle muscle = new Muscle(rates);
    bouts.forEach(bout -> spend(muscle, bout));
    return muscle;
  }

  private static List<Bout> with(List<Bout> bouts, int at, Bout other) {
    List<Bout> changed = new ArrayList<>(bouts);
    changed.set(at, other);
    return changed;
  }

  @Property
  void sharesAddUpToOne(
      @ForAll("rates") FatigueRates rates, @ForAll("sessions") List<Bout> session) {
    Muscle muscle = new Muscle(rates);
    for (Bout bout : session) {
      spend(muscle, bout);
      assertEquals(1, muscle.resting() + muscle.active() + muscle.fatigued(), ROUNDING);
      for (double share : List.of(muscle.resting(), muscle.active(), muscle.fatigued())) {
        assertTrue(share >= 0 && share <= 1, () -> "share " + share);
      }
      assertTrue(muscle.active() <= muscle.capacity() + ROUNDING);
    }
  }

  @Property(tries = 40)
  void agreesWithAGeneralPurposeIntegrator(
      @ForAll("rates") FatigueRates rates, @ForAll("sessions") List<Bout> session) {
    Muscle muscle = new Muscle(rates);
    // At 1e-10 the reference itself was off by 1.07e-8 on a session of these.
    ReferenceMuscle reference = new ReferenceMuscle(rates, 1e-12);
    for (Bout bout : session) {
      spend(muscle, bout);
      reference.spend(bout);
      assertEquals(0, reference.difference(muscle), 1e-8);
    }
  }

  @Property
  void aHoldIsTheSameInTwoParts(
      @ForAll("rates") FatigueRates rates,
      @ForAll("sessions") List<Bout> session,
      @ForAll @DoubleRange(min = 0.05, max = 1.1) double load,
      @ForAll @DoubleRange(min = 0, max = 60) double first,
      @ForAll @DoubleRange(min = 0, max = 60) double second) {
    Muscle whole = after(rates, session);
    Muscle parts = after(rates, session);
    whole.hold(load, first + second);
    parts.hold(load, first);
    parts.hold(load, second);
    assertEquals(whole.fatigued(), parts.fatigued(), 1e-10);
    assertEquals(whole.active(), parts.active(), 1e-10);
  }

  @Property
  void aLighterHoldNeverEndsWithLess(
      @ForAll("rates") FatigueRates rates,
      @ForAll("sessions") List<Bout> session,
      @ForAll @IntRange(max = 11) int which,
      @ForAll @DoubleRange(min = 0.01, max = 1) double lighter) {
    int at = 2 * (which % (session.size() / 2));
    Bout hold = session.get(at);
    Course heavy = Course.of(rates, session);
    Course light =
        Course.of(rates, with(session, at, Bout.hold(hold.seconds(), lighter * hold.ofMvc())));
    assertNoLess(light, heavy);
  }

  @Property
  void aLongerRestNeverEndsWithLess(
      @ForAll("rates") FatigueRates rates,
      @ForAll("sessions") List<Bout> session,
      @ForAll @IntRange(max = 11) int which,
      @ForAll @DoubleRange(min = 0, max = 300) double longer) {
    int at = 2 * (which % (session.size() / 2)) + 1;
    double rest = session.get(at).seconds();
    Course shortRest = Course.of(rates, session);
    Course longRest = Course.of(rates, with(session, at, Bout.rest(rest + longer)));
    assertNoLessCapacity(longRest, shortRest);
    if (rest > 0) {
      assertNoEarlierMiss(longRest, shortRest);
    }
  }

  private static void assertNoLess(Course better, Course worse) {
    assertNoLessCapacity(better, worse);
    assertNoEarlierMiss(better, worse);
  }

  private static void assertNoLessCapacity(Course better, Course worse) {
    assertTrue(better.endReserve() >= worse.endReserve() - ROUNDING);
    for (int i = 0; i < worse.holds().size(); i++) {
      double more = better.holds().get(i).capacityLeft();
      double less = worse.holds().get(i).capacityLeft();
      assertTrue(more >= less - ROUNDING, more + " < " + less);
    }
  }

  private static void assertNoEarlierMiss(Course better, Course worse) {
    int missed = worse.firstMissed().orElse(worse.holds().size());
    assertTrue(better.firstMissed().orElse(worse.holds().size()) >= missed);
  }

  @Property
  void theGreatestLoadNeverRisesWithTime(
      @ForAll("rates") FatigueRates rates,
      @ForAll @DoubleRange(min = 0, max = 3600) double one,
      @ForAll @DoubleRange(min = 0, max = 3600) double other) {
    assertTrue(
        rates.greatestLoad(Math.max(one, other))
            <= rates.greatestLoad(Math.min(one, other)) + ROUNDING);
  }

  @Property
  void theGreatestLoadIsHeldExactly(
      @ForAll("rates") FatigueRates rates,
      @ForAll @DoubleRange(min = 0.5, max = 600) double seconds) {
    double load = rates.greatestLoad(seconds);
    assertEquals(seconds, new Muscle(rates).hold(load, seconds));
    assertTrue(new Muscle(rates).hold(load * (1 + 1e-6), seconds) < seconds);
  }

  /** The same after any work: a load that can be held longer can be held for a shorter time too. */
  @Property
  void aLoadHeldForLongCanBeHeldForLessTime(
      @ForAll("rates") FatigueRates rates,
      @ForAll("sessions") List<Bout> session,
      @ForAll @DoubleRange(min = 0.05, max = 1) double load,
      @ForAll @DoubleRange(min = 0, max = 120) double one,
      @ForAll @DoubleRange(min = 0, max = 120) double other) {
    double longer = Math.max(one, other);
    double shorter = Math.min(one, other);
    double carried = after(rates, session).hold(load, longer);
    assertEquals(Math.min(carried, shorter), after(rates, session).hold(load, shorter), 1e-8);
  }

  @Property
  void theEndsOfTheIntervalEncloseTheMean(
      @ForAll("rates") FatigueRates rates, @ForAll("sessions") List<Bout> session) {
    Forecast forecast = Forecast.of(rates, session);
    assertNoLess(forecast.optimistic(), forecast.mean());
    assertNoLess(forecast.mean(), forecast.pessimistic());
  }

  @Property
  void aLargerRestMultiplierNeverEndsWithLess(
      @ForAll("rates") FatigueRates rates,
      @ForAll("sessions") List<Bout> session,
      @ForAll @DoubleRange(min = 0, max = 1) double smaller) {
    double less = 1 + smaller * (rates.restMultiplier() - 1);
    assertNoLess(Course.of(rates, session), Course.of(rates.withRestMultiplier(less), session));
  }

  /** Letting go at the end of what can be held is a hold of exactly that time. */
  @Property(tries = 300)
  void fingersThatLetGoAreThoseOfAHoldOfThatTime(
      @ForAll("rates") FatigueRates rates,
      @ForAll("sessions") List<Bout> before,
      @ForAll @DoubleRange(min = 0.05, max = 1.1) double load,
      @ForAll @DoubleRange(min = 1, max = 300) double seconds) {
    Muscle lettingGo = new Muscle(rates);
    Muscle holding = new Muscle(rates);
    Muscle spent = new Muscle(rates);
    before.forEach(bout -> spend(lettingGo, bout));
    before.forEach(bout -> spend(holding, bout));
    before.forEach(bout -> spend(spent, bout));
    double held = lettingGo.holdUpTo(load, seconds);
    assertEquals(spent.hold(load, seconds), held, 1e-9);
    holding.hold(load, held);
    assertEquals(holding.fatigued(), lettingGo.fatigued(), 1e-6);
    assertEquals(holding.active(), lettingGo.active(), 1e-6);
    assertTrue(held <= seconds);
    assertTrue(lettingGo.reserve() >= spent.reserve() - 1e-9);
  }
}
