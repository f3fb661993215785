package gripwright.finding;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The known names nearest to one that is unknown, for "did you mean".
 *
 * <p>Nearness is the number of letters to insert, delete, replace or swap with their neighbour
 * (optimal string alignment distance; Damerau 1964, Levenshtein 1966), ignoring letter case. A name
 * counts as near when no more than a third of its letters are wrong. Stateless.
 */
public final class Nearest {

  /** Most names suggested; more would be too long for a hint. */
  public static final int MOST = 4;

  /** A longer word is no typing mistake, so nothing is near it. */
  private static final int LONGEST = 64;

  private Nearest() {}

  private record Candidate(String name, int distance) {}

  /**
   * Returns the nearest of the known names; of equally near ones the first in alphabetical order.
   */
  public static Optional<String> to(String word, Collection<String> known) {
    return all(word, known).stream().findFirst();
  }

  /** Returns at most {@value #MOST} known names that are near, the nearest first. */
  public static List<String> all(String word, Collection<String> known) {
    if (word.isEmpty() || word.length() > LONGEST) {
      return List.of();
    }
    String wanted = word.toLowerCase(Locale.ROOT);
    List<Candidate> near = new ArrayList<>();
    for (String name : known) {
      int allowed = Math.max(1, Math.max(name.length(), wanted.length()) / 3);
      if (Math.abs(name.length() - wanted.length()) <= allowed) {
        int distance = distance(wanted, name.toLowerCase(Locale.ROOT));
        if (distance <= allowed && distance < wanted.length()) {
          near.add(new Candidate(name, distance));
        }
      }
    }
    near.sort(Comparator.comparingInt(Candidate::distance).thenComparing(Candidate::name));
    return near.stream().map(Candidate::name).distinct().limit(MOST).toList();
  }

  static int distance(String a, String b) {
    int[] twoAgo = new int[b.length() + 1];
    int[] oneAgo = new int[b.length() + 1];
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      oneAgo[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int changed = oneAgo[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(changed, 1 + Math.min(oneAgo[j], row[j - 1]));
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          row[j] = Math.min(row[j], twoAgo[j - 2] + 1);
        }
      }
      int[] spare = twoAgo;
      twoAgo = oneAgo;
      oneAgo = row;
      row = spare;
    }
    return oneAgo[b.length()];
  }
}
