package gripwright.compare;

import gripwright.hand.Hands;
import java.util.List;

/**
 * What is done in an arm, written out once: weeks of sessions, each as arrays of holds and rests
 * whose loads follow from a person. Immutable by agreement: nobody writes to the arrays.
 *
 * @param sessions the different sessions
 * @param weeks for each week the places of its sessions in {@code sessions}
 * @param eased whether each week is eased (deload)
 */
@SuppressWarnings("ArrayRecordComponent") // internal; nobody compares or writes to them
record Program(List<Session> sessions, List<int[]> weeks, boolean[] eased) {

  static final Program NOTHING = new Program(List.of(), List.of(), new boolean[0]);

  /** How the load of a hold follows from a person. */
  enum Kind {
    /** No load. */
    REST,
    /** A share of the maximum of the setup. */
    SHARE,
    /** A load in kg. */
    KILOGRAMS,
    /** Body mass and a load in kg, which may be negative. */
    BODY_MASS
  }

  /**
   * A session.
   *
   * @param seconds time of each hold or rest
   * @param kinds how each load follows from a person
   * @param values the share or the kg of each load
   * @param setups the place of each hold's setup in the table of setups; -1 for a rest
   * @param hands which hands hold
   * @param bounds whether the time of each hold is the greatest one, so that it ends when the load
   *     can't be held any more
   * @param minutes of the whole session; 0 or less if that is the time of its holds and rests
   */
  @SuppressWarnings("ArrayRecordComponent") // internal; nobody compares or writes to them
  record Session(
      double[] seconds,
      Kind[] kinds,
      double[] values,
      int[] setups,
      Hands[] hands,
      boolean[] bounds,
      double minutes) {

    /** Returns whether the time of a hold is a bound. */
    boolean hasBound() {
      for (boolean bound : bounds) {
        if (bound) {
          return true;
        }
      }
      return false;
    }

    /** Returns this session with other times; its minutes change by as much. */
    Session lasting(double[] others) {
      double shorter = 0;
      for (int i = 0; i < others.length; i++) {
        shorter += seconds[i] - others[i];
      }
      return new Session(
          others,
          kinds,
          values,
          setups,
          hands,
          bounds,
          minutes > 0 ? Math.max(1e-9, minutes - shorter / 60) : minutes);
    }

    int steps() {
      return seconds.length;
    }

    boolean isHold(int step) {
      return kinds[step] != Kind.REST;
    }

    /** Returns the load of a step in kg, 0 or more. */
    double load(int step, Person person) {
      return switch (kinds[step]) {
        case REST -> 0;
        case SHARE -> values[step] * person.maximum(setups[step]);
        case KILOGRAMS -> values[step];
        case BODY_MASS -> Math.max(0, person.bodyMass() + values[step]);
      };
    }

    /** Returns the load of a step as a share of the maximum of its setup. */
    double share(int step, Person person) {
      return kinds[step] == Kind.SHARE
          ? values[step]
          : load(step, person) / person.maximum(setups[step]);
    }

    /** Returns whether all loads are shares of a maximum, so that everybody tires equally. */
    boolean isRelative() {
      for (Kind kind : kinds) {
        if (kind != Kind.REST && kind != Kind.SHARE) {
          return false;
        }
      }
      return true;
    }

    boolean needsBodyMass() {
      for (Kind kind : kinds) {
        if (kind == Kind.BODY_MASS) {
          return true;
        }
      }
      return false;
    }

    double totalSeconds() {
      double sum = 0;
      for (double each : seconds) {
        sum += each;
      }
      return sum;
    }

    double minutesInAll() {
      return minutes > 0 ? minutes : totalSeconds() / 60;
    }

    int holds() {
      int holds = 0;
      for (int i = 0; i < steps(); i++) {
        holds += isHold(i) ? 1 : 0;
      }
      return holds;
    }
  }

  /** Returns whether nothing is done. */
  boolean isNothing() {
    return sessions.isEmpty();
  }

  /** Returns how often each session is done. */
  int[] times() {
    int[] times = new int[sessions.size()];
    for (int[] week : weeks) {
      for (int session : week) {
        times[session]++;
      }
    }
    return times;
  }
}
