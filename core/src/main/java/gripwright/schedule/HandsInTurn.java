package gripwright.schedule;

import gripwright.hand.Hands;
import gripwright.protocol.Scheme;
import java.time.Duration;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * Exercises of alternating hands: each set is done with the left hand, then with the right. One
 * hand works in the rest of the other, which is never shortened.
 */
public final class HandsInTurn {

  private HandsInTurn() {}

  /**
   * Returns exercises with those of alternating hands together.
   *
   * @param exercises of one session, in order
   * @return one exercise each, or those of the left and the right hand
   */
  public static List<List<PlannedExercise>> together(List<PlannedExercise> exercises) {
    List<List<PlannedExercise>> all = new ArrayList<>();
    BitSet taken = new BitSet(exercises.size());
    for (int i = 0; i < exercises.size(); i++) {
      if (taken.get(i)) {
        continue;
      }
      PlannedExercise exercise = exercises.get(i);
      OptionalInt other =
          IntStream.range(i + 1, exercises.size())
              .filter(n -> !taken.get(n) && areOneEntry(exercise, exercises.get(n)))
              .findFirst();
      other.ifPresent(taken::set);
      all.add(
          other.isPresent()
              ? List.of(exercise, exercises.get(other.getAsInt()))
              : List.of(exercise));
    }
    return all;
  }

  private static boolean areOneEntry(PlannedExercise left, PlannedExercise right) {
    return areOfOneLine(left, right)
        && left.setup().hands() == Hands.LEFT
        && right.setup().hands() == Hands.RIGHT
        && left.setup().grip().name().equals(right.setup().grip().name());
  }

  /** Returns whether two exercises are of alternating hands and of one line of the plan. */
  public static boolean areOfOneLine(PlannedExercise one, PlannedExercise other) {
    return one.alternating() && other.alternating() && one.path().equals(other.path());
  }

  /**
   * Returns the time of exercises with the rests between them.
   *
   * @param exercises of one session, in order
   * @param between rest between two exercises
   */
  public static Duration time(List<PlannedExercise> exercises, Duration between) {
    Duration time = Duration.ZERO;
    int next = 0;
    while (next < exercises.size()) {
      int first = next;
      List<Scheme> left = new ArrayList<>();
      List<Scheme> right = new ArrayList<>();
      do {
        PlannedExercise exercise = exercises.get(next);
        (exercise.setup().hands() == Hands.RIGHT ? right : left).add(exercise.scheme());
        next++;
      } while (next < exercises.size() && areOfOneLine(exercises.get(first), exercises.get(next)));
      boolean alone = next == first + 1;
      time =
          time.plus(first == 0 ? Duration.ZERO : between)
              .plus(alone ? exercises.get(first).scheme().duration() : time(left, right, between));
    }
    return time;
  }

  /**
   * Returns the time of alternating hands.
   *
   * @param left what the left hand does, in order
   * @param right what the right hand does
   * @param between rest of a hand between two of them
   */
  public static Duration time(List<Scheme> left, List<Scheme> right, Duration between) {
    List<Turn> lefts = turns(left, between);
    List<Turn> rights = turns(right, between);
    Duration now = Duration.ZERO;
    Duration leftRested = Duration.ZERO;
    Duration rightRested = Duration.ZERO;
    for (int set = 0; set < Math.max(lefts.size(), rights.size()); set++) {
      if (set < lefts.size()) {
        now = later(now, leftRested).plus(lefts.get(set).work);
        leftRested = now.plus(lefts.get(set).rest);
      }
      if (set < rights.size()) {
        now = later(now, rightRested).plus(rights.get(set).work);
        rightRested = now.plus(rights.get(set).rest);
      }
    }
    return now;
  }

  /** A set of a hand, and its rest after it. */
  private record Turn(Duration work, Duration rest) {}

  private static List<Turn> turns(List<Scheme> schemes, Duration between) {
    List<Turn> turns = new ArrayList<>();
    for (Scheme scheme : schemes) {
      Duration set = scheme.withSets(1).duration();
      for (int n = 1; n <= scheme.sets(); n++) {
        turns.add(new Turn(set, n < scheme.sets() ? scheme.restBetweenSets() : between));
      }
    }
    return turns;
  }

  private static Duration later(Duration one, Duration other) {
    return one.compareTo(other) < 0 ? other : one;
  }
}
