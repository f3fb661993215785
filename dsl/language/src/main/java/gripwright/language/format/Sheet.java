package gripwright.language.format;

import java.util.ArrayList;
import java.util.List;

/**
 * The lines of a formatted file. Trailing comments of neighbouring lines with the same indent are
 * aligned. Not thread-safe.
 */
final class Sheet {

  /** Lines longer than this don't move the comments of their neighbours to the right. */
  private static final int FAR = 80;

  private final List<Line> lines = new ArrayList<>();

  /** A line and its trailing comment. */
  private static final class Line {
    private final int indent;
    private final String text;
    private String comment = "";

    Line(int indent, String text) {
      this.indent = indent;
      this.text = text;
    }

    int width() {
      return indent + text.codePointCount(0, text.length());
    }
  }

  /** Adds a line of text, or a comment on a line of its own. */
  void line(int indent, String text) {
    lines.add(new Line(indent, text));
  }

  /** Adds a blank line. */
  void blank() {
    lines.add(new Line(0, ""));
  }

  /** Adds a trailing comment to the last line. */
  void comment(String text) {
    lines.get(lines.size() - 1).comment = text;
  }

  /** Returns the number of characters, without the blanks before comments. */
  long characters() {
    long all = 0;
    for (Line line : lines) {
      all += line.indent + line.text.length() + line.comment.length() + 1L;
    }
    return all;
  }

  /** Returns the text, which ends with a line feed unless it is empty. */
  String text() {
    StringBuilder out = new StringBuilder();
    int at = 0;
    while (at < lines.size()) {
      int end = at + 1;
      while (end < lines.size() && belongs(lines.get(end), lines.get(at))) {
        end++;
      }
      append(out, lines.subList(at, end));
      at = end;
    }
    return out.toString();
  }

  private static boolean belongs(Line line, Line first) {
    return !line.comment.isEmpty() && !first.comment.isEmpty() && line.indent == first.indent;
  }

  private static void append(StringBuilder out, List<Line> run) {
    int column = run.stream().mapToInt(Line::width).filter(w -> w <= FAR).max().orElse(0);
    for (Line line : run) {
      out.append(" ".repeat(line.indent)).append(line.text);
      if (!line.comment.isEmpty()) {
        out.append(" ".repeat(Math.max(0, column - line.width()) + 2)).append(line.comment);
      }
      out.append('\n');
    }
  }
}
