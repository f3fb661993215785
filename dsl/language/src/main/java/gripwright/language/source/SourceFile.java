package gripwright.language.source;

import java.util.Arrays;

/**
 * A file's name and text, and where its lines begin. Lines end with a line feed, with or without a
 * carriage return before it. Immutable and thread-safe.
 */
public final class SourceFile {

  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private final String name;
  private final String text;
  private final int[] lineStarts;

  private SourceFile(String name, String text) {
    this.name = name;
    this.text = text;
    int lines = 1;
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) == '\n') {
        lines++;
      }
    }
    lineStarts = new int[lines];
    int line = 1;
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) == '\n') {
        lineStarts[line++] = i + 1;
      }
    }
  }

  /**
   * Returns a file of this name and text.
   *
   * @param name shown in findings; relative to the project root, with {@code /} between folders
   * @param text the whole text, including a byte order mark
   */
  public static SourceFile of(String name, String text) {
    return new SourceFile(name, text);
  }

  /** Returns the name shown in findings. */
  public String name() {
    return name;
  }

  /** Returns the whole text. */
  public String text() {
    return text;
  }

  /** Returns the text of a span. */
  public String text(Span span) {
    return text.substring(span.start(), span.end());
  }

  /** Returns how many lines there are, at least 1. */
  public int lineCount() {
    return lineStarts.length;
  }

  /** Returns the line of an offset, from 1. */
  public int line(int offset) {
    int found = Arrays.binarySearch(lineStarts, offset);
    return found >= 0 ? found + 1 : -found - 1;
  }

  /**
   * Returns the column of an offset in characters (code points), from 1; a byte order mark at the
   * start has no column.
   */
  public int column(int offset) {
    return text.codePointCount(columnStart(offset), offset) + 1;
  }

  /**
   * Returns the column of an offset in UTF-16 units, from 1, as editors and SARIF count it; a byte
   * order mark at the start has no column.
   */
  public int unitColumn(int offset) {
    return offset - columnStart(offset) + 1;
  }

  private int columnStart(int offset) {
    int line = line(offset);
    int start = lineStarts[line - 1];
    return line == 1 && offset > 0 && text.charAt(0) == BYTE_ORDER_MARK ? start + 1 : start;
  }

  /** Returns the offset at which a line, counted from 1, begins. */
  public int lineStart(int line) {
    return lineStarts[line - 1];
  }

  /** Returns a line, counted from 1, without its line ending. */
  public String lineText(int line) {
    int start = lineStarts[line - 1];
    int end = line < lineStarts.length ? lineStarts[line] - 1 : text.length();
    if (end > start && end <= text.length() && text.charAt(end - 1) == '\r') {
      end--;
    }
    return text.substring(start, end);
  }

  /** Returns the name. */
  @Override
  public String toString() {
    return name;
  }
}
