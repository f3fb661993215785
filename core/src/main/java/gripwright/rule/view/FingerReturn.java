package gripwright.rule.view;

import gripwright.grip.FingerSet;
import gripwright.hand.Hands;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * Fingers that came back on a day, by clearance or after pain, and the greatest level of each week
 * since. Weeks are counted from the plan's first day; earlier ones are below 0. Not thread-safe.
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

  /** Returns the greatest level of the nearest earlier week; NaN if there is none. */
  double before(long week) {
    Map.Entry<Long, Double> earlier = levels.lowerEntry(week);
    return earlier == null ? Double.NaN : earlier.getValue();
  }
}
