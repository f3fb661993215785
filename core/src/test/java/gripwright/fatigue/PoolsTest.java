package gripwright.fatigue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.UnaryOperator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/** The model with two pools, beside its equations in a general-purpose integrator. */
class PoolsTest {

  private static final PoolRates SET = PoolRates.SHORT_RESTS;

  /** The equations of the page for (p, q), integrated by Dormand and Prince's method. */
  private static double[] integrate(
      double[] from, double seconds, UnaryOperator<double[]> derivative) {
    OrdinaryDifferentialEquation law =
        new OrdinaryDifferentialEquation() {
          @Override
          public int getDimension() {
            return 2;
          }

          @Override
          public double[] computeDerivatives(double time, double[] pools) {
            return derivative.apply(pools);
          }
        };
    return new DormandPrince853Integrator(1e-9, 100, 1e-11, 1e-11)
        .integrate(law, new ODEState(0, from), seconds)
        .getPrimaryState();
  }

  private static double[] tired(double[] from, double seconds, double ofMvc) {
    double pace = SET.fatigue() * ofMvc;
    return integrate(
        from, seconds, y -> new double[] {SET.fastShare() * pace, (1 - SET.fastShare()) * pace});
  }

  private static double[] given(double[] from, double seconds) {
    return integrate(
        from,
        seconds,
        y -> {
          double pace = SET.fatigue() * (1 - y[0] - y[1]);
          return new double[] {SET.fastShare() * pace, (1 - SET.fastShare()) * pace};
        });
  }

  private static double[] rested(double[] from, double seconds) {
    return integrate(
        from, seconds, y -> new double[] {-SET.fastRecovery() * y[0], -y[1] / SET.slowSeconds()});
  }

  private static void assertPools(double[] expected, Pools pools) {
    assertEquals(expected[0], pools.fast(), 1e-9);
    assertEquals(expected[1], pools.slow(), 1e-9);
  }

  @Test
  void theClosedFormIsThatOfTheEquations() {
    Pools pools = SET.fresh();
    double[] reference = {0, 0};
    for (Bout bout : Drills.sets(3, 180, 6, 7, 3, 0.6)) {
      if (bout.isHold()) {
        assertEquals(bout.seconds(), pools.hold(bout.ofMvc(), bout.seconds()));
        reference = tired(reference, bout.seconds(), bout.ofMvc());
      } else {
        pools.rest(bout.seconds());
        reference = rested(reference, bout.seconds());
      }
      assertPools(reference, pools);
    }
    for (int i = 0; i < 24; i++) {
      double before = pools.fast() + pools.slow();
      double mean = pools.give(7);
      reference = given(reference, 7);
      assertPools(reference, pools);
      assertEquals((reference[0] + reference[1] - before) / (7 * SET.fatigue()), mean, 1e-9);
      pools.rest(3);
      reference = rested(reference, 3);
      assertPools(reference, pools);
    }
  }

  @Test
  void aHoldFailsWhereCapacityMeetsTheLoad() {
    Pools pools = SET.fresh();
    pools.hold(0.8, 7);
    pools.rest(3);
    double carried = SET.fresh().hold(0.8, 60);
    assertEquals(SET.enduranceSeconds(0.8), carried, 1e-9);
    double then = pools.hold(0.8, 60);
    Pools again = SET.fresh();
    again.hold(0.8, 7);
    again.rest(3);
    again.hold(0.8, then);
    assertEquals(0.8, again.capacity(), 1e-12);
    assertTrue(then < carried);
  }

  /** What is missed counts as held, so that a session is not lighter for being impossible. */
  @Test
  void aMissedHoldCountsAsHeld() {
    Pools pools = SET.fresh();
    assertTrue(pools.hold(0.9, 60) < 60);
    assertPools(tired(new double[] {0, 0}, 60, 0.9), pools);
    pools.hold(0.9, 600);
    assertEquals(0, pools.capacity());
    assertEquals(0, pools.hold(0.1, 5));
  }

  @Test
  void theGreatestLoadForSevenSecondsIsHeldForSevenSeconds() {
    double load = SET.ofMvc(1);
    assertEquals(7, SET.fresh().hold(load, 7));
    assertTrue(SET.fresh().hold(load * 1.0001, 7) < 7);
    assertEquals(1, SET.greatestLoad(0));
    assertEquals(7, SET.enduranceSeconds(load), 1e-9);
    assertEquals(0, SET.enduranceSeconds(1.2));
  }

  @Test
  void whatIsNoLoadTimeOrRateIsRefused() {
    Pools pools = SET.fresh();
    for (Runnable wrong :
        List.<Runnable>of(
            () -> pools.hold(0, 1),
            () -> pools.hold(0.5, -1),
            () -> pools.hold(Double.NaN, 1),
            () -> pools.rest(Double.POSITIVE_INFINITY),
            () -> pools.give(0),
            () -> SET.enduranceSeconds(0),
            () -> SET.greatestLoad(-1),
            () -> rates(0, 0.7, 0.43),
            () -> rates(0.01, 1, 0.43),
            () -> rates(0.01, 0.7, 1.1),
            () -> rates(0.01, 0.7, 0.001))) {
      assertThrows(IllegalArgumentException.class, wrong::run);
    }
  }

  private static PoolRates rates(double fatigue, double share, double recovery) {
    return new PoolRates("made", fatigue, share, recovery, 600, 2, 0.4, 0.8, "made");
  }

  @Test
  void fingersThatLetGoLoseNoMoreThanTheyHeld() {
    Pools lettingGo = new Pools(SET);
    Pools holding = new Pools(SET);
    double held = lettingGo.holdUpTo(0.7, 600);
    assertTrue(held > 0 && held < 600);
    holding.hold(0.7, held);
    assertEquals(holding.capacity(), lettingGo.capacity(), 1e-12);
    assertEquals(0.7, lettingGo.capacity(), 1e-12);
    assertEquals(0, lettingGo.holdUpTo(0.8, 10));
    assertEquals(0.7, lettingGo.capacity(), 1e-12);
    assertEquals(5, new Pools(SET).holdUpTo(0.3, 5));
  }
}
