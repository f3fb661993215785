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

/** Two pools are monotone in load, hold and rest, in every session. */
class PoolsProperties {

  private static final double ROUNDING = 1e-12;

  /** Holds and rests in turn. */
  @Provide
  Arbitrary<List<Bout>> sessions() {
    Arbitrary<Bout> holds =
        Combinators.combine(
                Arbitraries.doubles().between(1, 60), Arbitraries.doubles().between(0.05, 1.1))
            .as(Bout::hold);
    Arbitrary<Bout> rests = Arbitraries.doubles().between(0, 300).map(Bout::rest);
    return Combinators.combine(holds, rests)
        .as((hold, rest) -> List.of(hold, rest))
        .list()
        .ofMinSize(1)
        .ofMaxSize(12)
        .map(pairs -> pairs.stream().flatMap(List::stream).toList())
        .withoutEdgeCases();
  }

  @Provide
  Arbitrary<PoolRates> rates() {
    Arbitrary<PoolRates> made =
        Combinators.combine(
                Arbitraries.doubles().between(0.001, 0.05).ofScale(5),
                Arbitraries.doubles().between(0.05, 0.95),
                Arbitraries.doubles().between(0.02, 1),
                Arbitraries.doubles().between(60, 2000))
            .as((f, w, k, t) -> new PoolRates("made", f, w, k, t, 2, 0, 1, "made"));
    return Arbitraries.oneOf(Arbitraries.just(PoolRates.SHORT_RESTS), made).withoutEdgeCases();
  }

  private static List<Bout> with(List<Bout> bouts, int at, Bout other) {
    List<Bout> changed = new ArrayList<>(bouts);
    changed.set(at, other);
    return changed;
  }

  private static int at(List<Bout> session, int which) {
    return 2 * (which % (session.size() / 2));
  }

  private static void assertNoHarder(Course easier, Course harder) {
    assertTrue(easier.endReserve() >= harder.endReserve() - ROUNDING);
    for (int i = 0; i < harder.holds().size(); i++) {
      Course.Hold one = easier.holds().get(i);
      Course.Hold other = harder.holds().get(i);
      assertTrue(one.capacityLeft() >= other.capacityLeft() - ROUNDING);
      assertTrue(one.completed() || !other.completed(), "hold " + i);
    }
  }

  @Property
  void aLighterLoadIsNeverHarder(
      @ForAll("rates") PoolRates rates,
      @ForAll("sessions") List<Bout> session,
      @ForAll @IntRange(max = 11) int which,
      @ForAll @DoubleRange(min = 0.01, max = 1) double lighter) {
    int at = at(session, which);
    Bout hold = session.get(at);
    assertNoHarder(
        Course.of(rates, with(session, at, Bout.hold(hold.seconds(), lighter * hold.ofMvc()))),
        Course.of(rates, session));
  }

  @Property
  void aShorterHoldIsNeverHarder(
      @ForAll("rates") PoolRates rates,
      @ForAll("sessions") List<Bout> session,
      @ForAll @IntRange(max = 11) int which,
      @ForAll @DoubleRange(min = 0.01, max = 1) double shorter) {
    int at = at(session, which);
    Bout hold = session.get(at);
    assertNoHarder(
        Course.of(rates, with(session, at, Bout.hold(shorter * hold.seconds(), hold.ofMvc()))),
        Course.of(rates, session));
  }

  @Property
  void aLongerRestIsNeverHarder(
      @ForAll("rates") PoolRates rates,
      @ForAll("sessions") List<Bout> session,
      @ForAll @IntRange(max = 11) int which,
      @ForAll @DoubleRange(min = 0, max = 300) double longer) {
    int at = at(session, which) + 1;
    assertNoHarder(
        Course.of(rates, with(session, at, Bout.rest(session.get(at).seconds() + longer))),
        Course.of(rates, session));
  }

  @Property
  void theEndsOfTheIntervalEncloseTheMean(
      @ForAll("rates") PoolRates rates, @ForAll("sessions") List<Bout> session) {
    Forecast forecast = Forecast.of(rates, session);
    assertNoHarder(forecast.optimistic(), forecast.mean());
    assertNoHarder(forecast.mean(), forecast.pessimistic());
  }

  @Property
  void aHoldIsTheSameInTwoParts(
      @ForAll("rates") PoolRates rates,
      @ForAll @DoubleRange(min = 0.05, max = 1.1) double load,
      @ForAll @DoubleRange(min = 0.1, max = 60) double first,
      @ForAll @DoubleRange(min = 0.1, max = 60) double second) {
    Pools whole = rates.fresh();
    Pools parts = rates.fresh();
    whole.hold(load, first + second);
    parts.hold(load, first);
    parts.hold(load, second);
    assertEquals(whole.fast(), parts.fast(), 1e-12);
    assertEquals(whole.slow(), parts.slow(), 1e-12);
    double givenWhole = rates.fresh().give(first + second);
    Pools given = rates.fresh();
    assertEquals(
        givenWhole * (first + second),
        given.give(first) * first + given.give(second) * second,
        1e-10);
  }
}
