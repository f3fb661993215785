package gripwright.fatigue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * The course of a session from fresh fingers by one set of numbers. A hold that can't be completed
 * continues with the remaining capacity until its written end, and so does the session.
 *
 * @param holds every hold in order
 * @param endReserve estimated capacity at the end, once the load is let go, as a fraction of MVC,
 *     0..1; see {@link Muscle#reserve}
 */
public record Course(List<Hold> holds, double endReserve) {

  /**
   * A simulated hold.
   *
   * @param bout the planned hold
   * @param carriedSeconds how long the load was carried: the whole time, or less if capacity fell
   *     below the load, 0 s if it was below from the beginning
   * @param capacityLeft estimated capacity at its end, once the load is let go, as a fraction of
   *     MVC, 0..1
   */
  public record Hold(Bout bout, double carriedSeconds, double capacityLeft) {

    /** Tells whether the load was carried for the whole time. */
    public boolean completed() {
      return carriedSeconds >= bout.seconds();
    }
  }

  /** Copies the list. */
  public Course {
    holds = List.copyOf(holds);
  }

  /**
   * Simulates a session.
   *
   * @param set numbers of the fingers' fatigue
   * @param bouts holds and rests in the order they happen
   */
  public static Course of(FatigueSet set, List<Bout> bouts) {
    Fingers fingers = set.fresh();
    List<Hold> holds = new ArrayList<>();
    for (Bout bout : bouts) {
      if (bout.isHold()) {
        double carried = fingers.hold(bout.ofMvc(), bout.seconds());
        holds.add(new Hold(bout, carried, fingers.reserve()));
      } else {
        fingers.rest(bout.seconds());
      }
    }
    return new Course(holds, fingers.reserve());
  }

  /** Returns the position in {@link #holds}, from 0, of the first hold that can't be completed. */
  public OptionalInt firstMissed() {
    for (int i = 0; i < holds.size(); i++) {
      if (!holds.get(i).completed()) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }
}
