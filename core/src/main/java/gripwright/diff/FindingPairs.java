package gripwright.diff;

import gripwright.finding.ReportedFinding;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.BiPredicate;
import java.util.regex.Pattern;

/**
 * Finds which findings are the same in both editions, whatever their lines and numbers. A waived
 * finding counts as the same.
 */
final class FindingPairs {

  /** The parts of a place that change when weeks and exercises are inserted. */
  private static final Pattern MOVES = Pattern.compile(" / (?:date|week|exercise) [^/]*(?= /|$)");

  private FindingPairs() {}

  /** Returns the findings that have no equivalent among others. */
  static List<ReportedFinding> without(List<ReportedFinding> some, List<ReportedFinding> others) {
    List<ReportedFinding> left = new ArrayList<>(some);
    List<ReportedFinding> free = new ArrayList<>(others);
    pair(left, free, (a, b) -> place(a).equals(place(b)) && a.message().equals(b.message()));
    pair(left, free, (a, b) -> place(a).equals(place(b)));
    pair(left, free, (a, b) -> about(a).equals(about(b)) && a.message().equals(b.message()));
    return left;
  }

  private static void pair(
      List<ReportedFinding> left,
      List<ReportedFinding> free,
      BiPredicate<ReportedFinding, ReportedFinding> same) {
    left.removeIf(
        finding -> {
          for (int i = 0; i < free.size(); i++) {
            ReportedFinding other = free.get(i);
            if (finding.code().equals(other.code())
                && finding.severity() == other.severity()
                && same.test(finding, other)) {
              free.remove(i);
              return true;
            }
          }
          return false;
        });
  }

  private static String place(ReportedFinding finding) {
    return Objects.requireNonNullElse(finding.place(), "");
  }

  private static String about(ReportedFinding finding) {
    return MOVES.matcher(place(finding)).replaceAll("");
  }
}
