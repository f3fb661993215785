package gripwright.rule.view;

import gripwright.grip.Grip;
import gripwright.hand.Side;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * What an athlete's fingers do on a day, over all plans. Two hands that hang together both hold;
 * numbers are those of the hand that has more, and tests are left out of them.
 */
final class DayWork {

  static final DayWork NOTHING = new DayWork();

  private final Map<Side, List<HeldWork>> byHand = new EnumMap<>(Side.class);
  private final Map<Side, Map<Object, Double>> byGrip = new EnumMap<>(Side.class);
  private double greatest;
  private double greatestOfOthers;
  private boolean climbing;
  private boolean climbingOfOthers;
  private int sessions;
  private int otherSessions;
  private int plannedSessions;
  private int otherPlannedSessions;

  /** Adds an exercise or a test, of the plan itself or of an earlier one. */
  void add(ExerciseView exercise, boolean own) {
    if (exercise.test) {
      reach(HeldWork.WHOLE_MAXIMUM, own);
      return;
    }
    HeldWork work = exercise.work();
    if (!exercise.rehabilitation) { // of that, the practitioner's plan says which days rest
      reach(work.greatest(), own);
    }
    for (Side side : exercise.handsAtWork().sides()) {
      byHand.computeIfAbsent(side, s -> new ArrayList<>()).add(work);
      byGrip
          .computeIfAbsent(side, s -> new HashMap<>())
          .merge(shape(exercise.grip()), work.secondsAt60(), Double::sum);
    }
  }

  /** Counts a test that was logged, which is work at the maximum. */
  void test() {
    reach(HeldWork.WHOLE_MAXIMUM, false);
  }

  private void reach(double level, boolean own) {
    greatest = Math.max(greatest, level);
    greatestOfOthers = own ? greatestOfOthers : Math.max(greatestOfOthers, level);
  }

  /** Returns what makes a grip the one that it is, whatever its name. */
  private static Object shape(Grip grip) {
    return List.of(grip.fingers(), grip.bands());
  }

  /** Counts a session, of the plan itself or of an earlier one. */
  void train(boolean own) {
    sessions += own ? 1 : 0;
    otherSessions += own ? 0 : 1;
  }

  /** Counts a session that was planned for the day, whether or not it was trained on it. */
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

  /** Notes hard climbing, of the plan itself or of an earlier one. */
  void climb(boolean own) {
    climbing = true;
    climbingOfOthers |= !own;
  }

  /** Tells whether anything, tests included, is at a level or above. */
  boolean reaches(double level) {
    return HeldWork.reaches(greatest, level);
  }

  /** Tells whether fingers rest: nothing is heavy, and there is no hard climbing. */
  boolean rests() {
    return !climbing && !reaches(HeldWork.HEAVY);
  }

  /** Tells whether anything of earlier plans, tests included, is at a level or above. */
  boolean othersReach(double level) {
    return HeldWork.reaches(greatestOfOthers, level);
  }

  /** Tells whether fingers rest from earlier plans. */
  boolean othersRest() {
    return !climbingOfOthers && !othersReach(HeldWork.HEAVY);
  }

  /** Returns the sum of a number for the hand that has more of it. */
  double most(ToDoubleFunction<HeldWork> number) {
    return byHand.values().stream()
        .mapToDouble(some -> some.stream().mapToDouble(number).sum())
        .max()
        .orElse(0);
  }

  /** Returns the longest time at 60 % or more of a hand on one grip, in seconds. */
  double mostOnOneGrip() {
    return byGrip.values().stream()
        .flatMap(some -> some.values().stream())
        .mapToDouble(seconds -> seconds)
        .max()
        .orElse(0);
  }
}
