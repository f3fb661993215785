package gripwright.diff;

import gripwright.finding.ReportedFinding;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.BiPredicate;
import java.util.regex.Pattern;

/**
 * Which findings are the same before and after, whatever line they stand on and whatever numbers
 * they name. A waiver makes no other finding of one.
 */
final class FindingPairs {

  /** What moves when weeks and exercises are put in between. */
  private static final Pattern MOVES = Pattern.compile(" / (?:date|week|exercise) [^/]*(?= /|$)");

  private FindingPairs() {}

  /** Returns those that have no like among others. */
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
