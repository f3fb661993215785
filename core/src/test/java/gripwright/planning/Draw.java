package gripwright.planning;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Draws one thing after another; the same seed gives the same things. */
final class Draw {

  private final Random random;

  Draw(Random random) {
    this.random = random;
  }

  /** Returns a whole number, both ends included. */
  int between(int low, int high) {
    return low + random.nextInt(high - low + 1);
  }

  /** Returns a multiple of a step, both ends included. */
  double between(double low, double high, double step) {
    double value = low + step * random.nextInt((int) Math.round((high - low) / step) + 1);
    return Math.round(value * 1000) / 1000.0; // as it would be written
  }

  boolean chance(int percent) {
    return random.nextInt(100) < percent;
  }

  @SafeVarargs
  final <T> T of(T... values) {
    return values[random.nextInt(values.length)];
  }

  <T> T of(List<T> values) {
    return values.get(random.nextInt(values.size()));
  }

  /** Returns so many different ones, or all if there are fewer, in any order. */
  <T> List<T> some(int count, List<T> values) {
    List<T> shuffled = new ArrayList<>(values);
    Collections.shuffle(shuffled, random);
    return shuffled.subList(0, Math.min(count, shuffled.size()));
  }
}
