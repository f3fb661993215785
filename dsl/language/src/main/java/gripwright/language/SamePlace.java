package gripwright.language;

import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.finding.Severity;
import gripwright.language.finding.LocatedFinding;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Merges equal findings about the same words, such as a line that is wrong for each of a plan's
 * athletes: one mistake gives one finding that lists its places. Advice about words that also have
 * an error is left out, since it matters only once the error is corrected.
 */
final class SamePlace {

  private SamePlace() {}

  static List<LocatedFinding> merged(List<LocatedFinding> findings) {
    List<LocatedFinding> merged = new ArrayList<>();
    Map<List<Object>, List<Integer>> equal = new HashMap<>();
    Set<List<Object>> wrong = new HashSet<>();
    for (LocatedFinding located : findings) {
      Finding finding = located.finding();
      if (finding.blocks()) {
        wrong.add(where(located));
      }
      List<Integer> candidates =
          equal.computeIfAbsent(List.of(finding.code(), where(located)), key -> new ArrayList<>());
      Optional<Integer> same =
          candidates.stream()
              .filter(i -> saysTheSame(merged.get(i).finding(), finding))
              .findFirst();
      if (same.isPresent()) {
        merged.set(same.get(), joined(merged.get(same.get()), located));
      } else {
        candidates.add(merged.size());
        merged.add(located);
      }
    }
    return merged.stream()
        .filter(
            located ->
                located.finding().severity() != Severity.ADVICE || !wrong.contains(where(located)))
        .toList();
  }

  private static List<Object> where(LocatedFinding located) {
    return List.of(located.file(), located.span().start(), located.span().length());
  }

  private static boolean saysTheSame(Finding one, Finding other) {
    return one.arguments().equals(other.arguments())
        && one.waivedBecause().equals(other.waivedBecause());
  }

  private static LocatedFinding joined(LocatedFinding first, LocatedFinding second) {
    Finding finding = first.finding();
    Set<ModelPath> places = new LinkedHashSet<>(placesOf(finding));
    places.addAll(placesOf(second.finding()));
    return new LocatedFinding(
        finding.withPlaces(finding.place(), List.copyOf(places)),
        first.file(),
        first.span(),
        first.related());
  }

  private static List<ModelPath> placesOf(Finding finding) {
    return finding.places().isEmpty() ? List.of(finding.place()) : finding.places();
  }
}
