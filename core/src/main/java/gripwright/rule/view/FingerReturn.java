package gripwright.rule.view;

import gripwright.grip.FingerSet;
import gripwright.hand.Hands;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * Fingers that returned to training on a day, after clearance or pain, with the highest level of
 * each week since. Weeks are numbered from the plan's first day; earlier ones are negative. Not
 * thread-safe.
 */
final class FingerReturn {

  private final FingerSet fingers;
  private final Hands hands;
  final LocalDate on;
  private final TreeMap<Long, Double> levels = new TreeMap<>();

  FingerReturn(FingerSet fingers, Hands hands, LocalDate on) {
    this.fingers = fingers;
    this.hands = hands;
    this.on = on;
  }

  boolean isOf(ExerciseView exercise) {
    return fingers.overlaps(exercise.fingers())
        && !Collections.disjoint(hands.sides(), exercise.handsAtWork().sides());
  }

  void note(LocalDate day, long week, double level) {
    if (!day.isBefore(on)) {
      levels.merge(week, level, Math::max);
    }
  }

  /** Returns the highest level of the most recent earlier week; NaN if there is none. */
  double before(long week) {
    Map.Entry<Long, Double> earlier = levels.lowerEntry(week);
    return earlier == null ? Double.NaN : earlier.getValue();
  }
}
