package gripwright.export.text;

import java.util.ArrayList;
import java.util.List;

/** A table with headings: the first column and those named are aligned left, the others right. */
final class TextTable {

  private static final String GAP = "  ";

  private final List<String> headings;
  private final List<Integer> left;
  private final List<List<String>> rows = new ArrayList<>();

  TextTable(List<String> headings, Integer... left) {
    this.headings = headings;
    this.left = List.of(left);
  }

  void row(String... cells) {
    rows.add(List.of(cells));
  }

  boolean isEmpty() {
    return rows.isEmpty();
  }

  void add(Page page) {
    List<List<String>> all = new ArrayList<>();
    all.add(headings);
    all.addAll(rows);
    int[] widths = new int[headings.size()];
    for (List<String> row : all) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], row.get(i).length());
      }
    }
    for (List<String> row : all) {
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < widths.length; i++) {
        boolean toLeft = i == 0 || left.contains(i);
        line.append(i == 0 ? "" : GAP)
            .append(
                toLeft
                    ? Page.padRight(row.get(i), widths[i])
                    : Page.padLeft(row.get(i), widths[i]));
      }
      page.line(line.toString());
    }
  }
}
