package gripwright.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Two corresponding things.
 *
 * @param before the earlier one
 * @param after the later one
 */
record Pair<T>(T before, T after) {

  /** Pairs corresponding elements, in order, and removes them from both lists. */
  static <T> List<Pair<T>> taken(List<T> olds, List<T> news, Together<T> together) {
    List<Pair<T>> pairs = new ArrayList<>();
    for (T old : List.copyOf(olds)) {
      Optional<T> match = news.stream().filter(n -> together.are(old, n)).findFirst();
      match.ifPresent(
          n -> {
            pairs.add(new Pair<>(old, n));
            removeFirst(olds, old::equals);
            removeFirst(news, n::equals);
          });
    }
    return pairs;
  }

  private static <T> void removeFirst(List<T> list, Predicate<T> which) {
    for (int i = 0; i < list.size(); i++) {
      if (which.test(list.get(i))) {
        list.remove(i);
        return;
      }
    }
  }

  /** Returns whether two things correspond. */
  interface Together<T> {
    boolean are(T before, T after);
  }
}
