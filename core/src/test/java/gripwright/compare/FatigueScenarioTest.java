package gripwright.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.fatigue.FatigueRates;
import gripwright.hand.Hands;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FatigueScenarioTest {

  private static final FatigueScenario HAND =
      new FatigueScenario(Optional.of(FatigueRates.HAND_2012));

  private static Program.Session hold(double seconds, double ofMvc) {
    return new Program.Session(
        new double[] {seconds},
        new Program.Kind[] {Program.Kind.SHARE},
        new double[] {ofMvc / FatigueRates.HAND_2012.ofMvc(1)},
        new int[] {0},
        new Hands[] {Hands.BOTH},
        new boolean[1],
        0);
  }

  private static Person person(double fatigue) {
    return new Person(70, new double[] {100}, new double[] {0.4}, fatigue, null, null);
  }

  private static double completed(double seconds) {
    Philox random = new Philox(2027);
    int draws = 10_000;
    int completed = 0;
    for (int draw = 0; draw < draws; draw++) {
      double factor = Math.exp(Parameters.FATIGUE_SPREAD * random.normal(0, draw, 0, 0));
      completed += HAND.end(hold(seconds, 0.5), person(factor)).completed();
    }
    return completed / (double) draws;
  }

  /**
   * Arithmetic: endurance at 50 % of MVC by the hand set of 2012 with the logarithm of the fatigue
   * factor normal, of standard deviation ln 2.2 / 1.6449, so that its 5th and 95th percentile are
   * 2.2 times less and more.
   */
  @Test
  void probabilityThatOneHoldIsCompleted() {
    assertEquals(0.874, completed(60), 0.01);
    assertEquals(0.241, completed(150), 0.013);
  }

  @Test
  void aLoadOutsideTheSetHasNoEnd() {
    assertEquals(Double.NaN, HAND.end(hold(5, 0.7), person(1)).reserve());
    assertEquals(1, HAND.end(hold(5, 0.5), person(1)).completed());
  }

  @Test
  void aHandRestsWhileTheOtherHolds() {
    Program.Session both =
        new Program.Session(
            new double[] {60, 60},
            new Program.Kind[] {Program.Kind.SHARE, Program.Kind.SHARE},
            new double[] {0.4, 0.4},
            new int[] {0, 0},
            new Hands[] {Hands.BOTH, Hands.BOTH},
            new boolean[2],
            0);
    Program.Session inTurn =
        new Program.Session(
            both.seconds(),
            both.kinds(),
            both.values(),
            both.setups(),
            new Hands[] {Hands.LEFT, Hands.RIGHT},
            new boolean[2],
            0);
    double together = FatigueScenario.AS_IN_PLANS.end(both, person(1)).reserve();
    FatigueScenario.End turn = FatigueScenario.AS_IN_PLANS.end(inTurn, person(1));
    assertEquals(2, turn.completed());
    assertEquals(true, turn.reserve() > together);
  }

  @Test
  void aBoundIsHeldUntilTheLoadFails() {
    Program.Session bound =
        new Program.Session(
            new double[] {600, 60, 600},
            new Program.Kind[] {Program.Kind.SHARE, Program.Kind.REST, Program.Kind.SHARE},
            new double[] {0.5, 0, 0.5},
            new int[] {0, -1, 0},
            new Hands[] {Hands.BOTH, Hands.BOTH, Hands.BOTH},
            new boolean[] {true, false, true},
            0);
    Program.Session actual = FatigueScenario.AS_IN_PLANS.actual(bound, person(1));
    double first = actual.seconds()[0];
    assertEquals(true, first > 30 && first < 300, () -> "held " + first);
    assertEquals(true, actual.seconds()[2] < first);
    assertEquals(60, actual.seconds()[1]);
    assertEquals(2, FatigueScenario.AS_IN_PLANS.end(actual, person(1)).completed());
    assertEquals(true, FatigueScenario.AS_IN_PLANS.actual(bound, person(2)).seconds()[0] < first);
  }
}
