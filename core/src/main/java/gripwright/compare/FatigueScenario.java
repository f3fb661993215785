package gripwright.compare;

import gripwright.fatigue.FatigueRates;
import gripwright.fatigue.FatigueSet;
import gripwright.fatigue.Fingers;
import gripwright.fatigue.PoolRates;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import java.util.List;
import java.util.Optional;

/**
 * A model of fatigue for whole sessions: the one that plans use, or one set for every session.
 * Scenarios are compared, never averaged. Immutable.
 *
 * @param set one set for every session; empty to choose one for each session as plans do: two pools
 *     for short holds with short rests, otherwise three compartments by the heaviest hold
 */
record FatigueScenario(Optional<FatigueSet> set) {

  static final FatigueScenario AS_IN_PLANS = new FatigueScenario(Optional.empty());

  /** Loads that exceed the valid range by less count as inside. */
  private static final double TOLERANCE = 1e-9;

  /** Returns the scenarios besides the one of plans. */
  static List<FatigueScenario> others() {
    return List.of(
        new FatigueScenario(Optional.of(FatigueRates.HAND_2012)),
        new FatigueScenario(Optional.of(FatigueRates.GRIP_2021)),
        new FatigueScenario(Optional.of(FatigueRates.FINGERS_INTENSE)),
        new FatigueScenario(Optional.of(PoolRates.SHORT_RESTS)));
  }

  String name() {
    return set.map(FatigueSet::name).orElse("AS_IN_PLANS");
  }

  /**
   * How a session ends.
   *
   * @param reserve least capacity of a hand after it, as a share of MVC; NaN outside the model
   * @param completed holds that are held to their end
   * @param firstFailure number of the first hold that fails, from 1; one more than there are holds
   *     if none does
   */
  record End(double reserve, int completed, int firstFailure) {}

  /**
   * Returns a session with the times for which a person holds where the time is a bound: until the
   * load can't be held any more. The session itself where it has no bound, or where the model does
   * not serve.
   */
  Program.Session actual(Program.Session session, Person person) {
    if (!session.hasBound()) {
      return session;
    }
    double[] seconds = session.seconds().clone();
    Program.Session now = session;
    for (int i = 0; i < seconds.length; i++) {
      if (session.bounds()[i]) {
        double carried = carried(now, i, person);
        if (carried < seconds[i]) {
          seconds = seconds.clone();
          seconds[i] = carried;
          now = session.lasting(seconds);
        }
      }
    }
    return now;
  }

  /**
   * Returns for how long a hold is carried, in s; its whole time where the model does not serve.
   */
  private double carried(Program.Session session, int step, Person person) {
    double heaviest = heaviest(session, person);
    FatigueSet chosen = chosen(session, heaviest);
    double least = session.seconds()[step];
    if (!(chosen.ofMvc(heaviest) <= chosen.to() + TOLERANCE)) {
      return least;
    }
    double whole = chosen.ofMvc(1);
    for (Side side : session.hands()[step].sides()) {
      Fingers fingers = chosen.times(person.fatigue()).fresh();
      for (int i = 0; i < step; i++) {
        double share = session.isHold(i) ? session.share(i, person) : 0;
        if (share > 0 && session.hands()[i].sides().contains(side)) {
          fingers.hold(share * whole, session.seconds()[i]);
        } else {
          fingers.rest(session.seconds()[i]);
        }
      }
      double load = session.share(step, person) * whole;
      least = Math.min(least, fingers.hold(load, session.seconds()[step]));
    }
    return least;
  }

  private static double heaviest(Program.Session session, Person person) {
    double heaviest = 0;
    for (int i = 0; i < session.steps(); i++) {
      if (session.isHold(i)) {
        heaviest = Math.max(heaviest, session.share(i, person));
      }
    }
    return heaviest;
  }

  private FatigueSet chosen(Program.Session session, double heaviest) {
    FatigueSet chosen = set.orElseGet(() -> asInPlans(session));
    return set.isEmpty() && chosen == FatigueRates.HAND_2012
        ? FatigueRates.forHeaviest(FatigueRates.HAND_2012.ofMvc(heaviest))
        : chosen;
  }

  /** Returns how a session ends for a person, with the times for which bounds are held. */
  End end(Program.Session session, Person person) {
    double heaviest = heaviest(session, person);
    FatigueSet chosen = chosen(session, heaviest);
    if (!(chosen.ofMvc(heaviest) <= chosen.to() + TOLERANCE)) {
      return new End(Double.NaN, 0, 0);
    }
    End end = run(chosen, session, person, Side.LEFT);
    if (oneHanded(session)) {
      End right = run(chosen, session, person, Side.RIGHT);
      end =
          new End(
              Math.min(end.reserve(), right.reserve()),
              end.completed() + right.completed() - session.holds(),
              Math.min(end.firstFailure(), right.firstFailure()));
    }
    return end;
  }

  /** Returns the set by how holds and rests lie, before loads are known. */
  private static FatigueSet asInPlans(Program.Session session) {
    boolean shortRest = false;
    double longest = 0;
    double held = 0;
    for (int i = 0; i < session.steps(); i++) {
      double seconds = session.seconds()[i];
      if (session.isHold(i)) {
        held += seconds;
        longest = Math.max(longest, held);
      } else {
        shortRest |= seconds <= PoolRates.LONGEST_SECONDS;
        held = seconds >= PoolRates.SHORTEST_REST_SECONDS ? 0 : held;
      }
    }
    return shortRest && longest <= PoolRates.LONGEST_SECONDS
        ? PoolRates.SHORT_RESTS
        : FatigueRates.HAND_2012;
  }

  private static boolean oneHanded(Program.Session session) {
    for (int i = 0; i < session.steps(); i++) {
      if (session.isHold(i) && session.hands()[i] != Hands.BOTH) {
        return true;
      }
    }
    return false;
  }

  /** Simulates one hand; holds of the other one count as completed rests. */
  private static End run(FatigueSet set, Program.Session session, Person person, Side side) {
    Fingers fingers = set.times(person.fatigue()).fresh();
    double whole = set.ofMvc(1);
    int holds = 0;
    int completed = 0;
    int first = 0;
    double least = 1;
    for (int i = 0; i < session.steps(); i++) {
      double seconds = session.seconds()[i];
      if (!session.isHold(i)) {
        fingers.rest(seconds);
        continue;
      }
      holds++;
      double share = session.share(i, person);
      if (!session.hands()[i].sides().contains(side) || share <= 0) {
        fingers.rest(seconds);
        completed++;
      } else if (fingers.hold(share * whole, seconds) >= seconds || session.bounds()[i]) {
        completed++;
      } else if (first == 0) {
        first = holds;
      }
      least = Math.max(0, Math.min(1, fingers.reserve()));
    }
    return new End(least, completed, first == 0 ? holds + 1 : first);
  }
}
