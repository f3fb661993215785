package gripwright.fatigue;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.BinaryOperator;

/**
 * The first hold of an exercise that can't be completed.
 *
 * @param hold its position among the holds of the exercise, from 0
 * @param carriedSeconds how long the load is carried, 0 s or more and less than the hold
 */
record Miss(int hold, double carriedSeconds) {

  static final Comparator<Miss> FIRST =
      Comparator.comparingInt(Miss::hold).thenComparingDouble(Miss::carriedSeconds);

  /** Returns the earlier one of those there are. */
  static Optional<Miss> either(Optional<Miss> one, Optional<Miss> other) {
    return one.isEmpty() || other.isEmpty()
        ? one.or(() -> other)
        : one.map(miss -> BinaryOperator.minBy(FIRST).apply(miss, other.get()));
  }

  /** Returns the later one if there are both. */
  static Optional<Miss> both(Optional<Miss> one, Optional<Miss> other) {
    return one.flatMap(
        miss -> other.map(second -> BinaryOperator.maxBy(FIRST).apply(miss, second)));
  }
}
