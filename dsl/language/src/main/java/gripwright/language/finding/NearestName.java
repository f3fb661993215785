package gripwright.language.finding;

import java.util.Collection;
import java.util.Optional;
import java.util.TreeSet;

/** Finds the known name that a wrong one was most likely meant to be. */
public final class NearestName {

  private NearestName() {}

  /**
   * Returns the known name with the fewest letters added, left out, changed or swapped; empty if
   * every one differs by more than a third of its letters. Of equally near names the first in the
   * alphabet is taken.
   *
   * @param wrong the name that is not known
   * @param known the names that are
   */
  public static Optional<String> nearest(String wrong, Collection<String> known) {
    Optional<String> best = Optional.empty();
    int least = Integer.MAX_VALUE;
    for (String name : new TreeSet<>(known)) {
      if (Math.abs(name.length() - wrong.length()) <= allowed(wrong, name)) {
        int distance = distance(wrong, name);
        if (distance <= allowed(wrong, name) && distance < least) {
          least = distance;
          best = Optional.of(name);
        }
      }
    }
    return best;
  }

  private static int allowed(String wrong, String name) {
    return Math.max(1, Math.min(Math.max(wrong.length(), name.length()) / 3, 4));
  }

  private static int distance(String a, String b) {
    int[] before = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    int[] next = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      next[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        next[j] = Math.min(Math.min(next[j - 1], last[j]) + 1, last[j - 1] + change);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          next[j] = Math.min(next[j], before[j - 2] + 1);
        }
      }
      int[] spare = before;
      before = last;
      last = next;
      next = spare;
    }
    return last[b.length()];
  }
}
