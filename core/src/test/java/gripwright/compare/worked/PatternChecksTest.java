package gripwright.compare.worked;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.compare.Studies;
import gripwright.fatigue.FatigueRates;
import gripwright.fatigue.Muscle;
import gripwright.plan.Exercise;
import gripwright.protocol.Level;
import gripwright.protocol.Protocol;
import gripwright.protocol.Protocol.Part;
import gripwright.protocol.Scheme;
import gripwright.protocol.Term;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Checks of patterns of holds and rests; arithmetic unless a source is named. */
class PatternChecksTest {

  private static Part hold(int seconds) {
    return new Part.Hold(Term.of(Duration.ofSeconds(seconds)), Term.of(Level.ofMax(50)));
  }

  private static Scheme scheme(Part... parts) {
    Protocol.Builder protocol = Protocol.named("pattern");
    for (Part part : parts) {
      protocol.step(part);
    }
    return Exercise.of(protocol.build(), Studies.SETUP.grip(), Studies.SETUP.edge()).scheme();
  }

  private static Part repeat(int times, int rest, Part part) {
    return new Part.Repeat(Term.of(times), Term.of(Duration.ofSeconds(rest)), List.of(part));
  }

  @Test
  void thereIsNoRestAfterTheLastHold() {
    Scheme allOut = scheme(repeat(24, 3, hold(7)));
    assertEquals(168, allOut.timeUnderLoad().toSeconds());
    assertEquals(237, allOut.duration().toSeconds());
    Scheme tens = scheme(repeat(10, 50, hold(10)));
    assertEquals(100, tens.timeUnderLoad().toSeconds());
    assertEquals(550, tens.duration().toSeconds());
  }

  /** Four holds of 10 s with 5 s of rest; 3, 3, 3, 4, 4, 4, 5 and 5 sets, twice a week. */
  @Test
  void eightWeeksOfSetsThatGrow() {
    double seconds = 0;
    for (int sets : List.of(3, 3, 3, 4, 4, 4, 5, 5)) {
      Scheme week = scheme(repeat(sets, 180, repeat(4, 5, hold(10))));
      seconds += 2 * week.timeUnderLoad().toSeconds();
    }
    assertEquals(2_480, seconds);
  }

  /**
   * The load that three compartments can keep up for ever (Xia T, Frey Law LA 2008, J Biomech
   * 41:3046-3052), with the hand's rates of 2012, in cycles of 7:3 s and 5:5 s.
   */
  @Test
  void theLoadThatCanBeKeptUpForEver() {
    assertEquals(0.4684, sustained(7, 3), 5e-4);
    assertEquals(0.6594, sustained(5, 5), 5e-4);
  }

  private static double sustained(double hold, double rest) {
    double low = 0.1;
    double high = 1;
    while (high - low > 1e-5) {
      double middle = (low + high) / 2;
      if (isKeptUp(middle, hold, rest)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private static boolean isKeptUp(double load, double hold, double rest) {
    Muscle muscle = new Muscle(FatigueRates.HAND_2012);
    for (int cycle = 0; cycle < 2_000; cycle++) {
      if (muscle.hold(load, hold) < hold) {
        return false;
      }
      muscle.rest(rest);
    }
    return true;
  }
}
