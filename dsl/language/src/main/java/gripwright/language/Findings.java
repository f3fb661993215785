package gripwright.language;

import gripwright.finding.Finding;
import gripwright.finding.ReportedFinding;
import gripwright.language.finding.LocatedFinding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Findings in the order shown, limited to the requested number.
 *
 * @param located the findings shown
 * @param reported the same findings with their sentences
 * @param blocking every unwaived error, whether shown or left out because of the limit
 */
record Findings(
    List<LocatedFinding> located, List<ReportedFinding> reported, List<Finding> blocking) {

  private static final Comparator<LocatedFinding> BY_PLACE =
      Comparator.comparing((LocatedFinding f) -> f.file().name())
          .thenComparing(f -> f.span().start())
          .thenComparing(f -> f.finding().code())
          .thenComparing(f -> f.span().length())
          .thenComparing(f -> f.finding().place().toString())
          .thenComparing(f -> f.finding().arguments().toString());

  private static final Comparator<LocatedFinding> BY_GRAVITY =
      Comparator.comparing((LocatedFinding f) -> f.finding().severity()).thenComparing(BY_PLACE);

  /** Sorts and counts findings; the most severe are kept where there are too many. */
  static Findings of(List<LocatedFinding> all, ReadOptions options) {
    List<Finding> blocking =
        all.stream().map(LocatedFinding::finding).filter(Finding::blocks).toList();
    List<LocatedFinding> shown = new ArrayList<>();
    Map<String, List<LocatedFinding>> byFile = new LinkedHashMap<>();
    distinct(all)
        .forEach(f -> byFile.computeIfAbsent(f.file().name(), k -> new ArrayList<>()).add(f));
    for (List<LocatedFinding> ofFile : byFile.values()) {
      shown.addAll(capped(ofFile, options.maxFindingsPerFile()));
    }
    shown = capped(shown, options.maxFindings());
    shown.sort(BY_PLACE);
    return new Findings(
        List.copyOf(shown),
        shown.stream().map(f -> f.report(options.wording())).toList(),
        blocking);
  }

  boolean usable() {
    return blocking.isEmpty();
  }

  /** Sorts findings and leaves out duplicates, which are neighbours after sorting. */
  private static List<LocatedFinding> distinct(List<LocatedFinding> all) {
    List<LocatedFinding> distinct = new ArrayList<>();
    int equal = 0;
    for (LocatedFinding finding : all.stream().sorted(BY_PLACE).toList()) {
      int end = distinct.size();
      if (end > 0 && BY_PLACE.compare(distinct.get(end - 1), finding) != 0) {
        equal = end;
      }
      if (!distinct.subList(equal, end).contains(finding)) {
        distinct.add(finding);
      }
    }
    return distinct;
  }

  private static List<LocatedFinding> capped(List<LocatedFinding> all, int most) {
    if (all.size() <= most) {
      return all;
    }
    List<LocatedFinding> byGravity = new ArrayList<>(all);
    byGravity.sort(BY_GRAVITY);
    Set<LocatedFinding> kept = new HashSet<>(byGravity.subList(0, most));
    List<LocatedFinding> shown = new ArrayList<>(all.stream().filter(kept::contains).toList());
    LocatedFinding firstLeftOut =
        all.stream().filter(f -> !kept.contains(f)).findFirst().orElseThrow();
    Finding more =
        Finding.advice("syntax.more", firstLeftOut.finding().place())
            .with("count", all.size() - shown.size());
    shown.add(LocatedFinding.at(firstLeftOut.file(), firstLeftOut.span(), more));
    return shown;
  }
}
