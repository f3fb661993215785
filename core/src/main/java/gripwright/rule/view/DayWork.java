package gripwright.rule.view;

import gripwright.grip.Grip;
import gripwright.hand.Side;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * The work of an athlete's fingers on a day, over all plans. Work with both hands counts for each
 * hand. Sums are those of the hand with the higher value and exclude tests.
 */
final class DayWork {

  static final DayWork NOTHING = new DayWork();

  private final Map<Side, List<HeldWork>> byHand = new EnumMap<>(Side.class);
  private final Map<Side, List<OnGrip>> byGrip = new EnumMap<>(Side.class);
  private double greatest;
  private double greatestOfOthers;
  private boolean climbing;
  private boolean climbingOfOthers;
  private int sessions;
  private int otherSessions;
  private int plannedSessions;
  private int otherPlannedSessions;

  /** Adds an exercise or a test of this plan ({@code own}) or of an earlier one. */
  void add(ExerciseView exercise, boolean own) {
    if (exercise.test) {
      reach(HeldWork.WHOLE_MAXIMUM, own);
      return;
    }
    HeldWork work = exercise.work();
    if (!exercise.rehabilitation) { // the practitioner's plan decides its rest days
      reach(work.greatest(), own);
    }
    for (Side side : exercise.handsAtWork().sides()) {
      byHand.computeIfAbsent(side, s -> new ArrayList<>()).add(work);
      onGrip(byGrip.computeIfAbsent(side, s -> new ArrayList<>()), exercise.grip()).seconds +=
          work.secondsAt60();
    }
  }

  /** Adds a logged test, which counts as work at the maximum. */
  void test() {
    reach(HeldWork.WHOLE_MAXIMUM, false);
  }

  private void reach(double level, boolean own) {
    greatest = Math.max(greatest, level);
    greatestOfOthers = own ? greatestOfOthers : Math.max(greatestOfOthers, level);
  }

  /** The time on one grip; grips that differ in name only are one. */
  private static final class OnGrip {
    private final Grip grip;
    private double seconds;

    OnGrip(Grip grip) {
      this.grip = grip;
    }
  }

  private static OnGrip onGrip(List<OnGrip> known, Grip grip) {
    for (OnGrip each : known) {
      if (each.grip.fingers().equals(grip.fingers()) && each.grip.bands().equals(grip.bands())) {
        return each;
      }
    }
    OnGrip added = new OnGrip(grip);
    known.add(added);
    return added;
  }

  /** Counts a session of this plan ({@code own}) or of an earlier one. */
  void train(boolean own) {
    sessions += own ? 1 : 0;
    otherSessions += own ? 0 : 1;
  }

  /** Counts a session planned for this day, whether or not it was trained then. */
  void plan(boolean own) {
    plannedSessions += own ? 1 : 0;
    otherPlannedSessions += own ? 0 : 1;
  }

  int plannedSessions() {
    return plannedSessions;
  }

  int otherPlannedSessions() {
    return otherPlannedSessions;
  }

  int sessions() {
    return sessions;
  }

  int otherSessions() {
    return otherSessions;
  }

  /** Notes hard climbing of this plan ({@code own}) or of an earlier one. */
  void climb(boolean own) {
    climbing = true;
    climbingOfOthers |= !own;
  }

  /** Returns whether any work, including tests, is at a level or above. */
  boolean reaches(double level) {
    return HeldWork.reaches(greatest, level);
  }

  /** Returns whether this is a rest day for the fingers, without heavy work or hard climbing. */
  boolean rests() {
    return !climbing && !reaches(HeldWork.HEAVY);
  }

  /** Returns whether any work of earlier plans, including tests, is at a level or above. */
  boolean othersReach(double level) {
    return HeldWork.reaches(greatestOfOthers, level);
  }

  /** Returns whether earlier plans leave this day as a rest day. */
  boolean othersRest() {
    return !climbingOfOthers && !othersReach(HeldWork.HEAVY);
  }

  /** Returns the sum of a number for the hand with the higher sum. */
  double most(ToDoubleFunction<HeldWork> number) {
    double most = 0;
    for (List<HeldWork> some : byHand.values()) {
      most = Math.max(most, some.stream().mapToDouble(number).sum());
    }
    return most;
  }

  /** Returns the longest time of a hand on one grip at 60 % or more, in seconds. */
  double mostOnOneGrip() {
    double most = 0;
    for (List<OnGrip> some : byGrip.values()) {
      for (OnGrip each : some) {
        most = Math.max(most, each.seconds);
      }
    }
    return most;
  }
}
