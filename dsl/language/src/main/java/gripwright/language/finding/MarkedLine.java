package gripwright.language.finding;

import gripwright.language.source.SourceFile;
import gripwright.language.source.Span;

/**
 * The first line of a span as printed on a terminal, and the columns to mark.
 *
 * @param number line number, from 1
 * @param text the line with tabs expanded, cut to the part near the span if it is very long
 * @param indent columns before the first marked one
 * @param marks marked columns, 1 or more
 */
record MarkedLine(int number, String text, int indent, int marks) {

  /** Most columns shown of a very long line. */
  static final int WIDEST = 120;

  /** Columns kept before the span if a line is cut. */
  private static final int LEAD = 40;

  private static final String CUT = "...";

  static MarkedLine of(SourceFile file, Span span) {
    int number = file.line(span.start());
    String line = file.lineText(number);
    int from = Math.min(span.start() - file.lineStart(number), line.length());
    int to = Math.min(from + span.length(), line.length());
    // A very long line is cut before its characters are processed.
    int first = Math.max(0, from - LEAD);
    int last = (int) Math.min(line.length(), (long) first + 2 * WIDEST);
    boolean cutBefore = line.length() > WIDEST && first > 0;
    if (!cutBefore) {
      first = 0;
    } else if (Character.isLowSurrogate(line.charAt(first))) {
      first++;
    }
    StringBuilder shown = new StringBuilder(cutBefore ? CUT : "");
    int column = shown.length();
    int start = -1;
    int end = -1;
    int i = first;
    while (i < last && column < WIDEST) {
      start = i >= from && start < 0 ? column : start;
      end = i >= to && end < 0 ? column : end;
      int codePoint = line.codePointAt(i);
      column += append(shown, codePoint, column);
      i += Character.charCount(codePoint);
    }
    start = start < 0 ? column : start;
    end = end < 0 ? column : end;
    if (i < line.length()) {
      shown.append(CUT);
    }
    return new MarkedLine(
        number, shown.toString().stripTrailing(), start, Math.max(1, end - start));
  }

  private static int append(StringBuilder shown, int codePoint, int column) {
    if (codePoint == '\t') {
      int blanks = Glyphs.TAB - column % Glyphs.TAB;
      shown.append(" ".repeat(blanks));
      return blanks;
    }
    int glyph = Glyphs.shown(codePoint);
    if (glyph == 0) {
      return 0;
    }
    shown.appendCodePoint(glyph);
    return Glyphs.width(glyph);
  }
}
