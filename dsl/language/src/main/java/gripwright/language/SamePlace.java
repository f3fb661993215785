package gripwright.language;

import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.finding.Severity;
import gripwright.language.check.Source;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.source.SourceFile;
import gripwright.language.source.Span;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Joins findings that say the same of the same words, as when a line is wrong for each of a plan's
 * athletes: one mistake gives one finding, which lists its places. Advice about words that an error
 * stands against is left out: it is worth reading once the error is gone.
 */
final class SamePlace {

  private SamePlace() {}

  private record Said(
      SourceFile file,
      Span span,
      String code,
      Map<String, Object> arguments,
      Optional<String> waived) {}

  static List<LocatedFinding> merged(List<LocatedFinding> findings) {
    Map<Said, LocatedFinding> bySaying = new LinkedHashMap<>();
    for (LocatedFinding located : findings) {
      Finding finding = located.finding();
      bySaying.merge(
          new Said(
              located.file(),
              located.span(),
              finding.code(),
              finding.arguments(),
              finding.waivedBecause()),
          located,
          SamePlace::joined);
    }
    Set<Source> wrong = new HashSet<>();
    for (LocatedFinding located : bySaying.values()) {
      if (located.finding().blocks()) {
        wrong.add(new Source(located.file(), located.span()));
      }
    }
    return bySaying.values().stream()
        .filter(
            located ->
                located.finding().severity() != Severity.ADVICE
                    || !wrong.contains(new Source(located.file(), located.span())))
        .toList();
  }

  private static LocatedFinding joined(LocatedFinding first, LocatedFinding second) {
    Finding finding = first.finding();
    Set<ModelPath> places = new LinkedHashSet<>(placesOf(finding));
    places.addAll(placesOf(second.finding()));
    return new LocatedFinding(
        new Finding(
            finding.code(),
            finding.severity(),
            finding.place(),
            finding.arguments(),
            List.copyOf(new ArrayList<>(places)),
            finding.waivedBecause()),
        first.file(),
        first.span(),
        first.related());
  }

  private static List<ModelPath> placesOf(Finding finding) {
    return finding.places().isEmpty() ? List.of(finding.place()) : finding.places();
  }
}
