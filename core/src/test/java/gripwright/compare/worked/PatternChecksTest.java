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
import gripwright.quantity.Load;
import gripwright.strength.CriticalForce;
import gripwright.strength.ImpulseBalance;
import gripwright.strength.LoadEstimate;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
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

  private static CriticalForce critical(double kilograms, double impulse) {
    return new CriticalForce(
        CriticalForce.Definition.MEAN_OF_LAST_THREE,
        new LoadEstimate(Load.ofKilograms(kilograms), 0),
        impulse,
        0,
        true);
  }

  /** A hold that can't be completed, from 1, and how long it is held; nothing if all can. */
  private record Failure(int hold, double seconds) {}

  private static Optional<Failure> failure(
      Scheme scheme, double kilograms, ImpulseBalance impulse) {
    double above = kilograms - impulse.critical().force().best().kilograms();
    double left = impulse.critical().impulseKgS();
    int number = 0;
    for (Scheme.Bout bout : scheme.flat()) {
      if (bout instanceof Scheme.Rest rest) {
        left = impulse.after(left, Load.ZERO, rest.seconds());
        continue;
      }
      number++;
      double seconds = ((Scheme.Hold) bout).seconds();
      if (left < above * seconds) {
        return Optional.of(new Failure(number, left / above));
      }
      left = impulse.after(left, Load.ofKilograms(kilograms), seconds);
    }
    return Optional.empty();
  }

  /**
   * Arithmetic, no standard: critical force 40 kg, 500 kg s above it, recovered with a time
   * constant of 400 s in every rest. Sixes of 7 s at 60 kg use 140 kg s each: after three, 84.9 kg
   * s are left.
   */
  @Test
  void impulseAboveCriticalForceRunsOut() {
    ImpulseBalance impulse = new ImpulseBalance(critical(40, 500), 400);
    Failure sixes = failure(Studies.p2().scheme(), 60, impulse).orElseThrow();
    assertEquals(4, sixes.hold());
    assertEquals(4.312, sixes.seconds(), 5e-4);
    assertEquals(2, failure(Studies.p1().scheme(), 80, impulse).orElseThrow().hold());
  }

  /**
   * Arithmetic: critical force 41 % of the maximum, which is 425.7 N, and 30,882 N s above it
   * without recovery, in holds of 7 s.
   */
  @Test
  void holdsUntilTheImpulseIsUsedUp() {
    double critical = 425.7;
    double maximum = critical / 0.41;
    assertEquals(10.89, 30_882 / (7 * (0.8 * maximum - critical)), 0.005);
    assertEquals(22.36, 30_882 / (7 * (0.6 * maximum - critical)), 0.005);
    double newtons = 9.80665;
    ImpulseBalance never = new ImpulseBalance(critical(critical / newtons, 30_882 / newtons), 1e12);
    Scheme many = scheme(repeat(40, 3, hold(7)));
    Failure heavy = failure(many, 0.8 * maximum / newtons, never).orElseThrow();
    assertEquals(10.89, heavy.hold() - 1 + heavy.seconds() / 7, 0.005);
    Failure light = failure(many, 0.6 * maximum / newtons, never).orElseThrow();
    assertEquals(22.36, light.hold() - 1 + light.seconds() / 7, 0.005);
  }
}
